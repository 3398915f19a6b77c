import type { ScatterSeriesOption } from "echarts";
import { isLate } from "../../replies/readyBoardWords.ts";
import { colours } from "./boardLook.ts";
import { minutesIn } from "./boardTime.ts";
import { wallsOf } from "./boardWalls.ts";
import type { ReadyBoardPrint } from "./readyBoardPrint.ts";

type Order = ReadyBoardPrint["orders"][number];
interface Look {
  readonly symbol: string;
  readonly symbolSize: [number, number];
  readonly color: string;
}

/** Below an order's words. */
const LOWER = 19;

/** One mark an order where it has such a time; one that lies outside the day is in its words only. */
function marks(board: ReadyBoardPrint, { color, ...symbol }: Look, timeOf: (order: Order) => number | null): ScatterSeriesOption {
  const data = board.orders.flatMap((order, lane): [number, number][] => {
    const at = timeOf(order);
    return at === null || at < board.from || at > board.to ? [] : [[minutesIn(board, at), lane]];
  });
  return {
    type: "scatter",
    xAxisIndex: 1,
    yAxisIndex: 1,
    data,
    ...symbol,
    symbolOffset: [0, LOWER],
    itemStyle: { color, borderColor: colours.ink, borderWidth: 1, opacity: 1 },
  };
}

/** Likely as a ring, the promise as a diamond, what is wanted as an upright stroke: wide and red when the promise is after it. */
export function markSeries(board: ReadyBoardPrint): readonly ScatterSeriesOption[] {
  const stroke = { symbol: "rect", symbolSize: [6, 30], color: colours.ink } satisfies Look;
  return [
    { ...marks(board, stroke, (order) => (isLate(order) ? null : order.byAt)), ...wallsOf(board, false) },
    marks(board, { ...stroke, symbolSize: [12, 30], color: colours.late }, (order) => (isLate(order) ? order.byAt : null)),
    marks(board, { symbol: "circle", symbolSize: [18, 18], color: colours.paper }, ({ likelyAt }) => likelyAt),
    marks(board, { symbol: "diamond", symbolSize: [26, 30], color: colours.work }, ({ promiseAt }) => promiseAt),
  ];
}
