/** What films say, as their pages show it: chapters that jump, the transcript, varieties with the times they are named at. */
import { cropOf } from "../../crop-of.ts";
import { cropName } from "../../language/index.ts";
import type { Episode } from "../../model.ts";
import { compare } from "../../order.ts";
import { type FilmTold, filmTold } from "../../wrap/index.ts";
import type { FilmTexts } from "../public-captions.ts";
import type { EpisodeWrapShown, FilmMoment, TranscriptPart } from "./film-shapes.ts";
import { filmAt, filmTime } from "./film-time.ts";
import { sourceLine, webAddress } from "./sources.ts";
import type { View } from "./view.ts";

/** By episode id. Films whose captions hold no word have none. */
export type EpisodeWraps = ReadonlyMap<string, EpisodeWrap>;

export interface EpisodeWrap {
  readonly wrap: FilmTold;
  readonly shown: EpisodeWrapShown;
  /** A moment as other pages name it. */
  moment(seconds: number): FilmMoment;
}

/** Give it the view of the public garden, and only the captions that viewers may read. */
export function episodeWraps(view: View, { captions, glossary }: FilmTexts): EpisodeWraps {
  const films = [...captions].flatMap(([id, file]) => {
    const episode = view.garden.episodes.get(id);
    return episode === undefined ? [] : [{ episode, file }];
  });
  // In order of day, so that the beds of one filming day go on from those of the one before.
  const told = new Map(
    films
      .toSorted((a, b) => compare(a.episode.day, b.episode.day))
      .map(({ episode, file }) => [episode.id, filmTold({ garden: view.garden, episode, captions: file, glossary })]),
  );
  return new Map(
    films.flatMap(({ episode }) => {
      const wrap = told.get(episode.id);
      return wrap === undefined || wrap.transcript.length === 0 ? [] : [[episode.id, shownOf(view, episode, wrap)]];
    }),
  );
}

function shownOf(view: View, episode: Episode, wrap: FilmTold): EpisodeWrap {
  const { garden, links, words } = view;
  const film = webAddress(episode.link);
  const page = links.episode(episode.id);
  const transcript = transcriptOf(wrap, film);
  const anchors = transcript.flatMap(({ anchor, paragraphs }) => [
    anchor,
    ...paragraphs.flatMap((one) => one.anchor ?? []),
  ]);
  const moment = (seconds: number): FilmMoment => {
    const anchor = anchors.findLast((one) => secondsOf(one) <= Math.floor(seconds)) ?? anchors[0];
    return { time: filmTime(seconds), href: film === undefined ? `${page}#${anchor}` : filmAt(film, seconds) };
  };
  return {
    wrap,
    moment,
    shown: {
      transcript,
      chapters: wrap.chapters.map(({ at, title }) => ({ at: moment(at), title, anchor: anchorAt(at) })),
      varieties: wrap.coverage.named.flatMap(({ variety: id, title, at }) => {
        const variety = garden.varieties.get(id);
        if (variety === undefined) return [];
        const crop = cropOf(garden, variety);
        return [
          {
            at: moment(at),
            href: links.variety(id),
            name: title,
            crop: crop === undefined ? "" : cropName(crop, 1),
            source: sourceLine(words, variety.source),
          },
        ];
      }),
    },
  };
}

function anchorAt(seconds: number): string {
  return `t-${Math.floor(seconds)}`;
}

function secondsOf(anchor: string): number {
  return Number(anchor.slice("t-".length));
}

/** Chapters with their paragraphs. Every anchor stands once, however many paragraphs begin within a second. */
function transcriptOf({ chapters, transcript }: FilmTold, film: string | undefined): readonly TranscriptPart[] {
  const parts = chapters.length === 0 ? [{ at: 0, title: undefined }] : chapters;
  const taken = new Set(parts.map(({ at }) => anchorAt(at)));
  return parts.map(({ at, title }, index) => {
    const next = parts[index + 1]?.at ?? Number.POSITIVE_INFINITY;
    const said = transcript.filter((one) => (one.at >= at || index === 0) && one.at < next);
    return {
      anchor: anchorAt(at),
      title,
      paragraphs: said.map(({ at: from, time, text }) => {
        const anchor = taken.has(anchorAt(from)) ? undefined : anchorAt(from);
        taken.add(anchorAt(from));
        return { at: { time, href: film === undefined ? undefined : filmAt(film, from) }, anchor, text };
      }),
    };
  });
}
