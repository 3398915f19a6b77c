import { describe, expect, it } from "vitest";
import { DomainError } from "../../../core/errors.ts";
import { finiteNumbers } from "../../../core/quantity/finiteNumbers.ts";
import { inRange } from "../../../core/quantity/inRange.ts";
import { listOf } from "../../../core/quantity/listOf.ts";
import { oneOf } from "../../../core/quantity/oneOf.ts";
import { wholeNumber } from "../../../core/quantity/wholeNumber.ts";

/** What the call throws, as code and facts. */
function refusal(call: () => unknown): unknown {
  try {
    call();
  } catch (error) {
    return error instanceof DomainError ? { code: error.code, facts: error.facts } : error;
  }
  return "accepted";
}

describe("inRange", () => {
  const limits = { field: "massG", unit: "g", min: 1, max: 2 };

  it.each([1, 1.5, 2])("takes %d between 1 and 2", (value) => {
    expect(inRange(value, limits)).toBe(value);
  });

  it.each([0.999, 2.001, Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])("refuses %d with its name, unit and bounds", (value) => {
    expect(refusal(() => inRange(value, limits))).toEqual({ code: "quantity-out-of-range", facts: { ...limits, value } });
  });

  it("has no bound that was not given, and takes no infinity even so", () => {
    expect(inRange(-1e300, { field: "x", unit: "", max: 0 })).toBe(-1e300);
    expect(inRange(1e300, { field: "x", unit: "", min: 0 })).toBe(1e300);
    expect(refusal(() => inRange(Number.POSITIVE_INFINITY, { field: "x", unit: "" }))).toMatchObject({ code: "quantity-out-of-range" });
  });
});

describe("wholeNumber", () => {
  const limits = { field: "count", min: 0, max: 3 };

  it.each([0, 3])("takes %d", (value) => {
    expect(wholeNumber(value, limits)).toBe(value);
  });

  it.each([-1, 4, 1.5, Number.NaN])("refuses %d", (value) => {
    expect(refusal(() => wholeNumber(value, limits))).toEqual({ code: "quantity-out-of-range", facts: { ...limits, unit: "", value } });
  });
});

describe("listOf", () => {
  const limits = { field: "clubs", min: 1, max: 2 };

  it.each([[["a"]], [["a", "b"]]])("takes %j", (list) => {
    expect(listOf(list, limits)).toBe(list);
  });

  it.each([[[]], [["a", "b", "c"]]])("refuses %j with its count", (list: readonly string[]) => {
    expect(refusal(() => listOf(list, limits))).toEqual({ code: "list-of-wrong-size", facts: { ...limits, count: list.length } });
  });
});

describe("oneOf", () => {
  it("takes a known word and refuses another with what it takes", () => {
    expect(oneOf("left", ["left", "right"], "hand")).toBe("left");
    expect(refusal(() => oneOf("up" as "left", ["left", "right"], "hand"))).toEqual({
      code: "quantity-unreadable",
      facts: { field: "hand", written: "up", accepted: "left, right" },
    });
  });
});

describe("finiteNumbers", () => {
  const record = { name: "head", massG: 200, none: null, marks: [{ clockDeg: 90 }], weigh: () => Number.NaN };

  it("gives back a record whose numbers are all finite, whatever else is in it", () => {
    expect(finiteNumbers(record, "head")).toBe(record);
    expect(finiteNumbers(null, "nothing")).toBeNull();
    expect(finiteNumbers("NaN", "text")).toBe("NaN");
  });

  it.each([
    [{ ...record, massG: Number.NaN }, "head.massG"],
    [{ ...record, marks: [{ clockDeg: Number.POSITIVE_INFINITY }] }, "head.marks.0.clockDeg"],
    [Number.NaN, "head"],
  ])("names the path to the first number that is none", (wrong, field) => {
    expect(refusal(() => finiteNumbers(wrong, "head"))).toMatchObject({ code: "quantity-out-of-range", facts: { field, unit: "" } });
  });
});
