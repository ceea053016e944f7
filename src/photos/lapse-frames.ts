/** The pictures of a time-lapse: the season's comparison copies in one size, each with its day on a strip below, and how long it stays. */
import sharp from "sharp";
import { daysBetween, seasonStart } from "../calendar.ts";
import type { Day } from "../model.ts";
import { dotsWide, eachDot, letterRows } from "./day-letters.ts";

export interface LapsePhoto {
  readonly photo: string;
  readonly day: Day;
  /** Its comparison copy: absolute, and pixels across. */
  readonly file: string;
  readonly width: number;
  readonly height: number;
}

/** Frames one above the other, as 8-bit RGB. */
export interface LapseFrames {
  readonly data: Uint8Array;
  readonly width: number;
  /** Of one frame. */
  readonly height: number;
}

/**
 * Fewer than eight weeks of photos are a few pictures that jump: at the pace below they are over before an eye has found what grows,
 * and the slider shows two of them better.
 */
const fewestPhotos = 8;

/** Milliseconds for a week, long enough to read its day; a missed week is waited for, so that growth keeps its own pace. */
const aWeek = 600;
/** Weeks without a photo that are waited for at most. */
const longestWait = 3;
/** The last photo stays until everybody has looked. */
const atTheEnd = 2500;

/** Those of the season in which the newest lies; none when they are too few. In order of day. */
export function seasonOfLapse<One extends { readonly day: Day }>(
  photos: readonly One[],
  seasonStarts: string,
): readonly One[] {
  const newest = photos.at(-1);
  if (newest === undefined) return [];
  const from = seasonStart(newest.day, seasonStarts);
  const season = photos.filter(({ day }) => day >= from);
  return season.length < fewestPhotos ? [] : season;
}

/** Milliseconds that each photo stays. */
export function staysOf(days: readonly Day[]): readonly number[] {
  return days.map((day, at) => {
    const next = days[at + 1];
    if (next === undefined) return atTheEnd;
    return aWeek * Math.min(longestWait, Math.max(1, Math.round(daysBetween(day, next) / 7)));
  });
}

const strip = [24, 28, 24] as const;
const letter = [244, 242, 232] as const;
const gone = [255, 210, 63] as const;

/** No wider than the narrowest photo; sides are even, as films want them. */
export async function lapseFrames(
  photos: readonly LapsePhoto[],
  widest: number,
  say: (day: Day) => string,
): Promise<LapseFrames> {
  const even = (pixels: number) => 2 * Math.floor(pixels / 2);
  const width = even(Math.min(widest, ...photos.map((photo) => photo.width)));
  const [first] = photos as [LapsePhoto];
  const picture = even((width * first.height) / first.width);
  const dot = Math.max(2, Math.round(width / 160));
  const band = even(dot * (letterRows + 6));
  const height = picture + band;
  const data = new Uint8Array(width * height * 3 * photos.length);
  for (const [at, { file, day }] of photos.entries()) {
    const opened = await sharp(file)
      .resize({ width, height: picture, fit: "fill" })
      .toColourspace("srgb")
      .removeAlpha()
      .raw()
      .toBuffer();
    const start = at * height * width * 3;
    data.set(opened, start);
    const paint = (x: number, y: number, colour: readonly [number, number, number]) =>
      data.set(colour, start + ((picture + y) * width + x) * 3);
    const done = Math.round((width * (at + 1)) / photos.length);
    for (let y = 0; y < band; y++) for (let x = 0; x < width; x++) paint(x, y, y < dot && x < done ? gone : strip);
    const said = say(day);
    const left = Math.max(0, Math.floor((width - dotsWide(said) * dot) / 2));
    eachDot(said, (column, row) => {
      for (let y = 0; y < dot; y++)
        for (let x = 0; x < dot; x++) {
          const across = left + column * dot + x;
          if (across < width) paint(across, (row + 4) * dot + y, letter);
        }
    });
  }
  return { data, width, height };
}
