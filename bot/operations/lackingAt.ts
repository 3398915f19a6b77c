import type { RouteStep, Skill } from "../../core/bench/benchTypes.ts";
import type { Id, Instant } from "../../core/kinds.ts";
import { currentEvent } from "../../db/repositories/people.ts";
import type { Reader } from "../../db/write.ts";
import { techniciansAt } from "./crew.ts";

/** What keeps work from being done at all: nobody is at the bench, or nobody has a skill it asks for. */
export type Lacking = Skill | "anybody";

/** What steps ask for that nobody has who is at a truck's bench, or back at it, before it leaves. */
export function lackingAt(reader: Reader, truckId: Id<"truck">, steps: readonly Pick<RouteStep, "skill">[], now: Instant): readonly Lacking[] {
  const leavesAt = currentEvent(reader, truckId, now)?.rollOutAt ?? Number.POSITIVE_INFINITY;
  const crew = techniciansAt(reader, truckId).filter(({ away }) => !away.some(({ from, to }) => from <= now && to >= leavesAt));
  const asked = new Set(steps.flatMap(({ skill }) => skill ?? []));
  return crew.length === 0 ? ["anybody"] : [...asked].filter((skill) => !crew.some(({ skills }) => skills.includes(skill)));
}
