/**
 * Film files and what was ticked: craft rules are those of cameras as their users report them. A date may be the start of a
 * clip or its end (two programs' issue threads give both), UTC or the camera's own clock, an hour or a month off.
 */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { ClipFacts, Filming } from "../../src/model.ts";
import { clipFacts } from "../../src/photos/index.ts";
import { clipLog } from "../../src/wrap/index.ts";
import { box, type FilmFile, filmFile, u32 } from "./film-file.ts";

const factsOf = (bytes: Uint8Array, file = "GX010001.MP4") =>
  clipFacts(file, { read: async () => bytes, readAt: async (_, from, length) => bytes.subarray(from, from + length) });

describe("what a film file knows of itself", () => {
  it.each([
    [30_000, [1001], { num: 30_000, den: 1001 }, false],
    [24_000, [1001], { num: 24_000, den: 1001 }, false],
    [60_000, [1001], { num: 60_000, den: 1001 }, false],
    [12_800, [512], { num: 25, den: 1 }, false],
    [90_000, [1500], { num: 60, den: 1 }, false],
    // 29.97 is no 30: a thousandth apart.
    [3000, [100], { num: 30, den: 1 }, false],
    // A phone's pictures of unequal lengths.
    [600, [20, 21, 19, 20], { num: 30, den: 1 }, true],
    [1000, [80], { num: 25, den: 2 }, false],
  ])("pictures of %i / %j", async (scale, lasts, rate, isVariable) => {
    const facts = await factsOf(filmFile({ length: 60, pictures: { scale, lasts } }));
    expect(facts).toMatchObject({ rate, isVariable, length: 60_000 });
  });

  it("its day, camera, length, size, turn and timecode, with short and long headers; never its place", async () => {
    for (const isLong of [false, true]) {
      const bytes = filmFile({
        header: "2026-06-14T08:20:00",
        length: 12.5,
        model: "Lens 4",
        position: "+51.5000-000.1200+010.000/",
        // ISO/IEC 14496-12 matrix {a b u, c d v, x y w}: 0 1 0, -1 0 0 turns 90 degrees clockwise.
        matrix: [0, 0x1_0000, 0, -0x1_0000, 0, 0, 0, 0, 0x4000_0000],
        startFrame: 107_892,
        isLong,
      });
      const facts = await factsOf(bytes);
      expect(facts).toEqual({
        file: "GX010001.MP4",
        named: undefined,
        written: undefined,
        header: Date.UTC(2026, 5, 14, 8, 20),
        camera: "Lens 4",
        length: 12_500,
        rate: { num: 30_000, den: 1001 },
        isVariable: false,
        width: 1080,
        height: 1920,
        turned: 90,
        startFrame: 107_892,
        hasSound: false,
      });
      expect(JSON.stringify(facts)).not.toMatch(/51\.5|0\.12/);
    }
  });

  it("a date of nought, and a file cut off, tell nothing but the name", async () => {
    expect((await factsOf(filmFile({ length: 5 }), "20260614_092011.mp4")).header).toBeUndefined();
    expect(await factsOf(filmFile({ length: 5 }).subarray(0, 3000), "20260614_092011.mp4")).toEqual({
      file: "20260614_092011.mp4",
      named: { day: "2026-06-14", time: "09:20:11", utc: false },
      isVariable: false,
    });
  });

  it("any bytes are read without an error, also boxes within boxes that lie", async () => {
    const whole = filmFile({ length: 5, header: "2026-06-14T08:20:00", model: "Lens 4", startFrame: 9 });
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.tuple(fc.nat(whole.length - 1), fc.nat(255)), { maxLength: 12 }),
        async (changes) => {
          const bytes = Buffer.from(whole);
          for (const [at, value] of changes) bytes[at] = value;
          await factsOf(bytes);
        },
      ),
      { numRuns: 300 },
    );
    let deep = u32(0);
    for (let level = 0; level < 2000; level += 1) deep = box("moov", deep);
    await factsOf(deep);
  });
});

// ------------------------------------------------------------------------------------------------------------------

const day = "2026-06-14";
const place = { file: "episodes/june/field-list.json", line: 1, column: 1 };

/** Takes in order: shot, wall clock at which it began, seconds, and what was ticked when it was over. */
type Take = readonly [shot: string, begins: string, seconds: number, tick?: "filmed" | "retake"];

const morning: readonly Take[] = [
  ["S1.1", "09:20:00", 22, "filmed"],
  ["S1.2", "09:22:00", 41, "retake"],
  ["S1.2", "09:24:10", 38, "filmed"],
  ["S2.1", "09:31:00", 15, "filmed"],
  ["S2.2", "09:33:30", 62, "filmed"],
  ["S3.1", "09:41:05", 9, "filmed"],
];

/** Ticks as the phone brings them home: one a shot, of its last take, some seconds after. */
function filmingOf(takes: readonly Take[]): Filming {
  const shots = Map.groupBy(takes, ([shot]) => shot);
  const ticks = [...shots].map(([shot, all]) => {
    const [, begins, seconds, state = "filmed"] = all.at(-1) as Take;
    const at = new Date(Date.parse(`${day}T${begins}Z`) + (seconds + 7) * 1000).toISOString().slice(11, 19);
    return { bed: `bed-${shot[1]}`, tick: { shot, state, takes: all.map(() => ({})), at } };
  });
  const stops = [...Map.groupBy(ticks, ({ bed }) => bed)].map(([bed, its]) => ({
    bed,
    ticks: its.map(({ tick }) => tick),
  }));
  return { day, stops, place };
}

/** The files of a camera whose date is so many milliseconds off the garden's wall clock. */
async function filesOf(
  takes: readonly Take[],
  { off = 0, side = "start", ...more }: { off?: number; side?: "start" | "end" } & Partial<FilmFile> = {},
): Promise<readonly ClipFacts[]> {
  return Promise.all(
    takes.map(([, begins, seconds], index) => {
      const at = Date.parse(`${day}T${begins}Z`) + off + (side === "end" ? seconds * 1000 : 0);
      const bytes = filmFile({
        length: seconds,
        header: new Date(at).toISOString().slice(0, 19),
        model: "Lens 4",
        ...more,
      });
      return factsOf(bytes, `GX01000${index + 1}.MP4`);
    }),
  );
}

const expected = [
  ["S1.1", 1, true],
  ["S1.2", 1, false],
  ["S1.2", 2, true],
  ["S2.1", 1, true],
  ["S2.2", 1, true],
  ["S3.1", 1, true],
];

describe("clips and ticks", () => {
  const hour = 3_600_000;

  it.each([
    ["true UTC", -hour, "start", /are in UTC, and tell when a clip begins/],
    ["the camera's own clock", 0, "start", /are by the camera’s own clock, and tell when a clip begins/],
    ["the end of a clip", -hour, "end", /are in UTC, and tell when a clip ends/],
    ["a clock 37 minutes slow", -hour - 2_220_000, "start", /put 37 min \d+ s later/],
    ["a month off", -31 * 24 * hour, "start", /put 30 days 23 h \d+ min \d+ s later/],
  ] as const)("%s is found", async (_, off, side, said) => {
    const clips = await filesOf(morning, { off, side });
    const {
      clips: logged,
      told,
      questions,
    } = clipLog({ clips, filming: filmingOf(morning), timeZone: "Europe/London" });
    expect(logged.map(({ shot, take, isBest }) => [shot, take, isBest])).toEqual(expected);
    expect(told).toEqual([expect.stringMatching(said)]);
    expect(told[0]).toContain("5 of 5 ticks stand right after a file");
    expect(questions).toEqual([]);
    expect(logged[0]?.begins).toBeLessThan(Date.parse(`${day}T09:20:20Z`));
    expect(logged[0]?.begins).toBeGreaterThan(Date.parse(`${day}T09:19:40Z`));
  });

  it("two cameras are read each by its own clock, and both hold the shot", async () => {
    const phone = (await filesOf(morning, { off: -hour, model: "Phone 2" })).map((clip) => ({
      ...clip,
      file: `b/${clip.file}`,
    }));
    const { clips } = clipLog({
      clips: [...(await filesOf(morning)), ...phone],
      filming: filmingOf(morning),
      timeZone: "Europe/London",
    });
    expect(clips.map(({ camera, shot }) => [camera, shot])).toEqual([
      ...expected.map(([shot]) => ["Lens 4", shot]),
      ...expected.map(([shot]) => ["Phone 2", shot]),
    ]);
  });

  it("a clip that runs while shots are ticked is a walk in one piece", async () => {
    const clips = await filesOf([["", "09:19:00", 1500]], { off: -hour });
    const { clips: logged } = clipLog({
      clips,
      filming: filmingOf([...morning, ["S4.1", "09:43:30", 30, "filmed"]]),
      timeZone: "Europe/London",
      clipClocks: { "lens 4": "UTC" },
    });
    // One tick at its end fits; the five before stand within it.
    expect(logged[0]?.shot).toBe("S4.1");
    expect(logged[0]?.within.map(({ shot, at }) => [shot, at])[0]).toEqual(["S1.1", 89_000]);
  });

  it("where nothing fits nobody guesses, and without ticks no file has a shot", async () => {
    const clips = await filesOf([["", "15:00:00", 20]], {});
    const { clips: logged, told } = clipLog({ clips, filming: filmingOf(morning), timeZone: "Europe/London" });
    expect(logged[0]?.shot).toBeUndefined();
    expect(told[0]).toMatch(/no reading of its dates fits/);
    // Two of a moved clock may fit by chance.
    const two = await filesOf(morning.slice(1, 3), { off: 5 * hour });
    const few = clipLog({ clips: two, filming: filmingOf(morning), timeZone: "Europe/London" });
    expect(few.clips.every(({ isSure }) => !isSure)).toBe(true);
    const none = clipLog({ clips, filming: undefined, timeZone: "Europe/London" });
    expect(none.clips[0]?.shot).toBeUndefined();
    expect(none.told[0]).toMatch(/nothing was ticked while filming/);
  });

  it("a retake that was not filmed again has no best", async () => {
    const takes: readonly Take[] = [...morning.slice(0, 1), ["S1.2", "09:22:00", 41, "retake"], ...morning.slice(3)];
    const { clips } = clipLog({ clips: await filesOf(takes), filming: filmingOf(takes), timeZone: "Europe/London" });
    expect(clips[1]).toMatchObject({ shot: "S1.2", mark: "no good", isBest: false });
  });

  it("evenly spaced clips that fit a clip earlier as well are asked about", async () => {
    const even: readonly Take[] = [1, 2, 3, 4, 5].map((n): Take => [`S${n}.1`, `09:${20 + n}:00`, 30, "filmed"]);
    const clips = (await filesOf(even, { off: 40 * 60_000 })).slice(0, 4);
    const { questions, clips: logged } = clipLog({ clips, filming: filmingOf(even), timeZone: "Europe/London" });
    expect(questions).toMatchObject([{ camera: "Lens 4" }]);
    expect(logged.every(({ isSure }) => !isSure)).toBe(true);
  });
});
