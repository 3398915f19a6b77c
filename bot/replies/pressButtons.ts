import type { Button } from "../chat/types.ts";
import type { OrderFacts } from "../operations/orderFacts.ts";

type Act = (label: string, command: string, weight?: Button["weight"]) => Button;

/** A press on an order, the button named by its number where a card has several. */
export const pressOn =
  ({ order, number, version }: OrderFacts, several = false): Act =>
  (label, command, weight = "plain") => ({
    label: several ? `${label} ${number}` : label,
    weight,
    action: { command, subject: `order:${order}`, version },
  });

function restButtons({ atBench }: OrderFacts, act: Act): readonly Button[] {
  const handBack = act("Hand back", "step back");
  switch (atBench.resting) {
    case null:
      return [act("Pause", "step pause"), handBack];
    case "paused":
      return [handBack];
    case "handedBack":
      return [];
  }
}

/** What a technician may press on an order as it stands: the three presses, Pause, Resume, Hand back. */
export function pressButtons(facts: OrderFacts, act: Act): readonly Button[] {
  const { state, atBench } = facts;
  if (facts.heldReason !== null) {
    return [];
  }
  const rests = atBench.resting !== null;
  const resume = rests ? [act("Resume", "step resume", "main")] : [];
  switch (state) {
    case "confirmed":
      return [act("Start", "step start", facts.awaitsClub ? "plain" : "main")];
    case "building": {
      const glues = facts.clubs.some((club) => club.steps.some((step) => step.kind === "bondSet" && step.state === "todo"));
      const glueOn = glues ? [act("Glue on", "step glue", rests ? "plain" : "main")] : [];
      return [...resume, ...glueOn, act("Done", "step done", rests || glues ? "plain" : "main"), ...restButtons(facts, act)];
    }
    case "finalCheck":
      return [...resume, ...restButtons(facts, act)];
    default:
      return [];
  }
}
