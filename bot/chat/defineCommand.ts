import type { z } from "zod";
import type { OrderState } from "../../db/repositories/orders.ts";
import type { Context } from "./context.ts";
import type { Audience, Reply, Role, Values } from "./types.ts";

/** What names a value is one of: of the record, or the text of a file. `serial` is a head's that a draft could take. */
type Takes = "player" | "club" | "order" | "serial" | "head" | "shaft" | "grip" | "person" | "file";

export interface Option {
  readonly name: string;
  readonly summary: string;
  readonly required: boolean;
  /** Left out it is free text. */
  readonly takes?: Takes | undefined;
  /** Of orders, those in these states are suggested before the others. */
  readonly first?: readonly OrderState[] | undefined;
  /** Every value there is, where they are few and fixed. */
  readonly oneOf?: readonly string[] | undefined;
}

export interface CommandDefinition<Input> {
  /** One or two words; a one-word name has no two-word sibling. */
  readonly name: string;
  readonly summary: string;
  readonly options: readonly Option[];
  /** Who may; nobody listed means anyone in the chat. */
  readonly roles: readonly Role[];
  readonly audience: Audience;
  /** Whether it may answer by a form: the chat opens one only as the first answer, so the command is not put off. */
  readonly opensForm?: true;
  /** Values arrive as the person wrote them. */
  readonly input: z.ZodType<Input>;
  readonly run: (input: Input, context: Context) => Promise<Reply | null>;
}

/** What the registry holds: `defineCommand` closes over `Input`. */
export interface Command extends Omit<CommandDefinition<never>, "input" | "run"> {
  readonly handle: (values: Values, context: Context) => Promise<Reply | null | { readonly kind: "faults"; readonly at: readonly string[] }>;
}

/** Makes a command of its definition; values its input refuses come back as the names of the options at fault. */
export function defineCommand<Input>({ input, run, ...shown }: CommandDefinition<Input>): Command {
  return {
    ...shown,
    handle: async (values, context) => {
      const read = input.safeParse(values);
      if (!read.success) {
        return { kind: "faults", at: [...new Set(read.error.issues.map((issue) => String(issue.path[0])))] };
      }
      const done = await run(read.data, context);
      if (done?.kind === "form" && !shown.opensForm) {
        throw new Error(`${shown.name} answers by a form and does not say so: the chat could not open it`);
      }
      return done;
    },
  };
}
