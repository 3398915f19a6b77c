import { describe, expect, it } from "vitest";
import { readMessage } from "../../../bot/boundary/readMessage.ts";
import { recordPartAt } from "../../../bot/boundary/recordPartAt.ts";
import { wordsOf } from "../../../bot/boundary/wordsOf.ts";
import { context } from "./testContext.ts";

const codeWords = [
  { code: "lamplight", name: "Menhir" },
  { code: "Night Owl", name: "Dolmen" },
];
const heads = [...context.headModels, "Menhir", "Dolmen"];
const at = (text: string, names: readonly string[] = heads) =>
  recordPartAt(wordsOf(text).words, 0, names, { codeWords, byNumbers: false, mends: true });

describe("recordPartAt", () => {
  it.each([
    ["lamplight", "Menhir", 1],
    ["LAMPLIGHT 9", "Menhir", 1],
    ["night owl 9", "Dolmen", 2],
    ["menhir", "Menhir", 1],
    ["Cairn 3", "Cairn 3", 2],
  ])("reads %j as %s", (text, name, next) => {
    expect(at(text)).toEqual({ models: [name], next, misspelt: false });
  });

  it.each(["lamp", "lamplights", "lamplihgt", "night", "night, owl"])("takes %j for no code word", (text) => {
    expect(at(text)).toBeNull();
  });

  it("reads no head's code word where a shaft is asked", () => {
    expect(at("lamplight", context.shaftModels)).toBeNull();
  });
});

describe("readMessage with a code word", () => {
  const read = (text: string) => readMessage(text, { ...context, headModels: heads, codeWords });

  it.each(["head Lamplight 9", "lamplight 9", "head is a LAMPLIGHT stamped 9"])("reads %j as the model, and keeps what was typed", (head) => {
    const reading = read(`build oxtoby driver like gamer, ${head}, loft 9.25`);
    const typed = /lamplight/i.exec(head)?.[0];
    expect(reading).toMatchObject({
      kind: "order",
      mendings: [],
      request: { clauses: { headModel: { value: "Menhir", asWritten: typed }, stampedLoftDeg: { value: 9 } } },
    });
  });

  it("shows the place of a fault in the text as it was typed", () => {
    const text = "build oxtoby driver, head lamplight 9, loft 99";
    const reading = read(text);
    expect(reading.kind).toBe("problems");
    const [problem] = reading.kind === "problems" ? reading.problems : [];
    expect(text.slice(problem?.place.from, problem?.place.to)).toContain("99");
  });
});
