import { describe, expect, it } from "vitest";
import type { Form, FormPart } from "../../../bot/chat/types.ts";
import { decodeCustomId } from "../../../bot/discord/customId.ts";
import { drawForm } from "../../../bot/discord/drawForm.ts";

const action = { command: "order change", subject: "order:57", version: 2 };
const part: FormPart = { name: "text", label: "The order", items: [], required: true, value: "build *oxtoby*" };
const form = (parts: readonly FormPart[], title = "Change 57"): Form => ({ title, action, parts });

describe("drawForm", () => {
  it("draws a question as a text field with its value as typed, and one with items as a choice", () => {
    const items = [
      { label: "Gamer", value: "gamer" },
      { label: "Backup", value: "backup" },
    ];
    const drawn = drawForm(form([part, { ...part, name: "for", items, value: "backup" }]));
    expect(drawn?.title).toBe("Change 57");
    expect(decodeCustomId(drawn?.custom_id ?? "")).toEqual(action);
    expect(drawn?.components).toMatchObject([
      { type: 18, label: "The order", component: { type: 4, custom_id: "text", value: "build *oxtoby*", required: true } },
      {
        type: 18,
        component: {
          type: 3,
          custom_id: "for",
          options: [
            { value: "gamer", default: false },
            { value: "backup", default: true },
          ],
        },
      },
    ]);
  });

  // Title 45, five parts, label 45, value 4000: the platform's public documentation.
  it("stays within the platform's limits", () => {
    const long = "y".repeat(5000);
    const drawn = drawForm(
      form(
        Array.from({ length: 7 }, (_none, index) => ({ ...part, name: `p${index}`, label: long, value: long })),
        long,
      ),
    );
    expect(drawn?.title).toHaveLength(45);
    expect(drawn?.components).toHaveLength(5);
    expect(drawn?.components[0]).toMatchObject({ label: `${"y".repeat(44)}…`, component: { value: "y".repeat(4000) } });
  });

  it("draws none for an action the platform cannot carry", () => {
    expect(drawForm({ ...form([part]), action: { ...action, argument: "x".repeat(100) } })).toBeNull();
  });
});
