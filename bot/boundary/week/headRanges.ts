import type { ClubFamily } from "../../../core/kinds.ts";

export interface Range {
  readonly min: number;
  readonly max: number;
}

/** What a bare head of a family can measure at all (common practice, no source): wide enough for any, too narrow for a slip. */
export const headRanges: Readonly<Record<ClubFamily, { readonly lieDeg: Range; readonly massG: Range }>> = {
  driver: { lieDeg: { min: 52, max: 64 }, massG: { min: 150, max: 230 } },
  fairway: { lieDeg: { min: 52, max: 64 }, massG: { min: 180, max: 260 } },
  hybrid: { lieDeg: { min: 53, max: 66 }, massG: { min: 200, max: 290 } },
  iron: { lieDeg: { min: 54, max: 68 }, massG: { min: 210, max: 320 } },
  wedge: { lieDeg: { min: 58, max: 70 }, massG: { min: 250, max: 360 } },
  putter: { lieDeg: { min: 65, max: 80 }, massG: { min: 280, max: 450 } },
};
