/** All public pages of a garden on a day. Give it only what `publicGarden` and `publicCaptions` let through. */
import { noWeather, type Weather } from "../../almanac/index.ts";
import type { Day, Garden } from "../../model.ts";
import type { PublishedPhoto, TimeLapse } from "../../photos/index.ts";
import { plantYields } from "../../season/index.ts";
import type { FilmTexts } from "../public-captions.ts";
import { bedList, bedPages, sitesWithBeds } from "./bed-pages.ts";
import { episodeList, episodePages } from "./episode-pages.ts";
import { type EpisodeWraps, episodeWraps } from "./episode-wrap.ts";
import { feeds } from "./feeds.ts";
import { harvestsByYear } from "./harvests.ts";
import { once, onDemand } from "./on-demand.ts";
import { publicHome } from "./public-home.ts";
import { recapPages, seasonsWithFigures } from "./recap-pages.ts";
import { searchCatalogue } from "./search-catalogue.ts";
import type { PublicSite } from "./shapes.ts";
import { shownIn } from "./shown.ts";
import { smallPlates } from "./small-plates.ts";
import { thenAndNowPages } from "./then-and-now.ts";
import { varietyCsv } from "./variety-csv.ts";
import { varietyJson } from "./variety-json.ts";
import { listRules, varietyList } from "./variety-list.ts";
import { varietyPages } from "./variety-pages.ts";
import { viewGarden } from "./view.ts";

export function publicSite(
  garden: Garden,
  today: Day,
  photos: ReadonlyMap<string, PublishedPhoto>,
  comparisons: ReadonlyMap<string, PublishedPhoto> = new Map(),
  weather: Weather = noWeather,
  films?: FilmTexts,
  lapses: readonly TimeLapse[] = [],
): PublicSite {
  const view = viewGarden(garden, today, garden.settings.base, photos, comparisons, { lapses });
  const { links, locale, words } = view;
  const wraps = once((): EpisodeWraps => (films === undefined ? new Map() : episodeWraps(view, films)));
  const shown = once(() => shownIn(view, wraps()));
  const harvests = once(() => harvestsByYear(view));
  const plates = once(() => smallPlates(view, harvests()));
  const list = once(() => varietyList(view, plates()));
  const sites = once(() => sitesWithBeds(view));
  // Viewers are told the weather, and not by which station: that would say where on Earth the garden is.
  const seasons = once(() => recapPages(view, { ...weather, sources: [] }, false));
  return onDemand<PublicSite>({
    frame: () => ({
      garden: garden.settings.name,
      language: locale.tag,
      home: links.home,
      navigation: [
        { href: links.varieties, text: words.frame.varieties },
        ...(garden.beds.size === 0 ? [] : [{ href: links.beds, text: words.frame.beds }]),
        ...(garden.episodes.size === 0 ? [] : [{ href: links.episodes, text: words.frame.episodes }]),
        ...(seasonsWithFigures(view).length === 0 ? [] : [{ href: links.recaps, text: words.frame.seasons }]),
        { href: links.search, text: words.frame.search },
      ],
      address: garden.settings.address,
      feeds: garden.settings.address === undefined ? undefined : { rss: links.rss, json: links.jsonFeed },
      asOf: locale.day(today),
    }),
    home: () => publicHome(view, { shown: shown(), wraps: wraps(), plates: plates() }),
    varieties: list,
    filterRules: () => listRules(list()),
    varietyPages: () => varietyPages(view, shown(), harvests(), plantYields(garden, today)),
    beds: () => bedList(view, sites()),
    bedPages: () => bedPages(view, sites(), shown(), weather),
    thenAndNow: () => thenAndNowPages(view),
    episodes: () => episodeList(view, wraps()),
    episodePages: () => episodePages(view, { shown: shown(), wraps: wraps(), sites: sites(), plates: plates() }),
    recaps: seasons,
    search: () => ({ href: links.search, indexHref: links.searchIndex, namesHref: links.names }),
    csv: () => varietyCsv(view, harvests()),
    files: () => [
      { path: "varieties.json", text: varietyJson(view, harvests()) },
      { path: "names.json", text: searchCatalogue(view, plates()) },
      ...feeds(view, seasons),
    ],
  });
}
