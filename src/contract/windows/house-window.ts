import type { Day } from '#units/day.ts';
import type { Exercise, Machine, Site } from '#domain/catalogue.ts';
import type { Signer } from '#domain/fact.ts';
import type { ExerciseId, MissionId, PersonId, ProgrammeVersionId } from '#domain/identity.ts';
import type { Policies } from '#domain/policies.ts';
import type { SquatGateName } from '#domain/squat-gate.ts';

/** What the first page asks before anything is open. */
export interface StartWindow {
  readonly state: 'choose' | 'name the signer' | 'open';
  readonly about: 'scenario' | 'own' | null;
  /** Data files that exist already, so that the page can say "go on" and not "start". */
  readonly existing: readonly ('scenario' | 'own')[];
  readonly trouble: { readonly what: string; readonly why: string; readonly whatToDo: string } | null;
}

export interface PersonLine {
  readonly id: PersonId;
  readonly name: string;
  readonly group: 'in flight' | 'before launch' | 'returned' | 'no mission';
  readonly mission: string | null;
  readonly dayLabel: string;
}

export interface ExerciseLine {
  readonly id: ExerciseId;
  readonly name: string;
  readonly bodyPart: 'lower body' | 'upper body';
  readonly perSide: boolean;
  /** What somebody sets at the machine for it. */
  readonly settingFields: readonly string[];
  readonly machineKinds: Exercise['machineKinds'];
}

/** What every page needs: who and what there is. */
export interface HouseWindow {
  readonly about: 'scenario' | 'own';
  readonly today: Day;
  readonly upTo: number;
  readonly people: readonly PersonLine[];
  readonly signers: readonly Signer[];
  readonly exercises: readonly ExerciseLine[];
  readonly machines: readonly Machine[];
  readonly sites: readonly Site[];
  readonly missions: readonly {
    readonly id: MissionId;
    readonly name: string;
    readonly launch: Day;
    readonly landing: { readonly earliest: Day; readonly latest: Day } | null;
  }[];
  readonly programmes: readonly {
    readonly id: ProgrammeVersionId;
    readonly name: string;
    readonly number: number;
    readonly followers: number;
  }[];
  readonly policies: Policies;
  /** What each squat gate asks for, in words. */
  readonly squatGates: readonly {
    readonly name: SquatGateName;
    readonly asks: readonly string[];
    readonly opens: string;
  }[];
}
