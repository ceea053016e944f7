/** What was planned is what is filmed: shots stay themselves whatever is noted between the brief and the wrap. */
import path from "node:path";
import fc from "fast-check";
import { beforeAll, describe, expect, test } from "vitest";
import type { Episode, Garden, ShotTick } from "../../src/model.ts";
import { openRecordsFolder, readRecords } from "../../src/records/index.ts";
import { growGarden } from "../../src/timeline/index.ts";
import { type Brief, makeBrief, planToKeep } from "../../src/tour/index.ts";
import { keyOf, thingKey, toldApart } from "../../src/tour/keys.ts";
import { editLog, takeRows, type Wrap, wrapEpisode, wrapReport } from "../../src/wrap/index.ts";
import { vtt } from "./small-film.ts";

const day = "2026-07-18";
const tour = "2026-07-tour";

/** Noted after the brief was made: the evening before, and when the film was done. */
const lateNotes = {
  "notes/2026/2026-07-17-written-late.md": `---
date: 2026-07-17
---

- trouble: slugs on the Musselburgh leeks in Onion Bed
- first flower: Crown Prince in Squash Bed
- lost 2 Greyhound in Brassica Bed to pigeons
- sowed 30 French Breakfast radish in Long Bed
`,
  "notes/2026/2026-07-18-after-filming.md": `---
date: 2026-07-18
---

- promised: show the leeks again in September
- promised: say how close I dared to plant the leeks
- trouble: blackfly on the beans in Bean Row
- put up fleece in Long Bed
`,
};

/** The demo's records with files put beside them. */
async function gardenWith(more: Readonly<Record<string, string>> = {}): Promise<Garden> {
  const disk = await openRecordsFolder(path.resolve("demo-content"));
  const kept = (file: string) => !file.endsWith("/plan.json");
  const folder = {
    ...disk,
    list: async () => [...(await disk.list()).filter(kept), ...Object.keys(more)].sort(),
    read: async (file: string) => (more[file] === undefined ? disk.read(file) : new TextEncoder().encode(more[file])),
  };
  return growGarden(await readRecords(folder, { today: day }), []);
}

const briefOf = (garden: Garden) => makeBrief(garden, { episode: tour, today: day });
const shotsOf = ({ stops }: Brief) => stops.flatMap(({ bed, shots }) => shots.map((shot) => ({ ...shot, bed })));

let brief: Brief;
let later: Garden;

beforeAll(async () => {
  brief = briefOf(await gardenWith());
  const plan = JSON.stringify(planToKeep(brief));
  later = await gardenWith({ ...lateNotes, [`episodes/${tour}/plan.json`]: plan });
});

/** Every shot with a tick that says in its own reason which shot it was made of. */
function filmedBy(planned: Brief): Episode["filming"] {
  const stops = planned.stops.map(({ bed, shots }) => ({
    bed,
    ticks: shots.map(
      ({ id, key, text }): ShotTick => ({
        shot: id,
        key,
        words: text,
        state: "skipped",
        reason: text,
        takes: [],
        at: "09:20:00",
      }),
    ),
  }));
  return { day, stops, place: { file: `episodes/${tour}/field-list.json`, line: 1, column: 1 } };
}

describe("a shot of the demo's tour", () => {
  test("has a key of its own, and so has every thing to show", () => {
    const shots = shotsOf(brief);
    const things = brief.stops.flatMap(({ show }) => show);
    expect(shots.length).toBeGreaterThan(80);
    expect(new Set(shots.map(({ key }) => key)).size).toBe(shots.length);
    expect(new Set(things.map(({ key }) => key)).size).toBe(things.length);
    for (const { key, bed } of shots) expect(key.startsWith(`${bed}/`)).toBe(true);
    expect(shots.map(({ key }) => key)).toContain("brassica-bed/trouble/clubroot/greyhound/2026-04-25-2");
    expect(shots.map(({ key }) => key)).toContain("tunnel-north/owed/2024-09-21-show-how-to-save-tomato-seed");
  });

  test("has another number after seven more lines, and the same key for the same thing", () => {
    const anew = briefOf(later);
    const byNumber = new Map(shotsOf(anew).map((shot) => [shot.id, shot]));
    const byKey = new Map(shotsOf(anew).map((shot) => [shot.key, shot]));
    const shifted = shotsOf(brief).filter(({ id, key }) => byNumber.get(id)?.key !== key);
    expect(shifted.length, "numbers that mean another shot by now").toBeGreaterThan(15);
    const known = shotsOf(brief).flatMap((shot) => {
      const same = byKey.get(shot.key);
      return same === undefined ? [] : [[shot, same] as const];
    });
    expect(known.length).toBeGreaterThan(60);
    for (const [then, now] of known) expect([now.bed, now.text]).toEqual([then.bed, then.text]);
  });

  test("keeps its key in any order of the stops", async () => {
    const index = `episodes/${tour}/index.md`;
    const disk = await openRecordsFolder(path.resolve("demo-content"));
    // Without a length everything fits, whatever the way takes.
    const text = new TextDecoder().decode(await disk.read(index)).replace(/^target: .*\n/m, "");
    const beds = brief.stops.map(({ bed }) => bed).toReversed();
    const turned = text.replace(/stops:\n(?: {2}- .*\n)+/, `stops:\n${beds.map((bed) => `  - ${bed}\n`).join("")}`);
    const [one, other] = [briefOf(await gardenWith({ [index]: text })), briefOf(await gardenWith({ [index]: turned }))];
    expect(other.stops.map(({ bed }) => bed)).toEqual(beds);
    // What is passed by is picked up, and a promise of no bed is kept, at whichever stop can; all else is the same shot.
    const own = (of: Brief) =>
      shotsOf(of).filter(({ kind, key }) => kind !== "cutaway" && !key.endsWith("show-how-to-save-tomato-seed"));
    const keys = (of: Brief) =>
      own(of)
        .map(({ key }) => key)
        .toSorted();
    expect(keys(other)).toEqual(keys(one));
  });
});

describe("the wrap", () => {
  const coverage = (
    garden: Garden,
    planned: Parameters<typeof wrapEpisode>[0]["brief"],
    filming: Episode["filming"],
  ) => {
    const episode = garden.episodes.get(tour) as Episode;
    return wrapEpisode({ garden, episode: { ...episode, filming }, brief: planned }).wrap.coverage;
  };

  test("goes by the plan that was kept: after late notes no shot is told as another", () => {
    const episode = later.episodes.get(tour);
    expect(episode?.plan?.stops.flatMap(({ shots }) => shots)).toHaveLength(shotsOf(brief).length);
    const { shots, things } = coverage(later, episode?.plan, filmedBy(brief));
    expect(shots).toHaveLength(shotsOf(brief).length);
    expect(shots.filter(({ text, reason }) => text !== reason)).toEqual([]);
    expect(things.map(({ key }) => key)).toEqual(brief.stops.flatMap(({ show }) => show.map(({ key }) => key)));
    // The promise noted after filming was no part of it.
    expect(things.filter(({ text }) => text.includes("again in September"))).toEqual([]);
  });

  test("without a kept plan tells a tick that has no shot any more in its own words", () => {
    const { shots } = coverage(later, briefOf(later), filmedBy(brief));
    const ticked = shots.filter(({ reason }) => reason !== undefined);
    expect(ticked).toHaveLength(shotsOf(brief).length);
    expect(ticked.filter(({ text, reason }) => text !== reason)).toEqual([]);
  });

  test.each(["again in September", "how close you dared to plant the leeks"])(
    "does not miss a promise that was made in the film itself, nor its shot: %s",
    (told) => {
      const anew = briefOf(later);
      const own = anew.stops.flatMap(({ shots }) => shots).filter(({ text }) => text.includes(told));
      expect(own, "the brief made anew has it").toHaveLength(1);
      const { shots, things, reshoot } = coverage(later, anew, filmedBy(brief));
      for (const each of [shots, things, reshoot]) expect(each.filter(({ text }) => text.includes(told))).toEqual([]);
    },
  );
});

describe("takes", () => {
  const ticks = (key: string, tick: Omit<ShotTick, "shot" | "key" | "words" | "at">): ShotTick => {
    const shot = shotsOf(brief).find((one) => one.key === key);
    if (shot === undefined) throw new Error(`no shot has the key ${key}`);
    return { shot: shot.id, key, words: shot.text, at: "09:40:00", ...tick };
  };
  let wrap: Wrap;
  beforeAll(() => {
    const episode = later.episodes.get(tour) as Episode;
    const filming: Episode["filming"] = {
      day,
      place: { file: `episodes/${tour}/field-list.json`, line: 1, column: 1 },
      stops: [
        {
          bed: "long-bed",
          ticks: [
            ticks("long-bed/wide", {
              state: "filmed",
              takes: [
                { at: "09:20:00", mark: "no good", why: "wind" },
                { at: "09:22:10", mark: "good" },
              ],
            }),
            ticks("long-bed/walk-in", { state: "skipped", reason: "rain", takes: [] }),
          ],
        },
        {
          bed: "squash-bed",
          ticks: [
            ticks("squash-bed/first-fruit/uchiki-kuri/2026-05-30", {
              state: "retake",
              takes: [{ at: "09:31:00", mark: "no good", why: "=focus" }],
            }),
          ],
        },
      ],
    };
    const said = [
      "The long bed. Lettuces, Reine des Glaces, new here.",
      "Now the squash bed.",
      "Uchiki Kuri, the first fruit.",
    ];
    const captions = { file: "a.vtt", bytes: vtt(said) };
    wrap = wrapEpisode({ garden: later, episode: { ...episode, filming }, brief: episode.plan, captions }).wrap;
  });

  test("stand in the report with their times, worth and reasons", () => {
    const report = wrapReport(wrap, later);
    expect(report).toMatch(
      /## Takes\n\n- Long Bed, S1\.1 [^\n]*: take 1 no good \(wind\), 9:20:00; take 2 good, 9:22:10\n/,
    );
    expect(report).toMatch(/- Long Bed, S1\.2 [^\n]*: skipped \(rain\)\n/);
  });

  test("that were no good, skipped or never made are to go back for, bed by bed, musts first", () => {
    const { reshoot } = wrap.coverage;
    expect(reshoot.slice(0, 2).map(({ key, what, why }) => [key.slice(0, 18), what, why])).toEqual([
      ["long-bed/walk-in", "skipped", "rain"],
      ["squash-bed/wide", "not filmed", undefined],
    ]);
    expect(reshoot.find(({ key }) => key.startsWith("squash-bed/first-fruit/uchiki"))).toMatchObject({
      what: "no good take",
      why: "=focus",
    });
    expect(reshoot.some(({ key }) => key === "long-bed/wide")).toBe(false);
    // One line says of the others that they were not shown at all.
    expect([...new Set(reshoot.map(({ bed }) => bed))]).toEqual(["long-bed", "squash-bed"]);
    expect(wrap.coverage.toPickUp[0]).toMatch(/^Not shown at all: Bean Row, /);
    expect(wrapReport(wrap, later)).toMatch(
      /## Shots to go back for\n\n- Long Bed, S1\.2 [^\n]*: skipped \(rain\)\.\n- Squash Bed, S4\.1 [^\n]*: not filmed\. Must\.\n/,
    );
  });

  test("are rows for the editor, and stand beside what was said in the edit log", () => {
    const title = (bed: string | undefined) => later.beds.get(bed ?? "")?.title ?? "";
    expect(takeRows(wrap, title).map(({ stop, take, at, mark, why }) => [stop, take, at, mark, why])).toEqual([
      ["Long Bed", 1, "09:20:00", "no good", "wind"],
      ["Long Bed", 2, "09:22:10", "good", ""],
      ["Long Bed", 0, "", "skipped", "rain"],
      ["Squash Bed", 1, "09:31:00", "no good", "=focus"],
    ]);
    const fruit = editLog(wrap, title, undefined).find(({ what }) =>
      what.includes("Uchiki Kuri squash set their first fruit"),
    );
    expect(fruit?.note).toBe("said; one take, none good");
  });
});

describe("a key", () => {
  test("has the letters of file names, and tells two that are alike apart", () => {
    expect(keyOf("long-bed", "owed", "2026-06-19 show 1/2 the “leeks”, again!")).toBe(
      "long-bed/owed/2026-06-19-show-1/2-the-leeks-again",
    );
    expect(thingKey("pots", { kind: "standing", lots: [], about: "the tubs" })).toBe("pots/standing/the-tubs");
    const apart = toldApart();
    expect([apart("a"), apart("b"), apart("a"), apart("a")]).toEqual(["a", "b", "a/2", "a/3"]);
  });

  test("of any words is one line without an empty part", () => {
    fc.assert(
      fc.property(fc.array(fc.string({ unit: "grapheme" })), (parts) => {
        const key = keyOf("bed", ...parts);
        expect(key).toMatch(/^bed(?:\/[\p{L}\p{N}]+(?:-[\p{L}\p{N}]+)*)*$/u);
      }),
    );
  });
});
