import type { About, OpenHouse, Opened, Serving, Surroundings } from './serving.ts';

/** One process has one log open. The first that is opened stays; two never mix. */
export const oneHouse = (open: Surroundings['open']): Pick<Serving, 'house' | 'openHouse'> => {
  let house: OpenHouse | null = null;
  let opening: Promise<Opened> | null = null;
  const openOnce = async (which: About): Promise<Opened> => {
    const opened = await open(which);
    if (opened.kind === 'open') house = opened.house;
    return opened;
  };
  return {
    house: () => house,
    openHouse: async (which) => {
      await opening;
      if (house) return house.workplace.store.about.kind === which ? { kind: 'open', house } : otherIsOpen();
      opening = openOnce(which);
      return opening;
    },
  };
};

const otherIsOpen = (): Opened => ({
  kind: 'trouble',
  problem: {
    what: 'The other data is open.',
    why: 'The invented scenario and your own data never share a program or a file.',
    whatToDo: 'End the program, then start it with the other one.',
    field: 'which',
  },
});
