/** The garden's own words: read from words.md, used in every line from then on, and what an answer teaches. */
import { describe, expect, it } from "vitest";
import { ownWords, withOwnWord, writtenWords } from "../../src/records/index.ts";
import { taughtBy } from "../../src/records/taught-words.ts";
import { gardenNames } from "../note-lines/a-garden.ts";
import { problemsOf, recordsOf } from "../records/records-of.ts";
import { event, offered } from "./asked.ts";

function meanings(text: string) {
  const { words, problems } = ownWords(writtenWords("words.md", text).words, gardenNames());
  return { words: words.map(({ word, means, place }) => [word, means, place.line]), problems };
}

describe("the list", () => {
  it("says what a crop, variety, bed, gear or verb is called", () => {
    expect(
      meanings(
        "What we call things.\n\n- courgs: courgettes\n- BB: Black Beauty\n* the frame: Cold Frame\n- hoop: Arch\n" +
          "- lifted onions: picked\n- chopped: did\n- “wee gem”: **Little Gem**.\n",
      ),
    ).toEqual({
      words: [
        ["courgs", { crop: "courgette" }, 3],
        ["BB", { variety: "black-beauty" }, 4],
        ["the frame", { bed: "cold-frame" }, 5],
        ["hoop", { gear: "arch" }, 6],
        ["lifted", { kind: "picked", crop: "onion" }, 7],
        ["chopped", { kind: "did" }, 8],
        ["wee gem", { variety: "little-gem" }, 9],
      ],
      problems: [],
    });
  });

  it("has every slip told with its place", async () => {
    const words =
      "- rasps\n- BB: Black Beuaty\n- gro: ploughed under by moonlight\n- pots: Step Pots\n- pots: Cold Frame\n- leek: onion\n";
    const found = await problemsOf({
      "words.md": words,
      "beds/step-pots.md": "---\ntitle: Step Pots\n---\n",
      "beds/cold-frame.md": "---\ntitle: Cold Frame\n---\n",
      "varieties/black-beauty.md": "---\ncrop: courgette\n---\n",
    });
    expect(found.map((problem) => problem.split("\n"))).toEqual([
      [
        "words.md:1:3 warning words/not-read",
        '  "rasps" is no word with its meaning, so it was passed over.',
        '  Write a word, a colon and what it means: "rasps: raspberries".',
      ],
      [
        "words.md:2:3 warning words/unknown-meaning",
        '  "BB" is to mean "Black Beuaty", and nothing in this garden is called that.',
        '  Did you mean "Black beauty"?',
      ],
      [
        "words.md:3:3 warning words/unknown-meaning",
        '  "gro" is to mean "ploughed under by moonlight", and nothing in this garden is called that.',
        "  Write a crop, a variety, a bed, gear, or a verb as in docs/notes.md.",
      ],
      [
        "words.md:5:3 warning words/twice",
        '  "pots" has another meaning in line 4, which counts.',
        "  Keep the line that is right.",
      ],
      [
        "words.md:6:3 hint words/name-of-another",
        '  "leek" is a name of leek as well, and may be taken for that.',
        "  Choose another word for one of them.",
      ],
    ]);
  });

  it("is missed by nobody who misspells its name", async () => {
    expect(await problemsOf({ "word.md": "- a: b\n" })).toEqual([
      expect.stringContaining('"word.md" is not read.\n  Did you mean "words.md"?'),
    ]);
  });
});

describe("the words", () => {
  const garden = {
    "words.md": "- FB: French Breakfast\n- top: Long Bed\n- rasps: raspberries\n",
    "beds/long-bed.md": "",
    "varieties/french-breakfast.md": "---\ntitle: French Breakfast\ncrop: radish\n---\n",
    "notes/2026-05-20.md": "- sowed 30 FB in top\n- picked 2 kg rasps from Top\n",
  };

  it("are read as what they mean", async () => {
    const { events, varieties } = await recordsOf(garden);
    expect(events.map(({ kind, variety, crop, bed }) => [kind, variety, crop, bed])).toEqual([
      ["sowed", "french-breakfast", undefined, "long-bed"],
      ["picked", undefined, "raspberry", "long-bed"],
    ]);
    expect([...varieties.keys()]).toEqual(["french-breakfast"]);
  });

  it("may mean a variety that only the notes name, and are none themselves", async () => {
    const { "varieties/french-breakfast.md": _described, ...undescribed } = garden;
    const { events, varieties, problems } = await recordsOf({
      ...undescribed,
      "notes/2026-05-21.md": "- picked 2 bunches French Breakfast radish\n",
    });
    expect(events.map(({ variety }) => variety)).toEqual(["french-breakfast", undefined, "french-breakfast"]);
    expect([...varieties.keys()]).toEqual(["french-breakfast"]);
    expect(problems.filter(({ rule }) => rule.startsWith("words/"))).toEqual([]);
  });

  it("change what a kept reading says", async () => {
    const kept = new Map<string, string>();
    const readings = {
      get: (key: string) => JSON.parse(kept.get(key) ?? "null") ?? undefined,
      set: (key: string, body: unknown) => void kept.set(key, JSON.stringify(body)),
    };
    const { readRecords } = await import("../../src/records/index.ts");
    const { folderOf } = await import("../records/records-of.ts");
    const read = async (words: string) =>
      (await readRecords(folderOf({ ...garden, "words.md": words }), { today: "2026-07-18", readings })).events[1]
        ?.crop;
    expect(await read("- top: Long Bed\n- rasps: raspberries\n")).toBe("raspberry");
    expect(await read("- top: Long Bed\n- rasps: radishes\n")).toBe("radish");
  });
});

describe("one word more", () => {
  it("begins the list, or ends it as it is written", () => {
    expect(withOwnWord(undefined, "rasps", "raspberries")).toBe(
      "What words mean in this garden: a word, a colon, its meaning.\n\n- rasps: raspberries\n",
    );
    expect(withOwnWord("- FB: French Breakfast", "rasps", "raspberries")).toBe(
      "- FB: French Breakfast\n- rasps: raspberries\n",
    );
    expect(withOwnWord("Words.\r\n", "rasps", "raspberries")).toBe("Words.\r\n\r\n- rasps: raspberries\r\n");
    expect(withOwnWord("Words.\n\n", "rasps", "raspberries")).toBe("Words.\n\n- rasps: raspberries\n");
  });
});

describe("an answer teaches", () => {
  const names = gardenNames();
  const everyday = new Set("got the down a few went for this and".split(" "));
  const taught = (text: string, chosen: Parameters<typeof event>, more: Partial<Parameters<typeof taughtBy>[0]> = {}) =>
    taughtBy({ text, chosen: [event(...chosen)], offered: [], beds: ["long-bed"], ...more }, names, (word) =>
      everyday.has(word),
    ).map(({ word, means }) => `${word}: ${means}`);

  it("a word for a plant: the one that resembles it, else the only one that is unknown", () => {
    expect(taught("2 kg raspers today", ["picked", { crop: "raspberry" }])).toEqual(["raspers: raspberries"]);
    expect(taught("2 kg rasps today", ["picked", { crop: "raspberry" }])).toEqual([]);
    expect(taught("got the BB in, glorious", ["planted", { variety: "black-beauty" }])).toEqual(["BB: Black Beauty"]);
    expect(taught("12 wimpers in", ["planted", { variety: "musselburgh" }])).toEqual(["wimpers: Musselburgh"]);
    expect(taught("12 wimpers in, glorious", ["planted", { variety: "musselburgh" }])).toEqual([]);
    expect(taught("12 Musselburgh in, glorious", ["planted", { variety: "musselburgh" }])).toEqual([]);
  });

  it("a word for a bed that the line names by no name of it", () => {
    expect(taught("leeks into the top tunnel", ["planted", { crop: "leek", bed: "tunnel-north" }])).toEqual([
      "top tunnel: Tunnel North",
    ]);
    expect(taught("leeks in", ["planted", { crop: "leek", bed: "long-bed" }])).toEqual([]);
  });

  it("a verb whose kind was open", () => {
    const lifted = (kind: "picked" | "cleared") => event(kind, { verb: "lifted", crop: "onion" });
    const both = [offered("picked onions", lifted("picked")), offered("cleared onions", lifted("cleared"))];
    expect(taught("lifted the onions", ["picked", { verb: "lifted", crop: "onion" }], { offered: both })).toEqual([
      "lifted onions: picked",
    ]);
    const one = both.slice(0, 1);
    expect(taught("lifted the onions", ["picked", { verb: "lifted", crop: "onion" }], { offered: one })).toEqual([]);
    // Readings of mentions are told by their kind: the verb is the line's own.
    const told = [
      offered("picked onions", event("picked", { verb: "picked", crop: "onion" })),
      offered("cleared onions", event("cleared", { verb: "cleared", crop: "onion" })),
    ];
    expect(taught("the onions I lifted", ["picked", { verb: "picked", crop: "onion" }], { offered: told })).toEqual([
      "lifted onions: picked",
    ]);
    const scrumped = event("picked", { verb: "picked", crop: "apple" });
    expect(
      taughtBy(
        { text: "scrumped 3 apples", chosen: [scrumped], offered: [offered("picked 3 apples", scrumped)], beds: [] },
        names,
        () => false,
      ).map(({ word, means }) => `${word}: ${means}`),
    ).toEqual(["scrumped apples: picked"]);
  });
});
