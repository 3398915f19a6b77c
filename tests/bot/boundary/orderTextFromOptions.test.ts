import { describe, expect, it } from "vitest";
import { orderTextFromOptions } from "../../../bot/boundary/orderTextFromOptions.ts";
import { readMessage } from "../../../bot/boundary/readMessage.ts";
import { meaningOf } from "./meaningOf.ts";
import { context } from "./testContext.ts";

const meaning = (text: string) => meaningOf(readMessage(text, context));

describe("orderTextFromOptions", () => {
  it("says what the message says", () => {
    const options = {
      kind: "build",
      player: "Bram Oxtoby",
      club: "driver",
      like: "gamer",
      loft: "9.25",
      face: "0.5 open",
      length: "45 1/4",
      shaft: "Dunlin 60 X",
      grip: "Gorse Standard Round",
      swing: "d3",
      head: "Cairn 9",
      sleeve: "standard",
      by: "14:30",
      to: "range",
      note: "logo matters, go slow",
    };
    const typed = [
      "build oxtoby dr like gamer cairn 9 std, loft 9.25, half open, 45 1/4, dunlin 60x, gorse std round, d3, by 2:30pm to range",
      "note logo matters, go slow",
    ].join("\n");
    expect(meaning(orderTextFromOptions(options))).toEqual(meaning(typed));
    expect(meaning(typed)).toMatchObject({ order: "build", to: "range", by: "2027-05-05T13:30" });
  });

  it("asks for as many alike, urgently, and confirms", () => {
    const text = orderTextFromOptions({
      player: "toll",
      club: "driver",
      count: "2",
      like: "backup",
      urgent: "yes",
      for: "test",
      by: "now",
      go: "yes",
    });
    expect(meaning(text)).toEqual({
      order: "build",
      player: "Toll",
      clubs: "driver",
      count: 2,
      like: "backup",
      purpose: "test",
      by: "now",
      urgent: true,
      clauses: {},
      go: true,
    });
  });

  it("changes an order when one is named", () => {
    expect(meaning(orderTextFromOptions({ order: "57", loft: "9.25", to: "locker" }))).toEqual({
      revise: 57,
      clauses: { squaredLoftDeg: 9.25 },
      to: "locker",
    });
  });

  it("keeps a value with line breaks inside its own clause", () => {
    const text = orderTextFromOptions({ player: "toll", club: "driver", like: "gamer", note: "one\nloft 12\ngo" });
    expect(meaning(text)).toMatchObject({ note: "one loft 12 go", clauses: {} });
  });

  it("leaves out empty values and names it does not know", () => {
    expect(orderTextFromOptions({ player: "toll", club: "driver", loft: " ", colour: "red" })).toBe("build toll driver");
  });
});
