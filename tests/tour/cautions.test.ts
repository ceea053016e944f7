/** Cautions at a stop: the person's own beside the table's, the gravest first, few at a stop, whom to call once a brief. */
import { describe, expect, test } from "vitest";
import { allOf, cautionsFor } from "../../src/almanac/index.ts";
import { fieldListData } from "../../src/site/field-list/field-list-data.ts";
import { makeBrief } from "../../src/tour/index.ts";
import { cardsAround, dossierOf, type Files, gardenFile, gardenOf } from "./garden-of.ts";

const day = "2026-06-19";
const garden = (more: string) => gardenFile.replace("---\n", `---\n${more}`);
const briefOf = async (files: Files) => {
  const made = await gardenOf({ "beds/long-bed.md": "---\ntitle: Long Bed\n---\n", ...files }, day);
  const brief = makeBrief(made, { day, today: day });
  return { brief, garden: made, lines: brief.stops.flatMap(({ cautions }) => cautions.map(({ text }) => text)) };
};
const variety = (title: string, more: string) => ({
  [`varieties/${title.toLowerCase().replaceAll(" ", "-")}.md`]: `---\ntitle: ${title}\n${more}\n---\n`,
});

test("a person's own caution and the table's stand side by side", async () => {
  const { lines } = await briefOf({
    ...variety("Excelsior", "crop: foxglove\nbotanical: Digitalis purpurea\ncaution: stake by June"),
    "notes/2026-05-01.md": "- planted 3 Excelsior in Long Bed\n",
  });
  expect(lines).toEqual([
    "Excelsior: stake by June.",
    "Foxglove is very poisonous in all its parts, for people and animals; if eaten, call a poison centre or a vet at once.",
  ]);
});

describe("a row that only a part or a work calls for", () => {
  const celery = "- planted 12 celery in Long Bed\n";
  const caution = "Celery sap and sun can blister skin: wash it off; a doctor looks at blisters.";
  test("stands with a line that names it, and not without", async () => {
    expect((await briefOf({ "notes/2026-05-01.md": celery })).lines).toEqual([]);
    const cut = { "notes/2026-05-01.md": celery, "notes/2026-06-10.md": "- trimmed the celery in Long Bed\n" };
    expect((await briefOf(cut)).lines).toEqual([caution]);
  });

  test("is not called for by a cultivar's name", async () => {
    const { lines } = await briefOf({
      ...variety("White Volunteer", "crop: courgette"),
      "notes/2026-05-01.md": "- planted 3 White Volunteer in Long Bed\n",
    });
    expect(lines).toEqual([]);
  });

  test("is called for by saved seed of squash", async () => {
    const { lines } = await briefOf({
      ...variety("Crown Prince", "crop: squash\nsource: {name: own seed, obtained: saved}"),
      "notes/2026-05-01.md": "- planted 3 Crown Prince in Long Bed\n",
    });
    expect(lines[0]).toMatch(/^Taste a crumb raw: spit out and throw away/);
  });
});

test("what only animals suffer from is told where there are animals", async () => {
  const note = { "notes/2026-05-01.md": "- planted 20 onions in Long Bed\n" };
  expect((await briefOf(note)).lines).toEqual([]);
  const kept = await briefOf({ ...note, "garden.md": garden("animals: cats, hens\n") });
  expect(kept.lines).toEqual([
    "Onions, garlic, leeks and chives poison cats, dogs and horses: keep trimmings away and ask a vet.",
  ]);
  const named = await briefOf({ ...note, "notes/2026-06-01.md": "- lost 2 onions in Long Bed to the dog\n" });
  expect(named.lines.some((line) => line.startsWith("Onions, garlic"))).toBe(true);
});

describe("many poisonous plants at one stop", () => {
  const files = {
    "garden.md": garden("poison centre: 555 0100, day and night\n"),
    "notes/2026-05-01.md": [
      "- planted 2 rhubarb in Long Bed",
      "- planted 9 parsnips in Long Bed",
      "- planted 3 foxgloves in Long Bed",
      "- planted 5 lilies in Long Bed",
      "- planted 8 potatoes in Long Bed",
      "",
    ].join("\n"),
  };
  test("show the gravest three, and the others at the end with whom to call", async () => {
    const { brief, garden: made } = await briefOf(files);
    const [stop] = brief.stops;
    expect(stop?.cautions.map(({ text }) => text.split(" ")[0])).toEqual(["Foxglove", "Only", "Potato"]);
    expect(stop?.furtherCautions.map(({ text }) => text.split(" ")[0])).toEqual(["Parsnip", "Lilies"]);
    // All of them stand once, on the cover, each with the stops it is for.
    const { cover } = cardsAround(brief, made);
    expect(cover.cautions.map(({ text, stops }) => [text.split(" ")[0], stops])).toEqual(
      ["Foxglove", "Only", "Potato", "Parsnip", "Lilies"].map((word) => [word, [1]]),
    );
    expect(cover.poison).toContain("Your poison centre: 555 0100, day and night.");
    expect(dossierOf(brief, made)).not.toContain("Lilies kill cats");
    const list = fieldListData(cardsAround(brief, made), made.settings, new Map());
    expect(list.stops[0]?.cautions).toHaveLength(5);
    expect(list.care).toContain("555 0100");
  });
});

test("where nothing poisons, nobody is told to call anybody, and no number is guessed", async () => {
  const { brief } = await briefOf({ "notes/2026-05-01.md": "- planted 9 lettuces in Long Bed\n" });
  expect(brief.closingCaution).toBeUndefined();
  const { brief: warned } = await briefOf({ "notes/2026-05-01.md": "- planted 2 rhubarb in Long Bed\n" });
  expect(warned.closingCaution).not.toMatch(/\d/);
});

test("only a row that rests on memory says so", () => {
  const here = { beds: new Map(), settings: { animals: undefined, language: "en-GB" } };
  const of = (title: string) =>
    allOf(cautionsFor({ growing: [{ variety: { title } as never, events: [] }], news: [], garden: here }));
  expect(of("Tansy")[0]?.text).toMatch(/Common practice; check a poisons reference\.$/);
  expect(of("Foxglove")[0]?.text).not.toContain("Common practice");
});

test("a pond is dangerous without a line about it", async () => {
  const { lines } = await briefOf({
    "beds/pond.md": "---\ntitle: Pond\n---\n",
    "notes/2026-05-01.md": "- planted 2 mint in Pond\n",
  });
  expect(lines).toContain(
    "Small children drown in a few centimetres: cover or fence the pond, lid on the butt, eyes on them while you film. If the worst happens, call an ambulance.",
  );
});

describe("what a name or a wild animal says", () => {
  const pickles = { "beds/pickles.md": "---\ntitle: Pickles\n---\n" };
  const told = async (lines: string, more: Files = {}) =>
    (await briefOf({ ...pickles, ...more, "notes/2026-05-01.md": lines })).lines;

  test("a bed called Pickles makes no jars", async () => {
    expect(await told("- planted 3 lettuces in Pickles\n- weeded Pickles\n")).toEqual([]);
    expect(
      await told("- planted 3 lettuces in Pickles\n- did: made pickles of the last onions, in Pickles\n"),
    ).not.toEqual([]);
  });

  test("a rabbit that ate the lettuces is nobody's pet", async () => {
    const onions = "- planted 30 onions in Pickles\n";
    expect(await told(`${onions}- a wild rabbit sat among the onions in Pickles\n`)).toEqual(await told(onions));
    expect(await told(`${onions}- trouble: rabbits on the onions in Pickles\n`)).toEqual(await told(onions));
    expect(await told(`${onions}- weeded Pickles with the dog beside me\n`)).not.toEqual(await told(onions));
  });

  test("in a garden of the United States is said in its English", async () => {
    const lines = await told("- planted 2 rhubarb in Pickles\n", {
      "garden.md": garden("").replace("en-GB", "en-US").replace("Europe/London", "America/Chicago"),
    });
    expect(lines.join(" ")).toContain("poison center");
    expect(lines.join(" ")).not.toContain("centre");
  });
});

describe("ladders and dusts", () => {
  const beds = {
    "beds/apple-wall.md": "---\ntitle: Apple Wall\n---\n",
    "notes/2026-05-01.md": "- planted 12 leeks in Long Bed\n- planted 1 Discovery apple in Apple Wall\n",
  };
  const ladder = /^Ladder on firm level ground/;
  const dust = /^Don't breathe or rub in dusts/;

  test("are told at the first stop that has them, and not at each", async () => {
    const { brief } = await briefOf({
      ...beds,
      "notes/2026-06-10.md":
        "- did: thinned the apples from the ladder, in Apple Wall\n- did: hung tape from the ladder, in Long Bed\n",
    });
    const told = brief.stops.map(({ cautions }) => cautions.filter(({ text }) => ladder.test(text)).length);
    expect(told.length).toBe(2);
    expect(told.reduce((sum, one) => sum + one)).toBe(1);
  });

  test("are told of the bed whose work it was, not of all that a paragraph names", async () => {
    const { brief } = await briefOf({
      ...beds,
      "notes/2026-06-10.md":
        "Weeded the leeks in Long Bed. Garden lime went round the apple in Apple Wall.\n\n" +
        "- = did: weeded the leeks, in Long Bed\n- = did: limed the ground, in Apple Wall\n",
    });
    const at = (bed: string) => brief.stops.find((stop) => stop.bed === bed)?.cautions.map(({ text }) => text) ?? [];
    expect(at("apple-wall")).toContainEqual(expect.stringMatching(dust));
    expect(at("long-bed")).not.toContainEqual(expect.stringMatching(dust));
  });
});
