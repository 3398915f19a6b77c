import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { z } from "zod";

const tableShape = z.object({
  source: z.string().min(1),
  /** Null when the rows were worked from the formulas and there is no original. */
  address: z.string().nullable(),
  /** Whether the original was opened, or only an excerpt of it seen. */
  opened: z.boolean(),
  quantity: z.string().min(1),
  unit: z.string().min(1),
  tolerance: z.unknown().refine((tolerance) => tolerance !== undefined, "a tolerance"),
  reason: z.string().min(1),
});

export type PublishedTable = z.infer<typeof tableShape>;

/**
 * The tables of `fixtures/published` by name without the ending.
 *
 * @param root - the project's folder
 * @throws when one lacks its source, unit, tolerance or reason
 */
export function publishedTables(root: string): ReadonlyMap<string, PublishedTable> {
  const folder = path.join(root, "fixtures/published");
  return new Map(
    readdirSync(folder)
      .filter((name) => name.endsWith(".json"))
      .sort()
      .map((name) => [name.slice(0, -".json".length), tableShape.parse(JSON.parse(readFileSync(path.join(folder, name), "utf8")))]),
  );
}
