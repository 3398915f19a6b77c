import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { ReadingContext } from "../../../bot/boundary/reading.ts";
import { readMessage } from "../../../bot/boundary/readMessage.ts";
import { instant } from "../../../core/kinds.ts";
import { meaningOf } from "./meaningOf.ts";
import { chatter, dailyPosts, faults, hints, lines, orders, questions } from "./posts.ts";
import { context } from "./testContext.ts";

const read = (text: string, changes: Partial<ReadingContext> = {}) => meaningOf(readMessage(text, { ...context, ...changes }));

describe("readMessage: meanings by common practice, no source", () => {
  it.each(dailyPosts)("reads a daily post: %s", (text, meaning) => expect(read(text)).toEqual(meaning));
  it.each(questions)("answers a question: %s", (text, meaning) => expect(read(text)).toEqual(meaning));
  it.each(lines)("reads a line about an order: %s", (text, meaning) => expect(read(text)).toEqual(meaning));
  it.each(orders)("reads an order: %s", (text, meaning) => expect(read(text)).toEqual(meaning));
  it.each(faults)("asks: %s", (text, meaning) => expect(read(text)).toEqual(meaning));
  it.each(hints)("hints: %s", (text, meaning) => expect(read(text)).toEqual(meaning));
  it.each(chatter)("is silent: %s", (text, meaning) => expect(read(text)).toEqual(meaning));
});

describe("readMessage", () => {
  it("marks each faulty word at its own place", () => {
    const text = "build toll driver like gamer loft 19.25 by 14:70";
    const reading = readMessage(text, context);
    const words = reading.kind === "problems" ? reading.problems.map(({ place }) => text.slice(place.from, place.to)) : [];
    expect(words).toEqual(["19.25", "14:70"]);
  });

  const mendable = [...dailyPosts, ...faults].flatMap(([text]) => {
    const reading = readMessage(text, context);
    const problems = reading.kind === "problems" ? reading.problems : [];
    return problems.flatMap(({ code, place, options }) => options.map(({ replacement }) => ({ text, code, place, replacement })));
  });

  it.each(mendable)("no longer asks $code once $replacement is chosen in: $text", ({ text, code, place, replacement }) => {
    const before = readMessage(text, context);
    const after = readMessage(text.slice(0, place.from) + replacement + text.slice(place.to), context);
    const count = (reading: typeof after): number => (reading.kind === "problems" ? reading.problems.length : 0);
    expect(["order", "problems", "revise"]).toContain(after.kind);
    expect(count(after), code).toBeLessThan(count(before));
  });

  it("keeps a value as it was written", () => {
    const reading = readMessage("build toll driver length 45 1/4 shaft dunlin 60x, swing D3, face half open", context);
    const clauses = reading.kind === "order" ? reading.request.clauses : {};
    const written = [clauses.lengthMm, clauses.shaft, clauses.swingWeightPoints, clauses.soledFaceDeg].map((wish) => wish?.asWritten);
    expect(written).toEqual(["45 1/4", "dunlin 60x", "D3", "half open"]);
  });

  it("ignores a leading number that is no open order here", () => {
    expect(read("57 make it d4", { isOpenOrder: () => false })).toEqual({ silence: true });
  });

  // New York is 4 hours behind UTC in May, Tokyo 9 ahead (IANA time zone database)
  it.each([
    ["America/New_York", Date.UTC(2027, 4, 5, 14, 0), "2:10", "2027-05-05T18:10"],
    ["America/New_York", Date.UTC(2027, 4, 5, 14, 0), "14:10", "2027-05-05T18:10"],
    ["Asia/Tokyo", Date.UTC(2027, 4, 5, 23, 0), "9:15", "2027-05-06T00:15"],
    ["Asia/Tokyo", Date.UTC(2027, 4, 5, 23, 0), "mon 7:00", "2027-05-09T22:00"],
    // 28 March 2027, clocks go forward at 01:00 UTC in Lisbon: 7:00 is 06:00 UTC
    ["Europe/Lisbon", Date.UTC(2027, 2, 27, 18, 0), "tomorrow 7:00", "2027-03-28T06:00"],
  ])("reads a time in %s", (zone, now, written, at) => {
    expect(read(`build toll driver like gamer by ${written}`, { zone, now: instant(now) })).toMatchObject({ by: at });
  });

  it("asks about a time that the clocks skip", () => {
    const changes = { zone: "Europe/Lisbon", now: instant(Date.UTC(2027, 2, 27, 18, 0)) };
    expect(read("build toll driver like gamer by tomorrow 01:30", changes)).toEqual({ asked: ["no-such-time | tomorrow 01:30"] });
  });

  it("reads a small change without a unit in the reader's own unit", () => {
    expect(read("build toll driver like gamer 6 shorter", { lengthUnit: "mm" })).toMatchObject({ clauses: { lengthMm: { by: -6 } } });
  });

  it("reads a player whose name is also a part by where it stands", () => {
    const players = [...context.players, { ...(context.players[0] ?? { id: 0 as never, aliases: [] }), name: "Heather Lind", aliases: [] }].slice(1);
    expect(readMessage("build heather driver like gamer grip heather mid", { ...context, players })).toMatchObject({
      kind: "order",
      request: { clauses: { grip: { value: "Heather Midsize" } } },
    });
  });

  it("refuses an order over 2,000 characters and stays silent on long chatter", () => {
    expect(readMessage(`build toll driver like gamer note ${"a".repeat(2000)}`, context)).toMatchObject({
      kind: "problems",
      problems: [{ code: "too-long" }],
    });
    expect(readMessage("lovely weather ".repeat(200), context)).toEqual({ kind: "silence" });
  });

  const clauses = [
    "loft 9.25",
    "face 0.5 open",
    "length 45 1/4",
    "shaft dunlin 60 x",
    "swing d3",
    "grip gorse std round",
    "by 14:30",
    "tip 1/2",
    "logo down",
  ];

  it("means the same whatever separates the clauses and in whatever order they stand", () => {
    const whole = read(`build oxtoby driver like gamer ${clauses.join(" ")}`);
    expect(whole).toMatchObject({ order: "build" });
    const separators = fc.array(fc.constantFrom(" ", ", ", "\n", "; ", ",", " / "), { minLength: clauses.length, maxLength: clauses.length });
    fc.assert(
      fc.property(fc.shuffledSubarray(clauses, { minLength: clauses.length }), separators, (shuffled, between) => {
        const text = shuffled.map((clause, index) => (between[index] ?? " ") + clause).join("");
        expect(read(`build oxtoby driver like gamer${text}`)).toEqual(whole);
      }),
      { seed: 7, numRuns: 100 },
    );
  });

  it("throws on no text at all", () => {
    const vocabulary = fc.constantFrom(
      ...'build toll bram driver 3w sw d3 45 1/4 9,25 loft by tee -20 like gamer 57 not up one half + - / " ° ½ , ; \n ? go note stamp __proto__ constructor out in bag irons all 14 clubs check repair bend grind measured > 7i 34.5 copy grip .9 freq have any under?'.split(
        " ",
      ),
    );
    const typed = fc.array(vocabulary, { maxLength: 40 }).map((words) => words.join(" "));
    fc.assert(
      fc.property(fc.oneof(fc.string({ unit: "binary", maxLength: 300 }), fc.string({ unit: "grapheme", maxLength: 300 }), typed), (text) => {
        const reading = readMessage(text, context);
        for (const { place } of reading.kind === "problems" ? reading.problems : [])
          expect(place.from >= 0 && place.to <= text.length && place.from <= place.to).toBe(true);
      }),
      { seed: 11, numRuns: 300 },
    );
  });

  const hostile = [
    "a",
    "1",
    "1/",
    "d3 ",
    "sw ",
    "9,",
    "build toll ",
    "note ",
    "one up ",
    "57 ",
    "½",
    "+ ",
    "by ",
    "like ",
    "dunlin ",
    "dunlim ",
    "oxtpby ",
    "4-pw ",
    "\n",
    "'",
  ].map((piece) => ["build toll driver", piece]);
  const openings = ["build toll", "repair toll", "bend toll 7i", "measured 57", ""];
  const hostileSets = ["irons ", "bag ", "out 4i in 7w ", "7i 34.5>35 ", "2nd driver "].flatMap((piece) =>
    openings.map((opening) => [opening, piece]),
  );

  it.each([...hostile, ...hostileSets])("visits characters and words in proportion to the length of %j with %j repeated", (opening, piece) => {
    const stepsOf = (length: number): number => {
      const steps = { count: 0 };
      readMessage(`${opening} ${piece.repeat(length)}`.slice(0, length), { ...context, steps });
      return steps.count;
    };
    const [quarter, whole] = [stepsOf(500), stepsOf(2000)];
    expect(whole).toBeLessThanOrEqual(quarter * 4.6 + 200);
  });
});
