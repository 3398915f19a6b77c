import { type APIActionRowComponent, type APIButtonComponent, type APIStringSelectComponent, ButtonStyle, ComponentType } from "discord.js";
import type { Button, Card } from "../chat/types.ts";
import { encodeCustomId } from "./customId.ts";
import { cutText, plainLine } from "./escapeText.ts";

const ROWS_MAX = 5;
const BUTTONS_IN_ROW = 5;
const BUTTON_LABEL_MAX = 80;
const ITEMS_MAX = 25;
const ITEM_MAX = 100;
const PLACEHOLDER_MAX = 150;

type Choices = NonNullable<Card["choices"]>;
export type CardRow = APIActionRowComponent<APIButtonComponent | APIStringSelectComponent>;

const styles = { main: ButtonStyle.Primary, plain: ButtonStyle.Secondary, grave: ButtonStyle.Danger } as const;

/** Buttons by fives, then the choices; what the platform has no room for is left out. */
export function drawRows(card: Pick<Card, "buttons" | "choices">): readonly CardRow[] {
  const select = card.choices === null ? [] : selectRow(card.choices);
  const buttons = card.buttons.flatMap(drawButton).slice(0, (ROWS_MAX - select.length) * BUTTONS_IN_ROW);
  return [...buttonRows(withoutTwins(buttons)), ...select];
}

function buttonRows(buttons: readonly APIButtonComponent[]): readonly CardRow[] {
  const count = Math.ceil(buttons.length / BUTTONS_IN_ROW);
  return Array.from({ length: count }, (_none, row) => ({
    type: ComponentType.ActionRow,
    components: buttons.slice(row * BUTTONS_IN_ROW, (row + 1) * BUTTONS_IN_ROW),
  }));
}

function drawButton({ label, action, weight }: Button): readonly (APIButtonComponent & { readonly custom_id: string })[] {
  const id = encodeCustomId(action);
  return id === null
    ? []
    : [{ type: ComponentType.Button, style: styles[weight], label: cutText(plainLine(label) || "·", BUTTON_LABEL_MAX), custom_id: id }];
}

/** The platform refuses a message with the same action twice. */
function withoutTwins<B extends { readonly custom_id: string }>(buttons: readonly B[]): readonly B[] {
  return buttons.filter((button, index) => buttons.findIndex(({ custom_id }) => custom_id === button.custom_id) === index);
}

function selectRow({ label, action, items }: Choices): readonly CardRow[] {
  const id = encodeCustomId(action);
  const options = selectOptions(items);
  return id === null || options.length === 0
    ? []
    : [
        {
          type: ComponentType.ActionRow,
          components: [
            { type: ComponentType.StringSelect, custom_id: id, placeholder: cutText(plainLine(label), PLACEHOLDER_MAX), options: [...options] },
          ],
        },
      ];
}

/** Items with a value the platform can carry, each value once. */
export function selectOptions(items: Choices["items"]): readonly { readonly label: string; readonly value: string }[] {
  const carried = new Map<string, string>();
  for (const { label, value } of items) {
    if (value !== "" && value.length <= ITEM_MAX && !carried.has(value) && carried.size < ITEMS_MAX) {
      carried.set(value, cutText(plainLine(label) || value, ITEM_MAX));
    }
  }
  return [...carried].map(([value, label]) => ({ label, value }));
}
