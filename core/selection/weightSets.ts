import { listOf } from "../quantity/listOf.ts";
import { checkWeightPlace, checkWeightStock } from "./weightChecks.ts";
import type { StockedWeight, WeightPlace } from "./weightQuestion.ts";

/** All weights of one mass, those in the player's bin first: to the head they are one and the same. */
interface MassClass<W extends StockedWeight> {
  readonly massG: number;
  readonly rows: readonly W[];
}

/** One way to fill the ports: the mass in each, nothing in an empty one. */
export interface WeightSet {
  readonly massesG: readonly number[];
  readonly massG: number;
  readonly count: number;
  /** How many of them do not come out of the player's bin. */
  readonly fromElsewhere: number;
}

/** Past so many ways to fill the ports (16 masses for four of them, 45 for three) the search would be slow. */
const MOST_SETS = 100_000;
const MOST_PORTS = 4;
const EMPTY = -1;

const byText = (one: string, other: string) => (one < other ? -1 : Number(one > other));

const stockOrder = (one: StockedWeight, other: StockedWeight) =>
  Number(other.inPlayersBin) - Number(one.inPlayersBin) || byText(one.name, other.name) || byText(one.place, other.place);

const freeOf = (rows: readonly StockedWeight[]) => rows.reduce((total, { free }) => total + free, 0);

function massClasses<W extends StockedWeight>(stock: readonly W[]): readonly MassClass<W>[] {
  const free = stock.filter((row) => row.free > 0);
  return [...new Set(free.map(({ massG }) => massG))]
    .sort((one, other) => one - other)
    .map((massG) => ({ massG, rows: free.filter((row) => row.massG === massG).sort(stockOrder) }));
}

const samePlace = (one: WeightPlace, other: WeightPlace) =>
  one.fromCapMm === other.fromCapMm && one.backMm === other.backMm && one.toeMm === other.toeMm;

const timesIn = (taken: readonly number[], wanted: number) => taken.reduce((total, kind) => total + Number(kind === wanted), 0);

/**
 * Every way to fill the ports of a head from stock, ports left empty included.
 *
 * Weights of one mass count as one kind, and ports at the same place are filled heaviest first, so that no two ways
 * weigh the same in every place. The order of the stock changes nothing.
 *
 * @param stock - weights in g, how many of each are free
 * @param ports - places in mm
 * @returns the mass in each port in g, port by port as they came
 * @throws {DomainError} `quantity-out-of-range` when a value is impossible
 * @throws {DomainError} `list-of-wrong-size` for more than four ports, or more masses than can be tried
 */
export function weightSets(stock: readonly StockedWeight[], ports: readonly WeightPlace[]): readonly WeightSet[] {
  listOf(ports, { field: "ports", min: 0, max: MOST_PORTS }).forEach(checkWeightPlace);
  checkWeightStock(stock, "screws");
  const most = Math.floor(MOST_SETS ** (1 / Math.max(1, ports.length))) - 1;
  const classes = listOf(massClasses(stock), { field: "screwMasses", min: 0, max: most });
  const kinds = classes.map(({ rows }) => freeOf(rows));
  const inBin = classes.map(({ rows }) => freeOf(rows.filter(({ inPlayersBin }) => inPlayersBin)));
  const fillings = ports.reduce<readonly (readonly number[])[]>(
    (found, port, at) => {
      const twin = ports.slice(0, at).findLastIndex((earlier) => samePlace(earlier, port));
      return found.flatMap((taken) => {
        const heaviest = taken[twin] ?? classes.length - 1;
        const usable = kinds.flatMap((free, kind) => (kind <= heaviest && timesIn(taken, kind) < free ? [kind] : []));
        return [EMPTY, ...usable].map((kind) => [...taken, kind]);
      });
    },
    [[]],
  );
  return fillings.map((taken) => {
    const massesG = taken.map((kind) => classes[kind]?.massG ?? 0);
    return {
      massesG,
      massG: massesG.reduce((total, massG) => total + massG, 0),
      count: taken.length - timesIn(taken, EMPTY),
      fromElsewhere: taken.filter((kind, at) => kind !== EMPTY && timesIn(taken.slice(0, at), kind) >= (inBin[kind] ?? 0)).length,
    };
  });
}

/** The weights themselves, port by port: of each mass out of the player's bin first. */
export function weightsOfSet<W extends StockedWeight>(set: WeightSet, stock: readonly W[]): readonly (W | null)[] {
  const lying = new Map(
    massClasses(stock).map(({ massG, rows }) => [massG, rows.flatMap((row) => Array<W>(Math.min(row.free, MOST_PORTS)).fill(row))]),
  );
  return set.massesG.map((massG, port) => lying.get(massG)?.[timesIn(set.massesG.slice(0, port), massG)] ?? null);
}
