import type { Day } from '#units/day.ts';
import { isoOfDay } from '#units/day.ts';
import type { Signer } from '#domain/fact.ts';
import type { SignerId } from '#domain/identity.ts';
import type { House } from '#domain/known.ts';
import type { Problem } from '#contract/problem.ts';

export type SignerReading =
  | { readonly kind: 'signer'; readonly signer: Signer; readonly signsFor: string | null }
  | { readonly kind: 'refused'; readonly problem: Problem };

const refusal = (what: string, why: string, whatToDo: string): SignerReading => ({
  kind: 'refused',
  problem: { what, why, whatToDo, field: 'signer' },
});

/** Who writes, if they may on that day. Everything in the log names a person. */
export const writerOn = (house: House, id: SignerId, today: Day): SignerReading => {
  const signer = house.signers.get(id);
  if (!signer)
    return refusal(
      'Nobody of that name signs here.',
      'Every entry names who made it.',
      'Choose who you are and try again.',
    );
  if (signer.from !== null && today < signer.from)
    return refusal(
      `${signer.name} signs from ${isoOfDay(signer.from)} on.`,
      'A deputy signs between two days.',
      'Let somebody else sign, or wait.',
    );
  if (signer.until !== null && today > signer.until)
    return refusal(
      `${signer.name} signed until ${isoOfDay(signer.until)}.`,
      'A deputy signs between two days.',
      'Let somebody else sign, or give the deputy new dates.',
    );
  return { kind: 'signer', signer, signsFor: nameOf(house, signer.signsFor) };
};

/** Who signs for training: a specialist or a deputy. A physician limits, and never loads. */
export const trainerOn = (house: House, id: SignerId, today: Day): SignerReading => {
  const reading = writerOn(house, id, today);
  if (reading.kind === 'signer' && reading.signer.role === 'physician')
    return refusal(
      `${reading.signer.name} signs as a physician.`,
      'Cards, loads and programmes are signed by a specialist or a deputy.',
      'Let the specialist sign.',
    );
  return reading;
};

const nameOf = (house: House, id: SignerId | null): string | null =>
  id === null ? null : (house.signers.get(id)?.name ?? null);
