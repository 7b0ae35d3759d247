import type { Fact } from '#domain/fact.ts';
import type { PersonHead } from './person-head.ts';

/** Every fact of a person, newest first: superseded and taken back ones stay visible. */
export interface RecordLine {
  readonly fact: Fact;
  readonly when: string;
  readonly kind: string;
  readonly says: string;
  readonly by: string;
  readonly standing: 'stands' | 'superseded' | 'taken back';
  readonly supersededBy: number | null;
  readonly reason: string | null;
}

export interface RecordWindow {
  readonly person: PersonHead;
  readonly lines: readonly RecordLine[];
  readonly restrictions: readonly {
    readonly fact: Fact<'restricted'>;
    readonly says: string;
    readonly lifted: boolean;
  }[];
}
