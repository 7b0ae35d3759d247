import { createContext, use, useMemo, useState, type ReactNode } from 'react';
import type { HouseWindow } from '#contract/windows/house-window.ts';
import type { Signer } from '#domain/fact.ts';

const KEY = 'who signs';

export interface Signing {
  /** Whose name goes under what is written now; null until somebody is chosen. */
  readonly signer: Signer | null;
  /** Everybody who may sign today. */
  readonly signers: readonly Signer[];
  /** "for M. Arkwright", where a deputy signs; else null. */
  readonly signsFor: string | null;
  readonly choose: (id: string) => void;
}

const SignerContext = createContext<Signing>({ signer: null, signers: [], signsFor: null, choose: () => undefined });

const maySign = ({ from, until }: Signer, today: number): boolean =>
  (from === null || from <= today) && (until === null || today <= until);

/** Who may sign today, specialists first. */
export const signersOn = (signers: readonly Signer[], today: number): readonly Signer[] =>
  signers.filter((signer) => maySign(signer, today)).toSorted((a, b) => rank(a) - rank(b));

const rank = ({ role }: Signer): number => (role === 'specialist' ? 0 : role === 'deputy' ? 1 : 2);

/** Remembers for this browser tab who signs. Where only one person may, that person does. */
export const SignerProvider = ({ house, children }: { readonly house: HouseWindow; readonly children: ReactNode }) => {
  const [chosen, setChosen] = useState(() => sessionStorage.getItem(KEY));
  const signing = useMemo((): Signing => {
    const signers = signersOn(house.signers, house.today);
    const signer = signers.find(({ id }) => id === chosen) ?? (signers.length === 1 ? (signers[0] ?? null) : null);
    return {
      signer,
      signers,
      signsFor: house.signers.find(({ id }) => id === signer?.signsFor)?.name ?? null,
      choose: (id) => {
        sessionStorage.setItem(KEY, id);
        setChosen(id);
      },
    };
  }, [house, chosen]);
  return <SignerContext value={signing}>{children}</SignerContext>;
};

/** Who is signing, chosen at the top of every page. */
export const useSigner = (): Signing => use(SignerContext);
