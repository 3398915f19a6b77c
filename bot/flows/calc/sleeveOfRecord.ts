import type { SpecClub } from "../../../core/bag/specClub.ts";
import type { SleeveModel } from "../../../core/buildSheet/parts.ts";
import { modelsOf } from "../../../db/repositories/partModels.ts";
import type { Context } from "../../chat/context.ts";

/** The sleeves a person may know of: unreleased ones the lead alone. */
export const knownSleeves = ({ actor, read }: Context): readonly SleeveModel[] =>
  read((reader) => modelsOf<SleeveModel>(reader, "sleeve")).filter(({ restrictedCode }) => restrictedCode === null || actor.roles.includes("lead"));

/** The sleeve a text names, else the one the club of the record sits on. */
export const sleeveOfRecord = (sleeves: readonly SleeveModel[], name: string | null, club: SpecClub | null): SleeveModel | null =>
  sleeves.find((sleeve) => sleeve.name === (name ?? club?.sleeveModel ?? null)) ?? null;
