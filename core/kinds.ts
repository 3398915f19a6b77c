declare const unit: unique symbol;

/** A number that carries its unit in its type, so that a mix-up of grams and millimetres fails to compile. */
export type Quantity<U extends string> = number & { readonly [unit]: U };
/** Milliseconds since 1970 UTC. */
export type Instant = Quantity<"epoch-ms">;
/** A row of the record: an order's id cannot be handed to a function that wants a player's. */
export type Id<K extends string> = number & { readonly [unit]: `id:${K}` };

export const instant = (epochMs: number): Instant => epochMs as Instant;
export const id = <K extends string>(value: number): Id<K> => value as Id<K>;

export type Hand = "left" | "right";

export const orderKinds = ["build", "swap", "turn", "reshaft", "regrip", "bend", "grind", "check", "repair", "stamp", "broke"] as const;
export type OrderKind = (typeof orderKinds)[number];

export const clubFamilies = ["driver", "fairway", "hybrid", "iron", "wedge", "putter"] as const;
export type ClubFamily = (typeof clubFamilies)[number];

/** A club's name in a bag, in one spelling: `driver`, `3w`, `4h`, `7i`, `pw`, `sw`, `putter`. */
export type ClubName = string & { readonly [unit]: "club" };

/** Every club name people may write, with the family it belongs to. */
const clubFamilyByName: Readonly<Record<string, ClubFamily>> = {
  driver: "driver",
  ...Object.fromEntries([2, 3, 4, 5, 7, 9, 11].map((n) => [`${n}w`, "fairway" as const])),
  ...Object.fromEntries([1, 2, 3, 4, 5, 6, 7].map((n) => [`${n}h`, "hybrid" as const])),
  ...Object.fromEntries([1, 2, 3, 4, 5, 6, 7, 8, 9].map((n) => [`${n}i`, "iron" as const])),
  pw: "wedge",
  gw: "wedge",
  sw: "wedge",
  lw: "wedge",
  putter: "putter",
};

/** @returns the family of a club's name, or null when no such club is known */
export function clubFamily(name: string): ClubFamily | null {
  return Object.hasOwn(clubFamilyByName, name) ? (clubFamilyByName[name] ?? null) : null;
}
