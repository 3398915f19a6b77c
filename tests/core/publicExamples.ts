import * as core from "../../core/index.ts";
import { benchJob, benchWith, inMinutes, now, routeOfSteps, work } from "./bench/benchBuilders.ts";
import { someClub, someHead, someHeadModel, someParts, someSleeve, someTarget } from "./buildSheet/someParts.ts";
import { somePiece } from "./buildSheet/somePieces.ts";
import { driver as checkDriver, clubWithOwnInertia, componentsOfRow } from "./club/checkClubs.ts";
import { workedClub } from "./club/someParts.ts";

const driver = clubWithOwnInertia(checkDriver);
const components = componentsOfRow(checkDriver);
const others = components.filter(({ name }) => name !== "head");
const { shaft, ...worked } = workedClub("driver");
const parts = {
  ...worked,
  shaft: {
    lengthMm: shaft.lengthMm,
    massG: shaft.massG,
    balanceFromButtMm: shaft.balanceFromButtMm,
    ownInertiaKgCm2: core.kilogramSquareCentimetres(70),
  },
};
const raw = { rawLengthMm: 1168, rawMassG: 65, balanceFromTipMm: 610 };
const setUp = { clampMm: 127, tipMassG: 200, gripOn: false, planeDeg: 0, tipMassBeyondTipMm: 19, tipMassInertiaKgCm2: 4 };
const reading = { cpm: 260, setUp };
const even = { lengthMm: 1100, massG: 62 };
const head = { soledLoftDeg: 9, soledFaceDeg: 0.5, designLieDeg: 58, hand: "right" };
const tilt = { tiltDeg: 1, clockDeg: 45 };
const stocked = someSleeve({});
const sleeve = { tiltDeg: stocked.tiltDeg, marks: stocked.marks, standardMark: stocked.standardMark };
const chart = core.sleeveChart(someHead({}), sleeve);
const grip = { nominalMm: 23, coreMm: 15, shaftMm: 15.2 };
const layers = { layers: 1, layerMm: 0.13 };
const iron = { squaredLoftDeg: 54, seatedLieDeg: 63, bounceDeg: 10, offsetMm: 2, bendPointHeightMm: 55 };
const bend = { loftChangeDeg: -1, lieChangeDeg: 0.5 };
const screw = { name: "screw", massG: 4, place: "rack", inPlayersBin: false, free: 2 };
const port = { name: "back", fromCapMm: 1130, backMm: 40, toeMm: 0 };
const target = someTarget({ squaredLoftDeg: 9, soledFaceDeg: 0, seatedLieDeg: 58, swingWeightPoints: 2, tipTrimMm: 12.7, wraps: 1 });
const spec = someClub({ bounceDeg: 10 });
const bagged = {
  ...spec,
  balancePointMm: 850,
  inertiaKgCm2: 2900,
  frequencyCpm: 260,
  frequencySetUp: "5 in, 200 g",
  gripAt2InMm: 23,
  gripAt6InMm: 22,
  offsetMm: 2,
};
const planQuestion = {
  target,
  kind: "build",
  reference: spec,
  parts: someParts({ weights: [] }),
  allowances: core.defaultAllowances,
  tolerances: core.defaultSelectionTolerances,
} as Parameters<typeof core.planClub>[0];
const activity = { durationMs: 1, demands: [1], before: [], releaseMs: 0, due: { dueMs: 2, weight: 1 }, byHand: true, underWay: false, group: 0 };
const pace: core.Pace = {
  spreads: core.defaultSpreads,
  learned: [{ work: "build driver", stage: "toDone", mean: 0.1, kappa: 4, alpha: 5, beta: 0.3 }],
};
const snapshot = benchWith([benchJob(1, routeOfSteps(work("cut", 2)), { dueAt: now, releaseAt: now })], {
  rollOutAt: core.instant(now + 86_400_000),
});
const facts = {
  family: "driver",
  lengthMm: 1143,
  squaredLoftDeg: 9,
  seatedLieDeg: 58,
  shaftForwardLeanDeg: 1,
  headVolumeCm3: 455,
  headInertiaKgCm2: 5.5,
  faceTimeUs: 245,
  gripWidestMm: 26,
  gripOutOfRoundMm: 0.5,
  gripLengthMm: 260,
  headHeelToToeMm: 120,
  headFaceToBackMm: 110,
  headSoleToCrownMm: 65,
};

/** One call of every public function that it answers; every number in it must be refused when it is none. */
export const examples: Readonly<Record<string, readonly unknown[]>> = {
  clubFamily: ["7i"],
  inchesFromMm: [25.4],
  mmFromInches: [1],
  inchesAsFraction: [1143],
  swingWeightLabel: [3],
  swingWeightPointsOf: ["D3"],
  swingWeightOldScale: [215, 430],
  inchOuncesFromOldScale: [245, 430],
  inchOuncesFromPoints: [2],
  pointsFromInchOunces: [215],

  assembledClub: [components],
  bareCutLength: [1143, 31.75, 3.175],
  playingLength: [1108, 31.75, 3.175],
  boreToGround: [{ kind: "hosel", hoselLengthMm: 60, insertionDepthMm: 28 }],
  builtClub: [parts],
  clubComponents: [parts],
  cantileverRoot: [1],
  clampedShaftFrequency: [{ ...even, bendingStiffnessNm2: 50 }, setUp],
  exactShaftFrequency: [{ ...even, bendingStiffnessNm2: 50 }, setUp],
  stiffnessFromFrequency: [reading, even],
  scaledFrequency: [reading, even, { lengthMm: 1087, tipMassG: 202 }],
  frequencyDifference: [reading, reading],
  sameSetUp: [setUp, setUp],
  taperedBeamFrequency: [{ ...even, balanceFromTipMm: 550, tipStiffnessNm2: 30, buttStiffnessNm2: 100 }, setUp],
  frequencyAfterTrim: [
    reading,
    { ...raw, cut: { tipTrimMm: 12, buttTrimMm: 40 }, buttToTipStiffness: 4 },
    { tipTrimMm: 12, buttTrimMm: 52, tipMassG: 202, clampMm: 127 },
  ],
  dryTargets: [core.clubComponents(parts), 3.175],
  gripBuildUp: [{ upper: { ...grip, ...layers }, lower: { ...grip, ...layers } }, "left", { kind: "rubber", stretchFactor: 1 }],
  gripDiameter: [grip, layers, { kind: "rubber", stretchFactor: 1 }],
  gripHand: ["left", "lower"],
  gripLayersForSize: [grip, 23.4, 0.13, { kind: "rubber", stretchFactor: 1 }],
  gripShaftDiameter: [{ diameterMm: 15.2, parallelMm: 40, taperPer100Mm: 0.4 }, 152.4, 3.175],
  gripSize: ["standard", "mens"],
  gripTape: [{ ...layers, lengthMm: 254, shaftMm: 15.2, grammageGPerM2: 110 }, 127],
  headCentreUpShaft: [32, 40, 58],
  headMassForInertia: [2850, { fromCapMm: 1130, fromAxisMm: 40, ownInertiaKgCm2: 5 }, others],
  headMassForLengthChange: [driver, 12.7, "inertia"],
  headMassForSwingWeight: [3, 1130, others],
  inertiaFromPendulum: [1.87, 430, 715],
  pendulumPeriod: [2686, 430, 715],
  lengthChangeForHeadMass: [driver, 202, "swing-weight"],
  lengthenedClub: [driver, 12.7],
  linearDensity: [raw],
  gramsPerPoint: [1130],
  pointsOfMass: [2, 1130],
  sensitivities: [driver, { tipWeightFromCapMm: 1080, buttWeightFromCapMm: 12.7 }],
  setTipTrim: [2, { firstMm: 0, stepMm: 12.7 }],
  shaftTrim: [{ tip: "parallel", parallelTipMm: 120, rawLengthMm: 1168 }, 12.7, 1100, 38.1],
  swingWeightOfLieChange: [270, 36, -2],
  trimmedByOffCuts: [raw, { tip: { lengthMm: 12, massG: 1, balanceFromTipMm: 6 }, butt: { lengthMm: 40, massG: 2, balanceFromTipMm: 20 } }],
  trimmedShaft: [raw, 12.7, 40],

  afterBend: [iron, bend],
  aimOfLieError: [46, 4, "right"],
  attitudeOf: [head, tilt],
  bondedAttitude: [head],
  bareHeadOf: [{ squaredLoftDeg: 9, soledFaceDeg: 0.5, seatedLieDeg: 58 }, tilt, "right"],
  bendAllowed: [
    { material: "carbon steel", construction: "forged", history: [bend], makerLimitDeg: 3, skilledTechnician: true },
    bend,
    core.defaultBendLimits,
  ],
  bendFor: [iron, { squaredLoftDeg: 53, seatedLieDeg: 63, bounceDeg: 9 }],
  chartWithMeasured: [chart, [{ mark: "upright", squaredLoftDeg: 9, soledFaceDeg: 0, seatedLieDeg: 59, squaredLoftAtDesignLieDeg: 9 }], 0.5],
  composedTilt: [[tilt, tilt]],
  faceNormal: [9, 0.5],
  graphicsAfterTurn: [{ logo: "down", ribClockDeg: 180, spineClockDeg: 90 }, 90],
  graphicsToSet: [{ logo: "down", ribClockDeg: 180, spineClockDeg: 90 }, 90],
  lieAtLength: [940, 62, 12.7],
  nearestMark: [
    head,
    sleeve,
    { squaredLoftDeg: 9, soledFaceDeg: 0, seatedLieDeg: 58 },
    { squaredLoftDeg: 0.25, soledFaceDeg: 0.5, seatedLieDeg: 0.25, scoreBand: 0.25 },
  ],
  returnedAttitude: [head, tilt],
  rolledFace: [10, 58, 2],
  shaftDirection: [58, tilt, "left"],
  sidewaysAt: [109_728, 4],
  sleeveChart: [head, sleeve],
  tiltFromRating: [2, "squared-loft", 58, 9],
  turnedMark: [sleeve, "standard", 1],
  turnOfShaft: ["standard", "upright", sleeve, "right"],

  centreShiftByAdding: [10, 40, 200],
  centreShiftByMoving: [10, 60, 200],
  chooseHeads: [{ target, heads: [someHead({ bounceDeg: 10 })], sleeves: [stocked], tolerances: core.defaultSelectionTolerances }],
  /** Only ids and scores of a choice are looked at. */
  allotHeads: [[{ key: "57", weight: 1, choices: [{ head: { id: 1 }, score: 0.5 }], held: { headId: 1, score: 0.6 } }]],
  leadTapeLength: [2, { widthMm: 12.7, thicknessMm: 0.14, densityGPerCm3: 11.34 }],
  leadTapeMass: [100, { weighedG: 2, weighedLengthMm: 100 }],
  weightMovedAlongShaft: [10, 10],
  weightsFor: [
    {
      head: { massG: 196, swingWeightPoints: 1 },
      aims: {
        swingWeightPoints: { wanted: 3, tolerance: 0.5 },
        headMassG: { wanted: 200, tolerance: 1 },
        centreBackMm: { wanted: 1, tolerance: 1 },
        centreToeMm: { wanted: 0, tolerance: 1 },
      },
      ports: [port],
      screws: [screw],
      melt: { places: [port], stepG: 1, mostG: 3 },
      tip: { fromCapMm: 1080, stock: [screw], mostG: 8 },
      lead: { places: [port], mostG: 4 },
    },
  ],

  checkRow: ["lengthMm", 1143, 1144, core.defaultCheckTolerances, { readings: 2, errors: core.defaultGaugeErrors }],
  combinedGaugeError: [0.125, 2],
  compareClubs: [bagged, bagged, core.defaultCheckTolerances, core.defaultGaugeErrors],
  inertiaMatch: [[{ club: "7i", inertiaKgCm2: 2670, headFromCapMm: 930 }], 2680, 0.5],
  loftGaps: [
    [
      { club: "8i", squaredLoftDeg: 39 },
      { club: "9i", squaredLoftDeg: 43 },
    ],
    core.defaultGapLimits,
  ],
  progressions: [
    [
      { club: "7i", lengthMm: 940, seatedLieDeg: 62 },
      { club: "8i", lengthMm: 927, seatedLieDeg: 62.5 },
    ],
    { lengthMm: 12.7, lieDeg: 0.5, lengthToleranceMm: 1.6, lieToleranceDeg: 0.25 },
  ],
  rankTwins: [
    bagged,
    [{ club: bagged }],
    { tolerances: core.defaultCheckTolerances, gaugeErrors: core.defaultGaugeErrors, partCosts: core.defaultPartCosts },
  ],
  swingWeightMatch: [[{ club: "7i", swingWeightPoints: 1, headFromCapMm: 930 }], 2, 0.5],

  bagFindings: [[facts], ["G-10"]],
  cautionsFor: ["cut", ["graphite"]],
  clubFindings: [facts, ["G-10"]],
  cureMinutes: [60, 23, 13],
  floorsOf: [{ adhesive: "quickEpoxy", gripMethod: "air", walkMin: 2, roomTemperatureC: 15 }],

  finalCheck: [
    {
      kind: "build",
      target,
      planned: { squaredLoftDeg: 9 },
      listed: [],
      measured: { lengthMm: 1143, squaredLoftDeg: 9 },
      looks: { wanted: {}, seen: {} },
      tolerances: core.defaultCheckTolerances,
    },
  ],
  planService: [
    {
      kind: "turn",
      club: "driver",
      hand: "right",
      target: someTarget({ sleeveMark: "upright" }),
      clauses: { sleeve: { value: { kind: "mark", mark: "upright" }, asWritten: "upright" } },
      reference: spec,
      head: someHeadModel({}),
      sleeve: stocked,
      shaft: null,
      grips: [],
      bends: [bend],
      skilledTechnician: false,
      allowances: core.defaultAllowances,
      note: null,
    },
  ],
  chooseShaft: [
    {
      shaft: "Dunlin 60 X",
      family: "driver",
      hand: "right",
      forGamer: true,
      tipTrimMm: 12.7,
      bareCutMm: 1105,
      leastParallelTipMm: 38.1,
      sleeve: { model: stocked, mark: "standard" },
      logo: "down",
      bore: { tip: "parallel", tipDiameterMm: 8.5 },
      stock: planQuestion.parts.shafts,
      pieces: [somePiece({})],
      elsewhere: planQuestion.parts.shafts,
    },
  ],
  chooseGrip: [
    {
      grip: "Gorse Standard Round",
      rib: false,
      buttDiameterMm: 15.2,
      wraps: 1,
      layerMm: 0.127,
      stock: planQuestion.parts.grips,
      elsewhere: [],
    },
  ],
  nearestShafts: [planQuestion.parts.shafts[0]?.model, "driver", planQuestion.parts.shafts, core.defaultShaftTolerances],
  nearestGrips: [planQuestion.parts.grips[0]?.model, planQuestion.parts.grips, core.defaultGripTolerances],
  planClub: [planQuestion],
  resolveTarget: [
    {
      request: { clauses: { stampedLoftDeg: { value: 9, asWritten: "9" }, lengthMm: { value: { kind: "exactly", value: 1143 }, asWritten: "45" } } },
      club: "driver",
      hand: "right",
      reference: spec,
      family: "driver",
      sleeves: [stocked],
    },
  ],

  inSeries: [routeOfSteps(work("cut", 2))],
  assumedProgress: [[benchJob(1, routeOfSteps(work("cut", 2)))], [{ from: now, to: inMinutes(1) }], null, inMinutes(1)],
  checkedRoutes: [core.defaultRoutes.turn],
  choosePolicy: [{ snapshot, pace, seed: 1, scenarios: 2, schedules: 3, incumbent: null, marginShare: 0.05 }],
  choosePolicyInSlices: [{ snapshot, pace, seed: 1, scenarios: 2, schedules: 3, incumbent: null }, 1],
  drawStage: [{ work: "build driver", stage: "toDone", mean: 0.1, kappa: 4, alpha: 5, beta: 0.3 }, 0.5, 0.5],
  learnPace: [[{ order: core.id(1), work: "build driver", stage: "toGlue", logPace: 0.1, spreadShare: 0.5 }], core.defaultSpreads],
  stagesSeen: [
    [{ order: core.id(1), work: "build driver", clubs: [[work("cut", 2)]] }],
    [
      { order: core.id(1), press: "start", person: core.id(1), at: now },
      { order: core.id(1), press: "done", person: core.id(1), at: inMinutes(2) },
    ],
    [{ from: now, to: inMinutes(60) }],
  ],
  medianDay: [{ snapshot, policy: core.defaultPolicy, pace }],
  nextWork: [{ snapshot, policy: core.defaultPolicy, pace }],
  planProject: [
    { activities: [activity], capacities: [1], open: null },
    { schedules: 2, seed: 1, goal: "makespan" },
  ],
  planInSlices: [{ activities: [activity], capacities: [1], open: null }, { schedules: 2, seed: 1, goal: "makespan" }, 1],
  promiseRecord: [[{ promiseAt: inMinutes(25), likelyAt: inMinutes(20), inHandAt: inMinutes(22) }]],
  wilsonInterval: [9, 10, 0.9],
  estimateInSlices: [{ snapshot, pace, seed: 1, samples: 4 }, 2],
  readyTimes: [{ snapshot, pace, seed: 1, samples: 4 }],
  simulateOnce: [{ snapshot, policy: core.defaultPolicy, pace, seed: 1, sample: 0 }],
  routeFor: [{ kind: "build", family: "iron", adjustable: false }, core.defaultFloors],
};
