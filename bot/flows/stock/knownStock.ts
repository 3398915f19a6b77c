import type { HeadModel } from "../../../core/buildSheet/parts.ts";
import type { Id } from "../../../core/kinds.ts";
import { modelsOf } from "../../../db/repositories/partModels.ts";
import { allPlayers } from "../../../db/repositories/people.ts";
import { placesIn } from "../../../db/repositories/places.ts";
import { headsOnRecord } from "../../../db/repositories/stockCount.ts";
import type { Reader } from "../../../db/write.ts";
import { countedKinds, type KnownPlace, type StockKnown } from "../../boundary/stock/stockKnown.ts";

/** What texts about stock are read against: every model, the places of a truck, every serial. */
export function knownStock(reader: Reader, truckId: Id<"truck"> | null): StockKnown {
  return {
    parts: countedKinds.flatMap((kind) =>
      modelsOf<{ readonly id: Id<"partModel">; readonly name: string; readonly family?: string }>(reader, kind).map((model) => ({
        id: model.id,
        kind,
        name: model.name,
        code: model.restrictedCode,
        family: kind === "sleeve" ? (model.family ?? null) : null,
      })),
    ),
    headModels: modelsOf<HeadModel>(reader, "head").map(({ id, name, restrictedCode, family, sleeveFamily, grind }) => ({
      id,
      name,
      code: restrictedCode,
      family,
      sleeveFamily,
      grind,
    })),
    places: truckId === null ? [] : placesOf(reader, truckId),
    serials: headsOnRecord(reader).map(({ head }) => ({ serial: head.serial, retired: head.retiredAt !== null })),
  };
}

function placesOf(reader: Reader, truckId: Id<"truck">): readonly KnownPlace[] {
  const players = new Map(allPlayers(reader).map((player) => [player.id, player]));
  return placesIn(reader, truckId).map(({ id, kind, label, playerId }) => {
    const player = playerId === null ? undefined : players.get(playerId);
    return {
      id,
      kind,
      label,
      shown: player?.restrictedCode == null ? label : `${kind === "playerBin" ? "bin" : label} ${player.restrictedCode}`,
      player: player === undefined ? null : { id: player.id, name: player.name ?? "", aliases: player.aliases },
    };
  });
}
