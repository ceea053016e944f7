/** A garden on the day of a large tour: many stops, each with far more to show than a film can hold. The same on every machine. */
import { addDays } from "../../src/calendar.ts";
import type { Garden } from "../../src/model.ts";
import { readRecords } from "../../src/records/index.ts";
import { growGarden } from "../../src/timeline/index.ts";

export const tourDay = "2026-07-18";

const CROPS = ["tomato", "leek", "carrot", "squash", "dahlia", "lettuce", "onion", "kale", "beetroot", "pea", "cosmos"];
const NAMES = [
  "Amber",
  "Beacon",
  "Copper",
  "Dusky",
  "Ember",
  "Frosted",
  "Garland",
  "Harbour",
  "Ivory",
  "Jester",
  "Kestrel",
];

/** Eleven varieties a bed give about 38 candidates a stop. */
export async function busyTour(beds: number, targetMinutes: number): Promise<Garden> {
  const files = new Map<string, string>([
    [
      "garden.md",
      "---\nname: Busy\ntime zone: Europe/London\nlanguage: en-GB\nplace: {latitude: 52, longitude: -1}\n---\n",
    ],
    ["episodes/june/index.md", tour("2026-06-13", beds, "status: published\n")],
    ["episodes/july/index.md", tour(tourDay, beds, `status: planned\ntarget: ${targetMinutes} min\n`)],
  ]);
  for (let bed = 0; bed < beds; bed += 1) {
    files.set(
      `beds/bed-${bed}.md`,
      `---\ntitle: Bed ${bed}\nplan: {x: ${(bed * 7) % 31}, y: ${(bed * 13) % 29}}\nfacing: ${(bed * 45) % 360}\nshade: ["wall to the east, ${1 + (bed % 3)} m high, 2 m away"]\n---\n`,
    );
    for (const [at, crop] of CROPS.entries()) {
      files.set(
        `varieties/v-${bed}-${at}.md`,
        `---\ntitle: ${NAMES[at]} ${bed}\ncrop: ${crop}\ndays to maturity: ${60 + at * 9} from planting\n---\n`,
      );
    }
  }
  for (const [days, lines] of STORY) {
    const all: string[] = [];
    for (let bed = 0; bed < beds; bed += 1) {
      for (const at of CROPS.keys()) all.push(...lines({ name: `${NAMES[at]} ${bed}`, bed: `Bed ${bed}`, at }));
    }
    const day = addDays(tourDay, -days);
    if (all.length > 0) files.set(`notes/${day}.md`, `${all.map((line) => `- ${line}`).join("\n")}\n`);
  }
  const folder = {
    list: async () => [...files.keys()].sort(),
    read: async (file: string) => new TextEncoder().encode(files.get(file) ?? ""),
  };
  return growGarden(await readRecords(folder, { today: tourDay }), []);
}

function tour(date: string, beds: number, more: string): string {
  const stops = Array.from({ length: beds }, (_, bed) => `bed-${bed}`).join(", ");
  return `---\ntitle: Tour\ndate: ${date}\n${more}stops: [${stops}]\n---\n`;
}

interface Line {
  readonly name: string;
  readonly bed: string;
  readonly at: number;
}

/** By days before the tour. */
const STORY: readonly (readonly [days: number, lines: (line: Line) => readonly string[]])[] = [
  [430, ({ name, bed }) => [`planted 6 ${name} in ${bed}`]],
  [360, ({ name, bed, at }) => (at % 2 === 0 ? [`picked 800 g ${name} from ${bed}`] : [])],
  [300, ({ name, bed }) => [`cleared ${name} from ${bed}`]],
  [85, ({ name, bed, at }) => (at < 8 ? [`planted 12 ${name} in ${bed}, row ${at + 1}`] : [])],
  [50, ({ name, bed, at }) => (at === 0 ? [`picked 500 g ${name} from ${bed}`] : [])],
  [
    20,
    ({ name, bed, at }) =>
      at >= 8 ? [`planted 8 ${name} in ${bed}, row ${at + 1}`] : [`lost 1 ${name} to slugs, in ${bed}`],
  ],
  [16, ({ name, bed, at }) => (at % 3 === 1 ? [`first flower: ${name} in ${bed}`] : [])],
  [12, ({ name, bed, at }) => (at % 2 === 0 && at < 8 ? [`picked 1.${at} kg ${name} from ${bed}`] : [])],
  [9, ({ name, bed, at }) => (at < 8 ? [`measured ${name} ${20 + at} cm tall, in ${bed}`] : [])],
  [6, ({ name, bed, at }) => (at % 4 === 0 ? [`trouble: aphids on ${name} in ${bed}`] : [])],
  [3, ({ name, bed, at }) => (at < 7 ? [`tied in ${name} in ${bed}`] : [])],
];
