import { spawnSync } from "node:child_process";

const rooms = ["quantity", "club", "head", "rules"] as const;

/**
 * Mutates the calculation core room by room, each against the tests of its own room, with the default mutators, and prints
 * the score and every survivor. `npm run mutate -- head` does one room.
 */
const asked = process.argv.slice(2);
const unknown = asked.filter((name) => !rooms.some((room) => room === name));
if (unknown.length > 0) {
  console.error(`no room ${unknown.join(", ")}: ${rooms.join(", ")} would do`);
  process.exit(1);
}
const exitCodes = rooms
  .filter((room) => asked.length === 0 || asked.includes(room))
  .map((room) => {
    console.log(`core/${room}`);
    const { status } = spawnSync("npx", ["stryker", "run", ".stryker.config.json", "--mutate", `core/${room}/**/*.ts`], {
      stdio: "inherit",
      env: { ...process.env, MUTATED_ROOM: room },
    });
    return status ?? 1;
  });
process.exitCode = Math.max(...exitCodes);
