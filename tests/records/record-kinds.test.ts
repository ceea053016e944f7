/** Each kind of record read in full: every key, every form its value may take. */
import { describe, expect, test } from "vitest";
import { isDoubt, problemText, readRecords } from "../../src/records/index.ts";
import { folderOf, recordsOf } from "./records-of.ts";

const file = (frontMatter: string, body = "") => `---\n${frontMatter}\n---\n${body}`;

/** One record read beside others that it may name; there must be nothing to mend. */
async function read(files: Readonly<Record<string, string>>) {
  const records = await recordsOf(files);
  expect(records.problems.map(problemText)).toEqual([]);
  return records;
}

describe("garden.md", () => {
  test("a folder without it says at once what holds", async () => {
    const { problems } = await readRecords(folderOf({ "beds/long-bed.md": file("title: Long Bed") }), {
      today: "2026-07-18",
    });
    expect(problems.map(problemText)).toEqual([
      "garden.md:1:1 hint folder/no-settings\n" +
        "  There is no garden.md, so these hold: metric units, the time zone UTC, language en-GB, seasons from 1 January, and no frost days.\n  " +
        'Write garden.md with "units", "time zone", "language", "last frost" and "first frost" in its front matter.',
    ]);
    const described = await readRecords(folderOf({ "garden.md": file("units: us") }), { today: "2026-07-18" });
    expect(described.problems).toEqual([]);
  });

  test.each([
    ["place: {latitude: 54.3, longitude: -5.6}", "01-01"],
    ["place: {latitude: -41.2, longitude: 174.7}", "07-01"],
    ["place: {latitude: -41.2, longitude: 174.7}\nseason starts: 1 September", "09-01"],
    ["units: metric", "01-01"],
    ["place: Oamaru\ntime zone: Pacific/Auckland", "07-01"],
    ["time zone: Australia/Darwin", "01-01"],
    ["place: {latitude: 54.3, longitude: -5.6}\ntime zone: Australia/Adelaide", "01-01"],
  ])("with %s a season begins on %s", async (front, starts) => {
    const { settings } = await read({ "garden.md": file(front) });
    expect(settings.seasonStarts).toBe(starts);
  });

  test("a town's name for a place tells no position, and is no error", async () => {
    const { problems, settings } = await recordsOf({ "garden.md": file("place: Westcliff Bay, up the hill") });
    expect(problems).toEqual([]);
    expect(settings.position).toBeUndefined();
    const figures = await recordsOf({ "garden.md": file("place: 54.3 N, 5.6 W") });
    expect(figures.problems.map(({ rule }) => rule)).toEqual(["record/wrong-value"]);
  });

  test("a language that is no English", async () => {
    const { problems, settings } = await recordsOf({ "garden.md": file("language: de") });
    expect(problems.map(problemText)).toEqual([
      'garden.md:2:11 error record/wrong-value\n  language: "de" is no language that Plotreel speaks: it speaks English, and reads notes in English.\n  Write the English you use: "en-GB", "en-IE", "en-US" or "en-AU".',
    ]);
    expect(settings.language).toBe("en-GB");
  });

  test("says in which form the records are written, and stops in front of a later one", async () => {
    await read({ "garden.md": file("plotreel: 1") });
    const { problems } = await recordsOf({ "garden.md": file("plotreel: 2") });
    expect(problems.map(problemText)).toEqual([
      "garden.md:2:11 error record/wrong-value\n" +
        "  plotreel: These records are written in form 2, and this Plotreel reads form 1.\n" +
        '  Use a later Plotreel, or write "plotreel: 1" if they are in that form.',
    ]);
    expect(problems.map(isDoubt)).toEqual([true]);
  });

  test("all keys", async () => {
    const { settings } = await read({
      "garden.md": file(
        `plotreel: 1
name: Gullstone
place: {latitude: 54.3, longitude: -5.6, elevation: 30 m}
time zone: Europe/London
units: US
language: en-us
last frost: 20 April
first frost: November 5
season starts: 1 October
narration rate: 140
photo gap: 10 days
kit: [camera, folding rule]
weights: {new: 2, follow-up: 1.5}
film between: 8:00 to 12:30
low sun: {from: -4, to: 6°}
address: https://gullstone.example/
base: garden`,
        "\nThree places.\n",
      ),
    });
    expect(settings).toEqual({
      name: "Gullstone",
      position: { latitude: 54.3, longitude: -5.6, elevation: 30 },
      southern: false,
      timeZone: "Europe/London",
      units: "us",
      language: "en-US",
      lastFrost: "04-20",
      firstFrost: "11-05",
      seasonStarts: "10-01",
      narrationRate: 140,
      photoGapDays: 10,
      kit: ["camera", "folding rule"],
      weights: { new: 2, "follow-up": 1.5 },
      filmBetween: { from: "08:00", to: "12:30" },
      lowSun: { from: -4, to: 6 },
      address: "https://gullstone.example",
      base: "/garden/",
      body: "Three places.",
    });
  });

  test("a camera's clock is UTC or local, in any case", async () => {
    const { settings } = await read({ "garden.md": file("clip clocks: {One: UTC, Other: utc, Third: Local}") });
    expect(settings.clipClocks).toEqual({ One: "UTC", Other: "UTC", Third: "local" });
  });

  test("without it nothing depends on the machine", async () => {
    const { settings } = await read({ "notes/2026-05-16-a.md": "Rain.\n" });
    expect(settings).toMatchObject({
      name: "My garden",
      timeZone: "UTC",
      units: "metric",
      language: "en-GB",
      base: "/",
    });
  });
});

describe("beds", () => {
  const bedOf = async (frontMatter: string) =>
    (await read({ "beds/arch-bed.md": file(frontMatter), "sites/plot.md": file("title: The Plot") })).beds.get(
      "arch-bed",
    );

  test("all keys", async () => {
    expect(
      await bedOf(`title: The Arch
site: the plot
also called: [arch, top arch]
size: 4 x 1.2 m
plan: {x: 2, y: 5.5}
facing: south
shade: ["wall to the east, 3 m high, 2 m away"]
soil: loam
built: larch boards
filled: [compost, {what: leaf mould, on: 2025-11}]
in use since: March 2023
in use until: 2026-12-31
private: yes
viewpoints:
  - {name: gate, spot: "from the post, chest height", looking: NNW, outline: [[0.1, 0.4], [0.9, 0.4], [0.5, 1]]}`),
    ).toEqual({
      id: "arch-bed",
      title: "The Arch",
      private: true,
      body: "",
      place: { file: "beds/arch-bed.md", line: 1, column: 1 },
      described: true,
      site: "plot",
      alsoCalled: ["arch", "top arch"],
      size: { length: 4, width: 1.2 },
      plan: { x: 2, y: 5.5 },
      facing: 180,
      shade: ["wall to the east, 3 m high, 2 m away"],
      soil: "loam",
      built: [{ what: "larch boards" }],
      filled: [{ what: "compost" }, { what: "leaf mould", day: "2025-11" }],
      inUseSince: "2023-03-01",
      inUseUntil: "2026-12-31",
      viewpoints: [
        {
          name: "gate",
          spot: "from the post, chest height",
          looking: 337.5,
          outline: [
            [0.1, 0.4],
            [0.9, 0.4],
            [0.5, 1],
          ],
        },
      ],
    });
  });

  test.each([
    ["4 x 1.2 m", 4, 1.2],
    ["4x1.2m", 4, 1.2],
    ["4 m × 120 cm", 4, 1.2],
    ["400 by 120 cm", 4, 1.2],
    // NIST SP 811: the foot is 0.3048 m, the inch 0.0254 m, exactly.
    ["12 x 4 ft", 3.6576, 1.2192],
    ["12 ft x 48 in", 3.6576, 1.2192],
    [`12' x 4'`, 3.6576, 1.2192],
    ["10 x 10 ft", 3.048, 3.048],
    ["100 x 18 in", 2.54, 0.4572],
  ])("size %s", async (written, length, width) => {
    expect((await bedOf(`size: ${JSON.stringify(written)}`))?.size).toEqual({ length, width });
  });

  test.each([
    ["north", 0],
    ["North-East", 45],
    ["south west", 225],
    ["southwest", 225],
    ["SSW", 202.5],
    ["north-north-west", 337.5],
    ["270", 270],
    ["95°", 95],
    ["360 degrees", 0],
  ])("facing %s", async (written, degrees) => {
    expect((await bedOf(`facing: ${written}`))?.facing).toBe(degrees);
  });

  test("one text stands for a list of one, and names may be set off by commas", async () => {
    const bed = await bedOf("shade: wall to the east, 3 m high\nalso called: arch, top arch");
    expect(bed?.shade).toEqual(["wall to the east, 3 m high"]);
    expect(bed?.alsoCalled).toEqual(["arch", "top arch"]);
  });

  test("without a title the file name is one, and empty keys are keys left out", async () => {
    expect(await bedOf("soil:\nsize: \nbuilt: []")).toMatchObject({
      title: "Arch bed",
      soil: undefined,
      size: undefined,
      built: [],
    });
  });

  test("texts are kept as written, whatever YAML would make of them", async () => {
    expect(await bedOf("title: 012\nsoil: no\nalso called: [2026-05-16, 1e3, true, ~]")).toMatchObject({
      title: "012",
      soil: "no",
      alsoCalled: ["2026-05-16", "1e3", "true", "~"],
    });
  });
});

describe("varieties", () => {
  const varietyOf = async (frontMatter: string) =>
    (await read({ "varieties/black-beauty.md": file(frontMatter) })).varieties.get("black-beauty");

  test("all keys", async () => {
    expect(
      await varietyOf(`title: Black Beauty
crop: Aubergines
botanical: Solanum melongena
say it as: as written
also spelled: [Blackbeauty]
source: {name: Drift Lane Seeds, link: https://driftlane.example/bb, obtained: commission link, year: 2026}
days to maturity: 95 from planting
perennial: false
caution: leaves are poisonous`),
    ).toMatchObject({
      title: "Black Beauty",
      crop: "aubergine",
      botanical: "Solanum melongena",
      sayAs: "as written",
      alsoSpelled: ["Blackbeauty"],
      source: {
        name: "Drift Lane Seeds",
        link: "https://driftlane.example/bb",
        obtained: "commission link",
        year: 2026,
      },
      maturity: { days: 95, from: "planting" },
      perennial: false,
      caution: "leaves are poisonous",
    });
  });

  test.each([
    ["source: Drift Lane Seeds", { name: "Drift Lane Seeds" }],
    ["source: Drift Lane Seeds\nobtained: Paid Promotion", { name: "Drift Lane Seeds", obtained: "paid promotion" }],
    ["obtained: saved", { name: "own saved seed", obtained: "saved" }],
    ["link: https://www.driftlane.example/x", { name: "driftlane.example", link: "https://www.driftlane.example/x" }],
    ["caution: none", undefined],
  ])("source of %j", async (keys, source) => {
    expect((await varietyOf(`crop: aubergine\n${keys}`))?.source).toEqual(source);
  });

  test.each([
    ["tomato", "70", { days: 70, from: "planting" }],
    ["carrot", "70", { days: 70, from: "sowing" }],
    ["carrot", "about 70 days", { days: 70, from: "sowing" }],
    ["tomato", "70 days from sowing", { days: 70, from: "sowing" }],
    ["carrot", "{days: 70, from: planting}", { days: 70, from: "planting" }],
  ])("days to maturity of a %s, written %s", async (crop, written, maturity) => {
    expect((await varietyOf(`crop: ${crop}\ndays to maturity: ${written}`))?.maturity).toEqual(maturity);
  });

  test("a crop that stands for years makes its varieties perennial unless they say otherwise", async () => {
    expect((await varietyOf("crop: rhubarb"))?.perennial).toBe(true);
    expect((await varietyOf("crop: rhubarb\nperennial: no"))?.perennial).toBe(false);
  });

  test("a crop beyond the table is a crop of its own", async () => {
    const { crops, varieties, problems } = await recordsOf({
      "varieties/x.md": file("title: Blue Star\ncrop: quillwort"),
      "varieties/y.md": file("title: Red Star\ncrop: Quillwort"),
    });
    expect(problems.map(problemText)).toEqual([
      `varieties/x.md:3:7 hint name/crop-taken
  The crop "quillwort" is not in the table of crops; it was taken as named, of no known family.
  Nothing needs to be done; if it goes by another name as well, that one may be known.`,
    ]);
    expect(varieties.get("x")?.crop).toBe("quillwort");
    expect([...crops.keys()]).toEqual(["quillwort"]);
  });
});

test("walks and hours that cannot be", async () => {
  const { problems } = await recordsOf({
    "garden.md": file("film between: morning\nlow sun: {from: 6, to: -4}"),
    "sites/yard.md": file("title: Yard\nstart: Lnog Bed\nend: {x: 1}"),
    "beds/long-bed.md": file("title: Long Bed\nsite: yard"),
  });
  expect(problems.map(({ rule, what, fix }) => [rule, what, fix])).toEqual([
    [
      "record/wrong-value",
      'film between: "morning" is not a span of the day.',
      'Write two times of day with "to" between them, for example "08:00 to 12:00".',
    ],
    ["record/wrong-value", "low sun: These altitudes run downward.", "Write the lower one as from: {from: -4, to: 6}."],
    ["link/unknown-bed", 'No bed is called "Lnog Bed", so it was left out here.', 'Did you mean "Long Bed"?'],
    ["record/missing-key", '"end" needs "y", so it was left out.', 'Add a line "y: …".'],
  ]);
});

test("sites, gear and trials, with names led back to ids", async () => {
  const { sites, gear, trials } = await read({
    "sites/yard.md": file(
      "title: Yard\nplace name: by the harbour\nposition: {latitude: 54.29, longitude: -5.6}\norder: 2\ngates: [{name: lane, x: 7, y: 0}, {x: 0, y: 3 m}]\nmust pass: {x: 2, y: 2}\nstart: The Long Bed\nend: {x: 1, y: 0}",
    ),
    "gear/mesh.md": file(
      "title: Fine mesh\nalso called: netting\nobtained: gifted\nfrom: its maker\nlink: https://mesh.example\nsince: 2026",
    ),
    "beds/long-bed.md": file("title: Long Bed"),
    "varieties/greyhound.md": file("title: Greyhound\ncrop: cabbage"),
    "trials/mesh-or-not.md": file(
      "title: Mesh or not\nquestion: Does mesh keep moths off?\narms: [{name: under mesh, variety: Greyhound cabbage, bed: the long bed}, open]\nmeasure: heads without holes\nstarted: 2026-04-11\nverdict due: 1 August 2026",
      "\nTwelve a side.\n",
    ),
  });
  expect(sites.get("yard")).toMatchObject({
    placeName: "by the harbour",
    position: { latitude: 54.29, longitude: -5.6 },
    order: 2,
    gates: [
      { x: 7, y: 0 },
      { x: 0, y: 3 },
    ],
    mustPass: [{ x: 2, y: 2 }],
    start: "long-bed",
    end: { x: 1, y: 0 },
  });
  expect(gear.get("mesh")).toMatchObject({
    alsoCalled: ["netting"],
    obtained: "gifted",
    from: "its maker",
    since: "2026",
  });
  expect(trials.get("mesh-or-not")).toMatchObject({
    question: "Does mesh keep moths off?",
    arms: [{ name: "under mesh", variety: "greyhound", bed: "long-bed" }, { name: "open" }],
    measure: "heads without holes",
    status: "running",
    started: "2026-04-11",
    verdictDue: "2026-08-01",
    body: "Twelve a side.",
  });
});

test("an episode with all keys", async () => {
  const { episodes } = await read({
    "beds/long-bed.md": file("title: Long Bed\nalso called: [the long one]"),
    "beds/arch-bed.md": file("title: The Arch"),
    "episodes/2026-05-tour/index.md": file("title: May\ndate: 2026-05-16\nstatus: published"),
    "episodes/2026-05-tour/film.vtt": "WEBVTT\n",
    "episodes/2026-06-tour/film.en.srt": "",
    "episodes/2026-06-tour/index.md": file(`title: June
date: Saturday 13 June 2026
published: 2026-06-20
target: 12 min
start: 9:15
link: https://films.example/gullstone/june
stops: [The long one, {bed: the arch, at: "6:40"}]
first stop: The Arch
last stop: the long one
promised:
  - {what: how close I dared to plant them, bed: Long Bed, due: 18 July 2026, kept: 2026-05-tour, at: "1:02:03"}
  - the leeks again
must: the squash
keep: [beetroot]
skip: []`),
  });
  expect(episodes.get("2026-06-tour")).toEqual({
    id: "2026-06-tour",
    title: "June",
    private: false,
    body: "",
    place: { file: "episodes/2026-06-tour/index.md", line: 1, column: 1 },
    described: true,
    day: "2026-06-13",
    published: "2026-06-20",
    status: "published",
    target: 720,
    start: "09:15",
    link: "https://films.example/gullstone/june",
    stops: [{ bed: "long-bed" }, { bed: "arch-bed", at: 400 }],
    firstStop: "arch-bed",
    lastStop: "long-bed",
    promised: [
      {
        what: "how close I dared to plant them",
        bed: "long-bed",
        due: "2026-07-18",
        kept: "2026-05-tour",
        at: 3723,
        place: { file: "episodes/2026-06-tour/index.md", line: 12, column: 5 },
      },
      { what: "the leeks again", place: { file: "episodes/2026-06-tour/index.md", line: 13, column: 5 } },
    ],
    must: ["the squash"],
    keep: ["beetroot"],
    skip: [],
    captions: ["episodes/2026-06-tour/film.en.srt"],
  });
  expect(episodes.get("2026-05-tour")?.captions).toEqual(["episodes/2026-05-tour/film.vtt"]);
});

test.each([
  ["12", 720],
  ["12 min", 720],
  ["12 minutes", 720],
  ["1 h 10 min", 4200],
  ["90 s", 90],
  ["7.5 min", 450],
])("a target of %s", async (written, seconds) => {
  const { episodes } = await read({
    "episodes/x/index.md": file(`date: 2026-05-16\nstatus: planned\ntarget: ${written}`),
  });
  expect(episodes.get("x")?.target).toBe(seconds);
});

test("photos with their sidecars, and weather files that are only found", async () => {
  const { photoFiles, photoSidecars, weatherFiles } = await read({
    "beds/long-bed.md": file("title: Long Bed"),
    "varieties/boltardy.md": file("title: Boltardy\ncrop: beetroot"),
    "photos/long-bed/gate/a.JPG": "",
    "photos/long-bed/gate/a.md": file(
      "date: 2026-05-16\nbed: Long Bed\nviewpoint: gate\nvarieties: Boltardy\ncredit: a neighbour\nturn: 90°",
      "\nThe first row up.\n",
    ),
    "photos/2026-05-16/b.heic": "",
    "photos/2026-05-16/b.heic.md": file("caption: Mist\nprivate: true"),
    "weather/2026.csv": "",
  });
  expect(photoFiles).toEqual(["photos/2026-05-16/b.heic", "photos/long-bed/gate/a.JPG"]);
  expect([...photoSidecars.values()]).toEqual([
    {
      photo: "photos/2026-05-16/b.heic",
      place: { file: "photos/2026-05-16/b.heic.md", line: 1, column: 1 },
      varieties: [],
      caption: "Mist",
      private: true,
    },
    {
      photo: "photos/long-bed/gate/a.JPG",
      place: { file: "photos/long-bed/gate/a.md", line: 1, column: 1 },
      day: "2026-05-16",
      bed: "long-bed",
      viewpoint: "gate",
      varieties: ["boltardy"],
      caption: "The first row up.",
      credit: "a neighbour",
      turn: 90,
      private: false,
    },
  ]);
  expect(weatherFiles).toEqual(["weather/2026.csv"]);
});

test("crops go by their American names where the garden's language is American, else by the word that it writes", async () => {
  const american = {
    "varieties/contender.md": file("title: Contender\ncrop: snap bean"),
    "notes/2026-05-16-a.md": "- picked 2 zucchinis\n- planted 3 eggplants in Tank\n",
  };
  const british = {
    "varieties/contender.md": file("title: Contender\ncrop: French bean"),
    "notes/2026-05-16-a.md": "- picked 2 courgettes\n- planted 3 aubergines in Tank\n",
  };
  const names = async (language: string, files: Readonly<Record<string, string>>) =>
    [...(await recordsOf({ ...files, "garden.md": file(`language: ${language}`) })).crops.values()].map(
      ({ id, plural }) => `${id}: ${plural}`,
    );
  const asBritish = ["aubergine: aubergines", "courgette: courgettes", "french-bean: French beans"];
  const asAmerican = ["aubergine: eggplants", "courgette: zucchinis", "french-bean: snap beans"];
  expect(await names("en-US", american)).toEqual(asAmerican);
  expect(await names("en-GB", british)).toEqual(asBritish);
  // Whoever writes courgettes in Ohio is told of courgettes.
  expect(await names("en-US", british)).toEqual(asBritish);
});

describe("a plant that no file gives a crop is of the only crop that has such a name", () => {
  const note = (lines: string) => ({ "notes/2026-05-16-a.md": `---\nbed: Long Bed\n---\n\n${lines}` });

  test("named by a line", async () => {
    const { varieties, problems } = await recordsOf(note("- planted 100 Sturon\n- planted 20 Charlotte\n"));
    expect([varieties.get("sturon")?.crop, varieties.get("charlotte")?.crop]).toEqual(["onion", "potato"]);
    expect(problems.find(({ rule, what }) => rule === "name/variety-taken" && what.includes("Sturon"))?.what).toBe(
      'No file describes the variety "Sturon"; it was taken as named, of the crop onion.',
    );
  });

  test("unless a later line says another", async () => {
    const { varieties } = await recordsOf(note("- planted 20 Charlotte\n- planted 6 Charlotte strawberries\n"));
    expect([...varieties].map(([id, { crop }]) => [id, crop])).toEqual([["charlotte", "strawberry"]]);
  });

  test("and of none when several have it", async () => {
    const { varieties } = await recordsOf(note("- planted 3 Black Beauty\n"));
    expect(varieties.get("black-beauty")?.crop).toBeUndefined();
  });

  test("described by a file without a crop", async () => {
    const { varieties } = await read({ "varieties/black-krim.md": file("title: Black Krim\nsource: a neighbour") });
    expect(varieties.get("black-krim")).toMatchObject({ crop: "tomato", perennial: false });
  });
});

test("gear takes a variety's key for where it came from", async () => {
  const { gear } = await read({ "gear/net.md": file("title: Net\nsource: a neighbour") });
  expect(gear.get("net")?.from).toBe("a neighbour");
});

describe("a film whose day is past", () => {
  const rules = async (front: string) =>
    (await recordsOf({ "beds/long-bed.md": file("title: Long Bed"), "episodes/x/index.md": file(front) })).problems.map(
      ({ what }) => what,
    );

  test.each([
    ["date: 2026-05-16", "whether it came out and which beds it shows."],
    ["date: 2026-05-16\nstops: [Long Bed]", "whether it came out."],
  ])("with %j is asked about", async (front, asked) => {
    expect(await rules(front)).toEqual([`The day of this film, 16 May 2026, is past, and nothing tells ${asked}`]);
  });

  test.each(["date: 2026-05-16\nstatus: planned", "date: 2026-05-16\npublished: 2026-05-18", "date: 2026-07-18"])(
    "and not with %j",
    async (front) => {
      expect(await rules(front)).toEqual([]);
    },
  );
});
