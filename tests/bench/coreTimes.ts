import { performance } from "node:perf_hooks";
import { assembledClub } from "../../core/club/assembledClub.ts";
import { clampedShaftFrequency } from "../../core/club/clampedShaftFrequency.ts";
import { clubComponents } from "../../core/club/clubComponents.ts";
import { exactShaftFrequency } from "../../core/club/exactShaftFrequency.ts";
import { taperedBeamFrequency } from "../../core/club/taperedBeamFrequency.ts";
import { sleeveChart } from "../../core/head/sleeveChart.ts";
import { degrees, grams, kilogramSquareCentimetres, millimetres, newtonSquareMetres, swingWeightPoints } from "../../core/quantity/units.ts";
import type { WeightPlace } from "../../core/selection/weightQuestion.ts";
import { weightsFor } from "../../core/selection/weightsFor.ts";
import { someSleeve } from "../core/buildSheet/someParts.ts";
import { workedClub } from "../core/club/someParts.ts";

const ROUNDS = 9;
const ROUND_MS = 60;

/** Prints the median of nine rounds of at least 60 ms each, after one to warm up. */
function time(name: string, work: () => unknown): void {
  const round = (): number => {
    let calls = 0;
    const from = performance.now();
    while (performance.now() - from < ROUND_MS) {
      work();
      calls += 1;
    }
    return ((performance.now() - from) * 1000) / calls;
  };
  round();
  const microseconds = Array.from({ length: ROUNDS }, round).sort((a, b) => a - b);
  console.log(`${name}: ${microseconds[Math.floor(ROUNDS / 2)]?.toFixed(1)} µs`);
}

const parts = workedClub("driver");
const shaft = { lengthMm: millimetres(1100), massG: grams(62) };
const setUp = { clampMm: millimetres(127), tipMassG: grams(200), gripOn: false };
const head = { soledLoftDeg: degrees(9), soledFaceDeg: degrees(0.3), designLieDeg: degrees(58), hand: "right" } as const;
const sleeve = someSleeve({});
const ports: readonly WeightPlace[] = [
  { name: "back", fromCapMm: millimetres(1130), backMm: millimetres(45), toeMm: millimetres(0) },
  { name: "front", fromCapMm: millimetres(1130), backMm: millimetres(-20), toeMm: millimetres(0) },
  { name: "heel", fromCapMm: millimetres(1125), backMm: millimetres(10), toeMm: millimetres(-40) },
  { name: "toe", fromCapMm: millimetres(1135), backMm: millimetres(10), toeMm: millimetres(40) },
];
const twelve = Array.from({ length: 12 }, (_, index) => ({
  name: `screw ${index + 1}`,
  massG: grams(1.5 + index),
  place: "rack",
  inPlayersBin: false,
  free: 1,
}));
const aims = {
  swingWeightPoints: { wanted: swingWeightPoints(3), tolerance: swingWeightPoints(0.25) },
  centreBackMm: { wanted: millimetres(1), tolerance: millimetres(0.5) },
};
const bareHead = { massG: grams(190), swingWeightPoints: swingWeightPoints(-3) };

time("mass model, parts to sums", () => assembledClub(clubComponents(parts)));
time(`sleeve chart, ${sleeve.marks.length} marks`, () => sleeveChart(head, sleeve));
for (const count of [2, 3, 4]) {
  time(`weight search, 12 screws in ${count} ports`, () => weightsFor({ head: bareHead, aims, ports: ports.slice(0, count), screws: twelve }));
}
time("frequency, Rayleigh", () => clampedShaftFrequency({ ...shaft, bendingStiffnessNm2: newtonSquareMetres(50) }, setUp));
time("frequency, exact root", () => exactShaftFrequency({ ...shaft, bendingStiffnessNm2: newtonSquareMetres(50) }, setUp));
time("frequency, tapered beam", () =>
  taperedBeamFrequency(
    {
      ...shaft,
      balanceFromTipMm: millimetres(550),
      tipStiffnessNm2: newtonSquareMetres(25),
      buttStiffnessNm2: newtonSquareMetres(100),
    },
    { ...setUp, tipMassBeyondTipMm: millimetres(19), tipMassInertiaKgCm2: kilogramSquareCentimetres(5) },
  ),
);
