/**
 * Cautions for what is shown: a person's own, the hazard table's for the plants and for the work that is told. They are
 * short reminders and no advice of their own: each defers to a poison centre, a label, a tested recipe or local rules.
 */

import { type Ground, inItsEnglish, type Sentence, say, sentencesOf } from "../../language/index.ts";
import type { Bed, Crop, Event, GardenSettings, Variety } from "../../model.ts";
import { plantHazardsOf } from "./find-plant-hazards.ts";
import type { PlantHazard } from "./plant-hazard.ts";
import type { WorkHazard } from "./work-hazard.ts";
import { isPreserving, workCaution, workHazards } from "./work-hazards.ts";

/** Plants that are shown, and the lines that are told. */
interface Shown {
  readonly growing: readonly {
    readonly variety?: Variety | undefined;
    readonly crop?: Crop | undefined;
    readonly events: readonly Event[];
  }[];
  readonly news: readonly Event[];
  readonly bed?: Bed | undefined;
  /** Its beds' names are no work: one may be called Pickles. */
  readonly garden: { readonly beds: ReadonlyMap<string, Bed>; readonly settings: Settings };
}

/** What animals the garden keeps, from garden.md, and its English. */
type Settings = Pick<GardenSettings, "animals" | "language">;

export interface Cautions {
  /** The person's own, beside the table's and never in their place. */
  readonly own: readonly Sentence[];
  /** Of the table, the gravest first. */
  readonly plants: readonly Sentence[];
  readonly work: readonly Sentence[];
}

const fromMemory = "Common practice; check a poisons reference.";

export function cautionsFor(here: Shown): Cautions {
  return { own: ownLines(here), plants: plantLines(here), work: workLines(here) };
}

/** Lines that one stop of a film says for all. */
export function saidOnce(line: Sentence, { language }: Settings): boolean {
  return workHazards.some((row) => row.once === true && inItsEnglish(workCaution(row), language) === line.text);
}

export function allOf({ own, plants, work }: Cautions): readonly Sentence[] {
  return [...own, ...plants, ...work];
}

/** Said once a brief, not once a plant; the poison centre is the person's own, and no number is guessed. */
export function closingCaution({ poisonCentre, language }: Pick<GardenSettings, "poisonCentre" | "language">): string {
  const number = poisonCentre?.replace(/[.\s]+$/, "");
  const yours = number === undefined ? "" : ` ${inItsEnglish("Your poison centre", language)}: ${number}.`;
  const said = `If anyone has eaten or touched one of these and feels unwell, call your poison centre or a doctor, an ambulance if they are drowsy, short of breath or swelling; for an animal, a vet. Take a piece of the plant along; don't make anyone sick.`;
  return `${inItsEnglish(said, language)}${yours}`;
}

/** Whether a plant can hurt who eats or touches it, so that the closing line belongs there. */
export function namesPoison({ own, plants }: Cautions): boolean {
  return plants.length > 0 || own.some(({ text }) => /poison|toxic|\beat|irritat|\bsap\b|\brash/i.test(text));
}

function ownLines({ growing }: Shown): readonly Sentence[] {
  return unique(
    growing.flatMap(({ variety }) =>
      variety?.caution === undefined
        ? []
        : [say(`${variety.title}: ${variety.caution.replace(/[.\s]+$/, "")}.`, [variety])],
    ),
  );
}

function plantLines(here: Shown): readonly Sentence[] {
  const { animals, language } = here.garden.settings;
  const kept = (animals ?? []).length > 0 || here.news.some(namesAnimals);
  const found: { readonly row: PlantHazard; readonly ground: Ground | undefined }[] = [];
  for (const lot of here.growing) {
    const { crop, variety, events } = lot;
    const lines = linesOf(lot, here.news);
    for (const row of plantHazardsOf({ crop, title: variety?.title, botanical: variety?.botanical })) {
      const shown = row.show === "with animals" ? kept : row.show === "always" || isNamed(row, lines, variety?.title);
      if (shown && found.every((one) => one.row !== row)) found.push({ row, ground: events[0] ?? variety });
    }
  }
  return unique(
    found
      .toSorted((a, b) => rank(a.row) - rank(b.row))
      .map(({ row: { proof, caution }, ground }) =>
        say(inItsEnglish(proof === "memory" ? `${caution} ${fromMemory}` : caution, language), [ground]),
      ),
  );
}

function workLines({ news, bed, garden }: Shown): readonly Sentence[] {
  const { beds, settings } = garden;
  const told = news.map((event) => ({
    event,
    words: event.kind === "preserved" ? event.text : withoutBeds(ofTheBed(event, bed, beds), beds),
  }));
  const shown = workHazards.flatMap((row) => {
    const event = told.find(({ words }) => row.words.test(words))?.event;
    const named = bed !== undefined && isWater(row) && row.words.test(bed.title) ? bed : undefined;
    const ground = event ?? named;
    return ground === undefined
      ? []
      : [{ row, line: say(inItsEnglish(workCaution(row), settings.language), [ground]) }];
  });
  // What was put up in jars calls for care whatever words told of it.
  const putUp = news.find(({ kind }) => kind === "preserved");
  const isTold = shown.some(({ row }) => isPreserving(row));
  return [
    ...shown.map(({ line }) => line),
    ...(putUp === undefined || isTold ? [] : [say("Preserving: point viewers to a tested recipe.", [putUp])]),
  ];
}

/**
 * Of a paragraph that is told of several beds, the sentences that are of the bed shown, by its name or because they name no
 * other; the lime of one bed is not dug into all.
 */
function ofTheBed(event: Event, own: Bed | undefined, beds: Shown["garden"]["beds"]): Event {
  const sentences = sentencesOf(event.text);
  if (sentences.length < 2 || own === undefined) return event;
  const names = (bed: Bed) => [bed.title, ...bed.alsoCalled].map((name) => name.toLowerCase());
  const others = [...beds.values()].filter((bed) => bed !== own).flatMap(names);
  let here = true;
  const kept = sentences.filter((sentence) => {
    const words = sentence.toLowerCase();
    // A sentence that names no bed goes on about the one before.
    if (names(own).some((name) => words.includes(name))) here = true;
    else if (others.some((name) => words.includes(name))) here = false;
    return here;
  });
  return { ...event, text: kept.join(" ") };
}

/** "Weeded Pickles" with its bed's name left out, as it is written in the garden's records. */
function withoutBeds({ text }: Event, beds: Shown["garden"]["beds"]): string {
  const { all, least, beginning } = namesOf(beds);
  const near = new Set<number>();
  for (let at = 0; at + least <= text.length; at += 1)
    for (const rank of beginning.get(text.slice(at, at + least)) ?? []) near.add(rank);
  return [...near]
    .sort((a, b) => a - b)
    .flatMap((rank) => all[rank] ?? [])
    .filter((name) => text.includes(name))
    .reduce((words, name) => words.replaceAll(name, " "), text);
}

interface BedNames {
  /** Those with a capital letter, the longest first. */
  readonly all: readonly string[];
  /** Letters of the shortest. */
  readonly least: number;
  /** Places in `all`, by as many letters as the shortest has: a text is held only against names that may stand in it. */
  readonly beginning: ReadonlyMap<string, readonly number[]>;
}

const names = new WeakMap<Shown["garden"]["beds"], BedNames>();

function namesOf(beds: Shown["garden"]["beds"]): BedNames {
  const known = names.get(beds);
  if (known !== undefined) return known;
  const found = [...beds.values()]
    .flatMap(({ title, alsoCalled }) => [title, ...alsoCalled])
    .filter((name) => /^\p{Lu}/u.test(name))
    .toSorted((a, b) => b.length - a.length);
  const least = found.at(-1)?.length ?? 0;
  const beginning = Map.groupBy(found.keys(), (rank) => (found[rank] ?? "").slice(0, least));
  const made: BedNames = { all: found, least, beginning };
  names.set(beds, made);
  return made;
}

/** Animals that are kept; a wild rabbit, or one that ate the lettuces, is nobody's pet. */
function namesAnimals({ text, kind }: Event): boolean {
  const [named] = animalWords.exec(text) ?? [];
  if (named === undefined) return false;
  const isHarm = kind === "trouble" || kind === "lost" || kind === "cured" || /\bate\b|\beaten\b|\bnibbl/i.test(text);
  return !(isHarm && mayBeWild.test(named)) && !isWild.test(text);
}

const mayBeWild = /^(?:rabbits?|ducks?|geese)$/i;
const isWild = /\b(?:wild|feral|stray|cottontail|jack) ?(?:cats?|rabbits?|ducks?|geese|goats?|pon(?:y|ies)|horses?)\b/i;

const animalWords =
  /\b(?:cats?|kittens?|dogs?|pupp(?:y|ies)|hens?|chickens?|horses?|pon(?:y|ies)|goats?|sheep|rabbits?|guinea pigs?|tortoises?|ducks?|geese|pets?)\b(?! (?:manure|muck|dung|pellets?|wire))/i;

/** What is told of a planting and, where it is so, that its seed was saved: a part or a work named there brings its row out. */
function linesOf({ variety, events }: Shown["growing"][number], news: readonly Event[]): string {
  const own = [variety?.title, ...(variety?.alsoSpelled ?? [])].filter((name) => name !== undefined);
  const told = news
    .filter((event) => events.includes(event))
    .map(({ text }) => own.reduce((rest, name) => rest.replaceAll(name.toLowerCase(), " "), text.toLowerCase()));
  const saved = variety?.source?.obtained === "saved" || /\bown\b.*\bseeds?\b/i.test(variety?.source?.name ?? "");
  return [...told, ...(saved ? ["own seed"] : [])].join("\n");
}

/** By a line, or by its own common name: "ornamental gourd", "pennyroyal". A cultivar's name ("White Volunteer") says nothing. */
function isNamed({ show, names }: PlantHazard, lines: string, title = ""): boolean {
  if (!(show instanceof RegExp)) return false;
  return show.test(lines) || names.some((name) => title.toLowerCase().endsWith(name) && show.test(name));
}

/** What can kill first, then what makes very ill, then burns in the sun; what is food for people last. */
function rank({ grade, routes }: PlantHazard): number {
  if (grade === "can kill") return 0;
  if (grade === "can make very ill") return 1;
  if (routes.includes("skin in sun")) return 2;
  return grade === "food for people" ? 4 : 3;
}

/** Water drowns without any line about it; all other work is only told of when somebody did it. */
function isWater({ what }: WorkHazard): boolean {
  return what === "Ponds and water butts";
}

/** What a wish for jars asks to be careful of, beside what the canning table says of acid, pressure and altitude. */
export function preservingCautions(wish: string): readonly string[] {
  const told = ["Low-acid vegetables in jars", "Tomatoes, figs and other borderline fruit", "Altitude"];
  return workHazards
    .filter((row) => isPreserving(row) && !told.includes(row.what) && row.words.test(wish))
    .map(workCaution);
}

function unique(lines: readonly Sentence[]): readonly Sentence[] {
  return lines.filter((line, index) => lines.findIndex(({ text }) => text === line.text) === index);
}
