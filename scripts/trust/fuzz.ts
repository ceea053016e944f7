/** Cases by chance, each target its share, with what failed made as small as it can be. */
import fc from "fast-check";
import type { Target } from "./fuzz/ground.ts";
import { targets } from "./fuzz/targets.ts";
import { done, type TrustRow } from "./table.ts";

/** MiB of memory in use; a case that takes more would take a machine with it. */
const MEMORY = 1024;

export async function fuzzRows(cases: number, seed: number): Promise<readonly TrustRow[]> {
  const rows: TrustRow[] = [];
  for (const target of targets) rows.push(done(await fuzzed(target, Math.ceil((cases * target.share) / 1000), seed)));
  return rows;
}

async function fuzzed<Case>({ name, cases, hold }: Target<Case>, runs: number, seed: number): Promise<TrustRow> {
  let tried = 0;
  let worst = 0;
  const failed: string[] = [];
  const property = fc.asyncProperty(cases, async (given) => {
    tried += 1;
    const began = process.cpuUsage();
    await hold(given);
    const { user, system } = process.cpuUsage(began);
    worst = Math.max(worst, (user + system) / 1000);
  });
  const found = await fc.check(property, {
    seed,
    numRuns: runs,
    interruptAfterTimeLimit: 3_600_000,
    maxSkipsPerRun: 0,
  });
  if (found.failed) {
    const why = found.errorInstance instanceof Error ? (found.errorInstance.stack ?? "") : String(found.errorInstance);
    failed.push(`${JSON.stringify(found.counterexample?.[0])}\n  ${why.split("\n").slice(0, 4).join("\n  ")}`);
  }
  const memory = process.memoryUsage().rss / 2 ** 20;
  if (memory > MEMORY) failed.push(`uses ${memory.toFixed(0)} MiB`);
  return {
    what: `fuzzed: ${name}`,
    cases: tried,
    failed,
    seen: `longest ${worst.toFixed(0)} ms, ${memory.toFixed(0)} MiB`,
  };
}
