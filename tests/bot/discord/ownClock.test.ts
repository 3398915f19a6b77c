import { describe, expect, it } from "vitest";
import type { Card } from "../../../bot/chat/types.ts";
import { drawCard } from "../../../bot/discord/drawCard.ts";
import { card } from "../rehearsal/cards.ts";

const AT = Date.UTC(2027, 4, 3, 9, 26);
const drawn = (data: Card["data"], kind = "order"): string => drawCard(card("57", { kind, data }), "", () => null).embeds[0].description ?? "";

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

  it("shows those of an order that slips, of each that does, and of one that is not posted yet", () => {
    const late = { orderNumber: 57, promiseAt: AT, promisedBeforeAt: AT - 60_000 };
    expect(drawn(late, "call.late")).toContain(`-# **Your clock** promise <t:${AT / 1000}:t>`);
    const several = drawn({ orders: [late, { ...late, orderNumber: 58, promiseAt: null }, { ...late, orderNumber: 59 }] }, "call.late");
    expect(several).toContain(`-# **Your clock** 57 promise <t:${AT / 1000}:t>, 59 promise <t:${AT / 1000}:t>`);
    expect(drawn({ likelyAt: null, promiseAt: AT, byAt: AT + 60_000 }, "ready")).toContain(
      `promise <t:${AT / 1000}:t>, wanted by <t:${AT / 1000 + 60}:t>`,
    );
  });
});
