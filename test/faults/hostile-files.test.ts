import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import writeWorkbook from 'write-excel-file/node';
import type { BringInAnswers, Issue, Question } from '#contract/bring-in.ts';
import type { Draft } from '#domain/fact.ts';
import { idOf } from '#domain/identity.ts';
import { draftsOf } from '#interchange/drafts-of.ts';
import { contextWith, MACHINES, person, TODAY } from '#interchange/fixtures/invented-house.ts';
import { planBringIn, type BringInPlan } from '#interchange/plan-bring-in.ts';
import { openArchive } from '#interchange/reading/open-archive.ts';
import { LIMITS } from '#interchange/reading/limits.ts';
import { readTable } from '#interchange/reading/read-table.ts';
import { storedArchive } from '#interchange/reading/stored-archive.ts';
import { kilogramsOf, numberOf } from '#units/entered.ts';

/**
 * Good files are damaged at random, as transport, programs and ill will damage them. Whatever comes of it: nothing is
 * thrown, no draft is made while anything is open or refused, and a draft that is made is possible.
 */
const TRIALS = process.env['BALLAST_TRIALS'] === '1' ? 100_000 : 500;
const SEED = Number(process.env['BALLAST_SEED'] ?? 20_011);

type Chance = () => number;

/** Mulberry32: a small generator; all a test asks of it is that a seed gives the same files again. */
const chanceFrom = (seed: number): Chance => {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
};

const upTo = (chance: Chance, count: number): number => Math.floor(chance() * count);
const oneOf = <Kind>(chance: Chance, choices: readonly Kind[]): Kind => {
  const chosen = choices[upTo(chance, choices.length)];
  if (chosen === undefined) throw new RangeError('There is nothing to choose from.');
  return chosen;
};

const NASTY = [
  'NaN',
  'Infinity',
  '-1',
  '0',
  '1e308',
  '99999999999999999999',
  '31/02/2027',
  '2027-02-30',
  '03/04/2027',
  '\0',
  '\uFFFF',
  '<script>alert(1)</script>',
  '=cmd|" /C calc"!A0',
  '@SUM(1)',
  '+1',
  '-',
  '"',
  '""',
  "'",
  ';',
  ',',
  '\t',
  '\r',
  '\n',
  '\r\n\r\n',
  '__proto__',
  'constructor',
  'toString',
  '225',
  '225 lb',
  '100x5 @8',
  'Average',
  'Total',
  'null',
  'undefined',
  '\u202E',
  '𝟙𝟚',
  'ﬁ',
  'xxxxxxxxxxxxxxxx'.repeat(400),
  '#DIV/0!',
  '&#0;',
  ']]>',
  '<!--',
  '<!DOCTYPE a [<!ENTITY b "c">]>',
  '_x0000_',
  '_xD800_',
] as const;

const joined = (pieces: readonly Uint8Array[]): Uint8Array => {
  const whole = new Uint8Array(pieces.reduce((sum, piece) => sum + piece.byteLength, 0));
  let at = 0;
  for (const piece of pieces) {
    whole.set(piece, at);
    at += piece.byteLength;
  }
  return whole;
};

const encoder = new TextEncoder();

type Damage = (bytes: Uint8Array, chance: Chance) => Uint8Array;

const part = (bytes: Uint8Array, chance: Chance): readonly [number, number] => {
  const from = upTo(chance, bytes.byteLength + 1);
  return [from, Math.min(bytes.byteLength, from + upTo(chance, oneOf(chance, [4, 40, 400])))];
};

const DAMAGES: readonly Damage[] = [
  function flipABit(bytes, chance) {
    const damaged = bytes.slice();
    const at = upTo(chance, damaged.byteLength);
    damaged[at] = (damaged[at] ?? 0) ^ (1 << upTo(chance, 8));
    return damaged;
  },
  function cutOut(bytes, chance) {
    const [from, to] = part(bytes, chance);
    return joined([bytes.subarray(0, from), bytes.subarray(to)]);
  },
  function cutOff(bytes, chance) {
    return bytes.slice(0, upTo(chance, bytes.byteLength + 1));
  },
  function sayTwice(bytes, chance) {
    const [from, to] = part(bytes, chance);
    return joined([bytes.subarray(0, to), bytes.subarray(from)]);
  },
  function putIn(bytes, chance) {
    const at = upTo(chance, bytes.byteLength + 1);
    return joined([bytes.subarray(0, at), encoder.encode(oneOf(chance, NASTY)), bytes.subarray(at)]);
  },
  function putNoiseIn(bytes, chance) {
    const at = upTo(chance, bytes.byteLength + 1);
    const noise = Uint8Array.from({ length: upTo(chance, 12) }, () => upTo(chance, 256));
    return joined([bytes.subarray(0, at), noise, bytes.subarray(at)]);
  },
];

/** Replaces one value of a text table by a nasty one: the whole stays well formed, so it gets far. */
const replaceAValue: Damage = (bytes, chance) => {
  const values = new TextDecoder('windows-1252').decode(bytes).split(/([,;\t\n])/);
  const at = upTo(chance, Math.ceil(values.length / 2)) * 2;
  values[at] = oneOf(chance, NASTY);
  return encoder.encode(values.join(''));
};

/** Damages the text inside a workbook and packs it again with true sizes, so that the damage is met by the reader. */
const damageInside: Damage = (bytes, chance) => {
  const archive = openArchive(bytes, LIMITS);
  // Damage before this one may have left an archive with nothing in it.
  if (archive.kind === 'refused' || archive.entries.size === 0) return bytes;
  const texts = new Map([...archive.entries].map(([path, content]) => [path, new TextDecoder().decode(content)]));
  const path = oneOf(chance, [...texts.keys()]);
  const damaged = oneOf(chance, DAMAGES)(encoder.encode(texts.get(path) ?? ''), chance);
  return storedArchive(texts.set(path, new TextDecoder().decode(damaged)));
};

/** A copy that is nobody else's: slices of a Buffer share its memory, and damage would add up. */
const fixture = (name: string): Uint8Array =>
  new Uint8Array(readFileSync(new URL(`../../src/interchange/fixtures/${name}`, import.meta.url)));

const workbook = async (): Promise<Uint8Array> =>
  new Uint8Array(
    await writeWorkbook([
      ['Strength tests'],
      ['Name', 'Sex', 'Date', 'BW (kg)', 'Back squat 5RM (kg)', 'Bench 1RM (lb)', 'SLS per hand 8RM (kg)'],
      [
        'Maren Holt',
        'F',
        { value: new Date('2027-02-10T00:00:00Z'), type: Date, format: 'dd/mm/yyyy' },
        61.4,
        92.5,
        135,
        20,
      ],
      [
        'Tove Lind',
        'F',
        { value: new Date('2027-02-11T00:00:00Z'), type: Date, format: 'dd/mm/yyyy' },
        70,
        100,
        140,
        22.5,
      ],
      ['Average', null, null, 65.7, 96.25, 137.5, 21.25],
    ]).toBuffer(),
  );

const CONTEXT = contextWith({ people: [person('Maren Holt', { bodyMass: 61 })], ownEstimate: () => 110 });

const givenAnswer = ({ id, choices, typed }: Question, chance: Chance): readonly [string, string] => [
  id,
  chance() < 0.05
    ? oneOf(chance, NASTY).slice(0, 300)
    : (choices[upTo(chance, choices.length)]?.answer ?? (typed === 'a number of repetitions' ? '5' : '2027-02-12')),
];

const expectWellSaid = (issue: Issue): void => {
  for (const said of [issue.what, issue.why, issue.whatToDo, issue.where]) expect(said.length).toBeGreaterThan(3);
};

/** What no draft may ever hold, whatever the file was. */
const expectPossible = ({ body, reason }: Draft): void => {
  expect(JSON.stringify(body) + String(reason)).not.toMatch(/\\u0000|\\ud[89a-f]/i);
  if (body.kind === 'lifted') {
    expect(kilogramsOf(body.load)).toBeGreaterThan(0);
    expect(kilogramsOf(body.load)).toBeLessThanOrEqual(700);
    expect(Number.isInteger(body.repetitions) && body.repetitions >= 1 && body.repetitions <= 30).toBe(true);
    expect(body.day).toBeLessThanOrEqual(TODAY);
    expect(MACHINES.map(({ id }) => id)).toContain(body.machine);
  }
  if (body.kind === 'measured') expect(Number.isFinite(numberOf(body.value)) && numberOf(body.value) > 0).toBe(true);
  if (body.kind === 'introduced') expect(body.birthDate === null || body.birthDate <= TODAY).toBe(true);
};

const draftsOfPlan = (plan: BringInPlan): readonly Draft[] => {
  let made = 0;
  return draftsOf(plan, { newId: () => `id ${(made += 1)}`, recordedBy: idOf('signer') });
};

/** Plans a file, answers at random, and looks at every plan on the way. */
const expectSafe = async (bytes: Uint8Array, chance: Chance): Promise<'drafts' | 'none'> => {
  const table = await readTable(bytes, 'hostile');
  let answers: BringInAnswers = {};
  let made = 0;
  for (let round = 0; round < 5; round += 1) {
    const plan = planBringIn(table, { answers, context: CONTEXT });
    const open = plan.questions.filter(({ answer }) => answer === null);
    const drafts = draftsOfPlan(plan);
    for (const issue of [...plan.problems, ...plan.preview.passedOver]) expectWellSaid(issue);
    if (open.length > 0 || plan.problems.some(({ kind }) => kind === 'refused')) expect(drafts).toEqual([]);
    for (const draft of drafts) expectPossible(draft);
    made = drafts.length;
    if (open.length === 0) break;
    answers = { ...answers, ...Object.fromEntries(open.map((question) => givenAnswer(question, chance))) };
  }
  return made > 0 ? 'drafts' : 'none';
};

interface GoodFiles {
  readonly texts: readonly Uint8Array[];
  readonly book: Uint8Array;
}

/** A good file with one to three damages: mostly inside a text or a part of the workbook, where they get far. */
const damagedFile = ({ texts, book }: GoodFiles, isBook: boolean, chance: Chance): Uint8Array => {
  const inside = isBook ? damageInside : replaceAValue;
  let bytes = isBook ? book : oneOf(chance, texts);
  for (let times = upTo(chance, 3); times >= 0; times -= 1)
    bytes = (chance() < 0.6 ? inside : oneOf(chance, DAMAGES))(bytes, chance);
  return bytes;
};

test(`${TRIALS} damaged files, seed ${SEED}: none throws, none is let in by half`, async () => {
  const texts = ['one-test-a-row.csv', 'one-person-a-row.csv', 'people.csv', 'missions.csv'].map(fixture);
  const good = { texts, book: await workbook() };
  const outcomes = { drafts: 0, none: 0 };
  for (let trial = 0; trial < TRIALS; trial += 1) {
    const chance = chanceFrom(SEED + trial);
    try {
      outcomes[await expectSafe(damagedFile(good, trial % 2 === 1, chance), chance)] += 1;
    } catch (error) {
      throw new Error(`The file of seed ${SEED + trial} was not borne.`, { cause: error });
    }
  }
  // Damage that always or never kept a file out would test nothing.
  expect(outcomes.drafts).toBeGreaterThan(TRIALS / 50);
  expect(outcomes.none).toBeGreaterThan(TRIALS / 50);
});
