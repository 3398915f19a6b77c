import { playerNear } from "./playerNames.ts";
import type { NamedPlayer } from "./reading.ts";

/** The players a word that names nobody may have meant, nearest first. */
export function nearestNames(word: string, players: readonly NamedPlayer[]): readonly string[] {
  const near = playerNear(word, players);
  if (near.kind === "one") return [near.player.name];
  return (near.kind === "several" ? near.players : near.nearest).map((player) => player.name);
}
