/** The words of a voice note that is kept in the records: as a note of its day, shown first like any file that is brought in. */
import path from "node:path";
import type { Garden } from "../model.ts";
import { bringVoice } from "../past/index.ts";
import { openPhotoFolder, type VoiceNote, waitingVoices } from "../photos/index.ts";
import type { RecordsFolder } from "../records/index.ts";
import { CommandError } from "./command-error.ts";
import type { Effects } from "./effects.ts";
import { sayVoice } from "./past-words.ts";

export interface WordsOfVoice {
  readonly bytes: Uint8Array;
  readonly text: string;
  readonly voice: VoiceNote & { readonly words: string };
}

/** The voice note whose words this file holds; undefined where it is no such file. */
export async function voiceOf(
  file: string,
  garden: Garden,
  recordsDir: string,
  effects: Pick<Effects, "cwd">,
): Promise<WordsOfVoice["voice"] | undefined> {
  const inside = path.relative(recordsDir, path.resolve(effects.cwd, file)).split(path.sep).join("/");
  const sound = garden.sounds.find(({ words }) => words === inside);
  if (sound === undefined) return undefined;
  const voice = (await waitingVoices(garden, openPhotoFolder(recordsDir))).find((one) => one.file === sound.file);
  if (voice === undefined)
    throw new CommandError(
      `A note says already what was spoken in ${sound.file}. Delete its line "voice note", and this one is read again.`,
    );
  return { ...voice, words: inside };
}

export async function voiceBrought(
  { bytes, text, voice }: WordsOfVoice,
  given: {
    readonly garden: Garden;
    readonly folder: RecordsFolder;
    readonly today: string;
    readonly date: string | undefined;
    readonly isPublic: boolean;
  },
) {
  const { garden, folder, today, isPublic } = given;
  const day = dayOfVoice(voice, given.date, today);
  const bed = voice.bed === undefined ? undefined : garden.beds.get(voice.bed)?.title;
  const brought = await bringVoice({
    ...{ bytes, text, words: voice.words, sound: voice.file, day, bed, folder, today },
    // What lies with a private bed is as private.
    isPublic: isPublic && (voice.bed === undefined || garden.beds.get(voice.bed)?.private !== true),
  });
  const { records, notes } = brought;
  return {
    files: notes,
    parts: [],
    lines: sayVoice(brought, { name: voice.words, sound: voice.file, day, bed, isPublic }),
    data: {
      ...{ sound: voice.file, day, bed: voice.bed, notes },
      readings: records.readings.filter(({ place }) => notes.some(({ file }) => file === place.file)),
    },
    isShort: notes.length === 0,
  };
}

function dayOfVoice({ day, isDayInDoubt, file }: VoiceNote, said: string | undefined, today: string): string {
  if (said !== undefined && said.length === 10) return said;
  if (day !== undefined && !isDayInDoubt && day <= today) return day;
  throw new CommandError(
    day === undefined
      ? `Nothing tells on which day ${file} was spoken: say it, such as --date 2026-05-16.`
      : `Nothing tells for sure on which day ${file} was spoken. If it was ${day}, as its file has it, say --date ${day}.`,
  );
}
