import { eq } from "drizzle-orm";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { readMessage } from "../../../bot/boundary/readMessage.ts";
import { readingContext } from "../../../bot/desk/readingContext.ts";
import type { PlannedClub } from "../../../bot/operations/plannedClub.ts";
import { planOrder } from "../../../bot/operations/planOrder.ts";
import { allTrucks } from "../../../db/repositories/people.ts";
import { head, reservation } from "../../../db/schema/stock.ts";
import { type BruteSetting, type Cells, everySetting, type HeadWish, numberIn, rowsOf } from "../../support/bruteDemo.ts";
import { demoWeek } from "../../support/demoWeek.ts";
import { venueTime } from "../../support/readCard.ts";

/** What the text of an order means, worked out by hand: what it writes, and what it keeps of the club it is like. */
interface Order {
  readonly text: string;
  readonly player: string;
  readonly club: string;
  readonly writes?: Partial<HeadWish> & { readonly headMassG?: number; readonly lengthMm?: number };
  readonly keeps?: readonly (keyof typeof columns)[];
}

const columns = {
  stampedLoftDeg: "stamped_loft_deg",
  squaredLoftDeg: "squared_loft_deg",
  soledFaceDeg: "soled_face_deg",
  seatedLieDeg: "seated_lie_deg",
  headMassG: "head_mass_g",
} as const;
const woodLike = ["soledFaceDeg", "seatedLieDeg"] as const;
const allOfIt = ["stampedLoftDeg", "squaredLoftDeg", ...woodLike] as const;

/** Both hands, every family; true loft, face, lie, bounce, stamp, mark, grind, swing weight and head mass. */
const orders: readonly Order[] = [
  {
    text: "build oxtoby driver like gamer, loft 9.25, face 0.5 open, length 45 1/4, swing d3",
    player: "oxtoby",
    club: "driver",
    writes: { squaredLoftDeg: 9.25, soledFaceDeg: 0.5, lengthMm: 1149.35 },
    keeps: ["seatedLieDeg"],
  },
  { text: "build wexcombe driver like gamer", player: "wexcombe", club: "driver", keeps: allOfIt },
  {
    text: "build halloway driver like gamer, loft 9.4, face 1 open, swing d3",
    player: "halloway",
    club: "driver",
    writes: { squaredLoftDeg: 9.4, soledFaceDeg: 1 },
    keeps: ["seatedLieDeg"],
  },
  { text: "build pellwether driver like gamer, stamped 9", player: "pellwether", club: "driver", writes: { stampedLoftDeg: 9 }, keeps: woodLike },
  { text: "build toll driver like gamer, loft 6.5", player: "toll", club: "driver", writes: { squaredLoftDeg: 6.5 }, keeps: woodLike },
  { text: "build toll 3w like gamer, loft 14.5", player: "toll", club: "3w", writes: { squaredLoftDeg: 14.5 }, keeps: woodLike },
  {
    text: "build halloway 3w like gamer, sleeve strong 1",
    player: "halloway",
    club: "3w",
    writes: { sleeveMark: "strong 1" },
    keeps: ["stampedLoftDeg"],
  },
  { text: "build prysallt 7w like gamer", player: "prysallt", club: "7w", keeps: allOfIt },
  {
    text: "build oxtoby 5w like gamer, stamped 18, sleeve weak ½",
    player: "oxtoby",
    club: "5w",
    writes: { stampedLoftDeg: 18, sleeveMark: "weak ½" },
  },
  { text: "build brandlow 3h like gamer, loft 19.5", player: "brandlow", club: "3h", writes: { squaredLoftDeg: 19.5 }, keeps: woodLike },
  { text: "build eddlethorn 3h like gamer, swing d4", player: "eddlethorn", club: "3h", keeps: allOfIt },
  { text: "build toll 7i like gamer", player: "toll", club: "7i", keeps: allOfIt },
  {
    text: "build halloway 7i like gamer, loft 36, lie 59",
    player: "halloway",
    club: "7i",
    writes: { squaredLoftDeg: 36, seatedLieDeg: 59 },
  },
  {
    text: "build mundoora 5i like gamer, headweight 262",
    player: "mundoora",
    club: "5i",
    writes: { headMassG: 262 },
    keeps: ["stampedLoftDeg", "squaredLoftDeg", "seatedLieDeg"],
  },
  {
    text: "build oxtoby sw like gamer, loft 55, bounce 8",
    player: "oxtoby",
    club: "sw",
    writes: { squaredLoftDeg: 55, bounceDeg: 8, grind: "heel-relieved" },
    keeps: ["seatedLieDeg"],
  },
  {
    text: "build toll lw like gamer, head tarn heel-relieved, loft 59, bounce 7",
    player: "toll",
    club: "lw",
    writes: { headModel: "Tarn Heel-Relieved", squaredLoftDeg: 59, bounceDeg: 7 },
    keeps: ["seatedLieDeg"],
  },
  {
    text: "build halloway lw like gamer, loft 58.5",
    player: "halloway",
    club: "lw",
    writes: { squaredLoftDeg: 58.5, grind: "full" },
    keeps: ["seatedLieDeg"],
  },
  {
    text: "build wexcombe sw like gamer, loft 57",
    player: "wexcombe",
    club: "sw",
    writes: { squaredLoftDeg: 57, grind: "wide" },
    keeps: ["seatedLieDeg"],
  },
  {
    text: "build oxtoby putter like gamer, headweight 352",
    player: "oxtoby",
    club: "putter",
    writes: { headMassG: 352 },
    keeps: ["stampedLoftDeg", "squaredLoftDeg", "seatedLieDeg"],
  },
  {
    text: "build halloway putter like gamer, swing d5",
    player: "halloway",
    club: "putter",
    keeps: ["stampedLoftDeg", "squaredLoftDeg", "seatedLieDeg"],
  },
  {
    text: "build prysallt putter like gamer",
    player: "prysallt",
    club: "putter",
    keeps: ["stampedLoftDeg", "squaredLoftDeg", "seatedLieDeg", "headMassG"],
  },
  {
    text: "swap linnea driver like gamer",
    player: "linnea-ashgrave",
    club: "driver",
    writes: { preferredMark: "weak ½" },
    keeps: allOfIt,
  },
  {
    text: "swap toll driver head cairn 9, loft 9.0",
    player: "toll",
    club: "driver",
    writes: { stampedLoftDeg: 9, squaredLoftDeg: 9 },
    keeps: woodLike,
  },
  {
    text: "swap oxtoby 3w loft 14.4, face 0.2 open",
    player: "oxtoby",
    club: "3w",
    writes: { squaredLoftDeg: 14.4, soledFaceDeg: 0.2 },
    keeps: ["seatedLieDeg"],
  },
];

/** Its best head is held by the swap of the orders in progress. */
const besideTheSwap: Order = {
  text: "build ferreval driver like gamer, loft 9, face 0.95 open",
  player: "ferreval",
  club: "driver",
  writes: { squaredLoftDeg: 9, soledFaceDeg: 0.95 },
  keeps: ["seatedLieDeg"],
};

/** No head of the truck can be set so, in any way. */
const hopeless: readonly Order[] = [
  { text: "build halloway driver like gamer, stamped 12", player: "halloway", club: "driver", writes: { stampedLoftDeg: 12 }, keeps: woodLike },
  {
    text: "build pellwether lw like gamer, head tarn wide",
    player: "pellwether",
    club: "lw",
    writes: { headModel: "Tarn Wide" },
    keeps: ["squaredLoftDeg", "seatedLieDeg"],
  },
  {
    text: "build oxtoby 7i like gamer, sleeve strong 1",
    player: "oxtoby",
    club: "7i",
    writes: { sleeveMark: "strong 1" },
    keeps: ["stampedLoftDeg"],
  },
];

const now = venueTime("2027-05-03T10:30");
let week: Awaited<ReturnType<typeof demoWeek>>;
/** Heads that the orders in progress hold or have used. */
let taken: ReadonlySet<string>;
/** Those of them whose work has begun. */
let used: ReadonlySet<string>;
beforeAll(async () => {
  week = await demoWeek();
  const rows = week.db
    .select({ serial: head.serial, state: reservation.state })
    .from(reservation)
    .innerJoin(head, eq(head.id, reservation.headId))
    .all();
  taken = new Set(rows.map(({ serial }) => serial));
  used = new Set(rows.filter(({ state }) => state === "consumed").map(({ serial }) => serial));
});
afterAll(() => week.close());

/** The club as the order's post would plan it; nothing is written, so that every order finds the same week. */
function planned(text: string): PlannedClub {
  const { db } = week;
  const truck = allTrucks(db).find(({ name }) => name === "Plover")?.id;
  const zone = "Europe/Lisbon";
  const actor = { person: null, name: "", roles: [], truck: truck ?? null, zone, ownZone: zone, lengthUnit: "in" } as const;
  const reading = readMessage(text, readingContext(db, actor, now));
  const clubs = truck === undefined || reading.kind !== "order" ? [] : planOrder(db, { request: reading.request, truckId: truck, now });
  const [club] = clubs;
  if (club === undefined || clubs.length > 1) {
    throw new Error(`not one club: ${text} ${JSON.stringify(reading)}`);
  }
  return club;
}

const specs = rowsOf("spec-clubs");
const players = rowsOf("players");
const models = rowsOf("head-models");

const FULCRUM_MM = 14 * 25.4;
const GRAM_MM_A_POINT = 49.6117 * 25.4;

/**
 * The head mass that swing weight needs rests on shaft, grip and cuts, which are no part of this test: it is taken from the
 * plan as given. Near enough is half a point of it, or half a gram of a mass that is written or kept.
 */
function massOf(wish: HeadWish & Order["writes"], plan: PlannedClub["plan"], gamer: Cells | undefined): HeadWish["mass"] {
  if (wish.headMassG != null) {
    return { wantedG: wish.headMassG, toleranceG: 0.5 };
  }
  const model = models.find(({ name }) => name === wish.headModel);
  const armMm = (wish.lengthMm ?? numberIn(gamer, "length_mm") ?? 0) - (numberIn(model, "centre_above_ground_mm") ?? 0) - FULCRUM_MM;
  const wantedG = plan?.headMassWantedG ?? null;
  return wantedG === null ? null : { wantedG, toleranceG: (0.5 * GRAM_MM_A_POINT) / armMm };
}

/** Every setting of every head, by the loop. */
function tried({ player, club, writes = {}, keeps = [] }: Order, plan: PlannedClub["plan"], gone: ReadonlySet<string>): readonly BruteSetting[] {
  const gamer = specs.findLast((row) => row.player === player && row.club === club && row.set === "bag");
  const hand = players.find(({ handle }) => handle === player)?.hand ?? "";
  const kept = Object.fromEntries(keeps.map((name) => [name, numberIn(gamer, columns[name])]));
  const wish = { player, hand, headModel: gamer?.head_model ?? "", ...kept, ...writes };
  return everySetting({ ...wish, mass: massOf(wish, plan, gamer) }, gone);
}

const asTried = ({ choice }: NonNullable<PlannedClub["plan"]>): Partial<BruteSetting> => ({
  serial: choice.head.serial,
  sleeve: choice.sleeve?.name ?? null,
  mark: choice.mark,
  loftBendDeg: expect.closeTo(choice.bend?.loftChangeDeg ?? 0, 6),
  lieBendDeg: expect.closeTo(choice.bend?.lieChangeDeg ?? 0, 6),
  score: expect.closeTo(choice.score, 6),
});

describe("the head of an order of the demo week", () => {
  it.each(orders)("is what a plain loop over the files finds, none other of a lower band of scores: $text", (order) => {
    const { plan } = planned(order.text);
    const settings = tried(order, plan, taken);
    expect(settings[0]).toMatchObject(plan === null ? { serial: "none" } : asTried(plan));
    expect(Math.floor((plan?.choice.score ?? Number.NaN) / 0.25 + 1e-9)).toBe(Math.min(...settings.map(({ band }) => band)));
  });

  it("is the next one where another order holds the best, which is named", () => {
    const { plan, beside } = planned(besideTheSwap.text);
    const [best] = tried(besideTheSwap, plan, used);
    expect(taken).toContain(best?.serial);
    expect(tried(besideTheSwap, plan, taken)[0]).toMatchObject(plan === null ? { serial: "none" } : asTried(plan));
    expect(beside.yields?.serial).toBe(best?.serial);
  });

  it.each(hopeless)("is none where the loop finds none: $text", (order) => {
    const { plan, faults } = planned(order.text);
    expect(tried(order, plan, taken)).toEqual([]);
    expect(plan).toBeNull();
    expect(faults).toEqual([expect.objectContaining({ code: "short", shortages: [expect.objectContaining({ part: "head" })] })]);
  });
});
