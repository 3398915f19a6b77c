import { DiscordAPIError, HTTPError, RateLimitError } from "discord.js";
import { describe, expect, it } from "vitest";
import { sentOf } from "../../../bot/discord/sentOf.ts";

const refusal = (status: number, code: number): unknown =>
  new DiscordAPIError({ code, message: "as told" }, code, status, "POST", "http://127.0.0.1", { body: {}, files: undefined });

// Statuses and codes: the platform's public documentation of its errors.
describe("sentOf", () => {
  it.each([
    ["unknown message", refusal(404, 10008), "gone"],
    ["unknown channel", refusal(404, 10003), "gone"],
    ["a body not accepted", refusal(400, 50035), "refused"],
    ["missing access", refusal(403, 50001), "refused"],
    ["another thing not found", refusal(404, 0), "refused"],
    ["a token not accepted", refusal(401, 0), "stop"],
    ["too many edits of an old message", refusal(400, 30046), "later"],
    ["too many requests", refusal(429, 0), "later"],
    ["a fault of the platform", refusal(500, 0), "later"],
    ["a fault on the way", new HTTPError(502, "Bad Gateway", "POST", "http://127.0.0.1", { body: {}, files: undefined }), "later"],
    ["a reset connection", Object.assign(new Error("reset"), { code: "ECONNRESET" }), "later"],
    ["a hung request", new DOMException("aborted", "AbortError"), "later"],
    ["something that is no error", "odd", "later"],
  ])("reads %s as told", (_what, error, kind) => {
    expect(sentOf(error).kind).toBe(kind);
  });

  it("waits as long as the platform asks", () => {
    const limit = {
      timeToReset: 0,
      limit: 1,
      method: "POST",
      hash: "",
      url: "",
      route: "",
      majorParameter: "",
      global: false,
      retryAfter: 1234,
      sublimitTimeout: 0,
      scope: "user",
    };
    expect(sentOf(new RateLimitError(limit as ConstructorParameters<typeof RateLimitError>[0]))).toEqual({ kind: "later", afterMs: 1234 });
  });
});
