/**
 * Forecasts in made-up gardens: a season held out, windows asked for on the first day and again when the likely day has passed
 * without anything. Beside ours stands a window of the same width about the packet's own day.
 */
import { noWeather } from "../../src/almanac/index.ts";
import { addDays, daysBetween } from "../../src/calendar.ts";
import { allTimed, forecaster, seasonBook } from "../../src/season/index.ts";
import { type Chance, chance } from "./chance.ts";
import { MadeNotes } from "./made-garden.ts";
import { percent, type TruthRow } from "./table.ts";

interface World {
  readonly name: string;
  /** Spread of the logarithm by which crops, seasons and plantings differ from the packet. */
  readonly crop: number;
  readonly season: number;
  readonly planting: number;
  /** Seasons before the one held out, and plantings of each crop in each. */
  readonly seasons: number;
  readonly plantings: number;
}

const worlds: readonly World[] = [
  {
    name: "crops 15 % off, four seasons",
    crop: 0.15,
    season: 0.05,
    planting: 0.1,
    seasons: 4,
    plantings: 2,
  },
  { name: "crops 25 % off, one season", crop: 0.25, season: 0.05, planting: 0.1, seasons: 1, plantings: 1 },
  { name: "warm and cold years, 15 %", crop: 0.1, season: 0.15, planting: 0.05, seasons: 4, plantings: 2 },
  {
    name: "crops 30 % off, plantings 20 %",
    crop: 0.3,
    season: 0.05,
    planting: 0.2,
    seasons: 2,
    plantings: 1,
  },
  { name: "packet right", crop: 0, season: 0.02, planting: 0.04, seasons: 4, plantings: 2 },
  {
    name: "first season, packet 25 % off",
    crop: 0.25,
    season: 0.05,
    planting: 0.1,
    seasons: 0,
    plantings: 2,
  },
];

const crops = [
  ["tomato", 75, "planting", "05-25"],
  ["squash", 95, "planting", "05-28"],
  ["french bean", 55, "sowing", "05-20"],
  ["carrot", 75, "sowing", "04-20"],
  ["beetroot", 60, "sowing", "04-25"],
  ["lettuce", 50, "sowing", "04-10"],
  ["potato", 95, "planting", "04-08"],
  ["pea", 65, "sowing", "03-25"],
] as const;

/** Windows are made to hold four in five; a season that is cold for all its plantings at once costs some. */
const least = 0.75;
/** What a window of the same width about the packet's own day may hold more, where the packet is right or nothing was learned. */
const packetAhead = 0.02;
const gardens = 60;
const heldOut = 2026;
const today = "2027-03-01";

export async function forecastRows(): Promise<readonly TruthRow[]> {
  const rows: TruthRow[] = [];
  for (const [at, world] of worlds.entries()) rows.push(...(await rowsOf(world, chance(4711 + at))));
  return rows;
}

async function rowsOf(world: World, random: Chance): Promise<readonly TruthRow[]> {
  const asked = { first: [0, 0], late: [0, 0], packet: [0, 0], packetLate: [0, 0] } as Record<
    "first" | "late" | "packet" | "packetLate",
    [number, number]
  >;
  const count = (of: keyof typeof asked, inside: boolean) => {
    asked[of][0] += inside ? 1 : 0;
    asked[of][1] += 1;
  };
  let [width, lateWidth] = [0, 0];
  for (let run = 0; run < gardens; run += 1) {
    const book = seasonBook(await madeGarden(world, random), noWeather, today);
    const forecast = forecaster(book);
    for (const one of allTimed(book)) {
      const { begun, reached, catalogueDays } = one;
      if (!begun.startsWith(String(heldOut)) || reached === undefined) continue;
      const { from, likely, to } = forecast(one, begun);
      count("first", reached >= from && reached <= to);
      const days = daysBetween(from, to);
      width += days;
      count("packet", Math.abs(daysBetween(addDays(begun, catalogueDays), reached)) <= days / 2);
      const late = addDays(begun, Math.round(1.05 * daysBetween(begun, likely)));
      if (reached <= late) continue;
      const again = forecast(one, late);
      count("late", reached >= again.from && reached <= again.to);
      // The packet's own window, as wide, is where it was: it knows nothing of having waited.
      const half = daysBetween(again.from, again.to) / 2;
      count("packetLate", Math.abs(daysBetween(addDays(begun, catalogueDays), reached)) <= half);
      lateWidth += 2 * half;
    }
  }
  const share = (of: keyof typeof asked) => asked[of][0] / asked[of][1];
  const [first, late] = [share("first"), share("late")];
  const against = "made-up gardens, season held out";
  return [
    {
      quantity: `forecast window holds: ${world.name}`,
      cases: asked.first[1],
      found: `${percent(first)} in ${Math.round(width / asked.first[1])} days (packet ${percent(share("packet"))})`,
      against,
      goal: `at least ${percent(least)}, and the packet's less ${percent(packetAhead)}`,
      met: first >= least && first >= share("packet") - packetAhead,
    },
    {
      quantity: "  asked when the likely day had passed",
      cases: asked.late[1],
      found: `${percent(late)} in ${Math.round(lateWidth / asked.late[1])} days (packet ${percent(share("packetLate"))})`,
      against,
      goal: `at least ${percent(least)}, and the packet's`,
      met: late >= least && late >= share("packetLate"),
    },
  ];
}

async function madeGarden(world: World, { normal, whole }: Chance) {
  const notes = new MadeNotes();
  notes.record("beds/long-bed.md", { title: "Long Bed" });
  const biases = crops.map(() => world.crop * normal());
  for (let year = heldOut - world.seasons; year <= heldOut; year += 1) {
    const ofYear = world.season * normal();
    crops.forEach(([crop, days, from, day], at) => {
      for (let planting = 0; planting < world.plantings; planting += 1) {
        const title = `Kind${at}x${planting}`;
        notes.record(`varieties/${title.toLowerCase()}.md`, {
          title,
          crop,
          "days to maturity": `${days} from ${from}`,
        });
        const begun = addDays(`${year}-${day}`, planting * 10 + whole(0, 5));
        const log = (biases[at] ?? 0) + ofYear + world.planting * normal();
        const reached = addDays(begun, Math.max(5, Math.round(days * Math.exp(log))));
        notes.line(begun, `${from === "sowing" ? "sowed 20" : "planted 6 bought"} ${title} in Long Bed`);
        notes.line(reached, `picked 1 kg ${title} from Long Bed`);
        notes.line(addDays(reached, 1), `cleared ${title} from Long Bed`);
      }
    });
  }
  return notes.garden(today);
}
