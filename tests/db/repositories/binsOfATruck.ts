import type { ShaftModel, SleeveModel } from "../../../core/buildSheet/parts.ts";
import { cyclesPerMinute } from "../../../core/quantity/units.ts";
import { addPartModel } from "../../../db/repositories/partModels.ts";
import { addPerson, addPlayer, addTruck } from "../../../db/repositories/people.ts";
import { addPlace } from "../../../db/repositories/places.ts";
import type { Tx } from "../../../db/write.ts";
import { someShaft, someSleeve } from "../../core/buildSheet/someParts.ts";

const facts = <M extends { readonly id: unknown; readonly name: string }>({ id: _id, name: _name, ...rest }: M): Omit<M, "id" | "name"> => rest;

export const shaftFacts = facts<ShaftModel>(someShaft({ frequencyCpm: cyclesPerMinute(262) }));
export const sleeveFacts = facts<SleeveModel>(someSleeve({}));

/** Two trucks; in the first a rack, the bins of two players and a part of either kind. */
export function binsOfATruck(tx: Tx) {
  const [truckId, otherTruckId] = [addTruck(tx, "Plover"), addTruck(tx, "Knot")];
  const player = (name: string) => addPlayer(tx, { name, hand: "left", hatSize: "M", gloveSize: "M" }, [name]);
  const [playerId, otherPlayerId] = [player("Noor Halloway"), player("Marrick Toll")];
  const bin = (label: string, of: typeof playerId) => addPlace(tx, { kind: "playerBin", label, truckId, playerId: of });
  return {
    truckId,
    otherTruckId,
    playerId,
    otherPlayerId,
    personId: addPerson(
      tx,
      { name: "Ode", zone: "Europe/Lisbon", lengthUnit: "in" },
      { platform: "rehearsal", userId: "ode", roles: ["technician"] },
    ),
    bin: bin("bin Noor Halloway", playerId),
    othersBin: bin("bin Marrick Toll", otherPlayerId),
    rack: addPlace(tx, { kind: "mainRack", label: "main rack", truckId, playerId: null }),
    otherRack: addPlace(tx, { kind: "mainRack", label: "main rack", truckId: otherTruckId, playerId: null }),
    shaft: addPartModel(tx, { kind: "shaft", name: "Dunlin 60 X", facts: shaftFacts, restrictedCode: null }),
    sleeve: addPartModel(tx, { kind: "sleeve", name: "Cairn driver sleeve", facts: sleeveFacts, restrictedCode: null }),
    grip: addPartModel(tx, { kind: "grip", name: "Gorse Standard", facts: {}, restrictedCode: null }),
  };
}
