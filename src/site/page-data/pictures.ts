/** Photos as pages show them: with their sizes, their day, and words for those who do not see them. */

import { cropOf } from "../../crop-of.ts";
import { localeOf, varietyName } from "../../language/index.ts";
import type { Garden, Photo } from "../../model.ts";
import { type PublishedPhoto, panoramaRatio } from "../../photos/index.ts";
import { siteWords } from "../words/index.ts";
import type { Links } from "./links.ts";
import type { Thumb } from "./plate-shapes.ts";
import type { Link, Picture } from "./shapes.ts";

/** A photo that has a day and copies to show. */
export interface ShownPhoto extends Photo {
  readonly day: string;
}

export interface PictureBook {
  /** Newest first. */
  readonly all: readonly ShownPhoto[];
  /** Newest first, by bed. */
  readonly byBed: ReadonlyMap<string, readonly ShownPhoto[]>;
  readonly byVariety: ReadonlyMap<string, readonly ShownPhoto[]>;
  /** The other photos of the moment that a photo stands for. */
  others(photo: ShownPhoto): readonly Link[];
  picture(photo: ShownPhoto): Picture;
  thumb(photo: ShownPhoto): Thumb;
  /** Address of its largest copy that every browser shows. */
  file(photo: ShownPhoto): string;
  isWide(photo: ShownPhoto): boolean;
}

export function pictureBook(garden: Garden, copies: ReadonlyMap<string, PublishedPhoto>, links: Links): PictureBook {
  const locale = localeOf(garden.settings);
  const { photo: said } = siteWords.sentences;
  const bursts = new Map((garden.growth?.bursts ?? []).map((burst) => [burst.best, burst]));
  const spokenFor = new Set([...bursts].flatMap(([best, { photos }]) => photos.filter((path) => path !== best)));
  const all = garden.photos
    .filter((photo): photo is ShownPhoto => photo.day !== undefined && (copies.get(photo.path)?.files.length ?? 0) > 0)
    .filter(({ path }) => !spokenFor.has(path))
    .sort(newestFirst);
  const byBed = new Map<string, ShownPhoto[]>();
  const byVariety = new Map<string, ShownPhoto[]>();
  for (const photo of all) {
    if (photo.bed !== undefined) listIn(byBed, photo.bed).push(photo);
    for (const variety of photo.varieties) listIn(byVariety, variety).push(photo);
  }
  const largest = (path: string) => copies.get(path)?.files.findLast(({ format }) => format !== "avif");
  return {
    all,
    byBed,
    byVariety,
    others({ path: best }) {
      const paths = bursts.get(best)?.photos.filter((path) => path !== best) ?? [];
      return paths.flatMap((path, index): Link[] => {
        const file = largest(path);
        return file === undefined ? [] : [{ href: links.photo(file.name), text: said.nth(index + 2) }];
      });
    },
    file: ({ path }) => links.photo(largest(path)?.name ?? ""),
    isWide(photo) {
      const size = copies.get(photo.path);
      return size !== undefined && size.width >= size.height;
    },
    thumb(photo) {
      const { files } = copies.get(photo.path) ?? { files: [] };
      const small = files.find(({ format }) => format === "webp") ?? files[0];
      return { src: links.photo(small?.name ?? ""), alt: altText(garden, photo) };
    },
    picture(photo) {
      const { files, width, height } = copies.get(photo.path) ?? { files: [], width: 1, height: 1 };
      const formats = [...new Set(files.map(({ format }) => format))];
      // What is left to programs that know no sources: the fallback.
      const plain = files.findLast(({ format }) => format === "jpeg") ?? files.at(-1);
      return {
        alt: altText(garden, photo),
        width,
        height,
        isPanorama: width >= panoramaRatio * height,
        src: links.photo(plain?.name ?? ""),
        sets: formats.map((format) => ({
          type: `image/${format}`,
          srcset: files
            .filter((file) => file.format === format)
            .map((file) => `${links.photo(file.name)} ${file.width}w`)
            .join(", "),
        })),
        day: locale.day(photo.day),
        bed: bedLink(garden, photo.bed, links),
        caption: photo.caption,
        credit: photo.credit,
      };
    },
  };
}

function bedLink(garden: Garden, id: string | undefined, links: Links): Link | undefined {
  const bed = id === undefined ? undefined : garden.beds.get(id);
  return bed === undefined ? undefined : { href: links.bed(bed.id), text: bed.title };
}

/** What the photo shows, for those who do not see it. */
function altText(garden: Garden, photo: ShownPhoto): string {
  const locale = localeOf(garden.settings);
  const { photo: said } = siteWords.sentences;
  const bed = photo.bed === undefined ? undefined : garden.beds.get(photo.bed)?.title;
  const place = bed ?? said.garden;
  const shown = photo.varieties.flatMap((id) => {
    const variety = garden.varieties.get(id);
    return variety === undefined ? [] : [varietyName(variety, cropOf(garden, variety))];
  });
  const what =
    shown.length > 0
      ? bed === undefined
        ? shown.join(", ")
        : said.in(shown.join(", "), bed)
      : photo.viewpoint === undefined
        ? place
        : said.from(place, photo.viewpoint.replaceAll("-", " "));
  return `${what}, ${locale.day(photo.day)}`;
}

function newestFirst(a: ShownPhoto, b: ShownPhoto): number {
  const left = `${b.day} ${b.time ?? ""} ${b.path}`;
  const right = `${a.day} ${a.time ?? ""} ${a.path}`;
  return left < right ? -1 : left > right ? 1 : 0;
}

function listIn<T>(lists: Map<string, T[]>, key: string): T[] {
  const known = lists.get(key) ?? [];
  lists.set(key, known);
  return known;
}
