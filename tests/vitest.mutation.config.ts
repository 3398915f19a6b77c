import { defineConfig } from "vitest/config";

/** The tests of one room of core, which mutants of that room have to survive. */
export default defineConfig({
  test: {
    root: new URL("..", import.meta.url).pathname,
    include: [`tests/core/${process.env.MUTATED_ROOM ?? "*"}/**/*.test.ts`],
    setupFiles: ["tests/support/seeded.ts"],
    env: { PROPERTY_RUNS: "20" },
    testTimeout: 60_000,
    isolate: false,
  },
});
