import type { ByWish } from "../../core/buildSheet/buildRequest.ts";
import { ask, asOptions, type Notepad, placeOf, typed } from "./notepad.ts";

export function takeBy(pad: Notepad, value: ByWish, at: number, next: number): void {
  const asWritten = typed(pad, at, next);
  if (pad.by !== null && JSON.stringify(pad.by.value) !== JSON.stringify(value)) {
    ask(pad, "twice", placeOf(pad, at, next), "one time to be ready by", asOptions([`by ${pad.by.asWritten}`]));
  } else pad.by = { value, asWritten };
}
