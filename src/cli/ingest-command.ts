/** `plotreel ingest FOLDER`: brings photos from a phone or a card into the records. Copies; never overwrites, never deletes. */
import path from "node:path";
import { type IngestSummary, ingestFolder } from "../photos/index.ts";
import { CommandError, EXIT } from "./command-error.ts";
import type { Effects } from "./effects.ts";
import type { Loaded } from "./load-garden.ts";

export interface IngestCommandOptions {
  /** Relative to the current folder, or absolute. */
  readonly folder: string;
  /** Say what would be done, and do nothing. */
  readonly dryRun?: boolean | undefined;
  readonly json?: boolean | undefined;
}

export async function ingest(loaded: Loaded, options: IngestCommandOptions, effects: Effects): Promise<number> {
  const { garden, recordsDir, report } = loaded;
  const from = path.resolve(effects.cwd, options.folder);
  const summary = await ingestFolder(from, recordsDir, {
    beds: garden.beds,
    timeZone: garden.settings.timeZone,
    dryRun: options.dryRun === true,
    onProgress: (done, total) => report.progress("Bringing in photos", done, total),
  }).catch((error: NodeJS.ErrnoException) => {
    if (error.code !== "ENOENT") throw error;
    throw new CommandError(`There is no folder at ${from}. Give the folder your photos are in.`);
  });
  report.end();
  if (options.json === true) effects.out(JSON.stringify(summary, null, 2));
  else for (const line of summaryLines(summary, options.dryRun === true)) effects.out(line);
  if (summary.stopped === undefined) return EXIT.done;
  throw new CommandError(
    `Stopped early: ${summary.stopped}. What was brought in until then is whole; run the same command again to go on.`,
    EXIT.couldNot,
  );
}

const LEFT: Readonly<Record<IngestSummary["leftAlone"][number]["why"], string>> = {
  "no photo": "not a photo",
  empty: "empty",
  "no picture in it": "has a photo's name but no picture in it",
  link: "a link",
  unreadable: "cannot be read",
};

function summaryLines({ broughtIn, alreadyThere, leftAlone }: IngestSummary, dryRun: boolean): readonly string[] {
  const lines = broughtIn.map(({ from, to, renamed }) => `${from} -> ${to}${renamed ? " (the name was taken)" : ""}`);
  const broken = leftAlone
    .filter(({ why }) => why !== "no photo")
    .map(({ from, why }) => `${from}: ${LEFT[why]}, left alone`);
  const noPhotos = leftAlone.length - broken.length;
  const counts = [
    `${photos(broughtIn.length)} ${dryRun ? "would be brought in" : "brought in"}`,
    ...(alreadyThere.length > 0 ? [`${photos(alreadyThere.length)} there already`] : []),
    ...(noPhotos > 0
      ? [`${noPhotos} ${noPhotos === 1 ? "file that is no photo" : "files that are no photos"} left alone`]
      : []),
  ];
  return [...lines, ...broken, `${counts.join(", ")}.`];
}

function photos(count: number): string {
  return `${count} ${count === 1 ? "photo" : "photos"}`;
}
