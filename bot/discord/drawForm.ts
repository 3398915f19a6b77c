import { type APILabelComponent, type APIModalInteractionResponseCallbackData, ComponentType, TextInputStyle } from "discord.js";
import type { Card, Form, FormPart } from "../chat/types.ts";
import { encodeCustomId } from "./customId.ts";
import { selectOptions } from "./drawRows.ts";
import { cutText, plainLine } from "./escapeText.ts";

const TITLE_MAX = 45;
const LABEL_MAX = 45;
const PARTS_MAX = 5;
const VALUE_MAX = 4000;

/** A form as the platform's modal; null when its action is longer than the platform takes. */
export function drawForm({ title, action, parts }: Form): APIModalInteractionResponseCallbackData | null {
  const id = encodeCustomId(action);
  return id === null
    ? null
    : { custom_id: id, title: cutText(plainLine(title) || "·", TITLE_MAX), components: parts.slice(0, PARTS_MAX).map(drawPart) };
}

function drawPart(part: FormPart): APILabelComponent {
  const { name, label, items, required, value } = part;
  const options = selectOptions(items);
  return {
    type: ComponentType.Label,
    label: cutText(plainLine(label) || "·", LABEL_MAX),
    component:
      options.length > 0
        ? {
            type: ComponentType.StringSelect,
            custom_id: name,
            required,
            options: options.map((option) => ({ ...option, default: option.value === value })),
          }
        : {
            type: ComponentType.TextInput,
            custom_id: name,
            style: TextInputStyle.Paragraph,
            required,
            max_length: VALUE_MAX,
            ...(value === "" ? {} : { value: value.slice(0, VALUE_MAX) }),
          },
  };
}

/** Where the platform cannot show a form at once: one press that opens it. */
export function formDoor({ title, action }: Form): Card {
  return {
    kind: "form",
    title,
    tone: "plain",
    lines: [["Press to open the form."]],
    fields: [],
    buttons: [{ label: "Open", action, weight: "main" }],
    choices: null,
    files: [],
    data: {},
  };
}
