import type { ClubFacts, OrderFacts } from "../operations/orderFacts.ts";
import type { PrintedStep } from "../prints/sheetPrint.ts";
import { stepCautions } from "./cautionLine.ts";
import { shown } from "./shown.ts";
import { stepWords } from "./stepWords.ts";

type Step = ClubFacts["steps"][number];

/** A step done again is another step: its kind, and the how manieth of that kind. */
function namedSteps({ steps }: ClubFacts): ReadonlyMap<string, Step> {
  const counts = new Map<string, number>();
  return new Map(
    steps.map((step) => {
      const { kind } = step.route;
      const count = (counts.get(kind) ?? 0) + 1;
      counts.set(kind, count);
      return [`${kind} ${count}`, step];
    }),
  );
}

/** The steps of all clubs in one order of work: what only some need stands where they need it. */
function mergedNames(clubs: readonly ReadonlyMap<string, Step>[]): readonly string[] {
  const names: string[] = [];
  for (const steps of clubs) {
    let next = 0;
    for (const name of steps.keys()) {
      const found = names.indexOf(name);
      if (found < 0) {
        names.splice(next, 0, name);
      }
      next = Math.max(next, (found < 0 ? next : found) + 1);
    }
  }
  return names;
}

/** Hands-on minutes of all clubs together; a wait is the same for all that wait. */
function minutesWords(steps: readonly Step[]): string {
  const minutes = steps.map(({ route }) => route.medianMin);
  const waits = steps.every(({ route }) => route.unattended);
  const all = waits ? Math.max(...minutes) : minutes.reduce((sum, min) => sum + min, 0);
  return `${waits ? "wait " : ""}${shown.stamp(all)} min`;
}

/** The steps of an order, a tick for each club and each step's own cautions. */
export function printedSteps(facts: OrderFacts): readonly PrintedStep[] {
  const clubs = facts.clubs.map((club) => ({ club, steps: namedSteps(club) }));
  return mergedNames(clubs.map(({ steps }) => steps)).flatMap((name): readonly PrintedStep[] => {
    const found = clubs.map(({ club, steps }) => ({ club, step: steps.get(name) }));
    const steps = found.flatMap(({ step }) => step ?? []);
    const [first] = steps;
    if (first === undefined) {
      return [];
    }
    const { kind } = first.route;
    return [
      {
        words: stepWords[kind],
        minutes: minutesWords(steps),
        cautions: [...new Set(found.flatMap(({ club, step }) => (step === undefined ? [] : stepCautions(facts, club, kind))))],
        ticks: found.map(({ step }) => (step === undefined || step.state === "skipped" ? "none" : step.state === "done" ? "done" : "todo")),
      },
    ];
  });
}
