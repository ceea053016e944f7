/**
 * The names a garden's records go by, and finding them in a line: bed, variety and gear titles, ids and other spellings,
 * crop words in their British and American forms, sites.
 *
 * Names are looked up word by word in a trie of normalised words, the longest name first, so that "Crown Prince Blue" is
 * not taken for "Crown Prince" and a line is read in one pass whatever the number of varieties. Case, accents, hyphens,
 * apostrophes and plurals make no difference.
 */
import type { Bed, Crop, Day, EventKind, Gear, OwnWord, Place, Problem, Site, Variety } from "../model.ts";
import { lineProblem } from "./line-rules.ts";
import { lowerForm, type Word, wordsOf } from "./line-words.ts";
import { type Found, keysOf, NameTrie } from "./name-trie.ts";
import { nearestSpellings } from "./nearest-spelling.ts";
import { ShortNames } from "./short-names.ts";
import { type Heard, type Taken, TakenNames } from "./taken-names.ts";

export type NameKind = "bed" | "variety" | "gear" | "crop" | "site";

/** A plant found in a line: a variety, or only a crop. */
export interface FoundPlant {
  readonly variety?: string | undefined;
  readonly crop?: string | undefined;
  readonly end: number;
  /** Other varieties of the same name, none of them meant by what the line says. */
  readonly others: readonly string[];
}

/** A verb as the garden's own word list has it. */
export interface OwnVerb {
  /** In lower case. */
  readonly words: readonly string[];
  readonly kind: EventKind;
  /** Said so of this crop only. */
  readonly crop?: string | undefined;
}

export interface NameRecords {
  readonly beds: Iterable<Bed>;
  readonly varieties: Iterable<Variety>;
  readonly gear: Iterable<Gear>;
  readonly crops: Iterable<Crop>;
  readonly sites: Iterable<Site>;
}

/** After a crop word these make the name of something else: "carrot fly", "tomato blight", "bean poles", "tomato feed". */
const pestWords = new Set(
  (
    "fly flies moth beetle bug blight weevil aphid worm hornworm looper borer sawfly scab mite midge miner maggot virus " +
    "mosaic canker rust white root thrip psyllid eelworm feed food cage pole net netting trellis support"
  )
    .split(" ")
    .flatMap((word) => [word, `${word}s`]),
);

/** The words of a name in normal form, apart by spaces: two names are the same when this is. */
export function normaliseName(name: string): string {
  return keysOf(name).join(" ");
}

/** The id a title would have as a file name: "Nero di Toscana" is "nero-di-toscana"; "" when nothing is left of it. */
export function idOfName(title: string): string {
  const words = wordsOf(title).filter((word) => word.kind !== "mark");
  return words
    .map((word, index) => {
      const apart = index > 0 && words[index - 1]?.end !== word.start ? "-" : "";
      return `${apart}${word.lower.replace(/[^\p{L}\d]+/gu, "-")}`;
    })
    .join("");
}

/** The candidate a misspelt name was meant to be: only when one, and only one, is close. */
export function nearestName(name: string, candidates: Iterable<string>): string | undefined {
  return nearestOf(spelling(name), new Map([...candidates].map((candidate) => [spelling(candidate), candidate])));
}

function nearestOf(wanted: string, bySpelling: ReadonlyMap<string, string>): string | undefined {
  const [near, second] = nearestSpellings(wanted, bySpelling.keys());
  return near === undefined || second !== undefined ? undefined : bySpelling.get(near);
}

export function buildNames(records: NameRecords): Names {
  return new Names(records);
}

/**
 * Names for a second reading of the same lines. They also know the beds and varieties that the first reading took from
 * them, so that "watered Sunny Corner" finds the bed that another line planted in, whichever line comes first.
 */
export function namesOnceHeard(records: NameRecords, heard: Heard): Names {
  const names = new Names(records);
  names.hear(heard);
  return names;
}

/** Other English names of crops that a person's own word is kept for: who says zucchini is told of zucchini. */
const alsoWritten = new Set(
  (
    "zucchini eggplant edamame daikon callaloo kumara silverbeet arugula cilantro rutabaga capsicum corn maize haskap kabocha butternut borlotti scallion beet " +
    "brinjal garbanzo neep calabrese tromboncino cantaloupe rockmelon coneflower echinacea narcissu lupine paprika sunchoke sukuma cobnut filbert saskatoon " +
    "damson greengage gage mirabelle bullace nectarine tayberry boysenberry elderflower primula gobo managu kunde satsuma clementine bergamot"
  )
    .split(" ")
    .concat([
      "warrigal green",
      "baby marrow",
      "spanspek",
      "snow pea",
      "snap pea",
      "sugar snap",
      "snap bean",
      "green bean",
      "pole bean",
      "bush bean",
      "string bean",
      "butter bean",
      "bitter melon",
      "cavolo nero",
      "sweet corn",
      "swiss chard",
      "bell pepper",
      "hot pepper",
      "sweet pepper",
      "salad onion",
      "green onion",
      "spring onion",
      "napa cabbage",
      "bok choy",
      "sugar snap pea",
      "fava bean",
      "crab apple",
      "black raspberry",
      "cape gooseberry",
      "cup plant",
      "black-eyed susan",
      "szechuan pepper",
      "sweet william",
    ])
    .map(normaliseName),
);

/** What many names begin with is short for none of them: "Early" is not the Early Purple Sprouting. */
const sharedWords = new Set(
  "early late maincrop giant dwarf red white green yellow purple black blue pink golden sweet summer winter spring autumn"
    .split(" ")
    .flatMap(keysOf),
);

/** Keys of a crop's names by its row, its name first: every garden has the same hundreds of rows. */
const cropKeys = new WeakMap<Crop, readonly (readonly string[])[]>();

function keysOfCrop(crop: Crop): readonly (readonly string[])[] {
  let keys = cropKeys.get(crop);
  if (keys === undefined) {
    keys = [crop.name, crop.plural, ...crop.alsoCalled].map(keysOf);
    cropKeys.set(crop, keys);
  }
  return keys;
}

/** "row of": what stands here leads up to a name and is none, or every later row would be one. */
const unfinished = /(?:^|\s)(?:of|and|or|with|from|in|on|the|an?)$/i;

/** All names of a garden. Reading lines fills only the record of names that no file describes. */
export class Names {
  /** A trie for each kind: most words begin no bed and no gear, and are done with after one look. */
  readonly #tries: Readonly<Record<NameKind, NameTrie>> = {
    bed: new NameTrie(),
    variety: new NameTrie(),
    gear: new NameTrie(),
    crop: new NameTrie(),
    site: new NameTrie(),
  };
  readonly #crops = new Map<string, Crop>();
  readonly #titles: Readonly<Record<NameKind, Map<string, string>>> = {
    bed: new Map(),
    variety: new Map(),
    gear: new Map(),
    crop: new Map(),
    site: new Map(),
  };
  readonly #cropOfVariety = new Map<string, string | undefined>();
  readonly #varieties: readonly Variety[];
  #short: ShortNames | undefined;
  readonly #bedsOfSite = new Map<string, string[]>();
  readonly #nearest = new Map<string, string | undefined>();
  readonly #spelled = new Map<NameKind, ReadonlyMap<string, string>>();
  readonly #ownVerbs: OwnVerb[] = [];
  readonly #taken = new TakenNames();
  #day: Day | undefined;
  /** How many names were taken before the first line was read. */
  #takenBefore = 0;

  constructor(records: NameRecords) {
    for (const crop of records.crops) {
      this.#crops.set(crop.id, crop);
      this.#titles.crop.set(crop.id, crop.name);
      for (const [at, keys] of keysOfCrop(crop).entries())
        this.#tries.crop.add(keys, { id: crop.id, rank: at === 0 ? 0 : 2 });
    }
    for (const site of records.sites) this.#add("site", site.id, site.title, []);
    for (const bed of records.beds) {
      // First of all, since a name that is entered twice counts as it was entered first: a bed's file may be called as it was.
      for (const { name, until } of bed.was ?? []) this.#tries.bed.add(keysOf(name), { id: bed.id, rank: 2, until });
      this.#add("bed", bed.id, bed.title, bed.alsoCalled);
      if (bed.site !== undefined) this.#bedsOfSite.set(bed.site, [...(this.#bedsOfSite.get(bed.site) ?? []), bed.id]);
    }
    for (const gear of records.gear) this.#add("gear", gear.id, gear.title, gear.alsoCalled);
    this.#varieties = [...records.varieties];
    for (const variety of this.#varieties) {
      this.#add("variety", variety.id, variety.title, variety.alsoSpelled);
      this.#cropOfVariety.set(variety.id, variety.crop);
      this.#addShortForms(variety);
    }
  }

  /** Names as people shorten them. */
  get short(): ShortNames {
    this.#short ??= new ShortNames(this.#crops, this.#varieties);
    return this.#short;
  }

  /** Lets names be found that no file describes. What is heard of as a bed is no variety. */
  hear(heard: Heard): void {
    for (const { id, title, place } of heard.beds) {
      if (place === undefined) continue;
      this.#tries.bed.add(keysOf(title), { id, rank: 4 });
      this.#taken.bed(id, title, place);
    }
    for (const { id, title, crop, place } of heard.varieties) {
      if (place === undefined || this.find("bed", title) !== undefined) continue;
      this.#tries.variety.add(keysOf(title), { id, rank: 4 });
      this.#taken.variety(id, title, crop, place);
    }
    this.#takenBefore = this.#taken.count;
  }

  /** Takes the garden's own words for crops, varieties, beds, gear and for what is done, before any table's. */
  learn(words: readonly Pick<OwnWord, "word" | "means">[]): void {
    for (const { word, means } of words) {
      if ("kind" in means) {
        const lower = wordsOf(word).filter(({ kind }) => kind !== "mark");
        this.#ownVerbs.push({ words: lower.map((one) => one.lower), ...means });
        continue;
      }
      for (const [kind, id] of Object.entries(means)) this.#tries[kind as NameKind].add(keysOf(word), { id, rank: 1 });
    }
  }

  /** What the garden's own word list says of verbs. */
  get ownVerbs(): readonly OwnVerb[] {
    return this.#ownVerbs;
  }

  /** Whether the lines read so far took no name: then what a line says does not depend on them. */
  get asBuilt(): boolean {
    return this.#taken.count === this.#takenBefore;
  }

  /** The record a whole phrase names ("Long bed"), for front matter and other places where only a name stands. */
  find(kind: NameKind, phrase: string): string | undefined {
    const words = wordsOf(phrase).filter((word) => word.kind !== "mark");
    // "the long bed" is "Long bed", unless a record is called with its article.
    for (const from of words[0]?.lower === "the" ? [0, 1] : [0]) {
      const found = this.at(kind, words, from);
      if (found?.end === words.length) return found.id;
    }
    return undefined;
  }

  /** Whether any name of a bed, a variety, a crop or gear begins with a word of this key. */
  begins(key: string): boolean {
    const { bed, variety, crop, gear } = this.#tries;
    return bed.begins(key) || variety.begins(key) || crop.begins(key) || gear.begins(key);
  }

  /** The longest name of one kind that begins at word `from`. */
  at(kind: NameKind, words: readonly Word[], from: number): Found | undefined {
    return this.#tries[kind].at(words, from, this.#day);
  }

  /** Names mean from now on what they meant on this day. */
  asOn(day: Day | undefined): void {
    this.#day = day;
  }

  /**
   * The plant that begins at word `from`: a variety with its crop word before it, after it or not at all, else a crop.
   * Crop words that belong to a pest's name ("carrot fly") are no plants, and "Tom" is a person, though
   * "toms" are tomatoes.
   */
  plantAt(words: readonly Word[], from: number): FoundPlant | undefined {
    const variety = this.at("variety", words, from);
    const crop = words[from]?.lower === "tom" ? undefined : this.at("crop", words, from);
    if (crop !== undefined && (variety === undefined || crop.end > variety.end)) {
      const next = words[crop.end];
      if (next !== undefined && pestWords.has(next.lower)) return undefined;
      const after = this.at("variety", words, opened(words, crop.end));
      const meant = after && this.#varietyOfCrop(after, crop.id);
      if (after && meant) return { variety: meant, end: closed(words, after.end), others: [] };
      return { crop: crop.id, end: crop.end, others: [] };
    }
    if (variety === undefined) return undefined;
    const cropAfter = this.at("crop", words, opened(words, closed(words, variety.end)));
    if (cropAfter !== undefined) {
      const meant = this.#varietyOfCrop(variety, cropAfter.id);
      // "Black Beauty aubergine" is another variety than the courgette Black Beauty: not this name.
      return meant === undefined ? undefined : { variety: meant, end: closed(words, cropAfter.end), others: [] };
    }
    return { variety: variety.id, end: variety.end, others: variety.others };
  }

  /** Which of the varieties found is of this crop, or of its family when none is: "Crown Prince pumpkin" is the squash. */
  #varietyOfCrop(found: Found, crop: string): string | undefined {
    const ids = [found.id, ...found.others];
    const family = this.#crops.get(crop)?.family;
    return (
      ids.find((id) => this.cropOf(id) === crop) ??
      ids.find((id) => this.cropOf(id) === undefined) ??
      ids.find((id) => family !== undefined && this.#crops.get(this.cropOf(id) ?? "")?.family === family)
    );
  }

  crop(id: string | undefined): Crop | undefined {
    return id === undefined ? undefined : this.#crops.get(id);
  }

  /** The other name, from the table, that some words call a crop by; undefined for its own name and for what only shortens it. */
  cropCalled(id: string, words: readonly Word[]): string | undefined {
    const crop = this.#crops.get(id);
    const key = words.map((word) => word.key).join(" ");
    // Where crops go by a region's names, the table's own name is another one too.
    if (crop === undefined || !(alsoWritten.has(key) || normaliseName(id) === key)) return undefined;
    return crop.alsoCalled.find((name) => normaliseName(name) === key);
  }

  /**
   * The name by which a text calls a crop, where it first names it: its own or another of the table's. Undefined where the
   * text names it not at all, or by a word that only shortens a name.
   */
  cropWordIn(id: string, text: string): string | undefined {
    const words = wordsOf(text);
    for (let at = 0; at < words.length; at++) {
      const found = this.at("crop", words, at);
      if (found?.id !== id) continue;
      const name = this.#crops.get(id)?.name;
      const said = words.slice(at, found.end);
      const isOwn = name !== undefined && normaliseName(name) === said.map(({ key }) => key).join(" ");
      return isOwn ? name : this.cropCalled(id, said);
    }
    return undefined;
  }

  /** Crop id of a variety, described or taken from a line. */
  cropOf(variety: string): string | undefined {
    return this.#cropOfVariety.has(variety) ? this.#cropOfVariety.get(variety) : this.#taken.cropOf(variety);
  }

  bedsOfSite(site: string): readonly string[] {
    return this.#bedsOfSite.get(site) ?? [];
  }

  isDescribed(kind: "bed" | "variety", id: string): boolean {
    return this.#titles[kind].has(id);
  }

  /** The title of a record, described or taken from a line; the id when there is none. */
  title(kind: NameKind, id: string): string {
    return this.#titles[kind].get(id) ?? this.#taken.title(kind, id) ?? id;
  }

  /** The described name of this kind nearest to a misspelt one. */
  nearest(kind: NameKind, name: string): string | undefined {
    const key = `${kind} ${name}`;
    // The same unknown name comes in many lines, and every title has to be looked at for it.
    if (!this.#nearest.has(key)) this.#nearest.set(key, nearestOf(spelling(name), this.#spellings(kind)));
    return this.#nearest.get(key);
  }

  /** Takes a variety as a line names it, when no file describes it; gives its id, undefined when it is no name. */
  takeVariety(title: string, crop: string | undefined, place: Place): string | undefined {
    const plain = idOfName(title);
    if (plain === "" || unfinished.test(title)) return undefined;
    const sameName = this.#titles.variety.has(plain) ? this.#cropOfVariety.get(plain) : this.#taken.saidCropOf(plain);
    const otherCrop = crop !== undefined && sameName !== undefined && sameName !== crop;
    const id = otherCrop ? `${plain}-${crop}` : plain;
    if (!this.#titles.variety.has(id)) this.#taken.variety(id, title, crop, place);
    return id;
  }

  /** Takes a bed as a line names it, when no file describes it; gives its id, undefined when it has no letters. */
  takeBed(title: string, place: Place): string | undefined {
    const id = idOfName(title);
    if (id === "") return undefined;
    if (!this.#titles.bed.has(id)) this.#taken.bed(id, title, place);
    return id;
  }

  /** What was taken so far: a state to go back to when a line is not taken as it was read. */
  mark(): number {
    return this.#taken.mark();
  }

  backTo(mark: number): void {
    this.#taken.backTo(mark);
  }

  /** Beds and varieties that lines name and no file describes, in order of first mention. */
  taken(): Taken {
    return this.#taken.all();
  }

  /** The described name that a name nobody described is a slip for; the same name for another crop is none. */
  slipFor(kind: NameKind, name: string): string | undefined {
    const near = this.nearest(kind, name);
    return near === undefined || normaliseName(near) === normaliseName(name) ? undefined : near;
  }

  #spellings(kind: NameKind): ReadonlyMap<string, string> {
    let spelled = this.#spelled.get(kind);
    if (spelled === undefined) {
      spelled = new Map([...this.#titles[kind].values()].map((title) => [spelling(title), title]));
      this.#spelled.set(kind, spelled);
    }
    return spelled;
  }

  #add(kind: NameKind, id: string, title: string, also: readonly string[]): void {
    this.#titles[kind].set(id, title);
    this.#tries[kind].add(keysOf(title), { id, rank: 0 });
    this.#tries[kind].add(keysOf(id), { id, rank: 0 });
    for (const name of also) this.#tries[kind].add(keysOf(name), { id, rank: 2 });
  }

  /** "Sungold F1" also answers to "Sungold", and "Musselburgh leek" of the crop leek to "Musselburgh". */
  #addShortForms(variety: Variety): void {
    const keys = keysOf(variety.title);
    const short = keys.at(-2) === "f" && keys.at(-1) === "1" ? keys.slice(0, -2) : keys;
    const crop = variety.crop === undefined ? undefined : this.#crops.get(variety.crop);
    const cropNames = crop === undefined ? [] : keysOfCrop(crop);
    for (const name of [[], ...cropNames]) {
      const cut = endsWith(short, name) ? short.slice(0, short.length - name.length) : short;
      if (cut.length > 0 && cut.length < keys.length && !sharedWords.has(cut.join(" ")))
        this.#tries.variety.add(cut, { id: variety.id, rank: 3 });
    }
  }
}

/** The problem of a line that gives a name two varieties have. */
export function twoVarieties(ids: readonly string[], title: string, names: Names, place: Place): Problem {
  const crops = ids.map((id) => names.crop(names.cropOf(id))?.name).filter((name) => name !== undefined);
  return lineProblem(
    "note/two-varieties",
    place,
    `"${title}" is the name of ${ids.length} varieties: ${ids.join(", ")}. The first was taken.`,
    crops.length > 1 ? `Say the crop beside it, for example "${title} ${crops[0]}".` : "Write the id instead.",
  );
}

/** Past a mark that opens a second name: "leek (Musselburgh)", "leek ‘Musselburgh’". */
function opened(words: readonly Word[], at: number): number {
  return /^[('‘"“]$/.test(words[at]?.text ?? "") ? at + 1 : at;
}

function closed(words: readonly Word[], at: number): number {
  return /^[)'’"”]$/.test(words[at]?.text ?? "") ? at + 1 : at;
}

function endsWith(keys: readonly string[], tail: readonly string[]): boolean {
  return tail.length < keys.length && tail.every((key, i) => keys[keys.length - tail.length + i] === key);
}

function spelling(name: string): string {
  return lowerForm(name)
    .replace(/[^\p{L}\d]+/gu, " ")
    .trim();
}
