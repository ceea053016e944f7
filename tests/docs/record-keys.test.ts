/** Every key of every record has a meaning, and an example that is read without a word against it. */
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import type { ZodType } from "zod";
import { keysOf, recordKinds } from "../../scripts/docs/record-kinds.ts";
import { schemaOf } from "../../scripts/docs/record-schemas.ts";
import { readFrontMatter } from "../../src/records/front-matter.ts";
import { publicSite } from "../../src/site/page-data/public-site.ts";
import { publicGarden } from "../../src/site/public-garden.ts";
import { growGarden } from "../../src/timeline/index.ts";
import { recordsOf } from "../records/records-of.ts";

const keys = recordKinds.flatMap(({ name, schema }) =>
  keysOf(schema).map((key) => [`${name}: ${key.name}`, key] as const),
);

describe("every key", () => {
  it("is looked at, those below others too", () => {
    expect(keys.length).toBeGreaterThan(140);
    const names = keys.map(([name]) => name);
    for (const deep of ["bed: viewpoints: stake: length", "variety: source: year", "garden: place: elevation"])
      expect(names).toContain(deep);
  });

  it.each(keys)("%s says what it means and who sees it", (_name, { means, seenBy }) => {
    expect(means).toMatch(/^\S.*[^.\s]$/u);
    expect(["viewers", "you"]).toContain(seenBy);
  });

  it.each(keys)("%s has an example that is read", (_name, { example, schema }) => {
    const { data, problems } = readFrontMatter(`---\nkey: ${example}\n---\n`);
    expect(problems).toEqual([]);
    expect((schema as ZodType).safeParse(data.key)).toMatchObject({ success: true });
  });
});

/** As far as these schemas go: what an editor's own check would say. */
function isAllowed(json: Rule, value: unknown): boolean {
  const { anyOf, type, properties = {}, required = [], additionalProperties, items, enum: words } = json;
  if (anyOf !== undefined) return anyOf.some((one) => isAllowed(one, value));
  if (words !== undefined) return words.includes(value as string);
  if (Array.isArray(type)) return type.includes(value === null ? "null" : typeof value);
  if (type === "array" && Array.isArray(value)) {
    const each = Array.isArray(items) ? items : value.map(() => items ?? {});
    return value.every((one, at) => isAllowed(each[at] ?? {}, one));
  }
  if (type !== "object") return type === undefined;
  if (typeof value !== "object" || value === null || Array.isArray(value)) return false;
  return (
    required.every((key) => key in value) &&
    Object.entries(value).every(([key, one]) => {
      const rule = properties[key] ?? additionalProperties;
      return rule !== false && isAllowed((rule ?? {}) as Rule, one);
    })
  );
}

interface Rule {
  readonly anyOf?: readonly Rule[];
  readonly type?: string | readonly string[];
  readonly properties?: Readonly<Record<string, Rule>>;
  readonly required?: readonly string[];
  readonly additionalProperties?: boolean | Rule;
  readonly items?: Rule | readonly Rule[];
  readonly enum?: readonly string[];
}

describe("the schemas for editors", () => {
  it.each(recordKinds)("take every example of $one, and refuse a key that it has not", ({ schema, ...kind }) => {
    const json = schemaOf({ schema, ...kind }) as Rule;
    const whole = Object.fromEntries(
      keysOf(schema)
        .filter(({ name }) => !name.includes(": "))
        .map(({ name, example }) => [name, parse(example ?? "")]),
    );
    expect(isAllowed(json, whole)).toBe(true);
    expect(isAllowed(json, { ...whole, titel: "Long Bed" })).toBe(false);
  });

  it.each([
    ["garden", "demo-content/garden.md"],
    ["bed", "demo-content/beds/long-bed.md"],
    ["episode", "demo-content/episodes/2026-06-tour/index.md"],
    ["gear", "demo-content/gear/fine-mesh.md"],
    ["site", "demo-content/sites/harbour-yard.md"],
  ])("take a %s as somebody wrote it", (name, file) => {
    const [, front = ""] = /^\s*---\n([\s\S]*?)\n---\n/u.exec(readFileSync(file, "utf8")) ?? [];
    const kind = recordKinds.find((one) => one.name === name);
    expect(front).not.toBe("");
    expect(isAllowed(schemaOf(kind as NonNullable<typeof kind>) as Rule, parse(front))).toBe(true);
  });
});

describe("what stands under a key that is yours", () => {
  /** Each "Zq" is a text under such a key, the others are for viewers. */
  const files = {
    "garden.md":
      "---\nname: Gullstone\nkit: [Zq kit]\npoison centre: Zq centre\ngoals: [10 kg of Zq goals]\npins: [Zq pins in Long Bed]\nprices: { Zq prices: 3 a kg }\nclip clocks: { Zq camera: local }\n---\n",
    "sites/plot.md": "---\nplace name: Hill Side\ngates: [{ x: 0, y: 3, name: Zq gate }]\n---\n",
    "beds/long-bed.md":
      "---\ntitle: Long Bed\nsite: plot\nsoil: sandy loam\nshade: Zq wall to the east\nviewpoints: [{ name: gate, spot: Zq post }]\n---\n",
    "episodes/july/index.md":
      "---\ntitle: July\ndate: 2026-07-01\npublished: 2026-07-02\nlink: https://films.example/july\nstops: [Long Bed]\nmust: [Zq must]\nkeep: [Zq keep]\nskip: [Zq skip]\n---\n",
    "notes/2026-05-16.md": "- planted 12 Musselburgh leek in Long Bed\n",
  };

  it("is on no page of the public site", async () => {
    const garden = growGarden(await recordsOf(files, "2026-07-18"), []);
    expect(JSON.stringify([...garden.episodes.values()], null, 1)).toContain("Zq must");
    const pages = JSON.stringify(publicSite(publicGarden(garden), "2026-07-18", new Map()));
    for (const shown of ["Gullstone", "Hill Side", "sandy loam", "films.example/july", "Musselburgh"])
      expect(pages).toContain(shown);
    expect(pages).not.toContain("Zq");
  });
});
