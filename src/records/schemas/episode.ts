/** episodes/ID/index.md: one film, planned, filmed or published. */
import * as z from "zod";
import type { Episode, EpisodePromise, EpisodeStop, Place, RecordFile } from "../../model.ts";
import { clock, day, duration, filmTime, link, oneOf, text, texts } from "./fields.ts";
import { forViewers, forYou } from "./meaning.ts";
import { recordKeys } from "./record.ts";

const stop = z.preprocess(
  (value) => (typeof value === "string" ? { bed: value } : value),
  z.strictObject({
    bed: forViewers("the bed", "Long Bed", text),
    at: forViewers("where in the film it begins", "6:40", filmTime.optional()),
  }),
);

const promise = z.preprocess(
  (value) => (typeof value === "string" ? { what: value } : value),
  z.strictObject({
    what: forViewers("what viewers were told they would see", "show the leeks again", text),
    bed: forViewers("the bed it is about", "Long Bed", text.optional()),
    due: forViewers("the day by which", "2026-07-31", day.optional()),
    kept: forViewers("the day or the episode in which it was kept", "2026-07-tour", text.optional()),
    "puts off": forViewers("the words of an earlier promise that it puts off", "show the leeks", text.optional()),
    at: forViewers("where in the film it was said", "4:10", filmTime.optional()),
  }),
);

export const episodeSchema = z.strictObject({
  ...recordKeys,
  date: forViewers("the day it is filmed", "2026-07-18", day),
  published: forViewers("the day it came out", "2026-07-22", day.optional()),
  status: forViewers(
    "how far it is; only a published film is shown to viewers",
    "published",
    oneOf(["planned", "filmed", "published"]).optional(),
  ),
  target: forYou("how long it should become, in minutes unless you say otherwise", "12 min", duration.optional()),
  start: forYou("when you begin to film", '"09:15"', clock.optional()),
  link: forViewers("where the film can be watched: its whole address", "https://films.example/july", link.optional()),
  stops: forViewers(
    "the beds it shows, in the order of the walk, with their time in the film when it is out",
    '[Long Bed, { bed: Cold Frame, at: "6:40" }]',
    z.preprocess((value) => (typeof value === "string" ? [value] : value), z.array(stop)).optional(),
  ),
  "first stop": forYou("the bed to begin at", "Long Bed", text.optional()),
  "last stop": forYou("the bed to end at", "Cold Frame", text.optional()),
  promised: forViewers(
    "what viewers were told they would see",
    "[{ what: show the leeks again, bed: Long Bed, due: 2026-07-31 }]",
    z.array(promise).optional(),
  ),
  must: forYou("what has to be in the film, by bed, crop or variety", "[the leeks]", texts.optional()),
  keep: forYou("what would have fallen out for want of time, and stays", "[the beetroot]", texts.optional()),
  skip: forYou("what is not to be in the film", "[the mint]", texts.optional()),
});

export interface EpisodeLinks {
  readonly stops: readonly EpisodeStop[];
  readonly firstStop?: string | undefined;
  readonly lastStop?: string | undefined;
  readonly promised: readonly EpisodePromise[];
  readonly captions: readonly string[];
}

export function makeEpisode(file: RecordFile, front: z.output<typeof episodeSchema>, links: EpisodeLinks): Episode {
  return {
    ...file,
    day: front.date,
    published: front.published,
    status: front.status ?? (front.published === undefined ? "planned" : "published"),
    target: front.target,
    start: front.start,
    link: front.link,
    must: front.must ?? [],
    keep: front.keep ?? [],
    skip: front.skip ?? [],
    ...links,
  };
}

export function makePromise(written: z.output<typeof promise>, place: Place, bed: string | undefined): EpisodePromise {
  const { what, due, kept, at } = written;
  return { what, bed, due, kept, putsOff: written["puts off"], at, place };
}
