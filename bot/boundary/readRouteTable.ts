import { parse } from "csv-parse/sync";
import { z } from "zod";
import type { StepKind } from "../../core/bench/benchTypes.ts";
import { type RouteRow, stepKinds } from "../../core/bench/routeRows.ts";

export type ReadRouteTable =
  | { readonly kind: "rows"; readonly rows: readonly RouteRow[] }
  | { readonly kind: "faults"; readonly lines: readonly string[] };

const isKind = (text: string): text is StepKind => stepKinds.some((kind) => kind === text);
const kind = z.string().refine(isKind, { error: `one of: ${stepKinds.join(", ")}` });
const number = z
  .string()
  .refine((text) => text.trim() !== "" && Number.isFinite(Number(text)), { error: "a number" })
  .transform(Number);
const orNothing = z.union([z.literal("").transform(() => undefined), number]);

/** One row as written; `wait` is empty for hands-on work, `yes`, or the sheet that sets it. */
const row = z.object({
  kind,
  min: number,
  after: z
    .string()
    .transform((text) => text.split(/[;\s]+/).filter((part) => part !== ""))
    .pipe(z.array(kind)),
  wait: z.enum(["", "yes", "adhesiveHandleMin", "gripHandleMin", "walkMin"], { error: "empty, yes, adhesiveHandleMin, gripHandleMin or walkMin" }),
  at_least: orNothing.optional(),
  set_up_share: orNothing.optional(),
});

function rowOf({ kind: step, min, after, wait, at_least: atLeastMin, set_up_share: setUpShare }: z.infer<typeof row>): RouteRow {
  const waits = wait === "" ? {} : { wait: { ...(wait === "yes" ? {} : { sheet: wait }), ...(atLeastMin === undefined ? {} : { atLeastMin }) } };
  return { kind: step, min, after, ...waits, ...(setUpShare === undefined ? {} : { setUpShare }) };
}

/** Reads a route as a table with a head line: kind, min, after (steps apart by `;`), wait, at_least, set_up_share. */
export function readRouteTable(text: string): ReadRouteTable {
  let records: readonly Record<string, string>[];
  try {
    records = parse(text, { columns: true, trim: true, skip_empty_lines: true, relax_column_count: true });
  } catch {
    return { kind: "faults", lines: ["Not read as a table: a head line kind,min,after,wait,at_least,set_up_share and a row a step"] };
  }
  const read = records.map((record) => row.safeParse({ after: "", wait: "", ...record }));
  const lines = read.flatMap((one, at) =>
    one.success ? [] : one.error.issues.map((issue) => `row ${at + 1}, ${String(issue.path[0])}: ${issue.message}`),
  );
  return lines.length > 0 || read.length === 0
    ? { kind: "faults", lines: lines.length > 0 ? lines : ["No rows under the head line"] }
    : { kind: "rows", rows: read.flatMap((one) => (one.success ? [rowOf(one.data)] : [])) };
}
