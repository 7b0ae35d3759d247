import type { Site } from '#domain/catalogue.ts';
import type { House } from '#domain/known.ts';
import type { Problem } from '#contract/problem.ts';

/** What stands against a site: a name of its own, and for ever on the ground or aboard. */
export const siteProblems = (site: Site, house: House): readonly Problem[] => {
  const before = house.sites.get(site.id);
  const taken = [...house.sites.values()].some(
    ({ id, name }) => id !== site.id && name.trim().toLowerCase() === site.name.trim().toLowerCase(),
  );
  return [
    ...(taken ? [nameTaken(site.name)] : []),
    ...(before && before.place !== site.place ? [placeStays(before)] : []),
  ];
};

const nameTaken = (name: string): Problem => ({
  what: `${name} is a site already.`,
  why: 'Lists show a site by its name.',
  whatToDo: 'Give it another name.',
  field: 'entry.site.name',
});

const placeStays = ({ name, place }: Site): Problem => ({
  what: `${name} is ${place === 'aboard' ? 'aboard' : 'on the ground'}.`,
  why: 'Loads of its machines are those of that gravity: they would all change their meaning.',
  whatToDo: 'Enter the other place as a site of its own.',
  field: 'entry.site.place',
});
