import type { Reply } from "../chat/types.ts";
import { card, line, reply } from "./card.ts";

const question = (name: string, label: string, required = false) => ({ name, label, items: [], required, value: "" });

/** The guided order: pages of at most five questions. */
export const formPages = [
  {
    title: "Order: which club",
    parts: [
      question("player", "Player", true),
      question("club", "Club, such as driver or 7i", true),
      question("like", "Like gamer, backup or an order"),
      question("by", "In hand by, such as 14:30"),
      question("to", "To range, locker, caddie or courier"),
    ],
  },
  {
    title: "Order: how it measures",
    parts: [
      question("loft", "True loft"),
      question("face", "Face, such as 0.5 open"),
      question("length", "Length, such as 45 1/4"),
      question("swing", "Swing weight, such as d3"),
      question("head", "Head and stamp, such as cairn 9"),
    ],
  },
  {
    title: "Order: parts",
    parts: [question("shaft", "Shaft"), question("grip", "Grip"), question("sleeve", "Sleeve mark"), question("note", "Note")],
  },
] as const;

const action = (form: number, page: number) => ({ command: "order form", subject: `form:${form}`, version: page });

/** One page of the form. */
export function formPage(form: number, page: number): Reply {
  const shown = formPages[page] ?? formPages[0];
  return {
    kind: "form",
    form: { title: `${shown.title} (${page + 1} of ${formPages.length})`, action: action(form, page), parts: [...shown.parts] },
  };
}

/** A page cannot answer a page: the next one opens from a button. */
export function nextPageCard(form: { readonly id: number; readonly page: number; readonly answers: Readonly<Record<string, string>> }): Reply {
  return reply(
    card({
      kind: "order.form",
      title: `Page ${form.page} of ${formPages.length} kept`,
      lines: [
        line(
          Object.entries(form.answers)
            .map(([name, value]) => `${name} ${value}`)
            .join(", "),
        ),
      ],
      buttons: [{ label: "Next page", weight: "main", action: { ...action(form.id, form.page), argument: "next" } }],
    }),
  );
}
