import type { MeasuredValue, MessageReading } from "../../../bot/boundary/reading.ts";
import type { BuildRequest, Clauses } from "../../../core/buildSheet/buildRequest.ts";
import { players } from "./testContext.ts";

/** What a post means, in the words of a table: defaults left out, amounts as numbers, `by` and `same` said. */
export type Meaning = Readonly<Record<string, unknown>>;

const round = (value: number): number => Math.round(value * 1e6) / 1e6;

function plainValue(value: unknown): unknown {
  if (typeof value !== "object" || value === null || !("kind" in value)) return typeof value === "number" ? round(value) : value;
  if (value.kind === "exactly" && "value" in value) return round(Number(value.value));
  if (value.kind === "by" && "value" in value) return { by: round(Number(value.value)) };
  if (value.kind === "mark" && "mark" in value) return value.mark;
  if (value.kind === "turn" && "marks" in value) return { turn: value.marks };
  return value.kind;
}

const plainClauses = (clauses: Clauses): Meaning =>
  Object.fromEntries(Object.entries(clauses).map(([name, wish]: [string, { readonly value: unknown }]) => [name, plainValue(wish.value)]));

function plainBy(by: BuildRequest["by"]): unknown {
  if (by === null) return null;
  if (by.value.kind === "at") return new Date(by.value.at).toISOString().slice(0, 16);
  return by.value.kind === "tee" ? `tee ${by.value.offsetMin}` : "now";
}

function plainLike(like: BuildRequest["like"]): unknown {
  if (like === null) return null;
  return like.from === "order" ? `order ${like.number}` : like.from;
}

const nameOf = (number: number): string =>
  players
    .find(({ id }) => id === number)
    ?.name.split(" ")
    .at(-1) ?? "?";
const withoutDefaults = (meaning: Meaning): Meaning => {
  const kept = Object.entries(meaning).filter(([, value]) => value !== null && value !== false && !(Array.isArray(value) && value.length === 0));
  return Object.fromEntries(kept.filter(([name, value]) => !(name === "count" && value === 1) && !(name === "purpose" && value === "gamer")));
};

/** `7i squaredLoftDeg found`, `driver 2 logo`: whose, what and when, with the value. */
function measuredAs(measured: MeasuredValue): readonly [string, unknown] {
  const { club, copy, stage } = measured;
  const [what, value] = measured.kind === "quantity" ? [measured.quantity, round(measured.value)] : [measured.look, measured.seen];
  return [[club, copy, what, stage === "found" ? stage : null].filter((word) => word !== null).join(" "), value];
}

export function meaningOf(reading: MessageReading): Meaning {
  const mended = "mendings" in reading ? reading.mendings.map(({ typed, read }) => `${typed} > ${read}`) : [];
  if (reading.kind === "order") {
    const { request } = reading;
    const { clauses, by, like, clubs, out, player, kind, ...rest } = request;
    const head = { order: kind, player: nameOf(player), clubs: clubs.join(" "), out: out.join(" ") || null, like: plainLike(like), by: plainBy(by) };
    return withoutDefaults({ ...head, ...rest, clauses: plainClauses(clauses), go: reading.go, mended });
  }
  if (reading.kind === "revise") {
    const { kind, number, clauses, by, like, ...rest } = reading;
    return withoutDefaults({
      ...rest,
      [kind]: number,
      clauses: plainClauses(clauses),
      by: plainBy(by),
      like: plainLike(like),
      mendings: null,
      mended,
    });
  }
  if (reading.kind === "problems") {
    const asked = reading.problems.map(({ code, word, options }) =>
      [code, word, ...options.slice(0, 1).map(({ replacement }) => replacement)].join(" | "),
    );
    return withoutDefaults({ asked, mended });
  }
  if (reading.kind === "measured") {
    const values = reading.values.map(measuredAs);
    return withoutDefaults({ measured: reading.number, values: Object.fromEntries(values), mended });
  }
  if (reading.kind === "question") {
    const { question } = reading;
    const player = "player" in question && question.player !== null ? nameOf(question.player) : null;
    return withoutDefaults({ ...question, player });
  }
  if (reading.kind === "hint") return { hint: `${nameOf(reading.player)} ${reading.club}` };
  return reading.kind === "silence" ? { silence: true } : withoutDefaults({ [reading.kind]: reading.number, reason: reading.reason });
}
