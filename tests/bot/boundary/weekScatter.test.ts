import { describe, expect, it } from "vitest";
import { groupBy } from "../../../bot/boundary/week/known.ts";
import type { Week } from "../../../bot/boundary/week.ts";
import { demoWeek } from "./weekCopy.ts";

const { heads, headModels } = demoWeek();
type Head = Week["heads"][number];

const ofModel = (...models: readonly string[]) => heads.filter(({ model }) => models.includes(model));
const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;

/** Standard deviation around the mean of each group, pooled. */
function spreadWithin(all: readonly Head[], group: (head: Head) => string, value: (head: Head) => number): number {
  const groups = [...groupBy(all, group).values()].filter(({ length }) => length > 1);
  const squares = groups.flatMap((members) => members.map((head) => (value(head) - mean(members.map(value))) ** 2));
  return Math.sqrt(squares.reduce((sum, square) => sum + square, 0) / (squares.length - groups.length));
}

const batch = ({ model, hand, stampedLoftDeg }: Head) => `${model} ${hand} ${stampedLoftDeg}`;
const drivers = ofModel("Cairn");

/**
 * How real heads scatter around their stamps: common practice, no source. A standard deviation of n values is known to
 * about 1/√(2n): 5 % of the drivers', so that the bounds are four of those wide.
 */
describe("the scatter of the demo week's heads", () => {
  it("has drivers enough to tell", () => {
    expect(drivers.length).toBeGreaterThan(200);
  });

  it("puts a driver's soled loft 0.2° above its stamp, with a standard deviation of 0.35°", () => {
    const offsets = drivers.map((head) => head.soledLoftDeg - head.stampedLoftDeg);
    expect(Math.abs(mean(offsets) - 0.2)).toBeLessThan(0.1);
    expect(Math.abs(spreadWithin(drivers, batch, (head) => head.soledLoftDeg) - 0.35)).toBeLessThan(0.07);
  });

  it("leaves a driver's face 0.5° open, with a standard deviation of 0.4°", () => {
    expect(Math.abs(mean(drivers.map((head) => head.soledFaceDeg)) - 0.5)).toBeLessThan(0.12);
    expect(Math.abs(spreadWithin(drivers, batch, (head) => head.soledFaceDeg) - 0.4)).toBeLessThan(0.08);
  });

  it("spreads a driver's design lie by 0.4° about 58°, and about 56° in the left hand", () => {
    const lies = (hand: Head["hand"]) => drivers.filter((head) => head.hand === hand).map((head) => head.designLieDeg);
    expect(Math.abs(mean(lies("right")) - 58)).toBeLessThan(0.12);
    expect(Math.abs(mean(lies("left")) - 56)).toBeLessThan(0.25);
    expect(Math.abs(spreadWithin(drivers, batch, (head) => head.designLieDeg) - 0.4)).toBeLessThan(0.08);
  });

  it("spreads head mass by 1 g within a model and stamp", () => {
    const metal = heads.filter(({ model }) => headModels.some(({ name, family }) => name === model && family !== "putter"));
    expect(Math.abs(spreadWithin(drivers, batch, (head) => head.massG) - 1)).toBeLessThan(0.2);
    expect(Math.abs(spreadWithin(metal, batch, (head) => head.massG) - 1)).toBeLessThan(0.12);
  });

  it("makes irons heavier by 7 g a club, as published for half-inch steps", () => {
    const irons = ofModel("Scree");
    const masses = [24, 27, 31, 35, 39, 43].map((stamp) => mean(irons.filter((head) => head.stampedLoftDeg === stamp).map((head) => head.massG)));
    for (const [at, mass] of masses.slice(1).entries()) expect(Math.abs(mass - (masses[at] ?? 0) - 7)).toBeLessThan(1);
  });

  it("turns bounce with loft, degree by degree, in wedges of one model and stamp", () => {
    const wedges = heads.filter(({ bounceDeg }) => bounceDeg !== null);
    expect(spreadWithin(wedges, batch, (head) => (head.bounceDeg ?? 0) - head.soledLoftDeg)).toBeLessThan(0.3);
  });

  it("is no regular grid: hardly two drivers measure alike", () => {
    const seen = new Set(drivers.map(({ soledLoftDeg, soledFaceDeg, designLieDeg }) => `${soledLoftDeg} ${soledFaceDeg} ${designLieDeg}`));
    expect(seen.size).toBeGreaterThan(drivers.length * 0.98);
  });
});
