import { mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readWeek } from "../../../bot/boundary/readWeek.ts";
import { faultsAfter, inCopy, scenario, withCell } from "./weekCopy.ts";

const cellIn = (where: readonly [string, string], column: string, value: string) => (text: string) => withCell(text, where, column, value);
const line = (added: string) => (text: string) => `${text}${added}\n`;
const lines = (text: string) => text.trimEnd().split("\n").length;

describe("readWeek on a broken copy", () => {
  /** File, the change, the column it is at, and what would be accepted. */
  it.each<readonly [string, string, (text: string) => string, string, string]>([
    ["a loft no driver has", "heads.csv", cellIn(["serial", "0417"], "soled_loft_deg", "19.25"), "soled_loft_deg", "driver 6–14 deg"],
    ["a stamp no driver has", "heads.csv", cellIn(["serial", "0417"], "stamped_loft_deg", "90"), "stamped_loft_deg", "a number from -15 to 70"],
    ["a head of no mass", "heads.csv", cellIn(["serial", "0417"], "mass_g", "0"), "mass_g", "a number from 100 to 600"],
    ["a driver head as heavy as a putter", "heads.csv", cellIn(["serial", "0417"], "mass_g", "355"), "mass_g", "driver 150–230 g"],
    ["a driver head as upright as a putter", "heads.csv", cellIn(["serial", "0417"], "design_lie_deg", "71"), "design_lie_deg", "driver 52–64 deg"],
    ["a mass left empty, which is not 0", "heads.csv", cellIn(["serial", "0417"], "mass_g", ""), "mass_g", "a number from 100 to 600"],
    [
      "a decimal comma in quotes",
      "heads.csv",
      (text) => text.replace(/^(0417,.*?,)9\.46,/m, '$1"9,46",'),
      "soled_loft_deg",
      "a number from -15 to 70",
    ],
    ["a number in another notation", "heads.csv", cellIn(["serial", "0417"], "mass_g", "1.96e2"), "mass_g", "a number from 100 to 600"],
    ["a head of an unknown model", "heads.csv", cellIn(["serial", "0417"], "model", "Cairne"), "model", "a name in head-models.csv: Cairn"],
    ["a head in an unknown drawer", "heads.csv", cellIn(["serial", "0417"], "place", "D-77"), "place", "a place of the truck Plover in places.csv"],
    ["a head in a zone that is none", "heads.csv", cellIn(["serial", "0417"], "zone", "Europe/Saltpan"), "zone", "a time zone such as Europe/Lisbon"],
    ["a duplicate serial", "heads.csv", (text) => text.replace(/^(?!0417|serial)\w+,/m, "0417,"), "serial", "each serial once; row"],
    [
      "a sleeve family that does not exist",
      "head-models.csv",
      cellIn(["name", "Cairn"], "sleeve_family", "Crag"),
      "sleeve_family",
      "a name in sleeves.csv",
    ],
    ["a sleeve without a standard mark", "sleeve-marks.csv", (text) => text.replace("270,yes", "270,no"), "name", "exactly one of them standard"],
    ["a mark of an unknown sleeve", "sleeve-marks.csv", line("Crag sleeve,standard,270,yes"), "sleeve", "a name in sleeves.csv"],
    [
      "a shaft that balances outside its middle third",
      "shafts.csv",
      cellIn(["name", "Dunlin 60 X"], "balance_from_tip_mm", "800"),
      "balance_from_tip_mm",
      "middle third",
    ],
    ["a shaft of an unknown flex", "shafts.csv", cellIn(["name", "Dunlin 60 X"], "flex", "6.0"), "flex", "R, S, X"],
    ["a player of an unknown hand", "players.csv", cellIn(["handle", "oxtoby"], "hand", "both"), "hand", "right, left"],
    ["a hat size nothing is stocked in", "players.csv", cellIn(["handle", "oxtoby"], "hat_size", "XXL"), "hat_size", 'goods.csv has "hat XXL"'],
    ["a role that is none", "people.csv", cellIn(["handle", "maren"], "roles", "rep;boss"), "roles", "one or more of rep, technician, lead, viewer"],
    [
      "a person on an unknown truck",
      "people.csv",
      cellIn(["handle", "maren"], "truck", "Curlew"),
      "truck",
      "a name in trucks.csv: Plover, Avocet, Knot",
    ],
    ["an order channel of no truck", "channels.csv", cellIn(["name", "plover-orders"], "truck", ""), "truck", "the truck of the channel"],
    ["an event whose Monday is a Tuesday", "events.csv", cellIn(["name", "Saltpan Open"], "monday", "2027-05-04"), "monday", "a Monday"],
    [
      "a practice round in another week",
      "events.csv",
      cellIn(["name", "Saltpan Open"], "first_practice_round", "2027-05-10"),
      "first_practice_round",
      "a day of the week",
    ],
    [
      "a day the calendar has not",
      "events.csv",
      cellIn(["name", "Saltpan Open"], "monday", "2027-02-30"),
      "monday",
      "a date of the calendar such as 2027-05-03",
    ],
    [
      "a truck that leaves before it arrives",
      "event-trucks.csv",
      cellIn(["event", "Saltpan Open"], "roll_out_at", "2027-05-01T19:00"),
      "roll_out_at",
      "a time after arrives_at",
    ],
    [
      "a truck at two events at once",
      "event-trucks.csv",
      cellIn(["event", "Saltpan Open"], "arrives_at", "2027-04-27T12:00"),
      "arrives_at",
      "of the same truck has ended",
    ],
    [
      "an opening that closes first",
      "opening-hours.csv",
      cellIn(["event", "Saltpan Open"], "closes_at", "2027-05-03T06:00"),
      "closes_at",
      "a time after opens_at",
    ],
    [
      "an opening of a truck that is elsewhere",
      "opening-hours.csv",
      line("Saltpan Open,Avocet,2027-05-03T07:00,2027-05-03T18:00"),
      "truck",
      "event-trucks.csv",
    ],
    ["a player unknown to the field", "field.csv", line("Saltpan Open,nobody"), "player", "a name in players.csv"],
    ["a tee time of a player who is not in the field", "tee-times.csv", line("Tidegate Cup,toll-x,round,2027-05-13T08:00"), "player", "field.csv"],
    [
      "a time of day that is none",
      "tee-times.csv",
      line("Saltpan Open,toll,round,2027-05-06T14:70"),
      "at",
      "a local date and time such as 2027-05-03T07:00",
    ],
    ["an hour the clocks skip", "tee-times.csv", line("Saltpan Open,toll,range,2027-03-28T01:30"), "at", "a time the clocks of Europe/Lisbon show"],
    ["a bin of no player", "places.csv", line("bin nobody,playerBin,Plover,"), "player", "the player whose bin it is"],
    ["stock of an unknown grip", "stock.csv", line("grip,Gorse Giant,main rack,Plover,4"), "model", "a name in grips.csv"],
    ["less than none in stock", "stock.csv", line("grip,Gorse Cord,float,Plover,-1"), "quantity", "a whole number from 0 to 100000"],
    [
      "a version that is skipped",
      "spec-versions.csv",
      (text) => text.replace("oxtoby,3,", "oxtoby,4,"),
      "version",
      "3: versions count 1, 2, 3 and so on",
    ],
    [
      "a version older than the one before",
      "spec-versions.csv",
      (text) => text.replace("oxtoby,3,2027-04-28", "oxtoby,3,2027-01-28"),
      "valid_from",
      "a time after that of version 2",
    ],
    [
      "a club twice in one bag",
      "spec-clubs.csv",
      (text) => text.replace("oxtoby,3,bag,4i,", "oxtoby,3,bag,5i,"),
      "club",
      "each player and version and club once",
    ],
    ["a fifteenth club", "spec-clubs.csv", line(`oxtoby,3,bag,11w,yes${",".repeat(24)}`), "version", "at most 14 clubs in the bag, not 15"],
    [
      "an iron head on a driver",
      "spec-clubs.csv",
      (text) => text.replace("oxtoby,3,bag,driver,no,Cairn,", "oxtoby,3,bag,driver,no,Scree,"),
      "head_model",
      "a driver head for a driver",
    ],
    [
      "a model on an outside club",
      "spec-clubs.csv",
      (text) => text.replace("oxtoby,3,bag,driver,no,", "oxtoby,3,bag,driver,yes,"),
      "head_model",
      "an outside club has no model",
    ],
    [
      "a sleeve mark that is not printed",
      "spec-clubs.csv",
      (text) => text.replace("Cairn driver sleeve,standard", "Cairn driver sleeve,upright"),
      "sleeve_mark",
      "sleeve-marks.csv",
    ],
    [
      "a head in a bag and in a drawer at once",
      "spec-clubs.csv",
      (text) => text.replace(/(oxtoby,3,bag,driver,no,Cairn,)\d+/, "$10417"),
      "head_serial",
      "not also in heads.csv",
    ],
    ["a win at an unknown event", "wins.csv", line("toll,Kelp Cup,2027-04-04"), "event", "a name in events.csv"],
    ["a marking on a club that is none", "markings.csv", line("toll,wdge,MT,no"), "club", "a club such as driver"],
    [
      "an order by a viewer",
      "orders.csv",
      line("Saltpan Open,2027-05-02T15:00,plover-orders,akiko,build toll 3w like gamer,build,draft"),
      "by",
      "someone who is rep or lead",
    ],
    [
      "an order in another channel",
      "orders.csv",
      line("Saltpan Open,2027-05-02T15:00,plover-bench,maren,build toll 3w like gamer,build,draft"),
      "channel",
      "whose purpose is orders",
    ],
    [
      "an order at an event the truck is not at",
      "orders.csv",
      line("Tidegate Cup,2027-05-10T15:00,plover-orders,maren,build toll 3w like gamer,build,draft"),
      "event",
      "an event the channel's truck is at",
    ],
  ])("names %s", (_, file, change, column, accepted) => {
    const faults = faultsAfter(file, change);
    expect(faults.map((fault) => `${fault.column}: ${fault.accepted}`).join("\n")).toContain(accepted);
    const fault = faults.find((one) => one.accepted.includes(accepted));
    expect(fault?.column).toBe(column);
    expect(fault?.row).toBeGreaterThan(1);
  });

  it("points at file, row, column and what was written", () => {
    let row = 0;
    const faults = faultsAfter("heads.csv", (text) => {
      row = text.split("\n").findIndex((one) => one.startsWith("0417,")) + 1;
      return withCell(text, ["serial", "0417"], "mass_g", "heavy");
    });
    expect(faults).toEqual([{ file: "heads.csv", row, column: "mass_g", written: "heavy", accepted: "a number from 100 to 600" }]);
  });

  it("names all faults of all files at once, in the order of rows", () => {
    const faults = faultsAfter("heads.csv", (text) =>
      withCell(withCell(text, ["serial", "0417"], "mass_g", "0"), ["serial", "0417"], "hand", "both").replace(
        /^(?!0417|serial)(\w+),Cairn,/m,
        "$1,Crag,",
      ),
    );
    expect(faults.map(({ column }) => column).toSorted()).toEqual(["hand", "mass_g", "model"]);
    expect(faults.map(({ row }) => row)).toEqual(faults.map(({ row }) => row).toSorted((one, other) => Number(one) - Number(other)));
  });

  it("does not report a slip again wherever the row is named", () => {
    expect(faultsAfter("players.csv", cellIn(["handle", "oxtoby"], "hand", "both"))).toHaveLength(1);
    expect(faultsAfter("events.csv", cellIn(["name", "Saltpan Open"], "zone", "Europe/Saltpan"))).toHaveLength(1);
  });

  it("loads nothing of a week with one fault in its last row", () => {
    inCopy((folder) => {
      expect(readWeek(folder).kind).toBe("week");
    });
    expect(faultsAfter("stock.csv", line("grip,Gorse Cord,main rack,Plover"))).toMatchObject([{ file: "stock.csv", column: null }]);
  });

  it("finds the row of a fault behind cells of several lines", () => {
    let last = 0;
    const faults = faultsAfter("orders.csv", (text) => {
      last = lines(text) + 1;
      return line("Saltpan Open,2027-05-02T17:00,plover-orders,nobody,build toll 3w like gamer,build,draft")(text);
    });
    expect(faults).toMatchObject([{ file: "orders.csv", row: last, column: "by", written: "nobody" }]);
  });

  it("names a missing file, a folder in its place and a missing week", () => {
    inCopy((folder) => {
      rmSync(join(folder, "wins.csv"));
      rmSync(join(folder, "weights.csv"));
      mkdirSync(join(folder, "weights.csv"));
      const reading = readWeek(folder);
      const faults = reading.kind === "faults" ? reading.faults.filter(({ row }) => row === null) : [];
      expect(faults.map(({ file, accepted }) => [file, accepted])).toEqual([
        ["weights.csv", "a file of this name"],
        ["wins.csv", "a file of this name that can be read"],
      ]);
    });
    const nowhere = readWeek(join(scenario, "nowhere"));
    expect(nowhere.kind === "faults" && nowhere.faults.every(({ row }) => row === null) && nowhere.faults.length).toBe(24);
  });

  /** Added rows of one file, each with the column that is at fault and what would be accepted there. */
  function expectFaults(file: string, rows: readonly (readonly [added: string, column: string, accepted: string])[]): void {
    let first = 0;
    const faults = faultsAfter(file, (text) => {
      first = lines(text) + 1;
      return line(rows.map(([added]) => added).join("\n"))(text);
    });
    expect(faults.map(({ row, column, accepted }) => [row, column, accepted])).toEqual(
      rows.map(([, column, accepted], at) => [first + at, column, expect.stringContaining(accepted)]),
    );
  }

  it("names all that can be wrong with a prepared shaft", () => {
    const inRack = (prepared: string) => `${prepared},main rack,Plover`;
    expectFaults("shaft-pieces.csv", [
      [inRack("Dunlin 60 XX,tipped,0,,,"), "model", "a name in shafts.csv"],
      ["Dunlin 60 X,tipped,0,,,,shelf,Plover", "place", "a place of the truck Plover in places.csv"],
      [inRack("Dunlin 60 X,raw,0,,,"), "state", "tipped, sleeved, used"],
      [inRack("Dunlin 60 X,tipped,,,,"), "tip_trim_mm", "a number from 0 to 200"],
      [inRack("Dunlin 60 X,sleeved,0,,,"), "sleeve", "the sleeve that is bonded to it"],
      [inRack("Dunlin 60 X,sleeved,0,Crag sleeve,,"), "sleeve", "a name in sleeves.csv: Cairn driver sleeve"],
      [inRack("Dunlin 60 X,tipped,0,Cairn driver sleeve,,"), "sleeve", "with a sleeve on it is sleeved"],
      [inRack("Dunlin 60 X,tipped,0,,up,"), "logo", "without a sleeve"],
      [inRack("Dunlin 60 X,sleeved,0,Cairn driver sleeve,side,"), "logo", "up, down; or nothing"],
      [inRack("Dunlin 60 X,used,0,,,"), "cut_length_mm", "the length it was cut to"],
      [inRack("Dunlin 60 X,used,12.7,,,1155.8"), "cut_length_mm", "no more than is left of 1168.4 mm"],
      [inRack("Dunlin 60 X,tipped,76.3,,,"), "tip_trim_mm", "at most the parallel part of its tip, 76.2 mm"],
      [inRack("Curlew Wedge 120 X,tipped,6,,,"), "tip_trim_mm", "0: a taper tip is not trimmed"],
    ]);
  });

  it("takes a prepared shaft at its limits", () => {
    const added = ["used,76.2,,,1092.2", "used,0,Cairn driver sleeve,,1168.4", "tipped,0,,,", "tipped,0,,,"].map((one) => `Dunlin 60 X,${one}`);
    const taper = "Curlew Wedge 120 X,tipped,0,,,";
    expect(faultsAfter("shaft-pieces.csv", line([...added, taper].map((one) => `${one},main rack,Plover`).join("\n")))).toEqual([]);
  });

  it("names all that can be wrong with a bend", () => {
    const bent = (change: string, at = "2027-04-01T09:00", by = "dessa") => `${change},${at},Europe/Berlin,${by}`;
    expectFaults("head-bends.csv", [
      [bent("9999,1,0"), "serial", "a name in heads.csv"],
      [bent("0265,0,0"), "lie_change_deg", "a change of loft or of lie that is not 0"],
      [bent("0265,11,0"), "loft_change_deg", "a number from -10 to 10"],
      [bent("0265,0,-10.1"), "lie_change_deg", "a number from -10 to 10"],
      [bent("0265,1,0", "2027-04-01T09:00", "maren"), "by", "someone who is technician"],
      [bent("0265,1,0", "2027-04-01T09:00", "nobody"), "by", "a name in people.csv"],
      [bent("0265,1,0", "2027-03-28T02:30"), "bent_at", "a time the clocks of Europe/Berlin show"],
    ]);
  });

  it("names a material, a construction, a limit and a frequency that cannot be", () => {
    expectFaults("head-models.csv", [
      ["Bronze,iron,,25.4,3.8,,,,bronze,forged,", "material", "carbon steel, 431 stainless"],
      ["Glued,iron,,25.4,3.8,,,,other,glued,", "construction", "forged, cast, hollow"],
      ["Double,iron,,25.4,3.8,,,,other,cast,20.1", "maker_bend_limit_deg", "a number from 0 to 20; or nothing"],
    ]);
    expectFaults("shafts.csv", [
      ["Hum 60 X,X,driver,parallel,8.5,76.2,15.3,1168.4,63.5,611.1,graphite,2600", "frequency_cpm", "a number from 50 to 600; or nothing"],
    ]);
  });

  it("loads a week of before, without the files and columns that are optional", () => {
    const without = (text: string, ...columns: readonly string[]) => {
      const [header = "", ...rest] = text.trimEnd().split("\n");
      const kept = header.split(",").flatMap((column, at) => (columns.includes(column) ? [] : [at]));
      return [header, ...rest].map((row) => kept.map((at) => row.split(",")[at]).join(",")).join("\n");
    };
    inCopy((folder) => {
      const change = (file: string, ...columns: readonly string[]) =>
        writeFileSync(join(folder, file), without(readFileSync(join(folder, file), "utf8"), ...columns));
      for (const file of ["head-bends.csv", "shaft-pieces.csv"]) rmSync(join(folder, file));
      change("head-models.csv", "material", "construction", "maker_bend_limit_deg");
      change("shafts.csv", "frequency_cpm");
      const reading = readWeek(folder);
      if (reading.kind === "faults") throw new Error(JSON.stringify(reading.faults));
      expect([reading.week.headBends, reading.week.shaftPieces]).toEqual([[], []]);
      expect(reading.week.headModels[0]).toMatchObject({ name: "Cairn", material: null, construction: null, makerBendLimitDeg: null });
      expect(reading.week.shafts[0]).toMatchObject({ name: "Dunlin 50 R", frequencyCpm: null });
      change("shafts.csv", "flex");
      const broken = readWeek(folder);
      const faults = broken.kind === "faults" ? broken.faults : [];
      expect(faults.filter(({ file }) => file === "shafts.csv")).toMatchObject([{ row: 1, column: "flex", accepted: "the column flex" }]);
    });
  });

  it("names a folder in the place of an optional file", () => {
    inCopy((folder) => {
      rmSync(join(folder, "shaft-pieces.csv"));
      mkdirSync(join(folder, "shaft-pieces.csv"));
      const reading = readWeek(folder);
      expect(reading.kind === "faults" && reading.faults).toMatchObject([{ file: "shaft-pieces.csv", row: null, accepted: "a file of this name" }]);
    });
  });

  it("throws on no file, whatever stands in it", () => {
    const files = ["heads.csv", "spec-clubs.csv", "events.csv", "orders.csv", "sleeve-marks.csv", "players.csv"] as const;
    fc.assert(
      fc.property(fc.constantFrom(...files), fc.nat(), fc.string({ unit: "binary", maxLength: 12 }), (file, at, put) => {
        const faults = faultsAfter(file, (text) => {
          const place = at % text.length;
          const changed = text.slice(0, place) + put + text.slice(place + put.length + 1);
          return changed === text ? `${text}x` : changed;
        });
        expect(faults.every(({ accepted }) => accepted.length > 0)).toBe(true);
      }),
      { seed: 417, numRuns: 40 },
    );
  });
});
