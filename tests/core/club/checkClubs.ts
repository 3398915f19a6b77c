import fc from "fast-check";
import type { ClubComponent } from "../../../core/club/clubComponent.ts";
import type { BuiltClub } from "../../../core/club/clubParts.ts";
import { grams, kilogramSquareCentimetres, millimetres, mmFromInches } from "../../../core/quantity/units.ts";
import worked from "../../../fixtures/published/pointMassClubs.json" with { type: "json" };

export type CheckClub = (typeof worked.rows)[number];

export const rowOf = (club: string): CheckClub => {
  const row = worked.rows.find((one) => one.club === club);
  if (row === undefined) throw new Error(`no check club ${club}`);
  return row;
};

/** The parts of a check club as points on the axis. */
export const componentsOfRow = (row: CheckClub): readonly ClubComponent[] =>
  row.parts.map(([name, massG, fromCapIn]) => ({ name: String(name), massG: grams(Number(massG)), fromCapMm: mmFromInches(Number(fromCapIn)) }));

const named = (parts: readonly ClubComponent[], name: string): ClubComponent => {
  const part = parts.find((one) => one.name === name);
  if (part === undefined) throw new Error(`no ${name}`);
  return part;
};

const built = (row: CheckClub, parts: readonly ClubComponent[]): BuiltClub => ({
  head: named(parts, "head"),
  shaft: named(parts, "shaft"),
  grip: named(parts, "grip"),
  headEnd: parts.filter(({ name }) => !["head", "shaft", "grip", "tape"].includes(name)),
  buttEnd: parts.filter(({ name }) => name === "tape"),
  shaftLengthMm: mmFromInches(row.shaftLengthIn),
  capMm: mmFromInches(0.125),
});

export const pointClub = (row: CheckClub): BuiltClub => built(row, componentsOfRow(row));

/** The same club with the inertia of shaft, head and grip about their own centres, straight from the definitions. */
export function clubWithOwnInertia(row: CheckClub): BuiltClub {
  const club = pointClub(row);
  const own = (kgCm2: number) => ({ ownInertiaKgCm2: kilogramSquareCentimetres(kgCm2) });
  return {
    ...club,
    shaft: { ...club.shaft, ...own((club.shaft.massG * (row.shaftLengthIn * 2.54) ** 2) / 12_000) },
    head: { ...club.head, fromAxisMm: millimetres(row.headFromAxisCm * 10), ...own(row.headOwnInertiaKgCm2) },
    grip: { ...club.grip, ...own((club.grip.massG * 7.62 ** 2) / 1000) },
  };
}

export const driver = rowOf("driver");
export const iron = rowOf("steel 7-iron");

export const someComponents = fc.array(
  fc.record({
    name: fc.constant("part"),
    massG: fc.double({ min: 0.5, max: 200, noNaN: true }).map(grams),
    fromCapMm: fc.double({ min: 0, max: 1300, noNaN: true }).map(millimetres),
    fromAxisMm: fc.double({ min: 0, max: 60, noNaN: true }).map(millimetres),
    ownInertiaKgCm2: fc.double({ min: 0, max: 80, noNaN: true }).map(kilogramSquareCentimetres),
  }),
  { minLength: 1, maxLength: 8 },
);
