import { defineConfig } from "vitest/config";
import { PlainCount } from "./support/plainCount.ts";

export default defineConfig({
  test: {
    root: new URL("..", import.meta.url).pathname,
    include: ["tests/**/*.test.ts"],
    setupFiles: ["tests/support/seeded.ts"],
    pool: "forks",
    reporters: ["default", new PlainCount()],
    testTimeout: 120_000,
    hookTimeout: 120_000,
  },
});
