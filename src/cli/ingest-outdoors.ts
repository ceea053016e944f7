/** `plotreel ingest FILE` of what a phone kept outdoors: into the same notes and folders as by the workbench. Shows first. */
import path from "node:path";
import type { HomeFile, HomeLine, HomePhoto } from "../past/index.ts";
import type { OutdoorAnswer } from "../site/index.ts";
import { EXIT } from "./command-error.ts";
import type { Effects } from "./effects.ts";
import { type IngestFileOptions, isWanted } from "./ingest-file.ts";
import type { Loaded } from "./load-garden.ts";
import { onlyLooking, sentBefore } from "./sent-before.ts";
import { outdoorTaker } from "./take-outdoors.ts";
import { photoTaker } from "./take-photos.ts";
import { noteWriter } from "./write-notes.ts";
import { type WrittenFiles, writtenFiles } from "./written-files.ts";

interface Outcome {
  readonly entry: HomeLine | HomePhoto;
  readonly answer: OutdoorAnswer;
  /** It was brought in by an earlier run, or by the workbench. */
  readonly isKnown: boolean;
}

const MARKS = { facts: "=", question: "?", story: "–" } as const;

export async function ingestOutdoors(
  loaded: Loaded,
  home: HomeFile,
  options: IngestFileOptions,
  effects: Effects,
): Promise<number> {
  const looked = await bring(loaded, home, true, effects);
  const name = path.basename(options.file);
  if (options.json === true) effects.out(JSON.stringify(asData(home, looked), null, 2));
  else for (const line of shown(home, looked, name, loaded)) effects.out(line);
  const isShort = home.told.length > 0 || looked.some(({ answer }) => answer.done !== true);
  const code = isShort ? EXIT.problemsFound : EXIT.done;
  const say = (line: string) => (options.json === true ? undefined : effects.out(line));
  if (looked.every(({ answer, isKnown }) => answer.done !== true || isKnown)) {
    say("Nothing is to be written.");
    return code;
  }
  if (!(await isWanted(options, effects))) {
    say("Nothing was written yet. The same command with --write writes it.");
    return code;
  }
  const brought = await bring(loaded, home, false, effects);
  const fresh = brought.filter(({ answer, isKnown }) => answer.done === true && !isKnown);
  say(`Written: ${counted(fresh.map(({ entry }) => entry))}.`);
  return brought.some(({ answer }) => answer.done !== true) ? EXIT.problemsFound : code;
}

/** The same work for a look and for good: for a look it goes by files that only seem to be written. */
async function bring(
  { garden, recordsDir, today }: Loaded,
  { entries }: HomeFile,
  isLook: boolean,
  effects: Effects,
): Promise<readonly Outcome[]> {
  const sent = isLook ? onlyLooking(sentBefore(recordsDir, effects)) : sentBefore(recordsDir, effects);
  const files = writtenFiles(recordsDir, effects);
  const quiet: Effects = { ...effects, err: () => undefined };
  const notes = noteWriter({ garden, today }, recordsDir, isLook ? onlyInMemory(files) : files, quiet);
  const photos = photoTaker(garden, recordsDir, quiet);
  const taker = outdoorTaker(notes, isLook ? { take: photos.look } : photos, sent, quiet);
  const outcomes: Outcome[] = [];
  for (const entry of entries) {
    const isKnown = (await sent.placeOf(entry.id)) !== undefined;
    outcomes.push({ entry, isKnown, answer: await (entry.kind === "line" ? taker.line(entry) : taker.photo(entry)) });
  }
  return outcomes;
}

function onlyInMemory(files: WrittenFiles): WrittenFiles {
  const written = new Map<string, Buffer>();
  return {
    ...files,
    bytes: (file) => written.get(file) ?? files.bytes(file),
    async write(file, _, after) {
      written.set(file, Buffer.from(after));
      return 0;
    },
  };
}

function shown(home: HomeFile, outcomes: readonly Outcome[], name: string, { garden }: Loaded): readonly string[] {
  const known = outcomes.filter(({ isKnown }) => isKnown);
  const fresh = outcomes.filter(({ isKnown, answer }) => !isKnown && answer.done === true);
  const left = outcomes.filter(({ answer }) => answer.done !== true);
  const other =
    home.garden === garden.settings.name
      ? []
      : [`It was kept for “${home.garden}”, and this is “${garden.settings.name}”.`];
  const bedOf = ({ bed }: HomeLine | HomePhoto) => (bed === undefined ? "" : `, ${garden.beds.get(bed)?.title ?? bed}`);
  return [
    `${name}: ${counted(outcomes.map(({ entry }) => entry))} from the phone.`,
    ...other,
    ...fresh.flatMap(({ entry, answer }) => ["", `${entry.day}${bedOf(entry)}`, `  ${what(entry)}`, ...said(answer)]),
    ...(left.length + home.told.length === 0 ? [] : ["", "Left out:"]),
    ...left.map(({ entry, answer }) => `  ${entry.day}${bedOf(entry)}: ${what(entry)}. ${answer.told}${twice(answer)}`),
    ...home.told.map(({ line, what: why }) => `  line ${line} ${why}`),
    "",
    ...(known.length === 0 ? [] : [`${counted(known.map(({ entry }) => entry))} brought in before.`]),
  ];
}

function what(entry: HomeLine | HomePhoto): string {
  return entry.kind === "line"
    ? entry.text
    : `photo ${entry.name}${entry.viewpoint === undefined ? "" : `, from ${entry.viewpoint}`}`;
}

function said({ told, reads }: OutdoorAnswer): readonly string[] {
  if (reads === undefined) return [`    ${told}`];
  return (reads.says.length === 0 ? ["story"] : reads.says).map((one) => `    ${MARKS[reads.as]} ${one}`);
}

function twice({ stands }: OutdoorAnswer): string {
  return stands === true ? " If it happened twice, write it into the note yourself." : "";
}

function asData({ garden, told }: HomeFile, outcomes: readonly Outcome[]): unknown {
  const entries = outcomes.map(({ entry, answer, isKnown }) => ({
    ...{ id: entry.id, kind: entry.kind, day: entry.day, bed: entry.bed, says: what(entry) },
    ...{ brought: answer.done === true, before: isKnown, told: answer.told, reads: answer.reads },
  }));
  return { garden, entries, told };
}

function counted(entries: readonly (HomeLine | HomePhoto)[]): string {
  const photos = entries.filter(({ kind }) => kind === "photo").length;
  const lines = entries.length - photos;
  const parts = [
    ...(lines > 0 || photos === 0 ? [`${lines} ${lines === 1 ? "line" : "lines"}`] : []),
    ...(photos > 0 ? [`${photos} ${photos === 1 ? "photo" : "photos"}`] : []),
  ];
  return parts.join(" and ");
}
