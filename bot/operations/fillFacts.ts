import type { Id } from "../../core/kinds.ts";
import { fieldOf, type PlayerRow } from "../../db/repositories/people.ts";
import { floatOf } from "../../db/repositories/stock.ts";
import { filledAt } from "../../db/repositories/week.ts";
import type { Reader } from "../../db/write.ts";

/** What a player gets each week unless something else is agreed (common practice, no source). */
export const allowance = { balls: 36, hats: 4, gloves: 4 } as const;

export interface FillRow {
  readonly player: Id<"player">;
  readonly name: string;
  readonly hand: "left" | "right";
  readonly balls: number;
  readonly hats: number;
  readonly gloves: number;
  readonly hatSize: string;
  readonly gloveSize: string;
  readonly filled: boolean;
}

export interface FillFacts {
  readonly event: Id<"event">;
  readonly truck: Id<"truck">;
  readonly rows: readonly FillRow[];
  /** What the field takes in all, by goods as counted, against what lies in the truck. */
  readonly totals: readonly { readonly name: string; readonly needed: number; readonly free: number }[];
}

/** What a player's bin takes this week. */
export function fillOf(player: PlayerRow): Omit<FillRow, "filled"> {
  return {
    player: player.id,
    name: player.restrictedCode ?? player.name ?? "erased",
    hand: player.hand,
    balls: player.balls ?? allowance.balls,
    hats: player.hats ?? allowance.hats,
    gloves: player.gloves ?? allowance.gloves,
    hatSize: player.hatSize,
    gloveSize: player.gloveSize,
  };
}

/** The goods a player's bin takes, by their names in the stock; a glove is worn on the hand that does not swing below. */
export function goodsOf(row: Omit<FillRow, "filled">): readonly { readonly name: string; readonly quantity: number }[] {
  const gloveHand = row.hand === "right" ? "left" : "right";
  return [
    { name: "ball", quantity: row.balls },
    { name: `hat ${row.hatSize}`, quantity: row.hats },
    { name: `glove ${row.gloveSize} ${gloveHand}`, quantity: row.gloves },
  ];
}

/** The Monday fill of a truck's event. */
export function fillFacts(reader: Reader, truck: Id<"truck">, event: Id<"event">): FillFacts {
  const filled = filledAt(reader, event);
  const rows = fieldOf(reader, event).map((player): FillRow => ({ ...fillOf(player), filled: filled.has(player.id) }));
  const needed = new Map<string, number>();
  for (const { name, quantity } of rows.filter((row) => !row.filled).flatMap(goodsOf)) {
    needed.set(name, (needed.get(name) ?? 0) + quantity);
  }
  const float = new Map(floatOf(reader, truck).map(({ name, free }) => [name, free]));
  const totals = [...needed].map(([name, quantity]) => ({ name, needed: quantity, free: float.get(name) ?? 0 }));
  return { event, truck, rows, totals: totals.sort((a, b) => a.name.localeCompare(b.name)) };
}
