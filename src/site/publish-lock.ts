/**
 * One publishing at a time: a small file beside the sites says who is at work. A lock left behind by a run that was killed
 * is recognised and taken over.
 */
import { link, mkdir, open, readFile, rename, rm, stat, utimes, writeFile } from "node:fs/promises";
import { hostname } from "node:os";
import path from "node:path";

/** Another run is putting sites into the same folder. */
export class PublishRunning extends Error {
  constructor(outDir: string) {
    super(
      `Another run is publishing into ${outDir}, so this one stopped. Nothing was changed; run it again when the other is done.`,
    );
    this.name = "PublishRunning";
  }
}

const LOCK = ".publishing";

/** Milliseconds between two signs of life. */
const SIGN_EVERY = 5_000;

/** Milliseconds without a sign of life after which a lock of another machine, or one nobody can read, is stale. */
const STALE_AFTER = 60_000;

interface Holder {
  readonly pid: number;
  readonly host: string;
  /** Tells two runs apart that had the same process number. */
  readonly token: string;
}

/** Runs `work` while nobody else publishes into `outDir`; throws `PublishRunning` when somebody does. */
export async function whilePublishing<T>(outDir: string, work: () => Promise<T>): Promise<T> {
  await mkdir(outDir, { recursive: true });
  const lock = path.join(outDir, LOCK);
  const token = `${process.pid}-${process.hrtime.bigint()}`;
  if (!(await take(lock, token)) && !((await dropStale(lock)) && (await take(lock, token)))) {
    throw new PublishRunning(outDir);
  }
  const signs = setInterval(() => {
    const now = new Date();
    utimes(lock, now, now).catch(() => undefined);
  }, SIGN_EVERY);
  signs.unref();
  try {
    return await work();
  } finally {
    clearInterval(signs);
    if ((await holderOf(lock))?.token === token) await rm(lock, { force: true });
  }
}

/** The lock appears with its content or not at all, where the disk has links; elsewhere it may be empty for a moment. */
async function take(lock: string, token: string): Promise<boolean> {
  const mine = JSON.stringify({ pid: process.pid, host: hostname(), token } satisfies Holder);
  const beside = `${lock}.${token}`;
  try {
    await writeFile(beside, mine);
    try {
      await link(beside, lock);
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

/** True when the lock was stale and is gone. */
async function dropStale(lock: string): Promise<boolean> {
  const holder = await holderOf(lock);
  if (!(await isStale(lock, holder))) return false;
  // Moved aside first: of two runs that find the same stale lock only one gets it, and a lock that was new after all
  // is put back.
  const aside = `${lock}.stale-${process.pid}`;
  const moved = await rename(lock, aside).then(
    () => true,
    () => false,
  );
  if (!moved) return true;
  const isTheOne = (await holderOf(aside))?.token === holder?.token;
  if (!isTheOne) await link(aside, lock).catch(() => undefined);
  await rm(aside, { force: true });
  return isTheOne;
}

async function isStale(lock: string, holder: Holder | undefined): Promise<boolean> {
  if (holder?.host === hostname() && !isRunning(holder.pid)) return true;
  const seen = await stat(lock).catch(() => undefined);
  return seen === undefined || Date.now() - seen.mtimeMs > STALE_AFTER;
}

/** Whether a process of this machine has this number. */
export function isRunning(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === "EPERM";
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
