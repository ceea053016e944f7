/** A disk that is full or forbids, two commands at once, a clock set back, and files that change while they are read. */

import { execFileSync } from "node:child_process";
import {
  chmodSync,
  existsSync,
  mkdirSync,
  readdirSync,
  renameSync,
  rmSync,
  statSync,
  symlinkSync,
  utimesSync,
  writeFileSync,
} from "node:fs";
import path from "node:path";
import type { Chance } from "../truth/chance.ts";
import { type Before, reference, sitesOf, wrongAfter } from "./kills.ts";
import { neitherNor, same } from "./snapshot.ts";
import { done, type TrustRow } from "./table.ts";
import { litterIn, ownFiles, type Ran, saidBadly, type TrialCommand, Trials, trialCommands } from "./trial-commands.ts";

const CODES = ["ENOSPC", "EIO", "EACCES", "EROFS"] as const;

export async function faultRows(times: number, random: Chance): Promise<readonly TrustRow[]> {
  const trials = new Trials();
  try {
    await trials.begin();
    const before = { own: ownFiles(trials.base), sites: sitesOf(trials.base) };
    return [
      done(await failingDisk(trials, before, times, random)),
      done(await smallLimit(trials, before, times, random)),
      ...(process.getuid?.() === 0 ? [done(await withoutRights(trials, before))] : []),
      done(await atOnce(trials, times, random)),
      done(await changedWhileRead(trials, times, random)),
      done(await clockSetBack(trials)),
    ];
  } finally {
    trials.end();
  }
}

/** From one change on every write fails. */
async function failingDisk(trials: Trials, before: Before, times: number, random: Chance): Promise<TrustRow> {
  const failed: string[] = [];
  let cases = 0;
  for (const command of trialCommands) {
    const after = await reference(trials, command);
    for (let number = 0; number < times; number += 1) {
      const cwd = trials.fresh();
      const at = `${random.whole(1, after.changes)}:${CODES[number % CODES.length]}`;
      const run = await trials.run(cwd, command.argv, { env: { TRUST_AT: at } });
      cases += 1;
      const wrong = [...saidWell(run, [0, 1, 3]), ...(await wrongAfter(trials, cwd, command, before, after))];
      failed.push(...wrong.map((what) => `${command.name}, the disk fails at change ${at}: ${what}`));
      trials.drop(cwd);
    }
  }
  return { what: "a disk that fails from one change on", cases, failed };
}

/** No file may grow past some blocks: the system takes a part of what is written, as a full disk does. */
async function smallLimit(trials: Trials, before: Before, times: number, random: Chance): Promise<TrustRow> {
  const failed: string[] = [];
  let cases = 0;
  for (const command of trialCommands) {
    const after = await reference(trials, command);
    for (let number = 0; number < Math.ceil(times / 2); number += 1) {
      const cwd = trials.fresh();
      const blocks = random.whole(0, 16);
      const run = await trials.run(cwd, command.argv, {
        shell: `ulimit -f ${blocks}`,
        env: { NODE_DISABLE_COMPILE_CACHE: "1" },
      });
      cases += 1;
      const wrong = [...saidWell(run, [0, 1, 3]), ...(await wrongAfter(trials, cwd, command, before, after))];
      failed.push(...wrong.map((what) => `${command.name}, no file longer than ${blocks} blocks: ${what}`));
      trials.drop(cwd);
    }
  }
  return { what: "no file may grow past a few blocks", cases, failed };
}

/** Nobody's rights, as seen by somebody who may only look. */
async function withoutRights(trials: Trials, before: Before): Promise<TrustRow> {
  const failed: string[] = [];
  chmodSync(trials.work, 0o755);
  for (const command of trialCommands) {
    const cwd = trials.fresh();
    const run = await trials.run(cwd, command.argv, {
      uid: 65534,
      env: { HOME: "/nonexistent", NODE_DISABLE_COMPILE_CACHE: "1" },
    });
    // A record that only its owner may read is none for anybody else: the episode that is asked for is not there.
    const wrong = [...saidWell(run, [0, 1, 2, 3]), ...neitherNor(ownFiles(cwd), before.own, before.own)];
    for (const [site, pages] of sitesOf(cwd))
      if (!same(pages, before.sites.get(site) ?? new Map())) wrong.push(`out/${site} is another`);
    failed.push(...wrong.map((what) => `${command.name} without rights: ${what}`));
    trials.drop(cwd);
  }
  return { what: "a folder that may only be read", cases: trialCommands.length, failed };
}

function saidWell(run: Ran, codes: readonly number[]): string[] {
  const bad = saidBadly(run);
  return [
    ...(run.exitCode === null || !codes.includes(run.exitCode)
      ? [`ended with ${run.exitCode}: ${run.said.slice(-300)}`]
      : []),
    ...(bad === undefined ? [] : [`said "${bad}"`]),
  ];
}

/** The same command twice at the same time: what is left is what one of them leaves. */
async function atOnce(trials: Trials, times: number, random: Chance): Promise<TrustRow> {
  const failed: string[] = [];
  let cases = 0;
  for (const command of trialCommands) {
    const after = await reference(trials, command);
    for (let number = 0; number < Math.ceil(times / 2); number += 1) {
      const cwd = trials.fresh();
      const wait = random.next() * 200;
      const runs = await Promise.all([
        trials.run(cwd, command.argv),
        new Promise((resolve) => setTimeout(resolve, wait)).then(() => trials.run(cwd, command.argv)),
      ]);
      cases += 1;
      const wrong = runs.flatMap((run) => saidWell(run, [0, 3, ...command.again, ...(command.alsoAtOnce ?? [])]));
      if (command.name === "new" && runs.filter(({ exitCode }) => exitCode === 0).length !== 1)
        wrong.push("not just one of two says it wrote");
      wrong.push(...(await wrongAfter(trials, cwd, command, after, after)));
      failed.push(...wrong.map((what) => `${command.name} twice, ${wait.toFixed(0)} ms apart: ${what}`));
      trials.drop(cwd);
    }
  }
  return { what: "two commands on one folder", cases, failed };
}

/** What an editor, a cloud folder or a bad joke does to files while a command reads them. */
async function changedWhileRead(trials: Trials, times: number, random: Chance): Promise<TrustRow> {
  const failed: string[] = [];
  const readers: readonly TrialCommand[] = [
    { name: "check", argv: ["check", "--records", "content", "--today", "2026-07-18"], again: [0, 1] },
    ...trialCommands.filter(({ name }) => name === "publish" || name === "wrap --accept" || name === "ingest"),
  ];
  let cases = 0;
  for (const command of readers) {
    for (let number = 0; number < Math.ceil(times / 2); number += 1) {
      const cwd = trials.fresh();
      const did: string[] = [];
      const files = [...ownFiles(cwd).keys()].filter((name) => /\.(?:md|vtt|jpg)$/u.test(name));
      const changing = setInterval(() => {
        // What cannot be done, such as a change behind a link that leads nowhere now, is left.
        try {
          did.push(disturb(cwd, files, random));
        } catch {}
      }, 15);
      const run = await trials.run(cwd, command.argv, { limit: 60_000 });
      clearInterval(changing);
      cases += 1;
      const wrong = saidWell(run, [0, 1, 2, 3]);
      failed.push(...wrong.map((what) => `${command.name} while files change (${did.slice(-3).join("; ")}): ${what}`));
      const left = litterIn(cwd).filter((name) => !name.startsWith("cache/"));
      failed.push(...left.map((name) => `${command.name} while files change: ${name} is left`));
      trials.drop(cwd);
    }
  }
  return { what: "files changed, removed, made pipes and loops while read", cases, failed };
}

/** One file of the records or the card becomes something else, and comes back the next time. */
function disturb(cwd: string, files: readonly string[], random: Chance): string {
  const name = files[random.whole(0, files.length - 1)] ?? "content/garden.md";
  const file = path.join(cwd, name);
  const how = random.whole(0, 5);
  if (existsSync(`${file}.kept`)) {
    rmSync(file, { recursive: true, force: true });
    renameSync(`${file}.kept`, file);
    return `${name} back`;
  }
  if (!existsSync(file)) return `${name} is not there`;
  if (how === 0) {
    // Behind a link there may be a pipe by now, and to open it for writing would wait for ever.
    if (!statSync(file).isFile()) return `${name} is no file now`;
    writeFileSync(file, "---\nprivate: tr");
    return `${name} written`;
  }
  renameSync(file, `${file}.kept`);
  if (how === 1) return `${name} gone`;
  if (how === 2) execFileSync("mkfifo", [file]);
  else if (how === 3) symlinkSync(path.basename(file), file);
  else if (how === 4) mkdirSync(file);
  else symlinkSync(".", file);
  return `${name} is ${["", "", "a pipe", "a loop", "a folder", "a link to its folder"][how]}`;
}

/** Everything on the disk is of a time still to come, by days: what was changed is seen all the same. */
async function clockSetBack(trials: Trials): Promise<TrustRow> {
  const failed: string[] = [];
  const publish = trialCommands.find(({ name }) => name === "publish");
  if (publish === undefined) throw new Error("there is no publish");
  const note = "content/notes/2026-06-20.md";
  const days = [1, 40, 4000];
  for (const back of days) {
    const cwd = trials.fresh();
    const before = { TRUST_CLOCK: String(back * 86_400_000) };
    await trials.run(cwd, publish.argv, { env: before });
    const then = Date.now() / 1000 + back * 86_400;
    for (const name of readdirSync(cwd, { recursive: true, encoding: "utf8" }))
      utimesSyncSafely(path.join(cwd, name), then);
    // Of the same length, and of a time before that of what was read last.
    writeFileSync(path.join(cwd, note), "- planted 5 Harbinger tomato in Squash Bed\n");
    const run = await trials.run(cwd, publish.argv);
    failed.push(...saidWell(run, [0]).map((what) => `clock set back by ${back} days: ${what}`));
    const anew = trials.fresh();
    rmSync(path.join(anew, "cache"), { recursive: true });
    writeFileSync(path.join(anew, note), "- planted 5 Harbinger tomato in Squash Bed\n");
    await trials.run(anew, publish.argv);
    for (const [site, pages] of sitesOf(cwd))
      if (!same(pages, sitesOf(anew).get(site) ?? new Map()))
        failed.push(`clock set back by ${back} days: out/${site} is not what a run from nothing makes`);
    failed.push(...litterIn(cwd).map((name) => `clock set back by ${back} days: ${name} is left`));
    trials.drop(cwd);
    trials.drop(anew);
  }
  return { what: "the clock set back", cases: days.length, failed };
}

function utimesSyncSafely(file: string, seconds: number): void {
  if (existsSync(file)) utimesSync(file, seconds, seconds);
}
