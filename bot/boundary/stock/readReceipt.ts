import type { Instant } from "../../../core/kinds.ts";
import { checkedHeads, lineColumns, type NewHead } from "./headDraft.ts";
import { type Lexicon, lexiconOf } from "./lexicon.ts";
import { byCommas, linesOf, MOST_LINES, type StockLine } from "./linesOf.ts";
import { readHeadLine } from "./readHeadLine.ts";
import { headColumns, readHeadTable, tableColumns } from "./readHeadTable.ts";
import { readPartLine } from "./readPartLine.ts";
import { readReceivedTable, receivedColumns } from "./readPartTable.ts";
import { type PartQuantity, type StockFault, type StockKnown, shownName } from "./stockKnown.ts";
import { headerOf } from "./tableOf.ts";

/** What came into the truck. */
export interface Receipt {
  readonly parts: readonly PartQuantity[];
  readonly heads: readonly NewHead[];
}

export type StockReading<T> =
  | { readonly kind: "read"; readonly value: T }
  | { readonly kind: "empty" }
  | { readonly kind: "faults"; readonly faults: readonly StockFault[] };

type Row = { readonly row: number; readonly value: PartQuantity };

/** Reads what came in, a line a kind of part or a head, or a table with a header. Every fault at once; with one nothing is read. */
export function readReceipt(text: string, known: StockKnown, now: Instant): StockReading<Receipt> {
  const lexicon = lexiconOf(known);
  const header = headerOf(text, [...headColumns, ...receivedColumns]);
  if (header === null) return fromLines(text, lexicon, now);
  if (header.includes("serial")) {
    const { drafts, faults } = readHeadTable(text, lexicon, now);
    const checked = checkedHeads(drafts, tableColumns, lexicon, hasFault(faults));
    return settled([], checked.heads, [...faults, ...checked.faults]);
  }
  const { rows, faults } = readReceivedTable(text, lexicon);
  return settled(rows, [], [...faults, ...misfits(rows, lexicon)]);
}

function fromLines(text: string, lexicon: Lexicon, now: Instant): StockReading<Receipt> {
  const lines = linesOf(text);
  const items = lines.flatMap((line) => (isHead(line) ? byCommas(line, ({ text: word }) => word !== "head") : byCommas(line)));
  if (items.length > MOST_LINES) return { kind: "faults", faults: [tooLong(items.length)] };
  const heads = items.filter(isHead).map((item) => readHeadLine(item, lexicon, now));
  const parts = items.filter((item) => !isHead(item)).map((item) => readPartLine(item, lexicon, { min: 1, place: null }));
  const faults = [...heads.flatMap((head) => head.faults), ...parts.flatMap((part) => (part.kind === "faults" ? part.faults : []))];
  const rows = parts.flatMap((part): readonly Row[] => (part.kind === "part" ? [part] : []));
  const checked = checkedHeads(
    heads.map(({ draft }) => draft),
    lineColumns,
    lexicon,
    hasFault(faults),
  );
  return settled(rows, checked.heads, [...faults, ...checked.faults, ...misfits(rows, lexicon)]);
}

const isHead = ({ words }: StockLine): boolean => words[0]?.text === "head";

export const tooLong = (count: number): StockFault => ({
  row: 1,
  column: "text",
  written: `${count} lines or parts of lines`,
  accepted: `at most ${MOST_LINES} at once`,
  guess: null,
});

function hasFault(faults: readonly StockFault[]): (row: number, column: string) => boolean {
  const known = new Set(faults.map(({ row, column }) => `${row} ${column}`));
  return (row, column) => known.has(`${row} ${column}`);
}

/** A sleeve without a head that takes it has come to the wrong truck. */
function misfits(rows: readonly Row[], { known }: Lexicon): readonly StockFault[] {
  const families = [...new Set(known.headModels.flatMap(({ sleeveFamily }) => sleeveFamily ?? []))];
  return rows
    .filter(({ value: { part } }) => part.kind === "sleeve" && !families.includes(part.family ?? ""))
    .map(({ row, value: { part } }) => ({
      row,
      column: "model",
      written: shownName(part),
      accepted:
        families.length === 0
          ? "a sleeve that a head on record takes: none takes any"
          : `a sleeve of a family heads on record take: ${families.join(", ")}`,
      guess: null,
    }));
}

function settled(rows: readonly Row[], heads: readonly NewHead[], faults: readonly StockFault[]): StockReading<Receipt> {
  if (faults.length > 0) return { kind: "faults", faults: [...faults].sort((one, other) => one.row - other.row) };
  return rows.length + heads.length === 0 ? { kind: "empty" } : { kind: "read", value: { parts: rows.map(({ value }) => value), heads } };
}
