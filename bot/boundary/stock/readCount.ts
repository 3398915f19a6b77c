import { editDistance } from "../editDistance.ts";
import { type Lexicon, lexiconOf } from "./lexicon.ts";
import { byCommas, linesOf, MOST_LINES, type StockLine, typedIn } from "./linesOf.ts";
import { placeAt } from "./placeAt.ts";
import { readPartLine } from "./readPartLine.ts";
import { countedColumns, readCountedTable } from "./readPartTable.ts";
import { type StockReading, tooLong } from "./readReceipt.ts";
import { type KnownPlace, type PartQuantity, type StockFault, type StockKnown, shownName } from "./stockKnown.ts";
import { headerOf } from "./tableOf.ts";

/** A drawer and all that was found in it. */
export interface CountedDrawer {
  readonly place: KnownPlace;
  readonly serials: readonly string[];
}

/** What was counted: parts one by one, drawers whole. */
export interface Count {
  readonly parts: readonly PartQuantity[];
  readonly drawers: readonly CountedDrawer[];
}

type PartRow = { readonly row: number; readonly value: PartQuantity };
type DrawerRow = { readonly row: number; readonly value: CountedDrawer };
const nothing = new Set(["empty", "none", "nothing", "no"]);

/** Reads a count: `D-7 0417 0422`, `main rack dunlin 60 x 7, gorse standard 12`, or a table of place, model, quantity. */
export function readCount(text: string, known: StockKnown): StockReading<Count> {
  const lexicon = lexiconOf(known);
  if (headerOf(text, countedColumns) !== null) {
    const { rows, faults } = readCountedTable(text, lexicon);
    return settled(rows, [], faults);
  }
  const lines = linesOf(text);
  if (lines.length > MOST_LINES) return { kind: "faults", faults: [tooLong(lines.length)] };
  const parts: PartRow[] = [];
  const drawers: DrawerRow[] = [];
  const faults: StockFault[] = [];
  for (const line of lines) {
    const placed = placeAt(line.words, 0, known.places);
    const place = placed?.places.length === 1 ? (placed.places[0] ?? null) : null;
    if (place?.kind === "drawer" && placed !== null) {
      const { serials, faults: found } = serialsIn(line, placed.next, known);
      drawers.push({ row: line.row, value: { place, serials } });
      faults.push(...found);
    } else readParts(line, place, lexicon, { parts, faults });
  }
  return settled(parts, drawers, faults);
}

/** The place a line begins with holds for all of it. */
function readParts(
  line: StockLine,
  place: KnownPlace | null,
  lexicon: Lexicon,
  { parts, faults }: { readonly parts: PartRow[]; readonly faults: StockFault[] },
): void {
  const items = byCommas(line);
  if (items.length > MOST_LINES) faults.push(tooLong(items.length));
  for (const [index, item] of items.slice(0, MOST_LINES).entries()) {
    const read = readPartLine(item, lexicon, { min: 0, place: index === 0 ? null : place });
    if (read.kind === "part") parts.push(read);
    else faults.push(...read.faults);
  }
}

function serialsIn(
  line: StockLine,
  from: number,
  known: StockKnown,
): { readonly serials: readonly string[]; readonly faults: readonly StockFault[] } {
  const typed = typedIn(line, from)
    .split(/[\s,;/]+/)
    .map((word) => word.replace(/^[.:()]+|[.:()?!]+$/g, ""))
    .filter((word) => word !== "");
  const fault = (written: string | null, accepted: string, guess: string | null = null) => ({
    row: line.row,
    column: "serial",
    written,
    accepted,
    guess,
  });
  if (typed.length === 0) return { serials: [], faults: [fault(null, "the serials found, or empty, behind the drawer")] };
  if (typed.length > MOST_LINES) return { serials: [], faults: [fault(`${typed.length} serials`, `at most ${MOST_LINES}`)] };
  if (typed.length === 1 && nothing.has(typed[0]?.toLowerCase() ?? "")) return { serials: [], faults: [] };
  const heads = new Map(known.serials.map((head) => [head.serial.toLowerCase(), head]));
  const read = typed.map((written) => {
    const head = heads.get(written.toLowerCase());
    if (head === undefined) return { serials: [], faults: [fault(written, "the serial of a head on record", nearSerial(written, known))] };
    return head.retired ? { serials: [], faults: [fault(head.serial, "a head that is not retired")] } : { serials: [head.serial], faults: [] };
  });
  return { serials: read.flatMap(({ serials }) => serials), faults: read.flatMap(({ faults }) => faults) };
}

/** The one serial that is a slip away. */
function nearSerial(written: string, { serials }: StockKnown): string | null {
  const near = serials.filter(({ serial, retired }) => !retired && editDistance(written.toLowerCase(), serial.toLowerCase(), 1) !== null);
  return near.length === 1 ? (near[0]?.serial ?? null) : null;
}

function settled(parts: readonly PartRow[], drawers: readonly DrawerRow[], faults: readonly StockFault[]): StockReading<Count> {
  const twice = [
    ...repeated(parts, ({ part, place }) => ({ key: `${part.id} ${place.id}`, column: "model", written: `${shownName(part)}, ${place.shown}` })),
    ...repeated(drawers, ({ place }) => ({ key: `${place.id}`, column: "place", written: place.shown })),
    ...repeated(
      drawers.flatMap(({ row, value }) => value.serials.map((serial) => ({ row, value: serial }))),
      (serial) => ({ key: serial, column: "serial", written: serial }),
    ),
  ];
  if (faults.length + twice.length > 0) return { kind: "faults", faults: [...faults, ...twice].sort((one, other) => one.row - other.row) };
  if (parts.length + drawers.length === 0) return { kind: "empty" };
  return { kind: "read", value: { parts: parts.map(({ value }) => value), drawers: drawers.map(({ value }) => value) } };
}

/** A thing counted twice has two counts. */
function repeated<T>(
  rows: readonly { readonly row: number; readonly value: T }[],
  nameOf: (value: T) => { readonly key: string; readonly column: string; readonly written: string },
): readonly StockFault[] {
  const firstRows = new Map<string, number>();
  return rows.flatMap(({ row, value }) => {
    const { key, column, written } = nameOf(value);
    const first = firstRows.get(key);
    if (first === undefined) {
      firstRows.set(key, row);
      return [];
    }
    return [{ row, column, written, accepted: `each once: row ${first} has it`, guess: null }];
  });
}
