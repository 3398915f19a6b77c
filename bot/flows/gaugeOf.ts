import type { Id } from "../../core/kinds.ts";
import { truckChannel } from "../../db/repositories/people.ts";
import type { Reader } from "../../db/write.ts";

/** One gauge a truck: comparisons hold on one gauge only. */
export const gaugeOf = (reader: Reader, truckId: Id<"truck">): string => `gauge of ${truckChannel(reader, truckId, "bench") ?? `truck ${truckId}`}`;
