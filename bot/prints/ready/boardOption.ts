import type { EChartsOption } from "echarts";
import { barSeries } from "./boardBars.ts";
import { colours, FONT, ROW, TEXT } from "./boardLook.ts";
import { markSeries } from "./boardMarks.ts";
import { clockAtMinute, minutesIn, tickMinutes } from "./boardTime.ts";
import type { ReadyBoardPrint } from "./readyBoardPrint.ts";

/** More orders than this do not fit a phone; the rest is said in a line. */
const MOST_ORDERS = 24;
const WIDTH = 1080;
const ORDER_ROW = 44;
const SIDE = 330;

const cut = (text: string, most: number): string => (text.length <= most ? text : `${text.slice(0, most - 1)}…`);

export interface BoardChart {
  readonly option: EChartsOption;
  readonly width: number;
  readonly height: number;
}

/** A ready board as a chart: bars a technician and station above, promises and what is wanted an order below. */
export function boardOption(board: ReadyBoardPrint): BoardChart {
  const orders = board.orders.slice(0, MOST_ORDERS);
  const left = board.orders.length - orders.length;
  const rows = Math.max(1, board.rows.length);
  const top = 120;
  const benchHeight = rows * ROW;
  const ordersTop = top + benchHeight + 90;
  const ordersHeight = Math.max(1, orders.length) * ORDER_ROW;
  const height = ordersTop + ordersHeight + 130;
  const label = { fontSize: TEXT, fontFamily: FONT, color: colours.ink };
  const xAxis = (gridIndex: number, position: "top" | "bottom") => ({
    type: "value" as const,
    gridIndex,
    position,
    min: 0,
    max: Math.max(1, minutesIn(board, board.to)),
    axisLabel: { ...label, customValues: [...tickMinutes(board)], formatter: (minute: number) => clockAtMinute(board, minute) },
    axisTick: { customValues: [...tickMinutes(board)] },
    splitLine: { show: false },
    axisLine: { show: true, lineStyle: { color: colours.ink } },
  });
  const yAxis = (gridIndex: number, names: readonly string[], most: number) => ({
    type: "category" as const,
    gridIndex,
    inverse: true,
    data: names.map((name) => cut(name, most)),
    axisLabel: { ...label, interval: 0, width: SIDE - 20, overflow: "truncate" as const },
    axisTick: { show: false },
    splitLine: { show: true, lineStyle: { color: colours.faint } },
  });
  const isEmpty = board.rows.every(({ bars }) => bars.length === 0);
  const option: EChartsOption = {
    animation: false,
    backgroundColor: "#ffffff",
    title: [
      { text: `${board.truck}: ready board`, left: 20, top: 14, textStyle: { ...label, fontSize: 34, fontWeight: "bold" } },
      ...(isEmpty ? [{ text: "Nothing on the bench", left: SIDE + 30, top: top + benchHeight / 2 - 18, textStyle: { ...label, fontSize: 32 } }] : []),
      {
        text: `○ likely   ◆ promise   ▌wanted by, red when the promise is after it   ▨ sets${left > 0 ? `   and ${left} more orders` : ""}`,
        left: 20,
        top: height - 50,
        textStyle: { ...label, fontSize: TEXT - 3, fontWeight: "normal" },
      },
    ],
    grid: [
      { left: SIDE, right: 40, top, height: benchHeight },
      { left: SIDE, right: 40, top: ordersTop, height: ordersHeight },
    ],
    xAxis: [xAxis(0, "bottom"), xAxis(1, "bottom")],
    yAxis: [
      yAxis(0, board.rows.length === 0 ? [""] : board.rows.map(({ label: name }) => name), 22),
      yAxis(1, orders.length === 0 ? [""] : orders.map(({ title }) => title), 26),
    ],
    series: [barSeries(board), ...markSeries(board, orders)],
  };
  return { option, width: WIDTH, height };
}
