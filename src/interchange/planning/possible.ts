import { ageInYears, type Day, daysBetween, isoOfDay } from '#units/day.ts';
import type { Said } from '../place.ts';

/** What a value must not be, and where it is worth a second look. Ranges are common practice for healthy adults. */
export interface Judgement {
  readonly refused: Said | null;
  readonly odd: Said | null;
}

const FINE: Judgement = { refused: null, odd: null };
const refused = (what: string, why: string, whatToDo: string): Judgement => ({
  refused: { what, why, whatToDo },
  odd: null,
});
const odd = (what: string, why: string, whatToDo: string): Judgement => ({
  refused: null,
  odd: { what, why, whatToDo },
});

const LOOK = 'Look at the number in the original record.';
const HEAVIEST = 700;
const MOST_REPETITIONS = 30;
const MANY_REPETITIONS = 15;
const TEN_YEARS = 3653;

export const judgedLoad = (kilograms: number): Judgement => {
  if (kilograms <= 0)
    return refused(
      'The load is not above zero.',
      'A load that is lifted weighs something.',
      `${LOOK} Leave the cell empty where nothing was tested.`,
    );
  return kilograms > HEAVIEST
    ? refused(`The load is ${Math.round(kilograms)} kg.`, `At most ${HEAVIEST} kg are taken.`, LOOK)
    : FINE;
};

export const judgedRepetitions = (text: string): Judgement => {
  const value = Number(text);
  if (!Number.isInteger(value))
    return refused(`${text} repetitions are no whole number.`, 'A repetition is completed or not.', LOOK);
  if (value < 1 || value > MOST_REPETITIONS)
    return refused(
      `A set of ${text} repetitions is no strength test.`,
      `1 to ${MOST_REPETITIONS} repetitions are taken.`,
      LOOK,
    );
  return value > MANY_REPETITIONS
    ? odd(
        `A set of ${value} repetitions says little of strength.`,
        'Estimates of the maximum grow wide above ten repetitions.',
        'Nothing, where it is right.',
      )
    : FINE;
};

export const judgedEffort = (kind: 'RPE' | 'repetitions in reserve', value: number): Judgement => {
  const [least, most] = kind === 'RPE' ? [1, 10] : [0, 9];
  if (value >= least && value <= most) return FINE;
  const name = kind === 'RPE' ? 'An RPE' : 'A reserve';
  return refused(
    `${name} of ${value} is not on the scale.`,
    `The scale runs from ${least} to ${most}.`,
    'Look at the number; another scale, such as 6 to 20, is not taken.',
  );
};

const LIGHTEST_BODY = 30;
const HEAVIEST_BODY = 200;
const LARGE_CHANGE = 0.2;

export const judgedBodyMass = (kilograms: number, onRecord: number | null): Judgement => {
  if (kilograms < LIGHTEST_BODY || kilograms > HEAVIEST_BODY)
    return refused(
      `A body mass of ${Math.round(kilograms * 10) / 10} kg is not possible.`,
      `${LIGHTEST_BODY} to ${HEAVIEST_BODY} kg are taken.`,
      `${LOOK} Look at its unit too.`,
    );
  if (onRecord !== null && Math.abs(kilograms / onRecord - 1) > LARGE_CHANGE)
    return odd(
      `The body mass differs from the last one, ${Math.round(onRecord * 10) / 10} kg, by more than a fifth.`,
      'Masses seldom change so much.',
      `${LOOK} Look at its unit and at the name.`,
    );
  return FINE;
};

const YOUNGEST = 18;
const OLDEST = 75;
const EVER_BORN = 110;

export const judgedBirthDate = (birthDate: Day, today: Day): Judgement => {
  if (birthDate > today)
    return refused(
      `${isoOfDay(birthDate)} is in the future.`,
      'Nobody is born after today.',
      'Look at the date and at the order of day and month.',
    );
  const age = ageInYears(birthDate, today);
  if (age > EVER_BORN)
    return refused(`${isoOfDay(birthDate)} is ${age} years ago.`, 'Nobody who trains is so old.', 'Look at the year.');
  return age < YOUNGEST || age > OLDEST
    ? odd(
        `The birth date gives an age of ${age} years.`,
        `Most people here are ${YOUNGEST} to ${OLDEST}.`,
        'Look at the year.',
      )
    : FINE;
};

/** The day on which something was tested or measured. */
export const judgedPastDay = (day: Day, today: Day): Judgement => {
  if (day > today)
    return refused(
      `${isoOfDay(day)} is in the future.`,
      'What was tested lies in the past.',
      'Look at the date and at the order of day and month.',
    );
  return daysBetween(day, today) > TEN_YEARS
    ? odd(`${isoOfDay(day)} is more than ten years ago.`, 'So old a value says little of today.', 'Look at the year.')
    : FINE;
};

const LONGEST_TRAINING = 60;

export const judgedTrainingAge = (years: number): Judgement =>
  years < 0 || years > LONGEST_TRAINING
    ? refused(`A training age of ${years} years is not possible.`, `0 to ${LONGEST_TRAINING} years are taken.`, LOOK)
    : FINE;
