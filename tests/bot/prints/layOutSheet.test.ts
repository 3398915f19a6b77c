import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { sheetDocument } from "../../../bot/prints/drawSheet.ts";
import { layOutSheet } from "../../../bot/prints/layOutSheet.ts";
import type { Placed } from "../../../bot/prints/pen.ts";
import type { SheetPrint } from "../../../bot/prints/sheetPrint.ts";
import { type Typeface, typefaceIn } from "../../../bot/prints/typeface.ts";
import { anySheet } from "./anySheet.ts";
import { driverBuild, leftWedge, wholeBag } from "./someSheets.ts";

const face = typefaceIn(sheetDocument(driverBuild));
/** A font of two widths, measured at once. */
const quickFace: Typeface = {
  widthOf: (text, sizePt) => [...text].reduce((sum, letter) => sum + (letter === "W" ? 0.9 : 0.5) * sizePt, 0),
  printable: (text) => text.replace(/\s+/g, " ").trim(),
};
const placedOf = (print: SheetPrint): readonly Placed[] => layOutSheet(print, face);
type PlacedText = Placed & { readonly kind: "text" };
const textsOf = (placed: readonly Placed[]): readonly PlacedText[] => placed.filter((one): one is PlacedText => one.kind === "text");
const sizeOf = (print: SheetPrint, text: string): number => textsOf(placedOf(print)).find((one) => one.text === text)?.sizePt ?? 0;
const driver = driverBuild.clubs[0];
if (driver === undefined) throw new Error("the driver's sheet has no club");

/** A4 and US Letter are 595.28 × 841.89 and 612 × 792 points; a desk printer leaves about a quarter of an inch blank. */
const A4 = { width: 595.28, height: 841.89 };
const LETTER = { width: 612, height: 792 };
const BLANK = 18;
const ROUNDING = 0.02;

function outside({ x, y, width, height }: Placed, paper: typeof A4, topOfPage: number): boolean {
  return x < BLANK || x + width > Math.min(A4.width, paper.width) - BLANK || y < topOfPage + BLANK || y + height > topOfPage + paper.height - BLANK;
}

const overlap = (a: Placed, b: Placed): boolean =>
  a.x + a.width > b.x + ROUNDING && b.x + b.width > a.x + ROUNDING && a.y + a.height > b.y + ROUNDING && b.y + b.height > a.y + ROUNDING;
const within = (inner: Placed, outer: Placed): boolean =>
  inner.x >= outer.x &&
  inner.x + inner.width <= outer.x + outer.width + ROUNDING &&
  inner.y >= outer.y &&
  inner.y + inner.height <= outer.y + outer.height + ROUNDING;

/** Pairs that lie on one another, a text in its box excepted. */
function clashes(placed: readonly Placed[]): readonly string[] {
  return placed.flatMap((one, index) =>
    placed
      .slice(index + 1)
      .filter((other) => overlap(one, other) && !(one.kind === "box" ? within(other, one) : other.kind === "box" && within(one, other)))
      .map((other) => `${JSON.stringify(one)} on ${JSON.stringify(other)}`),
  );
}

describe("layOutSheet", () => {
  it("keeps to what A4 and US Letter can print, wherever on the Letter page the A4 page is laid, and lays nothing on anything else", () => {
    fc.assert(
      fc.property(anySheet, (print) => {
        const placed = layOutSheet(print, quickFace);
        expect(placed.filter((one) => outside(one, A4, 0))).toEqual([]);
        expect(placed.filter((one) => outside(one, LETTER, 0) || outside(one, LETTER, (A4.height - LETTER.height) / 2))).toEqual([]);
        expect(clashes(placed)).toEqual([]);
      }),
      { numRuns: 25 },
    );
  });

  it.each([
    ["a driver's build", driverBuild],
    ["fourteen clubs", wholeBag],
    ["a left-hander's wedge", leftWedge],
  ])("sets %s without a clash", (_name, print) => {
    expect(clashes(placedOf(print))).toEqual([]);
  });

  it("sets the setting first and largest, and what is cut and weighed at 18 points or more", () => {
    const texts = textsOf(placedOf(driverBuild));
    const largest = texts.reduce((most, one) => Math.max(most, one.sizePt), 0);
    const setting = texts.find(({ text }) => text === driver.setting?.value);
    expect(setting?.sizePt).toBe(largest);
    for (const { value } of driver.lead) {
      const lead = texts.find(({ text }) => text === value);
      expect(lead?.sizePt).toBeGreaterThanOrEqual(18);
      expect(lead?.y).toBeGreaterThan(setting?.y ?? Number.POSITIVE_INFINITY);
    }
  });

  it("keeps the lead at 18 points or more however much else is written", () => {
    const long = { label: "Note", value: "dig ".repeat(200) };
    const crowded = {
      ...driverBuild,
      notes: Array.from({ length: 20 }, () => long),
      clubs: [{ ...driver, parts: Array.from({ length: 12 }, () => long) }],
    };
    for (const { value } of driver.lead) expect(sizeOf(crowded, value)).toBeGreaterThanOrEqual(18);
    expect(sizeOf(crowded, "RIGHT-HANDED")).toBeGreaterThanOrEqual(13);
  });

  it("says whose hand it is, when it is due, each caution below its step, and the advice at the foot", () => {
    const texts = textsOf(placedOf(driverBuild));
    const yOf = (start: string): number => texts.find(({ text }) => text.startsWith(start))?.y ?? Number.NaN;
    expect(textsOf(placedOf(leftWedge)).map(({ text }) => text)).toContain("LEFT-HANDED");
    expect(texts.map(({ text }) => text)).toEqual(expect.arrayContaining(["by 14:30", "Bond", "6 min", driverBuild.advice]));
    expect(yOf("! epoxy")).toBeGreaterThan(yOf("Bond"));
    expect(yOf("! epoxy")).toBeLessThan(yOf("Glue sets"));
    expect(yOf(driverBuild.advice)).toBe(Math.max(...texts.map(({ y }) => y)));
  });

  it("gives each step of each club a box to tick, crossed when it is done, and each value an empty box, filled when it was read", () => {
    const boxes = placedOf(wholeBag).flatMap((one) => (one.kind === "box" ? [one] : []));
    const ticks = wholeBag.steps.flatMap(({ ticks: own }) => own);
    expect(boxes.filter(({ crossed }) => crossed)).toHaveLength(ticks.filter((tick) => tick === "done").length);
    expect(boxes).toHaveLength(ticks.filter((tick) => tick !== "none").length + wholeBag.clubs.flatMap(({ targets }) => targets).length);
    const placed = placedOf(driverBuild);
    const read = textsOf(placed).find(({ text }) => text === "9.2");
    expect(read !== undefined && placed.some((one) => one.kind === "box" && within(read, one))).toBe(true);
  });

  it("puts shortages before the clubs, and a row for each of fourteen", () => {
    const texts = textsOf(placedOf(wholeBag));
    const short = texts.findIndex(({ text }) => text.startsWith("5w: no head"));
    expect(short).toBeGreaterThan(0);
    expect(texts.findIndex(({ text }) => text === "0417 Cairn drawer D-1")).toBeGreaterThan(short);
    expect(texts.filter(({ text }) => /^\d\d 3\/8 in \(\d+ mm\)$/.test(text))).toHaveLength(14);
  });

  it("ends in an ellipsis what finds no room, and counts the entries left out", () => {
    const notes = Array.from({ length: 200 }, (_, index) => ({ label: `Note ${index}`, value: "word ".repeat(100) }));
    const texts = textsOf(placedOf({ ...driverBuild, notes })).map(({ text }) => text);
    const set = texts.filter((text) => text.startsWith("Note ")).length;
    expect(set).toBeGreaterThan(2);
    expect(texts.filter((text) => text.endsWith("…"))).toHaveLength(set);
    expect(texts).toContain(`… +${200 - set}`);
  });

  it("sets a page smaller before it shortens what a club is built from", () => {
    const head = "0417 Cairn, drawer D-1, bent 1.0 weak, 0.5 flat, the one with the scratch at the toe";
    const clubs = wholeBag.clubs.slice(0, 8).map((club) => ({ ...club, row: club.row.map((cell, index) => (index === 4 ? head : cell)) }));
    const steps = wholeBag.steps.map((step) => ({ ...step, ticks: step.ticks.slice(0, clubs.length) }));
    const texts = textsOf(placedOf({ ...wholeBag, clubs, steps })).map(({ text }) => text);
    expect(texts.filter((text) => text.endsWith("the toe") || text === "toe")).toHaveLength(clubs.length);
  });

  it("prints letters the font has not as question marks, an emoji as one, and goes on", () => {
    const print = { ...driverBuild, notes: [{ label: "", value: "Żółć “fat” 👩‍👩‍👧 on 3 日本, 9¾°" }] };
    expect(textsOf(placedOf(print)).map(({ text }) => text)).toContain("Żółć “fat” ? on 3 ??, 9¾°");
  });
});
