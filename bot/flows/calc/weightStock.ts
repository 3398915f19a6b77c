import { id } from "../../../core/kinds.ts";
import { grams } from "../../../core/quantity/units.ts";
import type { StockedWeight } from "../../../core/selection/weightQuestion.ts";
import { partsInReach } from "../../../db/repositories/partsInReach.ts";
import type { WrittenNumber } from "../../boundary/calc/fields.ts";
import type { Context } from "../../chat/context.ts";
import type { Role } from "../../chat/types.ts";
import type { ClubToWeigh } from "./clubToWeigh.ts";

const seesStock: readonly Role[] = ["rep", "technician", "lead"];
/** No player has it: with it only what lies in the truck itself is in reach. */
const NOBODY = id<"player">(0);

/** Weights as typed, those of one mass together. */
export function typedWeights(masses: readonly WrittenNumber[], name: string): readonly StockedWeight[] {
  const values = masses.map(({ value }) => value);
  return [...new Set(values)].map((massG) => ({
    name: `${name} ${massG} g`,
    massG: grams(massG),
    place: "",
    inPlayersBin: false,
    free: values.filter((other) => other === massG).length,
  }));
}

/** Screws free in the channel's truck, for whoever may see its stock; null without a truck or leave. */
export function stockedScrews(player: ClubToWeigh["player"], { actor, channel, read }: Context): readonly StockedWeight[] | null {
  const { truckId } = channel;
  if (truckId === null || !seesStock.some((role) => actor.roles.includes(role))) return null;
  return read((reader) => partsInReach(reader, { truckId, playerId: player ?? NOBODY })).weights.map(({ model, place, inPlayersBin, free }) => ({
    name: model.name,
    massG: model.massG,
    place,
    inPlayersBin,
    free,
  }));
}
