import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type MatchWritten, readMatchWanted } from "../../../../bot/boundary/match/readMatchWanted.ts";
import { players } from "../testContext.ts";

const read = (written: MatchWritten) => readMatchWanted(written, players);
const who = (written: MatchWritten) => {
  const { player } = read(written);
  return player.kind === "one" ? player.id : player.choices.map(({ name }) => name);
};

describe("readMatchWanted", () => {
  it.each<readonly [string, MatchWritten, number, string | null, boolean]>([
    ["player and club as options", { player: "oxtoby", club: "dr" }, 1, "driver", false],
    ["an id and a club", { player: "id:3", club: "3 wood" }, 3, "3w", false],
    ["one text", { text: "toll 7 iron" }, 3, "7i", false],
    ["a player with the club behind the name", { player: "Noor Halloway driver" }, 4, "driver", false],
    ["the question with a name in it", { text: "can bram's backup driver go in?" }, 1, "driver", true],
    ["the question as it is routed, the name twice", { player: "id:1", club: "driver", text: "can brams backup driver go in?" }, 1, "driver", true],
    ["an id that wins over a name", { player: "id:3", text: "oxtoby driver" }, 3, "driver", false],
    ["a choice from a list", { text: "id:5 lw backup" }, 5, "lw", true],
    ["the question without a club", { player: "id:2", text: "does the trial match" }, 2, null, true],
    ["a set, of which no one club is meant", { text: "toll irons 4-pw" }, 3, null, false],
    ["an id far past all players", { player: "id:999999999", club: "driver" }, 999999999, "driver", false],
  ])("reads %s", (_what, written, player, club, asksBackup) => {
    const got = read(written);
    expect([got.player, got.asksBackup]).toEqual([{ kind: "one", id: player }, asksBackup]);
    expect(got.club.kind === "one" ? got.club.club : null).toBe(club);
  });

  it("asks between two of a name", () => {
    expect(who({ player: "pruett", club: "driver" })).toEqual(["Ansel Pruett", "Corin Pruett"]);
  });

  it("asks after a misspelt name, and never takes it", () => {
    expect(read({ player: "oxtobey" }).player).toMatchObject({ kind: "ask", written: "oxtobey", choices: [{ name: "Bram Oxtoby" }] });
  });

  it.each<readonly [string, MatchWritten]>([
    ["nothing", {}],
    ["the question alone", { text: "can the backup go in?" }],
    ["an id that is no number", { player: "id:x", club: "driver" }],
    ["blanks", { player: "   ", text: "\n" }],
  ])("names nobody for %s", (_what, written) => {
    expect(read(written).player).toEqual({ kind: "ask", written: "", choices: [] });
  });

  it.each([
    ["a club nobody has", { player: "id:1", club: "nonsense" }, "nonsense"],
    ["a word for several", { text: "bram wedge" }, "wedge"],
    ["a number no wood has", { text: "bram 6 wood" }, "6 wood"],
    ["no club", { player: "id:1" }, ""],
  ])("keeps what was written for %s", (_what, written, said) => {
    expect(read(written).club).toEqual({ kind: "ask", written: said });
  });

  it("takes any text", () => {
    fc.assert(
      fc.property(fc.string({ unit: "grapheme", maxLength: 80 }), fc.string({ maxLength: 60 }), (text, player) => {
        expect(() => read({ player, text })).not.toThrow();
      }),
      { numRuns: 50 },
    );
    expect(() => read({ text: "oxtoby ".repeat(20_000) })).not.toThrow();
  });
});
