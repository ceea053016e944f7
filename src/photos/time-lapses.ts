/**
 * Time-lapses of a season from one spot: an animated picture for pages, and a film as well where the program for it is on the
 * machine. Made from comparison copies, so the photos lie over one another and have one light; of viewers' photos there is a
 * lapse of its own, in which no other has a part.
 */
import { createHash } from "node:crypto";
import path from "node:path";
import sharp from "sharp";
import type { Day, Garden } from "../model.ts";
import { CopyCache, copyKey, type PublishedFile, type PublishedPhoto } from "./copy-cache.ts";
import { webpSettings } from "./copy-recipe.ts";
import { filmOfFrames } from "./lapse-film.ts";
import { type LapseFrames, type LapsePhoto, lapseFrames, seasonOfLapse, staysOf } from "./lapse-frames.ts";

export interface TimeLapse {
  readonly bed: string;
  readonly viewpoint: string;
  /** Every photo that has a part in it, oldest first: whoever may not see one of them may not see it. */
  readonly photos: readonly string[];
  readonly from: Day;
  readonly to: Day;
  /** Moves. */
  readonly moving: PublishedFile;
  /** Its last picture. */
  readonly still: PublishedFile;
  /** Absolute; only where the program is on the machine. */
  readonly film?: string | undefined;
}

export interface LapseOptions {
  /** Absolute. */
  readonly cacheDir: string;
  readonly today: Day;
  /** Which photos may be in one together: all, of which there is a film too, and those that viewers see. */
  readonly circles: readonly ReadonlySet<string>[];
  /** "17 July" */
  say(day: Day): string;
  readonly onProgress?: ((done: number, total: number) => void) | undefined;
}

/** Raise it when lapses are made in another way. */
const lapseVersion = 1;

/** Pixels across: a phone at its own sharpness would weigh three times as much. */
const widest = 640;

export async function publishTimeLapses(
  garden: Garden,
  comparisons: ReadonlyMap<string, PublishedPhoto>,
  { cacheDir, today, circles, say, onProgress }: LapseOptions,
): Promise<readonly TimeLapse[]> {
  const spots = Map.groupBy(
    (garden.growth?.photos ?? []).filter(({ aligned, day }) => aligned && day <= today),
    ({ bed, viewpoint }) => `${bed}\n${viewpoint}`,
  );
  const wanted = new Map<string, { bed: string; viewpoint: string; photos: readonly LapsePhoto[]; isCut: boolean }>();
  for (const measures of spots.values())
    for (const [at, circle] of circles.entries()) {
      const copied = measures.flatMap(({ photo, day }): LapsePhoto[] => {
        const copy = circle.has(photo)
          ? comparisons.get(photo)?.files.findLast(({ format }) => format === "webp")
          : undefined;
        return copy === undefined ? [] : [{ photo, day, file: copy.cachePath, width: copy.width, height: copy.height }];
      });
      const photos = seasonOfLapse(copied, garden.settings.seasonStarts);
      const [first] = measures;
      if (photos.length === 0 || first === undefined) continue;
      const { bed, viewpoint } = first;
      const name = photos.map(({ photo }) => photo).join("\n");
      if (!wanted.has(name)) wanted.set(name, { bed, viewpoint, photos, isCut: at === 0 });
    }
  const cache = new CopyCache(cacheDir);
  await cache.open();
  const asked = new Set<string>();
  const lapses: TimeLapse[] = [];
  for (const { bed, viewpoint, photos, isCut } of wanted.values()) {
    const stays = staysOf(photos.map(({ day }) => day));
    const made = JSON.stringify([lapseVersion, widest, webpSettings, stays, photos.map(({ day }) => say(day))]);
    const key = copyKey(digest(photos.map(({ file }) => path.basename(file)).join(" ")), made);
    asked.add(key);
    let frames: Promise<LapseFrames> | undefined;
    const drawn = () => {
      frames ??= lapseFrames(photos, widest, say);
      return frames;
    };
    const keep = async (what: string, make: (frames: LapseFrames) => Promise<Buffer>) => {
      const own = copyKey(key, what);
      asked.add(own);
      const known = await cache.find(own);
      if (known?.files[0] !== undefined) return known.files[0];
      const { width, height } = await drawn();
      const bytes = await make(await drawn());
      const copies = [{ width, height, format: "webp" as const, bytes }];
      const { files } = await cache.keep(own, { width, height, placeholder: "#181c18", copies });
      return files[0] as PublishedFile;
    };
    lapses.push({
      bed,
      viewpoint,
      photos: photos.map(({ photo }) => photo),
      from: (photos[0] as LapsePhoto).day,
      to: (photos.at(-1) as LapsePhoto).day,
      moving: await keep("moving", (all) => movingPicture(all, stays)),
      still: await keep("still", lastPicture),
      film: isCut
        ? await filmOfFrames(path.join(cacheDir, key.slice(0, 2), `${key}-film.mp4`), drawn, stays)
        : undefined,
    });
    onProgress?.(lapses.length, wanted.size);
  }
  await cache.sweep(asked);
  return lapses;
}

function movingPicture({ data, width, height }: LapseFrames, stays: readonly number[]): Promise<Buffer> {
  const pages = data.length / (width * height * 3);
  return sharp(data, {
    raw: { width, height: height * pages, channels: 3, pageHeight: height },
    limitInputPixels: false,
  })
    .webp({ ...webpSettings, delay: [...stays], loop: 0 })
    .toBuffer();
}

function lastPicture({ data, width, height }: LapseFrames): Promise<Buffer> {
  const last = data.subarray(data.length - width * height * 3);
  return sharp(last, { raw: { width, height, channels: 3 } })
    .webp(webpSettings)
    .toBuffer();
}

function digest(text: string): string {
  return createHash("sha256").update(text).digest("hex");
}
