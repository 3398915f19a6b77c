import { metaValue, setMeta } from "../../db/repositories/meta.ts";
import { type Db, type Reader, type Tx, write } from "../../db/write.ts";

const KEY = "discord.guild";

/** The guild a database belongs to; null before its first start in the chat. */
export const boundGuild = (reader: Reader): string | null => metaValue(reader, KEY);

/**
 * Binds a database to the first guild it serves; true for that guild ever after.
 *
 * @param first - what belongs to the binding, in its transaction
 */
export function bindGuild(db: Db, guildId: string, first: (tx: Tx) => void): boolean {
  return write(db, (tx) => {
    const bound = boundGuild(tx);
    if (bound === null) {
      setMeta(tx, KEY, guildId);
      first(tx);
    }
    return bound === null || bound === guildId;
  });
}
