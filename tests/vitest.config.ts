import { defineConfig } from "vitest/config";
import { PlainCount } from "./support/plainCount.ts";

export default defineConfig({
  test: {
    root: new URL("..", import.meta.url).pathname,
    include: ["tests/**/*.test.ts"],
    setupFiles: ["tests/support/seeded.ts"],
    pool: "forks",
    // The modules keep no state of their own, so a worker loads them, and the demo week, once for all its files.
    isolate: false,
    // Two at a time also where the machine has no more than two cores.
    maxWorkers: 2,
    reporters: ["default", new PlainCount()],
    testTimeout: 120_000,
    hookTimeout: 120_000,
  },
});
