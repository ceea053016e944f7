/** `plotreel names --rename`: a bed that has another name from a day on, shown first. */
import path from "node:path";
import { type BedRenamed, type FileChange, renameBed } from "../past/index.ts";
import { CommandError, EXIT } from "./command-error.ts";
import type { Effects } from "./effects.ts";
import type { Settling } from "./settle-command.ts";
import { wrapped } from "./wrapped-text.ts";

export interface RenameOptions {
  readonly from?: string | undefined;
  readonly join?: readonly string[] | undefined;
  readonly write?: boolean | undefined;
  readonly json?: boolean | undefined;
}

export async function rename(
  { records: read, recordsDir, today }: Settling,
  pair: readonly string[],
  { from: day, join, write, json }: RenameOptions,
  effects: Effects,
): Promise<number> {
  const [from, to, more] = pair;
  if (join !== undefined) throw new CommandError("--join and --rename are two things: give one of them.");
  if (from === undefined || to === undefined || more !== undefined || day === undefined)
    throw new CommandError(
      'Give both names and the first day of the new one: plotreel names --rename "Gravy" "Kitchen Side" --from 2026-05-01.',
    );
  const folder = await effects.openRecords(recordsDir);
  const renamed = await renameBed({ from, to, day, folder, records: await read(), today });
  if ("refused" in renamed) throw new CommandError(renamed.refused);
  if (json === true) effects.out(JSON.stringify(renamed, null, 2));
  else for (const line of sayRenamed(renamed, { from, to, day })) effects.out(line);
  if (!(await isWanted({ write, json }, effects))) {
    if (json !== true) effects.out("Nothing was written yet. The same command with --write writes it.");
    return EXIT.done;
  }
  for (const change of renamed.files) await put(change, recordsDir, effects);
  if (json !== true) effects.out(`Written: ${renamed.files.map(({ file }) => file).join(", ")}.`);
  return EXIT.done;
}

/** Only where the file still reads as it was shown. */
async function put({ file, before, after }: FileChange, recordsDir: string, effects: Effects): Promise<void> {
  const target = path.join(recordsDir, ...file.split("/"));
  const inTheMeantime = `${file} was left as it is. It was changed in the meantime. Run the command again.`;
  if (before === undefined) {
    if (!(await effects.createText(target, after))) throw new CommandError(inTheMeantime, EXIT.couldNot);
    return;
  }
  const { refused } = await effects.editText(target, (now) => {
    const mark = now.startsWith("\ufeff") ? "\ufeff" : "";
    return now.slice(mark.length) === before ? { text: mark + after } : { refused: inTheMeantime };
  });
  if (refused !== undefined) throw new CommandError(refused, EXIT.couldNot);
}

async function isWanted({ write, json }: RenameOptions, effects: Effects): Promise<boolean> {
  if (write === true || json === true || !effects.canAsk) return write === true;
  const answer = await effects.askKey("Write this?", [
    { key: "y", means: "yes, write it" },
    { key: "n", means: "no" },
  ]);
  return answer === "y";
}

/** Places named before the rest is counted. */
const named = 6;

function sayRenamed(
  renamed: Exclude<BedRenamed, { readonly refused: string }>,
  { from, to, day }: { readonly from: string; readonly to: string; readonly day: string },
): readonly string[] {
  if (renamed.is === "joined")
    return [
      ...wrapped("", `"${to}" has a file of its own, so "${from}" becomes a part of it from ${day} on:`),
      ...renamed.files.flatMap(changeLines),
      "",
      ...(renamed.stays.length === 0
        ? [
            renamed.moved === 0
              ? `By the notes nothing stands in "${from}" then.`
              : "Both beds keep their history. Take out what did not move.",
          ]
        : wrapped(
            "",
            `By the notes these stand in "${from}" still: ${renamed.stays.join(", ")}. Write what became of them.`,
          )),
    ];
  const { lines, questions, earlier, stillOld, tooEarly } = renamed;
  return [
    ...renamed.files.flatMap(changeLines),
    "",
    ...wrapped(
      "",
      `${earlier === 1 ? "1 line" : `${earlier} lines`} of earlier notes ${earlier === 1 ? "says" : "say"} "${from}"; no word of a note is changed.`,
    ),
    `Facts on this bed: ${lines[0]} now, ${lines[1]} with it.`,
    ...(questions[0] === questions[1] ? [] : [`${questions[1]} lines are then questions instead of ${questions[0]}.`]),
    ...(stillOld.length === 0
      ? []
      : wrapped(
          "",
          `From ${day} on these still say "${from}", and go on to mean this bed as long as no other is called so: ${listed(stillOld)}.`,
        )),
    ...(tooEarly.length === 0
      ? []
      : wrapped("", `Before ${day} these say "${to}" already, and then mean this bed: ${listed(tooEarly)}.`)),
  ];
}

function changeLines({ file, before, after }: FileChange): readonly string[] {
  const old = (before ?? "").split(/\r\n|\n|\r/);
  const now = after.split(/\r\n|\n|\r/);
  return [
    `${file}${before === undefined ? ", a new file" : ""}`,
    ...old.filter((line) => before !== undefined && !now.includes(line)).flatMap((line) => wrapped("  - ", line)),
    ...now.filter((line) => line !== "" && !old.includes(line)).flatMap((line) => wrapped("  + ", line)),
  ];
}

function listed(places: readonly string[]): string {
  const more = places.length - named;
  return `${places.slice(0, named).join(", ")}${more > 0 ? ` and ${more} more` : ""}`;
}
