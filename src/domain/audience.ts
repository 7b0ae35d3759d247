import type { Audience, FactBody } from './fact.ts';

const CLINICAL: readonly Audience[] = ['person and specialist', 'physician'];
const OPERATIONAL: readonly Audience[] = ['person and specialist', 'physician', 'team', 'planners'];
const TRAINING: readonly Audience[] = ['person and specialist', 'physician', 'team'];

/**
 * Who may see a fact unless somebody decides otherwise. Tests, mass, results, discomfort, notes and cards stay between
 * the person, the specialist and the physician; names, dates and machines are for team and planners too; management
 * sees nothing. A restriction's medical reason is cut out for everybody but the physician where facts are shown or exported.
 */
export const defaultAudience = (body: FactBody): readonly Audience[] => {
  switch (body.kind) {
    case 'introduced':
    case 'dated':
    case 'assigned':
    case 'stays':
    case 'available':
    case 'set aside':
    case 'space walk':
    case 'road holds':
    case 'signs':
    case 'catalogued':
    case 'calibrated':
    case 'policies set':
      return OPERATIONAL;
    case 'set up':
      return TRAINING;
    case 'measured':
    case 'lifted':
    case 'tested':
    case 'judged':
    case 'looked at':
    case 'carried':
    case 'trained':
    case 'hurt':
    case 'noted':
    case 'read':
    case 'called off':
    case 'missed':
    case 'received':
    case 'restricted':
    case 'restriction lifted':
    case 'breathing set':
    case 'decided':
    case 'retracted':
      return CLINICAL;
  }
};

/** A fact's body as an audience may see it, or null where it may not see it at all. */
export const bodySeenBy = (
  fact: { readonly audience: readonly Audience[] } & FactBody,
  audience: Audience,
): FactBody | null => {
  if (!fact.audience.includes(audience)) return null;
  if (fact.kind === 'restricted' && audience !== 'physician') return { ...fact, medicalReason: null };
  return fact;
};
