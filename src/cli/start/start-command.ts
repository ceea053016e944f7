/** `plotreel start`: a garden in an empty folder, from four questions or flags; its photos brought in; the garden opened. */
import path from "node:path";
import { preparedText } from "../../store/index.ts";
import { CommandError, EXIT } from "../command-error.ts";
import type { Effects } from "../effects.ts";
import { ingest } from "../ingest-command.ts";
import { loadGarden } from "../load-garden.ts";
import { watch } from "../watch-command.ts";
import { firstFiles, firstNote, isLeftByStart } from "./first-files.ts";
import { islandTowns } from "./island-towns.ts";
import { type StartFlags, startAnswers } from "./start-questions.ts";
import { readTowns } from "./towns.ts";

export interface StartOptions extends StartFlags {
  /** Relative to the current folder, or absolute; the current one unless given. */
  readonly records?: string | undefined;
  readonly today?: string | undefined;
  /** False when the garden is not to be opened in the browser. */
  readonly open?: boolean | undefined;
}

/** What systems leave in a folder by themselves. */
const NOBODYS = /^(?:\..*|desktop\.ini|thumbs\.db|lost\+found)$/iu;

export async function start(options: StartOptions, effects: Effects): Promise<number> {
  const dir = path.resolve(effects.cwd, options.records ?? ".");
  await refuseTaken(dir, options, effects);
  const { garden, photos } = await startAnswers(
    options,
    () => [...readTowns(preparedText("towns.tsv")), ...islandTowns()],
    effects,
  );
  const today = options.today ?? effects.today(garden.timeZone);
  for (const { file, text, runs } of firstFiles(garden, today, effects.opener())) {
    const target = path.join(dir, file);
    if (!(await effects.createText(target, text)) && (await effects.readText(target)) !== text)
      throw new CommandError(`${file} appeared in ${dir} in this moment and was left as it is.`, EXIT.couldNot);
    if (runs === true) await effects.makeRunnable(target);
  }
  effects.out(
    `${garden.name} begins in ${dir}. README.txt in it says which files are yours and how to keep them safe.`,
  );
  if (photos !== undefined)
    await ingest(await loadGarden({ records: dir, today }, effects), { folder: photos }, effects);
  const note = path.join(dir, firstNote(today));
  effects.out("");
  effects.out("What to do next:");
  effects.out(`1. Write what happened into ${note}, a line for each thing.`);
  effects.out(`2. In ${dir}, "plotreel check --reading" shows what each line is taken to say.`);
  effects.out('3. "plotreel brief" with the day you film makes the brief; "plotreel watch --open" opens the garden.');
  if (options.open === false || !effects.canAsk) return EXIT.done;
  effects.out("");
  return watch({ records: dir, today: options.today, open: true }, effects);
}

async function refuseTaken(dir: string, { photos }: StartOptions, effects: Effects): Promise<void> {
  const names = (await effects.namesIn(dir)) ?? [];
  if (names.some((name) => name.toLowerCase() === "garden.md"))
    throw new CommandError(
      `${dir} is a garden already. "plotreel watch --open" in it opens it${photos === undefined ? "" : ', and "plotreel ingest FOLDER" brings photos in'}; nothing was changed.`,
      EXIT.couldNot,
    );
  const others: string[] = [];
  for (const name of names) if (!NOBODYS.test(name) && !(await isOfStart(dir, name, effects))) others.push(name);
  if (others.length === 0) return;
  const some = others.slice(0, 3).join(", ");
  throw new CommandError(
    `${dir} holds other files (${some}${others.length > 3 ? " and more" : ""}), and a garden wants a folder of its own. Make an empty one, or name it: plotreel start --records my-garden`,
    EXIT.couldNot,
  );
}

/** A file, or the folder of notes, of a start that was broken off. */
async function isOfStart(dir: string, name: string, effects: Effects): Promise<boolean> {
  const inside = name === "notes" ? await effects.namesIn(path.join(dir, name)) : undefined;
  const files = inside?.filter((file) => !NOBODYS.test(file)).map((file) => `${name}/${file}`) ?? [name];
  for (const file of files) {
    const target = path.join(dir, file);
    if ((await effects.kindOf(target)) !== "file") return false;
    if (!isLeftByStart(file, (await effects.readText(target)) ?? "", effects.opener())) return false;
  }
  return true;
}
