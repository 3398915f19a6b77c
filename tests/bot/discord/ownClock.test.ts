import { describe, expect, it } from "vitest";
import type { Card } from "../../../bot/chat/types.ts";
import { drawCard } from "../../../bot/discord/drawCard.ts";
import { card } from "../rehearsal/cards.ts";

const AT = Date.UTC(2027, 4, 3, 9, 26);
const drawn = (data: Card["data"]): string => drawCard(card("57", { data }), "", () => null).embeds[0].description ?? "";

describe("withOwnClock", () => {
  it("shows an open order's times as the platform's timestamps, which each reader sees in their own zone", () => {
    const text = drawn({ state: "confirmed", likelyAt: AT, promiseAt: AT + 180_000, playableAt: null, byAt: null });
    expect(text).toContain(`-# **Your clock** in hand <t:${AT / 1000}:t>, promise <t:${AT / 1000 + 180}:t>`);
  });

  it("shows none for an order that is closed, has no times, or is no order", () => {
    expect(drawn({ state: "closed", likelyAt: AT })).not.toContain("<t:");
    expect(drawn({ state: "draft", likelyAt: null, promiseAt: null, byAt: null })).not.toContain("<t:");
    expect(drawn({ likelyAt: AT })).not.toContain("<t:");
  });
});
