import { TZDate } from "@date-fns/tz";
import type { CustomSeriesOption, EChartsOption, ScatterSeriesOption } from "echarts";
import type { BoardPrintBar, ReadyBoardPrint } from "./readyBoardPrint.ts";

const MS_PER_MIN = 60_000;

/** Colours told apart by people who see no red and green as well; waits and marks differ in shape besides. */
const colours = {
  ink: "#1d2733",
  faint: "#cfd6dd",
  work: "#2f6f9f",
  underWay: "#123f63",
  wait: "#e0b04a",
  waitStripe: "#7a5a12",
  closed: "#e9ecef",
  late: "#b3261e",
  wall: "#1d2733",
} as const;

export const FONT = "DejaVu Sans Condensed";
/** More orders than this do not fit a phone; the rest is said in a line. */
const MOST_ORDERS = 24;
const WIDTH = 1080;
const ROW = 52;
const ORDER_ROW = 44;
const SIDE = 330;
const TEXT = 25;

/** Minutes after the left edge. */
const minutesIn = (board: ReadyBoardPrint, at: number): number => (at - board.from) / MS_PER_MIN;

/** The clock of the venue at so many minutes after the left edge. */
export function clockAtMinute(board: Pick<ReadyBoardPrint, "from" | "zone">, minute: number): string {
  const at = new TZDate(board.from + minute * MS_PER_MIN, board.zone);
  return `${String(at.getHours()).padStart(2, "0")}:${String(at.getMinutes()).padStart(2, "0")}`;
}

/** Whole hours of the venue, or halves and quarters of them over a short time. */
function ticks(board: ReadyBoardPrint): { readonly firstMin: number; readonly everyMin: number } {
  const spanMin = minutesIn(board, board.to);
  const everyMin = [15, 30, 60, 120, 240].find((step) => spanMin / step <= 8) ?? 480;
  const past = new TZDate(board.from, board.zone);
  const intoMin = (past.getHours() * 60 + past.getMinutes()) % everyMin;
  return { firstMin: intoMin === 0 ? 0 : everyMin - intoMin, everyMin };
}

/** Where the axis is marked; the first mark lies on a whole step of the venue's clock. */
function tickMinutes(board: ReadyBoardPrint): readonly number[] {
  const { firstMin, everyMin } = ticks(board);
  const spanMin = minutesIn(board, board.to);
  return Array.from({ length: Math.max(0, Math.floor((spanMin - firstMin) / everyMin)) + 1 }, (_, at) => firstMin + at * everyMin);
}

interface Walls {
  readonly markLine: NonNullable<CustomSeriesOption["markLine"]>;
  readonly markArea: NonNullable<CustomSeriesOption["markArea"]>;
}

/** Now, roll-out, and closed hours behind everything. */
function wallsOf(board: ReadyBoardPrint, named: boolean): Walls {
  const within = (at: number | null): at is number => at !== null && at >= board.from && at <= board.to;
  const label = (text: string) => ({
    show: named,
    position: "start" as const,
    formatter: text,
    fontSize: TEXT - 3,
    fontFamily: FONT,
    color: colours.ink,
  });
  const line = (at: number, text: string, type: "dashed" | "solid", width: number) => ({
    xAxis: minutesIn(board, at),
    label: label(text),
    lineStyle: { color: colours.wall, width, type },
  });
  return {
    markLine: {
      silent: true,
      symbol: "none",
      data: [
        ...(within(board.now) ? [line(board.now, `now ${clockAtMinute(board, minutesIn(board, board.now))}`, "dashed", 2)] : []),
        ...(within(board.rollOutAt) ? [line(board.rollOutAt, "roll-out", "solid", 6)] : []),
      ],
    },
    markArea: {
      silent: true,
      itemStyle: { color: colours.closed },
      data: board.closed.map(({ from, to }) => [{ xAxis: minutesIn(board, from) }, { xAxis: minutesIn(board, to) }]),
    },
  };
}

const stripes = { symbol: "rect", color: colours.waitStripe, dashArrayX: [1, 0], dashArrayY: [4, 7], rotation: Math.PI / 4 } as const;

/** Bars of work and waits, a number on each where there is room. */
function barSeries(board: ReadyBoardPrint): CustomSeriesOption {
  const bars = board.rows.flatMap(({ bars: own }, row) => own.map((bar) => ({ bar, row })));
  return {
    type: "custom",
    xAxisIndex: 0,
    yAxisIndex: 0,
    clip: true,
    data: bars.map(({ bar, row }) => [minutesIn(board, bar.from), minutesIn(board, bar.to), row]),
    renderItem: (params, api) => {
      const bar: BoardPrintBar | undefined = bars[params.dataIndex]?.bar;
      const [left = 0, middle = 0] = api.coord([api.value(0), api.value(2)]);
      const [right = left] = api.coord([api.value(1), api.value(2)]);
      const width = Math.max(3, right - left - 2);
      const height = ROW * 0.68;
      const fill = bar?.wait === true ? colours.wait : bar?.underWay === true ? colours.underWay : colours.work;
      const room = Math.floor((width - 12) / (TEXT * 0.52));
      const label = bar?.label ?? "";
      const number = label.split(" ")[0] ?? "";
      const text = label.length <= room ? label : number.length <= room ? number : "";
      return {
        type: "group",
        children: [
          {
            type: "rect",
            shape: { x: left + 1, y: middle - height / 2, width, height, r: 5 },
            style: { fill, stroke: colours.ink, lineWidth: 1, ...(bar?.wait === true ? { decal: stripes } : {}) },
          },
          ...(bar?.wait === true && text !== ""
            ? [
                {
                  type: "rect" as const,
                  shape: { x: left + 5, y: middle - 15, width: text.length * TEXT * 0.52 + 8, height: 30, r: 4 },
                  style: { fill: "#ffffff" },
                },
              ]
            : []),
          {
            type: "text",
            style: {
              text,
              x: left + 8,
              y: middle,
              verticalAlign: "middle",
              fontSize: TEXT,
              fontFamily: FONT,
              fill: bar?.wait === true ? colours.ink : "#ffffff",
            },
          },
        ],
      };
    },
    ...wallsOf(board, true),
  };
}

type ShownOrder = ReadyBoardPrint["orders"][number];

const marks = (board: ReadyBoardPrint, orders: readonly ShownOrder[], of: (order: ShownOrder) => number | null): readonly [number, number][] =>
  orders.flatMap((order, row): [number, number][] => {
    const at = of(order);
    return at === null || at < board.from || at > board.to ? [] : [[minutesIn(board, at), row]];
  });

/** The promise as a diamond, what is wanted as an upright stroke: red when the promise is after it. */
function markSeries(board: ReadyBoardPrint, orders: readonly ShownOrder[]): readonly ScatterSeriesOption[] {
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
