/** Best and worst in made-up gardens whose plants truly gave more or less than the year before, finished and still picked. */
import { noWeather } from "../../src/almanac/index.ts";
import { seasonBook } from "../../src/season/index.ts";
import { standings } from "../../src/season/standings.ts";
import { chance } from "./chance.ts";
import { MadeNotes } from "./made-garden.ts";
import type { TruthRow } from "./table.ts";

const gardens = 150;
const kinds = 8;
const today = "2026-08-20";

export async function standingRows(): Promise<readonly TruthRow[]> {
  const random = chance(2718);
  let [told, wrong] = [0, 0];
  for (let run = 0; run < gardens; run += 1) {
    const notes = new MadeNotes();
    notes.record("beds/a.md", { title: "Bed A" });
    const ratios = new Map<string, number>();
    for (let kind = 0; kind < kinds; kind += 1) {
      const title = `Kind ${String.fromCharCode(65 + kind)}`;
      const id = title.toLowerCase().replace(" ", "-");
      notes.record(`varieties/${id}.md`, { title, crop: "courgette" });
      const plants = [random.whole(1, 12), random.whole(1, 12)] as const;
      const each = [1 + 3 * random.next(), 1 + 3 * random.next()] as const;
      const gave = plants.map((n, at) => Number((n * (each[at] ?? 0)).toFixed(2)));
      ratios.set(id, (gave[1] ?? 0) / plants[1] / ((gave[0] ?? 1) / plants[0]));
      for (const [at, year] of [2025, 2026].entries()) {
        notes.line(`${year}-05-25`, `planted ${plants[at]} bought ${title} in Bed A`);
        notes.line(`${year}-08-01`, `picked ${gave[at]} kg ${title} from Bed A`);
        // Of this year's every other is still picked.
        if (year === 2025 || kind % 2 === 0) notes.line(`${year}-08-15`, `cleared ${title} from Bed A`);
      }
    }
    const book = seasonBook(await notes.garden(today), noWeather, today);
    const season = book.seasons.at(-1);
    if (season === undefined) throw new Error("no season was read");
    const { best, worst } = standings(book, season, season.from, today);
    told += best.length + worst.length;
    wrong += best.filter(({ variety }) => (ratios.get(variety) ?? 0) < 1).length;
    wrong += worst.filter(({ variety }) => (ratios.get(variety) ?? 0) > 1).length;
  }
  return [
    {
      quantity: "best and worst told against what each plant truly gave",
      cases: told,
      found: `${wrong} the wrong way round`,
      against: "made-up gardens, two years of unequal numbers of plants",
      goal: "none",
      met: wrong === 0,
    },
  ];
}
