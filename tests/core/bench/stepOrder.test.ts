import { describe, expect, it } from "vitest";
import { predecessorPlaces, workableOrder } from "../../../core/bench/stepOrder.ts";
import { DomainError } from "../../../core/errors.ts";

describe("predecessorPlaces", () => {
  it("waits for every repeat of a kind and for none that the job does not have", () => {
    const steps = [
      { kind: "measure", after: [] },
      { kind: "measure", after: ["grip"] },
      { kind: "sign", after: ["measure"] },
    ] as const;
    expect(predecessorPlaces(steps)).toEqual([[], [], [0, 1]]);
  });
});

describe("workableOrder", () => {
  it("puts each step after all it waits for, whatever the order of the rows", () => {
    const steps = [
      { kind: "sign", after: ["measure"] },
      { kind: "measure", after: ["cut"] },
      { kind: "cut", after: [] },
    ] as const;
    expect(workableOrder(steps)).toEqual([2, 1, 0]);
  });

  it("refuses steps that wait for each other, naming them", () => {
    const steps = [
      { kind: "cut", after: ["grip"] },
      { kind: "grip", after: ["cut"] },
      { kind: "sign", after: [] },
    ] as const;
    expect(() => workableOrder(steps)).toThrow(new DomainError("route-has-a-cycle", { steps: ["cut", "grip"] }));
  });
});
