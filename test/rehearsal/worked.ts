/** The way to the full load of one person's heavy squat, worked by a script before the planner was written. */
export const WORKED_PERSON = {
  sex: 'female',
  mass: '71.4',
  squat: '104.714',
  deadlift: '120',
  heaviestBar: '102.5',
} as const;

export const WORKED = [
  { flightDay: 4, effort: 0.8, share: 0.6, bar: 65.342, added: 30.716, load: 210, trueFraction: 0.421 },
  { flightDay: 11, effort: 0.85, share: 0.7, bar: 69.425, added: 35.836, load: 225, trueFraction: 0.486 },
  { flightDay: 18, effort: 0.9, share: 0.8, bar: 73.509, added: 40.955, load: 250, trueFraction: 0.594 },
  { flightDay: 25, effort: 0.95, share: 0.9, bar: 77.593, added: 46.074, load: 275, trueFraction: 0.702 },
  { flightDay: 32, effort: 1, share: 1, bar: 81.677, added: 51.194, load: 295, trueFraction: 0.789 },
] as const;
