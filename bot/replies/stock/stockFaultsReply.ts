import type { StockFault } from "../../boundary/stock/stockKnown.ts";
import type { Line, Reply } from "../../chat/types.ts";
import { card, line, reply } from "../card.ts";

const MOST_FAULTS = 25;
const LONGEST_WORD = 60;

/** A word as typed, shortened when nobody could read it all. */
export const short = (word: string): string => (word.length > LONGEST_WORD ? `${word.slice(0, LONGEST_WORD)}…` : word);

function faultLine({ row, column, written, accepted, guess }: StockFault): Line {
  const shown = written === null || written === "" ? "missing: " : `${short(written)}? `;
  return line(`Row ${row}, ${short(column)}: `, { strong: shown }, `${accepted}.${guess === null ? "" : ` Meant ${guess}?`}`);
}

/** Every fault by row and column, with what was written and what would be accepted; nothing was taken. */
export function stockFaultsReply(view: string, faults: readonly StockFault[]): Reply {
  const more = faults.length - MOST_FAULTS;
  return reply(
    card({
      kind: "stock.faults",
      title: faults.length === 1 ? `One thing is off, so nothing was changed` : `${faults.length} things are off, so nothing was changed`,
      tone: "attention",
      lines: [
        ...faults.slice(0, MOST_FAULTS).map(faultLine),
        ...(more > 0 ? [line(`and ${more} more`)] : []),
        line(`Mend it and send all of it again: /stock ${view}`),
      ],
      data: {
        faultCount: faults.length,
        faults: faults.slice(0, MOST_FAULTS).map(({ row, column, written, guess }) => ({
          rowNumber: row,
          column: short(column),
          written: written === null ? null : short(written),
          guess,
        })),
      },
    }),
  );
}
