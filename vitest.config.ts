import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    include: ["tests/**/*.test.ts"],
    globalSetup: "tests/temporary-folder.ts",
    testTimeout: 60_000,
    hookTimeout: 240_000,
  },
});
