import { oneOf } from "../quantity/oneOf.ts";
import type { Degrees } from "../quantity/units.ts";
import { angleInRange } from "./angleLimits.ts";
import { onClock, shorterTurn } from "./clock.ts";

export type Logo = "up" | "down";

/** Where a shaft's logo, its grip's rib and its spine are, on the clock of the head's hand; null where there is none. */
export interface ShaftMarkings {
  readonly logo: Logo;
  readonly ribClockDeg: Degrees | null;
  readonly spineClockDeg: Degrees | null;
}

/** The same after a turn: a logo that is neither up nor down any more is turned. */
interface TurnedMarkings {
  readonly logo: Logo | "turned";
  readonly logoClockDeg: Degrees;
  readonly ribClockDeg: Degrees | null;
  readonly spineClockDeg: Degrees | null;
}

const logoClockDeg: Readonly<Record<Logo, number>> = { up: 90, down: 270 };
const AS_GOOD_AS_DEG = 1e-6;

const logoAt = (clockDeg: number): Logo | "turned" => {
  const within = (logo: Logo) => Math.abs(shorterTurn(clockDeg - logoClockDeg[logo])) < AS_GOOD_AS_DEG;
  return within("up") ? "up" : within("down") ? "down" : "turned";
};

function turned(markings: ShaftMarkings, turnDeg: number): TurnedMarkings {
  const at = (clockDeg: number | null, field: string) => (clockDeg === null ? null : onClock(angleInRange(clockDeg, "clock", field) + turnDeg));
  const logo = onClock(logoClockDeg[oneOf(markings.logo, ["up", "down"], "logo")] + turnDeg);
  return {
    logo: logoAt(logo),
    logoClockDeg: logo,
    ribClockDeg: at(markings.ribClockDeg, "ribClockDeg"),
    spineClockDeg: at(markings.spineClockDeg, "spineClockDeg"),
  };
}

/**
 * Where logo, rib and spine end when the shaft turns with its sleeve.
 *
 *     clock' = clock + turn
 *
 * Exact for the sleeve, see `turnOfShaft`. A turn of 180° puts a logo up that was down; any but 0 and 180 shows it from
 * the side, and a ribbed grip is wrong after every turn but 0.
 *
 * @param markings - before the turn; clocks in degrees, 0 to the target, 90 up, 270 down
 * @param onClockDeg - the turn in degrees on the clock of the head's hand
 * @returns after the turn, clocks in degrees from 0 to below 360
 * @throws {DomainError} `quantity-out-of-range` when an angle is impossible, `quantity-unreadable` when the logo is neither up nor down
 * @see fixtures/published/sleeveHands.json
 */
export function graphicsAfterTurn(markings: ShaftMarkings, onClockDeg: Degrees): TurnedMarkings {
  return turned(markings, angleInRange(onClockDeg, "clock", "onClockDeg"));
}

/**
 * How to set logo, rib and spine at one mark so that they are as wanted at the mark the club is played at.
 *
 *     clock = clock' − turn
 *
 * The turn of `graphicsAfterTurn` taken back, exact like it.
 *
 * @param wanted - after the turn; clocks in degrees, 0 to the target, 90 up, 270 down
 * @param onClockDeg - the turn in degrees, from the mark the shaft is bonded at to the mark it is played at
 * @returns what the technician sets before the turn, clocks in degrees from 0 to below 360
 * @throws {DomainError} `quantity-out-of-range` when an angle is impossible, `quantity-unreadable` when the logo is neither up nor down
 * @see fixtures/published/sleeveHands.json
 */
export function graphicsToSet(wanted: ShaftMarkings, onClockDeg: Degrees): TurnedMarkings {
  return turned(wanted, -angleInRange(onClockDeg, "clock", "onClockDeg"));
}
