import type { Envelope, FactBody, FactKind } from '#domain/fact.ts';
import { z } from 'zod';
import {
  breathingSet,
  calibrated,
  catalogued,
  decided,
  policiesSet,
  restricted,
  restrictionLifted,
  retracted,
  setUp,
  signs,
} from './house.schema.ts';
import { variantOf } from './lists.schema.ts';
import {
  assigned,
  available,
  dated,
  introduced,
  measured,
  roadHolds,
  setAside,
  spaceWalk,
  stays,
} from './people.schema.ts';
import { tested } from './tested.schema.ts';
import {
  calledOff,
  carried,
  hurt,
  judged,
  lifted,
  lookedAt,
  missed,
  noted,
  read,
  received,
  trained,
} from './training.schema.ts';

const BODIES = [
  introduced,
  measured,
  dated,
  assigned,
  stays,
  available,
  setAside,
  spaceWalk,
  roadHolds,
  tested,
  lifted,
  judged,
  lookedAt,
  carried,
  trained,
  hurt,
  noted,
  read,
  calledOff,
  missed,
  received,
  restricted,
  restrictionLifted,
  breathingSet,
  signs,
  catalogued,
  calibrated,
  setUp,
  policiesSet,
  decided,
  retracted,
] as const;

/** Every kind once: the compiler asks for a new one here. */
const KINDS: Readonly<Record<FactKind, true>> = {
  introduced: true,
  measured: true,
  dated: true,
  assigned: true,
  stays: true,
  available: true,
  'set aside': true,
  'space walk': true,
  'road holds': true,
  tested: true,
  lifted: true,
  judged: true,
  'looked at': true,
  carried: true,
  trained: true,
  hurt: true,
  noted: true,
  read: true,
  'called off': true,
  missed: true,
  received: true,
  restricted: true,
  'restriction lifted': true,
  'breathing set': true,
  signs: true,
  catalogued: true,
  calibrated: true,
  'set up': true,
  'policies set': true,
  decided: true,
  retracted: true,
};

export const FACT_KINDS = Object.keys(KINDS) as readonly FactKind[];

/** What a fact says, of whatever kind. */
export const factBodySchema = z.discriminatedUnion('kind', BODIES, {
  error: variantOf(FACT_KINDS),
}) satisfies z.ZodType<FactBody>;

/** A type with everything in it read-only, as the domain writes its types. */
type Frozen<Type> = Type extends string | number | boolean | null | undefined
  ? Type
  : { readonly [Key in keyof Type]: Frozen<Type[Key]> };

type Agreement<Domain, Schema> = [Domain] extends [Schema]
  ? [Schema] extends [Domain]
    ? 'same'
    : { error: 'the schema lets through what the domain does not know' }
  : { error: 'the domain knows what the schema does not let through' };

/** Does not compile where the domain's facts and these schemas have drifted apart. */
export const SCHEMA_AND_DOMAIN: Agreement<FactBody, Frozen<z.output<typeof factBodySchema>>> = 'same';

type KeysOfEach<Union> = Union extends unknown ? keyof Union : never;

/** Does not compile where a body has a field of the envelope's name: the envelope would overwrite it. */
export const BODY_AND_ENVELOPE: [KeysOfEach<FactBody> & keyof Envelope] extends [never]
  ? 'apart'
  : { error: 'a field of a fact body has the name of an envelope field' } = 'apart';
