import { describe, expect, it } from "vitest";
import { instantIn, isZone, readLocalDate, readLocalTime } from "../../../bot/boundary/week/localTime.ts";

const time = (written: string) => {
  const read = readLocalTime(written);
  if (read === null) throw new Error(`${written} was not read`);
  return read;
};

describe("readLocalDate", () => {
  it("counts the days since 1970 (2027-05-03 is a Monday, 20,941 days on: counted from the calendar)", () => {
    expect(readLocalDate("2027-05-03")).toBe(20_941);
  });

  it.each(["2027-02-29", "2027-13-01", "2027-00-10", "2027-5-3", "03.05.2027", "", "2027-05-03T07:00"])("refuses %s", (written) => {
    expect(readLocalDate(written)).toBeNull();
  });

  it("takes the leap day of 2028", () => {
    expect(readLocalDate("2028-02-29")).not.toBeNull();
  });
});

describe("readLocalTime", () => {
  it.each(["2027-05-03T24:00", "2027-05-03T07:60", "2027-05-03 07:00", "2027-05-03T7:00", "2027-05-03T07:00Z", "2027-02-30T07:00"])(
    "refuses %s",
    (written) => {
      expect(readLocalTime(written)).toBeNull();
    },
  );
});

describe("instantIn", () => {
  /** Offsets of the time-zone database, from memory. */
  it.each([
    ["Europe/Lisbon", "2027-05-05T19:00", "2027-05-05T19:00:00+01:00"],
    ["Europe/Lisbon", "2027-01-05T19:00", "2027-01-05T19:00:00+00:00"],
    ["America/St_Johns", "2027-04-28T19:00", "2027-04-28T19:00:00-02:30"],
    ["Europe/Helsinki", "2027-05-10T07:30", "2027-05-10T07:30:00+03:00"],
    ["Africa/Johannesburg", "2027-03-17T19:00", "2027-03-17T19:00:00+02:00"],
  ])("reads the clock of %s at %s", (zone, written, iso) => {
    expect(instantIn(zone, time(written))).toBe(Date.parse(iso));
  });

  it("is null in the hour the clocks skip in spring", () => {
    expect(instantIn("Europe/Lisbon", time("2027-03-28T01:30"))).toBeNull();
    expect(instantIn("Europe/Lisbon", time("2027-03-28T02:30"))).not.toBeNull();
  });

  it("takes the first of the two hours the clocks show twice in autumn", () => {
    expect(instantIn("Europe/Lisbon", time("2027-10-31T01:30"))).toBe(Date.parse("2027-10-31T01:30:00+01:00"));
  });
});

describe("isZone", () => {
  it.each(["Europe/Lisbon", "America/St_Johns", "UTC"])("knows %s", (zone) => {
    expect(isZone(zone)).toBe(true);
  });

  it.each(["Europe/Cinderhead", "+01:00", "", "Europe/Lisbon ", "__proto__"])("refuses %j", (zone) => {
    expect(isZone(zone)).toBe(false);
  });
});
