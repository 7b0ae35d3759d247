import type { Source } from '../architecture/source.ts';
import { programOf, reachedFrom, type Place, type Program } from './reach.ts';

/**
 * Which screens a formula's number gets to, followed through the sources: from a page to the windows that it reads, from
 * a window to the function on the server that makes it, and from there through everything that function uses, down to
 * the formulas. What a window takes ready-made, such as a road, counts as if it called what makes it.
 */

export const SCREENS = [
  { name: 'Desk', folder: 'desk' },
  { name: 'Sheet', folder: 'sheet' },
  { name: 'Card', folder: 'card' },
  { name: 'Road', folder: 'road' },
  { name: 'Capacity', folder: 'capacity' },
  { name: 'Crossing', folder: 'crossing' },
  { name: 'Record', folder: 'record' },
  { name: 'Programmes', folder: 'programmes' },
  { name: 'In and out', folder: 'in-and-out' },
  { name: 'Settings', folder: 'settings' },
] as const;

const WINDOWS = /^src\/contract\/windows\//;
const SERVER = /^src\/server\//;
const SCIENCE = /^src\/science\//;
const WEB = /^src\/web\//;

/** Made once and handed to windows. */
const READY_MADE = { type: { path: 'src/domain/road.ts', name: 'Road' }, madeIn: /^src\/planning\// };

/** Declarations of src/science that each screen rests on. */
export const scienceOfScreens = (sources: readonly Source[]): ReadonlyMap<string, readonly Place[]> => {
  const program = programOf(sources);
  const roadMakers = makersOf(program, READY_MADE.type, READY_MADE.madeIn);
  return new Map(
    SCREENS.map(({ name, folder }) => {
      const drawn = reachedFrom(declaredUnder(program, `src/web/pages/${folder}/`), (place) =>
        WEB.test(place.path) ? namedBy(program, place, ['values', 'types']) : [],
      );
      const windows = drawn.filter(({ path }) => WINDOWS.test(path));
      const makers = windows.flatMap((window) => makersOf(program, window, SERVER));
      const shown = drawn.filter(({ path }) => SCIENCE.test(path));
      const reached = reachedFrom([...makers, ...shown], (place) => [
        ...namedBy(program, place, ['values']),
        ...(takesRoad(program, place) ? roadMakers : []),
      ]);
      return [name, reached.filter(({ path }) => SCIENCE.test(path))] as const;
    }),
  );
};

const declaredUnder = ({ modules }: Program, folder: string): readonly Place[] =>
  [...modules].flatMap(([path, { declarations }]) =>
    path.startsWith(folder) ? [...declarations.keys()].map((name) => ({ path, name })) : [],
  );

const namedBy = (program: Program, place: Place, uses: readonly ('values' | 'types')[]): readonly Place[] => {
  const declaration = program.at(place);
  const names = declaration ? uses.flatMap((use) => [...declaration[use]]) : [];
  return names.flatMap((name) => program.meaning(place.path, name) ?? []);
};

/** Functions that state a type as their result. */
const makersOf = (program: Program, type: Place, where: RegExp): readonly Place[] =>
  [...program.modules].flatMap(([path, { declarations }]) =>
    where.test(path)
      ? [...declarations].flatMap(([name, { gives }]) => {
          const given = [...gives].flatMap((each) => program.meaning(path, each) ?? []);
          return given.some((each) => each.path === type.path && each.name === type.name) ? [{ path, name }] : [];
        })
      : [],
  );

const takesRoad = (program: Program, place: Place): boolean => {
  if (!SERVER.test(place.path)) return false;
  const { type } = READY_MADE;
  return namedBy(program, place, ['types']).some(({ path, name }) => path === type.path && name === type.name);
};
