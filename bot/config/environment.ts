import { z } from "zod";

const schema = z.object({
  DISCORD_TOKEN: z.string().optional(),
  RANGECALL_LOG: z.enum(["error", "warn", "info", "debug"]).default("warn"),
});

export type EnvironmentReading =
  | { readonly kind: "environment"; readonly token: string | null; readonly logLevel: string }
  | { readonly kind: "faulty"; readonly line: string };

/** Reads the environment once; a fault is one clear line. */
export function readEnvironment(variables: NodeJS.ProcessEnv): EnvironmentReading {
  const read = schema.safeParse(variables);
  if (!read.success) {
    const names = read.error.issues.map((issue) => String(issue.path[0]));
    return {
      kind: "faulty",
      line: `The environment variable ${names.join(", ")} is not as expected: RANGECALL_LOG takes error, warn, info or debug`,
    };
  }
  const token = read.data.DISCORD_TOKEN?.trim() ?? "";
  return { kind: "environment", token: token === "" ? null : token, logLevel: read.data.RANGECALL_LOG };
}
