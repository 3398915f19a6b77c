import { z } from "zod";
import { type Skill, skills } from "../../core/bench/benchTypes.ts";
import { defineCommand } from "../chat/defineCommand.ts";
import { shiftFlow } from "../flows/shiftFlow.ts";
import { giveSkills, usualSkills } from "../operations/crew.ts";
import { shiftNotes, skillWords } from "../replies/shiftNotes.ts";

/** What a list names, `usual` and `none` included; the word at fault when one is no skill. */
function readSkills(written: string): { readonly given: readonly Skill[] | null } | { readonly fault: string } {
  const text = written.trim().toLowerCase();
  if (text === "usual") {
    return { given: null };
  }
  const names = text === "none" ? [] : text.split(/\s*[,;]\s*/);
  const found = names.map((name) => ({ name, skill: skills.find((skill) => skillWords[skill] === name) }));
  const fault = found.find(({ skill }) => skill === undefined);
  return fault === undefined ? { given: found.flatMap(({ skill }) => skill ?? []) } : { fault: fault.name };
}

export const shiftSkills = defineCommand({
  name: "shift skills",
  summary: "What a technician may do beside what everybody may",
  options: [
    { name: "person", summary: "By name", required: true },
    { name: "skills", summary: "Such as: grinding, wood bending, stamping; none; usual", required: true },
  ],
  roles: ["lead"],
  audience: "asker",
  input: z.object({ person: z.string().min(1).max(60), skills: z.string().min(1).max(100) }),
  run: async ({ person, skills: written }, context) => {
    const read = readSkills(written);
    if ("fault" in read) {
      return shiftNotes.badSkill(read.fault);
    }
    return shiftFlow(context, "shift.skills", person, (tx, who) => {
      giveSkills(tx, who.truck, who.id, read.given);
      return { reply: shiftNotes.skills(who.name, read.given ?? usualSkills), after: read.given };
    });
  },
});
