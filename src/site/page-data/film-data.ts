/** A film as structured data (schema.org/VideoObject), so that search programs show it with its picture and its chapters. */
import type { Episode } from "../../model.ts";
import { videoObject } from "../../wrap/index.ts";
import type { EpisodeWrap } from "./episode-wrap.ts";
import { filmAt } from "./film-time.ts";
import type { Picture } from "./shapes.ts";
import { webAddress } from "./sources.ts";
import type { View } from "./view.ts";

/**
 * JSON-LD, safe inside a script element; `text` says what the film shows where its wrap does not. Undefined without the site's address, the film's own or a picture: what is left
 * out then is what every reader of such data requires.
 */
export function filmData(
  view: View,
  episode: Episode,
  text: string,
  picture: Picture | undefined,
  wrapped: EpisodeWrap | undefined,
): string | undefined {
  const { address, name } = view.garden.settings;
  const film = webAddress(episode.link);
  if (address === undefined || film === undefined || picture === undefined) return undefined;
  const heard = wrapped?.wrap.chapters ?? [];
  const chapters = heard.length > 0 ? heard : timedStops(view, episode);
  const data = {
    ...videoObject({
      name: episode.title,
      description: wrapped?.wrap.description.text ?? text,
      thumbnails: [address + picture.src],
      published: episode.published ?? episode.day,
      length: wrapped?.wrap.length,
      film,
      chapters: chapters.map((chapter) => ({ ...chapter, url: filmAt(film, chapter.at) })),
    }),
    mainEntityOfPage: address + view.links.episode(episode.id),
    dateCreated: episode.day,
    inLanguage: view.locale.tag,
    isPartOf: { "@type": "CreativeWorkSeries", name, url: address + view.links.home },
  };
  return JSON.stringify(data).replace(/</gu, "\\u003c");
}

function timedStops({ garden }: View, { stops }: Episode) {
  const timed = stops
    .flatMap(({ bed, at }) => {
      const title = garden.beds.get(bed)?.title;
      return at === undefined || title === undefined ? [] : [{ title, at }];
    })
    .sort((a, b) => a.at - b.at);
  return timed.map((stop, index) => ({ ...stop, until: timed[index + 1]?.at }));
}
