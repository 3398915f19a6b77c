import { type Instant, instant } from "../../core/kinds.ts";
import type { Card } from "../chat/types.ts";
import type { BoardPrintBar, ReadyBoardPrint } from "../prints/ready/readyBoardPrint.ts";
import { line } from "./card.ts";
import { timeText } from "./shown.ts";

const MOST_BARS = 6;

/** The same as the picture, in words: who does what from when to when, what sets, what was promised, when the truck leaves. */
export function readyBoardRows(board: ReadyBoardPrint): Card["fields"] {
  const now = instant(board.now);
  const at = (time: number): string => timeText(instant(time), now, board.zone);
  const span = ({ from, to, label }: BoardPrintBar): string => `${label} ${at(from)}–${at(to)}`;
  const listed = (bars: readonly BoardPrintBar[]): string =>
    bars.slice(0, MOST_BARS).map(span).join("; ") + (bars.length > MOST_BARS ? `; ${bars.length - MOST_BARS} more` : "");
  const technicians = board.rows.filter(({ kind, bars }) => kind === "technician" && bars.length > 0);
  const waits = board.rows.flatMap(({ bars }) => bars.filter(({ wait }) => wait)).toSorted((a, b) => a.to - b.to);
  const promise = (promiseAt: number | null, byAt: number | null): string =>
    `${promiseAt === null ? "no promise" : `promise ${at(promiseAt)}`}${byAt === null ? "" : `, wanted by ${at(byAt)}${promiseAt !== null && promiseAt > byAt ? ": late" : ""}`}`;
  const leaves: Instant | null = board.rollOutAt === null ? null : instant(board.rollOutAt);
  return [
    ...technicians.map(({ label, bars }) => ({ label, value: line(listed(bars)) })),
    ...(waits.length === 0
      ? []
      : [
          {
            label: "Sets",
            value: line(
              waits
                .slice(0, MOST_BARS)
                .map(({ label, to }) => `${label} till ${at(to)}`)
                .join("; "),
            ),
          },
        ]),
    ...board.orders.map(({ title, promiseAt, byAt }) => ({ label: title, value: line(promise(promiseAt, byAt)) })),
    ...(leaves === null ? [] : [{ label: "Roll-out", value: line(at(leaves)) }]),
    ...(technicians.length === 0 && board.orders.length === 0 ? [{ label: "Bench", value: line("nothing on it") }] : []),
  ];
}
