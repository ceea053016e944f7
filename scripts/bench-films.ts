/**
 * `npm run bench:films [-- -v FILM …]`: how well films are heard that people spoke who have not seen the reader, against their
 * labels (tests/films/README.md), for the half that may be looked at and the half put away. With -v each miss of those films.
 */
import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { parseArgs } from "node:util";
import { briefFor } from "../src/cli/brief-command.ts";
import { realEffects } from "../src/cli/effects.ts";
import { loadGarden } from "../src/cli/load-garden.ts";
import { wrapEpisode } from "../src/wrap/index.ts";
import { type FilmLabels, scoredFilm } from "./films/scores.ts";
import { nothing, precision, recall, type Score, sum } from "./mis-hearing/hearing-scores.ts";

const FILMS = path.join(import.meta.dirname, "..", "tests", "films");
const CAPTIONS = ["clean.vtt", "auto.vtt"] as const;

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: { v: { type: "boolean", short: "v", default: false } },
});
for (const half of ["learn", "put-away"]) {
  const names = readdirSync(path.join(FILMS, half)).filter(
    (name) => positionals.length === 0 || positionals.includes(name),
  );
  for (const captions of CAPTIONS) {
    const all = new Map<string, Score>();
    for (const name of names) {
      const film = path.join(FILMS, half, name);
      const labels = JSON.parse(readFileSync(path.join(film, "labels.json"), "utf8")) as FilmLabels;
      const { wrap, brief } = await heard(film, labels, captions);
      const { scores, misses } = scoredFilm(labels, wrap, brief, captions === "auto.vtt");
      for (const [what, score] of scores) all.set(what, sum(all.get(what) ?? nothing, score));
      if (values.v) for (const miss of misses) console.log(`${name} ${captions} ${miss}`);
    }
    if (names.length > 0) print(`${half}, ${captions}, ${names.length} films`, all);
  }
}

async function heard(film: string, { episode: id, day }: FilmLabels, captions: string) {
  const effects = { ...realEffects(), err: () => {} };
  const loaded = await loadGarden({ records: path.join(film, "records"), today: day }, effects);
  const episode = loaded.garden.episodes.get(id);
  if (episode === undefined) throw new Error(`${film} has no episode ${id}`);
  const brief = briefFor(loaded, id);
  const { wrap } = wrapEpisode({
    garden: loaded.garden,
    episode,
    captions: { file: captions, bytes: readFileSync(path.join(film, captions)) },
    brief,
  });
  return { wrap, brief };
}

function print(title: string, scores: ReadonlyMap<string, Score>): void {
  console.log(`\n${title}`);
  for (const [what, score] of scores) {
    const { right, wrong, missed } = score;
    console.log(
      `  ${what.padEnd(34)} right ${String(right).padStart(3)}  wrong ${String(wrong).padStart(3)}  missed ${String(missed).padStart(3)}   precision ${precision(score).toFixed(2)} recall ${recall(score).toFixed(2)}`,
    );
  }
}
