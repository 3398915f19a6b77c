import { z } from "zod";
import { routeNames } from "../../core/bench/routes.ts";
import { readRouteTable } from "../boundary/readRouteTable.ts";
import { readStepKind } from "../boundary/readStepKind.ts";
import { defineCommand } from "../chat/defineCommand.ts";
import { ownRoutes, shopRoutes, withMinutes, writeRoute } from "../operations/shopRoutes.ts";
import { reply } from "../replies/card.ts";
import { routeCard, routeNotes, routesCard } from "../replies/routesCard.ts";

const MOST_MINUTES = 600;

export const routes = defineCommand({
  name: "routes",
  summary: "The steps of each kind of work and their minutes; the lead changes them",
  options: [
    { name: "name", summary: "Such as: build sleeve, regrip", required: false, oneOf: routeNames },
    { name: "step", summary: "A step to change, such as cut; or default", required: false },
    { name: "minutes", summary: "Its hands-on minutes, or a wait's own", required: false },
    { name: "text", summary: "The whole route as a table: kind,min,after,wait,at_least,set_up_share", required: false },
  ],
  roles: ["rep", "technician", "lead"],
  audience: "asker",
  input: z.object({
    name: z.string().max(40).optional(),
    step: z.string().max(30).optional(),
    minutes: z.string().max(10).optional(),
    text: z.string().max(4000).optional(),
  }),
  run: async ({ name: written, step, minutes, text }, context) => {
    const { person, roles } = context.actor;
    const inForce = context.read(shopRoutes);
    if (written === undefined) {
      return reply(routesCard(inForce, context.read(ownRoutes)));
    }
    const name = routeNames.find((one) => one.toLowerCase() === written.trim().toLowerCase());
    if (name === undefined) {
      return routeNotes.unknown(written);
    }
    if (step === undefined && text === undefined) {
      return reply(routeCard(name, inForce[name], context.read(ownRoutes).has(name)));
    }
    if (!roles.includes("lead") || person === null) {
      return routeNotes.leadOnly();
    }
    const isDefault = step?.trim().toLowerCase() === "default";
    const kind = step === undefined || isDefault ? null : (inForce[name].find((row) => row.kind === step)?.kind ?? readStepKind(step));
    const min = Number((minutes ?? "").replace(",", ".") || Number.NaN);
    const table = text === undefined ? null : readRouteTable(text);
    if (table?.kind === "faults") {
      return routeNotes.faults(table.lines);
    }
    if (!isDefault && table === null && !(min >= 0 && min <= MOST_MINUTES)) {
      return routeNotes.badMinutes(minutes ?? "");
    }
    const rows = isDefault ? null : table !== null ? table.rows : kind === null ? undefined : (withMinutes(inForce[name], kind, min) ?? undefined);
    if (rows === undefined) {
      return routeNotes.noStep(step ?? "", inForce[name]);
    }
    return context.commit((tx) => {
      writeRoute(tx, name, rows, { personId: person, at: context.now });
      return {
        reply: reply(routeCard(name, shopRoutes(tx)[name], rows !== null)),
        changes: [{ action: "route.change", subject: `route:${name}`, before: JSON.stringify(inForce[name]), after: JSON.stringify(rows) }],
        posts: [],
      };
    });
  },
});
