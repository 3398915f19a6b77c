import { describe, expect, it } from "vitest";
import { matchPlayer } from "../../../bot/boundary/playerNames.ts";
import { readClubName } from "../../../bot/boundary/readClubName.ts";
import { readOrderRef } from "../../../bot/boundary/readOrderRef.ts";
import { players } from "./testContext.ts";

describe("matchPlayer", () => {
  it.each([
    ["Ysolde Quarrie", "Ysolde Quarrie", false],
    ["quarrie", "Ysolde Quarrie", false],
    ["YSOLDE", "Ysolde Quarrie", false],
    ["bram", "Bram Oxtoby", false],
    ["toll's", "Marrick Toll", false],
    ["wexcombes", "Teodor Wexcombe", false],
    ["Núñez-Vale", "José Núñez-Vale", false],
    ["nunez vale", "José Núñez-Vale", false],
    ["otarn", "Liadan O'Tarn", false],
    ["c pruett", "Corin Pruett", false],
    ["quarie", "Ysolde Quarrie", true],
    ["oxtboy", "Bram Oxtoby", true],
    ["haloway", "Noor Halloway", true],
  ])("knows %j as %s, misspelt %s", (text, name, misspelt) => {
    expect(matchPlayer(text, players)).toMatchObject({ kind: "one", player: { name }, misspelt });
  });

  it("offers both when two share a last name, misspelt or not", () => {
    for (const text of ["pruett", "pruet"]) {
      const match = matchPlayer(text, players);
      expect(match.kind === "several" ? match.players.map(({ name }) => name) : match).toEqual(["Ansel Pruett", "Corin Pruett"]);
    }
  });

  it.each(["zebra", "", "x", "roll"])("mends %j into nobody", (text) => expect(matchPlayer(text, players).kind).toBe("none"));
});

describe("readClubName", () => {
  it.each([
    ["dr", "driver"],
    ["1w", "driver"],
    ["3 wood", "3w"],
    ["fairway 5", "5w"],
    ["seven iron", "7i"],
    ["7 irn", "7i"],
    ["4hy", "4h"],
    ["sand wedge", "sw"],
    ["aw", "gw"],
    ["lob wedge", "lw"],
    ["putter", "putter"],
    ["irons 4-pw", null],
    ["12i", null],
    ["wedge", null],
    ["driver please", null],
    ["", null],
  ])("reads %j as %s", (text, club) => expect(readClubName(text)).toBe(club));
});

describe("readOrderRef", () => {
  it.each([
    ["57", { by: "number", number: 57 }],
    ["#57", { by: "number", number: 57 }],
    ["order 57", { by: "number", number: 57 }],
    ["id:12", { by: "id", id: 12 }],
    ["0", null],
    ["57a", null],
    ["-1", null],
    ["", null],
  ])("reads %j", (text, ref) => expect(readOrderRef(text)).toEqual(ref));
});
