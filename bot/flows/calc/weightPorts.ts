import { type Millimetres, millimetres } from "../../../core/quantity/units.ts";
import type { WeightPlace } from "../../../core/selection/weightQuestion.ts";
import type { WeightsValues } from "./clubToWeigh.ts";

/** Which way a port named by its side lies from the head's centre: back and towards the toe. */
const sides = {
  "rear port": [1, 0],
  "front port": [-1, 0],
  "toe port": [0, 1],
  "heel port": [0, -1],
} as const satisfies Partial<Record<keyof WeightsValues, readonly [back: number, toe: number]>>;

export const portNames = Object.keys(sides) as readonly (keyof typeof sides)[];

/** The ports as told, or so many at the head's centre. All are taken to lie as far from the cap as the centre does. */
export function weightPorts(values: WeightsValues, fromCapMm: Millimetres, count: number): readonly WeightPlace[] {
  const told = portNames.flatMap((name): readonly WeightPlace[] => {
    const awayMm = values[name]?.value;
    const [back, toe] = sides[name];
    return awayMm === undefined ? [] : [{ name, fromCapMm, backMm: millimetres(back * awayMm), toeMm: millimetres(toe * awayMm) }];
  });
  const atCentre = (at: number): WeightPlace => ({ name: `port ${at + 1}`, fromCapMm, backMm: millimetres(0), toeMm: millimetres(0) });
  return told.length > 0 ? told : Array.from({ length: count }, (_, at) => atCentre(at));
}
