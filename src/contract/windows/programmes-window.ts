import type { PersonId } from '#domain/identity.ts';
import type { ProgrammeVersion } from '#domain/programme.ts';
import type { Exercise } from '#domain/catalogue.ts';

export interface ProgrammesWindow {
  readonly versions: readonly {
    readonly version: ProgrammeVersion;
    readonly followers: readonly { readonly id: PersonId; readonly name: string; readonly from: string }[];
    /** Ours, with a mission, who do not follow this version yet. */
    readonly canFollow: readonly { readonly id: PersonId; readonly name: string; readonly dayLabel: string }[];
  }[];
  readonly exercises: readonly Exercise[];
}
