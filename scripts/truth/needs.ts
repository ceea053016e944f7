/** Needs: what made-up plants truly gave, the failed ones with them; handbook ranges; what goes into jars. */

import { canningFactFor, canningFacts, gramsForJars, noWeather, plantYield } from "../../src/almanac/index.ts";
import { gramsPerPound } from "../../src/measures.ts";
import { seasonBook } from "../../src/season/index.ts";
import { needs } from "../../src/season/needs.ts";
import { chance } from "./chance.ts";
import { MadeNotes } from "./made-garden.ts";
import { percent, type TruthRow } from "./table.ts";

const gardens = 300;
const goalKilograms = 1000;

export async function needRows(): Promise<readonly TruthRow[]> {
  return [await ownYields(), handbooks(), jars(), strangers()];
}

/** Seasons of known yields, some of them lost altogether: the plants reckoned against the plants it truly takes. */
async function ownYields(): Promise<TruthRow> {
  const random = chance(99);
  let worst = 0;
  for (let run = 0; run < gardens; run += 1) {
    const notes = new MadeNotes();
    notes.record("garden.md", {
      name: "Made",
      "time zone": "Europe/London",
      language: "en-GB",
      goals: `[${goalKilograms} kg of courgettes]`,
    });
    notes.record("beds/a.md", { title: "Bed A" });
    notes.record("varieties/kestrel.md", { title: "Kestrel", crop: "courgette" });
    let [plants, kilograms] = [0, 0];
    for (let year = 2022; year <= 2025; year += 1) {
      const set = random.whole(4, 14);
      const failed = year > 2022 && random.next() < 0.3;
      const gave = failed ? 0 : Math.round(10 * set * (2 + random.next())) / 10;
      plants += set;
      kilograms += gave;
      notes.line(`${year}-05-25`, `planted ${set} bought Kestrel in Bed A`);
      if (failed) notes.line(`${year}-06-20`, `lost ${set} Kestrel to slugs`);
      else notes.line(`${year}-08-01`, `picked ${gave} kg Kestrel from Bed A`);
      notes.line(`${year}-10-01`, "cleared Kestrel from Bed A");
    }
    // Still picked this season: has no yield yet.
    notes.line("2026-05-25", "planted 10 bought Kestrel in Bed A");
    notes.line("2026-07-10", "picked 0.2 kg Kestrel from Bed A");
    const [need] = needs(seasonBook(await notes.garden("2026-07-18"), noWeather, "2026-07-18"));
    const truth = (goalKilograms * plants) / kilograms;
    worst = Math.max(worst, Math.abs((need?.plants?.usual ?? 0) - truth) / truth);
  }
  return {
    quantity: "plants needed, from own seasons",
    cases: gardens,
    found: percent(worst),
    against: "made-up gardens, failed and unfinished plantings too",
    goal: "rounding, 0.5 %",
    met: worst <= 0.005,
  };
}

/** Pounds a plant as extension sheets tell them (from memory), each within the range that is reckoned with. */
const byThePlant: readonly (readonly [crop: string, pounds: number])[] = [
  ["tomato", 2],
  ["tomato", 10],
  ["tomato", 15],
  ["courgette", 5],
  ["courgette", 9],
  ["cucumber", 4],
  ["aubergine", 4],
  ["pepper", 2],
];

function handbooks(): TruthRow {
  const outside = byThePlant.filter(([crop, pounds]) => {
    const range = plantYield(crop, "grams")?.value;
    const grams = pounds * gramsPerPound;
    return range === undefined || grams < range.low || grams > range.high;
  });
  return {
    quantity: "yields a plant outside the handbooks' range told",
    cases: byThePlant.length,
    found: String(outside.length),
    against: "extension sheets, by the plant (from memory)",
    goal: "none",
    met: outside.length === 0,
  };
}

/** Pounds for a canner load that were seen in the guide; the others of its rows are from memory. */
const seen: readonly (readonly [product: string, quarts: number, pints: number])[] = [
  ["tomatoes", 21, 13],
  ["green beans", 14, 9],
];

function jars(): TruthRow {
  const off = seen.flatMap(([product, quarts, pints]) => {
    const fact = canningFacts.find((row) => row.product === product);
    if (fact === undefined) return [Number.POSITIVE_INFINITY];
    const pounds = (jar: number, size: "quart" | "pint") => gramsForJars(fact, jar, size) / gramsPerPound;
    return [Math.abs(pounds(7, "quart") - quarts), Math.abs(pounds(9, "pint") - pints)];
  });
  return {
    quantity: "produce for a canner load, pounds",
    cases: off.length,
    found: Math.max(...off).toFixed(6),
    against: "USDA Complete Guide (rows seen; the others say that they are from memory)",
    goal: "0.000001",
    met: off.every((one) => one < 1e-6),
  };
}

/** Products that are none of the table's, though words of the table are in them. */
const strange =
  "cranberry sauce, chilli sauce, sauce, cornichons, pineapple, sweet peas, tomato soup, tomato ketchup, tomato chutney, peach jam, baked beans, broad beans, runner beans, pickled beetroot, peanuts, corn relish, apple butter, peas and carrots, bean sprouts, carrot cake".split(
    ", ",
  );

function strangers(): TruthRow {
  const taken = strange.filter((what) => canningFactFor(what) !== undefined);
  return {
    quantity: "unknown products that get a figure",
    cases: strange.length,
    found: String(taken.length),
    against: "names made up of the table's words",
    goal: "none",
    met: taken.length === 0,
  };
}
