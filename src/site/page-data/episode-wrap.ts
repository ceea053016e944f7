/** What a film's page shows of its wrap: chapters that jump, the transcript, varieties with their times, data for search engines. */
import type { Episode } from "../../model.ts";
import { cropName } from "../../timeline/index.ts";
import { videoObject, type Wrap, wrapEpisode } from "../../wrap/index.ts";
import type { Picture, SourceLine } from "./shapes.ts";
import { sourceLine, webAddress } from "./sources.ts";
import type { View } from "./view.ts";

/** A moment of the film: `seconds` into it, "6:40" as players show it, and an anchor on the page. */
export interface FilmMoment {
  readonly seconds: number;
  readonly time: string;
  /** "t=400", as a media fragment names it. */
  readonly anchor: string;
}

export interface EpisodeWrapShown {
  readonly chapters: readonly (FilmMoment & { readonly title: string; readonly bedHref?: string | undefined })[];
  /** Plain text, names set right. */
  readonly transcript: readonly (FilmMoment & { readonly text: string })[];
  readonly varieties: readonly (FilmMoment & {
    readonly href: string;
    readonly name: string;
    readonly crop: string;
    readonly source?: SourceLine | undefined;
  })[];
  /** JSON-LD, safe inside a script element; undefined without the site's address, the film's own or a picture. */
  readonly data?: string | undefined;
}

export interface EpisodeCaptions {
  readonly file: string;
  readonly bytes: Uint8Array;
}

/** Give it the view of the public garden only: everything here is made from what that one knows. */
export function episodeWrap(
  view: View,
  episode: Episode,
  captions: EpisodeCaptions,
  picture?: Picture,
): EpisodeWrapShown {
  const { garden, links } = view;
  const { wrap } = wrapEpisode({ garden, episode, captions });
  return {
    chapters: wrap.chapters.map(({ at, time, title, bed }) => ({
      ...moment(at, time),
      title,
      bedHref: bed === undefined || !garden.beds.has(bed) ? undefined : links.bed(bed),
    })),
    transcript: wrap.transcript.map(({ at, time, text }) => ({ ...moment(at, time), text })),
    varieties: wrap.coverage.named.flatMap(({ variety: id, title, at, time }) => {
      const variety = garden.varieties.get(id);
      if (variety === undefined) return [];
      const crop = variety.crop === undefined ? undefined : garden.crops.get(variety.crop);
      return [
        {
          ...moment(at, time),
          href: links.variety(id),
          name: title,
          crop: crop === undefined ? "" : cropName(crop, 1),
          source: sourceLine(variety.source),
        },
      ];
    }),
    data: data(view, episode, wrap, picture),
  };
}

function moment(at: number, time: string): FilmMoment {
  const seconds = Math.floor(at);
  return { seconds, time, anchor: `t=${seconds}` };
}

function data(view: View, episode: Episode, wrap: Wrap, picture: Picture | undefined): string | undefined {
  const { address } = view.garden.settings;
  const film = webAddress(episode.link);
  if (address === undefined || film === undefined || picture === undefined) return undefined;
  const object = videoObject({
    name: episode.title,
    description: wrap.description.text,
    thumbnails: [address + picture.src],
    published: episode.published ?? episode.day,
    length: wrap.length,
    film,
    page: address + view.links.episode(episode.id),
    chapters: wrap.chapters,
  });
  return JSON.stringify(object).replace(/</gu, "\\u003c");
}
