import { defaultAllowances } from "../../../core/buildSheet/allowances.ts";
import { grams, millimetres, swingWeightPoints } from "../../../core/quantity/units.ts";
import {
  MOST_TIP_WEIGHT_G,
  type StockedWeight,
  type WeightAims,
  type WeightPlace,
  type WeightQuestion,
} from "../../../core/selection/weightQuestion.ts";
import type { ClubToWeigh, WeightsValues } from "./clubToWeigh.ts";
import { weightPorts } from "./weightPorts.ts";
import { typedWeights } from "./weightStock.ts";

/** Common practice, no source: lead that still looks well, and how near a centre is placed. */
export const USUAL_LEAD_G = 10;
const CENTRE_TOLERANCE_MM = 0.5;
const MOST_MELT_STEPS = 20;
const LEAST_MELT_STEP_G = 0.5;

/** The swing weight to reach; null when none is wished. */
const wantedPoints = ({ swing, points }: WeightsValues, { readsPoints }: ClubToWeigh): number | null =>
  swing?.value ?? (points === undefined || readsPoints === null ? null : readsPoints + points.value);

function aimsOf(values: WeightsValues, club: ClubToWeigh): WeightAims {
  const wantsPoints = wantedPoints(values, club);
  const { back, forward, toe, heel } = values;
  const mass = values["head mass"];
  const shift = (towards: number | undefined, away: number | undefined) =>
    towards === undefined && away === undefined
      ? null
      : { wanted: millimetres(towards ?? -(away ?? 0)), tolerance: millimetres(CENTRE_TOLERANCE_MM) };
  const [toBack, toToe] = [shift(back?.value, forward?.value), shift(toe?.value, heel?.value)];
  return {
    ...(wantsPoints === null
      ? {}
      : { swingWeightPoints: { wanted: swingWeightPoints(wantsPoints), tolerance: swingWeightPoints(defaultAllowances.swingWeightPoints) } }),
    ...(mass === undefined ? {} : { headMassG: { wanted: grams(mass.value), tolerance: grams(defaultAllowances.headMassG) } }),
    ...(toBack === null ? {} : { centreBackMm: toBack }),
    ...(toToe === null ? {} : { centreToeMm: toToe }),
  };
}

const centreOf = ({ headFromCapMm }: ClubToWeigh): WeightPlace => ({
  name: "head",
  fromCapMm: headFromCapMm,
  backMm: millimetres(0),
  toeMm: millimetres(0),
});

const mostLeadG = (values: WeightsValues): number => (values.without !== undefined ? 0 : (values.lead?.value ?? USUAL_LEAD_G));

/** The question to core: what is wished, what may go where. Melt and a tip weight only when they were written. */
export function weightsAsked(values: WeightsValues, club: ClubToWeigh, screws: readonly StockedWeight[]): WeightQuestion<StockedWeight> {
  const ports = weightPorts(values, club.headFromCapMm, club.ports);
  const { melt } = values;
  const tips = values["tip weights"];
  const mostMeltG = melt?.value ?? 0;
  return {
    head: { massG: club.headMassG, ...(club.swingWeightPoints === null ? {} : { swingWeightPoints: club.swingWeightPoints }) },
    aims: aimsOf(values, club),
    ports,
    screws: ports.length === 0 ? [] : screws,
    ...(melt === undefined
      ? {}
      : { melt: { places: [centreOf(club)], stepG: grams(Math.max(LEAST_MELT_STEP_G, mostMeltG / MOST_MELT_STEPS)), mostG: grams(mostMeltG) } }),
    ...(tips === undefined
      ? {}
      : { tip: { fromCapMm: club.tipFromCapMm, stock: typedWeights(tips, "tip weight"), mostG: grams(MOST_TIP_WEIGHT_G) } }),
    lead: { places: [centreOf(club)], mostG: grams(mostLeadG(values)) },
  };
}
