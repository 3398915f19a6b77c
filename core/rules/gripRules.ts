import { mmFromInches } from "../quantity/units.ts";
import { ruleSources } from "./ruleSources.ts";
import { allClubs, type LimitRule, notPutters, putters } from "./ruleTypes.ts";

/** The grip, and the two that a putter may have. */
export const gripRules = [
  {
    code: "gripLength",
    quantity: "gripLengthMm",
    families: allClubs,
    unit: "mm",
    min: mmFromInches(7),
    unless: "twoGrips",
    rule: "Part 2, 3a",
    source: ruleSources.gripReading,
  },
  {
    code: "gripWidth",
    quantity: "gripWidestMm",
    families: allClubs,
    unit: "mm",
    max: mmFromInches(1.75),
    rule: "Part 2, 3b(iii)",
    source: ruleSources.grip,
  },
  {
    code: "gripRib",
    quantity: "gripOutOfRoundMm",
    families: notPutters,
    unit: "mm",
    max: mmFromInches(0.04),
    rule: "Part 2, 3b(i)",
    source: ruleSources.gripSection,
  },
  {
    code: "twoGripGap",
    quantity: "twoGripGapMm",
    families: putters,
    unit: "mm",
    min: mmFromInches(1.5),
    onlyIf: "twoGrips",
    rule: "Part 2, 3c",
    source: ruleSources.grip,
  },
  {
    code: "twoGripUpperLength",
    quantity: "twoGripUpperLengthMm",
    families: putters,
    unit: "mm",
    min: mmFromInches(5),
    onlyIf: "twoGrips",
    rule: "Part 2, 3c",
    source: ruleSources.twoGrips,
  },
] as const satisfies readonly LimitRule[];
