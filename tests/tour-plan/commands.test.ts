/** `brief` with its own start, under cloud, with sources; `ahead` with its calendar. */
import { readFileSync } from "node:fs";
import path from "node:path";
import ICAL from "ical.js";
import { describe, expect, it } from "vitest";
import { emptyFolder, folderWith, run } from "../cli/run.ts";

/** One folder for all, so that the photos a brief compares are measured once. */
const shared = emptyFolder();
const demo = path.resolve(import.meta.dirname, "../../demo-content");

describe("plotreel brief", () => {
  it("begins when it is told to", async () => {
    const { out, exitCode } = await run(["brief", "2026-07-tour", "--records", demo, "--start", "9.30"], {
      cwd: shared,
    });
    expect(exitCode).toBe(0);
    expect(out).toMatch(/Be there 9:15, first shot 9:30, done about \d+:\d\d\. Light good to /);
    expect(out).toMatch(/### 1 · Long Bed · \d min \d\d · from 9:30 · /);
    const wrong = await run(["brief", "2026-07-tour", "--records", demo, "--start", "half nine"], { cwd: shared });
    expect(wrong.exitCode).toBe(2);
    expect(wrong.err).toContain("Write a time of day as hours and minutes: 09:30.");
  });

  it("expects cloud, and says where each sentence rests", async () => {
    const { out } = await run(["brief", "2026-07-tour", "--records", demo, "--overcast", "--sources"], { cwd: shared });
    expect(out).toContain("even light under cloud");
    expect(out.match(/^ {2}`notes\/[^`]+\.md:\d+`/gm)?.length).toBeGreaterThan(60);
  });

  it("gives the agreed shapes as data", async () => {
    const { out } = await run(["brief", "2026-07-tour", "--records", demo, "--json"], { cwd: shared });
    const set = JSON.parse(out) as {
      cover: { rows: unknown[] };
      cards: Record<string, unknown>[];
      dossier: {
        plan: Record<string, unknown>;
        leftOut: Record<string, unknown>[];
        stops: Record<string, unknown>[];
      };
    };
    expect(Object.keys(set)).toEqual(["cover", "cards", "dossier"]);
    const data = set.dossier;
    expect(set.cover.rows).toHaveLength(data.stops.length);
    expect(set.cards.map(({ id }) => id)).toEqual(data.stops.map(({ id }) => id));
    expect(data.plan).toMatchObject({ seconds: expect.any(Number), target: 720, start: "9:15", over: 0 });
    expect(data.plan.startScores).toContainEqual({
      start: "9:15",
      score: expect.any(Number),
      good: expect.any(Number),
    });
    expect(data.plan.seconds).toBeGreaterThan(700);
    expect(data.plan.seconds).toBeLessThanOrEqual(720);
    expect(data.leftOut[0]).toMatchObject({ seconds: expect.any(Number), why: "no room", keepBy: expect.any(String) });
    for (const [index, stop] of data.stops.entries()) {
      expect(stop).toMatchObject({
        number: index + 1,
        seconds: expect.any(Number),
        from: expect.stringMatching(/^\d+:\d\d$/),
        link: expect.any(String),
        light: expect.any(String),
      });
      expect(stop.shots).toContainEqual(expect.objectContaining({ id: `S${index + 1}.1`, kind: "wide" }));
      expect(stop.outline).toContainEqual({ text: expect.any(String), sources: expect.any(Array) });
    }
  });

  it("knows from the captions which names viewers have heard", async () => {
    const { out } = await run(["brief", "2026-07-tour", "--records", demo], { cwd: shared });
    expect(out).toMatch(/Point to: \[[^\]]+\]\(https:\/\/films\.example\/gullstone\/[^)]+\), .+, at \d+:\d\d \(/);
    expect(out).toContain("First time in this garden: Wilma's Red lettuces.");
    expect(out).not.toContain("First time in this garden: Lobjoits");
  });
});

describe("plotreel ahead", () => {
  it("prints the weeks ahead and writes a calendar that another program reads", async () => {
    const cwd = emptyFolder();
    const { out, err, exitCode } = await run(["ahead", "--records", demo, "--weeks", "3", "--ics"], { cwd });
    expect(exitCode).toBe(0);
    expect(out).toMatch(/^# The next three weeks\n\n\*\*18 July to 8 August\*\*/);
    expect(out).toMatch(/should be ready about \d+ (?:July|August), by this garden's own records/);
    expect(err).toContain(path.join(cwd, "out/ahead.ics"));
    const calendar = new ICAL.Component(ICAL.parse(readFileSync(path.join(cwd, "out/ahead.ics"), "utf8")));
    expect(calendar.getAllSubcomponents("vevent").length).toBeGreaterThan(5);
  });

  it("gives data, and refuses a span that is none", async () => {
    const cwd = folderWith("two-beds");
    const { out } = await run(["ahead", "--json"], { cwd });
    expect(Object.keys(JSON.parse(out) as object)).toEqual([
      "from",
      "to",
      "weeks",
      "expected",
      "deadlines",
      "owed",
      "days",
      "best",
    ]);
    const wrong = await run(["ahead", "--weeks", "0"], { cwd });
    expect(wrong.exitCode).toBe(2);
    expect(wrong.err).toContain("Write a whole number of weeks from 1 to 52.");
  });

  it("says plainly that nothing is known in an empty garden", async () => {
    const { out, exitCode } = await run(["ahead"]);
    expect(exitCode).toBe(0);
    expect(out).toContain("Nothing is on record yet that would make a film.");
  });
});
