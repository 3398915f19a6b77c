import { instant } from "../../core/kinds.ts";
import { DatabaseRefusal } from "../../db/databaseRefusal.ts";
import { openDatabase } from "../../db/open.ts";
import { migrationsFolder } from "./migrationsFolder.ts";

/** A second process: opens the database named, says how it went, and holds it until it is ended. */
const asUser = process.argv[3];
if (asUser !== undefined) {
  process.setgid?.(Number(asUser));
  process.setuid?.(Number(asUser));
}
try {
  await openDatabase({ path: process.argv[2] ?? "", create: false, now: instant(0), migrationsFolder });
  process.stdout.write("open\n");
  setInterval(() => undefined, 1000);
} catch (error) {
  process.stdout.write(error instanceof DatabaseRefusal ? `${error.code}\n` : `${String(error)}\n`);
}
