import { defaultAllowances } from "../../../core/buildSheet/allowances.ts";
import { assembledClub } from "../../../core/club/assembledClub.ts";
import type { ClubComponent } from "../../../core/club/clubComponent.ts";
import { pointsOfMass } from "../../../core/club/massAtPosition.ts";
import { type ClubFamily, clubFamily, type Id } from "../../../core/kinds.ts";
import { type Grams, grams, type Millimetres, type SwingWeightPoints, swingWeightPoints } from "../../../core/quantity/units.ts";
import { assumed, type Understood, type ValuesOf } from "../../boundary/calc/fields.ts";
import type { CalcQuestion } from "../../boundary/calc/readCalc.ts";
import type { weightsFields } from "../../boundary/calc/weightsFields.ts";
import type { Context } from "../../chat/context.ts";
import type { Reply } from "../../chat/types.ts";
import { modelOfRecord } from "./modelOfRecord.ts";
import { weightPlaces } from "./pointsWish.ts";
import { type ModelledClub, typedClub } from "./typedClub.ts";

export type WeightsQuestion = CalcQuestion<typeof weightsFields>;
export type WeightsValues = ValuesOf<typeof weightsFields>;

/** A club before weights go on: its head with the screws taken out that are in it. */
export interface ClubToWeigh {
  readonly named: string | null;
  readonly inputs: readonly Understood[];
  readonly headMassG: Grams;
  readonly headFromCapMm: Millimetres;
  readonly tipFromCapMm: Millimetres;
  /** Null when the parts told make no whole club and no gauge was. */
  readonly swingWeightPoints: SwingWeightPoints | null;
  /** What it reads as it is, the screws in it. */
  readonly readsPoints: number | null;
  readonly ports: number;
  readonly player: Id<"player"> | null;
}

type Found = { readonly kind: "club"; readonly club: ClubToWeigh } | { readonly kind: "refused"; readonly reply: Reply } | { readonly kind: "none" };

interface Shown extends Pick<ClubToWeigh, "named" | "inputs" | "player"> {
  readonly family: ClubFamily;
  readonly gauge: number | null;
}

/** A wood's head lies so far from the cap. */
const NEAREST_WOOD_MM = 1016;

/** The club that is named or typed; none when there is no head to put weight on. */
export function clubToWeigh(question: WeightsQuestion, context: Context): Found {
  const { club: ref, parts, values, understood } = question;
  if (ref !== null) {
    const model = modelOfRecord("weights", ref, understood, context);
    if (model.kind === "refused") return model;
    const { club, shown } = model.found;
    const family = clubFamily(club.club) ?? "iron";
    const player = ref.kind === "bag" ? ref.player.id : null;
    return weighed(model, values, { named: shown, inputs: model.inputs, player, family, gauge: club.swingWeightPoints });
  }
  const head = parts.find(({ name }) => name === "head");
  if (head === undefined) return { kind: "none" };
  const typed = typedClub(parts, values);
  const family = head.place.value >= NEAREST_WOOD_MM ? "driver" : "iron";
  const counted = typed.assumed.filter(({ name }) => name === "cap" || name === "bare cut");
  const usesTip = values["tip weights"] !== undefined;
  return weighed(typed, values, { named: null, inputs: [...understood, ...(usesTip ? counted : [])], player: null, family, gauge: null });
}

const isWhole = (components: readonly ClubComponent[]): boolean =>
  ["head", "shaft", "grip"].every((wanted) => components.some(({ name }) => name === wanted));

function weighed({ components, lengths }: ModelledClub, values: WeightsValues, { family, gauge, ...shown }: Shown): Found {
  const head = components.find(({ name }) => name === "head");
  if (head === undefined) return { kind: "none" };
  const screwsInG = (values["screws in"] ?? []).reduce((sum, { value }) => sum + value, 0);
  const reads = values.now?.value ?? gauge ?? (isWhole(components) ? assembledClub(components).swingWeightPoints : null);
  const ports = values.ports?.value ?? Math.max(defaultAllowances.weightPorts[family], values["screws in"]?.length ?? 0);
  return {
    kind: "club",
    club: {
      ...shown,
      inputs: [
        ...shown.inputs,
        ...(values.ports === undefined ? [assumed("ports", ports, "")] : []),
        ...(values["screws in"] === undefined && ports > 0 ? [assumed("ports", "empty before", "")] : []),
      ],
      headMassG: grams(head.massG - screwsInG),
      headFromCapMm: head.fromCapMm,
      tipFromCapMm: weightPlaces(head, lengths).tipFromCapMm,
      swingWeightPoints: reads === null ? null : swingWeightPoints(reads - pointsOfMass(grams(screwsInG), head.fromCapMm)),
      readsPoints: reads,
      ports,
    },
  };
}
