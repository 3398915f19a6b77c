import type { SpecClub } from "../../../core/bag/specClub.ts";
import { clubFamily, type Hand } from "../../../core/kinds.ts";
import { playerById } from "../../../db/repositories/people.ts";
import { liveSpec } from "../../../db/repositories/week.ts";
import type { BagPart, BagRef } from "../../boundary/calc/bagRefAt.ts";
import type { Understood } from "../../boundary/calc/fields.ts";
import type { Context } from "../../chat/context.ts";
import type { Reply, Role } from "../../chat/types.ts";
import { noBagReply } from "../../replies/calc/bagRefusals.ts";
import { restrictedClubReply } from "../../replies/calc/clubRefusals.ts";
import { refusalCard } from "../../replies/refusals.ts";

export type FoundBag =
  | {
      readonly kind: "found";
      /** As they were published, those of the part asked for. */
      readonly clubs: readonly SpecClub[];
      readonly hand: Hand;
      readonly shown: string;
      readonly input: Understood;
    }
  | { readonly kind: "refused"; readonly reply: Reply };

const seesSpecs: readonly Role[] = ["viewer", "rep", "technician", "lead"];

const inPart: Readonly<Record<BagPart, (name: string) => boolean>> = {
  bag: () => true,
  woods: (name) => clubFamily(name) === "driver" || clubFamily(name) === "fairway",
  /** The pitching wedge of a set is built with its irons. */
  irons: (name) => clubFamily(name) === "iron" || name === "pw",
  wedges: (name) => clubFamily(name) === "wedge",
};

/** What a player has in the bag now, for whoever may see it: a viewer and up, restricted players for the lead. */
export function findBag({ player, part }: BagRef, context: Context): FoundBag {
  if (!seesSpecs.some((role) => context.actor.roles.includes(role))) {
    return { kind: "refused", reply: refusalCard(context.actor, "A bag of the record", seesSpecs) };
  }
  const row = context.read((reader) => playerById(reader, player.id));
  if (row === null || (row.restrictedCode !== null && !context.actor.roles.includes("lead")))
    return { kind: "refused", reply: restrictedClubReply() };
  const live = context.read((reader) => liveSpec(reader, player.id));
  const shown = row.restrictedCode ?? row.name ?? "erased";
  const clubs = (live?.bag.clubs ?? []).filter(({ club }) => inPart[part](club));
  if (live === null || clubs.length === 0) return { kind: "refused", reply: noBagReply(shown, part) };
  return { kind: "found", clubs, hand: row.hand, shown, input: inputOf(`${shown}'s ${part}, version ${live.version}`) };
}

const inputOf = (written: string): Understood => ({ name: "", values: [{ written, unit: "" }], between: ",", assumed: false });
