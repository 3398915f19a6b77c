/** Bisection: where a condition that holds past one point, and not before it, begins to hold. To the last bit. */
export function firstPast(isPast: (x: number) => boolean, before: number, past: number): number {
  let [low, high] = [before, past];
  for (let middle = (low + high) / 2; middle > low && middle < high; middle = (low + high) / 2) {
    [low, high] = isPast(middle) ? [low, middle] : [middle, high];
  }
  return high;
}
