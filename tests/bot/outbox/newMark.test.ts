import { randomBytes } from "node:crypto";
import { describe, expect, it } from "vitest";
import { newMark } from "../../../bot/outbox/newMark.ts";

describe("newMark", () => {
  // The platform takes a nonce of at most 25 characters.
  it("makes a nonce that the platform takes, and a reference without look-alikes", () => {
    const { nonce, ref } = newMark((count) => randomBytes(count));
    expect(nonce).toMatch(/^[0-9a-f]{24}$/);
    expect(ref).toMatch(/^[2-9a-hjkmnp-z]{7}$/);
  });

  it("tells a thousand posts apart", () => {
    const marks = Array.from({ length: 1000 }, () => newMark((count) => randomBytes(count)));
    expect(new Set(marks.map(({ nonce }) => nonce)).size).toBe(1000);
    expect(new Set(marks.map(({ ref }) => ref)).size).toBe(1000);
  });
});
