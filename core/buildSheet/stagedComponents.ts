import type { ClubComponent } from "../club/assembledClub.ts";
import type { TrimmedShaft } from "../club/trimmedShaft.ts";
import type { Allowances } from "./allowances.ts";
import type { GripModel, HeadModel, SleeveModel } from "./parts.ts";

/** A part of the club, and when it comes on: lying ready, at bonding, or at gripping. */
export interface StagedComponent extends ClubComponent {
  readonly stage: "ready" | "bond" | "grip";
}

/** The parts around a head of one model, all but the head itself. */
interface PartsAround {
  readonly lengthMm: number;
  readonly headModel: HeadModel;
  readonly sleeve: SleeveModel | null;
  readonly shaft: TrimmedShaft;
  readonly grip: GripModel;
  readonly wraps: number;
}

const GRAM_SQUARE_MM_PER_KG_SQUARE_CM = 1e5;

/** Where the centre of a head lies, from the end of the grip cap. */
export const headFromCapMm = (lengthMm: number, headModel: HeadModel): number => lengthMm - headModel.centreAboveGroundMm;

/** The head as a component, with its inertia about its own centre and its distance from the shaft axis. */
export function headComponent(lengthMm: number, headModel: HeadModel, massG: number, allowances: Allowances): StagedComponent {
  const awayKgCm2 = (massG * allowances.headFromAxisMm[headModel.family] ** 2) / GRAM_SQUARE_MM_PER_KG_SQUARE_CM;
  return {
    name: "head",
    stage: "ready",
    massG,
    fromCapMm: headFromCapMm(lengthMm, headModel),
    ownInertiaKgCm2: allowances.headOwnInertiaKgCm2[headModel.family] + awayKgCm2,
  };
}

/** Everything around the head, each part at its place from the end of the grip cap. */
export function stagedComponents(parts: PartsAround, allowances: Allowances): readonly StagedComponent[] {
  const { grip, shaft, sleeve } = parts;
  const boreFromCapMm = parts.lengthMm - parts.headModel.boreToGroundMm;
  const tapeG = allowances.tapeG + parts.wraps * allowances.wrapG;
  const adhesiveG = sleeve === null ? allowances.bondedFerruleAndGlueG : allowances.sleevedFerruleAndGlueG;
  return [
    {
      name: "shaft",
      stage: "ready",
      massG: shaft.massG,
      fromCapMm: grip.capMm + shaft.balanceFromButtMm,
      ownInertiaKgCm2: shaft.ownInertiaKgCm2,
    },
    ...(sleeve === null
      ? []
      : [{ name: "sleeve", stage: "ready" as const, massG: sleeve.massG, fromCapMm: boreFromCapMm - allowances.sleeveAboveBoreMm }]),
    { name: "ferrule and glue", stage: "bond", massG: adhesiveG, fromCapMm: boreFromCapMm - allowances.ferruleAndGlueAboveBoreMm },
    { name: "tape", stage: "grip", massG: tapeG, fromCapMm: allowances.tapeFromCapMm },
    {
      name: "grip",
      stage: "grip",
      massG: grip.massG,
      fromCapMm: grip.centreFromCapMm,
      ownInertiaKgCm2: (grip.massG * allowances.gripGyrationMm ** 2) / GRAM_SQUARE_MM_PER_KG_SQUARE_CM,
    },
  ];
}
