/** The words of a tour: links, outlines and closings that can be said aloud as they stand, each resting on a line of the records. */
import path from "node:path";
import { beforeAll, describe, expect, test } from "vitest";
import { readCaptionFiles } from "../../src/cli/film-captions.ts";
import { spokenLines } from "../../src/cli/spoken-captions.ts";
import type { Garden } from "../../src/model.ts";
import { openRecordsFolder, readRecords } from "../../src/records/index.ts";
import { growGarden } from "../../src/timeline/index.ts";
import { type Brief, makeBrief } from "../../src/tour/index.ts";
import { gardenOf, squashTour } from "../tour/garden-of.ts";

const today = "2026-07-18";
let garden: Garden;
let briefs: readonly Brief[];

beforeAll(async () => {
  const folder = await openRecordsFolder(path.join(import.meta.dirname, "../../demo-content"));
  const records = await readRecords(folder, { today });
  const spoken = spokenLines(await readCaptionFiles(folder, records.episodes.values()));
  garden = { ...growGarden(records, []), spoken };
  const ofEpisodes = [...garden.episodes.keys()].map((episode) => makeBrief(garden, { episode, today }));
  const days = ["2024-08-01", "2025-03-15", "2025-09-20", "2026-07-18"];
  briefs = [...ofEpisodes, ...days.map((day) => makeBrief(garden, { day, today }))];
});

const outlines = () =>
  briefs.flatMap(({ tour, stops }) =>
    stops.flatMap((stop) => stop.outline.map((line) => ({ at: `${tour} ${stop.bed}`, ...line }))),
  );

describe("every line to be said", () => {
  test("rests on a line of the records", () => {
    expect(outlines().length).toBeGreaterThan(400);
    expect(outlines().filter(({ sources }) => sources.length === 0)).toEqual([]);
  });

  test.each([
    ["speaks to viewers, not to the person", /\byou (?:promised|said)|your notes|\bviewers last saw|viewers saw\b/i],
    ["has no cue for the eye", /\(say /],
    ["ends in a stop", /[^.?!…”]$/],
    ["begins with a capital, a figure or a quotation", /^[^\p{Lu}\d“]/u],
    ["doubles no word and no stop", /\b(the|a|in|on|of|at|and|with) \1\b|\.\.(?!\.)| [.,]|,\./i],
    ["puts no plural in brackets", /\(s\)/],
    ["says no ISO date and no id", /\d{4}-\d\d-\d\d|[a-z]+-[a-z]+\/[a-z]/],
  ] as const)("%s", (_, never) => {
    expect(
      outlines()
        .filter(({ text }) => never.test(text))
        .map(({ at, text }) => `${at}: ${text}`),
    ).toEqual([]);
  });

  test("leaves out what is private", () => {
    const secret = new Set(
      garden.events.filter((event) => event.private).map(({ place }) => `${place.file}:${place.line}`),
    );
    expect(secret.size).toBeGreaterThanOrEqual(4);
    const told = outlines().filter(({ sources }) => sources.some(({ file, line }) => secret.has(`${file}:${line}`)));
    expect(told).toEqual([]);
  });
});

describe("links", () => {
  test("begin the outline, and lead on without saying the same twice running", () => {
    for (const { stops } of briefs) {
      stops.forEach((stop, index) => {
        expect(stop.outline[0]?.text).toBe(stop.link);
        const opening = (link: string | undefined) => link?.split(/[ ,]/).slice(0, 2).join(" ");
        if (index > 0) expect(opening(stop.link)).not.toBe(opening(stops[index - 1]?.link));
      });
    }
  });

  test("of ten stops have at least six beginnings", () => {
    const july = briefs.find(({ tour }) => tour === "2026-07-tour");
    expect(july?.stops).toHaveLength(10);
    const beginnings = new Set(july?.stops.map(({ link }) => link?.split(" ").slice(0, 2).join(" ")));
    expect(beginnings.size).toBeGreaterThanOrEqual(6);
  });

  test("are the same for the same records", () => {
    const again = makeBrief(garden, { episode: "2026-07-tour", today });
    expect(JSON.stringify(again)).toBe(JSON.stringify(briefs.find(({ tour }) => tour === "2026-07-tour")));
  });
});

test("a stop's outline read whole", async () => {
  const small = await gardenOf(squashTour, "2026-06-19");
  const [long] = makeBrief(small, { episode: "2026-06-tour", today: "2026-06-19" }).stops;
  expect(long?.outline.map(({ text }) => text)).toEqual([
    "First, the long bed, bare when you last saw it.",
    "I said in May that I would show how close I dared to plant the squash. On record: 90 cm apart for the Crown Prince and Uchiki Kuri squash.",
    "The squash are all new: 6 Crown Prince and 5 Uchiki Kuri, sown indoors on 21 April, planted out on 24 May, so 26 days in the ground.",
    "Not seen before: 21 Musselburgh leeks, sown indoors on 10 March, planted out on 24 May, so 26 days in the ground. They are in row 2, next to the squash.",
    "The Crown Prince squash came into flower on Sunday.",
    "This day last year the long bed held squash.",
    "Leek moth on the Musselburgh leeks, since 2 June.",
    "Three of the Musselburgh leeks were lost to leek moth on 2 June; 21 are left.",
  ]);
  expect(long?.outline[0]?.sources).toEqual([{ file: "episodes/2026-05-tour/index.md", line: 1, column: 1 }]);
});

test("the closing line tells what is ready next, or what the plan is", async () => {
  const files = {
    ...squashTour,
    "notes/2026-06-10.md": "- to do by 1 July: sow turnips where the peas were, in Pea Row\n",
    "varieties/musselburgh.md": (squashTour["varieties/musselburgh.md"] ?? "").replace(
      "crop: leek",
      "crop: leek\ndays to maturity: 70",
    ),
  };
  const small = await gardenOf(files, "2026-06-19");
  const [long, peas] = makeBrief(small, { episode: "2026-06-tour", today: "2026-06-19" }).stops;
  expect(long?.close).toMatch(/the Musselburgh leeks, ready from about 2 August\.$/);
  expect(long?.outline.at(-1)?.text).toBe(long?.close);
  expect(peas?.close).toMatch(/^The plan for here: sow turnips where the peas were.*, by 1 July\.$/);
});

describe("shots", () => {
  test("are numbered through, and each thing shown has one", () => {
    for (const { stops } of briefs) {
      for (const stop of stops) {
        expect(stop.shots.map(({ id }) => id)).toEqual(stop.shots.map((_, at) => `${stop.id}.${at + 1}`));
        const ids = new Set(stop.shots.map(({ id }) => id));
        expect(stop.show.filter(({ shot }) => shot === undefined || !ids.has(shot))).toEqual([]);
        expect(new Set(stop.show.map(({ id }) => id)).size).toBe(stop.show.length);
        const close = stop.shots.filter(({ kind }) => kind === "close-up");
        const asked = stop.show.filter(({ level, kind }) => level !== "could" && kind !== "question");
        expect(close).toHaveLength(asked.length);
      }
    }
  });

  test("begin with the wide one from the viewpoint, then the way in", () => {
    const first = briefs.find(({ tour }) => tour === "2026-07-tour")?.stops[0];
    expect(first?.shots.slice(0, 2)).toEqual([
      {
        id: "S1.1",
        key: "long-bed/wide",
        kind: "wide",
        text: "from the gate post, chest height, left hand on the latch, looking north-west",
        level: "must",
      },
      { id: "S1.2", key: "long-bed/walk-in", kind: "walk-in", text: "walking up to the long bed", level: "should" },
    ]);
  });
});
