/**
 * One wrap of a long film in a process of its own: prints { ms, cpuMs, coldMs, heapMiB, peakMiB, cues, words } as JSON.
 *
 *   node --expose-gc measure-wrap.ts CUES
 *
 * The film is the demo's eight automatic captions one after the other, as often as it takes.
 */
import type { Episode } from "../../src/model.ts";
import { makeBrief } from "../../src/tour/index.ts";
import { type CueToWrite, wrapEpisode, writeCaptions } from "../../src/wrap/index.ts";
import { demoGarden, demoToday, heldBack, labelledFilm, tuned } from "../mis-hearing/labelled-films.ts";

const wanted = Number(process.argv[2] ?? 12_000);
const RUNS = 3;

const garden = await demoGarden();
const films = [...tuned, ...heldBack].map((id) => labelledFilm(garden, id).automatic.cues);
const cues: CueToWrite[] = [];
for (let film = 0, offset = 0; cues.length < wanted; film += 1) {
  for (const cue of films[film % films.length] ?? [])
    cues.push({ ...cue, start: cue.start + offset, end: cue.end + offset });
  offset = (cues.at(-1)?.end ?? 0) + 1000;
}
const bytes = Buffer.from(writeCaptions(cues.slice(0, wanted), "vtt"));
const record = garden.episodes.get("2026-06-tour") as Episode;
const episode: Episode = { ...record, stops: record.stops.map(({ bed }) => ({ bed })) };
const brief = makeBrief(garden, { episode: episode.id, today: demoToday });

const times: number[] = [];
let cpuMs = 0;
let heap = 0;
let words = 0;
globalThis.gc?.();
const before = process.memoryUsage().heapUsed;
for (let run = 0; run <= RUNS; run += 1) {
  const began = performance.now();
  const used = process.cpuUsage();
  const { wrap } = wrapEpisode({ garden, episode, brief, captions: { file: "long.vtt", bytes } });
  times.push(performance.now() - began);
  // The main thread's and the collector's time; a busy machine does not lengthen it much.
  const { user, system } = process.cpuUsage(used);
  cpuMs = (user + system) / 1000;
  words = wrap.transcript.reduce((sum, { text }) => sum + text.split(" ").length, 0);
  globalThis.gc?.();
  heap = process.memoryUsage().heapUsed - before;
}
const [coldMs = 0, ...warm] = times;
const ms = warm.sort((a, b) => a - b)[Math.floor(RUNS / 2)];
console.log(
  JSON.stringify({
    ms,
    cpuMs,
    coldMs,
    heapMiB: heap / 1024 ** 2,
    peakMiB: process.resourceUsage().maxRSS / 1024,
    cues: wanted,
    words,
  }),
);
