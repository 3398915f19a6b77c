import { TZDate } from "@date-fns/tz";
import type { ReadyBoardPrint } from "./readyBoardPrint.ts";

const MS_PER_MIN = 60_000;

/** Minutes after the left edge. */
export const minutesIn = (board: ReadyBoardPrint, at: number): number => (at - board.from) / MS_PER_MIN;

/** The clock of the venue at so many minutes after the left edge. */
export function clockAtMinute(board: Pick<ReadyBoardPrint, "from" | "zone">, minute: number): string {
  const at = new TZDate(board.from + minute * MS_PER_MIN, board.zone);
  return `${String(at.getHours()).padStart(2, "0")}:${String(at.getMinutes()).padStart(2, "0")}`;
}

/** Whole hours of the venue, or parts of them over a short time. */
function ticks(board: ReadyBoardPrint): { readonly firstMin: number; readonly everyMin: number } {
  const spanMin = minutesIn(board, board.to);
  const everyMin = [5, 15, 30, 60, 120, 240].find((step) => spanMin / step <= 8) ?? 480;
  const past = new TZDate(board.from, board.zone);
  const intoMin = (past.getHours() * 60 + past.getMinutes()) % everyMin;
  return { firstMin: intoMin === 0 ? 0 : everyMin - intoMin, everyMin };
}

/** Where the axis is marked; the first mark lies on a whole step of the venue's clock. */
export function tickMinutes(board: ReadyBoardPrint): readonly number[] {
  const { firstMin, everyMin } = ticks(board);
  const spanMin = minutesIn(board, board.to);
  return Array.from({ length: Math.max(0, Math.floor((spanMin - firstMin) / everyMin) + 1) }, (_, at) => firstMin + at * everyMin);
}
