import { metaValue, setMeta } from "../../db/repositories/meta.ts";
import { type Db, write } from "../../db/write.ts";

const KEY = "discord.guild";

/** Binds a database to the first guild it serves; true for that guild ever after. */
export function bindGuild(db: Db, guildId: string): boolean {
  return write(db, (tx) => {
    const bound = metaValue(tx, KEY);
    if (bound === null) {
      setMeta(tx, KEY, guildId);
    }
    return bound === null || bound === guildId;
  });
}
