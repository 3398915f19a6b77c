import type { Station } from "../../core/bench/benchTypes.ts";
import type { BoardBar, ReadyBoardFacts } from "../operations/readyBoard.ts";
import type { BoardPrintBar, ReadyBoardPrint } from "../prints/ready/readyBoardPrint.ts";
import { orderTitle } from "./orderTitle.ts";
import { clubsWords, firstName } from "./shown.ts";

const stationWords: Readonly<Record<Station, string>> = {
  bench: "Bench",
  cutter: "Cutter",
  bonding: "Bonding",
  gripping: "Gripping",
  loftLie: "Loft and lie",
  scale: "Scale",
  marking: "Marking",
  walk: "Walk",
};

const waitBarWords: Readonly<Record<string, string>> = { bondSet: "glue", gripSet: "grip", coolDown: "cools", paintDry: "paint" };

/** Rows of one name are told apart by a number. */
function numbered<T>(rows: readonly T[], nameOf: (row: T) => string): readonly { readonly row: T; readonly label: string }[] {
  const seen = new Map<string, number>();
  return rows.map((row) => {
    const name = nameOf(row);
    const count = (seen.get(name) ?? 0) + 1;
    seen.set(name, count);
    return { row, label: count === 1 ? name : `${name} ${count}` };
  });
}

/** The words of a ready board, for the picture and for the text. */
export function readyBoardPrintOf(facts: ReadyBoardFacts): ReadyBoardPrint {
  const clubs = new Map(facts.orders.map(({ order, request }) => [order, clubsWords(request.clubs)]));
  const bar = ({ fromAt, toAt, underWay }: BoardBar, label: string, wait: boolean): BoardPrintBar => ({
    from: fromAt,
    to: toAt,
    label,
    wait,
    underWay,
  });
  return {
    truck: facts.truck,
    zone: facts.zone,
    now: facts.now,
    from: facts.from,
    to: facts.to,
    rollOutAt: facts.rollOutAt,
    closed: facts.closed,
    rows: [
      ...facts.technicians.map(({ name, bars }) => ({
        label: firstName(name),
        kind: "technician" as const,
        bars: bars.map((one) => bar(one, `${one.orderNumber} ${clubs.get(one.order) ?? ""}`.trim(), false)),
      })),
      ...numbered(facts.stations, ({ station }) => stationWords[station]).map(({ row, label }) => ({
        label,
        kind: "station" as const,
        bars: row.bars.map((one) => bar(one, `${one.orderNumber}`, false)),
      })),
      ...numbered(facts.waits, () => "Setting").map(({ row, label }) => ({
        label,
        kind: "station" as const,
        bars: row.map((one) => bar(one, `${one.orderNumber} ${waitBarWords[one.kind] ?? ""}`.trim(), true)),
      })),
    ],
    orders: facts.orders.map((order) => ({
      number: order.number,
      title: orderTitle(order),
      likelyAt: order.likelyAt,
      promiseAt: order.promiseAt,
      byAt: order.byAt,
    })),
  };
}
