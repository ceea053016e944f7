/** Whether a page is valid HTML, and what axe finds in it that keeps somebody out. */
import { readFile } from "node:fs/promises";
import { createRequire } from "node:module";
import { HtmlValidate } from "html-validate";
import type { Page } from "playwright-core";

const axeSource = await readFile(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

const validator = new HtmlValidate({
  extends: ["html-validate:recommended"],
  rules: {
    // Astro writes attributes and void elements its own way; long titles are a matter of taste. A camera's picture
    // may have a name. The list of a combobox is no field of a form. A table that a phone is shown line by line loses its roles unless they are said.
    "aria-label-misuse": ["error", { allowAnyNamable: true }],
    "attribute-boolean-style": "off",
    "attribute-empty-style": "off",
    "doctype-style": "off",
    "long-title": "off",
    "no-redundant-role": "off",
    "no-trailing-whitespace": "off",
    "prefer-native-element": ["error", { exclude: ["listbox"] }],
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

/** WCAG 2.2 at levels A and AA, and what axe calls good practice. */
const TAGS = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];

/** What depends on the colours alone: all that can differ between a light and a dark page. */
export const COLOUR_RULES: readonly string[] = ["color-contrast", "link-in-text-block"];

/** Of the whole page, what is folded and far below included. All rules, unless some are named. */
export async function axeViolations(page: Page, rules?: readonly string[]): Promise<readonly string[]> {
  await layOutWhole(page);
  await page.evaluate(axeSource);
  return page.evaluate(
    async ([tags, only]) => {
      interface Found {
        readonly id: string;
        readonly nodes: readonly { readonly target: readonly unknown[]; readonly failureSummary: string }[];
      }
      const { axe } = globalThis as unknown as { axe: { run(options: object): Promise<{ violations: Found[] }> } };
      const { violations } = await axe.run(
        only === undefined
          ? {
              runOnly: { type: "tag", values: tags },
              rules: { "target-size": { enabled: true } },
              resultTypes: ["violations"],
            }
          : { runOnly: { type: "rule", values: only }, resultTypes: ["violations"] },
      );
      return violations.flatMap(({ id, nodes }) =>
        nodes.map(({ target, failureSummary }) => `${id} ${target.join(" ")} ${failureSummary}`),
      );
    },
    [TAGS, rules] as const,
  );
}

/** Unfolds everything, and has the browser lay out what it would leave until it is near. */
export async function layOutWhole(page: Page): Promise<void> {
  await page.evaluate(() => {
    for (const details of document.querySelectorAll("details")) details.open = true;
  });
  await addStyle(page, "* { content-visibility: visible !important; }");
}

/** A style of the reader's own; a style element would be stopped by the page's policy. */
export async function addStyle(page: Page, css: string): Promise<void> {
  await page.evaluate((text) => {
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(text);
    document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet];
  }, css);
}
