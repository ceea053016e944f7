/** Everything both sites are made from beside the records: photo copies, comparisons, briefs, field lists. */
import path from "node:path";
import { localeOf } from "../language/index.ts";
import type { Garden, Problem } from "../model.ts";
import {
  findBursts,
  type PublishedPhoto,
  publishComparisons,
  publishPhotos,
  publishTimeLapses,
  type TimeLapse,
} from "../photos/index.ts";
import { briefPage, type LiveBrief, type LiveMaterials, publicGarden } from "../site/index.ts";
import { lookAhead, type TourCards } from "../tour/index.ts";
import { cardsFor } from "./brief-command.ts";
import { expectedWindows } from "./expected-windows.ts";
import { cardPictures, fieldListOf } from "./field-list-of.ts";
import type { Loaded } from "./load-garden.ts";
import { measured } from "./measured-garden.ts";

/** What the photos give, which lasts until a photo or the place of one changes. */
export interface PhotoWork {
  readonly growth: Garden["growth"];
  readonly photos: ReadonlyMap<string, PublishedPhoto>;
  readonly comparisons: ReadonlyMap<string, PublishedPhoto>;
  readonly lapses: readonly TimeLapse[];
  readonly problems: readonly Problem[];
}

export interface SiteMaterials {
  readonly garden: Garden;
  readonly materials: LiveMaterials;
  readonly photoWork: PhotoWork;
}

export interface MaterialsWanted {
  /** Path below which the public site is served, with a slash at both ends; stands above what garden.md says. */
  readonly base?: string | undefined;
  /** Taken as it is instead of looking at the photos again. */
  readonly photoWork?: PhotoWork | undefined;
}

export async function siteMaterials(loaded: Loaded, wanted: MaterialsWanted = {}): Promise<SiteMaterials> {
  const photoWork = wanted.photoWork ?? (await workOnPhotos(loaded));
  const { settings } = loaded.garden;
  const garden: Garden = {
    ...loaded.garden,
    growth: photoWork.growth,
    settings: wanted.base === undefined ? settings : { ...settings, base: wanted.base },
  };
  const grown = { ...loaded, garden };
  const planned = [...garden.episodes.values()].filter(({ status }) => status === "planned");
  return {
    garden,
    photoWork,
    materials: {
      today: loaded.today,
      photos: photoWork.photos,
      comparisons: photoWork.comparisons,
      lapses: photoWork.lapses,
      briefs: planned.map(({ id }) => briefOf(id, grown)),
      weather: loaded.weather,
      films: loaded.films,
      ahead: () => lookAhead(garden, { today: loaded.today, weeks: 1, windows: expectedWindows(grown) }),
    },
  };
}

function briefOf(episode: string, loaded: Loaded): LiveBrief {
  let cards: TourCards | undefined;
  const made = () => {
    cards ??= cardsFor(loaded, episode);
    return cards;
  };
  return {
    name: episode,
    cards: () => made().cards,
    page: async (changed) =>
      briefPage(made(), loaded.garden, { pictures: await cardPictures(loaded, made()), changed }),
    fieldList: () => fieldListOf(loaded, made()),
  };
}

async function workOnPhotos(loaded: Loaded): Promise<PhotoWork> {
  const { recordsDir, cacheDir, today, report } = loaded;
  const { copies, problems } = await publishPhotos(loaded.garden.photos, {
    recordsDir,
    cacheDir: path.join(cacheDir, "photos"),
    all: true,
    onProgress: (done, total) => report.progress("Making photo copies", done, total),
  });
  const { garden, viewpoints } = await measured(loaded);
  const comparisons = await publishComparisons(viewpoints, {
    recordsDir,
    cacheDir: path.join(cacheDir, "comparisons"),
    today,
    onProgress: (done, total) => report.progress("Laying photos over one another", done, total),
  });
  const growth = garden.growth && { ...garden.growth, bursts: await findBursts(garden.photos, copies) };
  const circles = [garden, publicGarden(garden)].map((seen) => new Set(seen.photos.map((photo) => photo.path)));
  const { day } = localeOf(garden.settings);
  const lapses = await publishTimeLapses(garden, comparisons, {
    cacheDir: path.join(cacheDir, "time-lapses"),
    today,
    circles,
    say: (on) => day(on),
    onProgress: (done, total) => report.progress("Making time-lapses", done, total),
  });
  return { growth, photos: copies, comparisons, lapses, problems };
}
