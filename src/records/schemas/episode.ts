/** episodes/ID/index.md: one film, planned, filmed or published. */
import * as z from "zod";
import type { Episode, EpisodePromise, EpisodeStop, Place, RecordFile } from "../../model.ts";
import { clock, day, duration, filmTime, link, oneOf, text, texts } from "./fields.ts";
import { recordKeys } from "./record.ts";

const stop = z.preprocess(
  (value) => (typeof value === "string" ? { bed: value } : value),
  z.strictObject({ bed: text, at: filmTime.optional() }),
);

const promise = z.preprocess(
  (value) => (typeof value === "string" ? { what: value } : value),
  z.strictObject({
    what: text,
    bed: text.optional(),
    due: day.optional(),
    kept: text.optional(),
    at: filmTime.optional(),
  }),
);

export const episodeSchema = z.strictObject({
  ...recordKeys,
  date: day,
  published: day.optional(),
  status: oneOf(["planned", "filmed", "published"]).optional(),
  target: duration.optional(),
  start: clock.optional(),
  link: link.optional(),
  stops: z.preprocess((value) => (typeof value === "string" ? [value] : value), z.array(stop)).optional(),
  "first stop": text.optional(),
  "last stop": text.optional(),
  promised: z.array(promise).optional(),
  must: texts.optional(),
  keep: texts.optional(),
  skip: texts.optional(),
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
  return { what: written.what, bed, due: written.due, kept: written.kept, at: written.at, place };
}
