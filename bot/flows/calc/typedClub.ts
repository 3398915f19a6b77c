import { defaultAllowances } from "../../../core/buildSheet/allowances.ts";
import type { ClubComponent } from "../../../core/club/clubComponent.ts";
import { grams, kilogramSquareCentimetres, MM_PER_INCH, millimetres } from "../../../core/quantity/units.ts";
import { assumed, type Understood, type WrittenNumber, type WrittenPart } from "../../boundary/calc/fields.ts";
import type { ClubLengths } from "./asBuiltClub.ts";

export interface ModelledClub {
  readonly components: readonly ClubComponent[];
  readonly lengths: ClubLengths;
  readonly assumed: readonly Understood[];
}

const KG_CM2 = 1e5;
/** A head so far out is a wood's: its own inertia and its distance from the axis are taken of a driver, else of an iron. */
const NEAREST_WOOD_MM = 40 * MM_PER_INCH;
/** Common practice, no source: where the tip of the shaft ends above the head's centre, and a grip cap. */
const TIP_ABOVE_CENTRE_IN = 0.9;
const CAP_IN = 0.125;

/** A club of typed parts; what its own inertia needs and nobody wrote is assumed, and said. */
export function typedClub(parts: readonly WrittenPart[], written: { readonly cut?: WrittenNumber; readonly cap?: WrittenNumber }): ModelledClub {
  const head = parts.find(({ name }) => name === "head");
  const family = (head?.place.value ?? 0) >= NEAREST_WOOD_MM ? "driver" : "iron";
  const cutIn = head === undefined ? null : head.place.value / MM_PER_INCH - TIP_ABOVE_CENTRE_IN;
  const cutMm = written.cut?.value ?? (cutIn ?? 0) * MM_PER_INCH;
  const capMm = written.cap?.value ?? CAP_IN * MM_PER_INCH;
  const own = (part: WrittenPart): Partial<ClubComponent> => {
    const massG = part.mass?.value ?? 0;
    if (part === head) {
      const fromAxisMm = millimetres(defaultAllowances.headFromAxisMm[family]);
      return { fromAxisMm, ownInertiaKgCm2: kilogramSquareCentimetres(defaultAllowances.headOwnInertiaKgCm2[family]) };
    }
    if (part.name === "shaft") return { ownInertiaKgCm2: kilogramSquareCentimetres((massG * cutMm ** 2) / 12 / KG_CM2) };
    if (part.name === "grip") return { ownInertiaKgCm2: kilogramSquareCentimetres((massG * defaultAllowances.gripGyrationMm ** 2) / KG_CM2) };
    return {};
  };
  return {
    components: parts.map((part) => ({
      name: part.name,
      massG: grams(part.mass?.value ?? 0),
      fromCapMm: millimetres(part.place.value),
      ...own(part),
    })),
    lengths: { shaftLengthMm: millimetres(cutMm), capMm: millimetres(capMm) },
    assumed: [
      ...(head === undefined ? [] : [assumed("head inertia of its own", `${family === "driver" ? "a driver's" : "an iron's"}`, "")]),
      ...(written.cut !== undefined || cutIn === null ? [] : [assumed("bare cut", Math.round(cutIn * 100) / 100, "in")]),
      ...(written.cap !== undefined || head === undefined ? [] : [assumed("cap", "1/8", "in")]),
    ],
  };
}
