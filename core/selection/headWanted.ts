import type { HeadChoice } from "../buildSheet/plan.ts";
import type { Id } from "../kinds.ts";

/** What an allotment looks at in a choice. */
export type ScoredHead = Pick<HeadChoice, "score"> & { readonly head: Pick<HeadChoice["head"], "id"> };

/** One club that needs a head. */
export interface HeadWanted<K, C extends ScoredHead = HeadChoice> {
  /** Whatever the caller knows it by. */
  readonly key: K;
  /** How urgent it is: what a unit of score costs. */
  readonly weight: number;
  /** Ranked, the best first; of several settings of one head its first counts. */
  readonly choices: readonly C[];
  /** The head of a confirmed sheet and its score there; null or left out where nothing is confirmed. */
  readonly held?: { readonly headId: Id<"head">; readonly score: number } | null;
}

/** What a club gets; null when there is no head for it. */
export interface Allotment<K, C extends ScoredHead = HeadChoice> {
  readonly key: K;
  readonly choice: C | null;
  /** How many heads come before this one in its choices: 0 for its own best. */
  readonly rank: number | null;
}

export interface HeadsAllotted<K, C extends ScoredHead = HeadChoice> {
  /** In the order in which the clubs came. */
  readonly allotted: readonly Allotment<K, C>[];
  readonly loss: number;
}
