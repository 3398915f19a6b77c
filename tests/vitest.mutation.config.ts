import { defineConfig } from "vitest/config";

/** The tests that mutants of the calculation core have to survive; nothing that opens a database. */
export default defineConfig({
  test: {
    root: new URL("..", import.meta.url).pathname,
    include: ["tests/core/{quantity,club,head,rules,bag,selection}/**/*.test.ts"],
    testTimeout: 60_000,
    isolate: false,
  },
});
