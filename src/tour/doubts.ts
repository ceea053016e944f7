/** Doubts about names, as they stand in the notes: a label that says one thing and a plant that looks like another. */

import type { Book } from "../garden/index.ts";
import { endOf, type Ground, mentions, onDay, type Sentence, say, sentencesOf, type Voice } from "../language/index.ts";
import type { Day, Event, Note, Place } from "../model.ts";
import type { BedOnTheDay } from "./bed-on-the-day.ts";

/** The latest of them; older ones were settled or forgotten. */
const mostTold = 6;

/** Words of doubt about names, as people write them in their notes. */
const doubtWords =
  /\b(?:labels?|tags?|mislabell?ed|mixed up|mix-up|swapped labels|not sure (?:which|what|if)|no idea which|which (?:one|variety) is|may be the|might be the|could be the|looks? (?:more )?like|can't tell which|can’t tell which|unlabell?ed|lost its label|says? on the (?:label|packet))\b/i;

/** Doubts of this season that name a bed or a plant of the tour, as they were written. */
export function doubtsNoted(index: Book, stops: readonly BedOnTheDay[], voice: Voice): readonly Sentence[] {
  const { garden } = index;
  const season = stops[0]?.season ?? voice.day;
  const beds = new Set(stops.map((here) => here.bed.id));
  const names = [
    ...new Set(
      stops.flatMap((here) => here.growing.flatMap(({ variety }) => (variety === undefined ? [] : [variety.title]))),
    ),
  ];
  const bedNames = stops.flatMap((here) => [here.bed.title, ...here.bed.alsoCalled]);
  const ofTour = (text: string, inBeds: readonly string[]) =>
    inBeds.some((bed) => beds.has(bed)) || mentions(text, [...names, ...bedNames]);
  const notes = between(garden.notes, season, voice.day);
  const told = notes.flatMap((note) => doubtsOfNote(note, ofTour));
  const events = between(garden.events, season, voice.day);
  const logged = events.flatMap((event) => doubtsOfEvent(event, ofTour));
  return [...told, ...logged]
    .toSorted((a, b) => (a.day < b.day ? -1 : 1))
    .slice(-mostTold)
    .map((doubt) => say(`A doubt in your notes ${onDay(doubt.day, voice)}: “${doubt.text}”`, [doubt]));
}

/** Of a list in order of day; from its end, because the season asked about is nearly always the last. */
function between<T extends { readonly day: Day }>(all: readonly T[], from: Day, to: Day): readonly T[] {
  const last = all.findLastIndex(({ day }) => day <= to);
  const before = all.findLastIndex(({ day }) => day < from);
  return all.slice(before + 1, last + 1);
}

interface Doubt extends Ground {
  readonly day: string;
  readonly text: string;
  readonly place: Place;
}

function doubtsOfNote(note: Note, ofTour: (text: string, beds: readonly string[]) => boolean): Doubt[] {
  return note.story.flatMap(({ text, place, private: hidden = note.private }) =>
    // Few paragraphs doubt anything, and only those are taken apart: a list by its items.
    (doubtWords.test(text) ? itemsOf(text).flatMap(sentencesOf) : [])
      .filter((sentence) => doubtWords.test(sentence) && ofTour(sentence, note.beds))
      .map((sentence) => ({ day: note.day, text: sentence, place, private: hidden })),
  );
}

/** Each item of a list by itself; the lines of a paragraph stay together. */
function itemsOf(text: string): readonly string[] {
  const items: string[] = [];
  for (const line of text.split("\n")) {
    const words = line.trimStart();
    const begins = words.startsWith("- ") || words.startsWith("* ");
    const last = items.pop();
    if (begins) items.push(...(last === undefined ? [] : [last]), words.slice(2));
    else items.push(last === undefined ? line : `${last}\n${line}`);
  }
  return items;
}

function doubtsOfEvent(event: Event, ofTour: (text: string, beds: readonly string[]) => boolean): Doubt[] {
  const beds = event.bed === undefined ? [] : [event.bed];
  return [event.detail, ...event.more]
    .filter((text) => text !== undefined)
    .filter((text) => doubtWords.test(text) && ofTour(event.text, beds))
    .map((text) => ({ day: event.day, text: endOf(text), place: event.place, private: event.private }));
}
