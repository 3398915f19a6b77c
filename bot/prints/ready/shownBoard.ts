import { instant } from "../../../core/kinds.ts";
import { isLate, type LeftOut } from "../../replies/readyBoardWords.ts";
import type { ReadyBoardPrint } from "./readyBoardPrint.ts";

/** More than this is too small to read on a phone. */
const MOST_ORDERS = 16;
const MOST_ROWS = 18;
const MOST_MS = 6 * 60 * 60_000;

type Order = ReadyBoardPrint["orders"][number];

/** Those promised first, and those without a promise only where there is room left; in the order they came. */
export function promisedFirst(orders: readonly Order[], most: number): readonly Order[] {
  const promised = (order: Order): number => order.promiseAt ?? Number.MAX_VALUE;
  const chosen = new Set(orders.toSorted((a, b) => promised(a) - promised(b)).slice(0, most));
  return orders.filter((order) => chosen.has(order));
}

function within<Stretch extends { readonly from: number; readonly to: number }>(stretches: readonly Stretch[], from: number, to: number): Stretch[] {
  return stretches
    .map((stretch) => ({ ...stretch, from: Math.max(stretch.from, from), to: Math.min(stretch.to, to) }))
    .filter((stretch) => stretch.from < stretch.to);
}

/** A name as a chart can set it: in one line, and nothing in it that a drawing cannot hold. */
const oneLine = (name: string): string => name.replace(/[\s\p{C}]+/gu, " ").trim();

/** As much of a board as a phone can show, and how much is left out. */
export function shownBoard(board: ReadyBoardPrint): { readonly board: ReadyBoardPrint; readonly left: LeftOut } {
  const to = Math.min(board.to, board.from + MOST_MS);
  const orders = promisedFirst(board.orders, MOST_ORDERS).map((order) => ({ ...order, title: oneLine(order.title) }));
  const rows = board.rows.slice(0, MOST_ROWS).map((row) => ({
    ...row,
    label: oneLine(row.label),
    bars: within(row.bars, board.from, to).map((bar) => ({ ...bar, label: oneLine(bar.label) })),
  }));
  const isCut = board.rows.some(({ bars }) => bars.some((bar) => bar.to > to));
  return {
    board: { ...board, truck: oneLine(board.truck), to, closed: within(board.closed, board.from, to), rows, orders },
    left: {
      orders: board.orders.length - orders.length,
      lateOrders: board.orders.filter(isLate).length - orders.filter(isLate).length,
      rows: board.rows.length - rows.length,
      fromAt: isCut ? instant(to) : null,
    },
  };
}
