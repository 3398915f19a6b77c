import type { ScatterSeriesOption } from "echarts";
import { colours } from "./boardLook.ts";
import { minutesIn } from "./boardTime.ts";
import { wallsOf } from "./boardWalls.ts";
import type { ReadyBoardPrint } from "./readyBoardPrint.ts";

type ShownOrder = ReadyBoardPrint["orders"][number];

const marks = (board: ReadyBoardPrint, orders: readonly ShownOrder[], of: (order: ShownOrder) => number | null): readonly [number, number][] =>
  orders.flatMap((order, row): [number, number][] => {
    const at = of(order);
    return at === null || at < board.from || at > board.to ? [] : [[minutesIn(board, at), row]];
  });

/** The promise as a diamond, what is wanted as an upright stroke: red when the promise is after it. */
export function markSeries(board: ReadyBoardPrint, orders: readonly ShownOrder[]): readonly ScatterSeriesOption[] {
  const isLate = ({ promiseAt, byAt }: ShownOrder): boolean => byAt !== null && (promiseAt === null || promiseAt > byAt);
  const series = (data: readonly [number, number][], symbol: string, size: [number, number], color: string): ScatterSeriesOption => ({
    type: "scatter",
    xAxisIndex: 1,
    yAxisIndex: 1,
    data: [...data],
    symbol,
    symbolSize: size,
    itemStyle: { color, borderColor: colours.ink, borderWidth: 1, opacity: 1 },
  });
  return [
    {
      ...series(
        marks(board, orders, ({ likelyAt }) => likelyAt),
        "circle",
        [16, 16],
        "#ffffff",
      ),
      ...wallsOf(board, false),
    },
    series(
      marks(board, orders, ({ promiseAt }) => promiseAt),
      "diamond",
      [26, 30],
      colours.work,
    ),
    series(
      marks(
        board,
        orders.map((order) => (isLate(order) ? order : { ...order, byAt: null })),
        ({ byAt }) => byAt,
      ),
      "rect",
      [8, 36],
      colours.late,
    ),
    series(
      marks(
        board,
        orders.map((order) => (isLate(order) ? { ...order, byAt: null } : order)),
        ({ byAt }) => byAt,
      ),
      "rect",
      [5, 34],
      colours.ink,
    ),
  ];
}
