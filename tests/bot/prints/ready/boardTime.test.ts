import { describe, expect, it } from "vitest";
import { clockAtMinute, tickMinutes } from "../../../../bot/prints/ready/boardTime.ts";
import { driverAlone } from "./someBoards.ts";

/** 2027-05-03 08:00 UTC. */
const from = Date.UTC(2027, 4, 3, 8);

describe("clockAtMinute", () => {
  it.each([
    ["Europe/Lisbon", 0, "09:00"],
    ["Pacific/Auckland", 90, "21:30"],
    ["America/St_Johns", 15, "05:45"],
    ["Pacific/Auckland", 240, "00:00"],
  ])("shows the clock of %s %d minutes after 08:00 UTC as %s", (zone, minute, shown) => expect(clockAtMinute({ from, zone }, minute)).toBe(shown));
});

describe("tickMinutes", () => {
  it.each([
    ["Europe/Lisbon", 7, 60, ["09:15", "09:30", "09:45", "10:00"]],
    ["Europe/Lisbon", 0, 240, ["09:00", "09:30", "10:00", "10:30", "11:00", "11:30", "12:00", "12:30", "13:00"]],
    ["America/St_Johns", 0, 300, ["06:00", "07:00", "08:00", "09:00", "10:00"]],
    ["Asia/Kathmandu", 0, 45, ["13:45", "14:00", "14:15", "14:30"]],
    ["Europe/Lisbon", 1, 10, ["09:05", "09:10"]],
    ["Europe/Lisbon", 1, 3, []],
    ["Europe/Lisbon", 1, 4, ["09:05"]],
  ])("marks whole steps of the clock in %s, %d minutes past, over %d minutes", (zone, past, span, clocks) => {
    const board = { ...driverAlone, zone, from: from + past * 60_000, to: from + (past + span) * 60_000 };
    expect(tickMinutes(board).map((minute) => clockAtMinute(board, minute))).toEqual(clocks);
  });
});
