import type { CustomSeriesOption } from "echarts";
import { readyBoardWords } from "../../replies/readyBoardWords.ts";
import { colours, look, plainText } from "./boardLook.ts";
import { minutesIn } from "./boardTime.ts";
import type { ReadyBoardPrint } from "./readyBoardPrint.ts";

interface Walls {
  readonly markLine: NonNullable<CustomSeriesOption["markLine"]>;
  readonly markArea: NonNullable<CustomSeriesOption["markArea"]>;
}

/** Roll-out so close to now that their names would lie on one another. */
const isNear = ({ now, rollOutAt, from, to }: ReadyBoardPrint): boolean => rollOutAt !== null && Math.abs(rollOutAt - now) < (to - from) / 6;

/** Now, roll-out, and closed hours behind everything; the lines have names when asked. */
export function wallsOf(board: ReadyBoardPrint, named: boolean): Walls {
  const line = (at: number | null, text: string, type: "dashed" | "solid", width: number) =>
    at === null || at < board.from || at > board.to
      ? []
      : [
          {
            xAxis: minutesIn(board, at),
            label: { ...plainText, fontSize: look.smallText, show: named, position: "start" as const, formatter: text },
            lineStyle: { color: colours.ink, width, type },
          },
        ];
  return {
    markLine: {
      silent: true,
      symbol: "none",
      data: [
        ...line(board.now, isNear(board) ? "" : readyBoardWords.now, "dashed", 3),
        ...line(board.rollOutAt, readyBoardWords.rollOut, "solid", 8),
      ],
    },
    markArea: {
      silent: true,
      itemStyle: { color: colours.closed },
      data: board.closed.map(({ from, to }) => [{ xAxis: minutesIn(board, from) }, { xAxis: minutesIn(board, to) }]),
    },
  };
}
