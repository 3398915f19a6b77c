import type { Week } from "../week.ts";
import type { FaultList } from "./faultList.ts";
import { namesIn, requireUnique } from "./known.ts";
import type { WeekTables } from "./weekTables.ts";

/** The players with what their bins are filled by; a glove is worn on the other hand than the one a player plays by. */
export function playersOf({ players, goods }: WeekTables, faults: FaultList): Pick<Week, "players" | "goods"> {
  const goodsNames = namesIn(goods, "name");
  requireUnique(faults, goods.rows, ["name"]);
  requireUnique(faults, players.rows, ["handle"]);
  requireUnique(faults, players.rows, ["name"]);
  requireUnique(
    faults,
    players.rows.filter(({ value }) => value.restricted_code !== null),
    ["restricted_code"],
  );
  for (const row of players.rows) {
    const hat = `hat ${row.value.hat_size}`;
    const glove = `glove ${row.value.glove_size} ${row.value.hand === "right" ? "left" : "right"}`;
    if (!goodsNames.has(hat)) faults.add(row, "hat_size", `a size of which ${goods.file} has "${hat}"`);
    if (!goodsNames.has(glove)) faults.add(row, "glove_size", `a size of which ${goods.file} has "${glove}"`);
  }
  return {
    goods: goods.rows.map(({ value }) => value),
    players: players.rows.map(({ value: { restricted_code, hat_size, glove_size, ...player } }) => ({
      ...player,
      restrictedCode: restricted_code,
      hatSize: hat_size,
      gloveSize: glove_size,
    })),
  };
}
