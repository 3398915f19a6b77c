import { DiscordAPIError, HTTPError, RateLimitError } from "discord.js";
import type { Sent } from "../chat/types.ts";

const UNKNOWN_CHANNEL = 10003;
const UNKNOWN_MESSAGE = 10008;
const TOO_MANY_OLD_EDITS = 30046;

/** What an error of the platform means for a post: try later, gone, refused, or nobody may send any more. */
export function sentOf(error: unknown): Exclude<Sent, { kind: "sent" }> {
  if (error instanceof RateLimitError) {
    return { kind: "later", afterMs: error.retryAfter };
  }
  if (error instanceof DiscordAPIError) {
    return sentOfStatus(error.status, error.code, error.message);
  }
  return error instanceof HTTPError ? sentOfStatus(error.status, 0, error.message) : { kind: "later", afterMs: null };
}

function sentOfStatus(status: number, code: number | string, reason: string): Exclude<Sent, { kind: "sent" }> {
  if (status === 401) {
    return { kind: "stop", reason };
  }
  if (code === UNKNOWN_MESSAGE || code === UNKNOWN_CHANNEL) {
    return { kind: "gone", reason };
  }
  if (code === TOO_MANY_OLD_EDITS || status === 408 || status === 429 || status >= 500) {
    return { kind: "later", afterMs: null };
  }
  return status >= 400 ? { kind: "refused", reason } : { kind: "later", afterMs: null };
}
