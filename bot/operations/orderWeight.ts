import type { Instant } from "../../core/kinds.ts";

const URGENT_WEIGHT = 4;
const DUE_WEIGHT = 2;

/** What a minute late, or a head further off, costs: a player waiting on the range outranks a backup for Friday. Common practice, no source. */
export const orderWeight = ({ urgent, byAt }: { readonly urgent: boolean; readonly byAt: Instant | null }): number =>
  urgent ? URGENT_WEIGHT : byAt === null ? 1 : DUE_WEIGHT;
