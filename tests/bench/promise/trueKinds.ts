/** The kinds of work of a season as they truly go, before what is hidden: nothing of the program is used or known here. */

/** One step of the truth: minutes, what it waits for by name, and whether it needs a hand. */
export interface TrueStep {
  readonly name: string;
  readonly minutes: number;
  readonly after: readonly string[];
  /** A wait: never shorter than its sheet says. */
  readonly sheet?: number;
  /** Up to the glue, up to Done, or the check. */
  readonly part: "glue" | "bench" | "check";
}

export interface TrueKind {
  readonly name: string;
  /** Share of a season's jobs. */
  readonly share: number;
  readonly steps: readonly TrueStep[];
}

const step = (name: string, minutes: number, part: TrueStep["part"], ...after: readonly string[]): TrueStep => ({ name, minutes, after, part });
const wait = (name: string, sheet: number, part: TrueStep["part"], ...after: readonly string[]): TrueStep => ({
  name,
  minutes: sheet,
  after,
  part,
  sheet,
});

const driver: readonly TrueStep[] = [
  step("shaft and sleeve", 1, "glue"),
  step("tip", 1.5, "glue", "shaft and sleeve"),
  step("dry fit", 0.5, "glue", "tip"),
  step("glue", 1, "glue", "dry fit"),
  wait("glue sets", 6, "bench", "glue"),
  step("head out", 1.5, "bench"),
  step("head gauged", 1.5, "bench", "head out"),
  step("grip out", 1, "bench"),
  step("head on", 0.5, "bench", "glue sets", "head gauged"),
  step("cut", 1.5, "bench", "head on"),
  step("weighed", 1, "bench", "cut", "grip out"),
  step("gripped", 1.5, "bench", "weighed"),
  wait("grip sets", 4, "check", "gripped"),
  step("measured", 2.5, "check", "gripped"),
  step("signed", 0.5, "check", "measured", "grip sets"),
];

const iron: readonly TrueStep[] = [
  step("shaft", 1, "glue"),
  step("head out", 1, "glue"),
  step("head gauged", 1, "glue", "head out"),
  step("tip", 1.5, "glue", "shaft"),
  step("weighed", 2, "glue", "tip", "head gauged"),
  step("glue", 1.5, "glue", "weighed"),
  wait("glue sets", 20, "bench", "glue"),
  step("grip out", 0.5, "bench"),
  step("ferrule", 1.5, "bench", "glue sets"),
  step("cut", 1.5, "bench", "ferrule"),
  step("gripped", 1.5, "bench", "cut", "grip out"),
  wait("grip sets", 4, "check", "gripped"),
  step("bent", 2, "bench", "gripped"),
  step("measured", 2, "check", "bent"),
  step("signed", 0.5, "check", "measured", "grip sets"),
];

const bondedWood: readonly TrueStep[] = [
  step("shaft", 2, "glue"),
  step("head out", 2, "glue"),
  step("head gauged", 3, "glue", "head out"),
  step("tip", 4, "glue", "shaft"),
  step("dry fit", 3, "glue", "tip", "head out"),
  step("weighed", 3, "glue", "dry fit", "head gauged"),
  step("glue", 3, "glue", "weighed"),
  wait("glue sets", 20, "bench", "glue"),
  step("grip out", 1, "bench"),
  step("ferrule", 4, "bench", "glue sets"),
  step("cut", 3, "bench", "ferrule"),
  step("gripped", 3, "bench", "cut", "grip out"),
  wait("grip sets", 4, "check", "gripped"),
  step("measured", 3.5, "check", "gripped"),
  step("signed", 0.5, "check", "measured", "grip sets"),
];

const swap: readonly TrueStep[] = [
  step("head out", 1, "bench"),
  step("head gauged", 1, "bench", "head out"),
  step("old off", 0.5, "bench"),
  step("head on", 0.5, "bench", "head gauged", "old off"),
  step("measured", 1.5, "check", "head on"),
  step("signed", 0.5, "check", "measured"),
];

const regrip: readonly TrueStep[] = [
  step("grip out", 0.5, "bench"),
  step("old off", 1.5, "bench"),
  step("gripped", 1.5, "bench", "old off", "grip out"),
  wait("grip sets", 10, "check", "gripped"),
  step("measured", 1, "check", "gripped"),
  step("signed", 0.5, "check", "measured", "grip sets"),
];

const bend: readonly TrueStep[] = [
  step("looked at", 0.75, "bench"),
  step("bent", 2.5, "bench", "looked at"),
  step("measured", 0.75, "check", "bent"),
  step("signed", 0.5, "check", "measured"),
];

export const trueKinds: readonly TrueKind[] = [
  { name: "driver", share: 0.4, steps: driver },
  { name: "iron", share: 0.2, steps: iron },
  { name: "bonded wood", share: 0.08, steps: bondedWood },
  { name: "swap", share: 0.1, steps: swap },
  { name: "regrip", share: 0.12, steps: regrip },
  { name: "bend", share: 0.1, steps: bend },
];
