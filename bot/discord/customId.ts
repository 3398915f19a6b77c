import type { Action } from "../chat/types.ts";

const MAX_LENGTH = 100;

const escaped = (text: string): string => text.replaceAll("%", "%25").replaceAll("|", "%7C");
const unescaped = (text: string): string => text.replaceAll("%7C", "|").replaceAll("%25", "%");

/**
 * Writes an action as `command|subject|version|argument`, so that it survives a restart in the message itself.
 *
 * @returns null when it is longer than the platform takes
 */
export function encodeCustomId({ command, subject, version, argument }: Action): string | null {
  const parts = [command, subject, String(version), ...(argument === undefined ? [] : [argument])];
  const id = parts.map(escaped).join("|");
  return id.length <= MAX_LENGTH ? id : null;
}

/** Reads an action back; null when it was never one of ours. */
export function decodeCustomId(id: string): Action | null {
  const [command = "", subject = "", written = "", argument, ...more] = id.split("|").map(unescaped);
  const isWhole = /^-?\d{1,15}$/.test(written);
  if (id.length > MAX_LENGTH || command === "" || !isWhole || more.length > 0) {
    return null;
  }
  return { command, subject, version: Number(written), ...(argument === undefined ? {} : { argument }) };
}
