import type { CustomSeriesOption, CustomSeriesRenderItemReturn } from "echarts";
import { colours, FONT, look, roughWidth } from "./boardLook.ts";
import { minutesIn } from "./boardTime.ts";
import { wallsOf } from "./boardWalls.ts";
import type { BoardPrintBar, ReadyBoardPrint } from "./readyBoardPrint.ts";

const stripes = { symbol: "rect", color: colours.waitStripe, dashArrayX: [1, 0], dashArrayY: [3, 8], rotation: Math.PI / 4 } as const;
const PADDING = 6;
const LEAST_PADDING = 3;

interface BarText {
  readonly text: string;
  readonly size: number;
  readonly upright: boolean;
}

/** What finds room on a bar: the label, its number, the number smaller or upright, or nothing. */
export function barText(label: string, width: number): BarText {
  const number = label.split(" ")[0] ?? "";
  const flat = [label, number].find((text) => roughWidth(text, look.text) + 2 * PADDING <= width);
  if (flat !== undefined) {
    return { text: flat, size: look.text, upright: false };
  }
  const across = roughWidth(number, look.smallText) + 2 * LEAST_PADDING;
  const fits = across <= width || (look.smallText <= width && across <= look.bar);
  return { text: fits ? number : "", size: look.smallText, upright: across > width };
}

function barShape({ label, wait, underWay }: BoardPrintBar, left: number, width: number, middle: number): CustomSeriesRenderItemReturn {
  const { text, size, upright } = barText(label, width);
  const centre = left + width / 2;
  const isLabelled = size === look.text;
  return {
    type: "group",
    children: [
      {
        type: "rect",
        shape: { x: left, y: middle - look.bar / 2, width, height: look.bar, r: Math.min(5, width / 2) },
        style: {
          fill: wait ? colours.wait : underWay ? colours.underWay : colours.work,
          stroke: colours.ink,
          lineWidth: 1,
          ...(wait ? { decal: stripes } : {}),
        },
      },
      {
        type: "text",
        ...(upright ? { rotation: Math.PI / 2, originX: centre, originY: middle } : {}),
        style: {
          text,
          x: isLabelled ? left + PADDING : centre,
          y: middle,
          align: isLabelled ? "left" : "center",
          verticalAlign: "middle",
          fontSize: size,
          fontFamily: FONT,
          fill: wait ? colours.ink : colours.paper,
          // Letters on stripes stand in a light edge.
          ...(wait ? { stroke: colours.wait, lineWidth: 7 } : {}),
        },
      },
    ],
  };
}

/** Bars of work and hatched waits, a row each technician and station, the order's number on each where there is room. */
export function barSeries(board: ReadyBoardPrint): CustomSeriesOption {
  const bars = board.rows.flatMap(({ bars: own }, row) => own.map((bar) => ({ bar, row })));
  return {
    type: "custom",
    xAxisIndex: 0,
    yAxisIndex: 0,
    data: bars.map(({ bar, row }) => [minutesIn(board, bar.from), minutesIn(board, bar.to), row]),
    renderItem: ({ dataIndex }, api) => {
      const bar = bars[dataIndex]?.bar;
      const [left = 0, middle = 0] = api.coord([api.value(0), api.value(2)]);
      const [right = left] = api.coord([api.value(1), api.value(2)]);
      return bar === undefined ? null : barShape(bar, left + 1, Math.max(3, right - left - 2), middle);
    },
    ...wallsOf(board, true),
  };
}
