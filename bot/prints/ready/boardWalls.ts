import type { CustomSeriesOption } from "echarts";
import { colours, FONT, TEXT } from "./boardLook.ts";
import { clockAtMinute, minutesIn } from "./boardTime.ts";
import type { ReadyBoardPrint } from "./readyBoardPrint.ts";

interface Walls {
  readonly markLine: NonNullable<CustomSeriesOption["markLine"]>;
  readonly markArea: NonNullable<CustomSeriesOption["markArea"]>;
}

/** Now, roll-out, and closed hours behind everything. */
export function wallsOf(board: ReadyBoardPrint, named: boolean): Walls {
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
