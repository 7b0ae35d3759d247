import { addDays, isoOfDay, type Day } from '#units/day.ts';
import type { Fact, FactBody } from '#domain/fact.ts';
import { houseAt, personOf } from '#domain/known.ts';
import { currentFacts, endOfLog } from '#domain/log.ts';
import type { Problem } from '#contract/problem.ts';
import { houseProblems } from './house-problems.ts';
import { machineProblems } from './machine-problems.ts';
import { presenceProblems } from './presence-problems.ts';
import { atEntry, type CheckedEntry } from './entry.ts';
import { calendarProblems } from './calendar-problems.ts';
import { testedProblems } from './tested-problems.ts';
import { resultProblems } from './result-problems.ts';

/** What stands against entries that are well formed in themselves: each is held against the log that it enters. */
export const entryProblems = (
  log: readonly Fact[],
  entries: readonly CheckedEntry[],
  today: Day,
): readonly Problem[] => {
  const current = currentFacts(log, endOfLog(log));
  const house = houseAt(log, endOfLog(log));
  const bodies = [...current, ...entries.map(({ body }) => body)];
  return entries.flatMap((entry, place) =>
    [
      ...byHandProblems(entry.body),
      ...correctionProblems(entry, current),
      ...dayProblems(entry.body, today),
      ...presenceProblems(entry.body, bodies, current),
      ...machineProblems(entry.body, current),
      ...houseProblems(entry, house, current, today),
      ...testedProblems(entry, entries, current, house),
      ...calendarProblems(entry, entries, current, today),
      ...resultProblems(entry, current),
    ]
      .filter(({ mayStand }) => mayStand !== true || entry.sure !== true)
      .map((problem) => atEntry(problem, place)),
  );
};

const byHandProblems = ({ kind }: FactBody): readonly Problem[] =>
  kind === 'decided' || kind === 'retracted'
    ? [
        {
          what: kind === 'decided' ? 'A decision is not typed in as a fact.' : 'A fact is not taken back this way.',
          why: 'What is signed is checked against what the signer saw.',
          whatToDo: 'Use the page where it is signed.',
          field: 'kind',
        },
      ]
    : [];

const correctionProblems = (
  { body, supersedes, reason }: CheckedEntry,
  current: readonly Fact[],
): readonly Problem[] => {
  if (supersedes === null) return [];
  const before = current.find((fact) => fact.id === supersedes);
  if (!before) return [alreadyCorrected()];
  return [
    ...(before.kind === body.kind && personOf(before) === aboutWhom(body) ? [] : [anotherThing()]),
    ...(reason?.trim() ? [] : [reasonMissing()]),
  ];
};

const aboutWhom = (body: FactBody) => ('person' in body ? body.person : null);

/** Ten years ahead: nobody's mission is planned longer before. */
const FARTHEST_AHEAD = 3653;

/** Days of things that have happened lie not after tomorrow: somewhere it is tomorrow already. */
const dayProblems = (body: FactBody, today: Day): readonly Problem[] => {
  if (body.kind === 'dated') return missionDayProblems(body, today);
  if (body.kind === 'restricted' && body.restriction.toldOn > addDays(today, 1))
    return [inFuture('restriction.toldOn', body.restriction.toldOn)];
  const past = dayOfWhatHappened(body);
  return past !== null && past.day > addDays(today, 1) ? [inFuture(past.field, past.day)] : [];
};

const dayOfWhatHappened = (body: FactBody): { readonly field: string; readonly day: Day } | null => {
  if (body.kind === 'introduced') return body.birthDate === null ? null : { field: 'birthDate', day: body.birthDate };
  if (body.kind === 'received' || body.kind === 'restriction lifted') return { field: 'on', day: body.on };
  return 'day' in body && !MAY_LIE_AHEAD.has(body.kind) ? { field: 'day', day: body.day } : null;
};

/** What can be known beforehand. */
const MAY_LIE_AHEAD: ReadonlySet<FactBody['kind']> = new Set(['called off', 'calibrated', 'space walk']);

const missionDayProblems = (
  { launch, landing }: Extract<FactBody, { readonly kind: 'dated' }>,
  today: Day,
): readonly Problem[] => [
  ...(Math.abs(launch - today) > FARTHEST_AHEAD ? [farAway(launch)] : []),
  ...(landing && (landing.earliest < launch || landing.latest < landing.earliest) ? [landingOutOfOrder()] : []),
];

const inFuture = (field: string, day: Day): Problem => ({
  what: `${isoOfDay(day)} has not come yet.`,
  why: 'What is recorded here has happened.',
  whatToDo: 'Correct the day.',
  field,
});

const farAway = (day: Day): Problem => ({
  what: `A launch on ${isoOfDay(day)} is more than ten years away.`,
  why: 'Most likely a year was mistyped.',
  whatToDo: 'Correct the launch day.',
  field: 'launch',
});

const landingOutOfOrder = (): Problem => ({
  what: 'Launch, earliest landing and latest landing are not in this order.',
  why: 'Days of the flight are counted from one to the other.',
  whatToDo: 'Correct the dates.',
  field: 'landing',
});

const alreadyCorrected = (): Problem => ({
  what: 'What you are correcting does not stand any more.',
  why: 'Somebody has corrected it or taken it back already.',
  whatToDo: 'Look at the record again, and correct what stands now.',
  field: 'supersedes',
});

const anotherThing = (): Problem => ({
  what: 'A correction is of the same kind and about the same person.',
  why: 'The record shows both side by side, old and new.',
  whatToDo: 'Take the old entry back and record the new one.',
  field: 'supersedes',
});

const reasonMissing = (): Problem => ({
  what: 'The correction has no reason.',
  why: 'The old entry stays visible, with why it was corrected.',
  whatToDo: 'Type the reason.',
  field: 'reason',
});
