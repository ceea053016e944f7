/**
 * One publishing at a time: a small file beside the sites says who is at work. A lock left behind by a run that was killed
 * is recognised and taken over.
 */

import { readFileSync } from "node:fs";
import { link, mkdir, open, readdir, readFile, rename, rm, stat, utimes, writeFile } from "node:fs/promises";
import { hostname } from "node:os";
import path from "node:path";
import { isRunning } from "../store/index.ts";

/** Another run is putting sites into the same folder. */
export class PublishRunning extends Error {
  constructor(outDir: string) {
    super(
      `Another run is publishing into ${outDir}, so this one stopped. Nothing was changed; run it again when the other is done. If no other is at work on any machine, delete ${path.join(outDir, LOCK)}.`,
    );
    this.name = "PublishRunning";
  }
}

const LOCK = ".publishing";

/** Ends the name of the right to replace a stale lock. */
const NEXT = ".next";

/** Such a right, or a lock not yet in its place. */
const leftover = /^\.publishing(?:(?:\.next)+|(?:\.next)*\.\d+-\d+)$/u;

/** Milliseconds between two signs of life. */
const SIGN_EVERY = 5_000;

/** Milliseconds without a sign of life after which a lock of another machine, or one nobody can read, is stale. */
const STALE_AFTER = 60_000;

interface Holder {
  readonly pid: number;
  readonly host: string;
  /** When the process began, where the system tells: another process may have the number of one that is gone. */
  readonly began?: string | undefined;
  /** Tells two runs of one process apart. */
  readonly token: string;
}

/** Throws `PublishRunning` when somebody publishes into `outDir` now. */
export async function refuseWhilePublishing(outDir: string): Promise<void> {
  const lock = path.join(outDir, LOCK);
  const holder = await holderOf(lock);
  if ((await stat(lock).catch(() => undefined)) !== undefined && !(await isStale(lock, holder)))
    throw new PublishRunning(outDir);
}

/**
 * Runs `work` while nobody else publishes into `outDir`; throws `PublishRunning` when somebody does. The work may ask,
 * before its last step, that the lock is still its own: a machine that was asleep may have been taken for dead.
 */
export async function whilePublishing<T>(
  outDir: string,
  work: (assertLockHeld: () => Promise<void>) => Promise<T>,
): Promise<T> {
  await mkdir(outDir, { recursive: true });
  const lock = path.join(outDir, LOCK);
  const token = `${process.pid}-${process.hrtime.bigint()}`;
  const isMine = async () => (await holderOf(lock))?.token === token;
  if (!(await take(lock, token))) {
    throw new PublishRunning(outDir);
  }
  const signs = setInterval(() => {
    const now = new Date();
    utimes(lock, now, now).catch(() => undefined);
  }, SIGN_EVERY);
  signs.unref();
  try {
    return await work(async () => {
      if (!(await isMine())) throw new PublishRunning(outDir);
    });
  } finally {
    clearInterval(signs);
    if (await isMine()) {
      await clearLeftovers(outDir);
      await rm(lock, { force: true });
    }
  }
}

/**
 * Takes the lock where there is none, or in place of a stale one. Whoever replaces a stale lock holds the right to do so
 * meanwhile, which is a lock beside it and may be left behind in turn: of many that find the same stale lock, one would else
 * replace what another has just put there.
 */
async function take(lock: string, token: string): Promise<boolean> {
  if (await put(lock, token, link)) return true;
  if (!(await isStale(lock, await holderOf(lock)))) return false;
  const right = `${lock}${NEXT}`;
  if (!(await take(right, token))) return false;
  try {
    // Looked at again: another may have held the right before and be at work by now, or be done.
    if (await put(lock, token, link)) return true;
    return (await isStale(lock, await holderOf(lock))) && (await put(lock, token, rename));
  } finally {
    if ((await holderOf(right))?.token === token) await rm(right, { force: true });
  }
}

/** The lock appears with its content or not at all, where the disk has links; elsewhere it may be empty for a moment. */
async function put(lock: string, token: string, into: typeof link): Promise<boolean> {
  const { pid } = process;
  const mine = JSON.stringify({ pid, host: hostname(), began: beginningOf(pid), token } satisfies Holder);
  const beside = `${lock}.${token}`;
  try {
    await writeFile(beside, mine);
    try {
      await into(beside, lock);
    } catch (error) {
      if (isThere(error)) return false;
      const handle = await open(lock, "wx");
      await handle.writeFile(mine);
      await handle.close();
    }
    return true;
  } catch (error) {
    if (isThere(error)) return false;
    throw error;
  } finally {
    await rm(beside, { force: true });
  }
}

/** What runs of this machine left that were killed while they took the lock. */
async function clearLeftovers(outDir: string): Promise<void> {
  for (const name of await readdir(outDir)) {
    if (!leftover.test(name)) continue;
    const left = path.join(outDir, name);
    const holder = await holderOf(left);
    const pid = holder?.pid ?? Number(/\.(\d+)-\d+$/u.exec(name)?.[1]);
    const isOurs = holder === undefined || holder.host === hostname();
    if (isOurs && !isRunning(pid)) await rm(left, { force: true });
  }
}

async function isStale(lock: string, holder: Holder | undefined): Promise<boolean> {
  if (holder?.host === hostname()) {
    if (!isRunning(holder.pid)) return true;
    // A run of this machine that is only asleep gives no sign of life and goes on later.
    const began = beginningOf(holder.pid);
    if (began !== undefined && holder.began !== undefined) return began !== holder.began;
  }
  const seen = await stat(lock).catch(() => undefined);
  if (seen === undefined || Date.now() - seen.mtimeMs > STALE_AFTER) return true;
  return seen.mtimeMs - Date.now() > STALE_AFTER && !(await givesSign(lock, seen.mtimeMs));
}

/** A time still to come says nothing, since a clock was set: whoever is at work writes another within moments. */
async function givesSign(lock: string, before: number): Promise<boolean> {
  await new Promise((resolve) => setTimeout(resolve, SIGN_EVERY * 1.5));
  const now = await stat(lock).catch(() => undefined);
  return now !== undefined && now.mtimeMs !== before;
}

/** The start of this machine and of a process since then; undefined where the system does not say (Linux does, in /proc). */
function beginningOf(pid: number): string | undefined {
  try {
    const start = readFileSync("/proc/sys/kernel/random/boot_id", "utf8").trim();
    // proc(5): the name of the program stands in brackets and may hold anything; the start is the 20th field after it.
    const ticks = readFileSync(`/proc/${pid}/stat`, "utf8").split(") ").at(-1)?.split(" ")[19];
    return ticks === undefined ? undefined : `${start} ${ticks}`;
  } catch {
    return undefined;
  }
}

async function holderOf(lock: string): Promise<Holder | undefined> {
  try {
    return JSON.parse(await readFile(lock, "utf8")) as Holder;
  } catch {
    return undefined;
  }
}

function isThere(error: unknown): boolean {
  return (error as NodeJS.ErrnoException).code === "EEXIST";
}
