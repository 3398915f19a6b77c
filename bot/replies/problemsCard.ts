import type { Mending, Problem } from "../boundary/reading.ts";
import type { Button, Card, Line } from "../chat/types.ts";
import { card, line } from "./card.ts";

const MOST_BUTTONS = 5;

/** Each fault with its word, what would be accepted, the nearest guess as a button; nothing is lost. */
export function problemsCard(
  problems: readonly Problem[],
  mendings: readonly Mending[],
  kept: { readonly id: number; readonly version: number } | null,
): Card {
  const lines = problems.map((problem): Line => {
    const guess = problem.options[0];
    const meant = guess === undefined ? "" : ` Meant ${problem.options.map((option) => `[${option.label}]`).join(" ")}`;
    return line({ strong: problem.word === "" ? "?" : `${problem.word}?` }, ` ${problem.accepted}.${meant}`);
  });
  const buttons = problems.flatMap((problem, index): readonly Button[] =>
    problem.options.map((option, choice) => ({
      label: option.label,
      weight: "plain",
      action: { command: "order mend", subject: `post:${kept?.id ?? 0}`, version: kept?.version ?? 0, argument: `${index}:${choice}` },
    })),
  );
  return card({
    kind: "order.problems",
    title: problems.length === 1 ? "One thing before this is an order" : `${problems.length} things before this is an order`,
    tone: "attention",
    lines: [...lines, ...mendingLines(mendings), line("Edit your message or send it anew; nothing is lost.")],
    buttons: kept === null ? [] : buttons.slice(0, MOST_BUTTONS),
    data: { problemCount: problems.length },
  });
}

/** What was read otherwise than typed, shown back. */
export function mendingLines(mendings: readonly Mending[]): readonly Line[] {
  return mendings.length === 0 ? [] : [line(`Read ${mendings.map(({ typed, read }) => `${typed} as ${read}`).join(", ")}`)];
}
