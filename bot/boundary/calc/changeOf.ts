import type { CalcFault, WrittenNumber } from "./fields.ts";

/** What an angle reads now and how far it should go; null where nobody said. */
export interface AngleChange {
  readonly fromDeg: number | null;
  readonly changeDeg: number | null;
}

/**
 * Reads `56 to 54`, `56, 2 stronger`, `2 stronger`; one angle alone is what is wanted when the present one is known,
 * else the present one.
 *
 * @param written - as written, exact values and changes
 * @param knownDeg - the present value on record, null when there is none
 */
export function changeOf(written: readonly WrittenNumber[], knownDeg: number | null): AngleChange {
  const [first, second] = written.filter(({ change }) => !change);
  const change = written.find((number) => number.change);
  if (change !== undefined) return { fromDeg: first?.value ?? knownDeg, changeDeg: change.value };
  if (first === undefined) return { fromDeg: knownDeg, changeDeg: null };
  if (second !== undefined) return { fromDeg: first.value, changeDeg: second.value - first.value };
  return knownDeg === null ? { fromDeg: first.value, changeDeg: null } : { fromDeg: knownDeg, changeDeg: first.value - knownDeg };
}

interface Limits {
  readonly name: string;
  readonly min: number;
  readonly max: number;
  readonly farthest: number;
}

/** What of such a change cannot be: too many numbers, an end no head has, or too long a way. */
export function changeFaults(
  written: readonly WrittenNumber[],
  { fromDeg, changeDeg }: AngleChange,
  { name, min, max, farthest }: Limits,
): readonly CalcFault[] {
  const word = written.map(({ written: digits }) => digits).join(" to ");
  const outside = (least: number, most: number, what: string): CalcFault => ({
    word: `${name} ${word}`,
    accepted: { kind: "range", name: what, min: least, max: most, unit: "°" },
    guess: null,
  });
  if (written.length > 2 || written.filter(({ change }) => change).length > 1) {
    return [{ word, accepted: { kind: "once", name: `${name} from and to` }, guess: null }];
  }
  const ends = fromDeg === null ? [] : [fromDeg, fromDeg + (changeDeg ?? 0)];
  if (ends.some((deg) => deg < min || deg > max)) return [outside(min, max, name)];
  return Math.abs(changeDeg ?? 0) > farthest ? [outside(0, farthest, `a change of ${name}`)] : [];
}
