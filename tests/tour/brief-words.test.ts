/** The brief's sentences, read whole. The garden is the one that voice.md speaks of; its dates and counts are invented. */
import { beforeAll, describe, expect, test } from "vitest";
import type { Garden } from "../../src/model.ts";
import { type Brief, cardsMarkdown, makeBrief, makeCards, type Stop } from "../../src/tour/index.ts";
import { dossierOf, gardenOf, squashTour } from "./garden-of.ts";

let garden: Garden;
let brief: Brief;
let long: Stop;
let peas: Stop;

beforeAll(async () => {
  garden = await gardenOf(squashTour, "2026-06-19");
  brief = makeBrief(garden, { episode: "2026-06-tour", today: "2026-06-19" });
  [long, peas] = brief.stops as [Stop, Stop];
});

const texts = (lines: readonly { readonly text: string }[]) => lines.map(({ text }) => text);

describe("the head", () => {
  test("tells the tour, the day, the length and the last tour", () => {
    expect(brief).toMatchObject({
      tour: "2026-06-tour",
      title: "June tour",
      date: "2026-06-19",
      dateText: "Friday, 19 June 2026",
      since: "2026-05-17",
      sinceText: "the tour of 17 May",
      target: 720,
      start: "09:15",
    });
  });

  test("offers three openings: the newest, the promise, the biggest change", () => {
    expect(brief.opening.map(({ kind, text }) => [kind, text])).toEqual([
      ["newest", "The Matucana sweet peas opened on Tuesday, nine days earlier than last year."],
      [
        "owed",
        "Owed since 20 May: you said you would show how close you dared to plant the squash. On record: 90 cm apart for the Crown Prince and Uchiki Kuri squash.",
      ],
      [
        "biggest change",
        "24 Musselburgh leeks went in since the last tour. The long bed was bare when viewers last saw it.",
      ],
    ]);
  });

  test("every sentence says where it rests", () => {
    expect(brief.opening[0]?.sources.map(({ file, line }) => `${file}:${line}`)).toEqual([
      "notes/2026-06-16.md:1",
      "notes/2025-06-25.md:1",
    ]);
    const places = brief.stops.flatMap((stop) => [...stop.show, ...stop.facts, ...stop.troubles, ...stop.tasks]);
    expect(places.filter(({ sources }) => sources.length === 0)).toEqual([]);
  });

  test("lists what viewers are owed", () => {
    expect(brief.followUps).toMatchObject([
      {
        what: "show how close I dared to plant the squash",
        standing: "due",
        stop: "S1",
        promisedOn: "2026-05-20",
        due: "2026-06-19",
      },
    ]);
  });
});

describe("a stop", () => {
  test("says what to show, the strongest first", () => {
    expect(long.show.map(({ id, level, kind, text }) => [id, level, kind, text])).toEqual([
      [
        "S1a",
        "must",
        "owed",
        "Owed since 20 May: you said you would show how close you dared to plant the squash. On record: 90 cm apart for the Crown Prince and Uchiki Kuri squash.",
      ],
      [
        "S1b",
        "must",
        "new",
        "The squash are all new: 6 Crown Prince and 5 Uchiki Kuri (say oo-CHEE-kee KOO-ree), sown indoors on 21 April, planted out on 24 May, so 26 days in the ground.",
      ],
      [
        "S1c",
        "must",
        "new",
        "Not seen before: 21 Musselburgh leeks (say MUSSEL-bruh), sown indoors on 10 March, planted out on 24 May, so 26 days in the ground. They are in row 2, next to the squash.",
      ],
      ["S1d", "should", "trouble", "Leek moth on the Musselburgh leeks, since 2 June."],
      ["S1e", "should", "lost", "Three of the Musselburgh leeks were lost to leek moth on 2 June; 21 are left."],
      ["S1f", "should", "first flower", "The Crown Prince squash came into flower on Sunday."],
      ["S1g", "could", "a year ago", "This day last year the long bed held squash."],
    ]);
    expect(long.show.map(({ why }) => why)).toEqual([
      "viewers were told they would see it",
      "it came since the last tour",
      "it came since the last tour",
      "it is new",
      "viewers saw more of them last time",
      "first time since the last tour",
      "last year's bed is on record",
    ]);
  });

  test("lists the varieties with count, losses, how to say them and where they came from", () => {
    expect(
      long.varieties.map(({ label, howMany, say, from, newThisYear }) => [label, howMany, say, from, newThisYear]),
    ).toEqual([
      ["Crown Prince, squash", "6", "", "own saved seed, 2025", false],
      ["Uchiki Kuri, squash", "5", "oo-CHEE-kee KOO-ree", "seed swap, Saltmarsh Hall", true],
      ["Musselburgh, leek", "21 (3 lost)", "MUSSEL-bruh", "Drift Lane Seeds, bought", true],
    ]);
    expect(long.varieties.map(({ where }) => where)).toEqual([
      "in row 1, next to the leeks",
      "in row 1, next to the leeks",
      "in row 2, next to the squash",
    ]);
  });

  test("has facts ready to be said", () => {
    expect(texts(long.facts)).toEqual([
      "The Crown Prince and Uchiki Kuri squash were sown indoors on 21 April and planted out on 24 May, so they have had 26 days in the ground.",
      "Picking of the Crown Prince squash expected from about 27 August: 95 days from planting, and last year it took 101 here.",
      "The Musselburgh leeks were sown indoors on 10 March and planted out on 24 May; they have had 26 days in the ground.",
      "Row by row: Crown Prince and Uchiki Kuri squash in row 1, Musselburgh leeks in row 2.",
      "This day last year the long bed held squash.",
      "The long bed is 8 m by 1.2 m.",
    ]);
  });

  test("tells what viewers saw last time, what changed, what is wrong and what is to do", () => {
    expect(texts(long.lastSeen)).toEqual(["When viewers last saw the long bed, on 17 May, it was bare."]);
    expect(texts(peas.lastSeen)).toEqual(["When viewers last saw the pea row, on 17 May, it held sweet peas."]);
    expect(texts(long.troubles)).toEqual(["Leek moth on the Musselburgh leeks, since 2 June."]);
    expect(texts(long.tasks)).toEqual(["Due since Monday: net the leeks."]);
    expect(texts(long.finishedSince)).toEqual([
      "Three of the Musselburgh leeks were lost to leek moth on 2 June; 21 are left.",
    ]);
    expect(long.changes.map(({ day, kind }) => [day, kind])).toContainEqual(["2026-06-14", "stage"]);
  });

  test("says where to stand", () => {
    expect(long.spot.text).toBe("from the gate post, chest height, looking north-west");
  });
});

test("the same records and the same day give the same bytes", () => {
  const again = makeBrief(garden, { episode: "2026-06-tour", today: "2026-06-19" });
  expect(JSON.stringify(again)).toBe(JSON.stringify(brief));
  expect(dossierOf(again, garden)).toBe(dossierOf(brief, garden));
});

test("asked for, each sentence of the Markdown has its file and line below it", () => {
  const cards = makeCards(garden, { episode: "2026-06-tour", today: "2026-06-19" });
  const markdown = cardsMarkdown(cards, garden.settings, { sources: true });
  expect(
    markdown,
  ).toContain(`- **Should, lost.** Three of the Musselburgh leeks were lost to leek moth on 2 June; 21 are left.\\
  \`notes/2026-06-02.md:5\``);
  const items = markdown
    .split("\n")
    .filter((line) => /^(?:-|\d\.) /.test(line) && !line.startsWith("- There is no photo"));
  expect(items.length).toBeGreaterThan(15);
  expect(items.filter((line) => !line.endsWith("\\"))).toEqual([]);
});

test("the Markdown of the dossier reads as it is", () => {
  const markdown = dossierOf(brief, garden);
  const [head = ""] = markdown.split("\n\n## Hill");
  expect(head).toBe(`# Dossier

Friday, 19 June 2026, since the tour of 17 May. Two stops, 2 min 37 of film, nine and a half minutes short of 12 minutes. Filming ends at about 9:19.`);
  const [, stop = ""] = markdown.split("### 2 · ");
  expect(stop).toBe(`Pea Row · 26 s · from 9:18

*Four steps west from the long bed.* “Last stop: the pea row, where the first sweet peas are in flower.” When viewers last saw the pea row, on 17 May, it held sweet peas.

- **Should, first flower.** The Matucana sweet peas opened on Tuesday, nine days earlier than last year.
- **Could, a year ago.** This day last year the pea row held sweet peas.

| | how many | say | from |
|---|---|---|---|
| Matucana, sweet pea | sown here |  | own saved seed |

- The Matucana sweet peas were sown here on 1 March: nearly 16 weeks from seed to today.

Point to: *May tour*, 17 May (Pea Row).

Shots: S2.1 wide · S2.2 walk-in · S2.3 first flower of the Matucana sweet peas.`);
});
