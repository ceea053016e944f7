/** The sentences that page data is said in: from facts that are worked out already, one whole sentence each. */
import {
  capital,
  fullStop,
  sayAge,
  sayCount,
  sayList,
  sayNumber,
  sayOrdinal,
  sayPlural,
} from "../../language/index.ts";
import type { Count, Obtained, Stage } from "../../model.ts";

/** How a planting began; days as they are said. */
export interface Beginning {
  readonly count?: Count | undefined;
  readonly spot?: string | undefined;
  readonly sown?: string | undefined;
  readonly planted?: string | undefined;
  readonly plantsFrom?: "bought" | "given" | undefined;
  /** From whom: "a neighbour". */
  readonly from?: string | undefined;
  readonly selfSown?: true | undefined;
  /** They came as plants, and not as sets, cloves or bulbs. */
  readonly asPlants?: boolean | undefined;
  /** Of a perennial from an earlier year. */
  readonly yearOfLife?: number | undefined;
  /** When it was first noted, where nothing else is known. */
  readonly noted: string;
}

/** What viewers are owed beside a source's name. */
export interface Disclosure {
  readonly words: string;
  readonly mustSay: boolean;
  /** With a year: "bought in 2025", "2025, own saved seed". */
  in(year: number): string;
  /** With the giver: "given free by Tidewater Cloth". */
  by(giver: string): string;
}

/** What a spot's green is a share of. */
type GreenOf = "bed" | "photo";

const COMPASS = ["north", "north-east", "east", "south-east", "south", "south-west", "west", "north-west"] as const;

/** Words that say a doing take the year or the giver behind them, others take them in front. */
function doing(words: string, mustSay: boolean): Disclosure {
  return { words, mustSay, in: (year) => `${words} in ${year}`, by: (giver) => `${words} by ${giver}` };
}

function fact(words: string, mustSay: boolean): Disclosure {
  return { words, mustSay, in: (year) => `${year}, ${words}`, by: (giver) => `${giver}, ${words}` };
}

const DISCLOSURES: Readonly<Record<Obtained, Disclosure>> = {
  bought: doing("bought", false),
  swapped: doing("swapped", false),
  saved: fact("own saved seed", false),
  gifted: doing("given free", true),
  lent: doing("lent free", true),
  "paid promotion": fact("paid promotion", true),
  "commission link": fact("commission link: this garden earns when you buy", true),
  "own product": fact("own product", true),
  discounted: doing("bought at a discount", true),
  "family business": fact("a business of family or friends", true),
};

const STANDING: Readonly<Record<Stage, (since: string) => string>> = {
  sown: () => "",
  up: (since) => `Up since ${since}.`,
  growing: () => "",
  flowering: (since) => `In flower since ${since}.`,
  fruiting: (since) => `Setting fruit since ${since}.`,
  picking: (since) => `Being picked since ${since}.`,
  finished: (since) => `Finished on ${since}.`,
  lost: (since) => `Lost on ${since}.`,
};

/** A spot as it is written may lack its preposition: "row 2", "the corner by the gate". */
function inSpot(spot: string): string {
  if (/^(?:in|on|at|by|between|along|under|near|behind|beside|next|up|against|around|among)\b/iu.test(spot))
    return spot;
  return /\b(?:end|side)\b/iu.test(spot) ? `at ${spot}` : `in ${spot}`;
}

/** "once", "twice", "seven times". */
function times(n: number): string {
  return n === 1 ? "once" : n === 2 ? "twice" : `${sayNumber(n)} times`;
}

/** "sown on 3 March and 4 April"; of many days the first and the last, and how many. */
function happened(what: string, days: readonly string[]): string {
  const [first, last] = [days[0], days.at(-1)];
  if (first === undefined || last === undefined) return "";
  return days.length <= 3 ? `${what} on ${sayList(days)}` : `${what} ${times(days.length)} from ${first} to ${last}`;
}

export const sentences = {
  planting: {
    /** "Six plants in row 2, sown on 21 April and planted out on 24 May." */
    beginning({
      count,
      spot,
      sown,
      planted,
      plantsFrom,
      asPlants,
      from,
      selfSown,
      yearOfLife,
      noted,
    }: Beginning): string {
      const place = spot === undefined ? "" : ` ${inSpot(spot)}`;
      const one = count?.value === 1 && count.upTo === undefined;
      const plants = count === undefined ? "" : `${capital(sayCount(count))} ${one ? "plant" : "plants"}${place}`;
      const told = (text: string) => (plants === "" ? `${capital(text)}.` : `${plants}, ${text}.`);
      if (yearOfLife !== undefined)
        return told(`in ${count === undefined || one ? "its" : "their"} ${sayOrdinal(yearOfLife)} year here`);
      const when = [
        sown === undefined ? undefined : `sown on ${sown}`,
        planted === undefined ? undefined : `planted ${sown === undefined ? "" : "out "}on ${planted}`,
      ].filter((part) => part !== undefined);
      if (selfSown === true) return told(`self-sown, first noted on ${noted}`);
      if (when.length === 0) return told(`first noted on ${noted}`);
      const source = from === undefined ? "" : `from ${from} `;
      const bare = source === "" ? "" : `${source.trim()}, `;
      const came =
        plantsFrom === undefined ? bare : `${plantsFrom}${asPlants === false ? "" : " as plants"} ${source}and `;
      return told(`${came}${when.join(" and ")}${plants === "" ? place : ""}`);
    },
    standing: (stage: Stage, since: string) => STANDING[stage](since),
    takenToBeOver: (since: string) => `Taken to be over since ${since}.`,
    lastPicked: (day: string) => `Last picked on ${day}.`,
    measured: (length: string, day: string) => `Measured ${length} on ${day}.`,
    picked: (amount: string, goesOn: boolean) => `${capital(amount)} picked${goesOn ? " so far" : ""}.`,
    pickedTimes: (n: number) => `Picked ${times(n)}.`,
    lost: (n: number) => `${capital(sayNumber(n))} lost.`,
  },

  /** One sentence on how a variety did. */
  result: {
    picked: (amount: string, first: string, n: number) =>
      amount === ""
        ? `Picked ${times(n)} ${n === 1 ? "on" : "since"} ${first}.`
        : `${capital(amount)} picked ${n === 1 ? "on" : "so far this year, since"} ${first}.`,
    flowering: (bed: string, since: string) => `In flower in ${bed} since ${since}.`,
    fruiting: (bed: string, since: string) => `Setting fruit in ${bed} since ${since}; nothing picked yet.`,
    sown: (bed: string, day: string) => `Sown in ${bed} on ${day}, not up yet.`,
    standing: (bed: string, days: number) => `In ${bed} for ${sayAge(days)}.`,
    growing: (beds: readonly string[], since: string) => `Growing in ${sayList(beds)} since ${since}.`,
    waiting: (sown: string) => `Sown on ${sown}, not planted out yet.`,
    never: "Not grown here yet.",
    /** `year` is undefined for this one. */
    last: (season: string | undefined, amount: string, wasLost: boolean) => {
      const when = season === undefined ? "earlier this year" : `in ${season}`;
      if (wasLost && amount === "") return `Last grown ${when}, and lost.`;
      return `Last grown ${when}${amount === "" ? "" : `: ${amount} picked`}.`;
    },
  },

  /** A year of a variety in words, beside its strip. */
  strip: {
    sown: (days: readonly string[]) => happened("sown", days),
    planted: (days: readonly string[]) => happened("planted", days),
    /** On the first and the last of `times` days. */
    picked: (days: readonly string[], n: number) => {
      const [first, last] = [days[0], days.at(-1)];
      if (first === undefined || last === undefined) return "";
      return first === last ? `picked on ${first}` : `picked ${times(n)} from ${first} to ${last}`;
    },
    stood: "Nothing is noted but that it stood.",
    each: (amount: string) => `${amount} a plant`,
  },

  /** What a photo of a variety shows of it. */
  subject: {
    "close-up": "Close up",
    "cut open": "Cut open",
    leaf: "Leaf",
    flower: "Flower",
    seed: "Seed",
    "in the hand": "In the hand",
  },

  again: (would: boolean, words: string | undefined) =>
    `${would ? "Would grow it again" : "Would not grow it again"}${words === undefined ? "." : `: ${fullStop(words)}`}`,

  inBed: (bed: string, told: string) => `In ${bed}: ${told}`,
  alsoWritten: (spellings: readonly string[]) => `Also written ${sayList(spellings, "or")}.`,

  bed: {
    unnamed: "Unnamed",
    noLongerUsed: "No longer in use.",
    empty: "Empty now.",
    more: (n: number) => `${sayNumber(n)} more`,
    size: (length: string, width: string) => `${length} by ${width}`,
    /** Degrees from north. */
    facing: (degrees: number) => `facing ${COMPASS[Math.round(degrees / 45) % 8]}`,
    was: (name: string, until: string) => `Called ${name} until ${until}.`,
    inUseSince: (when: string) => `In use since ${when}.`,
    built: (what: string, when: string | undefined) => `Built: ${what}${when === undefined ? "" : `, ${when}`}.`,
    filled: (what: string, when: string | undefined) => `Filled with ${what}${when === undefined ? "" : `, ${when}`}.`,
    soil: (soil: string) => fullStop(`Soil: ${soil}`),
    ph: (ph: string, day: string) => `Soil pH ${ph}, measured on ${day}.`,
    standing: (gear: readonly string[]) => `Standing in it: ${sayList(gear)}.`,
  },

  age: {
    of: (plants: string, age: string) => `${plants} ${age}`,
    planted: (days: number) => `${days === 0 ? "on the day of" : `${sayAge(days)} after`} planting`,
    sown: (days: number) => `${days === 0 ? "on the day of" : `${sayAge(days)} after`} sowing`,
    noted: (days: number) => (days === 0 ? "first noted that day" : `first noted ${sayAge(days)} before`),
    inYear: (year: number) => `in its ${sayOrdinal(year)} year here`,
    otherCrops: (n: number) => `and ${sayNumber(n)} other crops`,
  },

  green: {
    went: (from: string, to: string, of: GreenOf) =>
      `${of === "bed" ? "Cover" : "The green in the photo"} went from ${from} to ${to}`,
    at: (share: string, day: string, of: GreenOf) =>
      `${of === "bed" ? "Cover" : "The green in the photo"} was ${share} on ${day}.`,
    covered: "covered",
    cannotTell: "cannot tell",
    between: (said: string, from: string, to: string) => `${said} between ${from} and ${to}.`,
    highest: (day: string, share: string) => `It was highest on ${day}, ${share}.`,
    title: (bed: string, of: GreenOf, spot: string | undefined) =>
      `${of === "photo" ? `How green ${bed} looks` : `How much of ${bed} is green`}${spot === undefined ? "" : `, from the ${spot}`}`,
    method: (spot: string, of: GreenOf) =>
      of === "bed"
        ? `Measured in the photos from the ${spot}: how much of the bed is covered by green leaves. Flowers and ripe fruit do not count; where red leaves grow, or leaves that look like boards, a photo cannot tell. A change is told from ten points on, and a week's from photos two weeks apart or more.`
        : `Measured in the photos from the ${spot}: how much of the photo is green. A change is told from ten points on, and a week's from photos two weeks apart or more.`,
    heads: (of: GreenOf) => ["Day", of === "bed" ? "Cover" : "Green", "Change a week"],
    points: (n: number) => sayPlural(n, "point", "points"),
  },

  change: {
    more: (amount: string, unsure: string) => `${amount} more, give or take ${unsure}`,
    less: (amount: string, unsure: string) => `${amount} less, give or take ${unsure}`,
  },

  heights: {
    title: "Measured height or length",
    withRule: "Measured with a rule.",
    offPhotos: "Open points were read off photos, against a stake of known length, with a line for how sure they are.",
    heads: (several: boolean) => ["Day", ...(several ? ["What"] : []), "Height or length", "Change a week"],
    giveOrTake: (length: string, unsure: string) => `${length}, give or take ${unsure}`,
    on: (what: string, length: string, day: string) => `${what}: ${length} on ${day}.`,
    fromTo: (what: string, from: string, on: string, to: string, until: string) =>
      `${what}: ${from} on ${on}, ${to} on ${until}.`,
    planted: (day: string) => `planted ${day}`,
    sown: (day: string) => `sown ${day}`,
    noted: (day: string) => `noted ${day}`,
  },

  compared: {
    spot: (viewpoint: string) => `From the ${viewpoint}`,
    apart: (days: number) => `${capital(sayAge(days))} apart.`,
    method: "Both photos are cropped to match, and their light evened out.",
    longMethod:
      "The photos of a spot are laid over one another and cut to what all of them show; none is enlarged. Brightness and white balance are evened out for the comparison, by what is no plant: soil, boards, walls and paths. Photos that do not fit over the others are left out.",
    now: "now",
    tour: (day: string, until: string) => `The tour of ${day}, and ${until}`,
    sameWeek: (years: number, until: string) =>
      `The same week ${years === 1 ? "last year" : `${sayNumber(years)} years ago`}, and ${until}`,
    span: (from: string, to: string) => `${from} to ${to}`,
  },

  lapse: {
    caption: (spot: string, span: string, photos: number) =>
      `${spot}, ${span}: ${sayNumber(photos)} photos, one a week.`,
    alt: (bed: string, spot: string, span: string) => `${bed} from the ${spot}, ${span}, week after week`,
  },

  photo: {
    garden: "The garden",
    from: (what: string, viewpoint: string) => `${what} from the ${viewpoint}`,
    in: (plants: string, bed: string) => `${plants} in ${bed}`,
    nth: (n: number) => `${sayOrdinal(n)} photo`,
    look: (spot: string) => `Where to look: ${spot}.`,
  },

  film: {
    on: (day: string) => `Filmed on ${day}`,
    walk: (beds: readonly string[]) => `It stops at ${sayList(beds)}.`,
    inIt: (subjects: readonly string[]) => `In it: ${subjects.join("; ")}.`,
    moreBeds: (n: number) => sayPlural(n, "more bed", "more beds"),
    feed: (garden: string) => `Films and seasons from ${garden}.`,
  },

  source: {
    none: "Source not recorded",
    disclosures: DISCLOSURES,
  },

  csv: {
    heads: [
      "variety",
      "crop",
      "family",
      "botanical name",
      "say it as",
      "source",
      "how obtained",
      "source year",
      "link",
      "beds now",
      "new this year",
      "picked this year",
      "page",
    ] as readonly string[],
    yes: "yes",
  },
};

export type Sentences = typeof sentences;
