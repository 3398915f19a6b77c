import { fileURLToPath } from "node:url";
import manifest from "../package.json" with { type: "json" };
import { readEnvironment } from "./config/environment.ts";
import { readDoctorOptions } from "./doctor/doctorOptions.ts";
import { examine } from "./doctor/examine.ts";
import { findingLine } from "./doctor/findingLine.ts";

async function main(): Promise<0 | 1 | 2> {
  const options = readDoctorOptions(process.argv.slice(2));
  if ("fault" in options) {
    process.stderr.write(`${options.fault}\n`);
    return 2;
  }
  const reading = readEnvironment(process.env);
  const findings = await examine({
    options,
    reading,
    node: { version: process.versions.node, range: manifest.engines.node },
    migrationsFolder: fileURLToPath(new URL("../db/migrations", import.meta.url)),
    workFolder: process.cwd(),
    now: Date.now,
  });
  const token = reading.kind === "environment" ? reading.token : null;
  for (const finding of findings) {
    process.stdout.write(`${findingLine(finding, { json: options.json, token })}\n`);
  }
  return findings.some(({ state }) => state === "fault") ? 1 : 0;
}

process.exitCode = await main();
