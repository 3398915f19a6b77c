import { type Instant, instant } from "../../core/kinds.ts";
import { instantIn, readLocalTime } from "../boundary/week/localTime.ts";
import type { RehearsalWorld } from "./rehearsalWorld.ts";
import type { Misuse, Session } from "./session.ts";

const LONGEST_MOVE_DAYS = 366;
const MS_PER_DAY = 86_400_000;

/** Moves the clock to a local time of the current channel. */
export async function passTimeToWritten({ world, channel }: Session, written: string): Promise<Misuse> {
  const time = readLocalTime(written);
  const zone = world.zoneOf(channel);
  const at = time === null ? null : instantIn(zone, time);
  return at === null ? `no such time in ${zone}: ${written}` : passTime(world, at);
}

export async function passTimeBy({ world }: Session, ms: number): Promise<Misuse> {
  return passTime(world, instant(world.clock.now() + ms));
}

/** Moves the clock on, stopping wherever something is due so that it is done at its own moment and in its order. */
async function passTime(world: RehearsalWorld, target: Instant): Promise<Misuse> {
  const { clock } = world;
  if (target < clock.now()) return "the clock moves forward only";
  if (target - clock.now() > LONGEST_MOVE_DAYS * MS_PER_DAY) return `the clock moves ${LONGEST_MOVE_DAYS} days at once at most`;
  for (let due = world.nextDueAt(target); due !== null && due < target; due = world.nextDueAt(target)) {
    if (due <= clock.now()) throw new Error(`what was due at ${new Date(due).toISOString()} is still due`);
    clock.moveTo(due);
    await world.settle();
  }
  clock.moveTo(target);
  await world.settle();
  return null;
}
