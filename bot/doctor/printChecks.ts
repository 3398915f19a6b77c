import { accessSync, constants } from "node:fs";
import { createRequire } from "node:module";
import { instant } from "../../core/kinds.ts";
import type { FileRecipe } from "../chat/types.ts";
import { type Check, fault, ok, type Verdict } from "./finding.ts";

const require = createRequire(import.meta.url);
const REMEDY = "Run npm ci again";
const DAY_MS = 24 * 60 * 60_000;

/** The fonts can be read, and a page and a picture can be drawn with them. */
export const printChecks = (resolveFont: (path: string) => string = require.resolve): readonly Check[] => [
  { name: "fonts", look: () => fonts(resolveFont) },
  { name: "pdf", look: () => drawn(sheet, "%PDF-", "a page") },
  { name: "png", look: () => drawn(board, "\u0089PNG", "a picture") },
];

function fonts(resolveFont: (path: string) => string): Verdict {
  const names = ["DejaVuSansCondensed.ttf", "DejaVuSansCondensed-Bold.ttf"];
  const unread = names.filter((name) => !isReadable(() => resolveFont(`dejavu-fonts-ttf/ttf/${name}`)));
  return unread.length === 0 ? ok("both can be read") : fault(`${unread.join(", ")} cannot be read`, REMEDY);
}

function isReadable(find: () => string): boolean {
  try {
    accessSync(find(), constants.R_OK);
    return true;
  } catch {
    return false;
  }
}

async function drawn(recipe: FileRecipe, start: string, what: string): Promise<Verdict> {
  try {
    // Loaded here, so that a part that is not installed is a line of its own.
    const { drawFile } = await import("../prints/drawFile.ts");
    const { bytes } = await drawFile(recipe);
    return Buffer.from(bytes).toString("latin1").startsWith(start) ? ok(`${what} was drawn`) : fault(`${what} came out empty`, REMEDY);
  } catch (error) {
    return fault(`${what} cannot be drawn: ${error instanceof Error ? error.message : String(error)}`, REMEDY);
  }
}

const sheet: FileRecipe = {
  name: "sheet",
  draw: "sheet",
  sheet: {
    title: "Check",
    subtitle: "",
    hand: "",
    due: null,
    printedAt: instant(0),
    headings: { steps: "Steps", measure: "Measure", notes: "Notes", club: "Club" },
    first: [],
    columns: [],
    clubs: [{ name: "Driver", setting: null, lead: [], parts: [], row: [], targets: [] }],
    steps: [],
    notes: [],
    advice: "",
  },
};

const board: FileRecipe = {
  name: "board",
  draw: "readyBoard",
  board: { truck: "Check", zone: "UTC", now: 0, from: 0, to: DAY_MS, rollOutAt: null, closed: [], rows: [], orders: [] },
};
