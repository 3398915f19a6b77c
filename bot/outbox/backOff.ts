import { type Instant, instant } from "../../core/kinds.ts";

const FIRST_MS = 1000;
const LONGEST_BACK_OFF_MS = 5 * 60_000;
/** No wait is longer: a later moment than this can only come from a clock that was set back. */
const LONGEST_WAIT_MS = 10 * 60_000;

/**
 * When to try again: as told, else 1 s doubled with each try up to 5 min, of which half is left to chance so that
 * tries do not march in step.
 *
 * @param tries - how often it was tried, from 1
 * @param afterMs - what the platform asked for, or null
 * @param random - from 0 to below 1
 */
export function backOff(now: Instant, tries: number, afterMs: number | null, random: number): Instant {
  if (afterMs !== null && Number.isFinite(afterMs)) {
    return instant(now + Math.ceil(Math.min(Math.max(afterMs, 0), LONGEST_WAIT_MS)));
  }
  const ceilingMs = Math.min(LONGEST_BACK_OFF_MS, 2 * FIRST_MS * 2 ** Math.min(tries - 1, 20));
  return instant(now + Math.round((ceilingMs / 2) * (1 + random)));
}

/**
 * Brings back a moment that a clock jump left too far ahead: what was never tried is due now, the rest after the
 * longest back-off.
 */
export function clampWait(now: Instant, nextAt: Instant, isUntried: boolean): Instant {
  if (nextAt <= now + LONGEST_WAIT_MS) {
    return nextAt;
  }
  return isUntried ? now : instant(now + LONGEST_BACK_OFF_MS);
}
