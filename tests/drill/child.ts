import { parseArgs } from "node:util";
import { playDrill } from "./playDrill.ts";

/** A process of its own: plays the script to its end, or kills itself the given time it gets to the given point. */
const { values } = parseArgs({
  options: { folder: { type: "string" }, point: { type: "string" }, times: { type: "string" }, blind: { type: "boolean", default: false } },
});
const { folder = "", point = null, times = "1", blind } = values;
let reached = 0;

function crash(where: string): void {
  reached += where === point ? 1 : 0;
  if (where === point && reached === Number(times)) {
    process.kill(process.pid, "SIGKILL");
  }
}

await playDrill(folder, blind, crash, () => process.stdout.write("begun\n"));
