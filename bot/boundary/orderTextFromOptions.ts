const LONGEST_VALUE = 200;
const LONGEST_TEXT = 1_990;

/** Options whose name is the clause's own word, in the order a card shows them. */
const clauseNames = [
  "like",
  "head",
  "stamped",
  "loft",
  "lie",
  "face",
  "bounce",
  "grind",
  "length",
  "swing",
  "total",
  "headweight",
  "shaft",
  "flex",
  "tip",
  "logo",
  "spine",
  "ferrule",
  "sleeve",
  "screw",
  "melt",
  "lead",
  "grip",
  "rib",
  "wraps",
  "neck",
  "line",
  "for",
  "by",
  "to",
] as const;

/** One line, so that a value cannot begin a line of its own. */
function oneLine(value: string | undefined): string {
  return (value ?? "")
    .slice(0, LONGEST_VALUE)
    .replace(/[\s\u2028\u2029]+/g, " ")
    .trim();
}

/**
 * Writes the values of a command or form as the message that says the same, so that every way of ordering is read by one
 * reader. Empty values and unknown names are left out; `order` makes it a change of that order; `go` confirms.
 */
export function orderTextFromOptions(options: Readonly<Record<string, string>>): string {
  const written = (name: string): string => (Object.hasOwn(options, name) ? oneLine(options[name]) : "");
  const count = written("count");
  const order = written("order");
  const head = [written("kind") || "build", written("player"), count === "1" ? "" : count, written("club")];
  const first = order === "" ? head.filter((part) => part !== "").join(" ") : order;
  const clauses = clauseNames.flatMap((name) => clauseOf(name, written(name)));
  const free = ["stamp", "note"].flatMap((name) => clauseOf(name, written(name)));
  const urgent = /^(yes|true|1)$/i.test(written("urgent")) ? ["asap"] : [];
  const go = /^(yes|true|1|go)$/i.test(written("go")) ? ["go"] : [];
  return [first, ...clauses, ...urgent, ...free, ...go].join("\n").slice(0, LONGEST_TEXT);
}

function clauseOf(name: string, value: string): readonly string[] {
  if (value === "") return [];
  const isWhole = value.toLowerCase().startsWith(`${name} `);
  if (name === "by" && /^(now|asap)$/i.test(value)) return [value];
  return [isWhole ? value : `${name} ${value}`];
}
