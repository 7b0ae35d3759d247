import { useState } from 'react';
import { ROUTES } from '#contract/routes.ts';
import type { FollowRequest } from '#contract/requests/requests.ts';
import type { HouseWindow } from '#contract/windows/house-window.ts';
import type { ProgrammeVersion } from '#domain/programme.ts';
import { dayFromIso, isoOfDay, type Day } from '#units/day.ts';
import { Button, Choice, Field, Fields, Problems, SignAs, useSigner } from '../../parts/parts.ts';
import { useHouse, useWrite } from '../../windows.ts';
import type { VersionEntry } from './programme-section.tsx';

interface FollowFormProps {
  readonly version: ProgrammeVersion;
  readonly canFollow: VersionEntry['canFollow'];
}

/** Puts a person on a programme, from a day. */
export function FollowForm({ version, canFollow }: FollowFormProps) {
  const house = useHouse().data;
  const [person, setPerson] = useState('');
  const [typed, setTyped] = useState<string | null>(null);
  const [done, setDone] = useState<string | null>(null);
  const { signer } = useSigner();
  const write = useWrite();
  const from = typed ?? (house ? isoOfDay(firstDayFor(version, person, house)) : '');
  const day = dayFromIso(from);
  const name = canFollow.find(({ id }) => id === person)?.name ?? '';
  const follow = (): void => {
    if (signer === null || day === null || name === '') return;
    const request: FollowRequest = { signer: signer.id, programme: version.id, from: day };
    write.send(ROUTES.follow(person), request, () => {
      setDone(`${name} follows it from ${from}.`);
      setPerson('');
    });
  };
  if (canFollow.length === 0)
    return (
      <p className="soft small on-screen">
        <output>{done}</output> Everybody of ours with a mission follows it already.
      </p>
    );
  return (
    <form
      className="on-screen"
      onSubmit={(event) => {
        event.preventDefault();
        follow();
      }}
    >
      <Fields>
        <Choice
          label="Follow it"
          value={person}
          onChange={setPerson}
          options={canFollow.map(({ id, name: each, dayLabel }) => ({
            value: id,
            label: `${each}, ${dayLabel}`,
          }))}
          nothing="choose a person …"
        />
        <Field label="From" name="from" type="date" value={from} onChange={setTyped} problems={write.problems} />
      </Fields>
      <Problems problems={write.problems} shownElsewhere={['from']} />
      <Button type="submit" isDisabled={signer === null || day === null || name === '' || write.isSending}>
        Follow
      </Button>{' '}
      <SignAs />
      <output>{done}</output>
    </form>
  );
}

/** Of a programme for the flight: launch day, where it lies ahead. Else today. */
const firstDayFor = (version: ProgrammeVersion, person: string, { today, people, missions }: HouseWindow): Day => {
  if (version.phases.some(({ span: { first } }) => first.from === 'launch' && first.days < 0)) return today;
  const mission = people.find(({ id }) => id === person)?.mission;
  const launch = missions.find(({ name }) => name === mission)?.launch ?? today;
  return launch > today ? launch : today;
};
