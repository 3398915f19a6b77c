import type { Id } from "../../core/kinds.ts";
import { pressesOf } from "../../db/repositories/benchPresses.ts";
import type { OrderRow } from "../../db/repositories/orders.ts";
import { personName } from "../../db/repositories/people.ts";
import { sheetsOf } from "../../db/repositories/sheets.ts";
import type { Reader } from "../../db/write.ts";
import { restingStep } from "./restStep.ts";

/** In whose hands an order under way is, and whether work on it rests. */
export interface AtBench {
  /** Null before Start, and once it was handed back. */
  readonly hands: { readonly person: Id<"person">; readonly name: string } | null;
  readonly resting: "paused" | "handedBack" | null;
  /** Where a resting club lies, as far as it was said. */
  readonly lies: string | null;
}

const nobody: AtBench = { hands: null, resting: null, lies: null };

/** The last press says who is at an order, and whether it rests. */
export function atBench(reader: Reader, order: OrderRow): AtBench {
  const last = order.state === "building" || order.state === "finalCheck" ? pressesOf(reader, order.id).at(-1) : undefined;
  if (last === undefined) {
    return nobody;
  }
  const hands = last.press === "handBack" ? null : { person: last.personId, name: personName(reader, last.personId) };
  if (last.press !== "handBack" && last.press !== "pause") {
    return { hands, resting: null, lies: null };
  }
  const lies = sheetsOf(reader, order).flatMap((sheet) => restingStep(sheet)?.reason ?? [])[0] ?? null;
  return { hands, resting: last.press === "pause" ? "paused" : "handedBack", lies };
}
