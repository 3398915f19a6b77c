import { modelsOf } from "../../db/repositories/partModels.ts";
import type { Reader } from "../../db/write.ts";

/** An unreleased model's name and the word that stands for it. */
export interface CodeWord {
  readonly name: string;
  readonly code: string;
}

/** The code words of all restricted parts. */
export function codeWords(reader: Reader): readonly CodeWord[] {
  return (["head", "shaft", "grip"] as const).flatMap((kind) =>
    modelsOf<{ readonly name: string }>(reader, kind).flatMap(({ name, restrictedCode }) =>
      restrictedCode === null ? [] : [{ name, code: restrictedCode }],
    ),
  );
}
