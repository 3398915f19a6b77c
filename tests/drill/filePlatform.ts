import type { Card, Sender } from "../../bot/chat/types.ts";
import { appendLine, readLines } from "./durableLines.ts";

export type PlatformLine =
  | { readonly kind: "post"; readonly channel: string; readonly ref: string; readonly nonce: string; readonly card: Card }
  | { readonly kind: "edit"; readonly channel: string; readonly ref: string; readonly card: Card };

/**
 * A chat platform that is one file, only ever added to. It takes the same post as often as it is sent, so that whatever
 * leaves twice stands there twice. A blind one shows no history, for the counter-check.
 */
export function filePlatform(path: string, isBlind: boolean): Sender {
  const add = (line: PlatformLine): void => appendLine(path, line);
  return {
    send: async (channel, card, { ref, nonce }) => {
      add({ kind: "post", channel, ref, nonce, card });
      return { kind: "sent", message: ref };
    },
    edit: async (channel, message, card) => {
      add({ kind: "edit", channel, ref: message, card });
      return { kind: "sent", message };
    },
    find: async (channel, ref) => {
      const seen = isBlind ? [] : readLines<PlatformLine>(path);
      return seen.some((line) => line.kind === "post" && line.channel === channel && line.ref === ref) ? ref : null;
    },
  };
}
