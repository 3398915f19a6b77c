import { describe, expect, it } from "vitest";
import { card, line } from "../../../bot/replies/card.ts";
import { withCodeWords } from "../../../bot/replies/withCodeWords.ts";
import { cardText } from "../../support/readCard.ts";

const words = [{ name: "Menhir", code: "lamplight" }];
const shown = (text: string): string => cardText(withCodeWords(card({ kind: "note", title: text }), words));

describe("withCodeWords", () => {
  it.each([
    ["Head Menhir 9", "Head lamplight 9"],
    ["menhir, MENHIR", "lamplight, lamplight"],
    ["(Menhir)", "(lamplight)"],
    ["Menhirs and Cairnmenhir", "Menhirs and Cairnmenhir"],
    ["", ""],
  ])("shows %j as %j", (text, expected) => {
    expect(shown(text)).toBe(expected);
  });

  it("reaches lines, fields, buttons and data, and leaves numbers and instants", () => {
    const action = { command: "order mend", subject: "post:1", version: 0 };
    const full = card({
      kind: "note",
      title: "Menhir",
      lines: [line({ strong: "Menhir" }, " here")],
      fields: [{ label: "Menhir", value: line("Menhir") }],
      buttons: [{ label: "Menhir", weight: "plain", action }],
      data: { headModel: "Menhir", squaredLoftDeg: 8.96, held: [null, true, "Menhir"] },
    });
    const changed = withCodeWords(full, words);
    expect(JSON.stringify(changed)).not.toContain("Menhir");
    expect(changed.data).toEqual({ headModel: "lamplight", squaredLoftDeg: 8.96, held: [null, true, "lamplight"] });
    expect(changed.buttons[0]?.action).toEqual(action);
  });

  it.each(["a.b", "c++", "(x", "$&"])("takes a name of any letters for itself: %s", (name) => {
    expect(cardText(withCodeWords(card({ kind: "note", title: `head ${name} 9` }), [{ name, code: "$1" }]))).toBe("head $1 9");
  });

  it("changes nothing where no name is restricted", () => {
    const plain = card({ kind: "note", title: "Menhir" });
    expect(withCodeWords(plain, [])).toEqual(plain);
  });
});
