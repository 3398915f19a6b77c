import { eventRow, eventTruckRow, fieldRow, markingRow, openingRow, orderRow, teeTimeRow, winRow } from "./eventRows.ts";
import {
  goodsRow,
  gripRow,
  headBendRow,
  headModelRow,
  headRow,
  placeRow,
  shaftPieceRow,
  shaftRow,
  sleeveMarkRow,
  sleeveRow,
  stockRow,
  weightRow,
} from "./partRows.ts";
import { channelRow, personRow, playerRow, truckRow } from "./peopleRows.ts";
import { readTable, readTableIfAny } from "./readTable.ts";
import { specClubRow, specVersionRow } from "./specRows.ts";

/** Every file of a week, read by itself: who, when, parts, where they lie, what is in the bags, what is under way. */
export function weekTables(folder: string) {
  return {
    trucks: readTable(folder, "trucks.csv", truckRow),
    people: readTable(folder, "people.csv", personRow),
    channels: readTable(folder, "channels.csv", channelRow),
    players: readTable(folder, "players.csv", playerRow),
    events: readTable(folder, "events.csv", eventRow),
    eventTrucks: readTable(folder, "event-trucks.csv", eventTruckRow),
    openings: readTable(folder, "opening-hours.csv", openingRow),
    field: readTable(folder, "field.csv", fieldRow),
    teeTimes: readTable(folder, "tee-times.csv", teeTimeRow),
    headModels: readTable(folder, "head-models.csv", headModelRow),
    sleeves: readTable(folder, "sleeves.csv", sleeveRow),
    sleeveMarks: readTable(folder, "sleeve-marks.csv", sleeveMarkRow),
    shafts: readTable(folder, "shafts.csv", shaftRow),
    grips: readTable(folder, "grips.csv", gripRow),
    weights: readTable(folder, "weights.csv", weightRow),
    goods: readTable(folder, "goods.csv", goodsRow),
    places: readTable(folder, "places.csv", placeRow),
    heads: readTable(folder, "heads.csv", headRow),
    headBends: readTableIfAny(folder, "head-bends.csv", headBendRow),
    shaftPieces: readTableIfAny(folder, "shaft-pieces.csv", shaftPieceRow),
    stock: readTable(folder, "stock.csv", stockRow),
    specVersions: readTable(folder, "spec-versions.csv", specVersionRow),
    specClubs: readTable(folder, "spec-clubs.csv", specClubRow),
    wins: readTable(folder, "wins.csv", winRow),
    markings: readTable(folder, "markings.csv", markingRow),
    orders: readTable(folder, "orders.csv", orderRow),
  };
}

export type WeekTables = ReturnType<typeof weekTables>;
