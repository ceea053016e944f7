/** Briefs of the demo garden, for every episode and for days without one: nothing a person would not say or read. */

import path from "node:path";
import { beforeAll, describe, expect, test } from "vitest";
import type { Sentence } from "../../src/language/index.ts";
import type { Garden } from "../../src/model.ts";
import { openRecordsFolder, readRecords } from "../../src/records/index.ts";
import { growGarden } from "../../src/timeline/index.ts";
import { type Brief, makeBrief } from "../../src/tour/index.ts";
import { dossierOf } from "./garden-of.ts";

const today = "2026-07-18";
const days = [
  "2024-01-20",
  "2024-05-01",
  "2024-10-12",
  "2025-02-28",
  "2025-06-21",
  "2026-03-07",
  "2026-07-18",
  "2026-12-24",
];
let garden: Garden;
let briefs: readonly Brief[];

beforeAll(async () => {
  const folder = await openRecordsFolder(path.join(import.meta.dirname, "../../demo-content"));
  garden = growGarden(await readRecords(folder, { today }), []);
  const ofEpisodes = [...garden.episodes.keys()].map((episode) => makeBrief(garden, { episode, today }));
  briefs = [...ofEpisodes, ...days.map((day) => makeBrief(garden, { day, today }))];
});

/** Every text that is printed, with where it was found. */
function printed(brief: Brief): { readonly at: string; readonly line: Sentence }[] {
  const named = (at: string, lines: readonly Sentence[]) => lines.map((line) => ({ at: `${brief.tour} ${at}`, line }));
  return [
    ...named("opening", brief.opening),
    ...named("owed", brief.followUps),
    ...named("left out", brief.leftOut),
    ...named("checks", brief.checks),
    ...named("tasks", brief.tasks),
    ...brief.stops.flatMap((stop) => [
      ...named(`${stop.bed} show`, stop.show),
      ...named(`${stop.bed} facts`, stop.facts),
      ...named(`${stop.bed} last seen`, stop.lastSeen),
      ...named(`${stop.bed} changes`, stop.changes),
      ...named(`${stop.bed} finished`, stop.finishedSince),
      ...named(`${stop.bed} troubles`, stop.troubles),
      ...named(`${stop.bed} tasks`, stop.tasks),
      ...named(`${stop.bed} cautions`, stop.cautions),
      ...named(`${stop.bed} disclosures`, stop.disclosures),
    ]),
  ];
}

describe("no sentence of the demo's briefs", () => {
  const never: readonly (readonly [what: string, pattern: RegExp])[] = [
    ["says undefined, null or NaN", /undefined|\bnull\b|NaN|\[object/],
    [
      "has a plural of one",
      /(?<![\d.,])(?:\b1|\bone) (?:days|weeks|months|years|pickings|stems|heads|leeks|minutes)\b/i,
    ],
    ["puts a plural in brackets", /\(s\)|\(e?s\)/],
    ["has double spaces or a space before a stop", / {2}| [.,;:!?](?:\s|$)/],
    ["has an ISO date", /\b\d{4}-\d\d-\d\d\b/],
    ["has an empty pair of marks", /\(\)|“”|""|\*\*\*\*/],
    ["doubles a stop", /[^.]\.\.(?!\.)|[;:,]\./],
    [
      "says on yesterday, from about tomorrow, since on",
      /\bon (?:today|yesterday|tomorrow)\b|about (?:today|tomorrow)\b|since on\b/,
    ],
    ["repeats a word", /\b(the|a|in|on|of|at|by|was|were|is|are|since) \1\b/i],
    ["names an id", /\b[a-z]+(?:-[a-z]+)+\/[a-z]/],
  ];
  test.each(never)("%s", (_, pattern) => {
    const found = briefs.flatMap(printed).filter(({ line }) => pattern.test(line.text));
    expect(found.map(({ at, line }) => `${at}: ${line.text}`)).toEqual([]);
  });

  test("is without capital, end or source", () => {
    const all = briefs.flatMap(printed);
    expect(all.length).toBeGreaterThan(3000);
    const open = all.filter(({ at, line }) => !/left out/.test(at) && !/^[\p{Lu}\d“]/u.test(line.text));
    const endless = all.filter(({ at, line }) => !/left out/.test(at) && !/[.?!…]”?\)?$/.test(line.text));
    const groundless = all.filter(({ at, line }) => !/checks/.test(at) && line.sources.length === 0);
    expect([...open, ...endless, ...groundless].map(({ at, line }) => `${at}: ${line.text}`)).toEqual([]);
  });
});

test("the Markdown has no empty heading and no empty list item", () => {
  for (const brief of briefs) {
    const markdown = dossierOf(brief, garden);
    expect(markdown).not.toMatch(/^#+ *$/m);
    expect(markdown).not.toMatch(/^- *$/m);
    expect(markdown).not.toMatch(/^(#+ .*)\n+#{1,2} /m);
    expect(markdown).not.toMatch(/\n{3,}/);
  }
});

test("the July tour has what a filming day needs", () => {
  const july = briefs.find(({ tour }) => tour === "2026-07-tour");
  expect(july?.stops.map(({ bed }) => bed)).toEqual(garden.episodes.get("2026-07-tour")?.stops.map(({ bed }) => bed));
  expect(july?.opening).toHaveLength(3);
  expect(july?.since).toBe("2026-06-13");
  for (const stop of july?.stops ?? []) {
    expect(stop.show.length, stop.bed).toBeGreaterThan(0);
    expect(stop.varieties.length, stop.bed).toBeGreaterThan(0);
    expect(stop.facts.length, stop.bed).toBeGreaterThan(0);
  }
});

test("places in the sentences are lines that exist", () => {
  const lines = briefs.flatMap(printed).flatMap(({ line }) => line.sources);
  const events = new Set(garden.events.map(({ place }) => `${place.file}:${place.line}`));
  const known = lines.filter(
    ({ file, line }) => line === 1 || events.has(`${file}:${line}`) || !file.startsWith("notes/"),
  );
  expect(known.length / lines.length).toBeGreaterThan(0.95);
});
