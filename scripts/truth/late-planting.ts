/** Late beginnings: the last day to sow before frost, and maize that needs less warmth the later it is planted. */
import { CAPPED_86_50, type CountBack, countBackDays, gardenWeather, heatOfDay } from "../../src/almanac/index.ts";
import { addDays, daysBetween, monthOf } from "../../src/calendar.ts";
import { celsiusOf } from "../../src/measures.ts";
import type { Day } from "../../src/model.ts";
import { allTimed, forecaster, seasonBook } from "../../src/season/index.ts";
import { chance } from "./chance.ts";
import { MadeNotes } from "./made-garden.ts";
import { percent, type TruthRow } from "./table.ts";

export async function latePlantingRows(): Promise<readonly TruthRow[]> {
  return [countedBack(), ...(await Promise.all([15, 30].map(plantedLate)))];
}

/** Days counted back from the first frost, worked out by hand from the formula. */
const countBacks: readonly (readonly [crop: CountBack, days: number])[] = [
  [{ daysToMaturity: 40 }, 54],
  [{ daysToMaturity: 55, harvestDays: 14, frostTender: true }, 97],
  [{ daysToMaturity: 50, daysRaised: 28 }, 92],
  [{ daysToMaturity: 55, harvestDays: 14 }, 83],
];

function countedBack(): TruthRow {
  const apart = Math.max(...countBacks.map(([crop, days]) => Math.abs(countBackDays(crop) - days)));
  return {
    quantity: "last day to sow before frost",
    cases: countBacks.length,
    found: `${apart} days`,
    against: "Virginia Coop. Ext. 426-334: turnip, snap bean, broccoli, kale, worked out by hand",
    goal: "none",
    met: apart === 0,
  };
}

/** Degree days of Fahrenheit from planting to black layer, and how many fewer for each day planted after 1 May. */
const need = 2700;
const lessADay = 6.8;
/** Highest and lowest by month in central Indiana, °F (from memory): only a climate to plant in. */
const normals = [
  [32, 17],
  [37, 21],
  [49, 30],
  [62, 40],
  [73, 51],
  [82, 61],
  [84, 64],
  [83, 62],
  [77, 54],
  [64, 43],
  [49, 33],
  [37, 23],
] as const;
/** °F by which a year is warmer or colder than usual; in the coldest, late maize isn't ripe by winter. */
const yearSpread = 1;
const firstYear = 2022;
const lastYear = 2026;

/** By day: highest and lowest, °F. */
function madeWeather(climate: number): ReadonlyMap<Day, readonly [high: number, low: number]> {
  const random = chance(31 + climate);
  const days = new Map<Day, readonly [number, number]>();
  for (let year = firstYear; year <= lastYear; year += 1) {
    const apart = yearSpread * random.normal();
    for (let day = `${year}-01-01`; day <= `${year}-12-31`; day = addDays(day, 1)) {
      const [high, low] = normals[monthOf(day) - 1] ?? normals[0];
      days.set(day, [high + apart, low + apart]);
    }
  }
  return days;
}

/** The day on which maize planted on a day is ripe, by Purdue's rule; the day of planting does not count. */
function ripe(weather: ReadonlyMap<Day, readonly [number, number]>, planted: Day): Day | undefined {
  const late = Math.max(0, daysBetween(`${planted.slice(0, 4)}-05-01`, planted));
  let left = (need - late * lessADay) / 1.8;
  let day = planted;
  while (left > 0) {
    day = addDays(day, 1);
    const found = weather.get(day);
    if (found === undefined || day.slice(0, 4) > planted.slice(0, 4)) return undefined;
    const [high, low] = found;
    left -= heatOfDay(celsiusOf(high), celsiusOf(low), CAPPED_86_50);
  }
  return day;
}

/** Gardens of other years each. */
const climates = 40;

/** Shown without a goal: a forecast does not know that maize needs less warmth when it is planted late, and tells it too late. */
async function plantedLate(days: number): Promise<TruthRow> {
  let [late, width, held, ripened] = [0, 0, 0, 0];
  for (let climate = 0; climate < climates; climate += 1) {
    const one = await forecastLate(days, climate);
    if (one === undefined) continue;
    ripened += 1;
    late += one.late;
    width += one.width;
    if (one.held) held += 1;
  }
  return {
    quantity: `maize planted ${days} days after 1 May, learned from plantings of 1 May`,
    cases: ripened,
    found: `${percent(held / ripened)} in ${Math.round(width / ripened)} days, the likely day ${Math.abs(late / ripened).toFixed(0)} days too ${late >= 0 ? "late" : "early"} on average`,
    against: `Purdue Univ. (Nielsen): 2,700 °F days less 6.8 a day, ${(need - days * lessADay).toFixed(0)}; in made-up years`,
    goal: "",
  };
}

/** A garden whose four seasons of maize were planted on 1 May, and the fifth so many days later. */
async function forecastLate(days: number, climate: number) {
  const weather = madeWeather(climate);
  const notes = new MadeNotes();
  notes.record("beds/long-bed.md", { title: "Long Bed" });
  notes.record("varieties/dent.md", { title: "Dent", crop: "sweetcorn", "days to maturity": "136 from planting" });
  for (let year = firstYear; year < lastYear; year += 1) {
    const planted = `${year}-05-01`;
    notes.line(planted, "planted 20 bought Dent in Long Bed");
    const picked = ripe(weather, planted) ?? `${year}-12-30`;
    notes.line(picked, "picked 20 Dent from Long Bed");
    notes.line(addDays(picked, 1), "cleared Dent from Long Bed");
  }
  const planted = addDays(`${lastYear}-05-01`, days);
  notes.line(planted, "planted 20 bought Dent in Long Bed");
  const today = `${lastYear}-12-31`;
  const rows = [...weather].map(([day, [high, low]]) => `${day},${high.toFixed(1)},${low.toFixed(1)}`);
  const text = ["date,tmax_f,tmin_f", ...rows].join("\n");
  const book = seasonBook(
    await notes.garden(planted),
    gardenWeather([{ file: "weather/made.csv", text }], { latitude: 40.4, longitude: -86.9 }, today),
    planted,
  );
  const one = allTimed(book).find(({ begun }) => begun === planted);
  if (one === undefined) throw new Error("no planting was read");
  const { from, likely, to } = forecaster(book)(one, planted);
  const truth = ripe(weather, planted);
  if (truth === undefined) return undefined;
  return { late: daysBetween(truth, likely), width: daysBetween(from, to), held: truth >= from && truth <= to };
}
