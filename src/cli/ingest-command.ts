/** `plotreel ingest FOLDER`: brings photos from a phone or a card into the records. Copies; never overwrites, never deletes. */
import path from "node:path";
import { type IngestSummary, ingestFolder, isLoss, type LeftReason } from "../photos/index.ts";
import { besideName, momentName, transcriptEnding } from "../records/index.ts";
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
  if (from === path.resolve(recordsDir))
    throw new CommandError("That folder is the garden itself. Give the folder or the card your new photos are on.");
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
  else {
    const lines = [
      ...summaryLines(summary, options.dryRun === true),
      ...(options.dryRun === true ? [] : wordsToRead(summary, path.relative(effects.cwd, recordsDir))),
    ];
    for (const line of lines) effects.out(line);
  }
  if (summary.stopped !== undefined)
    throw new CommandError(
      `Stopped early: ${summary.stopped}. What was brought in until then is whole; do not clear the card. Run the same command again to go on.`,
      EXIT.couldNot,
    );
  return summary.leftAlone.some(({ why }) => isLoss[why]) ? EXIT.problemsFound : EXIT.done;
}

const LEFT: Readonly<Record<LeftReason, string>> = {
  "no photo": "no photo, film or sound that is read",
  "words of no photo": "words that lie beside no photo and no sound",
  "aside of no photo": "a program's file that lies beside no photo",
  "other words there": "a file of that name with other words is in the records, and stays as it is",
  empty: "empty",
  "no picture in it": "has a photo's name but no picture in it",
  "no film in it": "has a film's name but no film in it",
  "no sound in it": "has a sound's name but no sound in it",
  link: "a link",
  hidden: "hidden",
  "camera's own": "a camera's or a system's own file",
  unreadable: "cannot be read",
  "thrown away": "brought in before, and thrown away or changed since",
};

/** Names said for one reason when nothing is lost with them; of what may be missed every name is said. */
const namesSaid = 20;

function summaryLines(summary: IngestSummary, dryRun: boolean): readonly string[] {
  const { broughtIn, alreadyThere, leftAlone } = summary;
  const lines = broughtIn.map(({ from, to, renamed }) => `${from} -> ${to}${renamed ? " (the name was taken)" : ""}`);
  const [losses, others] = [leftAlone.filter(({ why }) => isLoss[why]), leftAlone.filter(({ why }) => !isLoss[why])];
  const left = [...Map.groupBy(others, ({ why }) => why)].flatMap(([why, files]) => [
    ...files.slice(0, namesSaid).map(({ from }) => `${from}: ${LEFT[why]}, left alone`),
    ...(files.length > namesSaid ? [`and ${files.length - namesSaid} more (${LEFT[why]}), named by --json`] : []),
  ]);
  const lost = losses.map(({ from, why }) => `${from}: ${LEFT[why]}, not in the records`);
  const counts = [
    `${counted(broughtIn)} ${dryRun ? "would be brought in" : "brought in"}`,
    ...(alreadyThere.length > 0 ? [`${files(alreadyThere.length)} there already`] : []),
    ...(others.length > 0 ? [`${files(others.length)} left alone`] : []),
  ];
  return [...lines, ...left, `${counts.join(", ")}.`, ...lost, ...answer(summary, losses.length, dryRun)];
}

/** What was spoken becomes a note only when the person has seen how it is read. */
function wordsToRead({ broughtIn, alreadyThere }: IngestSummary, recordsDir: string): readonly string[] {
  const sounds = new Set(broughtIn.filter(({ is }) => is === "sound").map(({ to }) => momentName(to)));
  const words = [...broughtIn, ...alreadyThere].filter(
    ({ to }) => transcriptEnding.test(to) && sounds.has(momentName(besideName(to))),
  );
  if (words.length === 0) return [];
  return [
    "",
    `${words.length === 1 ? "A voice note has" : `${words.length} voice notes have`} words beside ${words.length === 1 ? "it" : "them"}. This shows how they are read, and writes a note of them if you like:`,
    ...words.slice(0, namesSaid).map(({ to }) => `  plotreel ingest ${quoted(path.join(recordsDir, to))}`),
    ...(words.length > namesSaid ? [`  and ${words.length - namesSaid} more, which "plotreel check" names`] : []),
  ];
}

function quoted(file: string): string {
  return /[^\w./\\:-]/.test(file) ? JSON.stringify(file) : file;
}

/** The last line: may the card be cleared? A dry run and a run that stopped early do not say so. */
function answer({ safeToClear, stopped }: IngestSummary, losses: number, dryRun: boolean): readonly string[] {
  if (stopped !== undefined) return [];
  if (losses > 0) {
    const named = losses === 1 ? "1 file, named above, is" : `${losses} files, named above, are`;
    return [`Not safe to clear: ${named} not in the records.`];
  }
  return safeToClear && !dryRun ? ["Safe to clear: all that a camera took is in the records."] : [];
}

function counted(broughtIn: IngestSummary["broughtIn"]): string {
  const photos = broughtIn.filter(({ is }) => is === "photo" || is === "raw").length;
  const films = broughtIn.filter(({ is }) => is === "film").length;
  const sounds = broughtIn.filter(({ is }) => is === "sound").length;
  const beside = broughtIn.length - photos - films - sounds;
  const parts = [
    ...(photos > 0 || films + sounds === 0 ? [`${photos} ${photos === 1 ? "photo" : "photos"}`] : []),
    ...(films > 0 ? [`${films} ${films === 1 ? "clip" : "clips"}`] : []),
    ...(sounds > 0 ? [`${sounds} ${sounds === 1 ? "voice note" : "voice notes"}`] : []),
    ...(beside > 0 ? [`${files(beside)} beside them`] : []),
  ];
  return parts.length > 1 ? `${parts.slice(0, -1).join(", ")} and ${parts.at(-1)}` : (parts[0] ?? "");
}

function files(count: number): string {
  return `${count} ${count === 1 ? "file" : "files"}`;
}
