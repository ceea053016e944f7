/** Commands killed at any instant, and at any single change of the disk: records, sites and what comes after. */
import { readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import type { Chance } from "../truth/chance.ts";
import { neitherNor, type Snapshot, same, snapshotOf } from "./snapshot.ts";
import { done, type TrustRow } from "./table.ts";
import { litterIn, ownFiles, saidBadly, type TrialCommand, Trials, trialCommands } from "./trial-commands.ts";

interface Reference {
  readonly own: Snapshot;
  readonly sites: ReadonlyMap<string, Snapshot>;
  readonly ms: number;
  readonly changes: number;
  /** Milliseconds until the first change. */
  readonly first: number;
  /** What was put in its place on the way, by name and state: a word list grows by one word after the other. */
  readonly steps: readonly (readonly [string, string])[];
}

/** Pages may share their place on the disk with the cache, or not: how many names they have is no matter. */
export const sitesOf = (cwd: string, ending = "") =>
  new Map(
    ["public", "private"].map((site) => {
      const pages = [...snapshotOf(path.join(cwd, "out", `${site}${ending}`))];
      return [site, new Map(pages.map(([name, state]) => [name, state.replace(/ \d+ names/u, "")]))] as const;
    }),
  );

/** What a run that nothing disturbs leaves. */
export async function reference(trials: Trials, { name, argv }: TrialCommand): Promise<Reference> {
  const cwd = trials.fresh();
  const log = path.join(trials.work, "log");
  const { exitCode, said, ms } = await trials.run(cwd, argv, { env: { TRUST_LOG: log } });
  if (exitCode !== 0) throw new Error(`${name} does not work even undisturbed: ${said}`);
  const counted = JSON.parse(readFileSync(log, "utf8")) as Pick<Reference, "changes" | "first" | "steps">;
  const found = { own: ownFiles(cwd), sites: sitesOf(cwd), ms, ...counted };
  trials.drop(cwd);
  return found;
}

export async function killRows(kills: number, random: Chance): Promise<readonly TrustRow[]> {
  const trials = new Trials();
  try {
    await trials.begin();
    const each = Math.ceil(kills / (trialCommands.length + 1));
    const rows: TrustRow[] = [];
    for (const command of trialCommands) rows.push(done(await killed(trials, command, each, random)));
    rows.push(done(await killedWatch(trials, each, random)));
    return rows;
  } finally {
    trials.end();
  }
}

const HOWS = ["before", "half", "after"] as const;

async function killed(trials: Trials, command: TrialCommand, kills: number, random: Chance): Promise<TrustRow> {
  const after = await reference(trials, command);
  const before = { own: ownFiles(trials.base), sites: sitesOf(trials.base) };
  const failed: string[] = [];
  let cases = 0;
  for (let tries = 0; cases < kills && tries < 3 * kills; tries += 1) {
    const cwd = trials.fresh();
    // In turn: at one change of the disk, and at an instant from shortly before the first change to the end.
    const at = `${random.whole(1, after.changes)}:${HOWS[random.whole(0, 2)]}`;
    const killAfter = 0.8 * after.first + random.next() * (after.ms - 0.8 * after.first);
    const isExact = tries % 2 === 0;
    const run = await trials.run(cwd, command.argv, isExact ? { env: { TRUST_AT: at } } : { killAfter });
    if (run.exitCode === null) {
      cases += 1;
      const when = isExact ? `killed at change ${at}` : `killed after ${killAfter.toFixed(0)} ms`;
      const wrong = await wrongAfter(trials, cwd, command, before, after);
      failed.push(...wrong.map((what) => `${when}, ${what}`));
    }
    trials.drop(cwd);
  }
  return { what: `killed: ${command.name}`, cases, failed, seen: `${after.changes} changes in a run` };
}

export type Before = Pick<Reference, "own" | "sites">;

/** What is not as it should be right after the fault, and after the next run. */
export async function wrongAfter(
  trials: Trials,
  cwd: string,
  { argv, again, thenGiven }: TrialCommand,
  before: Before,
  after: Reference,
): Promise<readonly string[]> {
  const wrong = broken(cwd, before, after);
  const next = await trials.run(cwd, argv);
  if (next.exitCode === null || !again.includes(next.exitCode))
    wrong.push(`the next run ended with ${next.exitCode}: ${next.said.trim().split("\n").at(-1)}`);
  const bad = saidBadly(next);
  if (bad !== undefined) wrong.push(`the next run said "${bad}"`);
  // A word that was kept may answer what the note was not yet told.
  const rest = argv[0] === "settle" && !next.said.includes("still open") ? before.own : after.own;
  if (next.exitCode === 3 && thenGiven !== undefined) await trials.run(cwd, thenGiven);
  // Killed between what was written and its taking back, the line stands there, whole.
  const isWritten = (what: string) => argv[0] === "@undo" && isStep(what, after);
  // A page that asks again writes nothing: the part beside a new file, its second name, waits for the next save there.
  const isPage = argv[0]?.startsWith("@") === true;
  const isLeft = (what: string) =>
    isPage && (isStep(what, after) || /\/\.plotreel-[^/]*\.part: file .* 2 names/u.test(what));
  wrong.push(
    ...neitherNor(ownFiles(cwd), after.own, rest)
      .filter((what) => !isWritten(what) && !isLeft(what))
      .map((what) => `after the next run ${what}`),
  );
  for (const [site, pages] of sitesOf(cwd))
    wrong.push(
      ...neitherNor(pages, ...twice(after.sites.get(site))).map((what) => `after the next run out/${site}/${what}`),
    );
  wrong.push(...litterIn(cwd).map((what) => `after the next run ${what} is left`));
  return wrong;
}

function twice(state: Snapshot = new Map()): [Snapshot, Snapshot] {
  return [state, state];
}

function isStep(what: string, { steps }: Reference): boolean {
  // A new file has its name and that of its part for a moment.
  const plain = (text: string) => text.replace(/ \d+ names/u, "");
  return steps.some(([name, state]) => plain(what) === plain(`${name}: ${state}`));
}

/** Hidden files are cleared by the next run; everything a person sees is as it was, or as it is to be. */
function broken(cwd: string, before: Before, after: Reference): string[] {
  const own = new Map(
    [...ownFiles(cwd)]
      .filter(([name]) => !/(?:^|\/)\./u.test(name))
      .map(([name, state]) => [name, state.replace(/^(folder .*)$/u, "folder")]),
  );
  const plain = (states: Snapshot) =>
    new Map([...states].map(([name, state]) => [name, state.startsWith("folder") ? "folder" : state]));
  // A list that grows line by line is whole after each of them.
  const isGrowing = (what: string) =>
    /^[^:]*brought-in\.txt: file/u.test(what) &&
    readFileSync(path.join(cwd, what.slice(0, what.indexOf(":"))), "utf8").endsWith("\n");
  const wrong = neitherNor(own, plain(before.own), plain(after.own))
    .filter((what) => !isStep(what, after) && !isGrowing(what))
    .map((what) => `right after it ${what}`);
  for (const [site, pages] of sitesOf(cwd)) {
    const isWhole = [before, after].some(({ sites }) => same(pages, sites.get(site) ?? new Map()));
    // Between the two renames: the whole old site lies beside, and the next publish puts it back.
    const last = sitesOf(cwd, ".last").get(site) ?? new Map();
    const isBetween = pages.size === 0 && same(last, before.sites.get(site) ?? new Map());
    if (!isWhole && !isBetween) wrong.push(`out/${site} is neither the old site nor the new one`);
  }
  return wrong;
}

/** A watched garden, killed at any instant after a note was saved. */
async function killedWatch(trials: Trials, kills: number, random: Chance): Promise<TrustRow> {
  const failed: string[] = [];
  let took = 1500;
  let cases = 0;
  for (let number = 0; number < kills; number += 1) {
    const cwd = trials.fresh();
    let saved: number | undefined;
    const wait = number === 0 ? undefined : random.next() * took;
    const run = await trials.run(cwd, ["watch", "--records", "content", "--today", "2026-07-18"], {
      onSaid: (said, kill) => {
        if (saved === undefined && said.includes("Ctrl-C ends it")) {
          saved = performance.now();
          setTimeout(() => writeFileSync(path.join(cwd, "content/notes/2026-07-01.md"), "- watered Long Bed\n"), 150);
          if (wait !== undefined) setTimeout(kill, 150 + wait);
        }
        if (wait === undefined && saved !== undefined && said.includes("Shown again")) {
          took = performance.now() - saved;
          kill();
        }
      },
    });
    if (run.exitCode === null) cases += 1;
    else failed.push(`watch ended by itself with ${run.exitCode}: ${run.said.slice(-200)}`);
    writeFileSync(path.join(cwd, "content/notes/2026-07-01.md"), "- watered Long Bed\n");
    const before = ownFiles(trials.base);
    const own = ownFiles(cwd);
    for (const name of ["content/notes/2026-07-01.md", "content/notes"]) (own as Map<string, string>).delete(name);
    (before as Map<string, string>).delete("content/notes");
    failed.push(...neitherNor(own, before, before).map((what) => `watch killed: ${what}`));
    const next = await trials.run(cwd, ["publish", "--hold-back", "--records", "content", "--today", "2026-07-18"]);
    if (next.exitCode !== 0) failed.push(`publish after a killed watch ended with ${next.exitCode}`);
    failed.push(...litterIn(cwd).map((what) => `watch killed: ${what} is left`));
    trials.drop(cwd);
  }
  return { what: "killed: watch, after a note was saved", cases, failed, seen: `shown after ${took.toFixed(0)} ms` };
}
