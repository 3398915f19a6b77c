import type { Card } from "../chat/types.ts";
import type { BoardPrintBar, ReadyBoardPrint } from "../prints/ready/readyBoardPrint.ts";
import { promisedFirst } from "../prints/ready/shownBoard.ts";
import { line } from "./card.ts";
import { readyBoardWords } from "./readyBoardWords.ts";

const MOST_BARS = 6;
const MOST_ORDERS = 16;

/** Several things in a row, and how many are not named. */
function listed(all: readonly string[]): string {
  const left = all.length - MOST_BARS;
  return [...all.slice(0, MOST_BARS), ...(left > 0 ? [`${left} more`] : [])].join("; ");
}

/** The same as the picture, in words: who does what from when to when, what sets, what was promised, when the truck leaves. */
export function readyBoardRows(board: ReadyBoardPrint): Card["fields"] {
  const at = (time: number): string => readyBoardWords.clock(board, time);
  const span = ({ from, to, label }: BoardPrintBar): string => `${label} ${at(from)}–${at(to)}`;
  const technicians = board.rows.filter(({ kind, bars }) => kind === "technician" && bars.length > 0);
  const waits = board.rows.flatMap(({ bars }) => bars.filter(({ wait }) => wait)).toSorted((a, b) => a.to - b.to);
  const orders = promisedFirst(board.orders, MOST_ORDERS);
  const left = board.orders.length - orders.length;
  const row = (label: string, text: string): Card["fields"][number] => ({ label, value: line(text) });
  return [
    ...technicians.map(({ label, bars }) => row(label, listed(bars.map(span)))),
    ...(waits.length === 0 ? [] : [row("Setting", listed(waits.map(({ label, to }) => `${label} till ${at(to)}`)))]),
    ...(board.rollOutAt === null ? [] : [row("Roll-out", at(board.rollOutAt))]),
    ...orders.map((order) => row(order.title, readyBoardWords.times(board, order))),
    ...(left === 0 ? [] : [row("Later", `${left} more ${left === 1 ? "order" : "orders"}`)]),
    ...(technicians.length === 0 ? [row("Bench", board.orders.length === 0 ? "nothing on it" : "nothing to do now")] : []),
  ];
}
