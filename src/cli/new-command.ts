/** `plotreel new KIND NAME`: writes a record to fill in; `plotreel new named`: one for everything notes name and no file describes. */
import path from "node:path";
import type { Garden } from "../model.ts";
import { CommandError, EXIT } from "./command-error.ts";
import type { Effects } from "./effects.ts";
import { KINDS, type Kind, recordFile, recordText } from "./record-templates.ts";

export interface NewOptions {
  readonly recordsDir: string;
  readonly kind: Kind;
  readonly name: string;
  readonly today: string;
}

export async function newRecord(options: NewOptions, effects: Effects): Promise<number> {
  const file = recordFile(options.kind, options.name, options.today);
  const written = await effects.createText(
    path.join(options.recordsDir, file),
    recordText(options.kind, { title: options.name, today: options.today }),
  );
  if (!written) {
    throw new CommandError(
      `${file} is there already and was left as it is. Choose another name, or edit that file.`,
      EXIT.couldNot,
    );
  }
  effects.out(path.join(options.recordsDir, file));
  return EXIT.done;
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
