import { z } from "zod";
import { type ClubName, clubFamily } from "../../../core/kinds.ts";

import { isZone, type LocalTime, readLocalDate, readLocalTime } from "./localTime.ts";

/** How one cell is read: what would be accepted, and the value, or undefined when it cannot be read. */
interface Cell<T> {
  readonly accepted: string;
  readonly read: (written: string) => T | undefined;
}

/** The zod schema of a cell; its message is what would be accepted. */
export function cell<T>(kind: Cell<T>) {
  return z.string().transform((written, context): T => {
    const value = kind.read(written);
    if (value !== undefined) return value;
    context.addIssue({ code: "custom", message: kind.accepted });
    return z.NEVER;
  });
}

/** The same cell, or nothing: an empty cell is null. */
export function cellOrBlank<T>(kind: Cell<T>) {
  return cell<T | null>({ accepted: `${kind.accepted}; or nothing`, read: (written) => (written === "" ? null : kind.read(written)) });
}

/** A column that may be left out altogether: then every cell of it is empty. */
export function cellOrNoColumn<T>(kind: Cell<T>) {
  return cellOrBlank(kind).prefault("");
}

export const text = (maxCharacters = 80): Cell<string> => ({
  accepted: `1 to ${maxCharacters} characters`,
  read: (written) => (written.length > 0 && written.length <= maxCharacters ? written : undefined),
});

export const handle: Cell<string> = {
  accepted: "2 to 30 small letters, digits or hyphens",
  read: (written) => (/^[a-z0-9-]{2,30}$/.test(written) ? written : undefined),
};

/** Several short texts, parted by semicolons; an empty cell is none. */
export const texts: Cell<readonly string[]> = {
  accepted: "texts of 1 to 40 characters, parted by semicolons",
  read: (written) => {
    const parts = written === "" ? [] : written.split(";").map((part) => part.trim());
    return parts.every((part) => part.length > 0 && part.length <= 40) ? parts : undefined;
  },
};

/** A decimal number with a point, in the unit that the column's name ends with. An empty cell is not 0. */
export const number = <N extends number = number>(min: number, max: number): Cell<N> => ({
  accepted: `a number from ${min} to ${max}`,
  read: (written) => {
    if (!/^[+-]?\d{1,9}(\.\d{1,9})?$/.test(written)) return undefined;
    return within(Number(written), min, max) as N | undefined;
  },
});

export const whole = (min: number, max: number): Cell<number> => ({
  accepted: `a whole number from ${min} to ${max}`,
  read: (written) => (/^[+-]?\d{1,9}$/.test(written) ? within(Number(written), min, max) : undefined),
});

const within = (value: number, min: number, max: number) => (value >= min && value <= max ? value : undefined);

export const oneOf = <const T extends string>(choices: readonly T[]): Cell<T> => ({
  accepted: choices.join(", "),
  read: (written) => choices.find((choice) => choice === written),
});

export const someOf = <const T extends string>(choices: readonly T[]): Cell<readonly T[]> => ({
  accepted: `one or more of ${choices.join(", ")}, parted by semicolons`,
  read: (written) => {
    const parts = written.split(";").map((part) => choices.find((choice) => choice === part.trim()));
    const known = parts.filter((part) => part !== undefined);
    return known.length === parts.length && new Set(known).size === known.length ? known : undefined;
  },
});

export const yesNo: Cell<boolean> = {
  accepted: "yes, no",
  read: (written) => (written === "yes" ? true : written === "no" ? false : undefined),
};

export const zone: Cell<string> = {
  accepted: "a time zone such as Europe/Lisbon",
  read: (written) => (isZone(written) ? written : undefined),
};

export const localDate: Cell<string> = {
  accepted: "a date of the calendar such as 2027-05-03",
  read: (written) => (readLocalDate(written) === null ? undefined : written),
};

export const localTime: Cell<LocalTime> = {
  accepted: "a local date and time such as 2027-05-03T07:00",
  read: (written) => readLocalTime(written) ?? undefined,
};

export const clubName: Cell<ClubName> = {
  accepted: "a club such as driver, 3w, 4h, 7i, pw, sw, putter",
  read: (written) => (clubFamily(written) === null ? undefined : (written as ClubName)),
};
