/** `plotreel new KIND NAME`: writes a record to fill in; `plotreel new named`: one for everything notes name and no file describes. */
import path from "node:path";
import { addDays, parseDay } from "../calendar.ts";
import type { Garden } from "../model.ts";
import { CommandError, EXIT } from "./command-error.ts";
import type { Effects } from "./effects.ts";
import { KINDS, type Kind, recordFile, recordText } from "./record-templates.ts";

export interface NewOptions {
  readonly recordsDir: string;
  readonly kind: Kind;
  readonly name: string;
  readonly today: string;
  /** Of an episode: the day it is filmed. Undefined asks for it; where nobody can be asked it is tomorrow. */
  readonly date?: string | undefined;
}

export async function newRecord(options: NewOptions, effects: Effects): Promise<number> {
  const filmed = options.kind === "episode" ? await filmingDay(options, effects) : undefined;
  const file = recordFile(options.kind, options.name, options.today);
  const written = await effects.createText(
    path.join(options.recordsDir, file),
    recordText(options.kind, { title: options.name, today: filmed ?? options.today }),
  );
  if (!written) {
    throw new CommandError(
      `${file} is there already and was left as it is. Choose another name, or edit that file.`,
      EXIT.couldNot,
    );
  }
  effects.out(path.join(options.recordsDir, file));
  if (filmed !== undefined && options.date === undefined && !effects.canAsk)
    effects.err(`It is to be filmed on ${filmed}, the day after today: change its date, or say it with --date.`);
  return EXIT.done;
}

/** A film is planned before it is made: today would be the one day on which no plan helps. */
async function filmingDay({ date, today }: NewOptions, effects: Effects): Promise<string> {
  const tomorrow = addDays(today, 1);
  for (let written = date; ; written = undefined) {
    if (written === undefined && !effects.canAsk) return tomorrow;
    const text =
      written ??
      (await effects.askLine(`Which day will you film it? A day, such as 18 July; or nothing: ${tomorrow}.`));
    if (text === undefined) throw new CommandError("Stopped. Nothing was written.", EXIT.couldNot);
    if (text.trim() === "") return tomorrow;
    const read = parseDay(text.trim(), { onOrAfter: today });
    if ("day" in read) return read.day;
    const refused = `"${text.trim()}" is not a day. Write it like 2026-07-18 or 18 July.`;
    if (!effects.canAsk) throw new CommandError(refused);
    effects.out(refused);
  }
}

/** Writes a file for each bed and variety that notes name but no file describes. */
export async function writeNamedRecords(
  garden: Garden,
  recordsDir: string,
  today: string,
  effects: Effects,
): Promise<number> {
  const named = [
    ...[...garden.beds.values()]
      .filter((bed) => !bed.described)
      .map((bed) => ({ kind: "bed" as const, id: bed.id, title: bed.title, crop: undefined })),
    ...[...garden.varieties.values()]
      .filter((variety) => !variety.described)
      .map((variety) => ({ kind: "variety" as const, id: variety.id, title: variety.title, crop: variety.crop })),
  ];
  for (const { kind, id, title, crop } of named) {
    const file = path.join(KINDS[kind].folder, `${id}.md`);
    const crops = crop === undefined ? {} : { crop: garden.crops.get(crop)?.name ?? crop };
    if (await effects.createText(path.join(recordsDir, file), recordText(kind, { title, today, ...crops }))) {
      effects.out(path.join(recordsDir, file));
    }
  }
  if (named.length === 0) effects.err("Every bed and variety your notes name has its file already.");
  return EXIT.done;
}
