import type { Finding } from "./finding.ts";

const labels = { ok: "ok", warn: "warn", fault: "FAULT", skipped: "skipped" } as const;

/** One line for a person, or one JSON object for a program; the token is in neither, whatever a fault quotes. */
export function findingLine(finding: Finding, { json, token }: { readonly json: boolean; readonly token: string | null }): string {
  const name = oneLine(finding.name, token);
  const found = oneLine(finding.found, token);
  const remedy = finding.remedy === null ? null : oneLine(finding.remedy, token);
  if (json) {
    return JSON.stringify({ name, state: finding.state, found, remedy });
  }
  return `${labels[finding.state].padEnd(7)} ${name}: ${found}${remedy === null ? "" : `. ${remedy}`}`;
}

function oneLine(text: string, token: string | null): string {
  const bare = token?.replace(/^(Bot|Bearer)\s*/i, "") ?? "";
  const safe = bare === "" ? text : text.replaceAll(bare, "(token)");
  return safe
    .replace(/[\s\p{Cc}]+/gu, " ")
    .trim()
    .replace(/\.$/, "");
}
