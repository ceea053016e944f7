/** From note lines to a brief: what comes by itself, what only the calendar ended, what is planned, what was put up. */
import { expect, test } from "vitest";
import { noWeather } from "../../src/almanac/index.ts";
import { seasonBeginning } from "../../src/garden/index.ts";
import { makeRecap } from "../../src/season/index.ts";
import { makeBrief } from "../../src/tour/index.ts";
import { dossierOf, type Files, gardenOf } from "./garden-of.ts";

const files: Files = {
  "beds/long-bed.md": "---\ntitle: Long Bed\nin use since: 2024-01-01\n---\n",
  "beds/old-bed.md": "---\ntitle: Old Bed\nin use since: 2024-01-01\n---\n",
  "varieties/boltardy.md": "---\ntitle: Boltardy\ncrop: beetroot\nsource: Drift Lane Seeds\n---\n",
  "varieties/hedgewitch.md": "---\ntitle: Hedgewitch\nsource: a neighbour\n---\n",
  "notes/2025-05-01.md": "---\nbed: old-bed\n---\n\n- sowed 40 Boltardy\n- planted 6 bought Hedgewitch, by the arch\n",
  "notes/2026-05-10.md": `---
bed: long-bed
---

- volunteer: 3 tomatoes, by the gate
- plan: move the tomatoes next year
- preserved: 4 jars of tomatoes
- bought 3 Elsanta strawberry for £4.75, in Long Bed
`,
  "episodes/before/index.md":
    "---\ntitle: Last tour\ndate: 2025-08-01\npublished: 2025-08-03\nstatus: published\nstops: [long-bed, old-bed]\n---\n",
  "episodes/may/index.md":
    "---\ntitle: May tour\ndate: 2026-05-20\nstatus: planned\ntarget: 5 min\nstops: [long-bed, old-bed]\n---\n",
};

const garden = await gardenOf(files, "2026-05-20");
const brief = makeBrief(garden, { episode: "may", today: "2026-05-20" });
const [long, old] = brief.stops;
const said = (texts: readonly { readonly text: string }[] | undefined) =>
  (texts ?? []).map(({ text }) => text).join("\n");

test("volunteers are told as self-sown", () => {
  expect(said(long?.show)).toContain("self-sown, up on");
});

test("what only the calendar ended is no news, and what nobody knows lives on", () => {
  expect(old?.finishedSince).toEqual([]);
  expect(said(old?.show)).not.toMatch(/finished|done|over/i);
  expect(said(old?.show)).not.toContain("Boltardy");
  expect(dossierOf(brief, garden)).not.toContain("taken to be over");
  expect(said(old?.show)).toContain("Hedgewitch");
});

test("a plan is no news and nothing to do", () => {
  expect(said(long?.show)).not.toContain("move the tomatoes");
  expect(brief.checks.map(({ kind }) => kind)).not.toContain("task");
});

test("preserving has its caution", () => {
  // The row for what was put up says more than that a tested recipe is needed.
  expect(said(long?.cautions)).toContain("Tomatoes need bottled lemon juice or citric acid in each jar");
});

test("a plan stands in the season's outline among what to do next year, as planned", () => {
  const recap = makeRecap(garden, noWeather, { season: seasonBeginning(2026, "01-01"), today: "2026-05-20" });
  const next = recap.segments.find(({ kind }) => kind === "next year");
  expect(said(next?.show)).toContain("Planned: move the tomatoes next year.");
  expect(recap.nextYear.planned).toMatchObject([{ sources: [{ file: "notes/2026-05-10.md", line: 6 }] }]);
  const before = makeRecap(garden, noWeather, { season: seasonBeginning(2025, "01-01"), today: "2026-05-20" });
  expect(before.nextYear.planned).toEqual([]);
});
