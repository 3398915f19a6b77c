import { withoutHead } from "../club/builtClub.ts";
import type { HeadCentre, SmallPart, StagedComponent } from "../club/clubParts.ts";
import { componentsAroundHead } from "../club/componentsAroundHead.ts";
import { headComponent as headAt } from "../club/headComponent.ts";
import type { TrimmedShaft } from "../club/trimmedShaft.ts";
import { grams, kilogramSquareCentimetres, type Millimetres, millimetres } from "../quantity/units.ts";
import type { Allowances } from "./allowances.ts";
import type { GripModel, HeadModel, SleeveModel } from "./parts.ts";

/** The parts around a head of one model, all but the head itself. */
interface PartsAround {
  readonly lengthMm: number;
  readonly headModel: HeadModel;
  readonly sleeve: SleeveModel | null;
  readonly shaft: TrimmedShaft;
  readonly grip: GripModel;
  readonly wraps: number;
}

/** Where the centre of a head lies, from the end of the grip cap. */
export const headFromCapMm = (lengthMm: number, headModel: HeadModel): Millimetres => millimetres(lengthMm - headModel.centreAboveGroundMm);

const centreOf = (headModel: HeadModel, allowances: Allowances): HeadCentre => ({
  upShaftMm: headModel.centreAboveGroundMm,
  fromAxisMm: millimetres(allowances.headFromAxisMm[headModel.family]),
});

/** The head as a component, its inertia about its own centre as allowed for its family. */
export function headComponent(lengthMm: number, headModel: HeadModel, massG: number, allowances: Allowances): StagedComponent {
  const head = { massG: grams(massG), ownInertiaKgCm2: kilogramSquareCentimetres(allowances.headOwnInertiaKgCm2[headModel.family]) };
  return headAt(head, millimetres(lengthMm), centreOf(headModel, allowances));
}

function smallParts(sleeve: SleeveModel | null, wraps: number, allowances: Allowances): readonly SmallPart[] {
  const glueG = sleeve === null ? allowances.bondedFerruleAndGlueG : allowances.sleevedFerruleAndGlueG;
  const inBore = (mm: number) => ({ from: "bore", upShaftMm: millimetres(mm) }) as const;
  return [
    ...(sleeve === null ? [] : [{ name: "sleeve" as const, massG: sleeve.massG, at: inBore(allowances.sleeveAboveBoreMm) }]),
    { name: "ferrule and glue", massG: grams(glueG), at: inBore(allowances.ferruleAndGlueAboveBoreMm) },
    {
      name: "tape",
      massG: grams(allowances.tapeG + wraps * allowances.wrapG),
      at: { from: "cap", mm: millimetres(allowances.tapeFromCapMm) },
    },
  ];
}

/** Everything around the head of a planned club, what nobody wrote taken from the allowances. */
export function stagedComponents(parts: PartsAround, allowances: Allowances): readonly StagedComponent[] {
  const around = componentsAroundHead({
    playingLengthMm: millimetres(parts.lengthMm),
    boreToGroundMm: parts.headModel.boreToGroundMm,
    headCentre: centreOf(parts.headModel, allowances),
    shaft: parts.shaft,
    grip: { ...parts.grip, gyrationMm: millimetres(allowances.gripGyrationMm) },
    small: smallParts(parts.sleeve, parts.wraps, allowances),
  });
  return withoutHead(around);
}
