import { clubFamily, type Id, type Instant } from "../../core/kinds.ts";
import { type OrderRow, requestOf } from "../../db/repositories/orders.ts";
import { modelsOf } from "../../db/repositories/partModels.ts";
import { eventById } from "../../db/repositories/people.ts";
import { sheetsOf } from "../../db/repositories/sheets.ts";
import type { Reader } from "../../db/write.ts";

/** What is known of a driver head and the list for play, where the event keeps one. */
export interface ListEntry {
  readonly modelId: Id<"partModel">;
  readonly model: string;
  /** Yes, no, or never looked up. */
  readonly listed: boolean | null;
  /** When that was looked up; null when it only stands in the team's own files. */
  readonly listedAt: Instant | null;
  /** Looked up since this event's week began. */
  readonly isFresh: boolean;
  /** The club is for testing only: the list does not matter before it is played. */
  readonly forTesting: boolean;
}

interface Listed {
  readonly id: Id<"partModel">;
  readonly name: string;
  readonly listedForPlay?: boolean | null;
  readonly listedAt?: Instant | null;
}

/** The entries asked before hand-over: of each driver head an order puts into a player's hand. */
export function listEntries(reader: Reader, order: OrderRow): readonly ListEntry[] {
  const event = eventById(reader, order.eventId);
  if (event === null || !event.keepsListForPlay) {
    return [];
  }
  const weekBegan = Date.parse(`${event.monday}T00:00:00Z`) - 24 * 3_600_000;
  const { request } = requestOf(reader, order);
  const models = modelsOf<Listed>(reader, "head");
  const newInHand: readonly OrderRow["kind"][] = ["build", "swap", "broke"];
  const names = sheetsOf(reader, order).flatMap(({ club, sheetPlan }) =>
    newInHand.includes(order.kind) && clubFamily(club) === "driver"
      ? (sheetPlan.plan?.choice.head.model.name ?? sheetPlan.reference?.headModel ?? [])
      : [],
  );
  return [...new Set(names)].flatMap((name) => {
    const model = models.find((known) => known.name === name);
    if (model === undefined) {
      return [];
    }
    const { listedForPlay = null, listedAt = null } = model;
    return [
      {
        modelId: model.id,
        model: name,
        listed: listedForPlay,
        listedAt,
        isFresh: listedAt !== null && listedAt >= weekBegan,
        forTesting: request.purpose === "test",
      },
    ];
  });
}
