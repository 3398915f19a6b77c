import { expect, it } from "vitest";
import { soak } from "./soak.ts";

it("loses, repeats and leaves unanswered nothing in two weeks of orders through a chat that fails", async () => {
  const { faults, orders, confirmed, built, interactions, lives, met } = await soak({ orders: 48, weeks: 2, burst: 8, seed: 3 });
  expect(faults).toEqual([]);
  expect(orders).toBeGreaterThan(40);
  expect(confirmed).toBeGreaterThan(0);
  expect(built).toBeGreaterThan(0);
  expect(interactions).toBeGreaterThan(orders);
  expect(lives).toBeGreaterThan(1);
  expect(met.size).toBeGreaterThan(3);
});
