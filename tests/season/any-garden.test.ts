/** Whatever a person writes, no output has a number that is none, a word of the machine, or an empty sentence. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { scene } from "../../scripts/golden/any-garden.ts";
import { gardenWeather, type Weather } from "../../src/almanac/index.ts";
import { cardLimits, countWords } from "../../src/films/index.ts";
import { seasonOf } from "../../src/garden/index.ts";
import type { Garden } from "../../src/model.ts";
import { makeRecapCards, recapCardsMarkdown, seedListCsv } from "../../src/season/index.ts";
import { recapDocument } from "../../src/site/index.ts";
import { gardenOf } from "../tour/garden-of.ts";

/** Words of a machine, numbers that are none, plurals that jar. */
const wrong =
  /\bNaN\b|\bInfinity\b|\bundefined\b|\[object|\bnull\b|\b1 (?:days|plants|kg of nothing)\b|\bone (?:days|plants|pickings|seasons|varieties|plantings|roots|heads|nights)\b|\(s\)|(?<![\w-])-0(?![\d.])/;
const emptyWords = / [,.;:]|\(\)|\.\.(?!\.)|: \.|,,|^\W*$/;

function sentencesOf(value: unknown, found: string[] = []): string[] {
  if (Array.isArray(value)) for (const one of value) sentencesOf(one, found);
  else if (value !== null && typeof value === "object") {
    const record = value as Record<string, unknown>;
    if (typeof record.text === "string" && Array.isArray(record.sources)) found.push(record.text);
    for (const one of Object.values(record)) sentencesOf(one, found);
  }
  return found;
}

describe("any garden", () => {
  it("gives recaps that can be read aloud", { timeout: 300_000 }, async () => {
    await fc.assert(
      fc.asyncProperty(scene, fc.nat(2), async (one, which) => {
        const garden = await gardenOf(one.files, one.today);
        const place = one.latitude === undefined ? undefined : { latitude: one.latitude, longitude: 10 };
        const weather = gardenWeather([{ file: "weather/w.csv", text: one.weather }], place, one.today);
        checkAll(garden, weather, one.today, which);
      }),
      { numRuns: Number(process.env.RUNS ?? 60) },
    );
  });
});

function checkAll(garden: Garden, weather: Weather, today: string, which: number): void {
  const season = seasonOf(today, garden.settings.seasonStarts);
  const month = which === 1 ? `${today.slice(0, 7)}-01` : undefined;
  const made = makeRecapCards(garden, weather, {
    season,
    today,
    month: month !== undefined && month >= season.from ? month : undefined,
    target: which === 2 ? 240 : undefined,
  });
  const { cover, cards, dossier: recap } = made;
  for (const phrase of sentencesOf([cover, cards])) {
    expect(phrase).not.toMatch(wrong);
    expect(phrase).not.toMatch(emptyWords);
  }
  expect(cards.length).toBeLessThanOrEqual(10);
  for (const card of cards) {
    expect(countWords(card.opening.text), card.opening.text).toBeLessThanOrEqual(cardLimits.opening);
    expect(card.opening.text).not.toMatch(/\d/);
    expect(card.words, card.title).toBeLessThanOrEqual(cardLimits.spoken);
  }
  for (const sentence of sentencesOf(recap)) {
    expect(sentence).not.toMatch(wrong);
    expect(sentence).not.toMatch(emptyWords);
    expect(sentence).toMatch(/[.!?…]["”’)]?$/);
  }
  for (const point of recap.segments.flatMap(({ show }) => show)) {
    expect(point.seconds).toBeGreaterThan(0);
    expect(point.sources.length, point.text).toBeGreaterThan(0);
  }
  const markdown = recapCardsMarkdown(made, garden.settings);
  const data = JSON.stringify(made, (key, value: unknown) => {
    if (typeof value === "number" && !Number.isFinite(value)) throw new Error(`${key} is ${value}`);
    return value;
  });
  const page = recapDocument(made, garden.settings).replace(/<style>.*?<\/style>/s, "");
  for (const output of [markdown, data, page, seedListCsv(recap.nextYear.seeds)])
    expect(output.match(wrong)?.[0]).toBeUndefined();
}
