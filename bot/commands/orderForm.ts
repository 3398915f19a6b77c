import { z } from "zod";
import { id } from "../../core/kinds.ts";
import { beginForm, formOf, keepAnswers } from "../../db/repositories/forms.ts";
import { orderTextFromOptions } from "../boundary/orderTextFromOptions.ts";
import { defineCommand } from "../chat/defineCommand.ts";
import { orderFields } from "../flows/orderFields.ts";
import { orderFromText } from "../flows/orderFromText.ts";
import { note } from "../replies/card.ts";
import { formPage, formPages, nextPageCard } from "../replies/formPages.ts";

export const orderForm = defineCommand({
  name: "order form",
  summary: "Order step by step, a few questions a page",
  options: [],
  roles: ["rep", "lead"],
  audience: "asker",
  opensForm: true,
  input: z.object({
    form: z
      .string()
      .regex(/^id:\d{1,9}$/)
      .optional(),
    version: z
      .string()
      .regex(/^\d{1,3}$/)
      .optional(),
    argument: z.string().max(20).optional(),
    ...Object.fromEntries(orderFields.map((name) => [name, z.string().max(200).optional()])),
  }),
  run: async (input, context) => {
    const { person } = context.actor;
    if (person === null) {
      throw new Error("a form has a person");
    }
    const { form: ref, version, argument, ...answers } = input;
    if (typeof ref !== "string") {
      return context.commit((tx) => ({ reply: formPage(beginForm(tx, person, context.now), 0), changes: [], posts: [] }));
    }
    const form = context.read((reader) => formOf(reader, id<"formPage">(Number(ref.slice(3))), person));
    if (form === null || form.page !== Number(version)) {
      return note("stale", "That page is answered already", "attention", "Nothing was changed.");
    }
    if (argument === "next") {
      return formPage(form.id, form.page);
    }
    const written = Object.fromEntries(
      Object.entries(answers).flatMap(([name, value]) => (typeof value === "string" && value !== "" ? [[name, value]] : [])),
    );
    if (form.page + 1 < formPages.length) {
      return context.commit((tx) => ({ reply: nextPageCard(keepAnswers(tx, form, written)), changes: [], posts: [] }));
    }
    return orderFromText(context, orderTextFromOptions({ ...form.answers, ...written }), `form:${form.id}`);
  },
});
