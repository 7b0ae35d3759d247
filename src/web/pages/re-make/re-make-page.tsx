import { useState } from 'react';
import { Link, useParams } from 'wouter';
import { ROUTES } from '#contract/routes.ts';
import type { ReMakeWindow } from '#contract/windows/re-make-window.ts';
import { Button } from '../../parts/button.tsx';
import { longDate } from '../../parts/dates.ts';
import { Actions } from '../../parts/dialog.tsx';
import { Choice, Field, Fields } from '../../parts/field.tsx';
import { Await, Empty, PersonFrame } from '../../parts/parts.ts';
import { Problems } from '../../parts/problems.tsx';
import { SignAs } from '../../parts/sign-as.tsx';
import { useHouse, useRecording, useWindow } from '../../windows.ts';
import { GearList } from './gear-list.tsx';
import { HurtRows } from './hurt-rows.tsx';
import { MadeSession } from './made-session.tsx';
import { TextMessage } from './text-message.tsx';
import { hurtsOf, type TypedHurt } from './typed-hurt.ts';
import { USUAL_REASON, useReMaking } from './use-re-making.ts';
import styles from './re-make.module.css';

/** A session made anew for what is there, while somebody waits at the telephone. */
export default function ReMakePage() {
  const { person, day } = useParams<{ person: string; day: string }>();
  return (
    <Await query={useWindow<ReMakeWindow>(ROUTES.reMake(person, Number(day)))}>
      {(start) => (
        <PersonFrame person={start.person} active="Sheet">
          <h2>
            For what is there{' '}
            <span className="soft">
              {start.missionDay}, {longDate(start.day)}
            </span>
          </h2>
          {start.sessions.length === 0 ? (
            <Empty>No programme holds this day: there is nothing to make anew.</Empty>
          ) : (
            <Making start={start} />
          )}
        </PersonFrame>
      )}
    </Await>
  );
}

const Making = ({ start }: { readonly start: ReMakeWindow }) => {
  const making = useReMaking(start);
  const { made, sent } = making;
  return (
    <div className={styles['page']}>
      <form
        aria-label="Make a session anew"
        onSubmit={(event) => {
          event.preventDefault();
          making.sign();
        }}
      >
        <SessionFields start={start} making={making} />
        <GearList start={start} making={making} />
        <HurtRows sites={start.bodySites} hurts={making.hurts} onChange={making.setHurts} />
        <Field label="Reason" value={making.reason} onChange={making.setReason} placeholder={USUAL_REASON} />
        <Problems problems={making.problems.filter(({ field }) => field !== 'minutes' && field !== 'session')} />
        <Actions>
          <Button kind="main" type="submit" isDisabled={!making.canSign || sent !== null}>
            Sign and issue
          </Button>
          <SignAs />
        </Actions>
        {made?.hurtsTooMuch ? <RecordPain start={start} hurts={making.hurts} /> : null}
        {start.isIssued && sent === null ? (
          <p className="soft">A card of this day is issued: the new one takes its place.</p>
        ) : null}
      </form>
      <div>
        {sent ? <Sent sent={sent} /> : null}
        {made ? <MadeSession made={made} /> : null}
        {made && made.text !== '' && sent === null ? (
          <TextMessage text={made.text} messages={made.messages} isSigned={false} />
        ) : null}
      </div>
    </div>
  );
};

/** Pain that ends a session begins none: it is still to be recorded, so that it holds everything else. */
const RecordPain = ({ start, hurts }: { readonly start: ReMakeWindow; readonly hurts: readonly TypedHurt[] }) => {
  const { record, isSending, problems } = useRecording();
  const [done, setDone] = useState(false);
  const today = useHouse().data?.today;
  if (done)
    return <output>Recorded. Ask the physician; cards aboard stand as they are until somebody calls them back.</output>;
  return (
    <>
      <Button
        kind="stop"
        isDisabled={isSending || today === undefined}
        onPress={() => {
          if (today === undefined) return;
          const bodies = hurtsOf(hurts).map((hurt) => ({
            body: {
              kind: 'hurt' as const,
              person: start.person.id,
              day: today,
              card: null,
              item: null,
              ...hurt,
              when: 'during' as const,
            },
          }));
          record(bodies, () => setDone(true));
        }}
      >
        Record what hurts, without a session
      </Button>
      <Problems problems={problems} />
    </>
  );
};

interface PartProps {
  readonly start: ReMakeWindow;
  readonly making: ReturnType<typeof useReMaking>;
}

const SessionFields = ({ start, making }: PartProps) => (
  <Fields>
    <Field
      label="Minutes"
      name="minutes"
      value={making.minutes}
      onChange={making.setMinutes}
      problems={making.problems}
      inputMode="numeric"
      isNarrow
      isFirst
    />
    <Choice
      label="Session"
      name="session"
      value={making.session}
      onChange={making.setSession}
      problems={making.problems}
      options={start.sessions.map(({ id, title, blockMinutes, isOfDay }) => ({
        value: id,
        label: `${title}, ${blockMinutes} min${isOfDay ? ', planned for the day' : ''}`,
      }))}
    />
  </Fields>
);

const Sent = ({ sent }: { readonly sent: NonNullable<ReturnType<typeof useReMaking>['sent']> }) => (
  <>
    <p>
      Signed and issued: <Link href={`/cards/${sent.card}`}>card {sent.code}</Link>.
    </p>
    <TextMessage text={sent.text} messages={sent.messages} isSigned />
  </>
);
