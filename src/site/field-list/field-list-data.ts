/** The field list of one tour as plain data, made from its brief and from nothing else. */

import { clockOf, offFilm } from "../../films/index.ts";
import { capital, type Sentence } from "../../language/index.ts";
import type { Day, GardenSettings } from "../../model.ts";
import type { TypedGarden } from "../../records/index.ts";
import {
  type Brief,
  type Card,
  factParagraphs,
  type PlanToKeep,
  planToKeep,
  quietChanges,
  type Shot,
  type Stop,
  type TourCards,
  type TourCover,
} from "../../tour/index.ts";
import type { ListedShot, ListedStop } from "./phone/shapes.ts";

/** A picture carried inside the page. */
export interface FieldPicture {
  /** data: address */
  readonly src: string;
  readonly width: number;
  readonly height: number;
}

export interface FieldShot extends ListedShot, Pick<Shot, "kind"> {
  /** Stands on the card; the others are in the dossier below it. */
  readonly onCard: boolean;
}

/** One line of a card: "Now", "Figure", "Why". */
export interface CardLine {
  readonly part: string;
  readonly text: string;
  /** What the hand does, at the beginning of the text. */
  readonly hand?: string | undefined;
}

export interface FieldStop extends ListedStop {
  /** Anchor in the page. */
  readonly id: string;
  readonly number: number;
  /** Where the tour comes to a site, and where it begins. */
  readonly site?: string | undefined;
  readonly shots: readonly FieldShot[];
  /** "1:20 · 2:16 gone" */
  readonly time: string;
  /** Said to the lens, whole. */
  readonly opening?: string | undefined;
  readonly lines: readonly CardLine[];
  /** Wall clock "9:21". */
  readonly from?: string | undefined;
  /** "Ten steps north from the bean row" */
  readonly way?: string | undefined;
  /** "sun behind you until 10:40" */
  readonly light?: string | undefined;
  readonly picture?: (FieldPicture & { readonly alt: string }) | undefined;
  /** Varieties to be named, with how many, how to say them, where from. */
  readonly names: readonly { readonly name: string; readonly say?: string | undefined; readonly about: string }[];
  /** What the card had no room for. */
  readonly further: readonly string[];
  /** What is known of what stands here, and what changed since viewers saw it. */
  readonly facts: readonly Sentence[];
  readonly changes: readonly Sentence[];
  /** Earlier films to point to. */
  readonly films: readonly string[];
  readonly cautions: readonly string[];
}

export interface FieldList {
  readonly tour: string;
  readonly title: string;
  readonly garden: string;
  readonly language: string;
  readonly day: Day;
  readonly dayText: string;
  /** Words a minute. */
  readonly rate: number;
  readonly cover: TourCover;
  readonly stops: readonly FieldStop[];
  readonly plan: PlanToKeep;
  /** The garden's names, by which a note is read while it is typed; without them none is. */
  readonly reads?: TypedGarden | undefined;
  /** Whom to call when a plant on the walk hurt somebody. */
  readonly care?: string | undefined;
}

/** `pictures` by photo path; a photo without one is not shown. */
export function fieldListData(
  { cover, cards, dossier: brief }: TourCards,
  settings: Pick<GardenSettings, "name" | "language" | "narrationRate">,
  pictures: ReadonlyMap<string, FieldPicture>,
): FieldList {
  const starts = brief.stops.map((stop) => secondsIn(brief, stop.from) ?? stop.begins);
  const cardOf = new Map(cards.map((card) => [card.id, card]));
  const stops = brief.stops.map((stop, index): FieldStop => {
    const card = cardOf.get(stop.id);
    return {
      id: stop.id.toLowerCase(),
      number: stop.number,
      bed: stop.bed,
      title: stop.title,
      site: stop.site === brief.stops[index - 1]?.site ? undefined : stop.siteTitle,
      begins: starts[index] ?? 0,
      ends: endOf(stop, starts[index] ?? 0, starts[index + 1]),
      time: `${clockOf(stop.seconds)} · ${clockOf(stop.begins)} gone`,
      opening: card?.opening.text,
      lines: card === undefined ? [] : linesOf(card),
      from: stop.from,
      way: stop.way === undefined ? undefined : capital(stop.way),
      light: stop.light,
      shots: shotsOf(stop, card),
      outline: card === undefined ? [] : spokenOf(card),
      picture: pictureOf(stop, pictures),
      names: stop.varieties.map(({ label, howMany, sayAs, from }) => ({
        name: label,
        say: sayAs,
        about: [howMany, from].filter((part) => part !== "").join(", "),
      })),
      facts: factParagraphs(stop),
      changes: stop.changes.filter(({ kind }) => !quietChanges.has(kind)).toReversed(),
      films: stop.pointTo.map(({ text, about }) => `${text} (${about})`),
      further: [...(card?.further ?? []), ...(card?.quoted ?? [])]
        .filter(({ private: hidden }) => !hidden)
        .map(({ text }) => text),
      cautions: [...stop.cautions, ...stop.furtherCautions].map(({ text }) => text),
    };
  });
  return {
    tour: brief.tour,
    title: brief.title,
    garden: settings.name,
    language: settings.language,
    day: brief.date,
    dayText: brief.dateText,
    rate: settings.narrationRate,
    cover,
    stops,
    plan: planToKeep(brief),
    care: brief.closingCaution,
  };
}

/** A stop is left in time for the next: at once when that is near, earlier than its beginning when the way is long. */
function endOf(stop: Stop, begins: number, next: number | undefined): number {
  const filmed = begins + stop.seconds + (stop.from === undefined ? 0 : offFilm.setUp);
  return next === undefined ? filmed : Math.min(filmed, next);
}

/** Photos a field list shows, by path. */
export function picturesWanted(brief: Brief): readonly string[] {
  return [...new Set(brief.stops.flatMap((stop) => matchOf(stop) ?? []))];
}

function matchOf(stop: Stop): string | undefined {
  return stop.shots.find(({ match }) => match !== undefined)?.match;
}

function pictureOf(stop: Stop, pictures: ReadonlyMap<string, FieldPicture>): FieldStop["picture"] {
  const picture = pictures.get(matchOf(stop) ?? "");
  return picture === undefined
    ? undefined
    : { ...picture, alt: `${stop.title} as it was last filmed: match this view` };
}

/** The card's shorter words are what is read; those of the plan go home. */
function shotsOf(stop: Stop, card: Card | undefined): readonly FieldShot[] {
  const order = card?.shots.map(({ id }) => id) ?? [];
  const shots = stop.shots.map(({ id, key, kind, level, text }): FieldShot => {
    const short = card?.shots.find((shot) => shot.id === id);
    const words = short === undefined ? text : `${short.text}${short.hold ? ", hold 10" : ""}`;
    return {
      id,
      key,
      words: text,
      kind: short?.cutaway === true ? "cutaway" : kind,
      level,
      text: capital(words),
      onCard: card === undefined || short !== undefined,
    };
  });
  const place = ({ id }: FieldShot) => (order.includes(id) ? order.indexOf(id) : order.length);
  return shots.toSorted((one, other) => place(one) - place(other));
}

function linesOf({ before, now, figure, why, names, aloud, next }: Card): readonly CardLine[] {
  const line = (part: string, phrase: Sentence | undefined): readonly CardLine[] =>
    phrase === undefined ? [] : [{ part, text: phrase.text }];
  return [
    ...line("Then", before),
    ...now.map(({ text, hand }) => ({ part: "Now", text, hand })),
    ...line("Figure", figure),
    ...line("Why", why),
    ...names.map(({ text }) => ({ part: "Names", text })),
    ...aloud.map(({ text }) => ({ part: "Say", text: `“${text}”` })),
    ...line("Next", next),
  ];
}

/** What is said, in order, for the large view: names are cues and no sentence. */
function spokenOf({ opening, before, now, figure, why, aloud, next }: Card): readonly string[] {
  return [opening, before, ...now, figure, why, ...aloud, next].flatMap((phrase) => phrase?.text ?? []);
}

/** Seconds from the start of filming to a later time of day, past midnight if need be; undefined when nobody knows either. */
function secondsIn({ start }: Brief, clock: string | undefined): number | undefined {
  if (start === undefined || clock === undefined) return undefined;
  const minutes = (minutesOf(clock) - minutesOf(start) + 1440) % 1440;
  return minutes * 60;
}

function minutesOf(clock: string): number {
  const [hours = 0, minutes = 0] = clock.split(":").map(Number);
  return hours * 60 + minutes;
}
