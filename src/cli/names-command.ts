/** `plotreel names`: names that notes use and no file describes; two of one thing joined after showing the lines that change. */
import path from "node:path";
import { sayDay } from "../language/index.ts";
import {
  type JoinedFile,
  joinNames,
  type NamesJoined,
  namesUsed,
  type UsedKind,
  type UsedName,
} from "../past/index.ts";
import { CommandError, EXIT } from "./command-error.ts";
import type { Effects } from "./effects.ts";
import { rename } from "./rename-command.ts";
import type { Settling } from "./settle-command.ts";
import { wrapped } from "./wrapped-text.ts";

export interface NamesOptions {
  /** The name to be given up, and the one to keep. */
  readonly join?: readonly string[] | undefined;
  /** The old name of a bed, and the new one. */
  readonly rename?: readonly string[] | undefined;
  /** The first day of the new name. */
  readonly from?: string | undefined;
  readonly write?: boolean | undefined;
  readonly json?: boolean | undefined;
}

export async function names(settling: Settling, options: NamesOptions, effects: Effects): Promise<number> {
  if (options.from !== undefined && options.rename === undefined) throw new CommandError("--from belongs to --rename.");
  if (options.rename !== undefined) return rename(settling, options.rename, options, effects);
  if (options.join !== undefined) return join(settling, options.join, options, effects);
  if (options.write === true) throw new CommandError("--write belongs to --join and --rename.");
  const records = await settling.records();
  const used = namesUsed(records);
  if (options.json === true) effects.out(JSON.stringify(used, null, 2));
  else for (const line of sayUsed(used.names, records.settings.language, settling.today)) effects.out(line);
  return EXIT.done;
}

const kinds: Readonly<Record<UsedKind, string>> = {
  bed: "Beds",
  variety: "Varieties",
  source: "Where things came from",
};

function sayUsed(all: readonly UsedName[], language: string, today: string): readonly string[] {
  if (all.length === 0) return ["Every name your notes use has its file."];
  const near = all.find((one) => one.near.length > 0);
  const [first] = near?.near ?? [];
  const day = (of: string) => sayDay(of, { language, near: today });
  return [
    ...[...Map.groupBy(all, ({ kind }) => kind)].flatMap(([kind, own]) => [
      kinds[kind],
      ...own.flatMap(({ name, lines, asked, first: from, last, files, near: alike }) => [
        ...wrapped(
          "  ",
          `${name}: ${lines} ${lines === 1 ? "line" : "lines"}${askedOf(asked, lines)}, ${from === last ? day(from) : `${day(from)} to ${day(last)}`}, ${files[0]}${files.length > 1 ? ` and ${files.length - 1} more` : ""}`,
        ),
        ...alike.flatMap(({ name: other, by, described }) =>
          wrapped(
            "    ",
            `${by === "spelling" ? "spelled nearly like" : "sounds like"} "${other}"${described ? ", which a file describes" : ""}`,
          ),
        ),
      ]),
      "",
    ]),
    ...(near === undefined || first === undefined
      ? []
      : wrapped(
          "",
          `If two are one thing: plotreel names --join "${near.name}" "${first.name}" shows what would change.`,
        )),
    ...(all.some(({ kind }) => kind !== "source")
      ? ['"plotreel new named" writes a file to fill in for each bed and variety.']
      : []),
  ];
}

function askedOf(asked: number, lines: number): string {
  if (asked === 0) return "";
  return asked === lines ? " (still asked about)" : ` (${asked} still asked about)`;
}

async function join(
  { records: read, recordsDir, today }: Settling,
  pair: readonly string[],
  { write, json }: NamesOptions,
  effects: Effects,
): Promise<number> {
  const [from, to, more] = pair;
  if (from === undefined || to === undefined || more !== undefined)
    throw new CommandError('Give two names: plotreel names --join "the one to give up" "the one to keep".');
  const folder = await effects.openRecords(recordsDir);
  const joined = await joinNames({ from, to, folder, records: await read(), today });
  if ("refused" in joined) throw new CommandError(joined.refused);
  if (json === true) {
    const files = joined.files.map(({ file, lines }) => ({ file, lines }));
    effects.out(JSON.stringify({ ...joined, files }, null, 2));
  } else for (const line of sayJoined(joined, from, to)) effects.out(line);
  if (!(await isWanted({ write, json }, effects))) {
    if (json !== true) effects.out("Nothing was written yet. The same command with --write changes these lines.");
    return EXIT.done;
  }
  let changed = 0;
  for (const file of joined.files) changed += (await change(file, recordsDir, effects)) ? 1 : 0;
  effects.out(`Changed: ${changed} ${changed === 1 ? "file" : "files"}.`);
  return changed === joined.files.length ? EXIT.done : EXIT.couldNot;
}

async function isWanted({ write, json }: NamesOptions, effects: Effects): Promise<boolean> {
  if (write === true || json === true || !effects.canAsk) return write === true;
  const answer = await effects.askKey("Change these lines?", [
    { key: "y", means: "yes, write it" },
    { key: "n", means: "no" },
  ]);
  return answer === "y";
}

/** Only where the file still reads as it was shown. */
async function change({ file, before, after }: JoinedFile, recordsDir: string, effects: Effects): Promise<boolean> {
  const { refused } = await effects.editText(path.join(recordsDir, ...file.split("/")), (now) => {
    const mark = now.startsWith("\ufeff") ? "\ufeff" : "";
    if (now.slice(mark.length) !== before) return { refused: "It was changed in the meantime. Run the command again." };
    return { text: mark + after };
  });
  if (refused !== undefined) effects.err(`${file} was left as it is. ${refused}`);
  return refused === undefined;
}

function sayJoined(
  joined: Exclude<NamesJoined, { readonly refused: string }>,
  from: string,
  to: string,
): readonly string[] {
  const lines = joined.files.reduce((sum, file) => sum + file.lines.length, 0);
  const [facts, factsAfter] = joined.facts;
  const [questions, questionsAfter] = joined.questions;
  return [
    ...joined.files.flatMap(({ file, lines: changed }) => [
      file,
      ...changed.flatMap(({ line, before, after }) => [
        ...wrapped(`${String(line).padStart(4)} - `, before.trim()),
        ...wrapped("     + ", after.trim()),
      ]),
    ]),
    "",
    `${lines} ${lines === 1 ? "line" : "lines"} in ${joined.files.length} ${joined.files.length === 1 ? "file" : "files"}.`,
    ...(joined.isKnown ? [] : [`Nothing is called "${to}" so far: this gives "${from}" a new name.`]),
    ...(facts === factsAfter ? [] : [`The notes then tell ${factsAfter} facts instead of ${facts}.`]),
    ...(questions === questionsAfter ? [] : [`${questionsAfter} lines are then questions instead of ${questions}.`]),
    ...(joined.left.length === 0
      ? []
      : wrapped("", `Named in other letters, and left as it is: ${joined.left.join(", ")}.`)),
    ...(joined.photos === undefined ? [] : [`${joined.photos} keeps its name: rename that folder yourself.`]),
  ];
}
