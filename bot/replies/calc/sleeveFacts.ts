import type { BareHead } from "../../../core/head/attitudeOf.ts";
import type { graphicsAfterTurn } from "../../../core/head/graphicsAfterTurn.ts";
import type { AttitudeWish, nearestMark } from "../../../core/head/nearestMark.ts";
import type { SleeveChartRow } from "../../../core/head/sleeveChart.ts";
import type { Understood } from "../../boundary/calc/fields.ts";

export interface SleeveRow extends SleeveChartRow {
  readonly clockDeg: number;
  /** Of the ring of two pieces; null for one piece. */
  readonly ringClockDeg: number | null;
  /** Clockwise seen from the butt, from where the sleeve stands. */
  readonly turnDeg: number;
  readonly markings: ReturnType<typeof graphicsAfterTurn>;
}

export interface SleeveFacts {
  /** What the club is called; null for one that was typed. */
  readonly named: string | null;
  readonly inputs: readonly Understood[];
  readonly wishInputs: readonly Understood[];
  readonly head: BareHead;
  readonly tiltDeg: number;
  readonly ringTiltDeg: number | null;
  /** Where the sleeve stands. */
  readonly fromMark: string;
  /** The only mark asked about; null for all. */
  readonly onlyMark: string | null;
  readonly rows: readonly SleeveRow[];
  readonly wish: AttitudeWish | null;
  /** Nearest to the wish first; empty without one. */
  readonly nearest: ReturnType<typeof nearestMark>;
}
