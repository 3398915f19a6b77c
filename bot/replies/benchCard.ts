import type { StepKind } from "../../core/bench/benchTypes.ts";
import type { Id, Instant } from "../../core/kinds.ts";
import type { Button, Card, Json, Line, Reply } from "../chat/types.ts";
import type { NextFacts, NextStep, TechnicianNext } from "../operations/nextFacts.ts";
import { card, line, note } from "./card.ts";
import { nextWhyWords } from "./nextWhyWords.ts";
import { orderTitle } from "./orderTitle.ts";
import { pressButtons, pressOn } from "./pressButtons.ts";
import { firstName, sheetName, timeText } from "./shown.ts";
import { stepSaid } from "./stepWords.ts";

/** The club of an order of several, before what is done to it. */
function clubOf({ order, job }: NextStep): string {
  const club = order.clubs[job];
  return order.clubs.length > 1 && club !== undefined ? `${sheetName(club)} ` : "";
}

const work = (step: NextStep): string => `${orderTitle(step.order)}: ${clubOf(step)}${stepSaid(step.kind)}`;
const shortWork = (step: NextStep): string => `${step.order.number} ${clubOf(step)}${stepSaid(step.kind)}`;

const settingWords: Partial<Readonly<Record<StepKind, string>>> = {
  bondSet: "glue on",
  gripSet: "grip on",
  coolDown: "cooling",
  paintDry: "paint on",
};

const MOST_MEANWHILE = 4;

/** What is done one after another, an order named once for all that follows on it. */
function worksOf(steps: readonly NextStep[]): string {
  const shown = steps.slice(0, MOST_MEANWHILE).map((step, at) => {
    const before = steps[at - 1];
    return before?.order === step.order && before.job === step.job ? stepSaid(step.kind) : shortWork(step);
  });
  const left = steps.length - shown.length;
  return [...shown, ...(left > 0 ? [`${left} more`] : [])].join(", ");
}

function waitLines({ now: step, wait, meanwhile }: TechnicianNext, now: Instant, zone: string): readonly Line[] {
  const fits = meanwhile.length === 0 ? [] : [`meanwhile: ${worksOf(meanwhile)}`];
  if (step === null || wait === null) {
    return fits.map((words) => line(words));
  }
  const till = wait.kind === "coolDown" || wait.kind === "paintDry" ? "till" : "sets till";
  const sets = `${settingWords[wait.kind] ?? ""} ${step.order.number} ${till} ${timeText(wait.till, now, zone)}`.trim();
  return [line([sets, ...fits].join("; "))];
}

function block(one: TechnicianNext, facts: NextFacts, now: Instant): readonly Line[] {
  const name = firstName(one.name);
  const why = nextWhyWords(one, facts, now);
  return one.now === null
    ? [line({ strong: `${name}: ` }, why), ...waitLines(one, now, facts.zone)]
    : [line({ strong: `${name}: ${work(one.now)}` }), line(why), ...waitLines(one, now, facts.zone)];
}

/** Of the others one line each. */
const short = (one: TechnicianNext, facts: NextFacts, now: Instant): Line =>
  line(`${firstName(one.name)}: ${one.now === null ? nextWhyWords(one, facts, now) : shortWork(one.now)}`);

const MOST_BUTTONS = 25;

const isRest = ({ action }: Button): boolean => action.command === "step pause" || action.command === "step back";

/** Presses on the order that is next, then those that take the others in their hands further; nobody lets another's work rest here. */
function buttonsOf(own: TechnicianNext): readonly Button[] {
  const next = own.now?.order ?? null;
  const others = own.inHand.filter(({ order }) => order !== next?.order);
  const several = others.length > (next === null ? 1 : 0);
  const isOwn = next !== null && (next.atBench.hands === null || next.atBench.hands.person === own.person);
  const onNext = next === null ? [] : pressButtons(next, pressOn(next, several)).filter((button) => isOwn || !isRest(button));
  const onOthers = others.flatMap((order) => pressButtons(order, pressOn(order, several)).filter((button) => !isRest(button)));
  return [...onNext, ...onOthers].slice(0, MOST_BUTTONS);
}

function dataOf(one: TechnicianNext): Json {
  const { why } = one;
  const spareMin = why.kind === "due" ? why.spareMin : why.kind === "late" ? -why.lateMin : null;
  return {
    technician: firstName(one.name),
    orderNumber: one.now?.order.number ?? null,
    step: one.now?.kind ?? null,
    startAt: one.now?.startAt ?? null,
    endAt: one.now?.endAt ?? null,
    waitEndsAt: one.wait?.till ?? null,
    why: why.kind,
    spareMin,
    meanwhile: one.meanwhile.map(({ order, kind, startAt, endAt }) => ({ orderNumber: order.number, step: kind, startAt, endAt })),
  };
}

/** A technician who asks is told first, with buttons; anyone else sees everybody's. */
export function benchCard(facts: NextFacts, asker: { readonly person: Id<"person"> | null; readonly isTechnician: boolean }, now: Instant): Card {
  const { technicians } = facts;
  const own = technicians.find(({ person }) => person === asker.person) ?? null;
  const others = technicians.filter((one) => one !== own);
  const signOn = own === null && asker.isTechnician ? [line("You are not signed on here: /shift on")] : [];
  return card({
    kind: "bench.next",
    title: own === null ? "What is next at the bench" : `Next for ${firstName(own.name)}`,
    lines:
      own === null
        ? [...others.flatMap((one) => block(one, facts, now)), ...signOn]
        : [...block(own, facts, now), ...others.map((one) => short(one, facts, now))],
    buttons: own === null ? [] : buttonsOf(own),
    data: { technicians: [...(own === null ? [] : [own]), ...others].map(dataOf) },
  });
}

export const benchNotes = {
  noTruck: (): Reply => note("refusal", "This channel has no truck", "attention", "Ask in a truck's channel."),
  nobody: (): Reply => note("bench.next", "Nobody is signed on", "attention", "A technician signs on with /shift on."),
};
