/** Sounds among the photos: on which day and at which bed each was spoken, and which of them wait for a note of their words. */
import { sayDay } from "../language/index.ts";
import type { Day, Problem, Records, Sound } from "../model.ts";
import { problem } from "../records/index.ts";
import type { PhotoFolder } from "./photo-folder.ts";
import { linkedBeds, placePhoto } from "./place-photo.ts";
import { readClip } from "./read-clips.ts";

export interface VoiceNote extends Sound {
  readonly day?: Day | undefined;
  /** Only the clock of the file tells the day, or the day hangs on whose clock wrote it. */
  readonly isDayInDoubt: boolean;
  readonly bed?: string | undefined;
}

/** Those whose words no note holds. */
export async function waitingVoices(records: Records, folder: PhotoFolder): Promise<readonly VoiceNote[]> {
  const told = new Set(records.notes.flatMap(({ voice }) => (voice === undefined ? [] : [plain(voice)])));
  const waiting = records.sounds.filter(({ file }) => !told.has(plain(file)));
  const links = waiting.length === 0 ? undefined : linkedBeds(records);
  const voices: VoiceNote[] = [];
  for (const sound of waiting) {
    const { clip, asks } = await readClip(sound.file, undefined, records, folder);
    const bed = links === undefined ? undefined : placePhoto(sound.file, undefined, records.beds, links).bed;
    const isRough = clip?.dateBasis === "file time" || clip?.day === undefined || asks !== undefined;
    voices.push({ ...sound, day: clip?.day, isDayInDoubt: isRough, bed });
  }
  return voices;
}

/** Disks differ in whether capitals count, and people in how they begin a path. */
function plain(file: string): string {
  return file
    .normalize("NFC")
    .replace(/^\.?\//, "")
    .toLowerCase();
}

/** Sounds named before the rest is counted. */
const named = 20;

export function voicesWaiting(voices: readonly VoiceNote[], language: string): readonly Problem[] {
  return voices.slice(0, named).map((voice, index) => {
    const more = index === named - 1 ? voices.length - named : 0;
    return problem(
      "voice/waits",
      { file: voice.file, line: 1, column: 1 },
      `${whichOf(voice, language)} waits for its words.${more > 0 ? ` So do ${more} more.` : ""}`,
      voice.words === undefined
        ? `Lay its words beside it (.txt, .vtt or .srt, of the same name), or write a note that says "voice note: ${voice.file}".`
        : `Its words lie in ${voice.words}: bring that file in, and they are read as a note.`,
    );
  });
}

function whichOf({ day, isDayInDoubt }: VoiceNote, language: string): string {
  if (day === undefined) return "A voice note of which nothing tells the day";
  const said = sayDay(day, { language, near: undefined });
  return isDayInDoubt ? `A voice note, of ${said} if its file's own time is right,` : `A voice note of ${said}`;
}
