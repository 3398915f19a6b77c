import { describe, expect, it } from "vitest";
import { readMessage } from "../../../bot/boundary/readMessage.ts";
import { routeMessage } from "../../../bot/desk/routeMessage.ts";
import { context, playerId } from "../boundary/testContext.ts";

const routed = (text: string) => routeMessage(readMessage(text, context), text);

describe("routeMessage", () => {
  const toll = `id:${playerId("Toll")}`;

  it.each([
    ["build toll driver like gamer", { command: "order new", values: { text: "build toll driver like gamer" } }],
    ["toll driver", { command: "order new", values: { text: "toll driver" } }],
    ["57 make it d4", { command: "order revise", values: { order: "57", text: "57 make it d4" } }],
    ["hold 57 waiting on grip", { command: "order hold", values: { order: "57", reason: "waiting on grip" } }],
    ["resume 57", { command: "order resume", values: { order: "57" } }],
    ["where 57", { command: "where", values: { what: "57" } }],
    ["where toll driver", { command: "where", values: { player: toll, club: "driver" } }],
    ["what is toll gaming", { command: "spec", values: { player: toll } }],
    ["measured 57 7i 34.5>35", { command: "measured", values: { order: "57", text: "measured 57 7i 34.5>35" } }],
    ["can toll's backup driver go in?", { command: "match", values: { player: toll, club: "driver", text: "can toll's backup driver go in?" } }],
    ["can the backup go in?", { command: "match", values: { text: "can the backup go in?" } }],
    ["cairn 9 under 8.8?", { command: "stock", values: { view: "find", text: "cairn 9 under 8.8?" } }],
    ["what do bins need?", { command: "stock", values: { view: "replenish" } }],
    ["short for monday?", { command: "fill", values: { view: "short" } }],
    ["whats owed", { command: "owed", values: {} }],
    ["next?", { command: "bench", values: {} }],
    ["56 to 54, what bounce?", { command: "calc", values: { view: "bend", text: "56 to 54, what bounce?" } }],
    ["a driver for bram now, by 2:30?", { command: "ready", values: { text: "Bram Oxtoby driver by 2:30" } }],
    ["morning all", null],
  ])("sends %j where it is answered", (text, expected) => expect(routed(text)).toEqual(expected));
});
