/**
 * Files that a command makes anew and a person may edit. Beside them lies a list of what was written last; a file that is no
 * longer what was written is the person's, and the new version goes beside it.
 */
import { createHash } from "node:crypto";
import path from "node:path";
import type { Effects } from "./effects.ts";

const LIST = ".written.json";

export interface WrittenFiles {
  /** Written or the same as before. */
  readonly written: readonly string[];
  /** Kept as the person has them, with the name of the new version beside; undefined when nothing new was to be written. */
  readonly kept: readonly { readonly name: string; readonly beside?: string | undefined }[];
}

export async function writeKeepingEdits(
  dir: string,
  files: ReadonlyMap<string, string>,
  effects: Pick<Effects, "readText" | "writeText">,
): Promise<WrittenFiles> {
  const list = readList(await effects.readText(path.join(dir, LIST)));
  const written: string[] = [];
  const kept: { name: string; beside?: string | undefined }[] = [];
  const next = new Map(list);
  for (const [name, text] of files) {
    const there = await effects.readText(path.join(dir, name));
    const before = list.get(name);
    const isEdited = there !== undefined && hash(there) !== before && there !== text;
    if (!isEdited) {
      if (there !== text) await effects.writeText(path.join(dir, name), text);
      next.set(name, hash(text));
      written.push(name);
      continue;
    }
    if (hash(text) === before) {
      kept.push({ name });
      continue;
    }
    const beside = besideName(name);
    await effects.writeText(path.join(dir, beside), text);
    kept.push({ name, beside });
  }
  await effects.writeText(path.join(dir, LIST), `${JSON.stringify(Object.fromEntries([...next].sort()), null, 1)}\n`);
  return { written, kept };
}

/** "description.txt" becomes "description.new.txt". */
function besideName(name: string): string {
  const { name: stem, ext } = path.parse(name);
  return `${stem}.new${ext}`;
}

function hash(text: string): string {
  return createHash("sha256").update(text).digest("hex");
}

function readList(text: string | undefined): ReadonlyMap<string, string> {
  try {
    const list = JSON.parse(text ?? "{}") as unknown;
    return new Map(
      Object.entries(list as object).filter((pair): pair is [string, string] => typeof pair[1] === "string"),
    );
  } catch {
    return new Map();
  }
}
