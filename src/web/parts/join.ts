/** Class names, without those that do not apply. */
export const join = (...names: readonly (string | false | null | undefined)[]): string =>
  names.filter((name) => typeof name === 'string' && name !== '').join(' ');
