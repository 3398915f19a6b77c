import type { SpecClub } from "./specClub.ts";

/** A club of the player's that is built and is not the gamer. */
export interface FinishedClub {
  readonly club: SpecClub;
  readonly where: /** A backup; without a truck the place is as noted with it, and null is not known. */
    | { readonly kind: "drawer"; readonly place: string | null; readonly truck: string | null }
    | { readonly kind: "ready"; readonly order: number; readonly truck: string }
    | { readonly kind: "out"; readonly order: number };
  /** Built to be tried, not to be a twin. */
  readonly onTest: boolean;
}
