/**
 * `node scripts/bench-wrap.ts`: how well films are heard, on the half that rules were set on and on the half held back, and
 * how long a film of four hours takes.
 */
import { execFileSync } from "node:child_process";
import path from "node:path";
import type { CaptionFile } from "../src/wrap/index.ts";
import { openCaptions } from "../src/wrap/index.ts";
import { automaticWords } from "./mis-hearing/automatic-words.ts";
import {
  nothing,
  precision,
  recall,
  type Score,
  scoreNames,
  scorePromises,
  stopErrors,
  sum,
} from "./mis-hearing/hearing-scores.ts";
import { demoGarden, heldBack, labelledFilm, tuned } from "./mis-hearing/labelled-films.ts";
import { earOf, KNOWN_WORDS } from "./mis-hearing/mis-hear.ts";
import { rollingCaptions } from "./mis-hearing/rolling-captions.ts";

/** Other mis-hearings of the same films, beside the ones kept in demo-content. */
const SEEDS = ["second hearing", "third hearing", "fourth hearing", "fifth hearing"];

const garden = await demoGarden();
const ear = earOf(KNOWN_WORDS);
const halves = [
  ["set on", tuned],
  ["held back", heldBack],
] as const;
const films = new Map([...tuned, ...heldBack].map((id) => [id, labelledFilm(garden, id)]));
const each = (ids: readonly string[], score: (id: string) => Score) => ids.map(score).reduce(sum, nothing);
const film = (id: string) => films.get(id) as ReturnType<typeof labelledFilm>;

for (const [half, ids] of halves) {
  row(
    `names, automatic captions kept (${half})`,
    scores(each(ids, (id) => scoreNames(garden, film(id), film(id).automatic, film(id).names))),
    "precision ≥ 0.98, recall ≥ 0.90",
  );
  row(
    `names, four other hearings (${half})`,
    scores(each(ids, (id) => SEEDS.map((seed) => otherHearing(id, seed)).reduce(sum, nothing))),
  );
  row(
    `names, clean captions: corrections made (${half})`,
    String(each(ids, (id) => scoreNames(garden, film(id), film(id).clean, [])).wrong),
    "0",
  );
}
for (const [half, ids] of halves) {
  row(
    `promises, clean captions (${half})`,
    scores(each(ids, (id) => scorePromises(garden, film(id), film(id).clean))),
    "precision ≥ 0.9, recall ≥ 0.85",
  );
  row(
    `promises, automatic captions (${half})`,
    scores(each(ids, (id) => scorePromises(garden, film(id), film(id).automatic))),
    "precision ≥ 0.9, recall ≥ 0.85",
  );
}
for (const [half, ids] of halves) {
  for (const kind of ["clean", "automatic"] as const) {
    const errors = ids.flatMap((id) => stopErrors(garden, film(id), film(id)[kind])).sort((a, b) => a - b);
    const within = errors.filter((error) => error <= 5).length;
    row(
      `stops, ${kind} captions (${half})`,
      `${within} of ${errors.length} within 5 s, median ${(errors[errors.length >> 1] ?? 0).toFixed(1)} s`,
    );
  }
}
const long = measure(12_000);
const quarter = measure(3_000);
row(
  "wrap of 12,000 captions, about four hours",
  `${long.cpuMs.toFixed(0)} ms of processor time, ${long.ms.toFixed(0)} on the clock, first run ${long.coldMs.toFixed(0)} ms (${long.words} words)`,
  "≤ 1,000 ms",
);
row("growth exponent of processor time from a quarter of it", growth(long.cpuMs, quarter.cpuMs));
row("heap that stays after the wrap", `${long.heapMiB.toFixed(1)} MiB; a quarter ${quarter.heapMiB.toFixed(1)} MiB`);
row("peak memory of the process", `${long.peakMiB.toFixed(0)} MiB; a quarter ${quarter.peakMiB.toFixed(0)} MiB`);

function otherHearing(id: string, seed: string): Score {
  const labelled = film(id);
  const { words, names } = automaticWords(labelled.clean.speech.words, garden.varieties.values(), ear, `${seed} ${id}`);
  const captions: CaptionFile = openCaptions("heard.vtt", Buffer.from(rollingCaptions(words, seed)));
  return scoreNames(garden, labelled, captions, names);
}

interface Measured {
  readonly ms: number;
  readonly cpuMs: number;
  readonly coldMs: number;
  readonly heapMiB: number;
  readonly peakMiB: number;
  readonly words: number;
}

function measure(cues: number): Measured {
  const script = path.join(import.meta.dirname, "bench", "measure-wrap.ts");
  return JSON.parse(
    execFileSync(process.execPath, ["--expose-gc", script, String(cues)], { encoding: "utf8" }),
  ) as Measured;
}

function growth(long: number, quarter: number): string {
  return (Math.log(long / quarter) / Math.log(4)).toFixed(2);
}

function scores(score: Score): string {
  return `precision ${precision(score).toFixed(3)}, recall ${recall(score).toFixed(3)} (${score.right} right, ${score.wrong} wrong, ${score.missed} missed)`;
}

function row(what: string, figure: string, goal?: string): void {
  console.log(`${what.padEnd(58)} ${figure}${goal === undefined ? "" : `   (goal ${goal})`}`);
}
