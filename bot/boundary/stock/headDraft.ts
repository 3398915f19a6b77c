import type { Hand, Instant } from "../../../core/kinds.ts";
import { rangeOf } from "../quantityRanges.ts";
import { headRanges, type Range } from "../week/headRanges.ts";
import type { Lexicon } from "./lexicon.ts";
import type { KnownHeadModel, KnownPlace, StockFault } from "./stockKnown.ts";

/** A head as written, not checked yet; null is missing. Angles of the bare head in degrees, face open positive. */
export interface HeadDraft {
  readonly row: number;
  readonly serial: string | null;
  readonly model: KnownHeadModel | null;
  readonly hand: Hand | null;
  readonly stampedLoftDeg: number | null;
  readonly soledLoftDeg: number | null;
  readonly designLieDeg: number | null;
  readonly soledFaceDeg: number | null;
  readonly bounceDeg: number | null;
  readonly massG: number | null;
  readonly place: KnownPlace | null;
  readonly measuredAt: Instant;
}

/** A measured head that can be taken in. */
export type NewHead = { readonly [K in Exclude<keyof HeadDraft, "bounceDeg">]: NonNullable<HeadDraft[K]> } & Pick<HeadDraft, "bounceDeg">;

type Measured = "stampedLoftDeg" | "soledLoftDeg" | "designLieDeg" | "soledFaceDeg" | "bounceDeg" | "massG";
type Column = Exclude<keyof HeadDraft, "row" | "measuredAt">;

/** What the columns are called where the head was written. */
export type ColumnNames = Readonly<Record<Column, string>>;

export const lineColumns: ColumnNames = {
  serial: "serial",
  model: "model",
  hand: "hand",
  stampedLoftDeg: "stamped",
  soledLoftDeg: "loft",
  designLieDeg: "lie",
  soledFaceDeg: "face",
  bounceDeg: "bounce",
  massG: "mass",
  place: "place",
};

const needed: Readonly<Record<Column, string>> = {
  serial: "1 to 12 letters or digits",
  model: "a head model on record",
  hand: "right or left",
  stampedLoftDeg: "the stamped loft",
  soledLoftDeg: "the soled loft, measured bare",
  designLieDeg: "the design lie, measured bare",
  soledFaceDeg: "the soled face, such as 0.3 open",
  bounceDeg: "the bounce: a wedge with a grind has one",
  massG: "the mass in g",
  place: "the drawer it lies in, such as D-7",
};
const neededAlways = ["serial", "model", "hand", "stampedLoftDeg", "soledLoftDeg", "designLieDeg", "soledFaceDeg", "massG", "place"] as const;
const faceDeg: Range = { min: -6, max: 6 };
const bounceDeg: Range = { min: -2, max: 25 };

/** The ranges of a bare head, with the family whose they are. */
function rangesOf({ family }: KnownHeadModel): Readonly<Record<Measured, { readonly range: Range; readonly unit: string; readonly whose: string }>> {
  const loft = { range: rangeOf("stampedLoftDeg", family), unit: "deg", whose: family };
  return {
    stampedLoftDeg: loft,
    soledLoftDeg: loft,
    designLieDeg: { range: headRanges[family].lieDeg, unit: "deg", whose: family },
    massG: { range: headRanges[family].massG, unit: "g", whose: family },
    soledFaceDeg: { range: faceDeg, unit: "deg, open positive", whose: "face" },
    bounceDeg: { range: bounceDeg, unit: "deg", whose: "bounce" },
  };
}

/**
 * Checks heads together: each measured, each possible for its family, no serial known already or twice. What a row
 * has a fault in already is not faulted again.
 *
 * @param drafts - as read
 * @param refused - the columns of each row that could not be read
 */
export function checkedHeads(
  drafts: readonly HeadDraft[],
  columns: ColumnNames,
  lexicon: Lexicon,
  refused: (row: number, column: string) => boolean,
): { readonly heads: readonly NewHead[]; readonly faults: readonly StockFault[] } {
  const known = new Set(lexicon.known.serials.map(({ serial }) => serial.toLowerCase()));
  const firstRows = new Map<string, number>();
  const faults = drafts.flatMap((draft): readonly StockFault[] => {
    const fault = (column: Column, written: string | null, accepted: string) => ({
      row: draft.row,
      column: columns[column],
      written,
      accepted,
      guess: null,
    });
    const first = draft.serial === null ? undefined : firstRows.get(draft.serial.toLowerCase());
    if (draft.serial !== null && first === undefined) firstRows.set(draft.serial.toLowerCase(), draft.row);
    const twice =
      first !== undefined
        ? [fault("serial", draft.serial, `each serial once: row ${first} has it`)]
        : known.has(draft.serial?.toLowerCase() ?? "")
          ? [fault("serial", draft.serial, "a serial that is not on record yet")]
          : [];
    const hasGrind = draft.model?.family === "wedge" && draft.model.grind !== null;
    const missing = [...neededAlways, ...(hasGrind ? (["bounceDeg"] as const) : [])]
      .filter((column) => draft[column] === null && !refused(draft.row, columns[column]))
      .map((column) => fault(column, null, needed[column]));
    return [...twice, ...missing, ...impossible(draft, fault), ...misplaced(draft, fault)];
  });
  const isWhole = (draft: HeadDraft): draft is HeadDraft & NewHead => neededAlways.every((column) => draft[column] !== null);
  return { heads: drafts.filter(isWhole), faults };
}

type Fault = (column: Column, written: string | null, accepted: string) => StockFault;

function impossible(draft: HeadDraft, fault: Fault): readonly StockFault[] {
  if (draft.model === null) return [];
  return (Object.entries(rangesOf(draft.model)) as [Measured, ReturnType<typeof rangesOf>[Measured]][]).flatMap(
    ([column, { range, unit, whose }]) => {
      const value = draft[column];
      const isInside = value === null || (value >= range.min && value <= range.max);
      return isInside ? [] : [fault(column, String(value), `${whose} ${range.min}–${range.max} ${unit}`)];
    },
  );
}

function misplaced({ place }: HeadDraft, fault: Fault): readonly StockFault[] {
  return place === null || place.kind === "drawer" || place.kind === "playerBin" ? [] : [fault("place", place.shown, needed.place)];
}
