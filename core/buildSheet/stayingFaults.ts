import type { Clauses } from "./buildRequest.ts";
import type { ServiceFault, ServiceQuestion } from "./servicePlan.ts";
import { amountNames } from "./targetLimits.ts";

type Value = string | number | boolean | null;
interface WantedAndKnown {
  readonly wanted: Value;
  readonly known: Value;
}

/** Written to say which club it is: no wish to change it where the record is silent. */
const namesTheClub: ReadonlySet<string> = new Set(["headModel", "stampedLoftDeg", "shaft"]);
const SAME_WITHIN = 1e-6;

/** Every clause the record has a value for. */
function wantedAndKnown({ target, clauses, reference }: ServiceQuestion): Readonly<Partial<Record<keyof Clauses, WantedAndKnown>>> {
  const amounts = amountNames.map((name) => [name, { wanted: target[name], known: reference?.[name] ?? null }] as const);
  return {
    ...Object.fromEntries(amounts),
    headModel: { wanted: target.headModel, known: reference?.headModel ?? null },
    stampedLoftDeg: { wanted: target.stampedLoftDeg, known: reference?.stampedLoftDeg ?? null },
    grind: { wanted: target.grind, known: reference?.grind ?? null },
    shaft: { wanted: target.shaft, known: reference?.shaftModel ?? null },
    logo: { wanted: target.logo, known: reference?.logo ?? null },
    sleeve: { wanted: target.sleeveMark, known: reference?.sleeveMark ?? null },
    grip: { wanted: target.grip, known: reference?.gripModel ?? null },
    rib: { wanted: target.rib, known: reference?.rib ?? null },
    stamp: { wanted: clauses.stamp?.value ?? null, known: reference?.stamp ?? null },
  };
}

function asksForNothingNew(name: keyof Clauses, pair: WantedAndKnown | undefined): boolean {
  if (pair === undefined) {
    return false;
  }
  const { wanted, known } = pair;
  const near = typeof wanted === "number" && typeof known === "number" && Math.abs(wanted - known) <= SAME_WITHIN;
  return near || wanted === known || (known === null && namesTheClub.has(name));
}

/** What is written beyond what a kind of work changes and the club does not have already. */
export function stayingFaults(question: ServiceQuestion, changes: readonly (keyof Clauses)[]): readonly ServiceFault[] {
  const pairs = wantedAndKnown(question);
  const written = Object.keys(question.clauses) as readonly (keyof Clauses)[];
  const quantities = written.filter((name) => !changes.includes(name) && !asksForNothingNew(name, pairs[name]));
  return quantities.length === 0 ? [] : [{ code: "stays", kind: question.kind, quantities }];
}
