import { parseArgs } from "node:util";

export interface StartOptions {
  readonly json: boolean;
  readonly echo: boolean;
  readonly empty: boolean;
  readonly data: string | null;
  readonly load: string | null;
  readonly at: string | null;
  readonly as: string | null;
  readonly channel: string | null;
}

/** Reads the command line; a fault is one clear line. */
export function readStartOptions(args: readonly string[]): StartOptions | { readonly fault: string } {
  try {
    const { values } = parseArgs({
      args: [...args],
      options: {
        json: { type: "boolean", default: false },
        echo: { type: "boolean", default: false },
        empty: { type: "boolean", default: false },
        data: { type: "string" },
        load: { type: "string" },
        at: { type: "string" },
        as: { type: "string" },
        channel: { type: "string" },
      },
      allowPositionals: false,
    });
    if (values.empty && values.load !== undefined) {
      return { fault: "--empty and --load exclude each other" };
    }
    const { json, echo, empty, data = null, load = null, at = null, as = null, channel = null } = values;
    return { json, echo, empty, data, load, at, as, channel };
  } catch (error) {
    const reason = error instanceof Error ? error.message.split(". ")[0] : "not read";
    return { fault: `${reason}. Known: --json --echo --data DIR --empty --load DIR --at TIME --as NAME --channel NAME` };
  }
}
