import type { StagePace } from "../pace.ts";
import { normalQuantile } from "../standardNormal.ts";

/** Wilson–Hilferty. */
function gammaQuantile(shape: number, u: number): number {
  const c = 1 / (9 * shape);
  return shape * Math.max(1e-9, 1 - c + normalQuantile(u) * Math.sqrt(c)) ** 3;
}

/** One location and spread out of what is known of a stage. */
export function drawStage(stage: StagePace, uMean: number, uSpread: number): { readonly location: number; readonly spread: number } {
  const spread = Math.sqrt(stage.beta / gammaQuantile(stage.alpha, uSpread));
  return { location: stage.mean + (spread / Math.sqrt(stage.kappa)) * normalQuantile(uMean), spread };
}
