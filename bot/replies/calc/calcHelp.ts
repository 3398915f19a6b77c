import type { Line, Reply } from "../../chat/types.ts";
import { card, line, reply } from "../card.ts";

interface Shown {
  readonly name: string;
  readonly summary: string;
  readonly takes: readonly string[];
  readonly examples: readonly string[];
}

const example = (view: Shown, text: string): string => `/calc ${view.name} ${text}`;
const viewLine = ({ name, summary }: Shown): Line => line({ strong: name }, ` ${summary}`);

/** All views, a line each; `unknown` is what was asked for and is none of them, with the one it is near to. */
export function calcListReply(views: readonly Shown[], unknown: { readonly name: string; readonly near: string | null } | null): Reply {
  return reply(
    card({
      kind: "calc.views",
      title: unknown === null ? "What /calc works out" : `/calc has no ${unknown.name}${unknown.near === null ? "" : `. Meant ${unknown.near}?`}`,
      tone: unknown === null ? "plain" : "attention",
      lines: [...views.map(viewLine), line("Each with its examples: /calc swing")],
      data: { views: views.map(({ name }) => name) },
    }),
  );
}

/** What one view takes. */
export function calcHelpReply(view: Shown): Reply {
  return reply(
    card({
      kind: "calc.help",
      title: `/calc ${view.name}: ${view.summary}`,
      lines: [...view.takes.map((text) => line(text)), ...view.examples.map((text) => line(example(view, text)))],
    }),
  );
}
