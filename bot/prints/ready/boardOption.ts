import type { EChartsOption, GridComponentOption, TitleComponentOption, XAXisComponentOption, YAXisComponentOption } from "echarts";
import { isLate, readyBoardWords } from "../../replies/readyBoardWords.ts";
import { barSeries } from "./boardBars.ts";
import { colours, look, plainText, roughWidth } from "./boardLook.ts";
import { markSeries } from "./boardMarks.ts";
import { clockAtMinute, minutesIn, tickMinutes } from "./boardTime.ts";
import type { ReadyBoardPrint } from "./readyBoardPrint.ts";
import { shownBoard } from "./shownBoard.ts";

export interface BoardChart {
  readonly option: EChartsOption;
  readonly width: number;
  readonly height: number;
}

function timeAxis(board: ReadyBoardPrint, gridIndex: number): XAXisComponentOption {
  const customValues = [...tickMinutes(board)];
  return {
    type: "value",
    gridIndex,
    position: "bottom",
    min: 0,
    max: minutesIn(board, board.to),
    axisLabel: { ...plainText, customValues, formatter: (minute: number) => clockAtMinute(board, minute) },
    axisTick: { customValues },
    splitLine: { show: false },
    axisLine: { show: true, lineStyle: { color: colours.ink } },
  };
}

const lanes = {
  type: "category",
  inverse: true,
  axisTick: { show: false },
  axisLine: { lineStyle: { color: colours.ink } },
  splitLine: { show: true, lineStyle: { color: colours.faint } },
} as const;

const rowAxis = ({ rows }: ReadyBoardPrint): YAXisComponentOption => ({
  ...lanes,
  gridIndex: 0,
  data: rows.length === 0 ? [""] : rows.map(({ label }) => label),
  axisLabel: { ...plainText, interval: 0, width: look.names - look.margin - 10, overflow: "truncate", ellipsis: "…" },
});

/** Words lie on lines and bars, never under them. */
const ABOVE = 10;
/** From the right edge of the chart, which may be the wall of roll-out, to the words before it. */
const INSIDE = 14;

/** An order's name from the left edge on, above its marks; on the right its times. */
function laneAxes(board: ReadyBoardPrint): YAXisComponentOption[] {
  const times = board.orders.map((order) => readyBoardWords.times(board, order));
  const most = Math.max(0, ...times.map((text) => roughWidth(text, look.text)));
  const above = { ...plainText, interval: 0, verticalAlign: "bottom", textBorderColor: colours.paper, textBorderWidth: 6 } as const;
  return [
    {
      ...lanes,
      gridIndex: 1,
      z: ABOVE,
      axisLine: { show: false },
      data: board.orders.map(({ title }) => title),
      axisLabel: {
        ...above,
        align: "left",
        margin: look.names - look.margin,
        width: look.width - look.right - INSIDE - most - 2 * look.margin,
        overflow: "truncate",
        ellipsis: "…",
      },
    },
    {
      ...lanes,
      gridIndex: 1,
      z: ABOVE,
      position: "right",
      axisLine: { show: false },
      splitLine: { show: false },
      data: times,
      axisLabel: {
        ...above,
        align: "right",
        margin: -INSIDE,
        color: (_, index) => {
          const order = board.orders[index ?? 0];
          return order !== undefined && isLate(order) ? colours.late : colours.ink;
        },
      },
    },
  ];
}

function legend(y: number, hasOrders: boolean): TitleComponentOption {
  const { underWay, next, wait, likely, promise, by, late } = readyBoardWords.legend;
  const bars = `{underWay|■}{ink| ${underWay}   }{work|■}{ink| ${next}   ▨ ${wait}}`;
  const marks = `{ink|   ○ ${likely}   }{work|◆}{ink| ${promise}   ▌${by}   }{late|▌${late}}`;
  const inColour = (color: string) => ({ ...plainText, color });
  const rich = { ink: plainText, underWay: inColour(colours.underWay), work: inColour(colours.work), late: inColour(colours.late) };
  return { text: `${bars}${hasOrders ? marks : ""}`, left: look.margin, top: y, textStyle: { ...plainText, rich } };
}

/** A ready board as a chart: bars a technician and station above, promises and what is wanted an order below. */
export function boardOption(whole: ReadyBoardPrint): BoardChart {
  const { board, left } = shownBoard(whole);
  const rowsHeight = Math.max(1, board.rows.length) * look.row;
  const lanesTop = look.top + rowsHeight + look.between;
  const lanesHeight = board.orders.length * look.lane;
  const hasOrders = board.orders.length > 0;
  const legendTop = hasOrders ? lanesTop + lanesHeight + look.below : lanesTop - look.between + look.below;
  const leftOut = readyBoardWords.leftOut(board, left);
  const isEmpty = board.rows.every(({ bars }) => bars.length === 0);
  const grid = (top: number, height: number): GridComponentOption => ({ left: look.names, right: look.right, top, height });
  const option: EChartsOption = {
    animation: false,
    backgroundColor: colours.paper,
    title: [
      {
        text: readyBoardWords.title(board),
        left: look.margin,
        top: 16,
        textStyle: { ...plainText, fontSize: 40, fontWeight: "bold", width: look.width - 2 * look.margin, overflow: "truncate" },
      },
      { text: readyBoardWords.subtitle(board), left: look.margin, top: 72, textStyle: plainText },
      ...(isEmpty
        ? [
            {
              text: readyBoardWords.empty(board),
              left: look.names + 24,
              top: look.top + rowsHeight / 2 - 26,
              backgroundColor: colours.paper,
              textStyle: { ...plainText, fontSize: 36, fontWeight: "bold" as const },
            },
          ]
        : []),
      legend(legendTop, hasOrders),
      ...(leftOut === "" ? [] : [{ text: leftOut, left: look.margin, top: legendTop + 46, textStyle: plainText }]),
    ],
    grid: [grid(look.top, rowsHeight), ...(hasOrders ? [grid(lanesTop, lanesHeight)] : [])],
    xAxis: [timeAxis(board, 0), ...(hasOrders ? [timeAxis(board, 1)] : [])],
    yAxis: [rowAxis(board), ...(hasOrders ? laneAxes(board) : [])],
    series: [barSeries(board), ...(hasOrders ? markSeries(board) : [])],
  };
  return { option, width: look.width, height: legendTop + 56 + (leftOut === "" ? 0 : 46) };
}
