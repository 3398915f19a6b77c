import type { Instant } from "../../core/kinds.ts";
import type { Card } from "../chat/types.ts";
import type { OrderFacts } from "../operations/orderFacts.ts";
import { card, line } from "./card.ts";
import { orderTitle } from "./orderTitle.ts";
import { sheetPrintOf } from "./sheetPrintOf.ts";
import { stateWords } from "./stateWords.ts";

/** Carries an order's sheet as one page to print. */
export function printCard(facts: OrderFacts, now: Instant): Card {
  return card({
    kind: "sheet.print",
    title: `${orderTitle(facts)} · sheet to print`,
    lines: [line(`One page, as it stands now: ${stateWords[facts.state]}`)],
    files: [{ name: `sheet-${facts.number}.pdf`, draw: "sheet", sheet: sheetPrintOf(facts, now) }],
    data: { orderNumber: facts.number, clubCount: facts.clubs.length },
  });
}
