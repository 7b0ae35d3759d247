import type { Issue } from '#contract/bring-in.ts';
import { join, Table } from '../../parts/parts.ts';
import styles from './in-and-out-page.module.css';

/** Every problem at once: where, what, why, what to do. */
export function IssueTable({ caption, issues }: { readonly caption: string; readonly issues: readonly Issue[] }) {
  return (
    <Table caption={`${caption} (${issues.length})`}>
      <thead>
        <tr>
          <th scope="col">where</th>
          <th scope="col">what</th>
          <th scope="col">why</th>
          <th scope="col">what to do</th>
        </tr>
      </thead>
      <tbody>
        {issues.map((issue, place) => (
          <tr key={place}>
            <td className={styles['where']}>{issue.where || 'the file'}</td>
            <td>
              <span className={join(styles['kind'], issue.kind === 'refused' && styles['refused'])}>{issue.kind}</span>{' '}
              {issue.what}
            </td>
            <td className="soft">{issue.why}</td>
            <td>{issue.whatToDo}</td>
          </tr>
        ))}
      </tbody>
    </Table>
  );
}
