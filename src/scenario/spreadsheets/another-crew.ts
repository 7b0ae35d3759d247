import type { Table } from './table.ts';

/*
 * A crew of somebody else's, as invented as the other and no part of the scenario: for whoever wants to see the way from a
 * spreadsheet to flight cards by one command.
 */

export const ANOTHER_CREW_PEOPLE: Table = [
  ['Name', 'Sex', 'Birth date', 'Stature (cm)', 'Body mass (kg)', 'Measured on', 'Training age (years)'],
  ['Halla Brennick', 'F', '1986-05-19', '170', '68.2', '2027-02-22', '9'],
  ['Omari Teixeira-Vance', 'M', '1984-12-03', '183', '88.5', '2027-02-22', '14'],
  ['Sunniva Achterberg', 'F', '1991-09-27', '163', '57.9', '2027-02-23', '3'],
];

export const ANOTHER_CREW_MISSION: Table = [
  ['Mission', 'Name', 'Role', 'Launch', 'Landing', 'Latest landing'],
  ['Tern 4', 'Halla Brennick', 'prime', '2027-03-08', '2027-09-02', '2027-09-09'],
  ['Tern 4', 'Omari Teixeira-Vance', 'prime', '2027-03-08', '2027-09-02', '2027-09-09'],
  ['Tern 4', 'Sunniva Achterberg', 'prime', '2027-03-08', '2027-09-02', '2027-09-09'],
];

/** The last squats lie inside the eight weeks before launch: they are the heaviest bars carried. */
export const ANOTHER_CREW_TESTS: Table = [
  ['Date', 'Name', 'Exercise', 'Machine', 'Load (kg)', 'Repetitions', 'RPE'],
  ['2026-11-16', 'Halla Brennick', 'Back squat', 'Free bar', '92.5', '5', '9'],
  ['2026-11-16', 'Halla Brennick', 'Deadlift', 'Free bar', '110', '5', '9'],
  ['2026-11-16', 'Halla Brennick', 'Bench press', 'Free bar', '50', '5', '9'],
  ['2026-11-16', 'Halla Brennick', 'Heel raise', 'Free bar', '95', '12', '10'],
  ['2026-11-17', 'Omari Teixeira-Vance', 'Back squat', 'Free bar', '140', '5', '9'],
  ['2026-11-17', 'Omari Teixeira-Vance', 'Deadlift', 'Free bar', '167.5', '5', '9'],
  ['2026-11-17', 'Omari Teixeira-Vance', 'Bench press', 'Free bar', '102.5', '5', '9'],
  ['2026-11-17', 'Omari Teixeira-Vance', 'Heel raise', 'Free bar', '140', '12', '10'],
  ['2026-11-18', 'Sunniva Achterberg', 'Back squat', 'Free bar', '62.5', '5', '8'],
  ['2026-11-18', 'Sunniva Achterberg', 'Deadlift', 'Free bar', '75', '5', '8'],
  ['2026-11-18', 'Sunniva Achterberg', 'Bench press', 'Free bar', '35', '5', '9'],
  ['2026-11-18', 'Sunniva Achterberg', 'Heel raise', 'Free bar', '70', '12', '9'],
  ['2027-02-08', 'Halla Brennick', 'Back squat', 'Free bar', '102.5', '3', '9'],
  ['2027-02-08', 'Halla Brennick', 'Deadlift', 'Free bar', '120', '3', '9'],
  ['2027-02-08', 'Halla Brennick', 'Bench press', 'Free bar', '52.5', '4', '9'],
  ['2027-02-08', 'Halla Brennick', 'Heel raise', 'Free bar', '97.5', '12', '10'],
  ['2027-02-09', 'Omari Teixeira-Vance', 'Back squat', 'Free bar', '155', '3', '9'],
  ['2027-02-09', 'Omari Teixeira-Vance', 'Deadlift', 'Free bar', '182.5', '3', '9'],
  ['2027-02-09', 'Omari Teixeira-Vance', 'Bench press', 'Free bar', '107.5', '4', '9'],
  ['2027-02-09', 'Omari Teixeira-Vance', 'Heel raise', 'Free bar', '145', '12', '10'],
  ['2027-02-10', 'Sunniva Achterberg', 'Back squat', 'Free bar', '67.5', '4', '8'],
  ['2027-02-10', 'Sunniva Achterberg', 'Deadlift', 'Free bar', '82.5', '4', '8'],
  ['2027-02-10', 'Sunniva Achterberg', 'Bench press', 'Free bar', '37.5', '4', '9'],
  ['2027-02-10', 'Sunniva Achterberg', 'Heel raise', 'Free bar', '75', '12', '10'],
];
