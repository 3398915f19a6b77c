import type { SleeveModel } from "../../core/buildSheet/parts.ts";
import type { Instant } from "../../core/kinds.ts";
import { openStates, orderByNumber } from "../../db/repositories/orders.ts";
import { modelsOf } from "../../db/repositories/partModels.ts";
import { allPlayers, currentEvent } from "../../db/repositories/people.ts";
import { liveSpec } from "../../db/repositories/week.ts";
import type { Reader } from "../../db/write.ts";
import type { ReadingContext } from "../boundary/reading.ts";
import type { Actor } from "../chat/types.ts";

/** What the reader of messages knows: names of the record, the venue's clock, the open orders of the channel's truck. */
export function readingContext(reader: Reader, actor: Actor, now: Instant): ReadingContext {
  const models = { head: namedModels(reader, "head"), shaft: namedModels(reader, "shaft"), grip: namedModels(reader, "grip") };
  const names = (kind: keyof typeof models): readonly string[] => models[kind].map(({ name }) => name);
  const grinds = modelsOf<{ readonly grind: string | null }>(reader, "head").flatMap(({ grind }) => grind ?? []);
  const { truck } = actor;
  const eventId = truck === null ? null : (currentEvent(reader, truck, now)?.event.id ?? null);
  return {
    now,
    zone: actor.zone,
    lengthUnit: actor.lengthUnit,
    players: allPlayers(reader).map(({ id, name, aliases }) => ({ id, name: name ?? "", aliases })),
    headModels: names("head"),
    shaftModels: names("shaft"),
    gripModels: names("grip"),
    codeWords: Object.values(models).flatMap((known) =>
      known.flatMap(({ name, restrictedCode }) => (restrictedCode === null ? [] : [{ code: restrictedCode, name }])),
    ),
    sleeveMarks: [...new Set(modelsOf<SleeveModel>(reader, "sleeve").flatMap(({ marks }) => marks.map(({ mark }) => mark)))],
    grinds: [...new Set(grinds)],
    isOpenOrder: (number) => {
      const order = truck === null ? null : orderByNumber(reader, truck, eventId, number);
      return order !== null && openStates.includes(order.state);
    },
    bagOf: (player) => liveSpec(reader, player)?.bag.clubs.map(({ club }) => club) ?? [],
  };
}

const namedModels = (reader: Reader, kind: "head" | "shaft" | "grip") => modelsOf<{ readonly name: string }>(reader, kind);
