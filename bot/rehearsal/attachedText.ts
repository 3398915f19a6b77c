import { readFile, stat } from "node:fs/promises";

const LARGEST_BYTES = 1_000_000;

export type AttachedText = { readonly kind: "text"; readonly text: string } | { readonly kind: "unreadable"; readonly reason: string };

/** Reads a file of UTF-8 text up to a megabyte. */
export async function attachedText(file: string): Promise<AttachedText> {
  try {
    const { size, isFile } = await describe(file);
    if (!isFile) return { kind: "unreadable", reason: `${file} is no file` };
    if (size > LARGEST_BYTES) return { kind: "unreadable", reason: `${file} is larger than ${LARGEST_BYTES} bytes` };
    return { kind: "text", text: new TextDecoder("utf-8", { fatal: true }).decode(await readFile(file)).trimEnd() };
  } catch (error) {
    const code = error instanceof Error && "code" in error ? String(error.code) : "unknown";
    return { kind: "unreadable", reason: code === "ENOENT" ? `no file ${file}` : `cannot read ${file} as text (${code})` };
  }
}

async function describe(file: string): Promise<{ readonly size: number; readonly isFile: boolean }> {
  const found = await stat(file);
  return { size: found.size, isFile: found.isFile() };
}
