import { idOf } from '#domain/identity.ts';
import { takeUp } from '#domain/programme.ts';
import { FLIGHT_PHASES } from './flight-phases.ts';
import { PREPARATION_PHASES } from './preparation-phases.ts';
import { RETURN_PHASES } from './return-phases.ts';

/** The programme that ships: one road from two years before launch to six weeks after landing, for one signature. */
export const SET_PROGRAMME = takeUp({
  programme: idOf('whole-road'),
  name: 'The whole road',
  number: 1,
  follows: null,
  phases: [...PREPARATION_PHASES, ...FLIGHT_PHASES, ...RETURN_PHASES],
});
