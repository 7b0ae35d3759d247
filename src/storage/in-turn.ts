/** Runs one piece of work after the other, in the order asked for: the lock of a log inside its process. */
export const inTurn = (): (<Result>(work: () => Promise<Result>) => Promise<Result>) => {
  let last: Promise<unknown> = Promise.resolve();
  return async (work) => {
    const mine = last.then(work, work);
    last = mine;
    return mine;
  };
};
