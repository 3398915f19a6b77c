import { type Instant, instant } from "../../core/kinds.ts";
import type { ReadyBoardPrint } from "../prints/ready/readyBoardPrint.ts";
import { plural, timeText } from "./shown.ts";
import { formatInTimeZone } from "./zonedTime.ts";

type Board = Pick<ReadyBoardPrint, "zone" | "now">;
type Order = ReadyBoardPrint["orders"][number];

/** What a picture of a board leaves out. */
export interface LeftOut {
  readonly orders: number;
  readonly lateOrders: number;
  readonly rows: number;
  /** Nothing is drawn from here on; null when all of the day is. */
  readonly fromAt: Instant | null;
}

const clock = ({ zone, now }: Board, at: number): string => timeText(instant(at), instant(now), zone);

/** All words of a ready board that are not names. */
export const readyBoardWords = {
  clock,
  title: ({ truck }: Pick<ReadyBoardPrint, "truck">): string => `${truck}: ready board`,
  /** `Mon 3 May 09:06 · roll-out Wed 18:00` */
  subtitle: (board: Board & Pick<ReadyBoardPrint, "rollOutAt">): string =>
    [
      formatInTimeZone(instant(board.now), board.zone, "EEE d MMM HH:mm"),
      ...(board.rollOutAt === null ? [] : [`roll-out ${clock(board, board.rollOutAt)}`]),
    ].join(" · "),
  now: "now",
  rollOut: "roll-out",
  empty: ({ orders }: Pick<ReadyBoardPrint, "orders">): string => (orders.length === 0 ? "Nothing on the bench" : "Nothing to do now"),
  legend: { underWay: "under way", next: "next", wait: "sets", likely: "likely", promise: "promise", by: "by", late: "late" },
  /** `promise 09:52, by 09:50: late` */
  times: (board: Board, order: Pick<Order, "promiseAt" | "byAt">): string => {
    const promise = order.promiseAt === null ? "no promise" : `promise ${clock(board, order.promiseAt)}`;
    const by = order.byAt === null ? "" : `, by ${clock(board, order.byAt)}`;
    return `${promise}${by}${isLate(order) ? ": late" : ""}`;
  },
  leftOut: (board: Board, { orders, lateOrders, rows, fromAt }: LeftOut): string => {
    const parts = [
      ...(orders === 0 ? [] : [`${plural(orders, "order")}${lateOrders === 0 ? "" : ` (${lateOrders} late)`}`]),
      ...(rows === 0 ? [] : [plural(rows, "row")]),
      ...(fromAt === null ? [] : [`bars after ${clock(board, fromAt)}`]),
    ];
    return parts.length === 0 ? "" : `Left out: ${parts.join(", ")}`;
  },
};

/** Promised for later than it is wanted. */
export const isLate = ({ promiseAt, byAt }: Pick<Order, "promiseAt" | "byAt">): boolean => promiseAt !== null && byAt !== null && promiseAt > byAt;
