import { parseArgs } from "node:util";

export interface DoctorOptions {
  readonly offline: boolean;
  readonly json: boolean;
  readonly data: string;
}

/** Reads the command line; a fault is one clear line. */
export function readDoctorOptions(args: readonly string[]): DoctorOptions | { readonly fault: string } {
  try {
    const { values } = parseArgs({
      args: [...args],
      options: { offline: { type: "boolean", default: false }, json: { type: "boolean", default: false }, data: { type: "string", default: "data" } },
      allowPositionals: false,
    });
    return values.data.trim() === "" ? { fault: "--data takes a folder, such as --data data" } : values;
  } catch (error) {
    const reason = error instanceof Error ? error.message.split(". ")[0] : "not read";
    return { fault: `${reason}. Known: --offline --json --data DIR` };
  }
}
