const WRONG_FIRST_LETTER = 1;

/**
 * Optimal string alignment distance (one insertion, deletion, substitution or swap of neighbours costs 1); another first
 * letter costs one more, because people get the first letter right. Stops as soon as the distance passes `limit`.
 *
 * @returns the distance, or null when it is above `limit`
 */
export function editDistance(typed: string, known: string, limit: number): number | null {
  if (Math.abs(typed.length - known.length) > limit || typed.length > 40 || known.length > 40) return null;
  const extra = typed[0] === known[0] || (typed[0] === known[1] && typed[1] === known[0]) ? 0 : WRONG_FIRST_LETTER;
  let beforeLast: number[] = [];
  let last = Array.from({ length: known.length + 1 }, (_, column) => column);
  for (let row = 1; row <= typed.length; row += 1) {
    const current = [row];
    for (let column = 1; column <= known.length; column += 1) {
      const same = typed[row - 1] === known[column - 1];
      let best = Math.min((last[column] ?? 0) + 1, (current[column - 1] ?? 0) + 1, (last[column - 1] ?? 0) + (same ? 0 : 1));
      const swapped = row > 1 && column > 1 && typed[row - 1] === known[column - 2] && typed[row - 2] === known[column - 1];
      if (swapped) best = Math.min(best, (beforeLast[column - 2] ?? 0) + 1);
      current.push(best);
    }
    if (Math.min(...current) > limit) return null;
    beforeLast = last;
    last = current;
  }
  const distance = (last[known.length] ?? 0) + extra;
  return distance <= limit ? distance : null;
}

/** How many slips are forgiven in a word of so many letters. */
export function forgivenSlips(letters: number): number {
  if (letters < 4) return 0;
  return letters < 6 ? 1 : 2;
}
