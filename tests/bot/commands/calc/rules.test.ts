import { eq } from "drizzle-orm";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { measuredFacts, seenFacts } from "../../../../bot/boundary/calc/rulesFields.ts";
import { ruleWords } from "../../../../bot/replies/ruleWords.ts";
import type { Bag } from "../../../../core/bag/specClub.ts";
import { player } from "../../../../db/schema/people.ts";
import { specVersion } from "../../../../db/schema/week.ts";
import published from "../../../../fixtures/published/equipmentRules.json" with { type: "json" };
import { type MemoryBot, openMemoryBot } from "../../../support/memoryBot.ts";
import { akiko, maren, petra } from "../../../support/people.ts";
import { cardText, lineText, venueTime } from "../../../support/readCard.ts";
import { askCalc } from "./askCalc.ts";

let bot: MemoryBot;
beforeEach(async () => {
  bot = await openMemoryBot(venueTime("2027-05-03T10:30"));
});
afterEach(() => {
  expect(bot.bugs).toEqual([]);
  bot.close();
});

interface PublishedLimit {
  readonly code: string;
  readonly family: string;
  readonly fact: string;
  readonly side: string;
  readonly limit: number;
  readonly unit: string;
  readonly step: number;
  readonly rule: string;
  readonly exclusive?: boolean;
  readonly adopted?: readonly string[];
  readonly also?: object;
}
interface Found {
  readonly code: string;
  readonly rule: string;
  readonly withinTestTolerance: boolean;
}

const limits: readonly PublishedLimit[] = published.rows;
const names = new Map<string, string>([...Object.entries(measuredFacts), ...Object.entries(seenFacts)].map(([name, fact]) => [fact, name]));
const unitOf: Readonly<Record<string, string>> = { in: "in", deg: "°", cm3: "cc", gcm2: "g·cm²", µs: "µs", Shore: "", in2: "mm²" };
const MM2_PER_SQUARE_INCH = 645.16;

const typedFact = (fact: string, value: unknown, unit: string): string => {
  const shown =
    typeof value === "number" ? `${Number((unit === "in2" ? value * MM2_PER_SQUARE_INCH : value).toFixed(6))} ${unitOf[unit] ?? ""}` : value;
  return `${names.get(fact)} ${typeof shown === "boolean" ? (shown ? "yes" : "no") : shown}`;
};
const alsoUnit = (fact: string): string => (fact.endsWith("Deg") ? "deg" : "mm");
const typedAlso = (also: object = {}): readonly string[] =>
  Object.entries(also).map(([fact, value]) => `${typedFact(fact, value, alsoUnit(fact))}${fact.endsWith("Mm") ? "mm" : ""}`);
const typedRules = (adopted: readonly string[] = []): readonly string[] => adopted.map((rule) => `local rule ${rule}`);
const family = (name: string): string => (name === "fairway" ? "3w" : name === "hybrid" ? "4h" : name);

async function found(text: string, code: string): Promise<Found | undefined> {
  const { data } = await askCalc(bot, "rules", text);
  const [club] = data.clubs as unknown as readonly { readonly findings: readonly Found[] }[];
  return club?.findings.find((finding) => finding.code === code);
}

describe(`calc rules: ${published.source}`, () => {
  it.each(limits)("holds $code of a $family to $limit $unit ($side)", async (row) => {
    const past = row.side === "max" ? row.step : -row.step;
    const asked = (value: number) =>
      found([family(row.family), typedFact(row.fact, value, row.unit), ...typedAlso(row.also), ...typedRules(row.adopted)].join(", "), row.code);
    expect((await asked(row.limit + past))?.rule).toBe(row.rule);
    expect(await asked(row.limit - past)).toBeUndefined();
  });

  it.each(published.yesNo)("finds $code of a $family when $observation is $breaks", async (row) => {
    const asked = (seen: boolean) =>
      found(
        [
          family(row.family),
          typedFact(row.observation, seen, ""),
          ...typedAlso("also" in row ? row.also : {}),
          ...typedRules("adopted" in row ? (row.adopted as readonly string[]) : []),
        ].join(", "),
        row.code,
      );
    expect((await asked(row.breaks))?.rule).toBe(row.rule);
    expect(await asked(!row.breaks)).toBeUndefined();
  });

  it(`warns of more than ${published.clubsInBag.limit} clubs in a bag`, async () => {
    expect((await askCalc(bot, "rules", "oxtoby")).data).toMatchObject({ clubCount: 14, findings: [] });
    const [row] = bot.db
      .select()
      .from(specVersion)
      .innerJoin(player, eq(player.id, specVersion.playerId))
      .where(eq(player.name, "Bram Oxtoby"))
      .all();
    const { bag, ...version } = row?.spec_version ?? expect.fail("no spec");
    const { clubs, ...rest } = JSON.parse(bag) as Bag;
    const fuller = JSON.stringify({ ...rest, clubs: [...clubs, { ...clubs[0], club: "7w" }] });
    bot.db
      .insert(specVersion)
      .values({ ...version, version: 99, bag: fuller })
      .run();
    const card = await askCalc(bot, "rules", "oxtoby");
    expect(card.data).toMatchObject({ clubCount: 15, findings: [{ rule: published.clubsInBag.rule, measured: 15, limit: 14 }] });
    expect(cardText(card)).toContain("Clubs in the bag 15: at most 14. Rule 4.1b(1)");
  });
});

describe("calc rules", () => {
  it("tells each finding with rule, edition, measured and limit, what was not checked, and who rules", async () => {
    const card = await askCalc(bot, "rules", "driver length 46.5, lie 58, volume 462, ct 240, inertia 5950, local rule 46");
    expect([card.title, card.tone]).toEqual(["Rules, driver: 4 warnings", "attention"]);
    const lines = card.lines.map(lineText);
    expect(lines[0]).toBe("Read driver; length 46.5 in; lie 58°; volume 462 cm³; ct 240 µs; inertia 5950 g·cm²; local rule 46");
    expect(lines[1]).toBe("Length 46.5 in: at most 46 in. Model Local Rule G-10, 1 January 2022; as quoted by others");
    expect(lines[2]).toMatch(/^Head volume 462 cm³: at most 460 cm³\. Part 2, 4b\(i\); .*test tolerance of 10 cm³: theirs, none to build to$/);
    expect(lines[3]).toMatch(/^Head inertia, upright axis 5950 g·cm²: at most 5900 g·cm²/);
    expect(lines.slice(5)).toEqual([
      "Known: length, lie, volume, head inertia, CT",
      expect.stringMatching(/^Not checked: \d+ more things, behind More$/),
      "Warnings, no ruling: only the governing bodies rule.",
    ]);
    expect(cardText(card)).toMatch(/\nNot checked: .*grip length/);
    expect(cardText(card)).toMatch(/Only the governing bodies rule\.$/);
  });

  it("holds a club to 46 in only where the local rule is adopted, however it is written", async () => {
    expect((await askCalc(bot, "rules", "driver length 46.5")).title).toContain("nothing found");
    for (const said of ["local rule 46", "local 46", "g-10", "local rule g-10"])
      expect(await found(`driver length 46.5 ${said}`, "lengthLocal")).toBeDefined();
  });

  it("tells a limit from memory and a test tolerance that holds from memory", async () => {
    expect(cardText(await askCalc(bot, "rules", "putter height 2.6"))).toContain("limit from memory: look it up");
    expect(cardText(await askCalc(bot, "rules", "driver length 46.1, local rule 46"))).toContain("tolerance from memory: look it up");
  });

  it.each([
    ["putter loft 12", "Putter loft, squared 12°: at most 10°"],
    ["iron lean -12", "Shaft lean 12° backward: at most 10° backward"],
    ["iron lean 21", "Shaft lean 21° forward: at most 20° forward"],
    ["iron insert 0.008", "Insert against the face 0.008 in proud: at most 0.006 in proud"],
    ["iron insert -0.006", "Insert against the face 0.006 in sunk: at most 0.004 in sunk"],
    ["putter lie 82", "Shaft from the vertical 8°: at least 10°"],
    ["wedge width 3, depth 3", "Heel to toe less face to back 0 in: more than 0 in"],
    ["wedge side marking 0.5", "Marking into the impact area 0.34 in: less than 0.25 in"],
    ["7i round grip no", "Grip is not round. Part 2, 3b(i)"],
  ])("says of %s in words: %s", async (text, said) => {
    expect(cardText(await askCalc(bot, "rules", text))).toContain(said);
  });

  it("says lengths in the reader's own unit", async () => {
    expect(cardText(await askCalc(bot, "rules", "driver length 49", akiko))).toContain("Length 1245 mm: at most 1219 mm");
  });

  it("takes a club of the record, an order's, a left-hander's, with what is typed beside it", async () => {
    const { data } = await askCalc(bot, "rules", "oxtoby driver, local rule 46");
    // fixtures/scenario/spec-clubs.csv, oxtoby 3 bag driver: 1149.3 mm, 9.6°, 57°.
    expect(data.clubs).toMatchObject([{ club: "driver", lengthMm: 1149.3, squaredLoftDeg: 9.6, seatedLieDeg: 57, adjustable: true, findings: [] }]);
    expect(await found("halloway driver ct 258", "faceTimeDamaged")).toMatchObject({ measured: 258, limit: 257 });
    expect((await askCalc(bot, "rules", "order 1")).title).toContain("order 1 7i");
    expect((await askCalc(bot, "rules", "oxtoby backup driver")).title).toContain("Bram Oxtoby driver backup");
  });

  it("knows only of our own clubs whether they adjust", async () => {
    // fixtures/scenario/spec-clubs.csv, ambrelle 1 bag lw: an outside club.
    expect((await askCalc(bot, "rules", "ambrelle lw")).data.clubs).toMatchObject([{ adjustable: null }]);
    expect((await askCalc(bot, "rules", "oxtoby 7i")).data.clubs).toMatchObject([{ adjustable: false }]);
  });

  it("has words for every finding", () => {
    expect(Object.values(ruleWords).every((words) => /^[A-Z]/.test(words) && !words.endsWith("."))).toBe(true);
  });

  it("shows the record to a viewer, to none without a role, and restricted players to the lead", async () => {
    expect((await askCalc(bot, "rules", "oxtoby", akiko)).kind).toBe("calc.rules");
    const member = { ...maren, roles: [] } as typeof maren;
    for (const text of ["oxtoby driver", "oxtoby"]) expect((await askCalc(bot, "rules", text, member)).kind).toBe("refusal");
    bot.db.update(player).set({ restrictedCode: "lighthouse" }).where(eq(player.name, "Bram Oxtoby")).run();
    for (const text of ["oxtoby driver", "oxtoby"]) expect(cardText(await askCalc(bot, "rules", text))).not.toMatch(/Bram|1149/);
    expect((await askCalc(bot, "rules", "oxtoby", petra)).title).toContain("lighthouse");
  });

  it("says every fault at once with its word", async () => {
    const card = await askCalc(bot, "rules", "driver length 465, volme 462, two grips maybe, foo 3");
    expect(card.data.faults).toEqual([
      { word: "volme 462", guess: "volume" },
      { word: "maybe", guess: null },
      { word: "foo 3", guess: null },
    ]);
    expect(cardText(card)).toContain("known here: length, loft, lie");
  });

  it.each([
    ["a club", "length 46", "Needed: a club"],
    ["what was measured", "7i", "Needed: what was measured"],
    ["the club that values are of", "oxtoby length 46", "Needed: the club these values are of"],
    ["two players of a name", "ashgrave driver", "Corwen Ashgrave, Linnea Ashgrave"],
    ["a length no club has", "driver length 4", "length 10 to 100 in"],
    ["a volume no head has", "driver volume 4620", "volume 50 to 1000"],
  ])("asks about %s", async (_what, text, said) => {
    const card = await askCalc(bot, "rules", text);
    expect([card.kind, cardText(card)]).toEqual(["calc.faults", expect.stringContaining(said)]);
  });
});
