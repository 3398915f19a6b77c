import { z } from "zod";
import { cell, text, whole } from "../week/cells.ts";
import { type Lexicon, modelOf, modelWanted } from "./lexicon.ts";
import { placeAccepted, placeNear, placeOf } from "./placeAt.ts";
import { kindWords, MOST_PARTS, usualPlace } from "./readPartLine.ts";
import type { PartQuantity, StockFault } from "./stockKnown.ts";
import { type TableRow, tableOf } from "./tableOf.ts";

const kindCell = cell({ accepted: "shaft, grip, sleeve, weight, goods", read: (written) => kindWords.get(written.toLowerCase()) });
const placed = { model: cell(text(40)), place: z.string(), quantity: cell(whole(1, MOST_PARTS)) };

const received = z.object({ kind: kindCell, ...placed });
const counted = z.object({ ...placed, quantity: cell(whole(0, MOST_PARTS)) });

interface PartTable {
  readonly rows: readonly { readonly row: number; readonly value: PartQuantity }[];
  readonly faults: readonly StockFault[];
}

export const receivedColumns: readonly string[] = Object.keys(received.shape);
export const countedColumns: readonly string[] = Object.keys(counted.shape);

/** Reads what came in, as a table: kind, model, place (empty is the usual one), quantity. */
export const readReceivedTable = (written: string, lexicon: Lexicon): PartTable => partsOf(tableOf(written, received), lexicon);

/** Reads what was counted, as a table: place, model, quantity. */
export const readCountedTable = (written: string, lexicon: Lexicon): PartTable => partsOf(tableOf(written, counted), lexicon);

type Row = z.output<typeof counted> & Partial<z.output<typeof received>>;

function partsOf(table: { readonly rows: readonly TableRow<Row>[]; readonly faults: readonly StockFault[] }, lexicon: Lexicon): PartTable {
  const read = table.rows.map((row) => partOf(row, lexicon));
  return {
    rows: read.flatMap(({ row, value }) => (value === null ? [] : [{ row, value }])),
    faults: [...table.faults, ...read.flatMap((row) => row.faults)],
  };
}

function partOf({ row, value: { kind, model, place: written = "", quantity } }: TableRow<Row>, lexicon: Lexicon) {
  const { places } = lexicon.known;
  const hit = model === undefined ? null : modelOf(model, kind === undefined ? lexicon.parts : lexicon.ofKind[kind]);
  const part = hit?.kind === "one" ? hit.model : null;
  const usual = part === null ? null : usualPlace(part.kind, lexicon);
  const place = written === "" ? usual : placeOf(written, places);
  const isMisplaced = place === null && (written !== "" || part !== null);
  const faults: readonly StockFault[] = [
    ...(hit === null || hit.kind === "one" ? [] : [{ row, column: "model", written: model ?? null, ...modelWanted(hit, "a model on record") }]),
    ...(isMisplaced ? [{ row, column: "place", written, accepted: placeAccepted(places), guess: placeNear(written, places) }] : []),
  ];
  const isWhole = part !== null && place !== null && quantity !== undefined;
  return { row, faults, value: isWhole ? { part, place, quantity } : null };
}
