import { editDistance } from "../editDistance.ts";
import { foldText } from "../foldText.ts";
import { playerNear, playersAt } from "../playerNames.ts";
import type { NamedPlayer } from "../reading.ts";
import { type Word, wordsOf } from "../wordsOf.ts";
import type { KnownPlace } from "./stockKnown.ts";

/** Which places of the truck the words at a place name; several when two players share a name. */
interface PlaceHit {
  readonly places: readonly KnownPlace[];
  readonly next: number;
}

const LONGEST_LABEL_WORDS = 5;
const FARTHEST_GUESS = 3;
const squashed = (text: string): string => foldText(text).replace(/[^\p{L}\p{N}]/gu, "");

/** `D-7`, `d7`, `drawer 7`; `main rack`, `rack`. */
function keysOf({ label, kind }: KnownPlace): readonly string[] {
  const key = squashed(label);
  if (kind === "drawer") return [key, `drawer${key}`, `drawer${key.replace(/^\p{L}+/u, "")}`];
  return kind === "mainRack" ? [key, "rack"] : [key];
}

const made = new WeakMap<readonly KnownPlace[], { readonly byKey: ReadonlyMap<string, KnownPlace>; readonly players: readonly NamedPlayer[] }>();

function indexOf(places: readonly KnownPlace[]) {
  const before = made.get(places);
  if (before !== undefined) return before;
  const players = places.flatMap(({ kind, player }) => (kind === "playerBin" && player !== null ? [player] : []));
  const index = { byKey: new Map(places.flatMap((place) => keysOf(place).map((key) => [key, place] as const))), players };
  made.set(places, index);
  return index;
}

const binsOf = (places: readonly KnownPlace[], players: readonly NamedPlayer[]): readonly KnownPlace[] =>
  places.filter(({ kind, player }) => kind === "playerBin" && player !== null && players.some(({ id }) => id === player.id));

/** `bin Oxtoby`, `Oxtoby's bin`. */
function binAt(words: readonly Word[], at: number, places: readonly KnownPlace[]): PlaceHit | null {
  const { players } = indexOf(places);
  const leads = words[at]?.text === "bin";
  const named = playersAt(words, leads ? at + 1 : at, players);
  if (named === null || (!leads && words[named.next]?.text !== "bin")) return null;
  return { places: binsOf(places, named.players), next: leads ? named.next : named.next + 1 };
}

/** Reads the place named at a word, in its longest spelling. */
export function placeAt(words: readonly Word[], at: number, places: readonly KnownPlace[]): PlaceHit | null {
  const bin = binAt(words, at, places);
  if (bin !== null) return bin;
  const { byKey } = indexOf(places);
  let key = "";
  let found: PlaceHit | null = null;
  for (let next = at; next < Math.min(words.length, at + LONGEST_LABEL_WORDS); next += 1) {
    key += squashed(words[next]?.text ?? "");
    const place = byKey.get(key);
    if (place !== undefined) found = { places: [place], next: next + 1 };
  }
  return found;
}

/** Reads a place that must be the whole of a text; null when it is none, or not clear which. */
export function placeOf(text: string, places: readonly KnownPlace[]): KnownPlace | null {
  const { words } = wordsOf(text);
  const exact = places.find(({ label }) => foldText(label) === foldText(text).trim());
  const hit = placeAt(words, 0, places);
  const [only] = hit?.places ?? [];
  return exact ?? (hit !== null && hit.places.length === 1 && hit.next === words.length ? (only ?? null) : null);
}

/** The place that a text which names none may mean. */
export function placeNear(text: string, places: readonly KnownPlace[]): string | null {
  const name = foldText(text)
    .replace(/\bbin\b|'s\b/g, " ")
    .trim();
  const near = /\bbin\b/.test(foldText(text)) ? playerNear(name, indexOf(places).players) : null;
  const [bin] = near?.kind === "one" ? binsOf(places, [near.player]) : [];
  if (bin !== undefined) return bin.shown;
  const key = squashed(text);
  const scored = places.flatMap((place) => {
    const distance = editDistance(key, squashed(place.label), FARTHEST_GUESS);
    return distance === null ? [] : [{ place, distance }];
  });
  return scored.sort((one, other) => one.distance - other.distance)[0]?.place.shown ?? null;
}

/** What a place may be, in words: all single ones, one drawer and one bin as examples. */
export function placeAccepted(places: readonly KnownPlace[]): string {
  const single = places.filter(({ kind }) => kind !== "drawer" && kind !== "playerBin").map(({ shown }) => shown);
  const examples = (["drawer", "playerBin"] as const).flatMap((kind) => places.find((place) => place.kind === kind)?.shown ?? []);
  return `a place of this truck, such as ${[...single, ...examples].join(", ")}`;
}
