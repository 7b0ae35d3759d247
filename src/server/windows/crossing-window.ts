import type { ReplacementPolicy } from '#domain/decision.ts';
import { ofKind, type Known } from '#domain/known.ts';
import { idOf } from '#domain/identity.ts';
import { crossingLifts, crossingOf } from '#planning/crossing-view.ts';
import type { Snapshot } from '#actions/snapshot.ts';
import type { CrossingWindow } from '#contract/windows/crossing-window.ts';
import { personHead } from './person-head.ts';

const METRES_PER = { cm: 0.01, in: 0.0254 } as const;

/** The crossing of one person; `policy` looks at another one without signing it. */
export const crossingWindow = (
  snapshot: Snapshot,
  known: Known,
  exercise: string | null,
  policy: ReplacementPolicy | null,
): CrossingWindow => {
  const lifts = crossingLifts(known, snapshot.today);
  const shown = exercise ?? lifts.find(({ capacity }) => capacity !== null)?.exercise ?? null;
  const detail = shown === null ? null : crossingOf(known, idOf(shown), snapshot.today, policy ?? undefined);
  const machine = flightMachine(known);
  return {
    person: personHead(snapshot, known),
    machine: machine ?? { name: 'no resistive machine aboard', ceiling: '0', unit: 'lb' },
    stature: statureOf(known),
    lifts,
    detail,
    empty: detail === null ? whyEmpty(known, lifts.length) : null,
  };
};

const flightMachine = ({ house }: Known): CrossingWindow['machine'] | null => {
  const machine = [...house.machines.values()].find(
    ({ kind, gravity }) => kind === 'resistive machine' && gravity === '0 g',
  );
  return machine ? { name: machine.name, ceiling: machine.ceiling, unit: machine.unit } : null;
};

/** Metres. */
const statureOf = (known: Known): number | null => {
  const stature = ofKind(known, 'measured').findLast((fact) => fact.what === 'stature');
  return stature?.what === 'stature' ? Number(stature.value.text) * METRES_PER[stature.value.unit] : null;
};

const whyEmpty = (known: Known, lifts: number): string => {
  if (!known.mission) return `${known.name} has no mission yet: there is nothing to cross over to.`;
  if (!ofKind(known, 'measured').some((fact) => fact.what === 'body mass'))
    return `${known.name} has no body mass on record: the crossing adds back a share of it. Record one first.`;
  return lifts === 0
    ? 'No exercise here is done on a machine aboard.'
    : `${known.name} has no tested lift yet: record a test, and its crossing stands here.`;
};
