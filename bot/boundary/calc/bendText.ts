import { withLieNamed } from "./angleText.ts";

const NUMBER = String.raw`\d{1,2}(?:[.,]\d{1,3})?`;
/** Of a wedge, so never the top of a fraction. */
const LOFT = String.raw`\d{2}(?:[.,]\d{1,3})?`;
const wedgeToWedge = new RegExp(String.raw`\b(${LOFT})/(${NUMBER}) ?(?:to|>|→) ?(${NUMBER})/(${NUMBER})(?![\d/])`, "gi");
const wedgeToLoft = new RegExp(String.raw`\b(${LOFT})/(${NUMBER})(?: ?(?:to|>|→) ?(${NUMBER})| (${LOFT}))(?![\d/])`, "gi");
const loftToLoft = new RegExp(String.raw`(?<![\d.-])(${LOFT})-(${LOFT})(?![\d/.-])`, "g");
/** Before the word: `8 bounce`, where no other number follows. */
const bounceBehind = /(?<![\d.,/])(1?\d)°? bounce\b(?! ?[=:]?\s?\d)/gi;
const wedge = new RegExp(String.raw`\b(${LOFT})/(${NUMBER})(?![\d/])`, "gi");
const bounceAmount = new RegExp(String.raw`\b(${NUMBER})°? (less|more) bounce\b`, "gi");

/** A loft and its bounce, as stamped on wedges; a fraction has the smaller number first. */
const named = (whole: string, loft: string, bounce: string): string =>
  Number.parseFloat(loft) > Number.parseFloat(bounce) ? `, loft ${loft} bounce ${bounce}, ` : whole;

/** What people say of a bend, with every number behind its name: `56/10` is loft 56 bounce 10, `1 upright` is of the lie. */
export const bendText = (written: string): string =>
  withLieNamed(written)
    .replace(wedgeToWedge, ", loft $1 to $3, bounce $2 to $4, ")
    .replace(wedgeToLoft, ", loft $1 to $3$4, bounce $2, ")
    .replace(wedge, named)
    .replace(loftToLoft, "$1 to $2")
    .replace(bounceAmount, ", bounce $1 $2, ")
    .replace(bounceBehind, ", bounce $1, ")
    .replace(/\bat the same (?:loft|lie)\b/gi, ", ");
