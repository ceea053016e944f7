/** The command line: what is asked for, in commander's terms; each command lives in a file of its own. */
import path from "node:path";
import { Command, CommanderError, InvalidArgumentError, Option } from "commander";
import { isDay } from "../calendar.ts";
import type { FrameRate } from "../model.ts";
import { dayOrders } from "../past/index.ts";
import { readRate } from "../wrap/index.ts";
import { type AheadOptions, ahead } from "./ahead-command.ts";
import { type BriefOptions, brief } from "./brief-command.ts";
import { type CheckOptions, check } from "./check-command.ts";
import { CommandError, EXIT } from "./command-error.ts";
import { type Effects, realEffects } from "./effects.ts";
import { type IngestCommandOptions, ingest } from "./ingest-command.ts";
import { columnsSaid, type IngestFileOptions, ingestFile, refuseForFolder } from "./ingest-file.ts";
import { type LoadOptions, loadGarden, settling } from "./load-garden.ts";
import { type NamesOptions, names } from "./names-command.ts";
import { newRecord, writeNamedRecords } from "./new-command.ts";
import { type PublishOptions, publish } from "./publish-command.ts";
import { type RecapOptions, recap } from "./recap-command.ts";
import { isKind, KINDS } from "./record-templates.ts";
import { recordsPlace } from "./records-place.ts";
import { settle } from "./settle-command.ts";
import { showAsked } from "./show-asked.ts";
import { type StartOptions, start } from "./start/start-command.ts";
import { sayRefused } from "./system-reason.ts";
import { timeline } from "./timeline-command.ts";
import { type WatchOptions, watch } from "./watch-command.ts";
import { type WrapOptions, wrap } from "./wrap-command.ts";

/** Runs one command and gives its exit code: 0 done, 1 problems found in the records, 2 wrong use, 3 could not. */
export async function main(argv: readonly string[], effects: Effects = realEffects()): Promise<number> {
  let exitCode: number = EXIT.done;
  const program = commands(effects, (code) => {
    exitCode = code;
  });
  try {
    await program.parseAsync([...argv], { from: "user" });
    return exitCode;
  } catch (error) {
    if (error instanceof CommanderError) return error.exitCode === 0 ? EXIT.done : EXIT.wrongUse;
    if (error instanceof CommandError) {
      effects.err(error.message);
      return error.exitCode;
    }
    const refused = sayRefused(error);
    if (refused === undefined) throw error;
    effects.err(refused);
    return EXIT.couldNot;
  }
}

/** The whole program; the command reference is printed from it. */
export function commands(effects: Effects, finish: (exitCode: number) => void): Command {
  const program = new Command("plotreel")
    .description("Garden notes and photos in; tour briefs, a public variety list and season recaps out.")
    .exitOverride()
    .configureOutput({
      writeOut: (text) => effects.out(text.trimEnd()),
      writeErr: (text) => effects.err(text.trimEnd()),
    })
    .showHelpAfterError("(--help shows how this is used)");

  program
    .command("start")
    .description("begin a garden in an empty folder: four questions, or a flag for each; then it opens in the browser")
    .option("--records <dir>", "the folder (default: this one)")
    .option("--name <name>", "what the garden is called")
    .option(
      "--place <place>",
      'a town nearby, such as "Bangor, Northern Ireland"; or "54.3, -5.6"; or skip. Viewers never learn it',
    )
    .addOption(new Option("--units <units>", "the units you use").choices(["metric", "us"]))
    .option("--time-zone <zone>", "where the town's country has several, such as America/Chicago")
    .option("--photos <folder>", "where photos of it are, to be brought in; or none")
    .option("--no-open", "do not open the garden in the browser at the end")
    .option("--today <date>", "take this day as today", day)
    .action(async (options: StartOptions) => finish(await start(options, effects)));

  withRecords(program.command("check"))
    .description("list every problem and hint in the records")
    .option("--reading [note]", "also what each line of the notes, or of this one, is taken to say")
    .option("--json", "as data")
    .action(async (options: LoadOptions & CheckOptions) => {
      const loaded = await loadGarden(options, effects);
      const code = check(loaded, options, effects);
      showAsked(loaded, options, effects);
      return finish(code);
    });

  withRecords(program.command("settle"))
    .description("go through the lines that are questions, one key each; answers go into your notes")
    .option("--asks", "then also what viewers will ask and no record tells, three questions at most")
    .action(async (options: LoadOptions & { asks?: boolean }) =>
      finish(await settle({ ...(await settling(options, effects)), asks: options.asks }, effects)),
    );

  withRecords(program.command("timeline"))
    .description("what stands in a bed, or in all beds, and what changed")
    .argument("[bed]", "a bed's name; all beds when left out")
    .option("--on <date>", "as it stood on this day", day)
    .option("--since <date>", "changes after this day", day)
    .option("--json", "as data")
    .action(async (bed: string | undefined, options: LoadOptions & { on?: string; since?: string; json?: boolean }) =>
      finish(timeline(await loadGarden(options, effects), { ...options, bed }, effects)),
    );

  withOut(withRecords(program.command("brief")))
    .description(
      "the brief of a tour, a cover, cards and a dossier: Markdown here, and beside it data and a page to print",
    )
    .argument("<tour-or-date>", "an episode's folder name, or a day such as 2026-06-14")
    .option("--json", "print the data instead of the Markdown")
    .option("--start <time>", "begin filming at this time of day, such as 09:30", timeOfDay)
    .option("--overcast", "cloud is expected: the light has no direction")
    .option("--sources", "under each sentence, the file and line it rests on")
    .option("--pdf", "also as a PDF, printed by the Chromium of this machine")
    .option("--pocket", "cards to print of A6, four to a sheet, instead of A5")
    .action(async (tour: string, options: LoadOptions & Omit<BriefOptions, "tour">) =>
      finish(await brief(await loadGarden(options, effects), { ...options, tour }, effects)),
    );

  withOut(withRecords(program.command("ahead")))
    .description("the coming weeks: what to film in time, days worth filming, what should be ready when")
    .option("--weeks <number>", "how many weeks to look ahead", numberOfWeeks, 4)
    .option("--ics", "also write a calendar file")
    .option("--json", "as data")
    .action(async (options: LoadOptions & AheadOptions) =>
      finish(await ahead(await loadGarden(options, effects), options, effects)),
    );

  withOut(withRecords(program.command("publish")))
    .description("make the public site and the private field pages")
    .option("--base <path>", "serve the public site below this path of its address, such as /garden/", basePath)
    .option("--dry-run", "say what viewers would see that they did not see before, and what is kept back; make nothing")
    .option("--whole", "with --dry-run: every single thing, not only how many of each kind")
    .option("--hold-back", "publish what is sure, and keep back what is in doubt instead of stopping")
    .option("--serve", "then show both on this machine until stopped")
    .option("--address <address>", "with --serve: let a phone in at this address of your own network, by a code")
    .action(async (options: LoadOptions & PublishOptions) =>
      finish(await publish(await loadGarden(options, effects), options, effects)),
    );

  withRecords(program.command("ingest"))
    .description(
      "bring in photos by bed and viewpoint, or by day; or a table, a diary, an old film's captions, or what a phone kept outdoors; never overwrites or deletes",
    )
    .argument(
      "<folder-or-file>",
      "a phone's or a card's folder of photos; or one file: .csv, .xlsx, .txt, .md, .vtt, .srt, .jsonl",
    )
    .option("--dry-run", "say what would be done, and do nothing")
    .option("--write", "of a file: write what is shown without it")
    .option(
      "--columns <list>",
      'of a table: what headings mean, such as "Name=variety,From=source"; "-" leaves one out',
      columnsSaid,
    )
    .option("--sheet <name>", "of a spreadsheet: the sheet to bring in, where several hold rows")
    .option(
      "--date <day>",
      "of captions: the day of the film; of a table or diary: the year of days that say none",
      dayOrYear,
    )
    .addOption(new Option("--dates <order>", "which comes first in 3/4/2024").choices([...dayOrders]))
    .option("--public", "of a file: viewers may see what it brings; private without it")
    .option("--json", "as data")
    .action(
      async (
        from: string,
        options: LoadOptions & Omit<IngestFileOptions & IngestCommandOptions, "file" | "folder">,
      ) => {
        if (from.trim() === "") throw new CommandError("Say which folder of photos or which file to bring in.");
        const loaded = await loadGarden(options, effects);
        const isFile = (await effects.kindOf(path.resolve(effects.cwd, from))) === "file";
        if (!isFile) refuseForFolder(options);
        finish(
          isFile
            ? await ingestFile(loaded, { ...options, file: from }, effects)
            : await ingest(loaded, { ...options, folder: from }, effects),
        );
      },
    );

  withRecords(program.command("names"))
    .description(
      "names that notes use and no file describes, and which are nearly the same; joins two, or renames a bed from a day on",
    )
    .option("--join <names...>", "the name to be given up and the one to keep: shows the lines that would change")
    .option("--rename <names...>", "a bed's old name and its new one, with --from: shows what its file would say")
    .option("--from <day>", "with --rename: the first day of the new name", day)
    .option("--write", "with --join or --rename: change these lines")
    .option("--json", "as data")
    .action(async (options: LoadOptions & NamesOptions) =>
      finish(await names(await settling(options, effects), options, effects)),
    );

  withOut(withRecords(program.command("wrap")))
    .description(
      "after filming: chapters, captions with names set right, what was missed, promises, description, edit log",
    )
    .argument("<episode>", "an episode's folder name")
    .option("--captions <file>", "captions or timed text, where they do not lie beside the episode's record")
    .option("--comments <file>", "viewers' comments, one a line; comments.txt beside the record unless given")
    .option(
      "--glossary <file>",
      "your own words and how they are heard; glossary.txt in the records folder unless given",
    )
    .option("--clips <folder>", "the film files as they came from the cameras: which holds which stop, shot and take")
    .option("--length <time>", "how long the film lasts, such as 12:05", filmLength)
    .option("--rate <pictures>", "pictures a second of the film, such as 25 or 29.97, for its timelines", pictureRate)
    .option(
      "--film <file>",
      "the film itself, for pictures of varieties out of it, where it does not lie beside the record",
    )
    .option("--limit <characters>", "longest description", wholeNumber)
    .option("--accept <numbers...>", "take promises heard into the episode's record, by their numbers", promiseNumber)
    .option("--json", "print the data instead of the report")
    .action(async (episode: string, options: LoadOptions & Omit<WrapOptions, "episode">) =>
      finish(await wrap(await loadGarden(options, effects), { ...options, episode }, effects)),
    );

  withRecords(program.command("watch"))
    .description("both sites on this machine, following every change of the records, with a desk to write at")
    .option("--base <path>", "serve the public site below this path, as publish does", basePath)
    .option("--address <address>", "let a phone in to your field pages at this address of this machine, by a code")
    .option("--open", "open your pages in the browser")
    .action(async (options: WatchOptions) => finish(await watch(options, effects)));

  withOut(withRecords(program.command("recap")))
    .description("look back on a season: cover and cards for the film, the report behind them, a seed order")
    .argument("<year>", "the year in which the season begins, such as 2026, or 2025/26")
    .option("--month <month>", "only this month of it, such as 6 or 2026-06")
    .option("--since-last", "only what came after the last published recap")
    .option("--length <minutes>", "fit the film into this many minutes", minutesLong)
    .option("--json", "print the data instead of the Markdown")
    .action(async (year: string, options: LoadOptions & Omit<RecapOptions, "year">) =>
      finish(await recap(await loadGarden(options, effects), { ...options, year }, effects)),
    );

  withRecords(program.command("new"))
    .description("write a record to fill in")
    .argument(
      "<kind>",
      `${Object.keys(KINDS).join(", ")}; or "named" for every bed and variety that notes name and no file describes`,
    )
    .argument("[name]", "what it is called")
    .option("--date <date>", "of an episode: the day you will film it, such as 2026-07-18")
    .action(async (kind: string, name: string | undefined, options: LoadOptions & { date?: string }) => {
      if (kind === "named") {
        const { garden, recordsDir, today } = await loadGarden(options, effects);
        return finish(await writeNamedRecords(garden, recordsDir, today, effects));
      }
      if (!isKind(kind))
        throw new CommandError(`"${kind}" is not a kind of record. The kinds are: ${Object.keys(KINDS).join(", ")}.`);
      if (name === undefined || !/[\p{L}\p{N}]/u.test(name))
        throw new CommandError(`Say what the ${kind} is called: plotreel new ${kind} "…"`);
      const today = options.today ?? effects.today(Intl.DateTimeFormat().resolvedOptions().timeZone);
      return finish(
        await newRecord(
          { recordsDir: await recordsPlace(options.records, effects), kind, name, today, date: options.date },
          effects,
        ),
      );
    });

  return program;
}

function withRecords(command: Command): Command {
  return command
    .option("--records <dir>", "the records folder (default: this one if garden.md is in it, else content)")
    .option("--today <date>", "take this day as today", day)
    .option("--verbose", "say how many files were read again");
}

function withOut(command: Command): Command {
  return command.option("--out <dir>", "where the results go", "out");
}

/** A path with a slash at both ends. */
function basePath(text: string): string {
  const path = `/${text}/`.replace(/\/{2,}/g, "/");
  if (!/^[\w./~-]*$/.test(path) || path.includes("/../")) {
    throw new InvalidArgumentError("Write the path below the address: /garden/.");
  }
  return path;
}

function day(text: string): string {
  if (!isDay(text)) throw new InvalidArgumentError("Write a day as year, month and day: 2026-06-14.");
  return text;
}

/** A day, or a year by itself. */
function dayOrYear(text: string): string {
  if (!isDay(text) && !/^(?:18|19|20|21)\d\d$/.test(text))
    throw new InvalidArgumentError("Write a day such as 2019-06-14, or a year.");
  return text;
}

function minutesLong(text: string): number {
  const minutes = Number(text.replace(/(?<!\s)\s*min(?:utes)?$/, ""));
  if (!(minutes > 0 && minutes <= 600)) throw new InvalidArgumentError("Write a number of minutes, such as 12.");
  return minutes;
}

function wholeNumber(text: string): number {
  if (!/^[1-9]\d{0,8}$/.test(text)) throw new InvalidArgumentError("Write a whole number from 1 on.");
  return Number(text);
}

/** Each number of a list is read with those before it. */
function promiseNumber(text: string, before: readonly number[] = []): readonly number[] {
  return [...before, ...text.split(",").map(wholeNumber)];
}

/** "12:05" or "1:02:05" in seconds. */
function filmLength(text: string): number {
  if (!/^(?:\d+:)?\d{1,2}:[0-5]\d$/.test(text)) throw new InvalidArgumentError("Write minutes and seconds: 12:05.");
  return text.split(":").reduce((seconds, part) => seconds * 60 + Number(part), 0);
}

function pictureRate(text: string): FrameRate {
  const rate = readRate(text);
  if (rate === undefined) throw new InvalidArgumentError("Write pictures a second: 24, 25, 29.97, 30, 50, 59.94.");
  return rate;
}

/** "9:30", "09.30" */
function timeOfDay(text: string): string {
  const [, hours, minutes] = /^([01]?\d|2[0-3])[:.]([0-5]\d)$/.exec(text) ?? [];
  if (hours === undefined) throw new InvalidArgumentError("Write a time of day as hours and minutes: 09:30.");
  return `${hours.padStart(2, "0")}:${minutes}`;
}

function numberOfWeeks(text: string): number {
  const weeks = Number(text);
  if (!Number.isInteger(weeks) || weeks < 1 || weeks > 52) {
    throw new InvalidArgumentError("Write a whole number of weeks from 1 to 52.");
  }
  return weeks;
}
