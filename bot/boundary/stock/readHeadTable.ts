import type { z } from "zod";
import type { Instant } from "../../../core/kinds.ts";
import { instantIn } from "../week/localTime.ts";
import { headRow } from "../week/partRows.ts";
import type { ColumnNames, HeadDraft } from "./headDraft.ts";
import { type Lexicon, modelOf, modelWanted } from "./lexicon.ts";
import { placeAccepted, placeNear, placeOf } from "./placeAt.ts";
import type { StockFault } from "./stockKnown.ts";
import { type TableRow, tableOf } from "./tableOf.ts";

/** The columns of the week's heads, without the truck: it is the channel's. */
const receivedHead = headRow.omit({ truck: true });

export const headColumns: readonly string[] = Object.keys(receivedHead.shape);

export const tableColumns: ColumnNames = {
  serial: "serial",
  model: "model",
  hand: "hand",
  stampedLoftDeg: "stamped_loft_deg",
  soledLoftDeg: "soled_loft_deg",
  designLieDeg: "design_lie_deg",
  soledFaceDeg: "soled_face_deg",
  bounceDeg: "bounce_deg",
  massG: "mass_g",
  place: "place",
};

/** Reads measured heads as a table. */
export function readHeadTable(
  text: string,
  lexicon: Lexicon,
  now: Instant,
): { readonly drafts: readonly HeadDraft[]; readonly faults: readonly StockFault[] } {
  const table = tableOf(text, receivedHead);
  const read = table.rows.map((row) => draftOf(row, lexicon, now));
  return { drafts: read.map(({ draft }) => draft), faults: [...table.faults, ...read.flatMap(({ faults }) => faults)] };
}

function draftOf({ row, cells, value }: TableRow<z.output<typeof receivedHead>>, { heads, known }: Lexicon, now: Instant) {
  const faults: StockFault[] = [];
  const fault = (column: string, wanted: { readonly accepted: string; readonly guess?: string | null }) =>
    void faults.push({ row, column, written: cells[column] ?? null, guess: null, ...wanted });
  const hit = value.model === undefined ? null : modelOf(value.model, heads);
  const place = value.place === undefined ? null : placeOf(value.place, known.places);
  if (hit !== null && hit.kind !== "one") fault("model", modelWanted(hit, "a head model on record"));
  if (value.place !== undefined && place === null) {
    fault("place", { accepted: placeAccepted(known.places), guess: placeNear(value.place, known.places) });
  }
  const draft: HeadDraft = {
    row,
    serial: value.serial ?? null,
    model: hit?.kind === "one" ? hit.model : null,
    hand: value.hand ?? null,
    stampedLoftDeg: value.stamped_loft_deg ?? null,
    soledLoftDeg: value.soled_loft_deg ?? null,
    designLieDeg: value.design_lie_deg ?? null,
    soledFaceDeg: value.soled_face_deg ?? null,
    bounceDeg: value.bounce_deg ?? null,
    massG: value.mass_g ?? null,
    place,
    measuredAt: measuredAt(value, now, fault),
  };
  return { draft, faults };
}

/** When it was measured; a head cannot have been measured later than now. */
function measuredAt(
  { zone, measured_at: written }: Partial<z.output<typeof receivedHead>>,
  now: Instant,
  fault: (column: string, wanted: { readonly accepted: string }) => void,
): Instant {
  if (zone === undefined || written === undefined) return now;
  const at = instantIn(zone, written);
  if (at === null) fault("measured_at", { accepted: `a time the clocks of ${zone} show: this one is skipped that day` });
  else if (at > now) fault("measured_at", { accepted: "a time that has passed" });
  return at ?? now;
}
