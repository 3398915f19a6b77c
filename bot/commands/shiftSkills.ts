import { z } from "zod";
import { readSkills, skillNames } from "../boundary/readSkills.ts";
import { defineCommand } from "../chat/defineCommand.ts";
import { shiftFlow } from "../flows/shiftFlow.ts";
import { giveSkills, technicianAt, usualSkills } from "../operations/crew.ts";
import { shiftNotes } from "../replies/shiftNotes.ts";

export const shiftSkills = defineCommand({
  name: "shift skills",
  summary: "What a technician may do beside what everybody may",
  options: [
    { name: "person", summary: "By name", required: true, takes: "person" },
    { name: "skills", summary: `Such as: ${skillNames.join(", ")}; none; usual`, required: true },
  ],
  roles: ["lead"],
  audience: "asker",
  input: z.object({ person: z.string().min(1).max(60), skills: z.string().min(1).max(100) }),
  run: async ({ person, skills: written }, context) => {
    const isUsual = written.trim().toLowerCase() === "usual";
    const read = isUsual ? ({ kind: "skills", skills: null } as const) : readSkills(written);
    if (read.kind === "unknown") {
      return shiftNotes.badSkill(read.word, skillNames);
    }
    return shiftFlow(context, "shift.skills", person, (tx, who) => {
      const before = technicianAt(tx, who.truck, who.id);
      if (before === null) {
        return { reply: shiftNotes.notHere(who.name), changed: false };
      }
      giveSkills(tx, who.truck, who.id, read.skills);
      return { reply: shiftNotes.skills(who.name, read.skills ?? usualSkills), changed: true, before: before.skills, after: read.skills };
    });
  },
});
