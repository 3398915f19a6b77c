import { ask, asOptions, type Notepad, placeOf, wordAt } from "./notepad.ts";

/** `flex x` after a shaft's name is read with it; alone it is asked which shaft. */
export function readFlex(pad: Notepad, at: number): number {
  if (wordAt(pad, at) !== "flex") return at;
  const flex = wordAt(pad, at + 1);
  const fitting = pad.context.shaftModels.filter((name) => name.toLowerCase().endsWith(` ${flex}`)).slice(0, 5);
  if (pad.wishes.has("shaft") && fitting.includes(String(pad.wishes.get("shaft")?.wish.value))) return at + 2;
  ask(pad, "which-part", placeOf(pad, at, at + 2), "a shaft with its weight and flex", asOptions(fitting.map((name) => `shaft ${name}`)));
  return Math.min(at + 2, pad.end);
}
