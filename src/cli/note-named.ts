/** The note a person means by a path, an id or a file name, with or without its ending. */
import path from "node:path";
import type { Garden } from "../model.ts";
import { nearestName } from "../records/index.ts";
import { CommandError } from "./command-error.ts";

/** The files meant, relative to the records: several where notes of several folders have that name. */
export function noteNamed(
  name: string,
  { readings, notes }: Pick<Garden, "readings" | "notes">,
  { cwd, recordsDir }: { readonly cwd: string; readonly recordsDir: string },
): ReadonlySet<string> {
  const files = [...new Set([...notes, ...readings].map(({ place }) => place.file))];
  const fromHere = path.relative(recordsDir, path.resolve(cwd, name)).split(path.sep).join("/");
  for (const wanted of [fromHere, name.replace(/^\.\//, ""), `notes/${name}`]) {
    const found = files.find((file) => bare(file) === bare(wanted));
    if (found !== undefined) return new Set([found]);
  }
  const called = files.filter((file) => bare(baseName(file)) === bare(name));
  if (called.length > 0) return new Set(called);
  const near = nearestName(
    bare(name),
    new Set(files.flatMap((file) => [bare(file).slice("notes/".length), bare(baseName(file))])),
  );
  const help =
    near !== undefined
      ? `Did you mean "${near}"?`
      : files.length === 0
        ? "There are no notes yet."
        : `Give its path, or its file name such as "${bare(baseName(files.at(-1) ?? ""))}".`;
  throw new CommandError(`No note is called "${name}". ${help}`);
}

function bare(file: string): string {
  return file.toLowerCase().replace(/\.md$/, "");
}

function baseName(file: string): string {
  return file.slice(file.lastIndexOf("/") + 1);
}
