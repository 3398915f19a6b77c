import { headConstructions, headMaterials } from "../../../core/head/bendLimits.ts";
import { clubFamilies } from "../../../core/kinds.ts";

const ironNames = [1, 2, 3, 4, 5, 6, 7, 8, 9].flatMap((number) => [`${number}i`, `${number} iron`, `iron ${number}`]);
const woodNames = [3, 5, 7].flatMap((number) => [`${number}w`, `${number} wood`, `wood ${number}`]);
const hybridNames = [2, 3, 4, 5, 6].flatMap((number) => [`${number}h`, `${number} hybrid`, `hybrid ${number}`]);
const spelledAs = <W extends string>(names: readonly string[], word: W): Readonly<Record<string, W>> =>
  Object.fromEntries(names.map((name) => [name, word]));

/** Plain stainless without its number counts as 17-4, the hardest. */
const steels = {
  ...spelledAs(["carbon", "soft carbon", "mild steel", "1020", "1025"], "carbon steel"),
  ...spelledAs(["431", "stainless 431", "431 stainless steel", "431 steel"], "431 stainless"),
  ...spelledAs(["304", "stainless 304", "304 stainless steel", "304 steel"], "304 stainless"),
  ...spelledAs(["17-4", "17-4ph", "17-4 ph", "stainless 17-4", "17-4 stainless steel", "17-4 steel"], "17-4 stainless"),
  ...spelledAs(["stainless", "stainless steel"], "17-4 stainless"),
} as const;

/** How far one bend may go: past this it is a slip of the thumb. */
export const FARTHEST_BEND_DEG = 10;

export const bendFields = {
  material: { kind: "word", words: headMaterials, spelled: { ...steels, ti: "titanium" }, bare: true },
  construction: {
    kind: "word",
    words: headConstructions,
    spelled: {
      ...spelledAs(["multimaterial", "multi material"], "multi-material"),
      ...spelledAs(["bonded", "bonded wood", "bonded fairway wood"], "bonded fairway"),
    },
    bare: true,
  },
  club: {
    kind: "word",
    words: clubFamilies,
    spelled: {
      ...spelledAs(["pw", "gw", "aw", "sw", "lw", "pitching wedge", "gap wedge", "sand wedge", "lob wedge"], "wedge"),
      ...spelledAs([...ironNames, "irons"], "iron"),
      ...spelledAs([...woodNames, "wood", "fairway wood"], "fairway"),
      ...spelledAs(hybridNames, "hybrid"),
    },
    bare: true,
  },
  technician: { kind: "word", words: ["skilled"], spelled: { "skilled technician": "skilled" }, bare: true },
  "squared loft": {
    kind: "numbers",
    measure: "angle",
    min: -FARTHEST_BEND_DEG,
    max: 75,
    usual: 50,
    turns: "squaredLoftDeg",
    bare: true,
    asked: true,
    also: ["loft", "true loft", "bend", "bending"],
  },
  bounce: { kind: "numbers", measure: "angle", min: -FARTHEST_BEND_DEG, max: 30, usual: 10, asked: true },
  lie: { kind: "numbers", measure: "angle", min: -FARTHEST_BEND_DEG, max: 85, usual: 63, turns: "seatedLieDeg", asked: true },
  offset: { kind: "number", measure: "length", min: -20, max: 40, unit: "mm", asked: true },
  height: { kind: "number", measure: "length", min: 20, max: 120, unit: "mm", also: ["bend height", "bend point"] },
  bent: { kind: "numbers", measure: "angle", min: -FARTHEST_BEND_DEG, max: FARTHEST_BEND_DEG, usual: 1, also: ["bent loft", "was bent"] },
  "bent lie": { kind: "numbers", measure: "angle", min: -FARTHEST_BEND_DEG, max: FARTHEST_BEND_DEG, usual: 1 },
  maker: { kind: "number", measure: "angle", min: 0, max: FARTHEST_BEND_DEG, usual: 2, also: ["maker limit", "maker allows", "maker says"] },
} as const;
