/**
 * The film as structured data for search engines: schema.org VideoObject with a Clip for each chapter. Fields follow the
 * requirements for video results (name, description, thumbnailUrl, uploadDate; for clips name, startOffset, url).
 */
import type { Day } from "../model.ts";
import type { Chapter } from "./wrap.ts";

export interface VideoData {
  readonly name: string;
  readonly description: string;
  /** Absolute addresses. */
  readonly thumbnails: readonly string[];
  readonly published: Day;
  /** Seconds, when it is known. */
  readonly length?: number | undefined;
  /** Where the film is watched. */
  readonly film: string;
  /** Address for embedding, only when the person gives one. */
  readonly embed?: string | undefined;
  readonly chapters: readonly ClipData[];
}

export interface ClipData extends Pick<Chapter, "at" | "title"> {
  /** Seconds, when it is known. */
  readonly until?: number | undefined;
  /** Address that opens the film there. */
  readonly url: string;
}

export function videoObject(video: VideoData): object {
  const { name, description, thumbnails, published, length, film, embed, chapters } = video;
  return {
    "@context": "https://schema.org",
    "@type": "VideoObject",
    name,
    description: description === "" ? name : description,
    thumbnailUrl: thumbnails,
    uploadDate: published,
    ...(length === undefined ? {} : { duration: isoDuration(length) }),
    url: film,
    ...(embed === undefined ? {} : { embedUrl: embed }),
    ...(chapters.length === 0
      ? {}
      : {
          hasPart: chapters.map(({ title, at, until, url }) => ({
            "@type": "Clip",
            name: title,
            startOffset: Math.floor(at),
            ...(until === undefined ? {} : { endOffset: Math.max(Math.floor(at) + 1, Math.floor(until)) }),
            url,
          })),
        }),
  };
}

/** ISO 8601: 6 min 58 s is "PT6M58S". */
export function isoDuration(seconds: number): string {
  const whole = Math.max(0, Math.round(seconds));
  const [h, m, s] = [Math.floor(whole / 3600), Math.floor(whole / 60) % 60, whole % 60];
  return `PT${h > 0 ? `${h}H` : ""}${m > 0 ? `${m}M` : ""}${s > 0 || whole === 0 ? `${s}S` : ""}`;
}
