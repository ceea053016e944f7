/** Colours and sizes stand in one place, and every colour can be read on what it stands on. */
import { readdir, readFile } from "node:fs/promises";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { colourPairs } from "../../scripts/docs/look/colour-pairs.ts";
import { contrast } from "../../scripts/docs/look/contrast.ts";
import { isColour, readTokens } from "../../src/site/look/tokens.ts";

const site = path.resolve("src/site");
const schemes = readTokens(await readFile(path.join(site, "styles/tokens.css"), "utf8"));

describe("contrast", () => {
  it("gives the figures W3C works out in its own examples", () => {
    // The definition of the ratio: 1 to 21.
    expect(contrast("#000000", "#ffffff")).toBe(21);
    expect(contrast("#ffffff", "#ffffff")).toBe(1);
    // "Understanding 1.4.11, Non-text Contrast": one decimal, sometimes cut and sometimes rounded.
    for (const [one, other, printed] of [
      ["#949494", "#ffffff", 3],
      ["#e5e5e5", "#6221ea", 5.6],
      ["#fff000", "#ffffff", 1.2],
    ] as const)
      expect(Math.abs(contrast(one, other) - printed)).toBeLessThan(0.1);
  });

  it("does not depend on which colour comes first", () => {
    expect(contrast("#6221ea", "#e5e5e5")).toBe(contrast("#e5e5e5", "#6221ea"));
  });

  for (const [name, tokens] of Object.entries(schemes)) {
    it(`is enough for every pair that pages use: ${name}`, () => {
      const poor = colourPairs.flatMap(({ on, ground, least }) => {
        const ratio = contrast(tokens[on] ?? "", tokens[ground] ?? "");
        return ratio >= least ? [] : [`${on} on ${ground}: ${ratio.toFixed(2)}, wanted ${least}`];
      });
      expect(poor).toEqual([]);
    });
  }
});

describe("tokens", () => {
  it("are read from their sheet, each scheme with the colours of its own", () => {
    expect(schemes.light.paper).toBe("#ffffff");
    expect(schemes.dark.paper).not.toBe(schemes.light.paper);
    expect(schemes.paper.pencil).toBe("#000000");
    expect(Object.values(schemes.light).filter(isColour).length).toBeGreaterThan(12);
  });

  it("are the same on private pages, which their band alone marks: their ground is white", async () => {
    for (const { file, text } of await styleTexts())
      for (const [rule] of text.matchAll(/\.private\b[^{},]*\{[^{}]*\}/gu))
        expect(rule, file).not.toMatch(/--(?:paper|pencil|quiet|zinc|plate|soil)[\w-]*:/u);
    expect(schemes.light.band).not.toBe(schemes.light.paper);
  });

  it("are all used", async () => {
    const all = (await styleTexts()).map(({ text }) => text).join("\n");
    const unused = Object.keys(schemes.light).filter((name) => !new RegExp(`var\\(--${name}\\)`, "u").test(all));
    expect(unused).toEqual([]);
  });

  it("are the only source of colours", async () => {
    const literal =
      /#[0-9a-f]{3,8}\b(?![^"'`\n]*\.(?:astro|html))|\b(?:rgba?|hsla?|oklch|oklab|lab|lch|hwb|color)\(/giu;
    const found: string[] = [];
    for (const { file, text } of await styleTexts())
      if (!file.endsWith("tokens.css")) for (const [colour] of text.matchAll(literal)) found.push(`${file}: ${colour}`);
    expect(found).toEqual([]);
  });

  it("are the only source of sizes of letters, of distances, and of anything in screen pixels", async () => {
    const found: string[] = [];
    for (const { file, text } of await styleTexts()) {
      if (!file.endsWith(".css") || file.endsWith("tokens.css")) continue;
      for (const [pixels] of text.matchAll(/\b\d*\.?\d+px\b/gu)) found.push(`${file}: ${pixels}`);
      for (const [distance] of text.matchAll(
        /(?<![-\w])(?:(?:column-|row-)?gap|(?:margin|padding)[a-z-]*):[^;]*\drem[^;]*;/gu,
      ))
        found.push(`${file}: ${distance}`);
      for (const [, size = ""] of text.matchAll(/font-size:([^;]+);/gu))
        if (!/var\(|^ (?:inherit|[\d.]+em|100%)$/u.test(size)) found.push(`${file}: font-size:${size}`);
    }
    expect(found).toEqual([]);
  });

  it("change at two widths only", async () => {
    const widths = new Set<string>();
    for (const { file, text } of await styleTexts())
      if (file.endsWith(".css"))
        for (const [, width = ""] of text.matchAll(/@media[^{]*(?:min|max)-width:\s*([^)]+)\)/gu)) widths.add(width);
    expect([...widths].sort()).toEqual(["48rem", "64rem"]);
  });

  it("lend the picture in a browser's tab its colours", async () => {
    const icon = await readFile(path.join(site, "styles/icon.svg"), "utf8");
    const own = new Set(Object.values(schemes.light));
    for (const [colour] of icon.matchAll(/#[0-9a-f]{6}\b/gu)) expect(own).toContain(colour);
    expect(icon).not.toMatch(/#[0-9a-f]{3}"/u);
  });
});

/** Every style sheet, every component, and the styles that pages carry in themselves. */
async function styleTexts(): Promise<readonly { readonly file: string; readonly text: string }[]> {
  const entries = await readdir(site, { recursive: true, withFileTypes: true });
  const files = entries
    .filter((entry) => entry.isFile() && /\.(?:css|astro)$|-style\.ts$/u.test(entry.name))
    .map((entry) => path.join(entry.parentPath, entry.name))
    .sort();
  return Promise.all(
    files.map(async (file) => ({ file: path.relative(site, file), text: await readFile(file, "utf8") })),
  );
}
