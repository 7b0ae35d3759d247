import type { Problem } from '#contract/problem.ts';

/** Ends the program with one sentence. */
export const endWith = (says: string): never => {
  console.error(says);
  process.exit(1);
};

export const inOneLine = ({ what, why, whatToDo }: Problem): string => `${what} ${why} ${whatToDo}`;
