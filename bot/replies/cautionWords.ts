import type { CautionCode } from "../../core/rules/cautions.ts";

/** Every caution in a few words, to stand in one line with others. */
export const cautionWords: Readonly<Record<CautionCode, string>> = {
  graphiteDust: "graphite dust: extraction and a mask",
  graphiteConducts: "keep it off electronics",
  epoxySensitises: "epoxy sensitises skin: gloves on",
  noSolventOnSkin: "never clean skin with solvent",
  hotHosel: "hot hosel: let it cool",
  shaftResinSoftens: "little heat, a graphite shaft softens near 149 °C",
  pressPinches: "the press pinches: hands clear",
  workRest: "work rest within 1/8 in of the wheel",
  tongueGuard: "tongue guard within 1/4 in",
  wheelDust: "wheel dust: extraction on",
  titaniumBurns: "titanium dust burns: no sparks, no heaps of it",
  magnesiumBurns: "magnesium dust burns: no sparks, no heaps of it",
  steelSparks: "steel throws sparks: nothing flammable near",
  solventFlammable: "solvent vapour: air the truck, no sparks",
  eyeProtection: "eye protection",
  greenBond: "never on green glue",
  hoselCracks: "watch the hosel for cracks",
  leadOnHands: "wash hands after lead",
  qualifiedGrinder: "only a qualified grinder, mass and bounce measured after",
};
