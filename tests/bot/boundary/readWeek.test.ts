import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { editDistance } from "../../../bot/boundary/editDistance.ts";
import { readMessage } from "../../../bot/boundary/readMessage.ts";
import { readWeek } from "../../../bot/boundary/readWeek.ts";
import { groupBy } from "../../../bot/boundary/week/known.ts";
import type { Week } from "../../../bot/boundary/week.ts";
import { attitudeOf } from "../../../core/head/attitudeOf.ts";
import { id, instant } from "../../../core/kinds.ts";
import { bareHead, tilted } from "../../core/head/someAngles.ts";
import { demoWeek, scenario } from "./weekCopy.ts";

const week = demoWeek();

function eventNamed(name: string): Week["events"][number] {
  const event = week.events.find((one) => one.name === name);
  if (event === undefined) throw new Error(`no event ${name}`);
  return event;
}
const saltpan = eventNamed("Saltpan Open");
const liveBag = (player: string) => week.specs.filter((spec) => spec.player === player).at(-1)?.bag;
const count = <T>(all: readonly T[], which: (one: T) => boolean) => all.filter(which).length;

describe("readWeek on the demo week", () => {
  it("finds no fault", () => {
    expect(readWeek(scenario).kind).toBe("week");
  });

  it("has the team: 3 trucks, 12 people of all roles in several zones and both units, a channel of each purpose for each truck", () => {
    expect(week.trucks).toHaveLength(3);
    expect(week.people).toHaveLength(12);
    expect(new Set(week.people.flatMap(({ roles }) => roles))).toEqual(new Set(["rep", "technician", "lead", "viewer"]));
    expect(new Set(week.people.map(({ zone }) => zone)).size).toBeGreaterThanOrEqual(5);
    expect(week.people.some(({ roles, lengthUnit }) => roles.includes("viewer") && lengthUnit === "mm")).toBe(true);
    for (const { name } of week.trucks) {
      const purposes = week.channels.filter(({ truck }) => truck === name).map(({ purpose }) => purpose);
      expect(purposes.toSorted()).toEqual(["bench", "orders", "week"]);
    }
  });

  it("has at least 24 players of both hands, two of one family name, no other two family names alike", () => {
    expect(week.players.length).toBeGreaterThanOrEqual(24);
    expect(count(week.players, ({ hand }) => hand === "left")).toBe(4);
    const families = week.players.map(({ name }) => name.toLowerCase().split(" ").at(-1) ?? "");
    const distinct = [...new Set(families)];
    expect(families.length - distinct.length).toBe(1);
    const alike = distinct.flatMap((one, at) => distinct.slice(at + 1).filter((other) => editDistance(one, other, 2) !== null));
    expect(alike).toEqual([]);
  });

  it("has 600 heads, 40 shafts, 15 grips, one restricted head, and most heads on the truck at the event", () => {
    expect([week.heads.length, week.shafts.length, week.grips.length]).toEqual([600, 40, 15]);
    const restricted = new Set(week.headModels.filter(({ restrictedCode }) => restrictedCode !== null).map(({ name }) => name));
    expect(restricted.size).toBe(1);
    expect(count(week.heads, ({ model }) => restricted.has(model))).toBe(1);
    expect(count(week.heads, ({ truck }) => truck === "Plover")).toBeGreaterThan(300);
    expect(new Set(week.heads.map(({ truck }) => truck))).toEqual(new Set(["Plover", "Avocet", "Knot", null]));
    expect(new Set(week.heads.map(({ hand }) => hand))).toEqual(new Set(["right", "left"]));
  });

  it("has two wins, five owed markings and orders at every stage", () => {
    expect([week.wins.length, week.markings.length]).toEqual([2, 5]);
    expect(new Set(week.orders.map(({ progress }) => progress))).toEqual(new Set(["draft", "confirmed", "started", "gluedOn", "finalCheck"]));
  });

  it("has three events around this week in three zones, a truck waiting at the later one", () => {
    expect(new Set(week.events.map(({ zone }) => zone)).size).toBe(week.events.length);
    expect(eventNamed("Tidegate Cup").trucks.some(({ truck, arrivesAt }) => truck === "Avocet" && arrivesAt < Date.parse("2027-05-03T00:00Z"))).toBe(
      true,
    );
    expect(week.wins.map(({ event }) => event)).toContain("Fogbell Trophy");
  });

  /** Lisbon keeps UTC+1 in May: the time-zone database, from memory. */
  it("rolls out on Wednesday at 19:00 on the clocks of Lisbon and opens 07:00 to 18:00 from Monday to Wednesday", () => {
    expect(saltpan.trucks).toEqual([
      { truck: "Plover", arrivesAt: Date.parse("2027-05-02T12:00+01:00"), rollOutAt: Date.parse("2027-05-05T19:00+01:00") },
    ]);
    expect(saltpan.open).toEqual(
      ["03", "04", "05"].map((day) => ({
        truck: "Plover",
        from: Date.parse(`2027-05-${day}T07:00+01:00`),
        to: Date.parse(`2027-05-${day}T18:00+01:00`),
      })),
    );
  });

  it("has practice, range and a first round on Thursday for everyone in the field", () => {
    expect(saltpan.field).toHaveLength(week.players.length);
    for (const player of saltpan.field) {
      const mine = saltpan.teeTimes.filter((teeTime) => teeTime.player === player);
      expect(new Set(mine.map(({ kind }) => kind))).toEqual(new Set(["practice", "range", "round"]));
      const rounds = mine.filter(({ kind }) => kind === "round").map(({ at }) => at);
      expect(new Date(Math.min(...rounds)).toISOString()).toMatch(/^2027-05-06T/);
    }
  });

  it("has a live bag of 12 to 14 clubs for everyone in the field, some clubs from outside, some bags with backups and older versions", () => {
    const bags = saltpan.field.map((player) => liveBag(player));
    expect(bags.every((bag) => bag !== undefined && bag.clubs.length >= 12 && bag.clubs.length <= 14)).toBe(true);
    expect(bags.flatMap((bag) => bag?.clubs ?? []).filter(({ outside }) => outside).length).toBeGreaterThanOrEqual(5);
    expect(count(bags, (bag) => (bag?.backups.length ?? 0) > 0)).toBeGreaterThanOrEqual(5);
    expect(count(week.specs, ({ version }) => version === 3)).toBeGreaterThanOrEqual(2);
  });

  it("has drivers of 45 to 45 1/2 in that swing about D2 to D4", () => {
    for (const player of saltpan.field) {
      const driver = liveBag(player)?.clubs.find(({ club }) => club === "driver");
      expect((driver?.lengthMm ?? 0) / 25.4).toBeGreaterThan(44.93);
      expect((driver?.lengthMm ?? 0) / 25.4).toBeLessThan(45.57);
      expect(Math.abs((driver?.swingWeightPoints ?? 99) - 3)).toBeLessThanOrEqual(1.5);
    }
  });

  it("says of every head what it is made of, and of every shaft but a putter's what it read", () => {
    expect(week.headModels.every(({ material, construction }) => material !== null && construction !== null)).toBe(true);
    const unread = week.shafts.filter(({ frequencyCpm }) => frequencyCpm === null);
    expect(unread.every(({ forFamilies }) => forFamilies.join() === "putter")).toBe(true);
    expect(week.shafts.length - unread.length).toBeGreaterThan(30);
  });

  /** About 10 cpm from letter to letter: a rule of thumb of articles on frequency. */
  it("has shafts that read about 10 cpm a letter apart", () => {
    const cpm = (name: string) => week.shafts.find((shaft) => shaft.name === name)?.frequencyCpm ?? Number.NaN;
    for (const line of ["Dunlin 60", "Sandpiper 70", "Curlew 105"]) {
      expect(Math.abs(cpm(`${line} S`) - cpm(`${line} R`) - 10)).toBeLessThanOrEqual(2);
      expect(Math.abs(cpm(`${line} X`) - cpm(`${line} S`) - 10)).toBeLessThanOrEqual(2);
    }
  });

  it("has prepared shafts of every state in bins and the rack, none of a model and trim its orders build with", () => {
    expect(new Set(week.shaftPieces.map(({ state }) => state))).toEqual(new Set(["tipped", "sleeved", "used"]));
    expect(week.shaftPieces).toContainEqual({
      model: "Dunlin 60 S",
      state: "sleeved",
      tipTrimMm: 12.7,
      sleeve: "Cairn driver sleeve",
      logo: "down",
      cutLengthMm: null,
      place: "bin Jory Pellwether",
      truck: "Plover",
    });
    const names = week.orders.map(({ text }) => text.split(" ")[1] ?? "");
    const busy = week.players.filter(({ name }) => names.some((one) => name.toLowerCase().includes(one))).map(({ name }) => `bin ${name}`);
    expect(busy.length).toBeGreaterThan(0);
    expect(week.shaftPieces.filter(({ place }) => busy.includes(place))).toEqual([]);
  });

  it("has bends of heads, each of which reads off its stamp the way it was bent", () => {
    expect(week.headBends.length).toBeGreaterThanOrEqual(4);
    for (const { serial, loftChangeDeg, at } of week.headBends) {
      const head = week.heads.find((one) => one.serial === serial);
      if (head === undefined) throw new Error(`no head ${serial}`);
      expect(loftChangeDeg * (head.soledLoftDeg - head.stampedLoftDeg), serial).toBeGreaterThanOrEqual(0);
      expect(at).toBeLessThanOrEqual(head.measuredAt);
    }
  });

  it("stores head 0417 as a right-handed Cairn stamped 9 in drawer D-7 that reads 9.2 and 0.4 open at standard", () => {
    const head = week.heads.find(({ serial }) => serial === "0417");
    const sleeve = week.sleeves.find(({ family }) => family === week.headModels.find(({ name }) => name === head?.model)?.sleeveFamily);
    const standard = sleeve?.marks.find(({ mark }) => mark === sleeve.standardMark);
    if (head === undefined || sleeve === undefined || standard === undefined) throw new Error("head 0417 has no sleeve");
    expect(head).toMatchObject({ model: "Cairn", hand: "right", stampedLoftDeg: 9, place: "D-7", truck: "Plover" });
    const { squaredLoftDeg, soledFaceDeg } = attitudeOf(bareHead(head, head.hand), tilted(sleeve.tiltDeg, standard.clockDeg));
    expect(squaredLoftDeg).toBeCloseTo(9.2, 1);
    expect(soledFaceDeg).toBeCloseTo(0.4, 1);
  });

  it("lists the heads of every drawer from the strongest to the weakest measured loft", () => {
    const drawers = groupBy(week.heads, ({ truck, place }) => `${truck} ${place}`);
    for (const [drawer, heads] of drawers) {
      const lofts = heads.map(({ soledLoftDeg }) => soledLoftDeg);
      if (!drawer.endsWith("home base")) expect(lofts, drawer).toEqual(lofts.toSorted((one, other) => one - other));
    }
  });

  it("is short of something for Monday: one size of hat and one of glove", () => {
    const needed = (name: string) =>
      saltpan.field.reduce((sum, handle) => {
        const player = week.players.find((one) => one.handle === handle);
        if (player === undefined) return sum;
        if (name === "ball") return sum + (player.balls ?? 36);
        if (name === `hat ${player.hatSize}`) return sum + (player.hats ?? 4);
        return name === `glove ${player.gloveSize} ${player.hand === "right" ? "left" : "right"}` ? sum + (player.gloves ?? 4) : sum;
      }, 0);
    const float = week.stock.filter(({ place, truck }) => place === "float" && truck === "Plover");
    const short = float.filter(({ model, quantity }) => quantity < needed(model)).map(({ model }) => model);
    expect(short.toSorted()).toEqual(["glove ML left", "hat M"]);
  });

  it("has orders that the reader of messages reads as orders of their kind, without mending anything", () => {
    for (const { text, kind, at } of week.orders) {
      const reading = readMessage(text, {
        now: instant(at),
        zone: saltpan.zone,
        lengthUnit: "in",
        players: week.players.map(({ name, aliases }, index) => ({ id: id<"player">(index + 1), name, aliases })),
        headModels: week.headModels.map(({ name }) => name),
        shaftModels: week.shafts.map(({ name }) => name),
        gripModels: week.grips.map(({ name }) => name),
        codeWords: [],
        sleeveMarks: week.sleeves.flatMap(({ marks }) => marks.map(({ mark }) => mark)),
        grinds: week.headModels.flatMap(({ grind }) => (grind === null ? [] : [grind])),
        isOpenOrder: () => false,
        bagOf: () => [],
      });
      expect(reading, text).toMatchObject({ kind: "order", request: { kind }, mendings: [] });
    }
  });

  it("explains every file and every column in its README", () => {
    const readme = readFileSync(join(scenario, "README.md"), "utf8");
    const entries = readme.split("\n- ").slice(1);
    const files = readdirSync(scenario).filter((name) => name.endsWith(".csv"));
    for (const file of files) {
      const entry = entries.find((one) => one.startsWith(`\`${file}\``)) ?? "";
      const columns = (readFileSync(join(scenario, file), "utf8").split("\n")[0] ?? "").split(",");
      expect(
        columns.filter((column) => !entry.includes(`\`${column}\``)),
        file,
      ).toEqual([]);
    }
    expect(entries).toHaveLength(files.length);
  });
});
