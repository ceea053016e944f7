/** What a speaker claims of plants, held against records: times, amounts, heights, ages, sources, and what is let be. */
import { describe, expect, it } from "vitest";
import { spokenPeriod } from "../../src/wrap/claims/periods.ts";
import { wrapEpisode } from "../../src/wrap/index.ts";
import { smallGarden, vtt } from "./small-film.ts";

const filmed = "2026-06-13"; // a Saturday
describe("times as people say them", () => {
  it.each([
    ["yesterday", "2026-06-12", "2026-06-12"],
    ["two weeks ago", "2026-05-25", "2026-06-04"],
    ["the first week of april", "2026-03-29", "2026-04-10"],
    ["middle of april", "2026-04-07", "2026-04-24"],
    ["the last day of february", "2026-02-28", "2026-02-28"],
    ["on tuesday", "2026-06-09", "2026-06-09"],
    ["last saturday", "2026-05-30", "2026-06-06"],
    ["october", "2025-09-30", "2025-11-01"],
    ["the twelfth of september", "2025-09-12", "2025-09-12"],
    ["june of 2023", "2023-05-28", "2023-07-01"],
  ])("%s", (said, from, to) => {
    expect(spokenPeriod(said.split(" "), 0, filmed)).toMatchObject({ from, to, end: said.split(" ").length });
  });

  it("a year after a word that makes it one", () => {
    expect(spokenPeriod("in two thousand and fourteen".split(" "), 1, filmed)).toMatchObject({ from: "2014-01-01" });
    expect(spokenPeriod("in twenty nineteen".split(" "), 1, filmed)).toMatchObject({ to: "2019-12-31" });
    expect(spokenPeriod("twenty nineteen".split(" "), 0, filmed)).toBeUndefined();
  });
});

describe("claims", () => {
  const records = {
    "notes/2026/2026-06-10.md": [
      "- measured Harbinger 60 cm tall in Tomato Pots",
      "- picked 1.2 kg Harbinger from Tomato Pots",
      "",
    ].join("\n"),
  };
  const told = async (said: string) => {
    const { garden, episode } = await smallGarden(records);
    const captions = {
      file: "a.vtt",
      bytes: vtt(["Last, the tomato pots. Tomatoes in pots.", said, "There they are."]),
    };
    return wrapEpisode({ garden, episode, captions }).wrap.disagreements.map(
      ({ kind, records: text }) => `${kind}: ${text}`,
    );
  };

  it.each([
    ["Harbinger, nine of them.", /^count: The records have \w+ Harbinger there that day\.$/],
    ["Harbinger, already a metre twenty tall.", /^size: The records have Harbinger as 60 cm on /],
    ["Harbinger, we had three kilos of those.", /^weight: The records have 1\.2 kg of Harbinger picked on /],
    ["Harbinger. I've had them going on ten years.", /^age: By the records Harbinger had been there for /],
    [
      "Harbinger. There was a gap, and in the end I put about nine in.",
      /^count: The records have \w+ Harbinger there that day\.$/,
    ],
    ["Harbinger. Nine I planted, and I staked them.", /^count: The records have \w+ Harbinger there that day\.$/],
    ["Harbinger. All told we took up three kilos.", /^weight: The records have 1\.2 kg of Harbinger picked on /],
    ["Harbinger. We've had half a kilo off them.", /^weight: The records have 1\.2 kg of Harbinger picked on /],
    [
      "Harbinger. I got those off my sister.",
      /^source: The records have Harbinger as commission link: Pebble & Pod\.$/,
    ],
    [
      "Harbinger. We ordered them from the seed swap.",
      /^source: The records have Harbinger as commission link: Pebble & Pod\.$/,
    ],
    ["Harbinger. The first one we ate was on the first of May.", /^day: The records have Harbinger first picked on /],
  ])("%s is contradicted once", async (said, text) => {
    const found = await told(said);
    expect(found).toHaveLength(1);
    expect(found[0]).toMatch(text);
  });

  it.each([
    "Harbinger, sixty centimetres tall now.",
    "Harbinger, we had one point two kilos of those.",
    "Harbinger, nine, no, sorry, four of them.",
    "Harbinger. Last year we had three kilos of those.",
    "Harbinger. I'd like nine of them.",
    "Harbinger, planted ninety centimetres apart.",
    // So far off that something else is meant.
    "Harbinger, I put in two hundred.",
    "Harbinger. Nine to each pot they say.",
    "Harbinger. That other row, I got it off my sister.",
    "Harbinger. I got the net off my sister.",
    "Harbinger. Not one of them died.",
    "Four Harbinger. Six.",
    "Harbinger. Call it three kilos.",
  ])("%s is let be", async (said) => {
    expect(await told(said)).toEqual([]);
  });

  const [lost, picked, found] = [
    "- lost 1 Harbinger in Tomato Pots to blight\n",
    "- picked 12 Harbinger from Tomato Pots\n",
    "",
  ];
  it.each([
    // Two that went, where three are left of four and one was lost.
    [lost, "Harbinger, and I haven't lost a one.", ["count: The records have one Harbinger lost."]],
    [lost, "Harbinger. Not one of them has been lost.", ["count: The records have one Harbinger lost."]],
    [lost, "I lost two Harbingers to blight.", ["count: The records have one Harbinger lost."]],
    [lost, "I lost three Harbinger tomatoes to blight.", ["count: The records have one Harbinger lost."]],
    [lost, "I lost one Harbinger to blight.", []],
    // Of what nobody recorded lost the records tell nothing, however many stand there.
    [found, "I lost nine Harbingers to blight.", []],
    [picked, "I picked fifty Harbinger tomatoes.", ["count: The records have twelve Harbinger picked on 10 June."]],
    [picked, "I picked twelve Harbinger tomatoes.", []],
    // Four stand there, which is no picking.
    [picked, "I picked four Harbinger tomatoes.", ["count: The records have twelve Harbinger picked on 10 June."]],
  ])("what went and what was picked is held against its own lines: %s%s", async (line, said, told) => {
    const { garden, episode } = await smallGarden({ "notes/2026/2026-06-10.md": line });
    const captions = {
      file: "a.vtt",
      bytes: vtt(["Last, the tomato pots. Tomatoes in pots.", said, "There they are."]),
    };
    const found = wrapEpisode({ garden, episode, captions }).wrap.disagreements;
    expect(found.map(({ kind, records: text }) => `${kind}: ${text}`)).toEqual(told);
  });

  it("an age is held against no line that only finds the plant there", async () => {
    const fig = { "varieties/celeste.md": "---\ntitle: Celeste\ncrop: fig\n---\n" };
    const told = async (line: string) => {
      const { garden, episode } = await smallGarden({ ...fig, "notes/2026/2026-04-12.md": line });
      const captions = {
        file: "a.vtt",
        bytes: vtt(["Here is the long bed.", "Celeste, it's about twelve years old.", "There it is."]),
      };
      return wrapEpisode({ garden, episode, captions }).wrap.disagreements.map(({ records: text }) => text);
    };
    expect(await told("- came back: Celeste in Long Bed\n")).toEqual([]);
    expect(await told("- planted 1 Celeste fig in Long Bed\n")).toEqual([
      expect.stringMatching(/^By the records Celeste had been there for nine weeks/),
    ]);
  });
});
