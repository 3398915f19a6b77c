import type { CheckTolerances } from "../../core/bag/checkTolerances.ts";
import type { Station, WaitFloors } from "../../core/bench/benchTypes.ts";
import type { Id } from "../../core/kinds.ts";
import type { SelectionTolerances } from "../../core/selection/selectionTolerances.ts";
import type { Reader } from "../../db/write.ts";
import { stationsAt } from "./benchSnapshot.ts";
import { shopFloors } from "./shopRoutes.ts";
import { checkTolerances, selectionTolerances } from "./shopTolerances.ts";

/** The shop's numbers in force: tolerances and waits everywhere, stations at one truck. */
export function settingsInForce(
  reader: Reader,
  truckId: Id<"truck"> | null,
): {
  readonly choosing: SelectionTolerances;
  readonly checking: CheckTolerances;
  readonly waits: WaitFloors;
  readonly stations: Readonly<Record<Station, number>>;
} {
  return {
    choosing: selectionTolerances(reader),
    checking: checkTolerances(reader),
    waits: shopFloors(reader),
    stations: stationsAt(reader, truckId),
  };
}
