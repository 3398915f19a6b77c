import { describe, expect, it } from "vitest";
import { orderWeight } from "../../../bot/operations/orderWeight.ts";
import { instant } from "../../../core/kinds.ts";

const due = instant(1);

describe("orderWeight", () => {
  it("ranks now before a time, and a time before none", () => {
    const [now, timed, whenever] = [
      orderWeight({ urgent: true, byAt: null }),
      orderWeight({ urgent: false, byAt: due }),
      orderWeight({ urgent: false, byAt: null }),
    ];
    expect(now).toBeGreaterThan(timed);
    expect(timed).toBeGreaterThan(whenever);
    expect(whenever).toBeGreaterThan(0);
  });

  it("is no more urgent for a time beside now", () => {
    expect(orderWeight({ urgent: true, byAt: due })).toBe(orderWeight({ urgent: true, byAt: null }));
  });
});
