import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import * as core from "../../core/index.ts";
import { checksInTests } from "./checksInTests.ts";
import { publicFunctions } from "./publicFunctions.ts";
import { publishedTables } from "./publishedTables.ts";
import { sourcesPage } from "./sourcesPage.ts";

/** Writes the page of sources; with `--check` it only says whether the page is the one that would be written. */
const root = fileURLToPath(new URL("../..", import.meta.url));
const file = fileURLToPath(new URL("../../fixtures/published/SOURCES.md", import.meta.url));
const page = sourcesPage(publicFunctions(root, new Set(Object.keys(core))), checksInTests(root), publishedTables(root));

if (!process.argv.includes("--check")) {
  writeFileSync(file, page);
  console.log(page.split("\n")[4]);
} else if (!existsSync(file) || readFileSync(file, "utf8") !== page) {
  console.error("fixtures/published/SOURCES.md is not what the tests say: run npm run sources");
  process.exitCode = 1;
}
