import type { Check, Finding } from "../../../bot/doctor/finding.ts";
import { runChecks } from "../../../bot/doctor/runChecks.ts";

/** What the check of a name finds; a test fails when there is no such check. */
export async function lookAt(checks: readonly Check[], name: string): Promise<Finding> {
  const [finding] = await runChecks(checks.filter((check) => check.name === name));
  if (finding === undefined) {
    throw new Error(`no check ${name} among ${checks.map((check) => check.name).join(", ")}`);
  }
  return finding;
}
