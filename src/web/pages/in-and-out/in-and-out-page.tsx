import { Page } from '../../parts/parts.ts';
import { Backup } from './backup.tsx';
import { BringIn } from './bring-in.tsx';
import { ExportFor } from './export-for.tsx';
import styles from './in-and-out-page.module.css';
import { NewPerson } from './new-person.tsx';

/** What comes in from files, and what leaves: for whom, and what it reveals. */
export default function InAndOutPage() {
  return (
    <Page title="In and out">
      <BringIn />
      <div className={styles['out']}>
        <NewPerson />
        <Backup />
        <ExportFor />
      </div>
    </Page>
  );
}
