/** What the files of a card are to ingest, by their names and first bytes. */
import {
  asideEnding,
  clipEnding,
  photoEnding,
  rawEnding,
  soundEnding,
  textEnding,
  transcriptEnding,
} from "../records/index.ts";
import { startsWith } from "./image-kind.ts";

/** Photos, films and sounds stand for themselves; words and asides only beside one of them. */
export type CardFile = "photo" | "film" | "raw" | "sound" | "words" | "aside" | "litter" | "other";

export type LeftReason =
  | "no photo"
  | "words of no photo"
  | "aside of no photo"
  | "other words there"
  | "empty"
  | "no picture in it"
  | "no film in it"
  | "no sound in it"
  | "link"
  | "hidden"
  | "camera's own"
  | "unreadable"
  | "thrown away";

/** Whether something a person may miss is lost with what is left for this reason. */
export const isLoss: Readonly<Record<LeftReason, boolean>> = {
  "no photo": true,
  "words of no photo": true,
  "aside of no photo": false,
  "other words there": true,
  empty: false,
  "no picture in it": true,
  "no film in it": true,
  "no sound in it": true,
  link: true,
  hidden: false,
  "camera's own": false,
  unreadable: true,
  "thrown away": false,
};

/** Lists, thumbnails and marks that cameras and systems write for themselves. */
const litter = /(?:^|\/)(?:thumbs\.db|desktop\.ini|autprint\.mrk|[^/]+\.(?:thm|ctg|lrv|cpi|bdm|mpl))$/i;

export function cardFile(name: string): CardFile {
  if (photoEnding.test(name)) return "photo";
  if (clipEnding.test(name)) return "film";
  if (rawEnding.test(name)) return "raw";
  if (soundEnding.test(name)) return "sound";
  if (litter.test(name)) return "litter";
  if (/\.md$/i.test(name) || textEnding.test(name) || transcriptEnding.test(name)) return "words";
  return asideEnding.test(name) ? "aside" : "other";
}

/** First boxes of MP4 and QuickTime files (ISO/IEC 14496-12; QuickTime File Format). */
const filmBoxes = ["ftyp", "moov", "mdat", "wide", "free", "skip", "pnot"];

export function isFilm(head: Uint8Array): boolean {
  return filmBoxes.some((box) => startsWith(head, 4, box));
}

/** MP4 (as films are), MP3 with or without tags, WAV (RIFF), Ogg (RFC 3533), AAC in ADTS frames, AMR (RFC 4867, 5.1). */
export function isSound(head: Uint8Array): boolean {
  const [first = 0, second = 0] = head;
  return (
    isFilm(head) ||
    ["ID3", "OggS", "#!AMR"].some((mark) => startsWith(head, 0, mark)) ||
    (startsWith(head, 0, "RIFF") && startsWith(head, 8, "WAVE")) ||
    // Frames of layer III, and those of ADTS: a text in UTF-16 begins with FF FE, which is neither.
    (first === 0xff && ((second & 0xe6) === 0xe2 || (second & 0xf6) === 0xf0))
  );
}
