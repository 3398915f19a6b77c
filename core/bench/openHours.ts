import type { BenchSnapshot, OpenInterval } from "./benchTypes.ts";

/** Opening hours apart and in order, in ms after the snapshot's now. */
export type OpenHours = readonly { readonly fromMs: number; readonly toMs: number }[];

/** The opening hours from now to roll-out, joined where they touch or overlap. */
export function openHours(snapshot: Pick<BenchSnapshot, "open" | "now">, rollOutMs: number): OpenHours {
  const open: { fromMs: number; toMs: number }[] = [];
  for (const interval of snapshot.open.toSorted((a, b) => a.from - b.from)) {
    const fromMs = Math.max(0, interval.from - snapshot.now);
    const toMs = Math.min(rollOutMs, interval.to - snapshot.now);
    const last = open.at(-1);
    if (!(fromMs < toMs)) continue;
    if (last !== undefined && fromMs <= last.toMs) last.toMs = Math.max(last.toMs, toMs);
    else open.push({ fromMs, toMs });
  }
  return open;
}

/** The opening hours without the times somebody is away. */
export function withoutAway(open: OpenHours, away: readonly OpenInterval[], now: number): OpenHours {
  return away.reduce<OpenHours>(
    (hours, gap) =>
      hours.flatMap(({ fromMs, toMs }) =>
        [
          { fromMs, toMs: Math.min(toMs, gap.from - now) },
          { fromMs: Math.max(fromMs, gap.to - now), toMs },
        ].filter((part) => part.fromMs < part.toMs),
      ),
    open,
  );
}
