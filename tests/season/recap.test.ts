/** The recap of the demo garden, its parts, its length, other years and hemispheres; the command that writes it. */
import path from "node:path";
import { describe, expect, it } from "vitest";
import { gardenWeather, noWeather } from "../../src/almanac/index.ts";
import { addDays } from "../../src/calendar.ts";
import { seasonBeginning, seasonOf } from "../../src/garden/index.ts";
import type { Garden } from "../../src/model.ts";
import { openPhotoFolder, readPhotos } from "../../src/photos/index.ts";
import { openRecordsFolder, readRecords, readTexts } from "../../src/records/index.ts";
import { makeRecap, makeRecapCards, type Recap, recapMarkdown } from "../../src/season/index.ts";
import { recapDocument } from "../../src/site/index.ts";
import { growGarden } from "../../src/timeline/index.ts";
import { type Files, gardenOf } from "../tour/garden-of.ts";

const today = "2026-07-18";

const demo = (async () => {
  const dir = path.resolve("demo-content");
  const folder = await openRecordsFolder(dir);
  const records = await readRecords(folder, { today });
  const { photos } = await readPhotos(records, openPhotoFolder(dir));
  const { texts } = await readTexts(folder, records.weatherFiles);
  return { garden: growGarden(records, photos), weather: gardenWeather(texts, records.settings.position, today) };
})();

async function demoRecap(
  request: Partial<Parameters<typeof makeRecap>[2]> = {},
): Promise<{ recap: Recap; garden: Garden }> {
  const { garden, weather } = await demo;
  return { garden, recap: makeRecap(garden, weather, { season: seasonBeginning(2026, "01-01"), today, ...request }) };
}

function* leaves(value: unknown): Generator<unknown> {
  if (Array.isArray(value) || (typeof value === "object" && value?.constructor === Object)) {
    for (const part of Object.values(value)) yield* leaves(part);
  } else yield value;
}

const said = ({ segments }: Recap) => segments.flatMap(({ show }) => show.map(({ text }) => text));

describe("the demo garden's recap", () => {
  it("tells the season in one paragraph", async () => {
    const { recap } = await demoRecap();
    expect(recap.paragraph.map(({ text }) => text)).toEqual([
      "By 18 July the garden has given 66 kg, 20 kg more than by this day last year, and 443 stems of flowers.",
      "The last frost came on 26 April, six days late, and in warmth the season is six days behind last year.",
      "The Aquadulce Claudia broad beans gave most, 9.8 kg, 15 % of all that was weighed.",
      "Slugs took eleven plants, the gale eight lettuce plants; leek moth, clubroot, blossom end rot and powdery mildew are not over.",
      "Two trials are running: Early or late carrots and Net or no net.",
    ]);
  });

  it("tells the rain that viewers have not seen", async () => {
    const { recap } = await demoRecap();
    // Added up by hand from demo-content/weather/2026.csv: 44.7 mm on eleven days after 13 June.
    expect(said(recap)).toContain("Since the last film on 13 June it has rained 45 mm on eleven days.");
  });

  it("has the parts of a film, each with reasons, time and sources", async () => {
    const { recap } = await demoRecap();
    expect(recap.segments.map(({ kind }) => kind)).toEqual([
      "season",
      "weather",
      "best",
      "worst",
      "results",
      "growth",
      "trials",
      "promises",
      "to come",
      "next year",
      "questions",
    ]);
    for (const { show, id } of recap.segments) {
      expect(show.map((point) => point.id)).toEqual(show.map((_, index) => `${id}.${index + 1}`));
      for (const point of show) {
        expect(point.sources.length, point.text).toBeGreaterThan(0);
        expect(point.why).not.toBe("");
      }
    }
    expect(recap.opening).toHaveLength(3);
  });

  it("says best and worst with their reasons", async () => {
    const { recap } = await demoRecap({ season: seasonBeginning(2025, "01-01") });
    const lines = said(recap);
    expect(lines).toContain(
      "The Gardener's Delight tomatoes gave 20.2 kg from eight plants, 2.53 kg a plant; last year it was 1.42 kg.",
    );
    expect(lines).toContain(
      "The Bleu de Solaise leeks lost 22 of 30 plants to drying out before they were planted out.",
    );
    expect(lines).toContain("Promised on 14 June: show the squash in Long Bed again in August. Kept on 16 August.");
  });

  it("shows each bed first, at its fullest and last", async () => {
    const { recap } = await demoRecap();
    const sets = recap.segments.flatMap(({ photos }) => photos);
    expect(sets.map(({ bed }) => bed)).toEqual([
      "brassica-bed",
      "cutting-patch",
      "long-bed",
      "squash-bed",
      "tomato-pots",
      "tunnel-north",
    ]);
    for (const { first, peak, last } of sets) {
      expect(first.day < last.day).toBe(true);
      if (peak !== undefined) expect(first.day < peak.day && peak.day < last.day).toBe(true);
    }
  });

  it("fits the length asked for, the must-says always in", async () => {
    for (const target of [300, 600, 900]) {
      const { recap } = await demoRecap({ target });
      expect(recap.seconds.chosen).toBeLessThanOrEqual(target);
      expect(recap.seconds.chosen).toBeGreaterThan(target * 0.9);
      expect(
        recap.segments.flatMap(({ show }) => show).filter((point) => point.level === "must" && !point.chosen),
      ).toEqual([]);
      expect(
        recap.leftOut.length + recap.segments.flatMap(({ show }) => show.filter(({ chosen }) => chosen)).length,
      ).toBe(recap.segments.flatMap(({ show }) => show).length);
    }
  });

  it("of a month tells the month alone", async () => {
    const { recap } = await demoRecap({ month: "2026-06-01" });
    expect([recap.recap, recap.from, recap.to, recap.title]).toEqual([
      "2026-06",
      "2026-06-01",
      "2026-06-30",
      "Gullstone Gardens: June 2026",
    ]);
    expect(recap.paragraph[0]?.text).toBe("From 1 June to 30 June the garden gave 24 kg and 172 stems of flowers.");
    expect(recap.segments.some(({ kind }) => kind === "to come")).toBe(false);
    expect(recap.results.total.grams).toBe(24_400);
  });

  it("carries disclosures, cautions and methods", async () => {
    const { recap } = await demoRecap();
    expect(recap.disclosures.map(({ text }) => text)).toContain(
      "The butterfly net came free from Skerry Netting: say so when you show it.",
    );
    expect(recap.cautions.map(({ text }) => text).join(" ")).toContain("tested recipe");
    expect(recap.methods.join(" ")).toMatch(
      /simple average.*McMaster and Wilhelm.*exact permutation test.*MF315.*West Virginia/s,
    );
    // Each page stands with the families it names, and with no other.
    expect(recap.methods.find((one) => one.startsWith("Rotation"))).toBe(
      "Rotation: the same family off a bed for three seasons (the cabbage family, the potato and tomato family, the onion family, the pea and bean family and the cucumber and squash family by West Virginia University Extension, Crop Rotation in the Garden (2025); the carrot family and the beet family by K-State Research and Extension, Riley County, column on vegetable crop rotation), two seasons (the lettuce family by UC Master Gardeners of Sacramento County, Crop Rotation); longer after a disease that stays in the soil. Why: common knowledge of growers, from memory.",
    );
  });

  it("tells the cautions of the plants it speaks of, and of no others that grow", async () => {
    const on = "2026-11-01";
    const garden = await gardenOf(
      {
        "beds/long-bed.md": "---\ntitle: Long Bed\n---\n",
        "varieties/timperley.md": "---\ntitle: Timperley Early\ncrop: rhubarb\nperennial: true\n---\n",
        "varieties/excelsior.md": "---\ntitle: Excelsior\ncrop: foxglove\n---\n",
        "notes/2024-03-01.md": "- planted 2 Timperley Early in Long Bed\n",
        "notes/2025-05-01.md":
          "- picked 2 kg Timperley Early from Long Bed\n- planted 6 bought Excelsior in Long Bed\n",
        "notes/2026-05-01.md": "- picked 9 kg Timperley Early from Long Bed\n",
      },
      on,
    );
    const { cautions } = makeRecap(garden, noWeather, { season: seasonOf("2026-06-01", "01-01"), today: on });
    const said = cautions.map(({ text }) => text).join("\n");
    expect(said).toContain("Only rhubarb stalks are eaten: the leaves are poisonous");
    expect(said).not.toMatch(/foxglove/i);
  });

  it("is plain data", async () => {
    const { recap } = await demoRecap();
    // Maps, patterns and the like would be written as {} in JSON.
    const odd = [...leaves(recap)].filter(
      (leaf) => !["string", "number", "boolean", "undefined"].includes(typeof leaf) || Number.isNaN(leaf),
    );
    expect(odd).toEqual([]);
    expect(recap.nextYear.seeds.length).toBeGreaterThan(40);
  });

  it("reads well as Markdown and stands alone as a page", async () => {
    const { recap, garden } = await demoRecap({ target: 600 });
    const markdown = recapMarkdown(recap, garden.settings);
    expect(markdown).toMatch(
      /^# Dossier: Gullstone Gardens: the season of 2026 so far\n\n\*\*1 January to 18 July 2026 · ten minutes asked for, /,
    );
    expect(markdown).not.toMatch(/\n#+ [^\n]*\n\n(?=#|$)/);
    const { weather } = await demo;
    const season = seasonBeginning(2026, "01-01");
    const page = recapDocument(makeRecapCards(garden, weather, { season, today }), garden.settings);
    expect(page).toContain("Not for viewers");
    expect(page).not.toMatch(/<script|https?:\/\/(?!gullstone|films|driftlane)/);
    expect(page.match(/<svg /g)?.length).toBeGreaterThan(10);
  });
});

describe("other seasons", () => {
  const south: Files = {
    "garden.md":
      "---\nname: South\nlanguage: en-AU\nseason starts: 1 July\nlast frost: 20 September\nfirst frost: 10 May\n---\n",
    "beds/long-bed.md": "---\ntitle: Long Bed\n---\n",
    "varieties/germidour.md": "---\ntitle: Germidour\ncrop: garlic\ndays to maturity: 230 from planting\n---\n",
    "varieties/harbinger.md": "---\ntitle: Harbinger\ncrop: tomato\n---\n",
    "notes/2025-04-10.md": "- planted 40 bought Germidour in Long Bed\n",
    "notes/2025-11-20.md":
      "- lifted 2 kg Germidour from Long Bed, 38 bulbs\n- cleared Germidour from Long Bed\n- planted 6 bought Harbinger in Long Bed\n",
    "notes/2026-02-10.md": "- picked 3 kg Harbinger from Long Bed\n",
  };

  /** Frost up to 2 September, 36 °C on 20 December, every day from July to February. */
  const southernSpring = `date,tmin_c,tmax_c,rain_mm\n${Array.from({ length: 243 }, (_, i) => {
    const day = addDays("2025-07-01", i);
    const tmax = day === "2025-12-20" ? 36 : day < "2025-10-01" ? 14 : 26;
    return `${day},${day <= "2025-09-02" ? -1 : 9},${tmax},0\n`;
  }).join("")}`;

  it("belong to the year they begin in, over New Year and in the south", async () => {
    const on = "2026-03-01";
    const garden = await gardenOf(south, on);
    const season = seasonOf(on, garden.settings.seasonStarts);
    const weather = gardenWeather(
      [
        {
          file: "w.csv",
          text: southernSpring,
        },
      ],
      { latitude: -36, longitude: 147 },
      on,
    );
    const recap = makeRecap(garden, weather, { season, today: on });
    expect([recap.recap, recap.title, recap.spanText]).toEqual([
      "2025-26",
      "South: the season of 2025/26 so far",
      "1 July 2025 to 1 March 2026",
    ]);
    expect(recap.paragraph[0]?.text).toBe("By 1 March the garden has given 5 kg.");
    expect(said(recap)).toContain("The last frost of spring was on 2 September, 18 days early.");
    expect(said(recap)).toContain("70 days are left to the usual first frost on 10 May.");
    // Garlic put in before the season began and lifted in it is this season's.
    expect(recap.results.varieties.map(({ title, grams }) => [title, grams])).toEqual([
      ["Harbinger, tomato", 3000],
      ["Germidour, garlic", 2000],
    ]);
  });

  it("with nothing in them say so", async () => {
    const garden = await gardenOf({ "garden.md": "---\nname: Bare\n---\n" }, today);
    const recap = makeRecap(garden, noWeather, { season: seasonBeginning(2026, "01-01"), today });
    expect(recap.paragraph.map(({ text }) => text)).toEqual([
      "By 18 July the garden has given nothing that was noted.",
    ]);
    expect(recapMarkdown(recap, garden.settings)).toContain("nothing that was noted");
  });

  it("since the last recap begin on the day after it", async () => {
    const files: Files = {
      ...south,
      "episodes/2025-12-recap/index.md":
        "---\ntitle: Spring recap\ndate: 2025-12-31\npublished: 2026-01-03\nstatus: published\n---\n",
    };
    const garden = await gardenOf(files, "2026-03-01");
    const season = seasonOf("2026-03-01", "07-01");
    const recap = makeRecap(garden, noWeather, { season, sinceLast: true, today: "2026-03-01" });
    expect([recap.kind, recap.from, recap.results.total.grams]).toEqual(["since the last recap", "2026-01-01", 3000]);
  });
});

describe("what is private", () => {
  it("is in no sentence of the outline", async () => {
    const files: Files = {
      "beds/long-bed.md": "---\ntitle: Long Bed\n---\n",
      "varieties/secret.md": "---\ntitle: Thief's Joy\ncrop: tomato\nprivate: true\n---\n",
      "varieties/harbinger.md": "---\ntitle: Harbinger\ncrop: tomato\n---\n",
      "notes/2026-05-01.md": "---\nprivate: true\n---\n- planted 4 bought Thief's Joy in Long Bed\n",
      "notes/2026-07-01.md":
        "---\nprivate: true\n---\n- picked 9 kg Thief's Joy from Long Bed\n- lost 3 Thief's Joy to thieves\n",
      "notes/2026-07-02.md": "- planted 2 bought Harbinger in Long Bed\n- picked 1 kg Harbinger from Long Bed\n",
    };
    const garden = await gardenOf(files, today);
    const recap = makeRecap(garden, noWeather, { season: seasonBeginning(2026, "01-01"), today });
    expect(said(recap).filter((text) => /thie/i.test(text))).toEqual([]);
    expect(recap.opening.filter(({ text }) => /thie/i.test(text))).toEqual([]);
  });
});
