import { useSigner } from '../signer.tsx';

/** Under whose name this will stand; asks where nobody was chosen yet. */
export const SignAs = () => {
  const { signer, signers, signsFor, choose } = useSigner();
  if (signers.length === 0)
    return <span className="soft">Nobody may sign today: Settings says who may, and when.</span>;
  if (signers.length === 1)
    return (
      <span className="soft">
        as {signer?.name}
        {signsFor ? ` for ${signsFor}` : ''}
      </span>
    );
  return (
    <span className="soft">
      as{' '}
      <select aria-label="Who signs" value={signer?.id ?? ''} onChange={(event) => choose(event.target.value)}>
        <option value="" disabled>
          choose who signs
        </option>
        {signers.map(({ id, name, role }) => (
          <option key={id} value={id}>
            {role === 'specialist' ? name : `${name}, ${role}`}
          </option>
        ))}
      </select>
      {signsFor ? ` for ${signsFor}` : ''}
    </span>
  );
};
