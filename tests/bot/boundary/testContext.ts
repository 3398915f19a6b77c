import type { NamedPlayer, ReadingContext } from "../../../bot/boundary/reading.ts";
import { type ClubName, type Id, id, instant } from "../../../core/kinds.ts";

const player = (number: number, name: string, aliases: readonly string[] = []): NamedPlayer => ({ id: id<"player">(number), name, aliases });

export const players: readonly NamedPlayer[] = [
  player(1, "Bram Oxtoby", ["bram"]),
  player(2, "Ysolde Quarrie"),
  player(3, "Marrick Toll"),
  player(4, "Noor Halloway"),
  player(5, "Teodor Wexcombe", ["teo"]),
  player(6, "Ansel Pruett"),
  player(7, "Corin Pruett"),
  player(8, "José Núñez-Vale"),
  player(9, "Liadan O'Tarn"),
];

/** The fourteen clubs Toll and the left-handed Halloway game, for messages about a set or a whole bag. */
export const fullBag = "driver 3w 5w 4h 4i 5i 6i 7i 8i 9i pw gw sw putter".split(" ") as ClubName[];
export const bagOf = (player: Id<"player">): readonly ClubName[] => (player === playerId("Toll") || player === playerId("Halloway") ? fullBag : []);

export const playerId = (lastName: string): Id<"player"> => players.find(({ name }) => name.endsWith(lastName))?.id ?? id<"player">(0);

/** Wednesday 5 May 2027, 13:20 in the venue's zone (one hour ahead of UTC). */
export const context: ReadingContext = {
  now: instant(Date.UTC(2027, 4, 5, 12, 20)),
  zone: "Europe/Lisbon",
  lengthUnit: "in",
  players,
  headModels: ["Cairn", "Cairn 3", "Rill", "Scree", "Tarn", "Beck"],
  shaftModels: ["Dunlin 50 R", "Dunlin 60 S", "Dunlin 60 X", "Sandpiper 70 X", "Sandpiper 70 S", "Curlew 120 S", "Curlew 120 X"],
  gripModels: ["Gorse Standard", "Gorse Standard Round", "Heather Midsize", "Heather Standard"],
  codeWords: [],
  sleeveMarks: ["standard", "strong ½", "strong 1", "weak ½", "weak 1", "upright", "flat", "strong far", "far"],
  grinds: ["full", "heel-relieved"],
  isOpenOrder: (number) => number === 57 || number === 3 || number === 9,
  bagOf: () => [],
};
