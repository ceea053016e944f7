/** Lines that no fact holds, quoted at the bed they speak of; promises that wait; what is not told of the wrong bed. */
import { describe, expect, test } from "vitest";
import { cardsMarkdown, makeBrief, makeCards } from "../../src/tour/index.ts";
import { conditionOf } from "../../src/tour/promise-conditions.ts";
import { type Files, gardenOf } from "./garden-of.ts";

const day = "2026-08-15";
const base: Files = {
  "beds/garlic-bed.md": "---\ntitle: Garlic Bed\nin use since: 2024-03-01\n---\n",
  "beds/bean-arch.md": "---\ntitle: Bean Arch\nin use since: 2024-03-01\n---\n\nthree hoops bent over the path\n",
  "varieties/music.md": "---\ntitle: Music\ncrop: garlic\n---\n\nStarted with one pound.\n",
  "varieties/rattlesnake.md": "---\ntitle: Rattlesnake\ncrop: pole bean\n---\n",
  "gear/drip-line.md": "---\ntitle: drip line\n---\n",
  "notes/2025-07-12.md": "- picked 48 bulbs Music from Garlic Bed\n",
  "notes/2025-10-18.md": "- planted 60 Music in Garlic Bed\n",
  "notes/2026-07-11.md": "- picked 55 bulbs Music from Garlic Bed\n- cleared Music from Garlic Bed\n",
};
const setOf = async (files: Files) => {
  const garden = await gardenOf({ ...base, ...files }, day);
  return { garden, set: makeCards(garden, { day, today: day }) };
};
const cardAt = async (bed: string, files: Files) => {
  const { set } = await setOf(files);
  return set.cards.find((card) => card.bed === bed);
};

describe("words of a settled line", () => {
  test("are quoted under the day they were written on, not under that of a fact made of them", async () => {
    const { garden, set } = await setOf({
      "notes/2026-07-20.md":
        "- Garlic Bed: planted 12 Rattlesnake where the garlic was, two years after I meant to do it\n" +
        "  - = planted 12 Rattlesnake in Garlic Bed on 2026-07-02\n",
    });
    const dossier = cardsMarkdown(set, garden.settings).split("# Dossier")[1] ?? "";
    expect(dossier).toContain("20 July: “Garlic Bed: planted 12 Rattlesnake");
    expect(dossier).not.toContain("2 July: “");
  });
});

describe("what a person only means to do", () => {
  test("is read out nowhere", async () => {
    const { set } = await setOf({
      "notes/2026-08-10.md":
        "---\nbed: Garlic Bed\n---\n\n- need to side dress the garlic before Saturday\n- film Saturday: garlic first, then beans\n\n" +
        "Filming Saturday 15 August, Ray holds the camera. Next year: more garlic.\n",
    });
    expect(JSON.stringify(set.cards)).not.toMatch(/side dress|holds the camera|garlic first|more garlic/);
  });
});

describe("lines that are still questions", () => {
  test("are quoted in the dossier of the bed they name, the latest first, and counted once on the cover", async () => {
    const { garden, set } = await setOf({
      "notes/2026-06-27.md": "- Garlic Bed: cut the scapes off, four bunches or so, half of them butter now\n",
      "notes/2026-08-08.md": "- garlic down from the loft, weighed 9 lb 4 oz trimmed\n",
    });
    const card = set.cards.find(({ bed }) => bed === "garlic-bed");
    expect(card?.quoted.map(({ text }) => text)[0]).toBe(
      "8 August: “garlic down from the loft, weighed 9 lb 4 oz trimmed”",
    );
    expect(cardsMarkdown(set, garden.settings).split("# Dossier")[1]).toContain(
      "In your notes, and not on record yet:",
    );
    expect(set.cover.settle.map(({ text }) => text)).toContainEqual(expect.stringMatching(/still .*question/));
  });

  test("make a stop of a bed of which nothing is on record, and nobody says that it is empty", async () => {
    const { set } = await setOf({
      "notes/2026-07-11.md": "---\nbed: Bean Arch\n---\n\n- something dug the beans out, ground squirrel I bet\n",
    });
    const card = set.cards.find(({ bed }) => bed === "bean-arch");
    expect(card?.opening.text).toBe("This is the bean arch: three hoops bent over the path.");
    expect(card?.now.map(({ text }) => text)).toEqual(["“something dug the beans out”"]);
    expect(JSON.stringify(set)).not.toMatch(/empty at the moment|nothing new this season/);
  });

  test("are quoted from no private note, and not with what was paid", async () => {
    const { set } = await setOf({
      "notes/2026-08-01.md": "---\nprivate: true\n---\n\n- garlic down from the loft, for Ray's sick bed\n",
      "notes/2026-08-02.md": "---\nbed: Garlic Bed\n---\n\n- the garlic rack cost £31 or so, and a pie\n",
    });
    expect(JSON.stringify(set)).not.toMatch(/sick bed|£31/);
  });

  test("of last year's trouble are why of a bed that grows the same again", async () => {
    const card = await cardAt("bean-arch", {
      "notes/2025-08-23.md":
        "---\nbed: Bean Arch\n---\n\n- raccoons took the beans in two nights, I got 11 pods off the whole arch\n",
      "notes/2026-05-23.md": "- sowed Rattlesnake in Bean Arch\n",
    });
    expect(card?.why?.text).toBe("Last year: “raccoons took the beans in two nights”");
  });
});

describe("a promise", () => {
  const promised = (what: string): Files => ({
    "notes/2026-05-23.md": `- sowed Rattlesnake in Bean Arch\n- promised: ${what}\n`,
  });
  const owed = async (files: Files) => {
    const { set } = await setOf(files);
    return set.cover.owed.map(({ text, standing, stop, shot }) => ({ text, standing, kept: stop !== undefined, shot }));
  };

  test("with a condition waits until the notes say that it has come", async () => {
    const what = "come back to the Rattlesnake when it has pods";
    expect(await owed(promised(what))).toEqual([
      {
        text: "come back to the Rattlesnake, when it has pods",
        standing: "waiting",
        kept: false,
        shot: undefined,
      },
    ]);
    const [met] = await owed({
      ...promised(what),
      "notes/2026-08-01.md": "- picked 5 lb Rattlesnake from Bean Arch\n",
    });
    expect(met).toMatchObject({ standing: "open", kept: true });
    expect(met?.shot).toMatch(/^S\d\.\d$/);
  });

  test("waits for what stands in later notes in its own words, and not for what is still to come", async () => {
    const what = "show the Rattlesnake once they fill in";
    const not = { "notes/2026-08-01.md": "- the Rattlesnake have not filled in yet\n" };
    const has = { "notes/2026-08-01.md": "- Rattlesnake all filled in now, the arch is full\n" };
    expect((await owed({ ...promised(what), ...not }))[0]?.standing).toBe("waiting");
    expect((await owed({ ...promised(what), ...has }))[0]?.standing).toBe("open");
  });

  test("finds the bed of the gear it names", async () => {
    const { set } = await setOf({
      "notes/2026-05-23.md": "- sowed Rattlesnake in Bean Arch\n- put up drip line in Bean Arch\n",
      "episodes/july/index.md":
        "---\ntitle: July\ndate: 2026-07-04\npromised:\n  - tell whether the drip line was worth it\n---\n",
    });
    const at = set.cards.find(({ bed }) => bed === "bean-arch")?.number;
    expect(set.cover.owed.map(({ stop }) => stop)).toEqual([at]);
  });

  test.each([
    ["weigh the garlic on camera when it is cured", "when it is cured"],
    ["show them again once they fill in", "once they fill in"],
    ["come back as soon as they flower", "as soon as they flower"],
    ["say when they ripen", undefined],
    ["tell you how and when to net them", undefined],
    ["show the leeks", undefined],
  ])("%s", (what, condition) => {
    expect(conditionOf(what)).toBe(condition);
  });
});

test("what was lifted in summer and planted in autumn is compared with the crop before", async () => {
  const card = await cardAt("garlic-bed", {});
  expect(card?.figure?.text).toBe("Garlic, 55 bulbs: a little over last year");
});

test("a number for each hill is no number of plants", async () => {
  const { garden } = await setOf({
    "notes/2026-05-23.md": "- sowed Rattlesnake in Bean Arch, 6 hills\n",
    "notes/2026-06-06.md": "- thinned the Rattlesnake to 3 a hill\n",
  });
  const [row] = makeBrief(garden, { day, today: day }).stops.find(({ bed }) => bed === "bean-arch")?.varieties ?? [];
  expect(row?.count).toBeUndefined();
});

test("a crop that another bed's file names is not told of the bed of the note", async () => {
  const { set } = await setOf({
    "beds/bank.md": "---\ntitle: Bank\n---\n\nFrom the steps: rhubarb, then gooseberries.\n",
    "notes/2026-04-19.md": "---\nbed: Bean Arch\n---\n\n- sowed Rattlesnake\n- rhubarb picked, 4 lb\n",
  });
  const arch = set.dossier.stops.find(({ bed }) => bed === "bean-arch");
  expect(JSON.stringify([arch?.show, arch?.facts, arch?.varieties])).not.toMatch(/rhubarb/i);
});

test("no hand does the same twice at a stop, and no phrase of a card is repeated by its dossier", async () => {
  const { set } = await setOf({
    "notes/2026-05-23.md":
      "- sowed Rattlesnake in Bean Arch\n- planted 3 courgettes in Bean Arch\n- planted 9 lettuces in Bean Arch\n",
  });
  for (const card of set.cards) {
    const verbs = card.now.flatMap(({ hand }) => hand?.split(" ")[0] ?? []);
    expect(new Set(verbs).size).toBe(verbs.length);
    const said = [card.opening, card.why, card.figure, card.next, ...card.now].flatMap((part) => part?.text ?? []);
    expect(card.further.filter(({ text }) => said.includes(text))).toEqual([]);
  }
});
