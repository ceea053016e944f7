/** A film as structured data (schema.org/VideoObject), so that search programs show it with its picture and its stops. */
import type { Episode } from "../../model.ts";
import { episodeCard } from "./episode-pages.ts";
import type { Picture } from "./shapes.ts";
import { webAddress } from "./sources.ts";
import type { View } from "./view.ts";

/**
 * JSON-LD, safe inside a script element. Undefined without the site's address, the film's own or a picture: what is left
 * out then is what every reader of such data requires.
 */
export function filmData(view: View, episode: Episode, picture: Picture | undefined): string | undefined {
  const { address, language, name } = view.garden.settings;
  const film = webAddress(episode.link);
  if (address === undefined || film === undefined || picture === undefined) return undefined;
  const stops = episode.stops.flatMap(({ bed, at }) => {
    const title = view.garden.beds.get(bed)?.title;
    return at === undefined || title === undefined ? [] : [{ "@type": "Clip", name: title, startOffset: at }];
  });
  const data = {
    "@context": "https://schema.org",
    "@type": "VideoObject",
    name: episode.title,
    description: episodeCard(view, episode).text,
    url: film,
    mainEntityOfPage: address + view.links.episode(episode.id),
    uploadDate: episode.published ?? episode.day,
    dateCreated: episode.day,
    thumbnailUrl: address + picture.src,
    inLanguage: language,
    isPartOf: { "@type": "CreativeWorkSeries", name, url: address + view.links.home },
    ...(stops.length === 0 ? {} : { hasPart: stops }),
  };
  return JSON.stringify(data).replace(/</gu, "\\u003c");
}
