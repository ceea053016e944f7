/** Says at the end which tests a machine without Chromium did not run. */
import type { Reporter, TestModule } from "vitest/node";
import { hasChromium } from "./browser.ts";

export const namesWhatIsLeftOut: Reporter = {
  onTestRunEnd(modules: readonly TestModule[]) {
    if (hasChromium) return;
    const left = modules.flatMap((module) =>
      [...module.children.allTests("skipped")].map((test) => `  ${module.relativeModuleId}: ${test.fullName}`),
    );
    if (left.length > 0)
      console.log(`\nLeft out, as no Chromium was found (CHROMIUM may name one):\n${left.join("\n")}\n`);
  },
};
