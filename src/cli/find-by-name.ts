import type { Signer } from '#domain/fact.ts';
import type { Known } from '#domain/known.ts';
import type { Snapshot } from '#actions/snapshot.ts';

export type Found<Thing> =
  { readonly kind: 'found'; readonly thing: Thing } | { readonly kind: 'none'; readonly says: string };

const key = (name: string): string => name.trim().toLocaleLowerCase('en').normalize('NFC').replace(/\s+/g, ' ');

const byName = <Thing>(
  things: readonly Thing[],
  nameOf: (thing: Thing) => string,
  typed: string,
  what: string,
): Found<Thing> => {
  const exact = things.filter((thing) => key(nameOf(thing)) === key(typed));
  const close = exact.length > 0 ? exact : things.filter((thing) => key(nameOf(thing)).includes(key(typed)));
  const [only] = close;
  if (only !== undefined && close.length === 1) return { kind: 'found', thing: only };
  const names = (close.length > 0 ? close : things).map(nameOf).join(', ');
  return {
    kind: 'none',
    says:
      close.length > 1
        ? `"${typed}" could be ${names}: give the whole name.`
        : `There is no ${what} "${typed}"; there ${things.length === 1 ? 'is' : 'are'}: ${names === '' ? 'none' : names}.`,
  };
};

export const personNamed = ({ people, known }: Snapshot, typed: string): Found<Known> =>
  byName(
    people.flatMap((person) => known(person) ?? []),
    ({ name }) => name,
    typed,
    'person',
  );

export const signerNamed = ({ house }: Snapshot, typed: string): Found<Signer> =>
  byName([...house.signers.values()], ({ name }) => name, typed, 'signer');
