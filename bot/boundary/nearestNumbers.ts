const MOST_GUESSES = 2;

/** The numbers one slip away from a typed one, by the kind of slip: a digit too many, digits swapped, the point lost or moved. */
function slipsOf(digits: string): readonly (readonly string[])[] {
  const at = Array.from({ length: digits.length }, (_, index) => index);
  const dropped = at.map((index) => digits.slice(0, index) + digits.slice(index + 1));
  const bare = digits.replace(".", "");
  const pointed = Array.from({ length: Math.max(0, bare.length - 1) }, (_, index) => `${bare.slice(0, index + 1)}.${bare.slice(index + 1)}`);
  const swapped = at
    .slice(1)
    .map((index) => digits.slice(0, index - 1) + (digits[index] ?? "") + (digits[index - 1] ?? "") + digits.slice(index + 1));
  const replaced = at.flatMap((index) => [..."0123456789"].map((digit) => digits.slice(0, index) + digit + digits.slice(index + 1)));
  return [[...pointed, ...dropped], swapped, replaced];
}

/**
 * What may have been meant by a number outside its range: one slip of a thumb away and inside, the likeliest kind of
 * slip first, then nearest to what is usual.
 *
 * @param misfit - how far a value is from the usual one, null when it is outside the range
 */
export function nearestNumbers(digits: string, misfit: (value: number) => number | null): readonly string[] {
  if (!/^\d{1,6}(?:\.\d{1,4})?$/.test(digits)) return [];
  for (const slips of slipsOf(digits)) {
    const written = new Set(slips.filter((slip) => /^[1-9]\d*(?:\.\d+)?$/.test(slip)).map((slip) => String(Number(slip))));
    const inside = [...written].flatMap((slip) => {
      const distance = misfit(Number(slip));
      return distance === null ? [] : [{ slip, distance }];
    });
    if (inside.length === 0) continue;
    const ranked = inside.sort((one, other) => one.distance - other.distance);
    return ranked.slice(0, MOST_GUESSES).map(({ slip }) => slip);
  }
  return [];
}
