import type { ReadyEstimate } from "../../core/bench/benchTypes.ts";
import type { Instant } from "../../core/kinds.ts";

export interface OrderTimes {
  readonly likelyAt: Instant | null;
  readonly promiseAt: Instant | null;
  readonly playableAt: Instant | null;
}

/** Work on a club that has yet to come in has no times before it does. */
export const noTimes: OrderTimes = { likelyAt: null, promiseAt: null, playableAt: null };

/** The times of an order of several clubs are those of its last. */
export function timesOf(times: readonly ReadyEstimate[], order: ReadyEstimate["order"]): OrderTimes {
  const own = times.filter((time) => time.order === order);
  const last = (name: keyof OrderTimes): Instant | null =>
    own.length === 0 || own.some((time) => time[name] === null)
      ? null
      : own.reduce<Instant | null>((latest, time) => (latest === null || (time[name] ?? 0) > latest ? time[name] : latest), null);
  return { likelyAt: last("likelyAt"), promiseAt: last("promiseAt"), playableAt: last("playableAt") };
}
