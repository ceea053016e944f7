/**
 * Plants in a line. A person's own names come first, then cultivars and crop words of the tables, then names known only by how
 * they are written. The last noun heads the name: "Cherry Belle radishes" and "Apple Green tomato" are radishes and a tomato.
 */
import { monthNumber, weekdayNumber } from "../../calendar.ts";
import { isCapital, type Word, wordsOf } from "../line-words.ts";
import type { Names } from "../names.ts";
import { isVessel } from "./amounts.ts";
import { isDoer } from "./doers.ts";
import { lemmasFrom } from "./lemmas.ts";
import type { Mention, PlantMention } from "./mention.ts";
import { causeAt, cultivarAt, gearAt, isOrdinary, isPerson, materialAt, slangAt, standAt } from "./vocabulary.ts";

/** After a crop word these make it something else: "carrot fly", "tomato feed", "apple pie". */
const notThePlant =
  /^(?:fly|flies|moth|beetle|beetles|blight|weevil|rust|rot|feed|food|pie|tart|crumble|cake|bread|stew|festival|show|man|lady|shop|tea|oil|supper|club|day)$/;

/** "A porcelain rose": made, not grown. */
const madeOf =
  /^(?:porcelain|china|plastic|silk|paper|marble|wooden|glass|crocheted|knitted|embroidered|painted|carved|marzipan)$/;

export function ownPlantAt(words: readonly Word[], at: number, names: Names): PlantMention | undefined {
  const variety = names.at("variety", words, at);
  if (variety !== undefined)
    return plant("own", at, variety.end, { variety: variety.id, crop: names.cropOf(variety.id) });
  return shortenedAt(words, at, names);
}

/** Everyday words of a garden that begin or sound like a crop and are none. */
const neverShort = new Set(
  "plants plant planted planting seeds seedling seedlings bulbs cloves tubers sets plugs starts crowns vines canes shoots roots leaves pods heads stems flowers blooms buds wildflower wildflowers salad salads greens veg record records second seconds primary class".split(
    " ",
  ),
);

/** Words that many names have, so that one of them alone means none. */
const genericInNames = new Set(
  "early late giant dwarf crown king queen prince princess beauty red black long round green white purple golden gold yellow pink blue orange winter summer spring autumn sprouting improved selected wonder delight market express cross hybrid mix mixed sweet cherry plum show exhibition perfection favourite pride star sun moon snow ice fire heart lady lord baby mini tall bush climbing runner first best super royal imperial champion pole half hardy mammoth globe ball curled leaf leaved rose top head seed".split(
    " ",
  ),
);

/** "Krim" of Black Krim, "BBs", "courgs"; an ordinary word only as the plural of a crop of this garden ("snaps"). */
function shortenedAt(words: readonly Word[], at: number, names: Names): TablePlant | undefined {
  const word = words[at];
  if (word === undefined || word.kind !== "word" || words[at + 1]?.text === "'") return undefined;
  if (/^[A-Z]{2,4}s?$/.test(word.text)) {
    const initials = names.short.withInitials(word.text);
    if (initials !== undefined) return plant("own", at, at + 1, initials);
  }
  if (word.lower.length < 4 || neverShort.has(word.lower)) return undefined;
  const ordinary = isOrdinary(word.lower) || isPerson(word.lower);
  // "First Queens dug": a common word of names in its plural and with a capital is the one that the garden has.
  const named = genericInNames.has(word.lower.replace(/s$/, ""))
    ? isCapital(word) && word.lower.endsWith("s")
    : !ordinary || (isCapital(word) && !opensSentence(words, at));
  const variety = named ? names.short.varietyWithWord(word.key) : undefined;
  if (variety !== undefined) return plant("own", at, at + 1, { variety, crop: names.cropOf(variety) });
  if (
    names.at("crop", words, at) !== undefined ||
    lemmasFrom(word.lower).length > 0 ||
    causeAt(words, at) !== undefined ||
    materialAt(words, at) !== undefined
  )
    return undefined;
  const plural = word.lower.endsWith("s") && word.lower.length > 4;
  if (gearAt(words, at) !== undefined || standAt(words, at) !== undefined || isVessel(word.lower)) return undefined;
  const own = ordinary && !plural ? undefined : names.short.cropBeginning(word.lower, true);
  if (own !== undefined) return plant("crop", at, at + 1, { crop: own });
  if (ordinary || (isCapital(word) && !opensSentence(words, at))) return undefined;
  const any = word.lower.length >= 6 ? names.short.cropBeginning(word.lower, false) : undefined;
  if (any !== undefined) return plant("crop", at, at + 1, { crop: any });
  const meant = names.short.cropSpelledLike(word.lower);
  return meant === undefined
    ? undefined
    : plant("crop", at, at + 1, { crop: meant.crop, said: names.cropCalled(meant.crop, wordsOf(meant.name)) });
}

export function tablePlantAt(words: readonly Word[], at: number, names: Names): PlantMention | undefined {
  // "Tom" is a person, "tom chutney" is of tomatoes.
  const crop = words[at]?.text === "Tom" ? undefined : names.at("crop", words, at);
  const cultivar = cultivarAt(words, at);
  if (cultivar !== undefined && cultivar.end > (crop?.end ?? at)) {
    const [first] = cultivar.options;
    const inSmall = cultivar.end === at + 1 && !isCapital(words[at] as Word);
    if (
      first !== undefined &&
      (inSmall ? inPlantsPlace(words, at, cultivar.end, names) : !first.weak || mayBeName(words, at, cultivar.end))
    )
      return plant("cultivar", at, cultivar.end, { title: first.title, crop: first.crop, options: cultivar.options });
  }
  if (
    crop !== undefined &&
    crop.end === at + 1 &&
    ordinaryToo.has(words[at]?.key ?? "") &&
    !isMeant(words, at, names, crop.id)
  )
    return undefined;
  if (crop !== undefined) {
    const next = words[crop.end]?.lower ?? "";
    if (notThePlant.test(next) || madeOf.test(words[at - 1]?.lower ?? "")) return undefined;
    return plant("crop", at, crop.end, { crop: crop.id, said: names.cropCalled(crop.id, words.slice(at, crop.end)) });
  }
  const slang = slangAt(words, at);
  if (slang !== undefined && (plainSlang.has(words[at]?.lower ?? "") || slangIsMeant(words, at, names, slang.row.crop)))
    return plant("crop", at, slang.end, { crop: slang.row.crop });
  return undefined;
}

/** Short forms that are no other words. */
const plainSlang = new Set(
  "broadies frenchies maters tommies tomatas tomats tomatos punkin punkins pumkin pumkins bonnit bonnits chiles potatos tates dahls dahlies habs praties nasties".split(
    " ",
  ),
);

function slangIsMeant(words: readonly Word[], at: number, names: Names, crop: string): boolean {
  const before = words[at - 1];
  if (names.short.isOwnCrop(crop))
    return !/^(?:the|a|an|in|into)$/.test(before?.lower ?? "") || words[at]?.lower.endsWith("s") === true;
  if (
    before?.kind === "number" &&
    !/^(?:box|boxes|date|dates|tea|stock|coffee|bay|bays|pink|blue|cos|gem)$/.test(words[at]?.lower ?? "")
  )
    return true;
  return (
    before !== undefined &&
    lemmasFrom(before.lower).some(
      ({ words: form, kinds }) => form.length === 1 && /^(?:sowed|planted|picked|potted on)$/.test(kinds[0] ?? ""),
    )
  );
}

/** Crops whose names are everyday words: meant only where the garden grows them, or beside a number or what was done to plants. */
const ordinaryToo = new Set(
  "tea box boxe date stock coffee oyster honesti thrift bay dock flag cereal straw cotton rush reed may bamboo pink ash oak elder heather holli hazel ivi rose basil daisi lili lily violet iri sage rue balm poppi olive fern hop lime rocket mint reseda orange peach plum banana cactu gra grass fat rape mum bean ginger pepper cherri chestnut mustard sweet comfrei nettle clover alder birch willow yew fig".split(
    " ",
  ),
);
const people = new Set(
  "rose basil daisi lili lily violet iri sage poppi olive fern heather holli hazel ivi ginger pepper cherri".split(" "),
);

function isMeant(words: readonly Word[], at: number, names: Names, crop: string): boolean {
  const word = words[at] as Word;
  const before = words[at - 1];
  // "Rose" with a capital in mid-sentence is somebody, "the roses" are not.
  const person =
    people.has(word.key) &&
    isCapital(word) &&
    !word.lower.endsWith("s") &&
    !/^(?:the|of|my|our|some|more)$/.test(before?.lower ?? "");
  if (person && before?.kind !== "number") return false;
  if (names.short.isOwnCrop(crop) || people.has(word.key)) return true;
  if (before?.kind === "number" || /^(?:more|some)$/.test(before?.lower ?? ""))
    return !/^(?:tea|box|boxe|date|stock|coffee|may|rush)$/.test(word.key);
  if (
    /^(?:plum|fig|orange|peach|banana|bean|lime|hop|rocket|mint|mustard|clover|comfrei|nettle|reseda|chestnut|willow|sweet)$/.test(
      word.key,
    )
  )
    return !/^(?:bug|bugs|green|coloured|colored)$/.test(words[at + 1]?.lower ?? "");
  return (
    before !== undefined &&
    lemmasFrom(before.lower).some(
      ({ words: form, kinds }) => form.length === 1 && /^(?:sowed|planted|picked|potted on)$/.test(kinds[0] ?? ""),
    )
  );
}

export interface TablePlant extends PlantMention {
  /** Crops that have a cultivar of this name. */
  readonly options?: readonly { readonly crop: string; readonly title: string }[] | undefined;
}

function plant(basis: PlantMention["basis"], from: number, end: number, more: Partial<TablePlant>): TablePlant {
  return { type: "plant", basis, from, end, ...more };
}

/** A name that is an ordinary word as well: written with a capital where none is due, or beside a number. */
function mayBeName(words: readonly Word[], at: number, end: number): boolean {
  const first = words[at];
  if (first === undefined) return false;
  if (
    end === at + 1 &&
    (monthNumber(first.lower) !== undefined ||
      weekdayNumber(first.lower) !== undefined ||
      titles.test(first.lower) ||
      isPerson(first.lower))
  )
    return false;
  const several = end - at > 1 && words.slice(at, end).every((word) => word.kind !== "word" || isCapital(word));
  return several || (isCapital(first) && !opensSentence(words, at)) || beside(words, at, end);
}

/** Where a plant stands: beside a number or its crop, or right behind what was done to it. */
function inPlantsPlace(words: readonly Word[], at: number, end: number, names: Names): boolean {
  const before = words[at - 1];
  const after = words[end];
  const lower = words[at]?.lower ?? "";
  if (monthNumber(lower) !== undefined || weekdayNumber(lower) !== undefined) return false;
  if (isOrdinary(lower)) return names.at("crop", words, end) !== undefined;
  if (
    before?.kind === "number" ||
    after?.kind === "number" ||
    before === undefined ||
    /^[x×]$/.test(after?.lower ?? "") ||
    names.at("crop", words, end) !== undefined
  )
    return true;
  if (/^[:,(&+|]$/.test(before.text) || /^(?:and|of)$/.test(before.lower))
    return /^(?:[,:;.)|]|and|x|in|up|out)$/.test(after?.lower ?? ".");
  return lemmasFrom(before.lower).some(
    ({ words: form, kinds }) =>
      form.length === 1 && /^(?:sowed|planted|picked|potted on|thinned|up|flowered)$/.test(kinds[0] ?? ""),
  );
}

function beside(words: readonly Word[], at: number, end: number): boolean {
  const before = words[at - 1];
  const after = words[end];
  return (
    before?.kind === "number" || after?.kind === "number" || /^(?:of|the|my|our|more|some)$/.test(before?.lower ?? "")
  );
}

function opensSentence(words: readonly Word[], at: number): boolean {
  const before = words[at - 1];
  return before === undefined || /^[.!?:•|–—-]$/.test(before.text);
}

const titles =
  /^(?:miss|sister|brother|bro|sis|pastor|father|uncle|aunt|auntie|granny|nan|gran|mum|mam|mom|dad|mrs|mr|dr|rev|sir|lady|lord|saint|st|easter|christmas|boxing|monday|sunday|church|school|street|road|lane|farm)$/;

/** Words that are written with a capital and name no plant. */
function isOther(word: Word): boolean {
  return (
    titles.test(word.lower) ||
    /(?:ed|ing)$/.test(word.lower) ||
    isOrdinary(word.lower) ||
    isPerson(word.lower) ||
    monthNumber(word.lower) !== undefined ||
    weekdayNumber(word.lower) !== undefined ||
    lemmasFrom(word.lower).some(({ words }) => words.length === 1) ||
    word.lower.length < 3 ||
    /^(?:set|did|put|got)$/.test(word.lower) ||
    /^[A-Z]{1,4}s?$/.test(word.text)
  );
}

/**
 * Joins what belongs together and adds names that only their writing tells: capitals before or behind a crop word, in
 * quotation marks, or beside a number.
 */
export function joinPlants(words: readonly Word[], found: readonly Mention[], names: Names): Mention[] {
  const covered = new Map<number, Mention>();
  for (const mention of found)
    for (let at = mention.from; at < mention.end; at++) if (mention.type !== "cue") covered.set(at, mention);
  const plants = found.filter((mention): mention is TablePlant => mention.type === "plant");
  const others = found.filter((mention) => mention.type !== "plant");
  const free = (at: number) => !covered.has(at) && words[at]?.kind === "word";
  const named = withGuesses(words, plants, free, names);
  return [...others, ...withCrops(words, named, names)].sort((a, b) => a.from - b.from || b.end - a.end);
}

/** A run of capitals that no table knows, from or up to a word. */
function capitalsFrom(words: readonly Word[], at: number, free: (at: number) => boolean): number {
  let end = at;
  while (end < at + 4) {
    const word = words[end];
    if (word === undefined || !free(end)) break;
    const joint =
      end > at &&
      /^(?:of|de|di|da|du|la|le|the|van|von|y)$/.test(word.lower) &&
      words[end + 1] !== undefined &&
      isCapital(words[end + 1] as Word);
    if (!joint && (!isCapital(word) || (end === at && isOther(word)) || monthNumber(word.lower) !== undefined)) break;
    end += 1;
  }
  return end;
}

function withGuesses(
  words: readonly Word[],
  plants: readonly TablePlant[],
  free: (at: number) => boolean,
  names: Names,
): TablePlant[] {
  const all: TablePlant[] = [];
  const taken = new Set<number>();
  const absorbed = new Set<number>();
  for (const one of plants) {
    if (one.basis !== "crop") {
      all.push(one);
      continue;
    }
    // "Wine zinnias" of a garden with Benary's Giant Wine.
    const word0 = words[one.from - 1];
    const meant = word0 === undefined || !free(one.from - 1) ? undefined : names.short.varietyWithWord(word0.key);
    if (meant !== undefined && one.crop !== undefined && names.cropOf(meant) === one.crop) {
      taken.add(one.from - 1);
      all.push({ type: "plant", basis: "own", from: one.from - 1, end: one.end, variety: meant, crop: one.crop });
      continue;
    }
    // "Cherry Belle radishes", "norland potatoes"
    let from = one.from;
    while (from > 0 && from > one.from - 4) {
      const word = words[from - 1];
      if (word !== undefined && from < one.from && !taken.has(from - 1) && nameWord(words, from - 1, plants)) {
        absorbed.add(from - 1);
        from -= 1;
        continue;
      }
      if (word === undefined || !free(from - 1) || taken.has(from - 1)) break;
      const capital = isCapital(word) && !/^[A-Z]{2,3}$/.test(word.text);
      const known = isOther(word);
      const opens = opensSentence(words, from - 1);
      if (capital && !(opens && known) && !(known && from === one.from && lemmasFrom(word.lower).length > 0)) from -= 1;
      else break;
    }
    while (from < one.from && isOther(words[from] as Word) && !isCapital(words[from + 1] ?? (words[from] as Word)))
      from += 1;
    if (from === one.from) {
      const word = words[from - 1];
      const lowerName =
        word !== undefined &&
        free(from - 1) &&
        !isCapital(word) &&
        word.lower.length > 4 &&
        !isOther(word) &&
        !/(?:ed|ing|ly|ish|y|s)$/.test(word.lower);
      if (lowerName) from -= 1;
    }
    // "Beau's beans" are beans.
    const before = from < one.from ? text(words, from, one.from) : undefined;
    const isOwner = before !== undefined && /^\p{Lu}\p{Ll}+['’]s$/u.test(before);
    const title = isOwner && !titles.test(words[from - 1]?.lower ?? "") ? undefined : before;
    const behind =
      title === undefined ? nameBehind(words, one.end, (at) => free(at) && !taken.has(at), plants) : undefined;
    if (behind !== undefined) {
      for (let at = behind.from; at < behind.end; at++) taken.add(at);
      all.push({
        type: "plant",
        basis: "guess",
        from: one.from,
        end: behind.end,
        title: text(words, behind.from, behind.end),
        crop: one.crop,
      });
    } else if (title !== undefined && !isOnlyDescribing(words, from, one.from)) {
      for (let at = from; at < one.from; at++) taken.add(at);
      all.push({ type: "plant", basis: "guess", from, end: one.end, title, crop: one.crop });
    } else all.push(one);
  }
  for (let at = 0; at < words.length; at++) {
    if (!free(at) || taken.has(at)) continue;
    const end = capitalsFrom(words, at, (other) => free(other) && !taken.has(other));
    if (end === at) continue;
    if (hasEvidence(words, at, end, all)) {
      const known = names.at("variety", words, at);
      if (known === undefined) {
        all.push({ type: "plant", basis: "guess", from: at, end, title: text(words, at, end) });
        for (let other = at; other < end; other++) taken.add(other);
      }
    }
    at = end - 1;
  }
  return all.filter((one) => one.basis !== "crop" || !absorbed.has(one.from)).sort((a, b) => a.from - b.from);
}

/** A crop word that is a part of a name written in capitals: "Lilac Dream tomato". */
function nameWord(words: readonly Word[], at: number, plants: readonly TablePlant[]): boolean {
  const word = words[at];
  return (
    word !== undefined &&
    isCapital(word) &&
    !word.lower.endsWith("s") &&
    !opensSentence(words, at) &&
    plants.some((one) => one.basis === "crop" && one.from === at && one.end === at + 1)
  );
}

/** "garlic Harnaś", "cardoons, Plein Blanc Inerme", "rhubarb (‘Victoria’)": a name behind the crop word. */
function nameBehind(
  words: readonly Word[],
  end: number,
  free: (at: number) => boolean,
  plants: readonly TablePlant[],
): { readonly from: number; readonly end: number } | undefined {
  let from = end;
  while (
    from < end + 3 &&
    /^(?:[,:(‘'"“–-]|of|called|named|variety|var|cv|plants?|seeds?|sets|cloves|plugs|bulbs|tubers)$/.test(
      words[from]?.lower ?? "",
    )
  )
    from += 1;
  if (plants.some((one) => one.from >= end && one.from <= from)) return undefined;
  const stop = capitalsFrom(words, from, free);
  if (stop === from) return undefined;
  const first = words[from] as Word;
  const apart = from > end && /^,$/.test(words[from - 1]?.text ?? "");
  const after = words[stop];
  // Behind a comma a name ends there, or a number follows: "12 leeks, Mum helped" names none.
  if (apart && !(after === undefined || /^[,.;:)–-]$/.test(after.text) || after.kind === "number")) return undefined;
  if (/^(?:and|&|i|we|then)$/.test(first.lower)) return undefined;
  return { from, end: stop };
}

const colours =
  /^(?:red|green|white|black|purple|yellow|pink|orange|blue|big|small|little|new|old|first|last|early|late|more|fresh|young|baby|sweet|cherry|french|winter|summer|spring|autumn|mixed|dwarf|climbing|some|the|my|our|frozen|dried|ripe|giant)$/;
function isOnlyDescribing(words: readonly Word[], from: number, end: number): boolean {
  return words.slice(from, end).every(({ lower }) => colours.test(lower));
}

/** A number before or behind it, a list of plants around it, quotation marks, or a colon at the head of the line. */
function hasEvidence(words: readonly Word[], from: number, end: number, plants: readonly PlantMention[]): boolean {
  const before = words[from - 1];
  const after = words[end];
  if (before !== undefined && /^['‘"“]$/.test(before.text)) return true;
  const times = /^[x×]$/.test(after?.lower ?? "") ? words[end + 1] : after;
  const counted =
    before?.kind === "number" || (times?.kind === "number" && !/^(?:st|nd|rd|th)$/.test(words[end + 1]?.lower ?? ""));
  if (counted && !isPlace(before)) return true;
  if (from === 0 && /^[:–—-]$/.test(after?.text ?? "") && words[end + 1]?.kind === "number") return true;
  if (end === from + 1 && isDoer(words, from)) return false;
  if (/^(?:and|&|,|\/|\+)$/.test(before?.lower ?? ""))
    return plants.some((one) => one.end === from - 1 && one.basis !== "crop");
  return /^(?:and|&|,)$/.test(after?.lower ?? "") && plants.some((one) => one.from === end + 1 && one.basis !== "crop");
}

function isPlace(before: Word | undefined): boolean {
  return /^(?:in|at|from|to|near|of|st)$/.test(before?.lower ?? "");
}

function text(words: readonly Word[], from: number, end: number): string {
  let out = "";
  for (let at = from; at < end; at++) {
    const word = words[at];
    if (word === undefined) continue;
    out += at > from && words[at - 1]?.end !== word.start ? ` ${word.text}` : word.text;
  }
  return out;
}

/** "leek (Musselburgh)", "beans: Provider", "Musselburgh leeks": one plant; a crop said before a list is that of the list. */
function withCrops(words: readonly Word[], plants: readonly TablePlant[], names: Names): PlantMention[] {
  const out: TablePlant[] = [];
  let head: { readonly crop: string; readonly end: number } | undefined;
  for (let index = 0; index < plants.length; index++) {
    const one = plants[index] as TablePlant;
    const next = plants[index + 1];
    const gap = next === undefined ? undefined : between(words, one.end, next.from);
    if (
      one.basis !== "crop" &&
      next?.basis === "crop" &&
      gap !== undefined &&
      /^\d*$/.test(gap) &&
      fits(one, next.crop, names)
    ) {
      const whole = ofCrop({ ...one, end: next.end }, next.crop, names);
      out.push(gap === "" || whole.title === undefined ? whole : { ...whole, title: `${whole.title} ${gap}` });
      index += 1;
      continue;
    }
    if (
      one.basis === "crop" &&
      next !== undefined &&
      next.basis !== "crop" &&
      gap !== undefined &&
      /^(?:|[:(,‘'"“–—-]|[:,] ?['‘"“])$/.test(gap) &&
      fits(next, one.crop, names)
    ) {
      // "toms, Krim": the crop heads the variety, and the ones behind it.
      if (gap === "," && counted(words, one)) {
        out.push(one);
        continue;
      }
      head = { crop: one.crop as string, end: next.end };
      out.push(ofCrop({ ...next, from: one.from }, one.crop, names));
      index += 1;
      continue;
    }
    if (one.basis === "crop") {
      const colon = /^[:(]$/.test(words[one.end]?.text ?? "");
      head = { crop: one.crop as string, end: one.end };
      const heads =
        next !== undefined &&
        colon &&
        plants.slice(index + 1).some((other) => other.basis !== "crop" && fits(other, one.crop, names));
      if (heads) continue;
      out.push(one);
      continue;
    }
    const lineCrop = head?.crop ?? plants.slice(index + 1).find(({ basis }) => basis === "crop")?.crop;
    out.push(
      one.crop === undefined || (one.options?.length ?? 0) > 1
        ? ofCrop(one, fits(one, lineCrop, names) ? lineCrop : undefined, names)
        : one,
    );
  }
  return out;
}

function counted(words: readonly Word[], one: PlantMention): boolean {
  return words[one.from - 1]?.kind === "number";
}

function between(words: readonly Word[], from: number, to: number): string {
  return words
    .slice(from, to)
    .map(({ text: part }) => part)
    .join(" ");
}

function fits(one: TablePlant, crop: string | undefined, names: Names): boolean {
  if (crop === undefined) return false;
  const own = one.variety === undefined ? one.crop : names.cropOf(one.variety);
  if (one.options !== undefined) return one.options.some((option) => sameKind(option.crop, crop, names));
  return own === undefined || sameKind(own, crop, names);
}

function sameKind(a: string, b: string, names: Names): boolean {
  return a === b || (names.crop(a)?.family !== undefined && names.crop(a)?.family === names.crop(b)?.family);
}

function ofCrop(one: TablePlant, crop: string | undefined, names: Names): TablePlant {
  if (crop === undefined || one.variety !== undefined) return one;
  const option =
    one.options?.find((other) => other.crop === crop) ??
    one.options?.find((other) => sameKind(other.crop, crop, names));
  return {
    ...one,
    crop: option?.crop ?? (one.basis === "guess" ? crop : (one.crop ?? crop)),
    title: option?.title ?? one.title,
  };
}
