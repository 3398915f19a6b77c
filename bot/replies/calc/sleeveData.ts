import type { Json } from "../../chat/types.ts";
import type { SleeveFacts, SleeveRow } from "./sleeveFacts.ts";

/** Every number of the chart, and of the marks nearest to a wish. */
export function sleeveData(facts: SleeveFacts, asked: readonly SleeveRow[]): { readonly [key: string]: Json } {
  const { head, nearest } = facts;
  const here = asked.length === 1 ? asked[0] : facts.rows.find(({ mark }) => mark === (nearest[0]?.mark ?? facts.fromMark));
  return {
    head: { ...head },
    tiltDeg: facts.tiltDeg,
    ringTiltDeg: facts.ringTiltDeg,
    fromMark: facts.fromMark,
    mark: here?.mark ?? null,
    squaredLoftDeg: here?.attitude.squaredLoftDeg ?? null,
    soledFaceDeg: here?.attitude.soledFaceDeg ?? null,
    seatedLieDeg: here?.attitude.seatedLieDeg ?? null,
    marks: asked.map((row) => ({
      mark: row.mark,
      standard: row.standard,
      clockDeg: row.clockDeg,
      ringClockDeg: row.ringClockDeg,
      soledLoftDeg: head.soledLoftDeg,
      ...row.attitude,
      fromStandard: { ...row.fromStandard },
      turnDeg: row.turnDeg,
      logoClockDeg: row.markings.logoClockDeg,
      ribClockDeg: row.markings.ribClockDeg,
    })),
    wish: facts.wish === null ? null : { ...facts.wish },
    nearest: nearest.map(({ mark, attitude, misses }) => ({ mark, ...attitude, misses: misses.map((miss) => ({ ...miss })) })),
  };
}
