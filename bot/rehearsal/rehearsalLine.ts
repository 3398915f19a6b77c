import type { PostName } from "./rehearsalWorld.ts";

/** What one line (with its continuations) asks of the rehearsal. */
export type RehearsalLine =
  | { readonly kind: "nothing" | "send" | "again" | "quit" }
  | { readonly kind: "message" | "edit"; readonly text: string }
  | { readonly kind: "command"; readonly text: string }
  | { readonly kind: "person" | "channel"; readonly name: string }
  | { readonly kind: "forward"; readonly ms: number }
  | { readonly kind: "moment"; readonly written: string }
  | { readonly kind: "press" | "choose"; readonly number: number; readonly on: PostName | null }
  | { readonly kind: "answer"; readonly number: number; readonly text: string }
  | { readonly kind: "attach"; readonly file: string };

const MINUTE_MS = 60_000;
const unitMs: Readonly<Record<string, number>> = { m: MINUTE_MS, h: 60 * MINUTE_MS, d: 24 * 60 * MINUTE_MS };

interface Shape {
  readonly pattern: RegExp;
  readonly read: (first: string, second: string, third: string, fourth: string) => RehearsalLine;
}

/** Each verb with the shape of its whole line; the first that fits is taken. */
const shapes: readonly Shape[] = [
  { pattern: /^()$/, read: () => ({ kind: "nothing" }) },
  { pattern: /^\/\//, read: () => ({ kind: "nothing" }) },
  { pattern: /^\\(.*)$/s, read: (text) => ({ kind: "message", text }) },
  { pattern: /^\/(.*)$/s, read: (text) => ({ kind: "command", text }) },
  { pattern: /^@(\S+)$/, read: (name) => ({ kind: "person", name: name.toLowerCase() }) },
  { pattern: /^#(\S+)$/, read: (name) => ({ kind: "channel", name: name.toLowerCase() }) },
  { pattern: /^\+(\d{1,5})([mhd])$/, read: (count, unit) => ({ kind: "forward", ms: Number(count) * (unitMs[unit] ?? 0) }) },
  { pattern: /^=(\d{4}-\d\d-\d\dT\d\d:\d\d)$/, read: (written) => ({ kind: "moment", written }) },
  {
    pattern: /^(press|choose) (\d{1,3})(?: on (?:order (\d{1,9})|(\S{1,64})))?$/,
    read: (verb, number, order, ref) => ({ kind: verb === "press" ? "press" : "choose", number: Number(number), on: postName(order, ref) }),
  },
  { pattern: /^answer (\d{1,3}) (.+)$/s, read: (number, text) => ({ kind: "answer", number: Number(number), text }) },
  { pattern: /^edit (.+)$/s, read: (text) => ({ kind: "edit", text }) },
  { pattern: /^attach (\S[^\n]*)$/, read: (file) => ({ kind: "attach", file }) },
  { pattern: /^send$/, read: () => ({ kind: "send" }) },
  { pattern: /^again$/, read: () => ({ kind: "again" }) },
  { pattern: /^quit$/, read: () => ({ kind: "quit" }) },
];

/**
 * Reads a line of the rehearsal. A verb counts only when it is the whole line; everything else is a message, and a
 * leading `\` makes anything one. Lines that are empty or begin with `//` are remarks of the script.
 */
export function readRehearsalLine(written: string): RehearsalLine {
  const line = written.trim();
  for (const { pattern, read } of shapes) {
    const match = pattern.exec(line);
    if (match !== null) return read(match[1] ?? "", match[2] ?? "", match[3] ?? "", match[4] ?? "");
  }
  return { kind: "message", text: line };
}

function postName(order: string, ref: string): PostName | null {
  if (order !== "") return { kind: "order", number: Number(order) };
  return ref === "" ? null : { kind: "ref", ref };
}
