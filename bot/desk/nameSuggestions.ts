import { type ClubFamily, clubFamily } from "../../core/kinds.ts";
import { matchPlayer } from "../boundary/playerNames.ts";
import { readClubName } from "../boundary/readClubName.ts";
import { readOrderRef } from "../boundary/readOrderRef.ts";
import type { Option } from "../chat/defineCommand.ts";
import type { Actor, Values } from "../chat/types.ts";
import { clubsWords, clubWords } from "../replies/shown.ts";
import { stateWords } from "../replies/stateWords.ts";
import type { KnownNames, KnownPlayer } from "./nameMemory.ts";

/** What is shown, what is sent, and what of it people may type. */
export interface Suggested {
  readonly label: string;
  readonly value: string;
  readonly text: string;
}

interface Place {
  readonly typed: string;
  readonly values: Values;
  readonly actor: Actor;
  readonly names: KnownNames;
}

/** The names of the record that an option could mean, most useful first. */
export function nameSuggestions({ takes, first = [] }: Pick<Option, "takes" | "first">, place: Place): readonly Suggested[] {
  switch (takes) {
    case "player":
      return place.names.players.map((player) => playerSuggested(player, place));
    case "club":
      return clubsSuggested(place);
    case "order":
      return ordersHere(place)
        .toSorted((one, other) => Number(first.includes(other.state)) - Number(first.includes(one.state)))
        .map((order) => orderSuggested(order, place));
    case "serial":
      return serialsSuggested(place);
    case "head":
    case "shaft":
    case "grip":
      return place.names.parts[takes].map((part) => plain(shownName(part, place), namesOf(part, place)));
    case "person":
      return [...place.names.persons]
        .sort((one, other) => Number(other.truck === place.actor.truck) - Number(one.truck === place.actor.truck))
        .map(({ name }) => plain(name));
    case "file":
    case undefined:
      return [];
  }
}

const plain = (name: string, text = name): Suggested => ({ label: name, value: name, text });

type Restrictable = Pick<KnownPlayer, "name" | "code">;

/** Only the lead is told a restricted name; others do not find it by its true name either. */
const isHidden = ({ code }: Restrictable, { actor }: Place): boolean => code !== null && !actor.roles.includes("lead");
const shownName = (known: Restrictable, place: Place): string => (isHidden(known, place) ? (known.code ?? "") : known.name);
const namesOf = (known: Restrictable, place: Place, aliases: readonly string[] = []): string =>
  isHidden(known, place) ? (known.code ?? "") : [known.name, ...aliases, known.code ?? ""].join(" ");

const playerSuggested = (player: KnownPlayer, place: Place): Suggested => plain(shownName(player, place), namesOf(player, place, player.aliases));

const familyWords: Readonly<Record<ClubFamily, string>> = {
  driver: "driver",
  fairway: "fairway wood",
  hybrid: "hybrid",
  iron: "iron",
  wedge: "wedge",
  putter: "putter",
};

function clubSuggested(club: string): Suggested {
  const family = clubFamily(club);
  return { label: clubWords(club), value: club, text: `${club} ${family === null ? "" : familyWords[family]}` };
}

/** Of the player's bag where one is named, then every club that anybody plays, most played first; a club written in full comes first. */
function clubsSuggested(place: Place): readonly Suggested[] {
  const written = readClubName(place.typed);
  const player = playerNamed(place);
  const bag = player === null ? [] : player.clubs;
  const others = place.typed.trim() === "" && bag.length > 0 ? [] : place.names.clubs;
  const clubs = [...new Set([...bag, ...others])].filter((club) => club !== written).map(clubSuggested);
  return written === null ? clubs : [{ ...clubSuggested(written), text: `${place.typed} ${written}` }, ...clubs];
}

function playerNamed(place: Place): KnownPlayer | null {
  const match = matchPlayer(place.values.player ?? "", place.names.players);
  const player = match.kind === "one" ? (place.names.players.find(({ id }) => id === match.player.id) ?? null) : null;
  return player === null || isHidden(player, place) ? null : player;
}

type KnownOrder = KnownNames["orders"][number];

const ordersHere = ({ names, actor }: Place): readonly KnownOrder[] => names.orders.filter(({ truck }) => truck === actor.truck);

function orderSuggested({ number, player: playerId, kind, clubs, state }: KnownOrder, place: Place): Suggested {
  const player = place.names.players.find(({ id }) => id === playerId);
  const [name, names] = player === undefined ? ["erased", ""] : [shownName(player, place), namesOf(player, place, player.aliases)];
  const label = `${number} ${name} ${kind === "build" ? "" : `${kind} `}${clubsWords(clubs)} · ${stateWords[state]}`;
  return { label, value: String(number), text: `${label} ${names}` };
}

/** The other heads of the draft that is named. */
function serialsSuggested(place: Place): readonly Suggested[] {
  const ref = readOrderRef(place.values.order ?? "");
  const order = ref?.by === "number" ? ordersHere(place).find(({ number }) => number === ref.number) : undefined;
  return (order?.heads ?? []).map(({ serial, model }) => {
    const known = place.names.parts.head.find(({ name }) => name === model) ?? { name: model, code: null };
    const label = `${serial} ${shownName(known, place)}`;
    return { label, value: serial, text: label };
  });
}
