import { and, eq } from "drizzle-orm";
import type { Id, Instant } from "../../core/kinds.ts";
import { formPage } from "../schema/orders.ts";
import type { Reader, Tx } from "../write.ts";

export interface GuidedForm {
  readonly id: Id<"formPage">;
  /** How many pages are answered. */
  readonly page: number;
  readonly answers: Readonly<Record<string, string>>;
}

/** Begins a guided form for a person. */
export function beginForm(tx: Tx, personId: Id<"person">, at: Instant): Id<"formPage"> {
  return tx.insert(formPage).values({ personId, page: 0, answers: "{}", at }).returning({ id: formPage.id }).get().id;
}

/** @returns the form, or null when there is none of that id or it is another person's */
export function formOf(reader: Reader, id: Id<"formPage">, personId: Id<"person">): GuidedForm | null {
  const row = reader
    .select()
    .from(formPage)
    .where(and(eq(formPage.id, id), eq(formPage.personId, personId)))
    .get();
  return row === undefined ? null : { id: row.id, page: row.page, answers: JSON.parse(row.answers) as Record<string, string> };
}

/** Keeps the answers of a page beside those before it. */
export function keepAnswers(tx: Tx, form: GuidedForm, answers: Readonly<Record<string, string>>): GuidedForm {
  const kept = { ...form, page: form.page + 1, answers: { ...form.answers, ...answers } };
  tx.update(formPage)
    .set({ page: kept.page, answers: JSON.stringify(kept.answers) })
    .where(eq(formPage.id, form.id))
    .run();
  return kept;
}
