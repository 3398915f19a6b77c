import type { CustomSeriesOption } from "echarts";
import { colours, FONT, ROW, TEXT } from "./boardLook.ts";
import { minutesIn } from "./boardTime.ts";
import { wallsOf } from "./boardWalls.ts";
import type { BoardPrintBar, ReadyBoardPrint } from "./readyBoardPrint.ts";

const stripes = { symbol: "rect", color: colours.waitStripe, dashArrayX: [1, 0], dashArrayY: [4, 7], rotation: Math.PI / 4 } as const;

/** Bars of work and waits, a number on each where there is room. */
export function barSeries(board: ReadyBoardPrint): CustomSeriesOption {
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
