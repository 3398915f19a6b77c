import type { BareHead } from "../../../core/head/attitudeOf.ts";
import { graphicsAfterTurn, type ShaftMarkings } from "../../../core/head/graphicsAfterTurn.ts";
import type { Sleeve } from "../../../core/head/sleeve.ts";
import { sleeveChart } from "../../../core/head/sleeveChart.ts";
import { sleeveSettings } from "../../../core/head/sleeveSettings.ts";
import { turnOfShaft } from "../../../core/head/turnOfShaft.ts";
import type { SleeveRow } from "../../replies/calc/sleeveFacts.ts";

/** Every mark with what the head reads there and where logo and rib end when the sleeve is turned to it. */
export function sleeveRows(head: BareHead, sleeve: Sleeve, fromMark: string, markings: ShaftMarkings): readonly SleeveRow[] {
  const settings = new Map(sleeveSettings(sleeve).map((setting) => [setting.mark, setting]));
  const ringClocks = "ring" in sleeve ? sleeve.ring.marks.flatMap(({ clockDeg }) => sleeve.sleeve.marks.map(() => clockDeg)) : [];
  return sleeveChart(head, sleeve).map((row, index) => {
    const turn = turnOfShaft(fromMark, row.mark, sleeve, head.hand);
    return {
      ...row,
      clockDeg: settings.get(row.mark)?.shaftClockDeg ?? 0,
      ringClockDeg: ringClocks[index] ?? null,
      turnDeg: turn.fromButtDeg,
      markings: graphicsAfterTurn(markings, turn.onClockDeg),
    };
  });
}
