import type { StepKind } from "../../core/bench/benchTypes.ts";

/** Every step of every route, as a technician ticks it. */
export const stepWords: Readonly<Record<StepKind, string>> = {
  pullParts: "Pull the parts",
  tipPrepare: "Trim and abrade the tip",
  dryFit: "Dry fit",
  bond: "Glue",
  bondSet: "Glue sets",
  gaugeHead: "Gauge the head",
  pullHead: "Pull and weigh the head",
  layOutGrip: "Lay out the grip",
  headOn: "Head on",
  cut: "Cut to length",
  dryWeigh: "Weigh dry",
  grip: "Grip",
  gripSet: "Grip sets",
  measure: "Measure",
  sign: "Sign",
  walk: "Bring it to the player",
  removeOld: "Take the old off",
  coolDown: "Let it cool",
  turnFerrule: "Turn the ferrule",
  bend: "Bend",
  turnSleeve: "Turn the sleeve",
  stampText: "Stamp",
  paintDry: "Paint dries",
  soleWork: "Sole work",
  inspect: "Look it over",
};

/** The same within a sentence. */
export const stepSaid = (kind: StepKind): string => stepWords[kind].charAt(0).toLowerCase() + stepWords[kind].slice(1);
