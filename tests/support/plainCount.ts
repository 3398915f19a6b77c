import type { Reporter, TestModule } from "vitest/node";

/** Closes a run with one plain line of what passed and what failed; a file that could not be read or set up counts as failed. */
export class PlainCount implements Reporter {
  onTestRunEnd(modules: readonly TestModule[]): void {
    const states = modules.flatMap((module) => [...module.children.allTests()].map((test) => test.result().state));
    const unread = modules.filter(
      (module) => module.errors().length > 0 || [...module.children.allSuites()].some((suite) => suite.errors().length > 0),
    ).length;
    const count = (state: string): number => states.filter((found) => found === state).length;
    const skipped = count("skipped");
    process.stdout.write(`\n${count("passed")} passed, ${count("failed") + unread} failed${skipped > 0 ? `, ${skipped} skipped` : ""}\n`);
  }
}
