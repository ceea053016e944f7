/** The export of a field list, back in the records folder: read, linked, and told of with file and line when it is not right. */
import { describe, expect, test } from "vitest";
import { recordsOf } from "../records/records-of.ts";

const episode = `---
title: July tour
date: 2026-07-18
stops: [long-bed, squash-bed]
---
`;

const file = "episodes/2026-07-tour/field-list.json";

/** As lists of before 0.2.0 brought it home. */
const whole = {
  plotreel: "field list",
  version: 1,
  episode: "2026-07-tour",
  day: "2026-07-18",
  exported: "2026-07-18T11:02:09+01:00",
  stops: [
    {
      bed: "long-bed",
      ticks: [
        { shot: "S1.1", state: "filmed", takes: 2, at: "09:24:31" },
        { shot: "S1.2", state: "skipped", reason: "wind", takes: 0, at: "09:26:00" },
      ],
      note: "picked 1.4 kg Boltardy\nasked: what is the mesh?",
    },
    { bed: "squash-bed", ticks: [{ shot: "S2.1", state: "retake", takes: 1, at: "09:31:07" }] },
  ],
};

const plan = {
  plotreel: "plan",
  version: 1,
  episode: "2026-07-tour",
  day: "2026-07-18",
  stops: [
    {
      bed: "long-bed",
      title: "Long Bed",
      show: [
        {
          id: "S1a",
          key: "long-bed/first-picking/boltardy/2026-04-18",
          kind: "first picking",
          level: "must",
          text: "First Boltardy.",
          plantings: ["long-bed/boltardy/2026-04-18"],
          shot: "S1.2",
        },
      ],
      shots: [
        { id: "S1.1", key: "long-bed/wide", text: "the whole of the long bed", level: "must" },
        { id: "S1.2", key: "long-bed/first-picking/boltardy/2026-04-18", text: "the Boltardy beetroot in the hand" },
      ],
      cautions: ["Rhubarb leaves are poisonous."],
    },
  ],
  care: "Call for help at once.",
};

const takes = [
  { at: "09:20:00", mark: "no good", why: "wind" },
  { at: "09:22:10", mark: "hold" },
  { at: "09:24:31", mark: "good" },
];

const withTakes = {
  ...whole,
  version: 2,
  stops: [
    {
      bed: "long-bed",
      ticks: [
        {
          shot: "S1.1",
          key: "long-bed/wide",
          words: "the whole of the long bed",
          state: "filmed",
          takes,
          at: "09:24:31",
        },
      ],
    },
  ],
  plan,
};

const asRead = {
  stops: plan.stops.map(({ bed, show, shots, cautions: [caution] }) => ({
    bed,
    show,
    shots,
    cautions: [{ text: caution, private: false }],
    furtherCautions: [],
  })),
  followUps: [],
  closingCaution: "Call for help at once.",
};

function garden(exported: string | Error, more: Record<string, string> = {}) {
  return {
    "beds/long-bed.md": "---\ntitle: Long Bed\n---\n",
    "beds/squash-bed.md": "---\ntitle: Squash Bed\n---\n",
    "episodes/2026-07-tour/index.md": episode,
    [file]: exported,
    ...more,
  };
}

/** One line a problem. */
async function problemsOf(files: Parameters<typeof recordsOf>[0]): Promise<readonly string[]> {
  const { problems } = await recordsOf(files);
  return problems.map(
    (found) => `${found.file}:${found.line}:${found.column} ${found.severity}: ${found.what} ${found.fix}`,
  );
}

const text = (value: unknown) => JSON.stringify(value, null, 2);

describe("an export beside its episode", () => {
  test("becomes the episode's filming", async () => {
    const records = await recordsOf(garden(text(whole)));
    expect(records.problems).toEqual([]);
    expect(records.episodes.get("2026-07-tour")?.filming).toEqual({
      day: "2026-07-18",
      place: { file, line: 1, column: 1 },
      stops: [
        {
          bed: "long-bed",
          ticks: [
            { shot: "S1.1", state: "filmed", takes: [{}, { at: "09:24:31", mark: "good" }], at: "09:24:31" },
            { shot: "S1.2", state: "skipped", reason: "wind", takes: [], at: "09:26:00" },
          ],
          note: "picked 1.4 kg Boltardy\nasked: what is the mesh?",
        },
        {
          bed: "squash-bed",
          ticks: [{ shot: "S2.1", state: "retake", takes: [{ at: "09:31:07", mark: "no good" }], at: "09:31:07" }],
        },
      ],
    });
  });

  test("is read with a byte-order mark, other line ends, escapes and no stop at all", async () => {
    const escaped = `\uFEFF${JSON.stringify({ ...whole, stops: [{ bed: "long-bed", ticks: [], note: "\u{1F331} up" }] }).replace("\u{1F331}", "\\ud83c\\udf31")}\r\n`;
    const records = await recordsOf(garden(escaped));
    expect(records.problems).toEqual([]);
    expect(records.episodes.get("2026-07-tour")?.filming?.stops[0]?.note).toBe("\u{1F331} up");
    const empty = await recordsOf(garden(text({ ...whole, stops: [] })));
    expect(empty.episodes.get("2026-07-tour")?.filming?.stops).toEqual([]);
  });

  test("leaves an episode without one as it was", async () => {
    const { [file]: _, ...without } = garden("");
    expect((await recordsOf(without)).episodes.get("2026-07-tour")).not.toHaveProperty("filming");
  });
});

describe("takes and the plan they were filmed by", () => {
  const planFile = "episodes/2026-07-tour/plan.json";

  test("come home in the export", async () => {
    const records = await recordsOf(garden(text(withTakes)));
    expect(records.problems).toEqual([]);
    const filming = records.episodes.get("2026-07-tour")?.filming;
    expect(filming?.stops[0]?.ticks[0]).toEqual(withTakes.stops[0]?.ticks[0]);
    expect(filming?.plan).toEqual(asRead);
  });

  test("stand beside the episode as the brief kept them", async () => {
    const { [file]: _, ...without } = garden("");
    const records = await recordsOf({ ...without, [planFile]: text(plan) });
    expect(records.problems).toEqual([]);
    expect(records.episodes.get("2026-07-tour")?.plan).toEqual(asRead);
  });

  test.each([
    ["cut short", text(plan).slice(0, 200), "cannot be read"],
    ["of a later form", text({ ...plan, version: 2 }), "cannot be read"],
    [
      "without keys",
      text({ ...plan, stops: [{ ...plan.stops[0], shots: [{ id: "S1.1", text: "x" }] }] }),
      "cannot be read",
    ],
    ["another tour's", text({ ...plan, episode: "2026-06-tour" }), 'was made for the tour "2026-06-tour"'],
  ])("is told of when the plan is %s, and nothing else is lost", async (_, written, why) => {
    const told = `The plan in this file ${why}, so the tour is planned anew after filming. Bring back the file as it was, or delete it.`;
    const files = garden(text(whole), { [planFile]: written });
    expect(await problemsOf(files)).toEqual([`${planFile}:1:1 warning: ${told}`]);
    const episode = (await recordsOf(files)).episodes.get("2026-07-tour");
    expect(episode?.plan).toBeUndefined();
    expect(episode?.filming?.stops).toHaveLength(2);
  });

  test("are one line each, whatever was written into the file", async () => {
    const [stop] = withTakes.stops;
    const [tick] = stop?.ticks ?? [];
    const why = "wind\n\n## Promises heard\n\n- none";
    const odd = { ...tick, key: "__proto__", words: "wide\r\nshot", takes: [{ mark: "no good", why }] };
    const records = await recordsOf(garden(text({ ...withTakes, stops: [{ ...stop, ticks: [odd] }] })));
    expect(records.problems).toEqual([]);
    expect(records.episodes.get("2026-07-tour")?.filming?.stops[0]?.ticks[0]).toMatchObject({
      key: "__proto__",
      words: "wide shot",
      takes: [{ mark: "no good", why: "wind ## Promises heard - none" }],
    });
    const deep = `{"plotreel":"plan","version":1,"episode":"2026-07-tour","stops":${"[".repeat(2000)}${"]".repeat(2000)}}`;
    expect(await problemsOf(garden(text(whole), { [planFile]: deep }))).toEqual([
      expect.stringContaining("The plan in this file cannot be read"),
    ]);
  });

  test("leave the ticks readable when the plan among them is not", async () => {
    const files = garden(text({ ...withTakes, plan: { ...plan, stops: "?" } }));
    expect(await problemsOf(files)).toEqual([
      expect.stringContaining(`${file}:1:1 warning: The plan in this file cannot be read`),
    ]);
    expect((await recordsOf(files)).episodes.get("2026-07-tour")?.filming?.stops).toHaveLength(1);
  });
});

describe("a problem", () => {
  test("of one value stands at its line, and the rest is read", async () => {
    const slip = structuredClone(whole);
    Object.assign(slip.stops[1]?.ticks[0] as object, { state: "filmd", at: "9:31" });
    const files = garden(text(slip));
    expect(await problemsOf(files)).toEqual([
      `${file}:32:20 error: stops, entry 2: ticks, entry 1: state: "filmd" is not a value of this key. Write filmed, retake or skipped.`,
      `${file}:34:17 error: stops, entry 2: ticks, entry 1: at: "9:31" is not a time of day. Write hours, minutes and seconds, two digits each: "09:24:31".`,
    ]);
    const { episodes } = await recordsOf(files);
    expect(episodes.get("2026-07-tour")?.filming?.stops.map(({ bed }) => bed)).toEqual(["long-bed"]);
  });

  test("names unknown keys, missing keys and unknown beds", async () => {
    const [first, second] = structuredClone(whole.stops);
    const slip = {
      ...whole,
      exportd: "",
      stops: [{ ...first, takes: 3 }, { ...second, bed: "sqash-bed" }, { bed: "x" }],
    };
    expect(await problemsOf(garden(text({ ...slip, colour: "blue" })))).toEqual([
      `${file}:26:7 error: "takes" is not a key of an entry of "stops", so it was left aside. The keys of an entry of "stops" are bed, ticks and note.`,
      `${file}:29:14 warning: No bed is called "sqash-bed", so what was filmed there was left out. Did you mean "squash-bed"?`,
      `${file}:39:5 error: An entry of "stops" needs "ticks", so it was left out. Add a line "ticks: …".`,
      `${file}:44:3 error: "colour" is not a key of the export of a field list, so it was left aside. The keys of the export of a field list are plotreel, version, episode, day, exported and stops.`,
    ]);
  });

  test.each([
    [
      "cut short",
      text(whole).slice(0, 300),
      /^episodes\/2026-07-tour\/field-list\.json:1\d:\d+ error: This export cannot be read/,
    ],
    [
      "a comma too many",
      text(whole).replace('"wind",', '"wind",,'),
      /field-list\.json:20:\d+ error: This export cannot be read/,
    ],
    ["empty", "", /field-list\.json:1:1 error: This export cannot be read/],
    ["another file", "[1, 2]", /field-list\.json:1:1 error: This is not the export of a field list/],
    [
      "a later version",
      text({ ...whole, version: 3 }),
      /field-list\.json:1:1 error: This export is of another version/,
    ],
    [
      "another tour's",
      text({ ...whole, episode: "2026-06-tour" }),
      /field-list\.json:4:14 warning: .* "2026-06-tour".* If it belongs here, write "2026-07-tour" as its episode\./,
    ],
    ["unreadable", Object.assign(new Error("no"), { code: "EACCES" }), /field-list\.json:1:1 error: /],
    [
      "nested without end",
      `{"plotreel":"field list","version":1,"stops":${"[".repeat(2000)}${"]".repeat(2000)}}`,
      /field-list\.json:1:/,
    ],
  ])("of a file that is %s is told, and the episode stays", async (_, exported, told) => {
    const files = garden(exported);
    const problems = await problemsOf(files);
    expect(problems[0]).toMatch(told);
    const { episodes } = await recordsOf(files);
    expect(episodes.get("2026-07-tour")?.title).toBe("July tour");
    expect(episodes.get("2026-07-tour")?.filming).toBeUndefined();
  });

  test("of a name that a phone made longer says which file is read", async () => {
    const twice = "episodes/2026-07-tour/field-list (1).json";
    expect(await problemsOf(garden(text(whole), { [twice]: text(whole) }))).toEqual([
      `${twice}:1:1 warning: "field-list (1).json" is not read: the export of a field list is named field-list.json. Keep the newer of the two under the name field-list.json, and delete the other.`,
    ]);
  });
});
