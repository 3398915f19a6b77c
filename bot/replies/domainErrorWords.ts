import type { Facts } from "../../core/errors.ts";
import { shown } from "./shown.ts";

const between = (min: number | undefined, max: number | undefined): string =>
  min === undefined ? (max === undefined ? "another value" : `at most ${max}`) : max === undefined ? `at least ${min}` : `${min} to ${max}`;

/** Words for every broken rule: a new code without any fails to compile. */
export const domainErrorWords: { readonly [C in keyof Facts]: (facts: Facts[C]) => string } = {
  "quantity-out-of-range": ({ field, value, unit, min, max }) => `${field} ${value} ${unit} cannot be: ${between(min, max)} ${unit} would do`,
  "quantity-unreadable": ({ field, written, accepted }) => `${field} "${written}" is not read: ${accepted} would do`,
  "list-of-wrong-size": ({ field, count, min, max }) => `${field}: ${count} given, ${min} to ${max} would do`,
  "shaft-too-short": ({ rawMm, neededMm }) => `The shaft is ${shown.both(rawMm)} raw, ${shown.both(neededMm)} is needed`,
  "tip-section-too-short": ({ wantedTrimMm, allowedTrimMm }) => `Tip ${shown.both(wantedTrimMm)} is too much: at most ${shown.both(allowedTrimMm)}`,
  "taper-not-tip-trimmed": ({ wantedTrimMm }) => `A taper tip is not tip-trimmed; ${shown.both(wantedTrimMm)} was asked`,
  "balance-outside-model": ({ balanceFromTipMm, minMm, maxMm }) =>
    `A balance of ${Math.round(balanceFromTipMm)} mm from the tip is outside ${Math.round(minMm)} to ${Math.round(maxMm)}: weigh the off-cuts`,
  "route-has-a-cycle": ({ steps }) => `The route goes in a circle: ${steps.join(", ")}`,
  "person-unknown": ({ name }) => `Nobody here is called ${name}`,
  "order-unknown": ({ written }) => `There is no order ${written} here`,
  "order-in-wrong-state": ({ number, state, wanted, action }) => `${number} is ${state}: ${action} needs it ${wanted}`,
  "not-reserved": ({ serial }) => `Head ${serial} is not held for an order`,
};
