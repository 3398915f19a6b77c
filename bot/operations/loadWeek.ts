import type { Id, Instant } from "../../core/kinds.ts";
import { addBend, addHead, headBySerial } from "../../db/repositories/heads.ts";
import { addPartModel } from "../../db/repositories/partModels.ts";
import { addChannel, addEvent, addPerson, addPlayer, addToEvent, addTruck, setTechnician } from "../../db/repositories/people.ts";
import { addPlace } from "../../db/repositories/places.ts";
import { addPiece } from "../../db/repositories/shaftPieces.ts";
import { addStockEntry } from "../../db/repositories/stock.ts";
import { addMarking, addSpec, addWin } from "../../db/repositories/week.ts";
import type { Tx } from "../../db/write.ts";
import { foldText } from "../boundary/foldText.ts";
import type { Week } from "../boundary/week.ts";

type Keys<K extends string> = Map<string, Id<K>>;

/** A key that the reading of the files has checked already. */
function known<K extends string>(keys: Keys<K>, name: string): Id<K> {
  const found = keys.get(name);
  if (found === undefined) {
    throw new Error(`the week names ${name}, which it does not hold`);
  }
  return found;
}

const placeKey = (label: string, truck: string | null): string => `${truck ?? ""}/${label}`;

/**
 * Puts a checked week into an empty database, all of it in the transaction at hand.
 *
 * @param tx - an immediate transaction
 * @param week - as read from files, names as keys
 * @param platform - whose user ids the people's handles are
 * @param now - when it was loaded
 */
export function loadWeek(tx: Tx, week: Week, platform: string, now: Instant): void {
  const trucks: Keys<"truck"> = new Map(week.trucks.map(({ name }) => [name, addTruck(tx, name)]));
  const people = loadPeople(tx, week, platform, trucks);
  const players: Keys<"player"> = new Map(
    week.players.map(({ handle, aliases, ...row }) => [handle, addPlayer(tx, row, [...aliases, handle].map(foldText))]),
  );
  for (const row of week.channels) {
    addChannel(tx, { name: row.name, purpose: row.purpose, truckId: row.truck === null ? null : known(trucks, row.truck) });
  }
  const events = loadEvents(tx, week, trucks, players);
  loadParts(tx, week, { models: loadModels(tx, week), places: loadPlaces(tx, week, trucks, players) }, now);
  for (const { serial, by, ...row } of week.headBends) {
    addBend(tx, { ...row, headId: headOf(tx, serial), personId: known(people, by) });
  }
  for (const spec of [...week.specs].sort((a, b) => a.version - b.version)) {
    addSpec(tx, {
      playerId: known(players, spec.player),
      validFrom: spec.validFrom,
      personId: known(people, spec.by),
      eventId: spec.event === null ? null : known(events, spec.event),
      takenAt: spec.where,
      bag: spec.bag,
    });
  }
  for (const row of week.wins) {
    addWin(tx, { playerId: known(players, row.player), eventId: known(events, row.event), wonOn: row.wonOn });
  }
  for (const row of week.markings) {
    addMarking(tx, { playerId: known(players, row.player), club: row.club, text: row.text, forWin: row.win });
  }
}

function loadPeople(tx: Tx, week: Week, platform: string, trucks: Keys<"truck">): Keys<"person"> {
  return new Map(
    week.people.map(({ handle, name, roles, zone, lengthUnit, truck, skills }) => {
      const personId = addPerson(tx, { name, zone, lengthUnit }, { platform, userId: handle, roles });
      if (truck !== null && roles.includes("technician")) {
        setTechnician(tx, known(trucks, truck), personId, { skills: skills === null ? null : JSON.stringify(skills) });
      }
      return [handle, personId];
    }),
  );
}

function loadEvents(tx: Tx, week: Week, trucks: Keys<"truck">, players: Keys<"player">): Keys<"event"> {
  return new Map(
    week.events.map(({ trucks: stays, open, field, teeTimes, ...row }) => {
      const eventId = addEvent(tx, row);
      for (const stay of stays) {
        addToEvent.truck(tx, { truckId: known(trucks, stay.truck), eventId, arrivesAt: stay.arrivesAt, rollOutAt: stay.rollOutAt });
      }
      for (const hours of open) {
        addToEvent.opening(tx, { truckId: known(trucks, hours.truck), opensAt: hours.from, closesAt: hours.to });
      }
      for (const handle of field) {
        addToEvent.player(tx, { eventId, playerId: known(players, handle) });
      }
      for (const tee of teeTimes) {
        addToEvent.teeTime(tx, { eventId, playerId: known(players, tee.player), kind: tee.kind, at: tee.at });
      }
      return [row.name, eventId];
    }),
  );
}

function headOf(tx: Tx, serial: string): Id<"head"> {
  const head = headBySerial(tx, serial);
  if (head === null) {
    throw new Error(`the week names head ${serial}, which it does not hold`);
  }
  return head.id;
}

function loadModels(tx: Tx, week: Week): Keys<"partModel"> {
  const models: Keys<"partModel"> = new Map();
  const add = (kind: "head" | "sleeve" | "shaft" | "grip" | "weight" | "goods", rows: readonly { readonly name: string }[]): void => {
    for (const { name, ...facts } of rows) {
      const { restrictedCode = null, ...shown } = facts as { restrictedCode?: string | null };
      models.set(`${kind}/${name}`, addPartModel(tx, { kind, name, facts: shown, restrictedCode }));
    }
  };
  add("head", week.headModels);
  add("sleeve", week.sleeves);
  add("shaft", week.shafts);
  add("grip", week.grips);
  add("weight", week.weights);
  add("goods", week.goods);
  return models;
}

function loadPlaces(tx: Tx, week: Week, trucks: Keys<"truck">, players: Keys<"player">): Keys<"place"> {
  return new Map(
    week.places.map(({ kind, label, truck, player }) => [
      placeKey(label, truck),
      addPlace(tx, {
        kind,
        label,
        truckId: truck === null ? null : known(trucks, truck),
        playerId: player === null ? null : known(players, player),
      }),
    ]),
  );
}

/** Heads, prepared shafts and counted parts, each where it lies. */
function loadParts(
  tx: Tx,
  week: Week,
  { models, places }: { readonly models: Keys<"partModel">; readonly places: Keys<"place"> },
  now: Instant,
): void {
  for (const { model, place, truck, ...row } of week.heads) {
    addHead(tx, { ...row, modelId: known(models, `head/${model}`), placeId: known(places, placeKey(place, truck)) });
  }
  for (const { model, sleeve, place, truck, ...row } of week.shaftPieces) {
    addPiece(tx, {
      ...row,
      modelId: known(models, `shaft/${model}`),
      sleeveModelId: sleeve === null ? null : known(models, `sleeve/${sleeve}`),
      placeId: known(places, placeKey(place, truck)),
      addedAt: now,
    });
  }
  for (const row of week.stock) {
    addStockEntry(tx, {
      partModelId: known(models, `${row.kind}/${row.model}`),
      placeId: known(places, placeKey(row.place, row.truck)),
      quantityChange: row.quantity,
      reason: "counted in",
      at: now,
    });
  }
}

/** The person a fresh database without a week belongs to: its lead. */
export function loadNobodyButTheLead(tx: Tx, platform: string, zone: string): void {
  addPerson(tx, { name: "Lead", zone, lengthUnit: "in" }, { platform, userId: "lead", roles: ["lead"] });
  addChannel(tx, { name: "general", purpose: "general", truckId: null });
}
