import { appendFileSync, existsSync, readFileSync } from "node:fs";
import type { Sender } from "../../../bot/chat/types.ts";
import { runOutboxOnce } from "../../../bot/outbox/outboxLoop.ts";
import { instant } from "../../../core/kinds.ts";
import { openDatabase } from "../../../db/open.ts";
import { enqueuePost } from "../../../db/repositories/outbox.ts";
import { write } from "../../../db/write.ts";
import { MONDAY, migrationsFolder } from "../../db/migrationsFolder.ts";
import { cardOf } from "./cardOf.ts";

/** A process of its own: plans three posts, sends them to a file, and kills itself the given time it gets to a point. */
const [path = "", channelFile = "", point = "never", times = "1"] = process.argv.slice(2);

const lines = () => (existsSync(channelFile) ? readFileSync(channelFile, "utf8").split("\n").filter(Boolean) : []);
const sender: Sender = {
  send: async (_channel, _card, { ref }) => {
    appendFileSync(channelFile, `${ref}\n`);
    return { kind: "sent", message: ref };
  },
  edit: async () => ({ kind: "gone", reason: "not edited here" }),
  find: async (_channel, ref) => (lines().includes(ref) ? ref : null),
};

const { db, close } = await openDatabase({ path, create: true, now: MONDAY, migrationsFolder });
write(db, (tx) => {
  for (const name of ["one", "two", "three"]) {
    enqueuePost(tx, { channel: "orders", dedupeKey: name, nonce: name, ref: name, card: cardOf(name), at: MONDAY });
  }
});
let reached = 0;
await runOutboxOnce(
  {
    db,
    sender,
    random: () => 0,
    newMark: () => ({ nonce: "unused", ref: "unused" }),
    onDead: () => undefined,
    crash: (where) => {
      reached += where === point ? 1 : 0;
      if (where === point && reached === Number(times)) {
        process.kill(process.pid, "SIGKILL");
      }
    },
  },
  () => instant(MONDAY + 60_000),
);
close();
