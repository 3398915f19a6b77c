import { describe, expect, it } from "vitest";
import { readClock } from "../../../bot/boundary/readClock.ts";
import { readMessage } from "../../../bot/boundary/readMessage.ts";
import { readSkills } from "../../../bot/boundary/readSkills.ts";
import { readStepKind } from "../../../bot/boundary/readStepKind.ts";
import { routeMessage } from "../../../bot/desk/routeMessage.ts";
import { instant } from "../../../core/kinds.ts";
import { context } from "./testContext.ts";

const { now, zone } = context;
/** A time of 5 May 2027 in Lisbon, one hour ahead of UTC. */
const venue = (hour: number, minute = 0, day = 5) => instant(Date.UTC(2027, 4, day, hour - 1, minute));

describe("readMessage: what is said at the bench", () => {
  it.each([
    ["pause 57", { command: "step pause", values: { order: "57" } }],
    ["57 pause", { command: "step pause", values: { order: "57" } }],
    ["57 comes at 2:30", { command: "order expect", values: { order: "57", time: "at 2:30" } }],
    ["57 expected 14:00", { command: "order expect", values: { order: "57", time: "14:00" } }],
    ["hold 57 till 14:00 short of a ferrule", { command: "order hold", values: { order: "57", reason: "till 14:00 short of a ferrule" } }],
  ])("reads %s", (text, routed) => expect(routeMessage(readMessage(text, context), text)).toEqual(routed));

  it.each(["58 comes at 2:30", "57 comes", "he comes at 2:30", "pause", "comes 57"])(
    "is silent at %s: no such order is open, or it is chatter",
    (text) => expect(routeMessage(readMessage(text, context), text)).toBeNull(),
  );
});

describe("readClock", () => {
  it.each([
    ["till 14:00 short of a ferrule", venue(14), "short of a ferrule"],
    ["until 2:30pm", venue(14, 30), ""],
    ["at 3", venue(15), ""],
    ["14:05", venue(14, 5), ""],
    ["tomorrow 7:00 Dessa brings it", venue(7, 0, 6), "Dessa brings it"],
  ])("reads %s", (text, at, rest) => expect(readClock(text, { now, zone })).toEqual({ kind: "at", at, rest }));

  it.each([
    ["till the player calls", "none"],
    ["", "none"],
    ["3", "none"],
    ["till 25:10", "noSuchTime"],
    ["till 07:00", "past"],
  ])("reads no time in %j: %s", (text, kind) => expect(readClock(text, { now, zone })).toEqual({ kind }));
});

describe("readStepKind", () => {
  it.each([
    ["glue", "bond"],
    ["Re-glue", "bond"],
    ["reglue", "bond"],
    ["recut", "cut"],
    ["dry fit", "dryFit"],
    ["grip", "grip"],
    ["polish", null],
    ["", null],
    ["constructor", null],
  ])("reads %j as %s", (written, kind) => expect(readStepKind(written)).toBe(kind));
});

describe("readSkills", () => {
  it.each([
    ["grinding, Wood-bending", ["grinding", "woodBending"]],
    ["stamping;stamping", ["stamping"]],
    ["none", []],
  ])("reads %s", (written, skills) => expect(readSkills(written)).toEqual({ kind: "skills", skills }));

  it.each([
    ["grinding, welding", "welding"],
    ["", ""],
    ["grinding,", ""],
    ["toString", "tostring"],
  ])("finds the word that is no skill in %j", (written, word) => expect(readSkills(written)).toEqual({ kind: "unknown", word }));
});
