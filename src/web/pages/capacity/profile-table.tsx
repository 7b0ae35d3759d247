import type { ProfileEntry } from '#contract/windows/capacity-window.ts';
import styles from './capacity-page.module.css';

/** Tests beside lifts against norms, the other side and the person's own past: what is weak first. */
export const ProfileTable = ({ profile }: { readonly profile: readonly ProfileEntry[] }) => {
  const weakFirst = profile.toSorted((a, b) => Number(b.standing === 'low') - Number(a.standing === 'low'));
  return (
    <section aria-label="Profile">
      <h2>Profile</h2>
      <table className={styles['profile']}>
        <thead>
          <tr>
            <th scope="col">Against</th>
            <th scope="col">What it says</th>
            <th scope="col">By</th>
          </tr>
        </thead>
        <tbody>
          {weakFirst.map(({ against, standing, says, source }) => (
            <tr key={says}>
              <td>{against}</td>
              <td>
                {standing === 'low' ? <b>low: </b> : null}
                {says}
              </td>
              <td className="soft">{source}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className="soft">
        What is low proposes a set or a bout more on the Desk; nothing changes before it is signed.
      </p>
    </section>
  );
};
