import { describe, expect, it } from "vitest";
import { clockText } from "../../../bot/rehearsal/clockText.ts";
import { instant } from "../../../core/kinds.ts";

const at = (iso: string) => instant(Date.parse(iso));
const now = at("2027-05-03T18:00:00Z");

/** Offsets of the time-zone database, from memory: New York UTC−4 in May, Tokyo UTC+9, Kolkata UTC+5:30. */
describe("clockText", () => {
  it.each([
    ["2027-05-03T18:00:00Z", "America/New_York", "14:00"],
    ["2027-05-04T03:59:00Z", "America/New_York", "23:59"],
    ["2027-05-04T04:00:00Z", "America/New_York", "Tue 4 May 00:00"],
    ["2027-05-03T18:00:00Z", "Asia/Tokyo", "03:00"],
    ["2027-05-03T14:59:00Z", "Asia/Tokyo", "Mon 3 May 23:59"],
    ["2027-05-03T18:30:00Z", "Asia/Kolkata", "Tue 4 May 00:00"],
    ["2028-01-03T12:00:00Z", "UTC", "Mon 3 Jan 2028 12:00"],
  ])("shows %s in %s as %s", (iso, zone, shown) => {
    expect(clockText(at(iso), zone, now)).toBe(shown);
  });
});
