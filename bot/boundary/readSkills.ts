import type { Skill } from "../../core/bench/benchTypes.ts";
import { foldText } from "./foldText.ts";

const named: Readonly<Record<string, Skill>> = { grinding: "grinding", "wood bending": "woodBending", stamping: "stamping" };

/** The words for the skills a bench asks for. */
export const skillNames: readonly string[] = Object.keys(named);

/** Reads a list of skills, parted by commas or semicolons: `grinding, wood bending`; `none` is an empty list. */
export function readSkills(
  written: string,
): { readonly kind: "skills"; readonly skills: readonly Skill[] } | { readonly kind: "unknown"; readonly word: string } {
  const text = foldText(written).trim();
  const words = text === "none" ? [] : text.split(/[,;]/).map((word) => word.trim().replace(/[\s-]+/g, " "));
  const unknown = words.find((word) => !Object.hasOwn(named, word));
  return unknown === undefined
    ? { kind: "skills", skills: [...new Set(words.flatMap((word) => named[word] ?? []))] }
    : { kind: "unknown", word: unknown };
}
