/**
 * The outside world as the commands see it: files, clock, terminal. Tests pass their own.
 */
import { createHash } from "node:crypto";
import { chmod, mkdir, readdir, stat } from "node:fs/promises";
import { networkInterfaces } from "node:os";
import path from "node:path";
import { watch as watchFiles } from "chokidar";
import envPaths from "env-paths";
import { Temporal } from "temporal-polyfill";
import type { Day } from "../model.ts";
import { openRecordsFolder, type RecordsFolder, readFileAt } from "../records/index.ts";
import { createText, toolVersion, writeWhole } from "../store/index.ts";
import { askKey, askLine, type Key } from "./ask.ts";
import { type Printing, printPage } from "./chromium.ts";
import { openInBrowser } from "./open-in-browser.ts";
import type { Opener } from "./start/opener.ts";
import { editBytes, editText, removeBytes, type TextChange } from "./write-files.ts";

export interface Effects {
  /** Folder that relative paths start from, absolute. */
  readonly cwd: string;
  /** True when a person is watching: progress may redraw its line. */
  readonly terminal: boolean;
  /** Writes one line of what was asked for. */
  out(line: string): void;
  /** Writes one line about the work: progress, problems, where files are. */
  err(line: string): void;
  /** Redraws the progress line; only called when `terminal`. */
  redraw(line: string): void;
  /** Writes a line with the colours in it; only called when `terminal`. */
  draw(line: string): void;
  /** True when a person is there to be asked. */
  readonly canAsk: boolean;
  /** Waits for one of the keys; undefined when the person ends the asking. */
  askKey(question: string, keys: readonly Key[]): Promise<string | undefined>;
  /** Waits for a line of text; undefined when the person ends the asking. */
  askLine(question: string): Promise<string | undefined>;
  /** Today in an IANA time zone. */
  today(timeZone: string): Day;
  /** The IANA time zone of this machine. */
  timeZone(): string;
  /** Names of what lies in a folder; undefined where there is no folder. */
  namesIn(dir: string): Promise<readonly string[] | undefined>;
  /** Lets a file be run by a double click, where a system has a right for that. */
  makeRunnable(file: string): Promise<void>;
  /** This system and this program, as a file that opens a garden needs them. */
  opener(): Opener;
  /** Shows a page in the person's own browser; does nothing where there is none. */
  openInBrowser(url: string): Promise<void>;
  openRecords(dir: string): Promise<RecordsFolder>;
  /** Undefined when nothing is there. */
  kindOf(file: string): Promise<"file" | "folder" | undefined>;
  /** Undefined when there is no such file. */
  readText(file: string): Promise<string | undefined>;
  /** Writes beside the target and renames, so that a file is old or new, never half. Makes its folder. */
  writeText(file: string, text: string): Promise<void>;
  /** Like writeText, but gives false and changes nothing when the file exists. */
  createText(file: string, text: string): Promise<boolean>;
  /** Changes a person's own file in its own encoding, rights and links kept; gives one sentence when it was left as it is. */
  editText(file: string, change: TextChange): Promise<{ readonly refused?: string }>;
  /** The same where the bytes are known: false, and nothing changed, when others stand there by now. */
  editBytes(file: string, before: Uint8Array, after: Uint8Array): Promise<boolean>;
  /** Takes a file of these bytes away: false, and nothing changed, when others stand there by now. */
  removeBytes(file: string, bytes: Uint8Array): Promise<boolean>;
  /** As writeText. */
  writeBytes(file: string, bytes: Uint8Array): Promise<void>;
  /** A page of HTML as the bytes of a PDF, where a program for it is installed. Works in `folder` and clears up. */
  printPage(html: string, folder: string): Promise<Printing>;
  /** Addresses of this machine in its networks, without its loopback. */
  ownAddresses(): readonly string[];
  /** Calls with the path below the folder, once for each file that appears, changes or goes, until the answer is called. */
  watchFolder(dir: string, changed: (file: string) => void): Promise<() => Promise<void>>;
  /** Waits until the person ends the command. */
  untilStopped(): Promise<void>;
  /** Stands for the tool itself: what another version of it kept is left aside. */
  readerVersion(): string;
  /** Makes a folder that nobody else who uses this machine can look into. */
  keepToOwner(dir: string): Promise<void>;
  /** Where derived things of one records folder may be kept, absolute. */
  cacheFor(recordsDir: string): string;
}

export function realEffects(): Effects {
  const { stdout, stderr } = process;
  for (const stream of [stdout, stderr]) if (stream.listenerCount("error") === 0) stream.on("error", endQuietly);
  return {
    cwd: process.cwd(),
    terminal: stderr.isTTY === true,
    out: (line) => void stdout.write(`${stdout.isTTY ? withoutControls(line) : line}\n`),
    err: (line) => void stderr.write(`${stderr.isTTY ? withoutControls(line) : line}\n`),
    redraw: (line) => void stderr.write(`\r\u001b[2K${withoutControls(line)}`),
    draw: (line) => void stderr.write(`${line}\n`),
    canAsk: process.stdin.isTTY === true && stdout.isTTY === true,
    askKey: (question, keys) =>
      askKey(
        withoutControls(question),
        keys.map(({ key, means }) => ({ key, means: withoutControls(means) })),
      ),
    askLine: (question) => askLine(withoutControls(question)),
    today: (timeZone) => Temporal.Now.plainDateISO(timeZone).toString(),
    timeZone: () => Intl.DateTimeFormat().resolvedOptions().timeZone,
    namesIn,
    makeRunnable: (file) => chmod(file, 0o755),
    opener: () => ({
      platform: process.platform,
      node: process.execPath,
      program: path.resolve(process.argv[1] ?? "plotreel"),
    }),
    openInBrowser,
    openRecords: openRecordsFolder,
    kindOf,
    readText,
    writeText: writeWhole,
    createText,
    editText,
    editBytes,
    removeBytes,
    writeBytes: writeWhole,
    printPage,
    ownAddresses: () =>
      Object.values(networkInterfaces()).flatMap((cards) =>
        (cards ?? []).filter(({ internal }) => !internal).map(({ address }) => address),
      ),
    watchFolder,
    untilStopped: () => new Promise((resolve) => process.once("SIGINT", resolve).once("SIGTERM", resolve)),
    readerVersion: toolVersion,
    keepToOwner,
    cacheFor: (recordsDir) => {
      const name = createHash("sha256").update(path.resolve(recordsDir)).digest("hex").slice(0, 16);
      return path.join(process.env.PLOTREEL_CACHE ?? envPaths("plotreel", { suffix: "" }).cache, name);
    },
  };
}

/** Whoever reads along, such as `head`, may have read enough. */
function endQuietly(error: NodeJS.ErrnoException): void {
  if (error.code !== "EPIPE") throw error;
  process.exit();
}

/**
 * Records and file names are shown as they are, and some characters would be taken for orders by the terminal (C0 and C1
 * controls, ECMA-48) or turn the reading direction of the line. Tabs and line ends stay.
 */
export function withoutControls(text: string): string {
  return text.replace(/[^\P{Cc}\t\n]|[\u202a-\u202e\u2066-\u2069]/gu, "\ufffd");
}

/** A disk that knows no rights, or one on which nothing can be made, is told where something is to be written. */
async function keepToOwner(dir: string): Promise<void> {
  try {
    await mkdir(dir, { recursive: true });
    await chmod(dir, 0o700);
  } catch {}
}

async function namesIn(dir: string): Promise<readonly string[] | undefined> {
  try {
    return await readdir(dir);
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    if (code === "ENOENT" || code === "ENOTDIR") return undefined;
    throw error;
  }
}

async function watchFolder(dir: string, changed: (file: string) => void): Promise<() => Promise<void>> {
  const watcher = watchFiles(dir, { ignoreInitial: true });
  watcher.on("all", (event, file) => {
    // What is half written lies beside under a name of ours.
    if (event !== "addDir" && event !== "unlinkDir" && !path.basename(file).startsWith(".plotreel-"))
      changed(path.relative(dir, file));
  });
  await new Promise((resolve) => watcher.once("ready", () => resolve(undefined)));
  return () => watcher.close();
}

async function kindOf(file: string): Promise<"file" | "folder" | undefined> {
  const found = await stat(file).catch((error: NodeJS.ErrnoException) => {
    if (error.code === "ENOENT" || error.code === "ENOTDIR") return undefined;
    throw error;
  });
  return found === undefined ? undefined : found.isDirectory() ? "folder" : "file";
}

async function readText(file: string): Promise<string | undefined> {
  try {
    return readFileAt(file).toString("utf8");
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === "ENOENT") return undefined;
    throw error;
  }
}
