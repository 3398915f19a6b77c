import { modelsOf } from "../../db/repositories/partModels.ts";
import { allPlayers } from "../../db/repositories/people.ts";
import type { Reader } from "../../db/write.ts";

/** The name of an unreleased model or a restricted player, and the word that stands for it. */
export interface CodeWord {
  readonly name: string;
  readonly code: string;
}

/** The code words of all restricted parts and players. */
export function codeWords(reader: Reader): readonly CodeWord[] {
  const models = (["head", "shaft", "grip"] as const).flatMap((kind) => modelsOf<{ readonly name: string }>(reader, kind));
  return [...models, ...allPlayers(reader)].flatMap(({ name, restrictedCode }) =>
    name === null || restrictedCode === null ? [] : [{ name, code: restrictedCode }],
  );
}
