const GOLDEN = (Math.sqrt(5) - 1) / 2;

/** Where a function of one number with a single valley is least, to within a width. */
export const leastWithin = (
  of: (at: number) => number,
  { low, high, within }: { readonly low: number; readonly high: number; readonly within: number },
): number => {
  let [a, b] = [low, high];
  let [left, right] = [b - GOLDEN * (b - a), a + GOLDEN * (b - a)];
  let [atLeft, atRight] = [of(left), of(right)];
  while (b - a > within) {
    if (atLeft <= atRight) {
      b = right;
      [right, atRight] = [left, atLeft];
      left = b - GOLDEN * (b - a);
      atLeft = of(left);
    } else {
      a = left;
      [left, atLeft] = [right, atRight];
      right = a + GOLDEN * (b - a);
      atRight = of(right);
    }
  }
  return (a + b) / 2;
};
