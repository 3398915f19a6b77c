import { DomainError } from "../errors.ts";
import { listOf } from "../quantity/listOf.ts";
import type { Degrees } from "../quantity/units.ts";
import { composedTilt } from "./composedTilt.ts";
import type { Sleeve, SleevePiece } from "./sleeve.ts";
import { checkedTilt, type SleeveTilt } from "./sleeveTilt.ts";

/** One way a sleeve can be set. */
interface SleeveSetting {
  readonly mark: string;
  readonly tilt: SleeveTilt;
  /** Where the piece that holds the shaft stands; a ring turns no shaft. */
  readonly shaftClockDeg: Degrees;
}

const MOST_MARKS = 48;

/** Entries that each have a mark of their own. */
export function eachMarkOnce<T extends { readonly mark: string }>(entries: readonly T[]): readonly T[] {
  const twice = entries.find(({ mark }, index) => entries.findIndex((one) => one.mark === mark) < index);
  if (twice !== undefined) {
    throw new DomainError("quantity-unreadable", { field: "mark", written: twice.mark, accepted: "every mark once" });
  }
  return entries;
}

function pieceSettings({ tiltDeg, marks }: SleevePiece): readonly SleeveSetting[] {
  const printed = listOf(marks, { field: "marks", min: 1, max: MOST_MARKS });
  return eachMarkOnce(printed).map(({ mark, clockDeg }) => ({ mark, tilt: checkedTilt({ tiltDeg, clockDeg }), shaftClockDeg: clockDeg }));
}

/**
 * Every way a sleeve can be set, in the order printed, the ring's marks first.
 *
 * @param sleeve - of one piece or two, angles in degrees
 * @returns mark, tilt and the clock of the piece that holds the shaft
 * @throws {DomainError} `quantity-out-of-range` when an angle is impossible, `list-of-wrong-size` when there is no mark or more than 48
 * @throws {DomainError} `quantity-unreadable` when a mark is printed twice, or two pieces make one mark in two ways
 */
export function sleeveSettings(sleeve: Sleeve): readonly SleeveSetting[] {
  if (!("ring" in sleeve)) {
    return pieceSettings(sleeve);
  }
  const inner = pieceSettings(sleeve.sleeve);
  const settings = pieceSettings(sleeve.ring).flatMap((ring) =>
    inner.map(({ mark, tilt, shaftClockDeg }) => ({ mark: `${ring.mark} ${mark}`, tilt: composedTilt([ring.tilt, tilt]), shaftClockDeg })),
  );
  return eachMarkOnce(settings);
}

/** The row of a mark, refused when the mark is not printed. */
export function rowOfMark<T extends { readonly mark: string }>(rows: readonly T[], mark: string, field: string): T {
  const row = rows.find((one) => one.mark === mark);
  if (row === undefined) {
    throw new DomainError("quantity-unreadable", { field, written: mark, accepted: rows.map((one) => one.mark).join(", ") });
  }
  return row;
}
