import { useSigner } from '../signer.tsx';
import styles from './find-box.module.css';

/** Whose name goes under what is written now. */
export const SignerChoice = () => {
  const { signer, signers, signsFor, choose } = useSigner();
  if (signers.length === 0) return <span className="soft small">nobody may sign today</span>;
  if (signers.length === 1) return <span className="soft small">signing: {signer?.name}</span>;
  return (
    <label className={styles['signer']}>
      signing:{' '}
      <select value={signer?.id ?? ''} onChange={(event) => choose(event.target.value)}>
        <option value="" disabled>
          choose who
        </option>
        {signers.map(({ id, name, role }) => (
          <option key={id} value={id}>
            {role === 'specialist' ? name : `${name}, ${role}`}
          </option>
        ))}
      </select>
      {signsFor ? ` for ${signsFor}` : null}
    </label>
  );
};
