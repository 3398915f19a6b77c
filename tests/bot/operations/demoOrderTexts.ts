import type { HeadWish } from "../../support/bruteWish.ts";

/** What the text of an order means, worked out by hand: what it writes, and what it keeps of the club it is like. */
export interface Order {
  readonly text: string;
  readonly player: string;
  readonly club: string;
  readonly writes?: Partial<HeadWish> & { readonly headMassG?: number; readonly lengthMm?: number };
  readonly keeps?: readonly (keyof typeof columns)[];
}

export const columns = {
  stampedLoftDeg: "stamped_loft_deg",
  squaredLoftDeg: "squared_loft_deg",
  soledFaceDeg: "soled_face_deg",
  seatedLieDeg: "seated_lie_deg",
  headMassG: "head_mass_g",
} as const;
const woodLike = ["soledFaceDeg", "seatedLieDeg"] as const;
const allOfIt = ["stampedLoftDeg", "squaredLoftDeg", ...woodLike] as const;

/** Both hands, every family; true loft, face, lie, bounce, stamp, mark, grind, swing weight and head mass. */
export const orders: readonly Order[] = [
  {
    text: "build oxtoby driver like gamer, loft 9.25, face 0.5 open, length 45 1/4, swing d3",
    player: "oxtoby",
    club: "driver",
    writes: { squaredLoftDeg: 9.25, soledFaceDeg: 0.5, lengthMm: 1149.35 },
    keeps: ["seatedLieDeg"],
  },
  {
    text: "build wexcombe driver like gamer, headweight 215",
    player: "wexcombe",
    club: "driver",
    writes: { headMassG: 215 },
    keeps: allOfIt,
  },
  {
    text: "build mizukoro driver like gamer, loft 8.75, face 0 open, swing d7",
    player: "mizukoro",
    club: "driver",
    writes: { squaredLoftDeg: 8.75, soledFaceDeg: 0 },
    keeps: ["seatedLieDeg"],
  },
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
    text: "build toll putter like gamer, headweight 373",
    player: "toll",
    club: "putter",
    writes: { headMassG: 373 },
    keeps: ["stampedLoftDeg", "squaredLoftDeg", "seatedLieDeg"],
  },
  {
    text: "build halloway putter like gamer, swing d5",
    player: "halloway",
    club: "putter",
    keeps: ["stampedLoftDeg", "squaredLoftDeg", "seatedLieDeg"],
  },
  {
    text: "build linnea putter like gamer",
    player: "linnea-ashgrave",
    club: "putter",
    keeps: ["stampedLoftDeg", "squaredLoftDeg", "seatedLieDeg", "headMassG"],
  },
  {
    text: "swap mizukoro driver like gamer, loft 10, swing d1",
    player: "mizukoro",
    club: "driver",
    writes: { squaredLoftDeg: 10, preferredMark: "weak ½" },
    keeps: woodLike,
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
export const besideTheSwap: Order = {
  text: "build ferreval driver like gamer, loft 9, face 0.95 open",
  player: "ferreval",
  club: "driver",
  writes: { squaredLoftDeg: 9, soledFaceDeg: 0.95 },
  keeps: ["seatedLieDeg"],
};

/** No head of the truck can be set so, in any way. */
export const hopeless: readonly Order[] = [
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
