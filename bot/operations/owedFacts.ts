import type { Id } from "../../core/kinds.ts";
import { fieldOf, playerById } from "../../db/repositories/people.ts";
import { owedMarkings } from "../../db/repositories/week.ts";
import type { Reader } from "../../db/write.ts";

export interface OwedMarking {
  readonly id: number;
  readonly player: string;
  readonly club: string;
  readonly text: string;
  readonly forWin: boolean;
}

/** Markings owed to the players in an event's field, or to everyone. */
export function owedFacts(reader: Reader, event: Id<"event"> | null): readonly OwedMarking[] {
  const field = event === null ? null : new Set(fieldOf(reader, event).map(({ id }) => id));
  return owedMarkings(reader, null)
    .filter((row) => field === null || field.has(row.playerId))
    .map((row) => {
      const player = playerById(reader, row.playerId);
      return { id: row.id, player: player?.restrictedCode ?? player?.name ?? "erased", club: row.club, text: row.text, forWin: row.forWin };
    });
}
