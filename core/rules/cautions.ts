import type { StepKind } from "../bench/benchTypes.ts";
import { MM_PER_INCH } from "../quantity/units.ts";
import { cautionSources } from "./cautionSources.ts";
import type { Caution, CautionNumber, WorkMaterial } from "./cautionTypes.ts";

const atMost = (quantity: string, value: number, unit: string): CautionNumber => ({ quantity, value, unit, bound: "atMost" });
const atLeast = (quantity: string, value: number, unit: string): CautionNumber => ({ quantity, value, unit, bound: "atLeast" });
const near = (quantity: string, value: number, unit: string): CautionNumber => ({ quantity, value, unit, bound: "near" });
const practice = (...needs: readonly WorkMaterial[]): Caution => ({ needs, numbers: [], source: null });

const bondLetsGo = near("bondLetsGo", 121, "°C");

/** Every caution there is, by the word the replies know it under. The products' own data sheets go first. */
export const cautions = {
  /** The number is the NIOSH limit for natural graphite over a shift: the dust of composites has none of its own. */
  graphiteDust: { needs: ["graphite"], numbers: [atMost("respirableDust", 2.5, "mg/m³")], source: cautionSources.graphite },
  graphiteConducts: { needs: ["graphite"], numbers: [], source: cautionSources.conducting },
  /** Of the workers NIOSH watched in one factory, all of them in protective clothing. */
  epoxySensitises: { needs: ["epoxy"], numbers: [near("exposedDespiteProtection", 60, "%")], source: cautionSources.epoxyExposure },
  noSolventOnSkin: { needs: ["epoxy"], numbers: [], source: cautionSources.epoxyGuide },
  hotHosel: { needs: ["epoxy"], numbers: [bondLetsGo], source: cautionSources.pulling },
  /** 250 and 300 °F: between them lies all the room there is to save a graphite shaft. */
  shaftResinSoftens: {
    needs: ["epoxy", "graphite"],
    numbers: [bondLetsGo, near("shaftResinSoftens", 149, "°C")],
    source: cautionSources.pulling,
  },
  pressPinches: practice("epoxy"),
  workRest: { needs: [], numbers: [atMost("workRestGap", MM_PER_INCH / 8, "mm")], source: cautionSources.workRest },
  tongueGuard: { needs: [], numbers: [atMost("tongueGuardGap", MM_PER_INCH / 4, "mm")], source: cautionSources.tongueGuard },
  wheelDust: {
    needs: [],
    numbers: [atLeast("airChanges", 10, "1/h"), atLeast("inletSpeed", 10, "m/s")],
    source: cautionSources.wheelDust,
  },
  titaniumBurns: { needs: ["titanium"], numbers: [], source: cautionSources.metalDust },
  magnesiumBurns: { needs: ["magnesium"], numbers: [], source: cautionSources.metalDust },
  steelSparks: { needs: ["steel"], numbers: [], source: cautionSources.metalDust },
  solventFlammable: practice("gripSolvent"),
  eyeProtection: practice(),
  greenBond: practice("epoxy"),
  hoselCracks: practice(),
  leadOnHands: { needs: ["lead"], numbers: [], source: cautionSources.lead },
  qualifiedGrinder: practice(),
} as const satisfies Readonly<Record<string, Caution>>;

export type CautionCode = keyof typeof cautions;

/** What may hurt at each step, the gravest first. */
export const cautionsOfStep: Readonly<Record<StepKind, readonly CautionCode[]>> = {
  pullParts: [],
  tipPrepare: ["graphiteDust", "graphiteConducts", "eyeProtection"],
  dryFit: [],
  bond: ["epoxySensitises", "noSolventOnSkin"],
  bondSet: [],
  gaugeHead: [],
  pullHead: [],
  layOutGrip: [],
  headOn: [],
  cut: ["graphiteDust", "graphiteConducts", "wheelDust", "steelSparks", "greenBond", "eyeProtection"],
  dryWeigh: ["leadOnHands"],
  grip: ["solventFlammable"],
  gripSet: ["solventFlammable"],
  measure: ["leadOnHands"],
  sign: [],
  walk: [],
  removeOld: ["hotHosel", "shaftResinSoftens", "pressPinches", "eyeProtection"],
  coolDown: ["hotHosel"],
  turnFerrule: ["greenBond", "eyeProtection"],
  bend: ["greenBond", "hoselCracks"],
  turnSleeve: [],
  stampText: ["eyeProtection"],
  paintDry: [],
  soleWork: ["titaniumBurns", "magnesiumBurns", "steelSparks", "workRest", "tongueGuard", "wheelDust", "eyeProtection", "qualifiedGrinder"],
  inspect: [],
};
