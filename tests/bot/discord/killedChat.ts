import { joinRealChat } from "../../../bot/realChat.ts";
import { instant } from "../../../core/kinds.ts";
import { openDatabase } from "../../../db/open.ts";
import { migrationsFolder } from "../../db/migrationsFolder.ts";
import { databaseIn } from "../../drill/drillFolder.ts";
import { localClient, MONDAY_9 } from "../../support/platform/joinedWeek.ts";
import { demoWorld, settingsOf } from "../../support/platform/world.ts";

/** A process of its own: the bot in the chat of a local platform, which kills itself at the point its parent names. */
const [folder = "", api = "", sinceMs = ""] = process.argv.slice(2);
const now = () => instant(MONDAY_9 + Date.now() - Number(sinceMs));
const world = demoWorld();
let point: unknown = null;
process.on("message", (named) => {
  point = named;
  process.send?.("armed");
});

const { db, close } = await openDatabase({ path: databaseIn(folder), create: false, now: now(), migrationsFolder });
const running = joinRealChat({
  ...{ db, token: world.token, settings: settingsOf(world), seed: 5, now, client: localClient({ api }) },
  log: (error, doing) => process.stderr.write(`${doing}: ${String(error)}\n`),
  crash: (reached) => {
    if (reached === point) {
      process.kill(process.pid, "SIGKILL");
    }
  },
});
process.once("SIGTERM", async () => {
  await running.stop();
  close();
  process.exit(0);
});
await running.entered;
process.send?.("entered");
