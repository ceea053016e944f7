/** Chromium, for tests that open pages in it. On a machine without one those tests are left out, and `left-out.ts` names them. */
import { accessSync, constants, statSync } from "node:fs";
import { type Browser, chromium } from "playwright-core";
import { TestRunner } from "vitest";

const program = process.env.CHROMIUM ?? "/usr/bin/chromium";

export const hasChromium = canRun(program);

function canRun(file: string): boolean {
  try {
    accessSync(file, constants.X_OK);
    return statSync(file).isFile();
  } catch {
    return false;
  }
}

/** `args` beside what every test needs. Without a Chromium: one that leaves out each test which opens a page in it. */
export async function openBrowser(...args: readonly string[]): Promise<Browser> {
  if (hasChromium) return chromium.launch({ executablePath: program, args: ["--no-sandbox", ...args] });
  const none: Pick<Browser, "newContext" | "newPage" | "close"> = {
    newContext: leaveOut,
    newPage: leaveOut,
    close: async () => undefined,
  };
  return none as Browser;
}

/** Ends the running test, as one that was not run, on a machine without a Chromium. */
export function needsChromium(): void {
  if (!hasChromium) leaveOut();
}

function leaveOut(): never {
  const test = TestRunner.getCurrentTest();
  if (test === undefined)
    throw new Error("A page is opened outside of any test: describe.skipIf(!hasChromium) is missing.");
  return test.context.skip("needs Chromium");
}
