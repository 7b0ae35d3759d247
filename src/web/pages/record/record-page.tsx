import { useState } from 'react';
import { useParams, useSearchParams } from 'wouter';
import type { HouseWindow } from '#contract/windows/house-window.ts';
import type { RecordWindow } from '#contract/windows/record-window.ts';
import { Await, Button, Empty, PersonFrame } from '../../parts/parts.ts';
import { useHouse, useRecordOf } from '../../windows.ts';
import { RECORDABLE, RecordDialog, type Doing, type Recordable } from './record-dialog.tsx';
import styles from './record-page.module.css';
import { RecordTable } from './record-table.tsx';
import { RestrictionList } from './restriction-list.tsx';

/** Everything that was ever entered about a person, and where it is typed in. */
export default function RecordPage() {
  const { person } = useParams<{ person: string }>();
  const record = useRecordOf(person);
  const house = useHouse();
  return (
    <Await query={house}>
      {(shown) => (
        <Await query={record}>
          {(window) => (
            <PersonFrame person={window.person} active="Record">
              <Record record={window} house={shown} />
            </PersonFrame>
          )}
        </Await>
      )}
    </Await>
  );
}

function Record({ record, house }: { readonly record: RecordWindow; readonly house: HouseWindow }) {
  const [search, setSearch] = useSearchParams();
  const [pressed, setPressed] = useState<Doing | null>(null);
  const doing = pressed ?? addressed(search.get('record'));
  const close = (): void => {
    setPressed(null);
    if (search.has('record')) setSearch({});
  };
  return (
    <>
      <section aria-label="Record" className={`${styles['new'] ?? ''} on-screen`}>
        <span className="soft">Record:</span>
        {RECORDABLE.map((what) => (
          <Button key={what} onPress={() => setPressed({ kind: 'record', what })}>
            {what}
          </Button>
        ))}
      </section>
      <RestrictionList record={record} today={house.today} onDo={setPressed} />
      {record.lines.length === 0 ? (
        <Empty>Nothing is recorded yet.</Empty>
      ) : (
        <RecordTable lines={record.lines} onDo={setPressed} />
      )}
      {doing !== null && <RecordDialog doing={doing} record={record} house={house} onDone={close} />}
    </>
  );
}

/** The form that an address such as record?record=test opens. */
const addressed = (what: string | null): Doing | null => {
  const found = RECORDABLE.find((each: Recordable) => each === what);
  return found === undefined ? null : { kind: 'record', what: found };
};
