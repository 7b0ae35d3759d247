import type { Exercise } from '#domain/catalogue.ts';

/** Work of the hand against something: where a card sets no force, whoever is there chooses it. */
export const isHandWork = ({ pattern }: Exercise): boolean => pattern === 'grip';
