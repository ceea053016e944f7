/** The cards of unlike gardens, read whole: what a presenter would say, within the limits, said once, with its sources. */

import path from "node:path";
import { beforeAll, describe, expect, test } from "vitest";
import { cardLimits } from "../../src/films/index.ts";
import type { Sentence } from "../../src/language/index.ts";
import type { Garden } from "../../src/model.ts";
import { openRecordsFolder, readRecords } from "../../src/records/index.ts";
import { growGarden } from "../../src/timeline/index.ts";
import { type Card, cardsMarkdown, makeCards, mostShots, type TourCards } from "../../src/tour/index.ts";
import { type Files, gardenFile, gardenOf } from "./garden-of.ts";

const gardens = [
  ["demo-content", ["2024-06-22", "2025-03-22", "2025-06-14", "2025-08-16", "2026-05-16", "2026-06-13", "2026-07-18"]],
  ["tests/gardens/hanggarten", ["2026-07-18"]],
  ["tests/gardens/two-walls", ["2026-07-18"]],
  ["tests/gardens/city-balcony", ["2026-07-12"]],
  ["tests/gardens/two-beds", ["2026-07-18"]],
  ["tests/gardens/long-season", ["2026-07-18"]],
  ["tests/walks/midwest-canning/records", ["2026-08-15"]],
  ["tests/walks/english-cut-flowers/records", ["2026-06-20"]],
  ["tests/walks/leipzig-balcony/records", ["2026-07-25"]],
  ["tests/walks/nant-y-gof/records", ["2026-07-18"]],
  ["tests/walks/burrabie-block/records", ["2026-01-10"]],
  ["tests/walks/lawn-no-more/records", ["2026-08-15"]],
] as const;

let sets: readonly { readonly at: string; readonly garden: Garden; readonly set: TourCards }[];
let july: TourCards;

beforeAll(async () => {
  const made = gardens.flatMap(([folder, days]) =>
    days.map(async (day) => {
      const opened = await openRecordsFolder(path.resolve(folder));
      const garden = growGarden(await readRecords(opened, { today: day }), []);
      const planned = [...garden.episodes.values()].find((one) => one.day === day && one.status === "planned");
      const tour = planned === undefined ? { day } : { episode: planned.id };
      return { at: `${folder} ${day}`, garden, set: makeCards(garden, { ...tour, today: day }) };
    }),
  );
  sets = await Promise.all(made);
  july = sets.find(({ at }) => at === "demo-content 2026-07-18")?.set as TourCards;
});

function spoken({ opening, before, now, figure, why, next }: Card): readonly Sentence[] {
  return [opening, before, ...now, figure, why, next].filter((part) => part !== undefined);
}

const count = (text: string) => text.split(/\s+/).filter((word) => /[\p{L}\p{N}]/u.test(word)).length;

/** One stop in the order of its card, as it would be read aloud. */
function read(card: Card | undefined): readonly string[] {
  if (card === undefined) return [];
  return [
    card.opening.text,
    ...(card.before === undefined ? [] : [`Then: ${card.before.text}`]),
    ...card.now.map(({ text }) => text),
    ...(card.figure === undefined ? [] : [`Figure: ${card.figure.text}`]),
    ...(card.why === undefined ? [] : [`Why: ${card.why.text}`]),
    ...card.names.map(({ text }) => text),
    ...card.aloud.map(({ text }) => `“${text}”`),
    ...(card.next === undefined ? [] : [`Next: ${card.next.text}`]),
  ];
}

describe("every card of every garden", () => {
  const overAll = (look: (card: Card, at: string) => readonly string[]) =>
    sets.flatMap(({ at, set }) => set.cards.flatMap((card) => look(card, `${at}, ${card.title}`)));

  test("keeps its limits", () => {
    const limits = (card: Card, at: string) => {
      const parts: readonly (readonly [string, Sentence | undefined, number])[] = [
        ["opening", card.opening, cardLimits.opening],
        ["before", card.before, cardLimits.before],
        ...card.now.map((phrase) => ["now", phrase, cardLimits.now] as const),
        ["figure", card.figure, cardLimits.figure],
        ["why", card.why, cardLimits.why],
        ["next", card.next, cardLimits.next],
      ];
      const long = parts.filter(([, phrase, most]) => phrase !== undefined && count(phrase.text) > most);
      return [
        ...long.map(([part, phrase]) => `${at}: ${part}: ${phrase?.text}`),
        ...(card.words > cardLimits.spoken ? [`${at}: ${card.words} words`] : []),
        ...(card.now.length > cardLimits.nowPhrases ? [`${at}: now`] : []),
        ...(card.names.length > cardLimits.names ? [`${at}: names`] : []),
        ...(card.shots.length > mostShots ? [`${at}: shots`] : []),
        ...(card.shots.filter(({ cutaway }) => cutaway).length > 1 ? [`${at}: cutaways`] : []),
      ];
    };
    expect(overAll(limits)).toEqual([]);
    expect(sets.flatMap(({ set }) => set.cards).length).toBeGreaterThan(60);
  });

  test("counts the words that are spoken", () => {
    expect(
      overAll((card, at) => (spoken(card).reduce((sum, { text }) => sum + count(text), 0) === card.words ? [] : [at])),
    ).toEqual([]);
  });

  test("opens without a figure, rests on lines of the records, and says nothing private", () => {
    expect(overAll(({ opening }, at) => (/\d/.test(opening.text) ? [`${at}: ${opening.text}`] : []))).toEqual([]);
    const bare = overAll((card, at) =>
      [...spoken(card), ...card.aloud]
        .filter(({ sources }) => sources.length === 0)
        .map(({ text }) => `${at}: ${text}`),
    );
    expect(bare).toEqual([]);
    const hidden = overAll((card, at) =>
      [...spoken(card), ...card.aloud].filter((phrase) => phrase.private).map(({ text }) => `${at}: ${text}`),
    );
    expect(hidden).toEqual([]);
  });

  test("says every hard name it says how to say it, up to the four there is room for", () => {
    const missing = sets.flatMap(({ garden, set }) =>
      set.cards.flatMap((card) => {
        const said = spoken(card)
          .map(({ text }) => text)
          .join(" ");
        const hard = [...garden.varieties.values()].filter(
          ({ sayAs, title }) => sayAs !== undefined && said.includes(title),
        );
        const stands = (title: string) => card.names.some(({ name }) => name === title);
        return card.names.length === cardLimits.names
          ? []
          : hard
              .filter(({ title, body: _ }) => !stands(title) && growsHere(set, card, title))
              .map(({ title }) => `${card.title}: ${title}`);
      }),
    );
    expect(missing).toEqual([]);
  });

  test("says no sentence twice in one brief", () => {
    const twice = sets.flatMap(({ at, set }) => {
      const said = set.cards.flatMap((card) => [...spoken(card), ...card.aloud]).map(({ text }) => text);
      return said
        .filter((text, index) => said.indexOf(text) !== index && !/^\d+ \w+(?: \d+)?: /.test(text))
        .map((text) => `${at}: ${text}`);
    });
    expect(twice).toEqual([]);
  });

  test("nowhere says “as written” or “not known” of its own", () => {
    for (const { garden, set, at } of sets) {
      if (at.includes("two-walls")) continue; // a garden whose own records say "as written"
      expect(cardsMarkdown(set, garden.settings)).not.toMatch(/as written|not known|not noted|not counted/i);
    }
  });
});

function growsHere({ dossier }: TourCards, { id }: Card, title: string): boolean {
  return (
    dossier.stops.find((stop) => stop.id === id)?.varieties.some((row) => row.title === title && !row.private) === true
  );
}

describe("whole stops of the July tour", () => {
  const stop = (number: number) => read(july.cards[number - 1]);

  test("a promise kept, trouble with its remark, a gift named", () => {
    expect(stop(3)).toEqual([
      "Today you find out whether the netted cabbages stayed clean.",
      "Then: 13 June: cabbages and kale",
      "open the net",
      "kneel by five sprouting broccoli",
      "show the roots: clubroot on Greyhound",
      "Figure: Cabbages, 7.4 kg: double last July",
      "Why: Clubroot: it is what you get for cabbages after cabbages",
      "“Skerry Netting gave me the butterfly net free.”",
      "Next: To be settled on 15 August",
    ]);
  });

  test("last year's moth, and what stands against it now", () => {
    const onions = stop(5);
    expect(onions[0]).toBe("I am late with this one: I said I would show the leeks.");
    expect(onions).toContain("Why: The fine mesh is up, after last year's leek moth");
    expect(onions).toContain("“I promised this for June, and I am late.”");
  });

  test("three words that are not one", () => {
    const standing = new Map(july.cards.flatMap(({ names }) => names.map((one) => [one.name, one.standing])));
    expect(standing.get("Cupani")).toBe("new to this garden");
    expect(standing.get("Scarlet Emperor")).toBe("new in this bed");
    expect(standing.get("Kelvedon Wonder")).toBe("grown every year");
  });

  test("the figure is rounded to two digits and held against last year", () => {
    expect(july.cards[1]?.figure?.text).toBe("Peas, 4.3 kg: more than double last July");
    expect(
      july.cards.flatMap(
        ({ figure }) => figure?.text.match(/\d+/g)?.filter((n) => n.replace(/0+$/, "").length > 2) ?? [],
      ),
    ).toEqual([]);
  });

  test("the cover has the day in the order in which it is needed", () => {
    const { cover } = july;
    expect(cover.times).toBe("Be there 9:00, first shot 9:15, done about 10:08.");
    expect(cover.rows.map(({ number, must, mayGo }) => [number, must, mayGo])).toEqual(
      cover.rows.map(({ number }) => [number, ![2, 6, 10].includes(number), [2, 6, 10].includes(number)]),
    );
    expect(cover.fallsOut.map(({ text }) => text)[0]).toMatch(/^the blueberry tubs \(10\), 0:\d\d$/);
    expect(cover.owed.filter(({ standing }) => standing === "overdue").map(({ text, stop: at }) => [text, at])).toEqual(
      [
        ["show how to save tomato seed", 7],
        ["say which of the tomatoes in the yard flowered first", 9],
        ["show the leeks", 5],
      ],
    );
    const cautions = cover.cautions.map(({ text }) => text);
    expect(new Set(cautions).size).toBe(cautions.length);
  });
});

describe("what a card is made from", () => {
  const day = "2026-07-10";
  const base: Files = {
    "garden.md": gardenFile,
    "beds/leek-row.md": "---\ntitle: Leek Row\nin use since: 2024-03-01\n---\n",
    "varieties/musselburgh.md":
      "---\ntitle: Musselburgh\ncrop: leek\nsource: own saved seed\n---\n\nStout, and never bolts.\n",
    "gear/fine-mesh.md": "---\ntitle: Fine mesh\n---\n",
    "notes/2025-06-01.md": "- planted 20 Musselburgh in Leek Row\n",
    "notes/2025-08-01.md": "- trouble: leek moth on Musselburgh in Leek Row\n",
    "notes/2025-11-01.md": "- cleared Musselburgh from Leek Row\n",
  };
  const cardOf = async (files: Files) =>
    makeCards(await gardenOf({ ...base, ...files }, day), { day, today: day }).cards[0];

  test("a story that began last year opens the stop, and the remedy is its why", async () => {
    const card = await cardOf({
      "notes/2026-06-28.md": "- planted 24 Musselburgh in Leek Row\n- put up fine mesh in Leek Row\n",
    });
    expect(card?.opening.text).toBe("Last year it was leek moth. Have a look at these.");
    expect(card?.why?.text).toBe("The fine mesh is up, after last year's leek moth");
    expect(card?.opening.sources).toContainEqual(expect.objectContaining({ file: "notes/2025-08-01.md" }));
  });

  test("the reason that a line gives goes before what is only concluded", async () => {
    const card = await cardOf({
      "notes/2026-06-28.md": "- planted 24 Musselburgh in Leek Row, so that the first flight finds nothing\n",
    });
    expect(card?.why?.text).toBe("So that the first flight finds nothing");
  });

  test("the reason for gear names the gear", async () => {
    const card = await cardOf({
      "notes/2026-06-28.md":
        "- planted 24 Musselburgh in Leek Row\n- put up fine mesh in Leek Row, because of the moth\n",
    });
    expect(card?.why?.text).toBe("Fine mesh: because of the moth");
  });

  test("the same trouble again is told as such", async () => {
    const card = await cardOf({
      "notes/2026-06-01.md": "- planted 24 Musselburgh in Leek Row\n",
      "notes/2026-07-01.md": "- trouble: leek moth on Musselburgh in Leek Row\n",
    });
    expect(card?.opening.text).toBe("Leek moth again, the same as last year.");
  });

  const longKnown = {
    "notes/2024-06-01.md": "- planted 20 Musselburgh in Leek Row\n",
    "notes/2024-09-01.md": "- watered Leek Row\n",
  };

  test("a crop the garden never had before is a first", async () => {
    const card = await cardOf({ ...longKnown, "notes/2026-03-01.md": "- planted 30 garlic in Leek Row\n" });
    expect(card?.opening.text).toBe("I have never grown garlic here before.");
  });

  test("no crop is a first where the notes do not know the whole season before, or only find it there", async () => {
    const young = await cardOf({ "notes/2026-03-01.md": "- planted 30 garlic in Leek Row\n" });
    expect(young?.opening.text).toBe("You have not met these: garlic.");
    const found = await cardOf({ ...longKnown, "notes/2026-07-01.md": "- picked 900 g rhubarb from Leek Row\n" });
    expect(found?.opening.text).toBe("Here it is, my first rhubarb of the year.");
  });

  test("picking that began weeks ago is told as going on", async () => {
    const card = await cardOf({
      "notes/2026-03-01.md": "- planted 12 broad beans in Leek Row\n",
      "notes/2026-06-04.md": "- picked 900 g broad beans from Leek Row\n",
      "notes/2026-07-02.md": "- picked 600 g broad beans from Leek Row\n",
    });
    expect(card?.opening.text).toBe("We have had broad beans from here since June.");
  });

  test("nothing is new to viewers while a film before does not tell what it showed", async () => {
    const files = { "notes/2026-06-28.md": "- planted 9 lettuces in Leek Row\n" };
    const film = { "episodes/may/index.md": "---\ntitle: May\ndate: 2026-05-30\n---\n" };
    expect((await cardOf(files))?.opening.text).toBe("You have not met these: lettuces.");
    expect((await cardOf({ ...files, ...film }))?.opening.text).toBe("Have a look at the lettuces.");
  });

  test("how a gift came in a person's own words stays a sentence of its own", async () => {
    const source = "source: {name: 'a firm sent a packet to try, they asked how it did', obtained: gifted}";
    const card = await cardOf({
      "varieties/musselburgh.md": `---\ntitle: Musselburgh\ncrop: leek\n${source}\n---\n`,
      "notes/2026-06-28.md": "- planted 24 Musselburgh in Leek Row\n",
    });
    expect(card?.aloud.map(({ text }) => text)).toEqual([
      "The Musselburgh came to me free: a firm sent a packet to try, they asked how it did.",
    ]);
  });

  test("of fruit picked weeks ago there is none to show; of what was picked lately there is", async () => {
    const handsOf = async (picked: string) => {
      const card = await cardOf({
        "varieties/ben-sarek.md": "---\ntitle: Ben Sarek\ncrop: blackcurrant\n---\n",
        "notes/2024-03-20.md": "- planted 3 Ben Sarek in Leek Row\n",
        [`notes/${picked}.md`]: "- picked 2.4 kg Ben Sarek from Leek Row\n",
      });
      const shots = card?.shots.map(({ text }) => text).join("; ") ?? "";
      return `${card?.opening.text}; ${card?.now.map(({ text }) => text).join("; ")}; ${shots}`;
    };
    expect(await handsOf("2026-05-20")).toMatch(/^There were Ben Sarek blackcurrants from here in May\./);
    expect(await handsOf("2026-05-20")).not.toMatch(/; pick|handful|in the hand/);
    expect(await handsOf("2026-06-25")).toMatch(/pick|handful/);
    expect(await handsOf("2026-06-25")).toMatch(/in the hand/);
  });

  test("a trouble of six weeks ago is no news of plants that were picked or did well since", async () => {
    const opening = async (later: string, noted = "2026-05-01") => {
      const card = await cardOf({
        "notes/2026-04-20.md": "- planted 24 Musselburgh in Leek Row\n",
        [`notes/${noted}.md`]: "- trouble: rust on Musselburgh in Leek Row\n",
        "notes/2026-06-20.md": later,
      });
      return JSON.stringify(card);
    };
    const rust = /rust/;
    expect(await opening("- picked 2 Musselburgh from Leek Row\n")).not.toMatch(rust);
    expect(await opening("- doing: Musselburgh in Leek Row, doing well\n")).not.toMatch(rust);
    expect(await opening("- doing: Musselburgh in Leek Row, not well\n")).toMatch(rust);
    expect(await opening("- watered Leek Row\n")).toMatch(rust);
    expect(await opening("- picked 2 Musselburgh from Leek Row\n", "2026-06-10")).toMatch(rust);
  });

  test("what a private person gave is nothing that must be said, whoever may be thanked", async () => {
    const card = (source: string) =>
      cardOf({
        "varieties/musselburgh.md": `---\ntitle: Musselburgh\ncrop: leek\n${source}---\n`,
        "notes/2026-06-28.md": "- planted 24 Musselburgh in Leek Row\n",
      });
    const aloud = async (source: string) => (await card(source))?.aloud.map(({ text }) => text);
    expect(await aloud("source: {name: Wilma, obtained: given by a person}\n")).toEqual([]);
    expect(await aloud("source: {obtained: lent by a person}\n")).toEqual([]);
    expect(await aloud("source: {name: Wilma, obtained: given by a person}\nthank by name: true\n")).toEqual([]);
    expect(await aloud("source: {name: Saltmarsh Seeds, obtained: given by a seller}\n")).toEqual([
      expect.stringMatching(/Saltmarsh Seeds/),
    ]);
  });

  test("a bed no film has shown is not spoken of as if viewers had been there", async () => {
    const card = await cardOf({ "notes/2026-06-28.md": "- planted 9 lettuces in Leek Row\n" });
    expect(read(card).join(" ")).not.toMatch(/last here|were here|in vain/);
    expect(card?.before).toBeUndefined();
  });

  test("from left to right by the rows of the notes, whatever is strongest", async () => {
    const card = await cardOf({
      "notes/2026-06-28.md":
        "- planted 9 lettuces in Leek Row, row 3\n- planted 24 Musselburgh in Leek Row, row 1\n- planted 12 kale in Leek Row, row 2\n",
    });
    expect(card?.now.map(({ text }) => /Musselburgh|kale|lettuces/.exec(text)?.[0])).toEqual([
      "Musselburgh",
      "kale",
      "lettuces",
    ]);
  });

  test("what is private is on no card", async () => {
    const card = await cardOf({
      "notes/2026-06-28.md": "---\nprivate: true\n---\n\n- planted 24 Musselburgh in Leek Row\n",
      "notes/2026-06-29.md": "- planted 9 lettuces in Leek Row\n",
    });
    expect(read(card).join(" ")).not.toContain("Musselburgh");
  });

  test("what has no room on the card stands in the dossier", async () => {
    const garden = await gardenOf(
      { ...base, "notes/2026-06-28.md": "- planted 24 Musselburgh in Leek Row\n- put up fine mesh in Leek Row\n" },
      day,
    );
    const set = makeCards(garden, { day, today: day });
    expect(set.cards[0]?.further.map(({ text }) => text)).toContain("Musselburgh: Stout, and never bolts");
    expect(cardsMarkdown(set, garden.settings).split("# Dossier")[1]).toContain("Stout, and never bolts");
  });
});

test("no stock phrase is heard in more than two of a hundred phrases", () => {
  const heard = new Map<string, number>();
  let all = 0;
  for (const { garden, set } of sets) {
    const names = [
      ...[...garden.varieties.values(), ...garden.beds.values()].map(({ title }) => title),
      ...[...garden.crops.values()].flatMap(({ plural, name }) => [plural, name]),
    ].sort((one, other) => other.length - one.length);
    for (const card of set.cards) {
      for (const { text } of [...spoken(card), ...card.aloud]) {
        // Without names and numbers, what is left of the first five words is the mould.
        const mould = names
          .reduce((words, name) => words.replaceAll(name, "…"), text)
          .replace(/[\d.]+/g, "0")
          .split(/\s+/)
          .slice(0, 5)
          .join(" ");
        heard.set(mould, (heard.get(mould) ?? 0) + 1);
        all += 1;
      }
    }
  }
  const table = [...heard]
    .toSorted(([, one], [, other]) => other - one)
    .map(([mould, times]) => ({ mould, times, share: `${((100 * times) / all).toFixed(1)} %` }));
  if (process.env.PHRASES !== undefined) console.table(table.slice(0, 40));
  expect(all).toBeGreaterThan(400);
  expect(table.filter(({ times }) => times > 0.02 * all)).toEqual([]);
});

describe("what would be wrong to say", () => {
  const day = "2026-07-10";
  const bed = "---\ntitle: Step Pots\nin use since: 2024-03-01\n---\n";
  const cardsOf = async (files: Files) =>
    makeCards(await gardenOf({ "beds/step-pots.md": bed, ...files }, day), { day, today: day }).cards;

  test("a net is no remedy for blight", async () => {
    const [card] = await cardsOf({
      "gear/fruit-net.md": "---\ntitle: Fruit net\n---\n",
      "notes/2025-05-01.md": "- planted 4 potatoes in Step Pots\n",
      "notes/2025-08-01.md": "- trouble: blight on potatoes in Step Pots\n- cleared potatoes from Step Pots\n",
      "notes/2026-05-01.md": "- planted 4 potatoes in Step Pots\n- put up fruit net in Step Pots\n",
    });
    expect(card?.opening.text).toContain("blight");
    expect([card?.why?.text, ...(card?.further ?? []).map(({ text }) => text)].join(" ")).not.toContain("net is up");
  });

  test("a condition in a promise is not what was asked", async () => {
    const [card] = await cardsOf({
      "notes/2026-05-01.md":
        "- planted 4 potatoes in Step Pots\n- promised: come back to the steps when something is growing on them\n",
    });
    expect(card?.opening.text).not.toMatch(/find out|hear when|owe you this: when/);
  });
});
