import type { PostMark } from "../../db/repositories/outbox.ts";

/** Without letters and digits that are taken for one another. */
const SHOWN = "23456789abcdefghjkmnpqrstuvwxyz";
const REF_LENGTH = 7;

/**
 * Marks for a new post: the nonce that the platform knows it by, the short reference that people and the outbox read.
 *
 * @param randomBytes - so many random bytes
 */
export function newMark(randomBytes: (count: number) => Uint8Array): PostMark {
  const nonce = [...randomBytes(12)].map((byte) => byte.toString(16).padStart(2, "0")).join("");
  const ref = [...randomBytes(REF_LENGTH)].map((byte) => SHOWN[byte % SHOWN.length]).join("");
  return { nonce, ref };
}
