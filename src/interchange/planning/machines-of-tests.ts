import type { Exercise, Machine, Site } from '#domain/catalogue.ts';
import { cellAt, columnThatIs, type Row, type SheetLayout } from '../layout/sheet-layout.ts';
import { spelling } from '../layout/spelling.ts';
import { quoted } from '../place.ts';
import { saysNothing } from '../values/value.ts';
import type { BringInContext } from './context.ts';
import type { Report } from './report.ts';

/** The machine on which a test was done; null while it is asked. */
export type MachineOf = (row: Row, exercise: Exercise) => Machine | null;

const BY_EXERCISE = 'by exercise';

const FREE_BAR_WORDS = new Set(['free bar', 'bar', 'barbell', 'bb', 'free weight', 'free weights', 'olympic bar']);

/** Machines on the ground first: tests before flight are done there. */
const inOrder = (machines: readonly Machine[]): readonly Machine[] =>
  machines.toSorted(
    (one, other) => other.gravity.localeCompare(one.gravity) || one.name.localeCompare(other.name, 'en'),
  );

const choicesOf = ({ machines, sites }: BringInContext) =>
  inOrder(machines)
    .filter(({ kind }) => kind === 'free bar' || kind === 'resistive machine')
    .map(({ id, name, site, gravity }) => {
      const where = sites.find((one) => one.id === site)?.name ?? site;
      return { answer: id, says: `${name}, ${where}${gravity === '0 g' ? ', weightless' : ''}` };
    });

/** The one machine that these words name, with or without its site; null where none or several do. */
const named = (machineText: string, siteText: string, { machines, sites }: BringInContext): Machine | null => {
  const siteIs = (site: Site | undefined, text: string): boolean =>
    site !== undefined && (spelling(site.name) === spelling(text) || spelling(site.id) === spelling(text));
  const placeOf = (machine: Machine): Site | undefined => sites.find(({ id }) => id === machine.site);
  const there = siteText === '' ? machines : machines.filter((machine) => siteIs(placeOf(machine), siteText));
  const word = spelling(machineText);
  const lifting = there.filter(({ kind }) => kind === 'free bar' || kind === 'resistive machine');
  const ways: readonly ((machine: Machine) => boolean)[] = [
    (machine) => word === '' || spelling(machine.name) === word || spelling(machine.id) === word,
    (machine) => siteIs(placeOf(machine), machineText),
    (machine) => machine.kind === 'free bar' && FREE_BAR_WORDS.has(word),
  ];
  const found = ways.map((fits) => lifting.filter(fits)).find((machines) => machines.length === 1);
  return found?.[0] ?? null;
};

const textOf = (row: Row, is: 'machine' | 'site', layout: SheetLayout): string => {
  const column = columnThatIs(layout.columns, is);
  const text = (column && cellAt(row, column)?.text) ?? '';
  return saysNothing(text) ? '' : text;
};

const machineWith = (id: string | null, { machines }: BringInContext): Machine | null =>
  machines.find((machine) => machine.id === id) ?? null;

const askNamed = (text: string, row: Row, context: BringInContext, report: Report): Machine | null =>
  machineWith(
    report.ask({
      id: `machine, ${spelling(text)}`,
      about: 'machine',
      asks: `Which machine is ${quoted(text)}?`,
      because: 'No one machine of the catalogue is called so; estimates are kept apart by machine.',
      row: row.number,
      choices: choicesOf(context),
    }),
    context,
  );

const askOfTable = (exercise: Exercise, context: BringInContext, report: Report): Machine | null => {
  const answer = report.ask({
    id: 'machine of the table',
    about: 'machine',
    asks: 'On which machine were these tests done?',
    because: 'The file does not say; estimates are kept apart by machine.',
    choices: [...choicesOf(context), { answer: BY_EXERCISE, says: 'not all on the same: ask for each exercise' }],
  });
  if (answer !== BY_EXERCISE) return machineWith(answer, context);
  const byExercise = report.ask({
    id: `machine, exercise ${exercise.id}`,
    about: 'machine',
    asks: `On which machine was ${exercise.name} tested?`,
    because: 'You said that not all tests were done on the same.',
    choices: choicesOf(context),
  });
  return machineWith(byExercise, context);
};

/** The machine of a test: what the row says, else asked once for the table or for each exercise. */
export const machinesOfTests = (layout: SheetLayout, context: BringInContext, report: Report): MachineOf => {
  return (row, exercise) => {
    const machineText = textOf(row, 'machine', layout);
    const siteText = textOf(row, 'site', layout);
    if (machineText === '' && siteText === '') return askOfTable(exercise, context, report);
    const text = [machineText, siteText].filter((one) => one !== '').join(', ');
    return named(machineText, siteText, context) ?? askNamed(text, row, context, report);
  };
};
