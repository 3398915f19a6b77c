import { MM_PER_INCH } from "../../../core/quantity/units.ts";
import type { Measurement, Observation } from "../../../core/rules/clubFacts.ts";
import type { Measure } from "./measures.ts";

const inches = (min: number, max: number, ...also: readonly string[]) =>
  ({ kind: "number", measure: "length", min: min * MM_PER_INCH, max: max * MM_PER_INCH, also }) as const;
const angle = (min: number, max: number, ...also: readonly string[]) => ({ kind: "number", measure: "angle", min, max, also }) as const;
const plain = (min: number, max: number, ...also: readonly string[]) =>
  ({ kind: "number", measure: "count" satisfies Measure, min, max, also }) as const;
const yesNo = (...also: readonly string[]) =>
  ({ kind: "word", words: ["yes", "no"], spelled: { y: "yes", n: "no", true: "yes", false: "no" }, also }) as const;
const adopted = (word: string, ...spellings: readonly string[]) =>
  ({ kind: "word", words: [word], spelled: Object.fromEntries(spellings.map((spelling) => [spelling, word])), bare: true }) as const;

/** What a gauge can read, by the name people write. */
export const measuredFields = {
  length: inches(10, 100, "len"),
  loft: angle(-30, 80, "true loft", "squared loft"),
  lie: angle(30, 95, "seated lie"),
  lean: angle(-45, 45, "forward lean", "shaft lean"),
  bend: inches(0, 40, "shaft bend", "bend above sole"),
  neck: inches(0, 20, "neck length", "hosel"),
  "grip length": inches(1, 50, "grip"),
  "grip width": inches(0.3, 5, "grip widest"),
  rib: inches(0, 2, "out of round"),
  "grip gap": inches(0, 40, "gap"),
  "upper grip": inches(0, 40),
  width: inches(1, 12, "heel to toe", "heel-toe"),
  depth: inches(0.2, 12, "face to back", "front to back"),
  height: inches(0.2, 10, "sole to crown"),
  volume: plain(50, 1000, "vol"),
  inertia: { kind: "number", measure: "inertia", min: 0.1, max: 20, unit: "g·cm²", also: ["moi", "head inertia"] },
  "face width": inches(0.5, 12),
  ct: plain(100, 400, "face time", "characteristic time"),
  insert: inches(-0.5, 0.5, "insert proud"),
  "shore d": plain(10, 100, "hardness", "face hardness"),
  "shore a": plain(10, 100),
  "groove width": inches(0.001, 0.3),
  "groove depth": inches(0, 0.3),
  "groove separation": inches(0.001, 1, "groove spacing"),
  "groove area": plain(0, 10),
  "groove radius": inches(0, 0.3, "edge radius"),
  "punch area": plain(0, 100, "punch mark area"),
  "punch spacing": inches(0, 2, "punch mark spacing"),
  "punch depth": inches(0, 0.5, "punch mark depth"),
  "centre design": inches(0, 3, "center design"),
  "side marking": inches(0, 4),
} as const;

/** What can be seen on a club, answered by yes or no. */
export const seenFields = {
  adjustable: yesNo(),
  "by hand": yesNo("without tool"),
  loose: yesNo("loose parts"),
  "setting outside": yesNo("setting outside rules"),
  "setting changed": yesNo("setting changed in round"),
  "lead changed": yesNo("lead changed in round"),
  "bends alike": yesNo(),
  "twists alike": yesNo(),
  heel: yesNo("at heel", "attached at heel"),
  "grip round": yesNo("round grip", "round"),
  bulge: yesNo("waist", "grip bulge"),
  "two grips": yesNo(),
  "two grips round": yesNo(),
  "on list": yesNo("driver list", "listed"),
  "markings 2010": yesNo("2010 markings"),
  "before 1999": yesNo("made before 1999"),
  "before 2010": yesNo("made before 2010"),
} as const;

/** Model Local Rules that count when they are named. */
export const localFields = {
  "G-10": adopted("local rule 46", "local 46", "local rule 46 in", "local rule g-10", "local g-10", "g-10", "46 in rule"),
  "G-1": adopted("local rule list", "local list", "local rule g-1", "local g-1", "g-1"),
  "G-2": adopted("local rule grooves", "local grooves", "local rule g-2", "local g-2", "g-2"),
} as const;

export const rulesFields = { ...measuredFields, ...seenFields, ...localFields } as const;

/** The fact each name stands for. */
export const measuredFacts = {
  length: "lengthMm",
  loft: "squaredLoftDeg",
  lie: "seatedLieDeg",
  lean: "shaftForwardLeanDeg",
  bend: "shaftBendAboveSoleMm",
  neck: "neckLengthMm",
  "grip length": "gripLengthMm",
  "grip width": "gripWidestMm",
  rib: "gripOutOfRoundMm",
  "grip gap": "twoGripGapMm",
  "upper grip": "twoGripUpperLengthMm",
  width: "headHeelToToeMm",
  depth: "headFaceToBackMm",
  height: "headSoleToCrownMm",
  volume: "headVolumeCm3",
  inertia: "headInertiaKgCm2",
  "face width": "faceHeelToToeMm",
  ct: "faceTimeUs",
  insert: "insertProudMm",
  "shore d": "faceHardnessShoreD",
  "shore a": "faceHardnessShoreA",
  "groove width": "grooveWidthMm",
  "groove depth": "grooveDepthMm",
  "groove separation": "grooveSeparationMm",
  "groove area": "grooveAreaMm2",
  "groove radius": "grooveEdgeRadiusMm",
  "punch area": "punchMarkAreaMm2",
  "punch spacing": "punchMarkSpacingMm",
  "punch depth": "punchMarkDepthMm",
  "centre design": "centreDesignSideMm",
  "side marking": "sideMarkingFromCentreMm",
} as const satisfies Readonly<Record<keyof typeof measuredFields, Measurement>>;

export const seenFacts = {
  adjustable: "adjustable",
  "by hand": "adjustableWithoutTool",
  loose: "adjustablePartsLoose",
  "setting outside": "settingOutsideRules",
  "setting changed": "settingChangedInRound",
  "lead changed": "leadChangedInRound",
  "bends alike": "shaftBendsAlike",
  "twists alike": "shaftTwistsAlike",
  heel: "attachedAtHeel",
  "grip round": "gripRound",
  bulge: "gripBulgeOrWaist",
  "two grips": "twoGrips",
  "two grips round": "twoGripsRound",
  "on list": "onDriverList",
  "markings 2010": "markings2010",
  "before 1999": "madeBefore1999",
  "before 2010": "madeBefore2010",
} as const satisfies Readonly<Record<keyof typeof seenFields, Observation>>;
