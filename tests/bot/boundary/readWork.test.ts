import { describe, expect, it } from "vitest";
import { readMessage } from "../../../bot/boundary/readMessage.ts";
import { meaningOf } from "./meaningOf.ts";
import { chatter, dailyPosts, faults, hints, lines, orders, type Post, questions } from "./posts.ts";
import { bagOf, context } from "./testContext.ts";
import { asked, measured, setChanges, sets, stockQuestions, unanswered, work } from "./workPosts.ts";

const withBags = { ...context, bagOf };
const read = (text: string) => meaningOf(readMessage(text, withBags));

describe("readMessage: sets, bags and clubs that exist, by common practice, no source", () => {
  it.each(setChanges)("reads a set change: %s", (text, meaning) => expect(read(text)).toEqual(meaning));
  it.each(sets)("reads a set, a bag, several alike: %s", (text, meaning) => expect(read(text)).toEqual(meaning));
  it.each(work)("reads work on a club: %s", (text, meaning) => expect(read(text)).toEqual(meaning));
  it.each(asked)("asks: %s", (text, meaning) => expect(read(text)).toEqual(meaning));
  it.each(measured)("reads the technician's line: %s", (text, meaning) => expect(read(text)).toEqual(meaning));
  it.each(stockQuestions)("answers a question: %s", (text, meaning) => expect(read(text)).toEqual(meaning));
  it.each(unanswered)("is silent: %s", (text, meaning) => expect(read(text)).toEqual(meaning));
});

describe("readMessage", () => {
  const saysSet = /\birons\b|\bbag\b/;
  const before: readonly Post[] = [dailyPosts, questions, lines, orders, faults, hints, chatter].flat().filter(([text]) => !saysSet.test(text));

  it.each(before)("reads the same whether a bag is on record or not: %s", (text) =>
    expect(read(text)).toEqual(meaningOf(readMessage(text, context))),
  );

  const mendable = asked.flatMap(([text]) => {
    const reading = readMessage(text, withBags);
    const problems = reading.kind === "problems" ? reading.problems : [];
    return problems.flatMap(({ place, options }) => options.map(({ replacement }) => ({ text, place, replacement, count: problems.length })));
  });

  it.each(mendable)("asks less once $replacement is chosen in: $text", ({ text, place, replacement, count }) => {
    const after = readMessage(text.slice(0, place.from) + replacement + text.slice(place.to), withBags);
    expect(["order", "problems"]).toContain(after.kind);
    expect(after.kind === "problems" ? after.problems.length : 0).toBeLessThan(count);
  });

  it("says that no bag is on record when a whole one is asked for", () => {
    expect(readMessage("build wexcombe bag", withBags)).toMatchObject({ problems: [{ accepted: "no bag on record; name the clubs" }] });
    expect(readMessage("check wexcombe", withBags)).toMatchObject({ problems: [{ accepted: "no bag on record; name the clubs" }] });
  });

  it("keeps what was seen and measured as it was written", () => {
    const reading = readMessage("measured 57 7i 34 1/2>35 logo up, stamp BO 27", context);
    const written = reading.kind === "measured" ? reading.values.map(({ asWritten }) => asWritten) : [];
    expect(written.toSorted()).toEqual(["34 1/2", "35", "BO 27", "up"]);
  });

  it("marks a value out of range at its own word whichever side of > it stands", () => {
    for (const [text, word] of [
      ["measured 57 7i 345>35 62.5>62", "345"],
      ["measured 57 7i 34.5>35 lie 620>62", "620"],
      ["measured 57 8i loft 38, 7i lie 62>620", "620"],
    ] as const) {
      const reading = readMessage(text, context);
      const places = reading.kind === "problems" ? reading.problems.map(({ place }) => text.slice(place.from, place.to)) : [];
      expect(places, text).toEqual([word]);
    }
  });
});
