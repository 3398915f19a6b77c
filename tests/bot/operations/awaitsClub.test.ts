import { describe, expect, it } from "vitest";
import { awaitsClub } from "../../../bot/operations/awaitsClub.ts";
import { instant, orderKinds } from "../../../core/kinds.ts";

const needsNone = ["build", "broke"];

describe("awaitsClub", () => {
  it.each(orderKinds)("waits for the club of a %s, unless it is about none that comes in", (kind) => {
    expect(awaitsClub({ kind, broughtBy: null }, null)).toBe(!needsNone.includes(kind));
  });

  it.each([
    ["nobody has said who brings it", null, null, true],
    ["the caddie brings it", "caddie", null, true],
    ["it is in the truck by the words of the order", "inTruck", null, false],
    ["it has come in", "caddie", instant(1), false],
  ] as const)("knows of a regrip when %s", (_, broughtBy, clubInAt, awaits) => {
    expect(awaitsClub({ kind: "regrip", broughtBy }, { clubInAt })).toBe(awaits);
  });
});
