import { type Answered, nothing, ok, refused } from "./answer.ts";
import { faultsOf } from "./bodies.ts";
import type { Asked } from "./faults.ts";

type Row = Readonly<Record<string, unknown>>;

/** Something a person pressed, called, chose, sent or typed, and what came back. */
export interface Interaction {
  readonly id: string;
  readonly token: string;
  readonly by: string;
  readonly channel: string;
  /** By the clock on the wall: the platform's patience is real. */
  readonly madeAtMs: number;
  /** The kind of the first answer; null as long as there is none. */
  first: number | null;
  isEphemeral: boolean;
  /** What the person sees in the end; null for a deferred or no answer. */
  shown: Row | null;
  files: Asked["files"];
  form: Row | null;
  choices: readonly { readonly name: string; readonly value: string }[] | null;
  isDeleted: boolean;
}

const ANSWER_WITHIN_MS = 3000;
const TOKEN_LIVES_MS = 15 * 60_000;
const EPHEMERAL = 64;
const DEFERRED = 5;
const MESSAGE = 4;
const CHOICES = 8;
const FORM = 9;
/** A submitted form cannot be answered by a form. */
export const SUBMIT = 5;

export interface Interactions {
  readonly all: readonly Interaction[];
  readonly make: (by: string, channel: string, type: number, late?: boolean) => Interaction;
  readonly callback: (id: string, asked: Asked) => Answered;
  readonly webhook: (token: string, asked: Asked) => Answered;
}

/** Deadlines, single answers and tokens as the platform enforces them; `complain` hears of every body it refuses. */
export function makeInteractions(complain: (line: string) => void): Interactions {
  const all: Interaction[] = [];
  const types = new Map<string, number>();
  let count = 0n;
  return {
    all,
    make: (by, channel, type, late = false) => {
      count += 1n;
      const madeAtMs = late ? Date.now() - ANSWER_WITHIN_MS - 1 : Date.now();
      const id = ((BigInt(Date.now() - 1_420_070_400_000) << 22n) + (count % 4_194_304n)).toString();
      const made: Interaction = {
        ...{ id, token: `token-${id}-${count}`, by, channel, madeAtMs, first: null, isEphemeral: false },
        ...{ shown: null, files: [], form: null, choices: null, isDeleted: false },
      };
      types.set(id, type);
      all.push(made);
      return made;
    },
    callback: (id, asked) => {
      const found = all.find((one) => one.id === id);
      if (found === undefined || (found.first === null && Date.now() - found.madeAtMs > ANSWER_WITHIN_MS)) {
        return refused(404, 10062, "Unknown interaction");
      }
      if (found.first !== null) {
        return refused(400, 40060, "Interaction has already been acknowledged.");
      }
      const type = Number(asked.body.type);
      const faults = [
        ...faultsOf(`callback ${type}`, asked.body),
        ...(type === FORM && types.get(id) === SUBMIT ? ["a form answered by a form"] : []),
      ];
      if (faults.length > 0) {
        complain(`callback: ${faults.join("; ")}`);
        return refused(400, 50035, "Invalid Form Body", { errors: {} });
      }
      take(found, type, (asked.body.data ?? {}) as Row, asked.files);
      return nothing;
    },
    webhook: (token, asked) => {
      const found = all.find((one) => one.token === token);
      if (found === undefined || Date.now() - found.madeAtMs > TOKEN_LIVES_MS) {
        return refused(401, 50027, "Invalid Webhook Token");
      }
      if (found.first === null || found.isDeleted) {
        return refused(404, 10015, "Unknown Webhook");
      }
      if (asked.method === "DELETE") {
        found.isDeleted = true;
        return nothing;
      }
      const faults = faultsOf("followUp", asked.body);
      if (faults.length > 0) {
        complain(`answer: ${faults.join("; ")}`);
        return refused(400, 50035, "Invalid Form Body", { errors: {} });
      }
      found.shown = asked.body;
      found.files = asked.files;
      return ok({ id: found.id, channel_id: found.channel, author: { id: "1", username: "bot", discriminator: "0", avatar: null, bot: true } });
    },
  };
}

function take(found: Interaction, type: number, data: Row, files: Asked["files"]): void {
  found.first = type;
  found.isEphemeral = (Number(data.flags ?? 0) & EPHEMERAL) !== 0;
  if (type === MESSAGE) {
    found.shown = data;
    found.files = files;
  }
  if (type === FORM) {
    found.form = data;
  }
  if (type === CHOICES) {
    found.choices = data.choices as Interaction["choices"];
  }
}

/** Answered for good: more than a mere "please wait". */
export const isAnswered = (one: Interaction): boolean => one.isDeleted || one.shown !== null || (one.first !== null && one.first !== DEFERRED);
