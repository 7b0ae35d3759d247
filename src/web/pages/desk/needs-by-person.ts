import { DESK_ASKS, type DeskAsk, type DeskLine } from '#contract/windows/desk-window.ts';

type Proposed = Extract<DeskLine, { readonly kind: 'proposal' }>;
export type Asked = Extract<DeskLine, { readonly kind: DeskAsk }>;
type Urgent = Exclude<DeskLine, Proposed | Asked>;

/** All that one person needs: what is urgent, what waits for an answer, what the road asks for next. */
export interface PersonNeed {
  readonly person: DeskLine['person'];
  readonly name: string;
  readonly urgent: readonly Urgent[];
  readonly proposals: readonly Proposed[];
  readonly asks: readonly Asked[];
}

const isAsk = (line: DeskLine): line is Asked => DESK_ASKS.some((kind) => kind === line.kind);

const isUrgent = (line: DeskLine): line is Urgent => line.kind !== 'proposal' && !isAsk(line);

/** Lines stand in order of need: so do the people, each where their worst line stands. */
export const needsByPerson = (lines: readonly DeskLine[]): readonly PersonNeed[] => {
  const names = new Map(lines.map(({ person, name }) => [person, name] as const));
  return [...names].map(([person, name]) => {
    const own = lines.filter((line) => line.person === person);
    return {
      person,
      name,
      urgent: own.filter(isUrgent),
      proposals: own.filter((line) => line.kind === 'proposal'),
      asks: own.filter(isAsk),
    };
  });
};
