import type { PlainMeaning } from '#contract/bring-in.ts';

/** What people call the columns of their sheets, spelled as compared; units and brackets are taken off before. */
export const HEADER_WORDS: readonly (readonly [PlainMeaning, readonly string[]])[] = [
  [
    'name',
    [
      'name',
      'names',
      'full name',
      'person',
      'crew',
      'crew member',
      'crewmember',
      'participant',
      'subject',
      'athlete',
      'trainee',
      'client',
      'astronaut',
      'who',
      'nom',
      'nombre',
    ],
  ],
  ['given name', ['given name', 'first name', 'first', 'forename', 'given', 'vorname', 'prenom']],
  ['family name', ['family name', 'last name', 'last', 'surname', 'family', 'nachname']],
  [
    'date',
    [
      'date',
      'day',
      'test date',
      'date of test',
      'date tested',
      'testing date',
      'tested on',
      'test day',
      'session date',
      'measured on',
      'datum',
      'fecha',
      'when',
    ],
  ],
  [
    'exercise',
    ['exercise', 'lift', 'movement', 'test', 'test name', 'exercise name', 'what', 'ubung', 'exercice', 'ejercicio'],
  ],
  ['unit', ['unit', 'units', 'uom', 'kg lb', 'kg or lb', 'kg lbs', 'unit of load', 'load unit', 'weight unit']],
  [
    'repetitions',
    [
      'repetitions',
      'reps',
      'rep',
      'repetition',
      'number of reps',
      'number of repetitions',
      'reps done',
      'wiederholungen',
      'reps completed',
      'completed reps',
    ],
  ],
  ['RPE', ['rpe', 'effort', 'exertion', 'perceived exertion', 'rating of perceived exertion', 'rpe 1 10', 'set rpe']],
  [
    'repetitions in reserve',
    ['rir', 'repetitions in reserve', 'reps in reserve', 'reserve', 'in reserve', 'reps left'],
  ],
  ['side', ['side', 'leg', 'arm', 'limb', 'l r', 'left right', 'left or right']],
  ['machine', ['machine', 'equipment', 'apparatus', 'device', 'implement', 'done on']],
  ['site', ['site', 'gym', 'place', 'location', 'facility', 'where']],
  ['birth date', ['birth date', 'date of birth', 'dob', 'birthdate', 'birthday', 'born', 'born on', 'geburtsdatum']],
  ['sex', ['sex', 'gender', 'f m', 'm f', 'geschlecht']],
  [
    'training age',
    [
      'training age',
      'years of training',
      'training years',
      'years training',
      'training experience',
      'years of resistance training',
      'training age years',
      'experience',
    ],
  ],
  ['mission', ['mission', 'mission name', 'flight', 'expedition', 'increment', 'assigned to', 'assignment']],
  ['role', ['role', 'prime or backup', 'prime backup', 'crew role']],
  ['team', ['team', 'whose', 'our people', 'ours']],
  ['launch', ['launch', 'launch date', 'launch day', 'date of launch', 'l 0', 'l0']],
  [
    'landing',
    [
      'landing',
      'landing date',
      'landing day',
      'date of landing',
      'return',
      'return date',
      'earliest landing',
      'landing from',
      'landing earliest',
      'r 0',
      'r0',
    ],
  ],
  [
    'latest landing',
    ['latest landing', 'landing latest', 'landing until', 'landing to', 'last landing', 'latest landing date'],
  ],
];

export const LOAD_WORDS = new Set([
  'load',
  'weight',
  'weight lifted',
  'load lifted',
  'mass lifted',
  'resistance',
  'lifted',
  'bar',
  'bar load',
  'bar weight',
  'test load',
  'result',
  'load used',
  'gewicht',
]);
export const BODY_MASS_WORDS = new Set([
  'bw',
  'bm',
  'body mass',
  'bodymass',
  'body weight',
  'bodyweight',
  'b w',
  'b m',
  'body wt',
  'korpergewicht',
  'mass',
]);
export const STATURE_WORDS = new Set([
  'height',
  'stature',
  'body height',
  'ht',
  'standing height',
  'hgt',
  'grosse',
  'taille',
]);

/** Values that somebody worked out: they are no tests, and this program estimates for itself. */
export const WORKED_OUT =
  /(^|\s)(e1rm|e ?1 ?rm|est|estimated|estimate|predicted|calculated|calc|theoretical|projected|target|goal|norm|percentile|rank|ranking|z score|change|delta|diff|difference)(\s|$)/;
/** Ratios to body weight or to something else: no loads. */
export const RELATIVE = /%|×\s*bw\b|\bx\s?bw\b|\/\s*bw\b|per kg\b|\bkg\/kg\b|\brelative\b|\bratio\b|\bpercent\b/i;

/** Words that mean the load of a test beside exercises, and the body's mass in a list of people. */
export const BODY_MASS_BY_CONTEXT: ReadonlySet<string> = new Set(['weight', 'gewicht', 'mass']);
