import { defineConfig } from "vitest/config";
import { namesWhatIsLeftOut } from "./tests/left-out.ts";

/** Rooms that reckon and word: their tests need no disk of their own and leave nothing behind, so they share their modules. */
const PURE =
  "tests/{almanac,facts,garden,language,note-lines,records,reading-shown,reading-tables,season,timeline,tour,tour-plan,wrap}/**/*.test.ts";

/** Among them, and yet they publish, run commands or open a browser, */
const NOT_PURE = ["tests/tour/brief-page.test.ts", "tests/tour-plan/commands.test.ts"];
/** or read thousands of made-up notes, or one of 5 MB. */
const THOROUGH = [
  "tests/records/any-text.test.ts",
  "tests/records/bad-input.test.ts",
  "tests/timeline/folding.test.ts",
];
const NOT_QUICK = [...NOT_PURE, ...THOROUGH];

export default defineConfig({
  test: {
    globalSetup: "tests/temporary-folder.ts",
    setupFiles: "tests/same-chance.ts",
    reporters: ["default", namesWhatIsLeftOut],
    testTimeout: 180_000,
    hookTimeout: 240_000,
    // All cores: a machine of two would be left with one.
    maxWorkers: "100%",
    // Code that was made ready once is run as it is, as it is when the tool runs.
    server: { deps: { external: [/\/\.cache\/prepared\//u] } },
    projects: [
      {
        extends: true,
        test: {
          name: "quick",
          include: [PURE, "tests/rooms.test.ts"],
          exclude: NOT_QUICK,
          isolate: false,
        },
      },
      {
        extends: true,
        test: {
          name: "whole",
          include: ["tests/**/*.test.ts", "scripts/**/*.test.ts"],
          exclude: [PURE, "tests/rooms.test.ts"],
        },
      },
      { extends: true, test: { name: "thorough", include: NOT_QUICK } },
    ],
  },
});
