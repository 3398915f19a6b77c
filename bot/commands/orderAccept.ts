import { z } from "zod";
import { appendAudit } from "../../db/repositories/audit.ts";
import { changeOrder } from "../../db/repositories/orders.ts";
import { sheetsOf } from "../../db/repositories/sheets.ts";
import { defineCommand } from "../chat/defineCommand.ts";
import { changeOrderFlow } from "../flows/changeOrderFlow.ts";
import { findOrder } from "../flows/findOrder.ts";
import { orderIn, orderInput } from "../flows/orderOptions.ts";
import { checkOfSheet } from "../operations/checkOfSheet.ts";
import { finishBench } from "../operations/finishSteps.ts";
import { acceptedNote, acceptForm, notAcceptableNote } from "../replies/acceptNotes.ts";

export const orderAccept = defineCommand({
  name: "order accept",
  summary: "The player takes a club that is off what was written",
  options: [orderIn("finalCheck"), { name: "reason", summary: "Why, in the player's words", required: false }],
  roles: ["rep", "lead"],
  audience: "asker",
  opensForm: true,
  input: z.object({ ...orderInput, reason: z.string().min(3).max(200).nullable().default(null) }),
  run: async ({ order: written, version, reason }, context) => {
    const { person, roles } = context.actor;
    if (person === null) {
      throw new Error("an acceptance has a person");
    }
    if (reason === null) {
      const order = context.read((reader) => findOrder(reader, context, written));
      return acceptForm(order);
    }
    return changeOrderFlow(context, written, version, "order.accept", (tx, order) => {
      const checks = sheetsOf(tx, order).flatMap((sheet) => checkOfSheet(tx, sheet) ?? []);
      const off = checks.flatMap((check) => [
        ...check.rows.filter((row) => row.verdict === "off").map(({ quantity, delta, concerns }) => ({ quantity, delta, concerns })),
        ...check.looks.filter((row) => row.verdict === "off").map(({ look, seen, concerns }) => ({ look, seen, concerns })),
      ]);
      const refused = (why: "nothing-off" | "not-measured" | "lead-only") => ({ order, changed: false, reply: notAcceptableNote(order.number, why) });
      if (order.state !== "finalCheck" || checks.length === 0 || checks.some((check) => check.unmeasured.length > 0)) {
        return refused("not-measured");
      }
      if (off.length === 0) {
        return refused("nothing-off");
      }
      if (off.some((row) => row.concerns === "conformity") && !roles.includes("lead")) {
        return refused("lead-only");
      }
      appendAudit(tx, {
        at: context.now,
        personId: person,
        action: "order.accept.reason",
        subject: `order:${order.id}`,
        body: { reason, off },
        playerId: order.playerId,
      });
      finishBench(tx, order, { personId: person, now: context.now });
      return { order: changeOrder(tx, order.id, { state: "ready" }), changed: true, reply: acceptedNote(order.number) };
    });
  },
});
