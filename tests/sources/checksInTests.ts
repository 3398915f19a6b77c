import { execFileSync } from "node:child_process";
import path from "node:path";
import { z } from "zod";

/** One thing outside core that a public function is held against. */
export interface OutsideCheck {
  readonly checked: string;
  readonly by: "table" | "library" | "law";
  /** The table's or library's name; empty for a law. */
  readonly name: string;
  readonly what: string;
  /** From the root of the project. */
  readonly testFile: string;
}

const kinds: readonly OutsideCheck["by"][] = ["table", "library", "law"];
const listed = z.array(z.object({ name: z.string(), file: z.string() }));
const title = /^(\w+) \| (table|library|law)(?: (\S+))? \| ([\s\S]*?) > /;

/**
 * The checks that the titles of core's tests tell of, each once.
 *
 * In the order of test files, functions and kinds, for the runner's own order is not always the same. The runner itself lists the tests, so that a table without rows or a check that is commented out is not found.
 *
 * @param root - the project's folder
 */
export function checksInTests(root: string): readonly OutsideCheck[] {
  const runner = path.join(root, "node_modules/vitest/vitest.mjs");
  const printed = execFileSync(process.execPath, [runner, "list", "--json", "--config", "tests/vitest.config.ts", "tests/core"], {
    cwd: root,
    encoding: "utf8",
    maxBuffer: 64 * 1024 * 1024,
  });
  const found = listed.parse(JSON.parse(printed.slice(printed.indexOf("[")))).flatMap(({ name, file }) => {
    const [, checked, by, named, what] = title.exec(name) ?? [];
    return checked === undefined || by === undefined || what === undefined
      ? []
      : [{ checked, by: by as OutsideCheck["by"], name: named ?? "", what, testFile: path.relative(root, file) }];
  });
  const once = new Map(found.map((check) => [[check.testFile, check.checked, kinds.indexOf(check.by), check.name, check.what].join("\n"), check]));
  return [...once].sort(([one], [other]) => (one < other ? -1 : 1)).map(([, check]) => check);
}
