/**
 * The field list of one tour as plain data, made from its brief and from nothing else. A brief that has no shots of its
 * own lists what it says to show.
 */
import type { Day, GardenSettings } from "../../model.ts";
import { capital } from "../../timeline/index.ts";
import type { Brief, Sentence, Stop } from "../../tour/index.ts";
import type { ListedShot, ListedStop } from "./phone/shapes.ts";

/** A picture carried inside the page. */
export interface FieldPicture {
  /** data: address */
  readonly src: string;
  readonly width: number;
  readonly height: number;
}

export interface FieldShot extends ListedShot {
  /** "wide", "close-up"; undefined when the brief does not tell. */
  readonly kind?: string | undefined;
  /** "must" */
  readonly level?: string | undefined;
}

export interface FieldStop extends ListedStop {
  /** Anchor in the page. */
  readonly id: string;
  readonly number: number;
  readonly site?: string | undefined;
  readonly shots: readonly FieldShot[];
  /** Wall clock "9:21". */
  readonly from?: string | undefined;
  /** Line from the stop before. */
  readonly link?: string | undefined;
  /** "sun behind you until 10:40" */
  readonly light?: string | undefined;
  /** Where the camera stands. */
  readonly spot?: string | undefined;
  readonly picture?: (FieldPicture & { readonly alt: string }) | undefined;
  /** Varieties to be named, with how many, how to say them, where from. */
  readonly names: readonly { readonly name: string; readonly say?: string | undefined; readonly about: string }[];
  readonly cautions: readonly string[];
}

export interface FieldList {
  readonly tour: string;
  readonly title: string;
  readonly garden: string;
  readonly language: string;
  readonly day: Day;
  readonly dayText: string;
  /** "9:15" */
  readonly start?: string | undefined;
  /** Words a minute. */
  readonly rate: number;
  readonly stops: readonly FieldStop[];
}

/** What the plan of a tour adds to its stops. */
type PlannedStop = Stop & {
  readonly from?: string | undefined;
  readonly link?: string | Sentence | undefined;
  readonly light?: string | Sentence | undefined;
  readonly shots?:
    | readonly {
        readonly id: string;
        readonly kind?: string | undefined;
        readonly level?: string | undefined;
        readonly text: string;
        readonly match?: string | undefined;
      }[]
    | undefined;
  readonly outline?: readonly { readonly text: string }[] | undefined;
};

/** `pictures` by photo path; a photo without one is not shown. */
export function fieldListData(
  brief: Brief,
  settings: Pick<GardenSettings, "name" | "language" | "narrationRate">,
  pictures: ReadonlyMap<string, FieldPicture>,
): FieldList {
  const start = brief.start?.replace(/^0/, "");
  let begins = 0;
  const stops = brief.stops.map((each): FieldStop => {
    const stop = each as PlannedStop;
    const planned = stop.from === undefined || start === undefined ? begins : secondsBetween(start, stop.from);
    begins = planned + stop.seconds;
    return {
      id: stop.id.toLowerCase(),
      number: stop.number,
      bed: stop.bed,
      title: stop.title,
      site: stop.siteTitle,
      begins: planned,
      seconds: stop.seconds,
      from: stop.from ?? (start === undefined ? undefined : clockAfter(start, planned)),
      link: wordsOf(stop.link),
      light: wordsOf(stop.light),
      spot: stop.spot.spot === undefined ? undefined : capital(stop.spot.text),
      shots: shotsOf(stop),
      outline: outlineOf(stop),
      picture: pictureOf(stop, pictures),
      names: stop.varieties.map(({ label, howMany, sayAs, from }) => ({
        name: label,
        say: sayAs,
        about: `${howMany}, ${from}`,
      })),
      cautions: [...stop.disclosures, ...stop.cautions].map(({ text }) => text),
    };
  });
  return {
    tour: brief.tour,
    title: brief.title,
    garden: settings.name,
    language: settings.language,
    day: brief.date,
    dayText: brief.dateText,
    start,
    rate: settings.narrationRate,
    stops,
  };
}

/** Photos a field list shows, by path. */
export function picturesWanted(brief: Brief): readonly string[] {
  return [...new Set(brief.stops.flatMap((stop) => matchOf(stop) ?? []))];
}

function matchOf(stop: PlannedStop): string | undefined {
  return stop.shots?.find(({ match }) => match !== undefined)?.match ?? stop.spot.photo?.path;
}

function pictureOf(stop: PlannedStop, pictures: ReadonlyMap<string, FieldPicture>): FieldStop["picture"] {
  const picture = pictures.get(matchOf(stop) ?? "");
  return picture === undefined
    ? undefined
    : { ...picture, alt: `${stop.title} as it was last filmed: match this view` };
}

function shotsOf(stop: PlannedStop): readonly FieldShot[] {
  const shots = stop.shots ?? stop.show;
  const seen = new Map<string, number>();
  return shots.map((shot) => {
    const { id, level, text } = shot;
    const times = (seen.get(text) ?? 0) + 1;
    seen.set(text, times);
    const kind = stop.shots === undefined ? undefined : shot.kind;
    return { id, key: times === 1 ? text : `${text} (${times})`, kind, level, text };
  });
}

function outlineOf(stop: PlannedStop): readonly string[] {
  // What is private is there to be known, not to be said.
  const told = stop.outline ?? [...stop.show, ...stop.facts].filter((sentence) => !sentence.private);
  return told.map(({ text }) => text);
}

function wordsOf(words: string | Sentence | undefined): string | undefined {
  return typeof words === "string" || words === undefined ? words : words.text;
}

/** Seconds from one time of day to a later one, past midnight if need be. */
function secondsBetween(from: string, to: string): number {
  return ((((minutesOf(to) - minutesOf(from)) % 1440) + 1440) % 1440) * 60;
}

function clockAfter(start: string, seconds: number): string {
  const minutes = (minutesOf(start) + Math.floor(seconds / 60)) % 1440;
  return `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, "0")}`;
}

function minutesOf(clock: string): number {
  const [hours = 0, minutes = 0] = clock.split(":").map(Number);
  return hours * 60 + minutes;
}
