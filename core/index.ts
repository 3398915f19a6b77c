/** The public face of the calculation core: the arithmetic of a club, the choice of parts, ready times. */

export { checkRow } from "./bag/checkRow.ts";
export { defaultCheckTolerances } from "./bag/checkTolerances.ts";
export { combinedGaugeError } from "./bag/combinedGaugeError.ts";
export { compareClubs } from "./bag/compareClubs.ts";
export { defaultGaugeErrors } from "./bag/gaugeErrors.ts";
export { inertiaMatch } from "./bag/inertiaMatch.ts";
export { defaultGapLimits, loftGaps } from "./bag/loftGaps.ts";
export { defaultPartCosts } from "./bag/partCosts.ts";
export { progressions } from "./bag/progressions.ts";
export { rankTwins } from "./bag/rankTwins.ts";
export type * from "./bag/specClub.ts";
export { swingWeightMatch } from "./bag/swingWeightMatch.ts";
export { assumedProgress } from "./bench/assumedProgress.ts";
export { simulateOnce } from "./bench/benchSimulation.ts";
export type * from "./bench/benchTypes.ts";
export { checkedRoutes } from "./bench/checkedRoutes.ts";
export { choosePolicy, choosePolicyInSlices, type PolicyChoice, type PolicyQuestion, type PolicyTrial } from "./bench/choosePolicy.ts";
export { inSeries } from "./bench/inSeries.ts";
export { drawStage } from "./bench/learning/drawStage.ts";
export { learnPace } from "./bench/learning/learnPace.ts";
export type * from "./bench/learning/presses.ts";
export { stagesSeen } from "./bench/learning/stagesSeen.ts";
export { medianDay } from "./bench/medianDay.ts";
export { type NextWhy, type NextWork, nextWork, type TimedStep } from "./bench/nextWork.ts";
export { defaultPace, defaultSpreads, type Pace, type Stage, type StagePace } from "./bench/pace.ts";
export { planInSlices, planProject } from "./bench/plan/planProject.ts";
export type * from "./bench/plan/project.ts";
export { type DispatchRule, defaultPolicy, dispatchRules, type Policy } from "./bench/policy.ts";
export { type PromiseKept, type PromiseRecord, promiseRecord } from "./bench/promiseRecord.ts";
export { estimateInSlices, readyTimes } from "./bench/readyTimes.ts";
export { defaultFloors, defaultRoutes, type RouteName, type RouteTables, routeFor, routeNames } from "./bench/routes.ts";
export { type ShareInterval, wilsonInterval } from "./bench/wilsonInterval.ts";
export { defaultAllowances } from "./buildSheet/allowances.ts";
export type * from "./buildSheet/buildRequest.ts";
export { chooseGrip, type GripChoice, type GripMisfit, type GripQuestion, type GripShortage } from "./buildSheet/chooseGrip.ts";
export { chooseShaft, type ShaftChoice, type ShaftMisfit, type ShaftQuestion, type ShaftShortage } from "./buildSheet/chooseShaft.ts";
export { finalCheck } from "./buildSheet/finalCheck.ts";
export { defaultGripTolerances, type NearGrip, nearestGrips } from "./buildSheet/nearestGrips.ts";
export { defaultShaftTolerances, type NearShaft, nearestShafts } from "./buildSheet/nearestShafts.ts";
export type * from "./buildSheet/parts.ts";
export type * from "./buildSheet/plan.ts";
export { planClub } from "./buildSheet/planClub.ts";
export { planService } from "./buildSheet/planService.ts";
export { resolveTarget } from "./buildSheet/resolveTarget.ts";
export type * from "./buildSheet/servicePlan.ts";
export { assembledClub } from "./club/assembledClub.ts";
export { bareCutLength } from "./club/bareCutLength.ts";
export { boreToGround } from "./club/boreToGround.ts";
export { builtClub } from "./club/builtClub.ts";
export { cantileverRoot } from "./club/cantileverRoot.ts";
export { clampedShaftFrequency } from "./club/clampedShaftFrequency.ts";
export type * from "./club/clubComponent.ts";
export { clubComponents } from "./club/clubComponents.ts";
export type * from "./club/clubParts.ts";
export { dryTargets } from "./club/dryTargets.ts";
export { exactShaftFrequency } from "./club/exactShaftFrequency.ts";
export { BUTT_TO_TIP_STIFFNESS, frequencyAfterTrim } from "./club/frequencyAfterTrim.ts";
export { frequencyDifference } from "./club/frequencyDifference.ts";
export type * from "./club/frequencySetUp.ts";
export { gripBuildUp } from "./club/gripBuildUp.ts";
export { gripDiameter } from "./club/gripDiameter.ts";
export { gripHand } from "./club/gripHand.ts";
export { gripLayersForSize } from "./club/gripLayersForSize.ts";
export { gripShaftDiameter } from "./club/gripShaftDiameter.ts";
export { gripSize } from "./club/gripSize.ts";
export { gripTape } from "./club/gripTape.ts";
export { headCentreUpShaft } from "./club/headCentreUpShaft.ts";
export { headMassForInertia } from "./club/headMassForInertia.ts";
export { headMassForLengthChange } from "./club/headMassForLengthChange.ts";
export { headMassForSwingWeight } from "./club/headMassForSwingWeight.ts";
export { inertiaFromPendulum, pendulumPeriod } from "./club/inertiaFromPendulum.ts";
export { lengthChangeForHeadMass } from "./club/lengthChangeForHeadMass.ts";
export { lengthenedClub } from "./club/lengthenedClub.ts";
export { linearDensity } from "./club/linearDensity.ts";
export { gramsPerPoint, pointsOfMass } from "./club/massAtPosition.ts";
export { playingLength } from "./club/playingLength.ts";
export { sameSetUp } from "./club/sameSetUp.ts";
export { scaledFrequency } from "./club/scaledFrequency.ts";
export { sensitivities } from "./club/sensitivities.ts";
export { setTipTrim } from "./club/setTipTrim.ts";
export { LEAST_PARALLEL_TIP_MM, shaftTrim } from "./club/shaftTrim.ts";
export { stiffnessFromFrequency } from "./club/stiffnessFromFrequency.ts";
export { swingWeightOfLieChange } from "./club/swingWeightOfLieChange.ts";
export { taperedBeamFrequency } from "./club/taperedBeamFrequency.ts";
export { trimmedByOffCuts } from "./club/trimmedByOffCuts.ts";
export { trimmedShaft } from "./club/trimmedShaft.ts";
export { DomainError, type Facts } from "./errors.ts";
export { afterBend } from "./head/afterBend.ts";
export { aimOfLieError } from "./head/aimOfLieError.ts";
export type * from "./head/attitude.ts";
export { attitudeOf, bondedAttitude } from "./head/attitudeOf.ts";
export { bareHeadOf } from "./head/bareHeadOf.ts";
export { bendAllowed } from "./head/bendAllowed.ts";
export { bendFor } from "./head/bendFor.ts";
export { defaultBendLimits } from "./head/bendLimits.ts";
export { chartWithMeasured, PLAUSIBLE_DIFFERENCE_DEG } from "./head/chartWithMeasured.ts";
export { composedTilt } from "./head/composedTilt.ts";
export { faceNormal } from "./head/faceNormal.ts";
export { graphicsAfterTurn, graphicsToSet } from "./head/graphicsAfterTurn.ts";
export { lieAtLength } from "./head/lieAtLength.ts";
export { nearestMark } from "./head/nearestMark.ts";
export { returnedAttitude } from "./head/returnedAttitude.ts";
export { rolledFace } from "./head/rolledFace.ts";
export { shaftDirection } from "./head/shaftDirection.ts";
export { sidewaysAt } from "./head/sidewaysAt.ts";
export type * from "./head/sleeve.ts";
export { sleeveChart } from "./head/sleeveChart.ts";
export type * from "./head/sleeveTilt.ts";
export { tiltFromRating } from "./head/tiltFromRating.ts";
export { turnedMark } from "./head/turnedMark.ts";
export { turnOfShaft } from "./head/turnOfShaft.ts";
export * from "./kinds.ts";
export { inchesAsFraction } from "./quantity/inchesAsFraction.ts";
export { swingWeightLabel } from "./quantity/swingWeightLabel.ts";
export { inchOuncesFromOldScale, swingWeightOldScale } from "./quantity/swingWeightOldScale.ts";
export { swingWeightPointsOf } from "./quantity/swingWeightPointsOf.ts";
export { inchOuncesFromPoints, pointsFromInchOunces } from "./quantity/swingWeightScale.ts";
export type * from "./quantity/units.ts";
export {
  cyclesPerMinute,
  degrees,
  GRAMS_PER_OUNCE,
  grams,
  inchesFromMm,
  inchOunces,
  kilogramSquareCentimetres,
  MM_PER_INCH,
  millimetres,
  mmFromInches,
  newtonSquareMetres,
  seconds,
  swingWeightPoints,
} from "./quantity/units.ts";
export { bagFindings } from "./rules/bagFindings.ts";
export { cautionsFor } from "./rules/cautionsFor.ts";
export type * from "./rules/clubFacts.ts";
export { clubFindings } from "./rules/clubFindings.ts";
export { cureMinutes } from "./rules/cureMinutes.ts";
export { equipmentRules } from "./rules/equipmentRules.ts";
export { floorsOf } from "./rules/floorsOf.ts";
export type * from "./rules/ruleTypes.ts";
export { cubicCentimetres, microseconds, shoreA, shoreD, squareMillimetres } from "./rules/ruleUnits.ts";
export { adhesiveWaits, gripWaits } from "./rules/waits.ts";
export { allotHeads, NO_HEAD_LOSS } from "./selection/allotHeads.ts";
export { centreShiftByAdding, centreShiftByMoving } from "./selection/centreOfMassShift.ts";
export { chooseHeads } from "./selection/chooseHeads.ts";
export type * from "./selection/headWanted.ts";
export { leadTapeLength, leadTapeMass } from "./selection/leadTape.ts";
export { defaultSelectionTolerances } from "./selection/selectionTolerances.ts";
export { weightMovedAlongShaft } from "./selection/weightMovedAlongShaft.ts";
export type * from "./selection/weightQuestion.ts";
export { weightsFor } from "./selection/weightsFor.ts";
