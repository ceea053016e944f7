/**
 * `npm run learn:promises`: makes the weights by which promises are heard from the talks in tests/talks, the films in
 * tests/films/learn and half of the demo's; the same material gives the same bytes. With `-- --figures` it prints instead how promises are heard of
 * speakers not learned from: those of the learning half by weights from the other speakers, the half put away by weights from
 * the learning half alone.
 */
import { writeFileSync } from "node:fs";
import { precision, recall, type Score } from "./mis-hearing/hearing-scores.ts";
import { tuned } from "./mis-hearing/labelled-films.ts";
import { learnPromises, scoreLeftOut, scoreTalks } from "./speech/learn.ts";
import { demoFilms, filmsIn, type Talk, talksIn } from "./speech/talks.ts";

const talks = talksIn("tests/talks/learn");
const films = filmsIn("tests/films/learn");
const putAway = talksIn("tests/talks/put-away");
const demo = await demoFilms(tuned);
if (process.argv.includes("--figures")) {
  const learned = [...talks, ...films, ...demo];
  const among = (some: readonly Talk[], marked: boolean) => (talk: Talk) =>
    talk.marked === marked && some.includes(talk);
  for (const marked of [true, false]) {
    const how = marked ? "with marks" : "without marks";
    print(`talks, ${how}, speaker left out`, scoreLeftOut(learned, among(talks, marked)));
    print(`films, ${how}, speaker left out`, scoreLeftOut(learned, among(films, marked)));
  }
  const weights = learnPromises(learned);
  for (const marked of [true, false]) {
    const how = marked ? "with marks" : "without marks";
    const own = (some: readonly Talk[]) => some.filter((talk) => talk.marked === marked);
    print(`talks put away, ${how}`, scoreTalks(own(putAway), weights));
    print(`films put away, ${how}`, scoreTalks(own(filmsIn("tests/films/put-away")), weights));
  }
} else {
  const weights = learnPromises([...talks, ...films, ...demo, ...putAway]);
  // One feature a line, so that a difference can be read.
  const text = JSON.stringify(weights).replaceAll(/(:-?\d+),"/g, '$1,\n"');
  writeFileSync("src/wrap/promises.weights.json", `${text}\n`);
}

function print(title: string, score: Score): void {
  const { right, wrong, missed } = score;
  console.log(
    `${title.padEnd(44)} right ${String(right).padStart(3)}  wrong ${String(wrong).padStart(3)}  missed ${String(missed).padStart(3)}   precision ${precision(score).toFixed(2)} recall ${recall(score).toFixed(2)}`,
  );
}
