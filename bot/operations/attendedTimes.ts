import type { OpenInterval } from "../../core/bench/benchTypes.ts";
import { type Id, type Instant, instant } from "../../core/kinds.ts";
import type { PressRow } from "../../db/repositories/benchPresses.ts";

/** Who is at an order under way, and when they were since the press that began its stage. */
export interface Attended {
  readonly person: Id<"person"> | null;
  readonly times: readonly OpenInterval[];
}

const leaves = ({ press }: PressRow): boolean => press === "pause" || press === "handBack" || press === "checked";
/** Start, Glue on, Done; and a Resume of what did not rest: a step is done again. */
const beginsStage = ({ press }: PressRow, before: PressRow | undefined): boolean =>
  press === "start" || press === "glueOn" || press === "done" || (press === "resume" && before !== undefined && !leaves(before));

function inOpenHours(times: readonly OpenInterval[], open: readonly OpenInterval[]): readonly OpenInterval[] {
  return times.flatMap(({ from, to }) =>
    open
      .map((hours) => ({ from: instant(Math.max(from, hours.from)), to: instant(Math.min(to, hours.to)) }))
      .filter((part) => part.from < part.to || (from === to && part.from === part.to)),
  );
}

/**
 * When somebody was at an order since the press that began its stage: from that press on, less the time after a press of theirs on
 * another order, after Pause or Hand back, and less closed hours.
 *
 * @param presses - of the truck, oldest first
 * @param open - opening hours since that press
 */
export function attendedTimes(presses: readonly PressRow[], orderId: Id<"order">, open: readonly OpenInterval[], now: Instant): Attended {
  const own = presses.filter((one) => one.orderId === orderId);
  const begun = own.findLast((one, at) => beginsStage(one, own[at - 1]));
  if (begun === undefined) {
    return { person: null, times: [] };
  }
  let person: Id<"person"> | null = begun.personId;
  let since: Instant | null = begun.at;
  const times: OpenInterval[] = [];
  const stop = (at: number): void => {
    if (since !== null && since <= at) {
      times.push({ from: since, to: instant(at) });
    }
    since = null;
  };
  /** Whoever leaves at this very moment is not here any more. */
  const leave = (at: Instant): void => stop(Math.min(at, now - 1));
  for (const one of presses.slice(presses.indexOf(begun) + 1)) {
    const isOwn = one.orderId === orderId;
    if (isOwn && leaves(one)) {
      leave(one.at);
      person = one.press === "handBack" ? null : person;
    } else if (isOwn) {
      since ??= one.at;
      person = one.personId;
    } else if (one.personId === person && !leaves(one)) {
      leave(one.at);
    }
  }
  stop(now);
  return { person, times: inOpenHours(times, open) };
}
