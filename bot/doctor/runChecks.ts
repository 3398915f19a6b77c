import { DatabaseRefusal } from "../../db/databaseRefusal.ts";
import { type Check, type Finding, fault } from "./finding.ts";

/** Looks one after the other; a check that throws is a fault of its own, and the others go on. */
export async function runChecks(checks: readonly Check[]): Promise<readonly Finding[]> {
  const findings: Finding[] = [];
  for (const check of checks) {
    findings.push(await runOne(check));
  }
  return findings;
}

async function runOne({ name, look }: Check): Promise<Finding> {
  try {
    return { name, ...(await look()) };
  } catch (error) {
    // A refusal says itself what to do.
    return error instanceof DatabaseRefusal
      ? { name, state: "fault", found: error.message, remedy: null }
      : { name, ...fault(error instanceof Error ? error.message : String(error), "Run npm ci again; if this stays, report it with this line") };
  }
}
