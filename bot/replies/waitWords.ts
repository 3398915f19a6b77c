import type { StepKind } from "../../core/bench/benchTypes.ts";
import { type Instant, instant } from "../../core/kinds.ts";
import type { OrderFacts } from "../operations/orderFacts.ts";
import { timeText } from "./shown.ts";

const MS_PER_MIN = 60_000;

/** What sets, and how it is said when it has. */
const waits: Partial<Readonly<Record<StepKind, readonly [string, string]>>> = {
  bondSet: ["glue", "glue set"],
  gripSet: ["grip", "grip set"],
  coolDown: ["cools", "cooled"],
  paintDry: ["paint", "paint dry"],
};

type Step = OrderFacts["clubs"][number]["steps"][number];

/** What sets again counts, not what it replaces. */
const isNewest = ({ kind }: Step, at: number, steps: readonly Step[]): boolean => !steps.slice(at + 1).some((later) => later.kind === kind);

/** `glue till 13:58`, or `glue set`: the wait that runs longest, as planned; null while nothing sets. */
export function waitWords({ clubs, zone }: OrderFacts, now: Instant): string | null {
  const running = clubs
    .flatMap(({ steps }) => steps.filter(isNewest))
    .flatMap(({ kind, route, state, startedAt, repeatsStepId }) =>
      state === "running" && startedAt !== null && waits[kind as StepKind] !== undefined
        ? [
            {
              kind: kind as StepKind,
              isAgain: repeatsStepId !== null,
              until: instant(startedAt + Math.max(route.floorMin, route.medianMin) * MS_PER_MIN),
            },
          ]
        : [],
    )
    .toSorted((a, b) => b.until - a.until)[0];
  const [name, over] = running === undefined ? [] : (waits[running.kind] ?? []);
  if (running === undefined || name === undefined || over === undefined) {
    return null;
  }
  return running.until <= now ? over : `${name}${running.isAgain ? " again" : ""} till ${timeText(running.until, now, zone)}`;
}
