/**
 * A garden far larger than anybody's, for measuring: the same bytes for the same size on every machine.
 */
import { mkdirSync, writeFileSync } from "node:fs";
import path from "node:path";

export interface GardenSize {
  readonly seasons: number;
  readonly notes: number;
  readonly logLines: number;
  readonly beds: number;
  readonly varieties: number;
  /** Published films, each walking past STOPS beds. */
  readonly episodes?: number;
  /** Whether every film has captions. */
  readonly captioned?: boolean;
}

/** Ten seasons: 20,000 log lines in 6,000 notes, 300 beds, 2,000 varieties. */
export const LARGE: GardenSize = { seasons: 10, notes: 6000, logLines: 20_000, beds: 300, varieties: 2000 };

/** The same garden at a quarter, seasons kept. */
export const QUARTER: GardenSize = { seasons: 10, notes: 1500, logLines: 5000, beds: 75, varieties: 500 };

/** And at a sixteenth. */
export const SIXTEENTH: GardenSize = { seasons: 10, notes: 375, logLines: 1250, beds: 19, varieties: 125 };

/** Twenty seasons, which is as far as anybody's records are thought of here, and the same at a quarter and a sixteenth. */
export const TWENTY_SEASONS: readonly GardenSize[] = [
  { seasons: 20, notes: 1125, logLines: 3750, beds: 19, varieties: 250, episodes: 38 },
  { seasons: 20, notes: 4500, logLines: 15_000, beds: 75, varieties: 1000, episodes: 150 },
  { seasons: 20, notes: 18_000, logLines: 60_000, beds: 300, varieties: 4000, episodes: 600 },
];

const CROPS = ["tomato", "leek", "carrot", "pumpkin", "dahlia", "lettuce", "onion", "kale", "beetroot", "pea"];
const FIRST = ["Amber", "Blue", "Copper", "Dusky", "Early", "Frosted", "Giant", "Honey", "Ivory", "Jolly"];
const SECOND = ["Anchor", "Beacon", "Candle", "Drummer", "Ember", "Feather", "Garland", "Harbour", "Island", "Jester"];
const THIRD = [
  "",
  " Prize",
  " Wonder",
  " Self",
  " Select",
  " Star",
  " Market",
  " Queen",
  " Improved",
  " Dwarf",
  " Noir",
  " Rose",
  " Late",
  " Tall",
  " Gold",
  " Mist",
  " Red",
  " Sweet",
  " Keeper",
  " Pearl",
];
const STORY = [
  "A dry wind from the east all day and the cans were empty by noon.",
  "The blackbird has learnt the net and waits on the post until I go.",
  "Talked over the fence about manure, and came home with a bag of it.",
  "Nothing else stirred. The soil is warm two knuckles down.",
];

type Write = (file: string, text: string) => void;

export function writeLargeGarden(dir: string, size: GardenSize): void {
  const write: Write = (file, text) => {
    mkdirSync(path.dirname(path.join(dir, file)), { recursive: true });
    writeFileSync(path.join(dir, file), text);
  };
  write("garden.md", "---\nname: A very large garden\ntime zone: Europe/London\nlanguage: en-GB\nunits: metric\n---\n");
  for (let i = 0; i < size.beds; i += 1) {
    write(
      `beds/bed-${i}.md`,
      `---\ntitle: ${bedName(i)}\nsize: 4 x 1.2 m\nplan: { x: ${i % 20}, y: ${Math.floor(i / 20)} }\n---\n`,
    );
  }
  for (let i = 0; i < size.varieties; i += 1) {
    write(
      `varieties/${varietyName(i).toLowerCase().replace(/ /g, "-")}.md`,
      `---\ntitle: ${varietyName(i)}\ncrop: ${crop(i)}\nsource: { name: Drift Lane Seeds, obtained: bought }\ndays to maturity: ${60 + (i % 50)} from planting\n---\n`,
    );
  }
  writeEpisodes(write, size);
  const perSeason = size.notes / size.seasons;
  const perBed = perSeason / size.beds;
  let left = size.logLines;
  for (let note = 0; note < size.notes; note += 1) {
    const lines = Math.ceil(left / (size.notes - note));
    left -= lines;
    const season = Math.floor(note / perSeason);
    const bed = note % size.beds;
    // The first half of a bed's notes sows and raises, the second half picks and clears.
    const visit = Math.floor((note % perSeason) / size.beds);
    const spring = visit < perBed / 2;
    const day = dayOf(2017 + season, (note % perSeason) / perSeason);
    const variety = varietyIn(bed, season, size);
    const said = {
      variety: `${varietyName(variety)} ${crop(variety)}`,
      bed: bedName(bed),
      n: note,
      year: 2017 + season,
    };
    const text = (spring ? SPRING : AUTUMN).slice(0, lines).map((line) => `- ${line(said)}`);
    write(
      `notes/${day.slice(0, 4)}/${day}-${note}.md`,
      `---\nbed: ${bedName(bed)}\n---\n\n${STORY[note % STORY.length]}\n\n${text.join("\n")}\n\n${STORY[(note + 1) % STORY.length]}\n`,
    );
  }
}

interface Said {
  readonly variety: string;
  readonly bed: string;
  readonly n: number;
  readonly year: number;
}

/** Lines follow one another as a bed's season does; the longer a note, the further down the list it goes. */
const SPRING: readonly ((said: Said) => string)[] = [
  ({ variety, bed, n }) => `sowed ${12 + (n % 20)} ${variety} in ${bed}, 2 rows`,
  ({ n, year }) => `to do by ${dayOf(year, 0.5 + (n % 9) / 20)}: net the row`,
  ({ variety }) => `up: ${variety}, patchy at the far end`,
  () => "did: watered and hoed between the rows",
];

const AUTUMN: readonly ((said: Said) => string)[] = [
  ({ variety, n, bed }) => `picked 1.${n % 10} kg ${variety} from ${bed}`,
  ({ variety, n }) => `measured ${variety} ${10 + (n % 60)} cm tall`,
  ({ variety, bed }) => `cleared ${variety} from ${bed}`,
  ({ variety }) => `done: net the row of ${variety}`,
];

/** Stops of a film, and seconds at each. */
const STOPS = 8;
const STOP_SECONDS = 40;

function writeEpisodes(write: Write, { episodes = 0, captioned = false, ...size }: GardenSize): void {
  for (let film = 0; film < episodes; film += 1) {
    const season = Math.floor((film * size.seasons) / episodes);
    const day = dayOf(2017 + season, ((film * size.seasons) / episodes) % 1);
    const stops = Array.from({ length: STOPS }, (_, stop) => ({
      bed: (film * STOPS + stop * 3) % size.beds,
      at: 5 + stop * STOP_SECONDS,
    }));
    const listed = stops.map(({ bed, at }) => `  - {bed: bed-${bed}, at: "${clock(at)}"}\n`);
    write(
      `episodes/film-${film}/index.md`,
      `---\ntitle: Walk number ${film + 1}\ndate: ${day}\npublished: ${day}\nstatus: published\n` +
        `link: https://films.example/walks/${film + 1}\nstops:\n${listed.join("")}---\n`,
    );
    if (!captioned) continue;
    const spoken = stops.flatMap(({ bed, at }) =>
      sayStop(bed, season, size).map((text, line) => {
        const from = at + line * 4;
        return `00:${clock(from)}.000 --> 00:${clock(from + 4)}.000\n${text}\n`;
      }),
    );
    write(`episodes/film-${film}/captions.vtt`, `WEBVTT\n\n${spoken.join("\n")}`);
  }
}

/** Lines of four seconds. */
function sayStop(bed: number, season: number, size: GardenSize): readonly string[] {
  const variety = varietyIn(bed, season, size);
  return [
    `This is ${bedName(bed)}, and it has been`,
    "a dry fortnight, so I watered it twice.",
    `What you see here is ${varietyName(variety)},`,
    `a ${crop(variety)} that came from a swap table.`,
    "I sowed two rows of it and thinned them late.",
    "The far end is patchy, and that was the slugs.",
    "I'll show you again when there is more to see.",
    `Next to it I would try ${varietyName((variety + 1) % size.varieties)}`,
    "if I had the room for another row.",
    "Mind the hose, we are going round the corner.",
  ];
}

/** "04:05" */
function clock(seconds: number): string {
  return `${String(Math.floor(seconds / 60)).padStart(2, "0")}:${String(seconds % 60).padStart(2, "0")}`;
}

function varietyIn(bed: number, season: number, size: GardenSize): number {
  return (bed * 7 + season * 13) % size.varieties;
}

function bedName(i: number): string {
  return `${SECOND[i % 10]} Bed ${FIRST[Math.floor(i / 10) % 10]} ${1 + Math.floor(i / 100)}`;
}

function varietyName(i: number): string {
  return `${FIRST[i % 10]} ${SECOND[Math.floor(i / 10) % 10]}${THIRD[Math.floor(i / 100) % 20]}`;
}

function crop(i: number): string {
  return CROPS[i % CROPS.length] as string;
}

/** A day of the growing year, by the share of it that has gone. */
function dayOf(year: number, share: number): string {
  return new Date(Date.UTC(year, 1, 1) + Math.floor(share * 300) * 86_400_000).toISOString().slice(0, 10);
}
