import type { LiftPerson, LiftSession, LiftWindow } from '#contract/windows/lift-window.ts';
import type { Rows } from '../../parts/block/tab-separated.ts';
import { showChange, showIncrements } from '../../parts/loads.ts';

const ORDINALS = ['last', 'one before', 'third last', 'fourth last'];

/** Heads of the sessions to either side of today; people train on days of their own. */
export const columnsOf = ({
  people,
}: LiftWindow): { readonly past: readonly string[]; readonly ahead: readonly string[] } => {
  const most = (sessions: (person: LiftPerson) => readonly LiftSession[]): number =>
    Math.max(0, ...people.map((person) => sessions(person).length));
  return {
    past: ORDINALS.slice(
      0,
      most(({ past }) => past),
    ).toReversed(),
    ahead: ['next', 'after that'].slice(
      0,
      most(({ ahead }) => ahead),
    ),
  };
};

/** Sessions of one person under these heads: the past stands close to today, and is empty before. */
export const sessionsUnder = (
  lift: LiftWindow,
  { past, ahead }: LiftPerson,
): { readonly past: readonly (LiftSession | null)[]; readonly ahead: readonly (LiftSession | null)[] } => {
  const heads = columnsOf(lift);
  return {
    past: [...Array.from({ length: heads.past.length - past.length }, () => null), ...past],
    ahead: heads.ahead.map((_, place) => ahead[place] ?? null),
  };
};

export const raiseText = ({ raise }: LiftPerson): string => {
  if (!raise) return '';
  const to = `${showIncrements(raise.to, raise.increment)} ${raise.unit}`;
  if (raise.from === null) return `first load, ${to}`;
  const atTheBar = raise.atTheBar === null ? '' : `, ${showChange(raise.atTheBar)} at the bar`;
  return `${showIncrements(raise.from, raise.increment)} → ${to}${atTheBar}`;
};

export const discomfortText = ({ discomfort }: LiftPerson): string =>
  discomfort
    ? `${discomfort.score} of 10, ${discomfort.side === null ? '' : `${discomfort.side} `}${discomfort.site}, ${discomfort.missionDay}`
    : '';

/** The page as a spreadsheet takes it: a line for each person. */
export const liftRows = (lift: LiftWindow): Rows => {
  const { past, ahead } = columnsOf(lift);
  const sessionHeads = past.flatMap((head) => [`${head}: day`, `${head}: planned`, `${head}: done`]);
  const aheadHeads = ahead.flatMap((head) => [`${head}: day`, `${head}: planned`]);
  const head = [
    'person',
    ...sessionHeads,
    ...aheadHeads,
    'estimate',
    'last here',
    'ramp',
    'raise',
    'discomfort',
    'unread note',
  ];
  return [head, ...lift.people.map((person) => lineOf(lift, person))];
};

const lineOf = (lift: LiftWindow, person: LiftPerson): readonly string[] => {
  const { past, ahead } = sessionsUnder(lift, person);
  return [
    person.name,
    ...past.flatMap((session) => [
      session?.missionDay ?? '',
      session?.cell.planned ?? '',
      session ? doneOf(session) : '',
    ]),
    ...ahead.flatMap((session) => [session?.missionDay ?? '', session?.cell.planned ?? '']),
    person.estimate ?? '',
    person.lastHere ?? '',
    person.ramp ?? '',
    raiseText(person),
    discomfortText(person),
    person.unread?.text ?? '',
  ];
};

/** What was done, or what became of the session instead. */
export const doneOf = ({ cell, outcome, calledOff }: LiftSession): string => {
  if (cell.done !== null) return cell.done;
  if (outcome === 'called off') return calledOff ? `called off, ${calledOff}` : 'called off';
  return outcome === null || outcome === 'none' ? '' : outcome;
};
