/** Whether a page is valid HTML, and open to everyone. */
import { readFile } from "node:fs/promises";
import { createRequire } from "node:module";
import { HtmlValidate } from "html-validate";
import type { Page } from "playwright-core";

const axeSource = await readFile(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

const validator = new HtmlValidate({
  extends: ["html-validate:recommended"],
  rules: {
    // Astro writes attributes and void elements its own way; long titles are a matter of taste. A camera's picture
    // may have a name.
    "aria-label-misuse": ["error", { allowAnyNamable: true }],
    "attribute-boolean-style": "off",
    "attribute-empty-style": "off",
    "long-title": "off",
    "no-trailing-whitespace": "off",
    "void-style": "off",
  },
});

/** "12 rule: what is wrong", for each complaint. */
export async function htmlComplaints(file: string): Promise<readonly string[]> {
  const { results } = await validator.validateString(await readFile(file, "utf8"));
  return results.flatMap(({ messages }) =>
    messages.map(({ line, ruleId, message }) => `${line} ${ruleId}: ${message}`),
  );
}

export async function axeViolations(page: Page): Promise<readonly string[]> {
  await page.evaluate(axeSource);
  return page.evaluate(async () => {
    const { axe } = globalThis as unknown as {
      axe: { run(): Promise<{ violations: { id: string; nodes: { target: unknown[]; failureSummary: string }[] }[] }> };
    };
    const { violations } = await axe.run();
    return violations.flatMap(({ id, nodes }) =>
      nodes.map(({ target, failureSummary }) => `${id} ${target.join(" ")} ${failureSummary}`),
    );
  });
}
