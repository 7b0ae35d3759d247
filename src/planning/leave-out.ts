/** What has a place in a session and may have to give it up. */
export interface Claim {
  /** 1 is kept longest. */
  readonly priority: number;
}

/** What a block has room for, and what it has not, both in the order of the programme. */
export interface Choice<Item> {
  readonly kept: readonly Item[];
  readonly left: readonly Item[];
}

/**
 * The exact choice of what to leave out: as many of the first priority as fit, of those choices the ones that leave room
 * for most of the second, and so on; of equal choices the one that keeps what stands earlier in the programme. Minutes are
 * asked of whole selections, because set-up and changes are shared; more items never take less time.
 */
export const chooseWithin = <Item extends Claim>(
  items: readonly Item[],
  minutes: number,
  minutesOf: (some: readonly Item[]) => number,
): Choice<Item> => {
  if (minutesOf(items) <= minutes + ROUNDING) return { kept: items, left: [] };
  const search = new Search(items, (some) => minutesOf(some) <= minutes + ROUNDING);
  const kept = new Set(search.best());
  // A session with nothing in it is no session: its most important item stays, and the block is too short for it.
  const stands = kept.size > 0 ? kept : new Set(search.order.slice(0, 1));
  return { kept: items.filter((item) => stands.has(item)), left: items.filter((item) => !stands.has(item)) };
};

/** Minutes are sums of binary fractions. */
const ROUNDING = 1e-9;

/** Depth first, more important items first, each taken before it is left: of equal choices the first found is the one meant. */
class Search<Item extends Claim> {
  readonly order: readonly Item[];
  readonly #place: ReadonlyMap<Item, number>;
  readonly #fits: (some: readonly Item[]) => boolean;
  readonly #classes: readonly number[];
  #best: readonly Item[] = [];
  #bestCounts: readonly number[] = [];

  constructor(items: readonly Item[], fits: (some: readonly Item[]) => boolean) {
    this.#place = new Map(items.map((item, place) => [item, place]));
    this.order = items.toSorted((a, b) => a.priority - b.priority || this.#at(a) - this.#at(b));
    this.#classes = [...new Set(this.order.map(({ priority }) => priority))];
    this.#bestCounts = this.#classes.map(() => 0);
    this.#fits = fits;
  }

  best(): readonly Item[] {
    this.#from(0, []);
    return this.#best;
  }

  #from(next: number, taken: readonly Item[]): void {
    if (!isBetter(this.#counts([...taken, ...this.order.slice(next)]), this.#bestCounts)) return;
    const item = this.order[next];
    if (item === undefined) {
      this.#best = taken;
      this.#bestCounts = this.#counts(taken);
      return;
    }
    const more = [...taken, item];
    if (this.#fits(this.#inOrder(more))) this.#from(next + 1, more);
    this.#from(next + 1, taken);
  }

  /** How many of each priority. */
  #counts(items: readonly Item[]): readonly number[] {
    return this.#classes.map((priority) => items.filter((item) => item.priority === priority).length);
  }

  #inOrder(items: readonly Item[]): readonly Item[] {
    return items.toSorted((a, b) => this.#at(a) - this.#at(b));
  }

  #at(item: Item): number {
    return this.#place.get(item) ?? 0;
  }
}

/** More of the first priority in which two choices differ. */
const isBetter = (counts: readonly number[], than: readonly number[]): boolean => {
  const differs = counts.findIndex((count, place) => count !== than[place]);
  return differs >= 0 && (counts[differs] ?? 0) > (than[differs] ?? 0);
};
