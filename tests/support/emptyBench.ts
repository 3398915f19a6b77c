import { benchSnapshot } from "../../bot/operations/benchSnapshot.ts";
import type { BenchJob, BenchSnapshot, StepKind } from "../../core/bench/benchTypes.ts";
import { medianDay } from "../../core/bench/medianDay.ts";
import { defaultPace } from "../../core/bench/pace.ts";
import { defaultPolicy } from "../../core/bench/policy.ts";
import type { Instant } from "../../core/kinds.ts";
import { allTrucks } from "../../db/repositories/people.ts";
import { type MemoryBot, openMemoryBot } from "./memoryBot.ts";
import { petra } from "./people.ts";
import { venueTime } from "./readCard.ts";

const MINUTE_MS = 60_000;

/** The demo week on its Monday, its own orders set aside: the bench holds what a test puts on it. */
export async function openEmptyBench(at = "2027-05-03T10:30"): Promise<MemoryBot> {
  const bot = await openMemoryBot(venueTime(at));
  for (const number of ["1", "2", "3", "4", "5"]) await bot.invoke(petra, "order scratch", { order: number });
  await bot.settle();
  return bot;
}

/** The Plover's bench as it stands. */
export function ploverBench(bot: MemoryBot): BenchSnapshot {
  const plover = allTrucks(bot.db).find(({ name }) => name === "Plover");
  if (plover === undefined) throw new Error("the demo week has no Plover");
  return benchSnapshot(bot.db, plover.id, bot.now(), null);
}

/** When steps of a kind begin and end on a day without surprises, in the order they are done. */
export function plannedSteps(bot: MemoryBot, kind: StepKind): readonly { readonly startAt: Instant; readonly endAt: Instant }[] {
  const day = medianDay({ snapshot: ploverBench(bot), policy: defaultPolicy, pace: defaultPace });
  return day
    .flatMap(({ route, startAt, endAt }) => (route.kind === kind && startAt !== null && endAt !== null ? [{ startAt, endAt }] : []))
    .toSorted((a, b) => a.startAt - b.startAt);
}

/** Minutes of hands-on work that count as spent on a job: what is done by its median. */
export function workedMin(job: BenchJob | undefined, now: Instant): number {
  const spent = (job?.steps ?? []).map(({ route, state, startedAt, workedMs }) => {
    if (route.unattended) return 0;
    if (state === "done") return route.medianMin * MINUTE_MS;
    return workedMs + (state === "running" ? now - (startedAt ?? now) : 0);
  });
  return spent.reduce((sum, ms) => sum + ms, 0) / MINUTE_MS;
}
