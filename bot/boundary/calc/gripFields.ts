import { numberAt } from "../numberAt.ts";
import { goesOn, typedBetween } from "./calcWords.ts";
import { fieldNames, nameAt } from "./fieldNames.ts";
import { handField } from "./handField.ts";
import { reworded } from "./reworded.ts";

const sizes = ["-1/64", "standard", "+1/64", "+1/32", "+3/64", "+1/16", "+1/8"] as const;
const bore = { kind: "number", measure: "length", min: 10, max: 22, usual: 15.24 } as const;
const outer = { kind: "number", measure: "length", min: 15, max: 50, usual: 22.86 } as const;
const layers = { kind: "number", measure: "count", min: 0, max: 30, usual: 1 } as const;

/** A grip on a shaft: diameters at 2 and 6 in below the cap, layers of tape under each hand, and the size wished. */
export const gripFields = {
  core: { ...bore, also: ["grip core"] },
  butt: { ...bore, also: ["butt diameter", "shaft diameter", "butt at 2"] },
  "butt at 6": { ...bore, also: ["shaft at 6", "lower butt"] },
  nominal: { ...outer, also: ["outer", "od", "nominal at 2"] },
  "nominal at 6": { ...outer, also: ["outer at 6", "od at 6"] },
  layers: { ...layers, also: ["layer", "wraps", "wrap"] },
  upper: { ...layers, also: ["upper hand", "upper layers", "layers upper"] },
  lower: { ...layers, also: ["lower hand", "lower layers", "layers lower"] },
  tape: { kind: "number", measure: "length", min: 0.02, max: 1, usual: 0.127, also: ["tape thickness", "thickness"] },
  "tape length": { kind: "number", measure: "length", min: 50, max: 350, also: ["wrap length"] },
  size: {
    kind: "word",
    words: sizes,
    spelled: {
      std: "standard",
      undersize: "-1/64",
      "1/64": "+1/64",
      "1/32": "+1/32",
      "3/64": "+3/64",
      "1/16": "+1/16",
      "1/8": "+1/8",
      midsize: "+1/16",
      jumbo: "+1/8",
    },
    bare: true,
    also: ["wanted", "want", "wants", "wish", "to reach"],
  },
  diameter: { ...outer, also: ["to size"] },
  kind: { kind: "word", words: ["mens", "ladies"], spelled: { men: "mens", "men's": "mens", women: "ladies", womens: "ladies" }, bare: true },
  hand: handField,
  cap: { kind: "number", measure: "length", min: 0, max: 12.7, also: ["grip cap"] },
} as const;

const names = fieldNames(gripFields);
const diameters = new Set(["core", "butt", "butt at 6", "nominal", "nominal at 6", "diameter"]);
/** Core 580 and tape 5 are thousandths of an inch, butt 15.2 is mm: no club part has such numbers of inches. */
const LEAST_THOUSANDTHS = 100;
const LEAST_MM = 5;
const LEAST_TAPE_THOUSANDTHS = 1;

/** `2 wraps` is said as often as `wraps 2`. */
const layersBehind =
  /(?<![\w./,+-])(?<!\b(?:layers?|wraps?|upper|lower|hand|is)[ =:]{1,3})(\d{1,2}|one|two|three|four)( more| extra)? (?:layers?|wraps?)\b(?! ?[=:]?\s?\d)/gi;

/** A diameter without a unit in the one it must be in, a number of layers behind its name. */
export const gripText = (text: string): string =>
  reworded(
    text.replace(layersBehind, (_whole, count: string, more?: string) => `, layers ${more === undefined ? "" : "+"}${count}, `),
    (source, at) => {
      const named = nameAt(source, at, names);
      const hit = named === null || !goesOn(source, named.next) ? null : numberAt(source.words, named.next);
      if (named === null || hit === null || hit.fraction || hit.signed || hit.unit === "in" || hit.unit === "mm") return null;
      const isTape = named.name === "tape";
      const isSize = named.name === "size";
      if (!isTape && !isSize && !diameters.has(named.name)) return null;
      const isThousandths = hit.value >= (isTape ? LEAST_TAPE_THOUSANDTHS : LEAST_THOUSANDTHS);
      const written = isThousandths ? `${hit.value / 1000} in` : `${hit.value} ${!isTape && hit.value >= LEAST_MM ? "mm" : "in"}`;
      const name = isSize ? "diameter" : typedBetween(source, at, named.next);
      const isCm = goesOn(source, hit.numberEnd) && source.words[hit.numberEnd]?.text === "cm";
      return isCm ? null : { words: `${name} ${written}`, next: hit.numberEnd };
    },
  );
