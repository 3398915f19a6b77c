import { mmFromInches } from "../quantity/units.ts";
import { ruleSources } from "./ruleSources.ts";
import { allClubs, type LimitRule, notPutters, putters, woods } from "./ruleTypes.ts";

/** Spring, inserts and hardness of the face. */
export const faceRules = [
  {
    code: "faceTime",
    quantity: "faceTimeUs",
    families: woods,
    unit: "µs",
    max: 239,
    tolerance: 18,
    rule: "Part 2, 4c(i)",
    source: ruleSources.springEffect,
  },
  /** Past it a head shaped like an iron goes on to a second test; lofts above 35° are not tested. */
  {
    code: "ironFaceTime",
    quantity: "faceTimeUs",
    families: ["iron", "wedge"],
    unit: "µs",
    max: 239,
    tolerance: 18,
    loftDeg: { max: 35 },
    rule: "Part 2, 4c(i)",
    source: ruleSources.springEffect,
  },
  {
    code: "faceTimeDamaged",
    quantity: "faceTimeUs",
    families: ["driver"],
    unit: "µs",
    max: 257,
    rule: "Part 1, 4.1a(2), interpretation",
    source: ruleSources.wear,
  },
  {
    code: "insertFlush",
    quantity: "insertProudMm",
    families: allClubs,
    unit: "mm",
    min: mmFromInches(-0.004),
    max: mmFromInches(0.006),
    rule: "Part 2, 5a",
    source: ruleSources.insert,
  },
  {
    code: "faceHardness",
    quantity: "faceHardnessShoreD",
    families: notPutters,
    unit: "Shore D",
    min: 75,
    rule: "Part 2, 5a",
    source: ruleSources.insert,
  },
  {
    code: "putterFaceHardness",
    quantity: "faceHardnessShoreA",
    families: putters,
    unit: "Shore A",
    min: 85,
    rule: "Part 2, 5a",
    source: ruleSources.insert,
  },
] as const satisfies readonly LimitRule[];
