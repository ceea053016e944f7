/** A recap's sentences in German, read whole, and the tables whose every row needs its German twin. */
import { describe, expect, test } from "vitest";
import { airborne, rotationRules, soilDiseases } from "../../src/almanac/rotation-facts.ts";
import type { GardenSettings } from "../../src/model.ts";
import { type TellsFacts, trialWords } from "../../src/season/recap-words/trials.ts";
import { recapWords } from "../../src/season/recap-words/words.ts";

const settings = { language: "de", units: "metric" } as GardenSettings;
const voice = { settings, day: "2026-07-18" };
const words = recapWords(settings);
const plain = (text: string | undefined) => text?.replaceAll("\u00a0", " ");
const squash = {
  variety: { title: "Uchiki Kuri", id: "uchiki-kuri" } as never,
  crop: { id: "squash", name: "squash", plural: "squash", alsoCalled: [] } as never,
};
const bed = { title: "Langes Beet" };

describe("a German recap", () => {
  test("tells what the season gave, against earlier ones", () => {
    const facts = { season: "2026", from: "2026-01-01", to: "2026-07-18", whole: true, lastYear: 2025 };
    expect(
      plain(
        words.total(
          { ...facts, past: false, finished: false, grams: 13_200, stems: 6, pickings: 10, lastYearGrams: 9_000 },
          voice,
        ),
      ),
    ).toBe(
      "Bis 18. Juli hat der Garten 13,2 kg und sechs Blütenstiele in zehn Ernten gegeben, gegen 9 kg am selben Tag des Vorjahrs.",
    );
    expect(plain(words.total({ ...facts, past: true, finished: true, grams: 0, stems: 0, pickings: 0 }, voice))).toBe(
      "Das Gartenjahr 2026 brachte nichts, was notiert ist.",
    );
  });

  test("tells losses with their cause, and says where none is noted", () => {
    const loss = {
      names: ["Lauch Blauer Winter"],
      moreKinds: 0,
      bed,
      plants: 3,
      all: false,
      first: "2026-06-05",
      last: "2026-06-05",
      tried: ["Netz"],
    };
    expect(words.loss({ ...loss, cause: "lauchmotte", end: "open", lastYear: 0 }, voice)).toBe(
      "Lauchmotte: drei Pflanzen verloren, Lauch Blauer Winter, Beet: Langes Beet, am 5. Juni, noch nicht vorbei. Im Vorjahr bis dahin: keine. Versucht: Netz.",
    );
    expect(words.loss({ ...loss, cause: undefined, end: undefined, plants: 1, tried: [] }, voice)).toBe(
      "Ursache nicht notiert: eine Pflanze verloren, Lauch Blauer Winter, Beet: Langes Beet, am 5. Juni.",
    );
  });

  test("tells the weather", () => {
    expect(plain(words.weather.lastFrost("2026-04-03", -42, voice))).toBe(
      "Der letzte Frühjahrsfrost war am 3. April, 42 Tage vor dem üblichen Tag.",
    );
    expect(words.weather.nights(1, 1, true)).toBe("Bisher gab es eine Frostnacht, eine davon mit strengem Frost.");
    expect(words.weather.nights(0, 0, false)).toBe("Es gab keine Frostnächte.");
    const heat = { since: "2026-01-01", heat: 1181.4, base: 40 / 9, lastYear: 1100, daysAhead: 6 };
    expect(plain(words.weather.heat(heat, voice))).toBe(
      "Seit dem 1. Januar kamen 1.181 Gradtage über 4,4 °C zusammen, gegen 1.100 am selben Tag des Vorjahrs: sechs Tage vor dem Vorjahr.",
    );
    expect(plain(words.weather.heat({ ...heat, daysAhead: 0, days: { inBoth: 179, of: 199 } }, voice))).toBe(
      "Seit dem 1. Januar kamen an den 179 von 199 Tagen, die beide Jahre haben, 1.181 Gradtage über 4,4 °C zusammen, gegen 1.100 an denselben Tagen des Vorjahrs: gleichauf mit dem Vorjahr.",
    );
    expect(plain(words.weather.frostLeft(1, "2026-07-19", voice))).toBe(
      "Bis zum üblichen ersten Frost am 19. Juli bleibt ein Tag.",
    );
  });

  test("tells what is to be expected, and how sure that is", () => {
    const forecast = {
      plants: squash,
      goal: "picking" as const,
      from: "2026-08-12",
      likely: "2026-09-01",
      to: "2026-09-26",
      expected: { from: "2026-08-12", by: "2026-09-26" },
      days: 95,
      counted: "planting" as const,
      ratio: 1.25,
      learnedFrom: 2,
      byHeat: false,
    };
    expect(words.forecast(forecast, voice)).toBe(
      "Kürbisse Uchiki Kuri: Ernte zwischen 12. August und 26. September zu erwarten, am ehesten um den 1. September (laut Sorte 95 Tage ab Pflanzung; Kürbisse brauchten hier etwa ein Viertel länger).",
    );
    expect(
      words.forecast(
        { ...forecast, likely: "2026-07-24", to: "2026-08-02", expected: { from: "2026-06-01", by: "2026-07-01" } },
        voice,
      ),
    ).toContain("war bis 1. Juli zu erwarten und ist noch nicht da; was so spät ist, kommt meist bis 2. August");
  });

  test("has its own word for every family, disease and pest of the tables, and the same advice", () => {
    for (const { family, name } of rotationRules) {
      expect(words.family(family), family).not.toBe(family);
      expect(words.family(family), family).not.toBe(name);
      const told = words.rotation({ bed, crops: [], family, gap: 1, years: 3 }, settings);
      expect(told, family).toMatch(
        /schon im Jahr nach den letzten \p{Lu}\p{L}+n; .+, drei Jahre Pause sind ratsam\.$/u,
      );
    }
    const years: Readonly<Record<number, string>> = { 6: "sechs Jahre", 7: "sieben Jahre", 8: "acht Jahre" };
    for (const { name, years: n } of soilDiseases) {
      const told = words.diseaseSeen(name, [bed]);
      expect(told, name).not.toContain(name);
      expect(told, name).toContain(years[n]);
      expect(told, name).toContain("Langes Beet");
    }
    // What may be done about clubroot, and what lime cannot do.
    expect(words.diseaseSeen("clubroot", [bed])).toMatch(
      /Kohlfamilie .*Stiefeln .*pH 7,2 hält sie nieder und tötet sie nicht/u,
    );
    for (let row = 0; row < airborne.length; row += 1) expect(words.noCure(row, ["Blattläuse"])).not.toBe("");
  });

  test("claims no more of a trial than its numbers allow", () => {
    const found = { what: "too few", higher: "mit Netz", p: 0.1, smallestP: 0.1, isClean: true } as const;
    const facts: TellsFacts = {
      kind: "weight of one",
      plotKind: "row",
      n: 3,
      m: 3,
      often: true,
      seasons: 1,
      fewest: 4,
      found: { ...found, needed: 8 },
    };
    const tells = (more: Partial<TellsFacts>) => plain(trialWords(settings).tells({ ...facts, ...more }, settings));
    expect(tells({})).toBe(
      "Das entscheidet noch nichts (Reihen: drei gegen drei): selbst eine saubere Trennung kommt bei so wenigen durch Zufall einmal in zehn Fällen vor. Um einen Unterschied dieser Größe zu zeigen, braucht es, so ungleich, wie sie sind, etwa acht Reihen je Seite.",
    );
    const one = { n: 1, m: 1, found: { ...found, what: "alone" } } as const;
    expect(tells(one)).toBe(
      "Eine Reihe je Seite ist eins gegen eins, so oft auch geerntet wurde, und entscheidet nichts. Erst vier Reihen je Seite, im Wechsel, könnten etwas zeigen.",
    );
    expect(tells({ ...one, often: false, plotKind: "bed" })).toBe(
      "Ein Beet je Seite ist eins gegen eins und entscheidet nichts. Erst vier Beete je Seite, im Wechsel, könnten etwas zeigen.",
    );
    expect(tells({ ...one, n: 3, often: false })).toContain("Das entscheidet nichts (Reihen: drei gegen eine).");
    expect(tells({ ...one, hindrance: "days apart", found: undefined })).toMatch(
      /^Geerntet wurde zu weit auseinander, als dass es sich vergleichen ließe\. Eine Reihe je Seite/,
    );
    const ahead = { ...found, what: "stands out", p: 0.02, interval: [120, 480] } as const;
    expect(tells({ found: ahead })).toBe(
      "Vorn liegt: mit Netz (Reihen: drei gegen drei); ein solcher Unterschied kommt durch Zufall nur einmal in 50 Fällen vor; der wahre Abstand kann irgendwo zwischen 120 g und 480 g liegen. Das gilt für einen Garten und ein Jahr.",
    );
    expect(tells({ kind: "share", word: "damaged", found: { ...ahead, interval: undefined } })).toMatch(
      /^Mehr war beschädigt bei: mit Netz/,
    );
    expect(tells({ found: { ...found, what: "chance", p: 0.41, needed: 90_000 } })).toBe(
      "Der Unterschied hebt sich nicht vom Zufall ab (Reihen: drei gegen drei); ein solcher kommt durch Zufall in vier von zehn Fällen vor. Einen so kleinen Unterschied kann kein Garten zeigen: so ungleich, wie sie sind, brauchte es etwa 90.000 Reihen je Seite.",
    );
  });

  test("tells the arms of a trial by their rows and days", () => {
    const arm = {
      name: "mit Netz",
      kind: "weight of one",
      mean: 783,
      eachPlant: false,
      total: 4700,
      figures: 3,
      leftOut: 2,
      pieces: 6,
      plots: 2,
      plotKind: "row",
      unit: "head",
      span: { from: "2026-06-20", to: "2026-07-11" },
    } as const;
    expect(plain(trialWords(settings).figures([arm], undefined, settings))).toBe(
      "Mit Netz: im Mittel 783 g je Kopf bei zwei Reihen, sechs Köpfe in drei Ernten, vom 20. Juni bis 11. Juli, zwei Ernten zu anderer Zeit nicht mitgezählt.",
    );
    const height = { ...arm, kind: "height", mean: 30, plots: 1, span: undefined } as const;
    expect(plain(trialWords(settings).figures([height], "2026-07-20", settings))).toBe(
      "Am 20. Juli: mit Netz: 30 cm hoch.",
    );
  });
});
