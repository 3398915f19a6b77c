import { describe, expect, it } from "vitest";
import { editDistance } from "../../../bot/boundary/editDistance.ts";

// by the definition of the optimal string alignment distance, counted by hand; another first letter costs one more
describe("editDistance", () => {
  it.each([
    ["quarrie", "quarrie", 0],
    ["quarie", "quarrie", 1],
    ["oxtboy", "oxtoby", 1],
    ["xotoby", "oxtoby", 1],
    ["exercise", "exorcize", 2],
    ["roll", "toll", 2],
    ["kitten", "sitting", null],
    ["", "toll", null],
  ])("%j to %j is %s", (typed, known, distance) => expect(editDistance(typed, known, 3)).toBe(distance));
});
