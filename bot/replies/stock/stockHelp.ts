import type { Reply } from "../../chat/types.ts";
import { card, line, reply } from "../card.ts";

interface ShownView {
  readonly name: string;
  readonly summary: string;
  readonly takes: readonly string[];
}

/** All views with an example each; `unknown` is what was asked for and is none of them. */
export const stockHelpReply = (views: readonly ShownView[], unknown: string | null): Reply =>
  reply(
    card({
      kind: "stock.help",
      title: unknown === null ? "What /stock does" : `/stock has no ${unknown}`,
      tone: unknown === null ? "plain" : "attention",
      lines: views.map(({ name, summary, takes: [example = ""] }) => line({ strong: name }, ` ${summary}${`: /stock ${name} ${example}`.trimEnd()}`)),
      data: { views: views.map(({ name }) => name) },
    }),
  );

/** What one view takes. */
export const stockViewReply = ({ name, summary, takes }: ShownView): Reply =>
  reply(
    card({
      kind: "stock.help",
      title: `/stock ${name}: ${summary}`,
      lines: takes.flatMap((text) => `/stock ${name} ${text}`.split("\n")).map((text) => line(text)),
    }),
  );
