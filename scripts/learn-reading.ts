/**
 * Makes the weights of the reader from the labelled lines in tests/corpus: `npm run learn`. The same lines give the same
 * bytes. The choice is learned from opinions on lines whose writer the opinion had not seen, or it would trust it too much.
 */
import { writeFileSync } from "node:fs";
import type { PackedOpinion } from "../src/records/reading/packed-opinion.ts";
import { readCorpora } from "./reading/corpus.ts";
import { gardensOf, optionsOf } from "./reading/examples.ts";
import { foldsOf, type Lined, learnChoice, learnOpinion } from "./reading/learn.ts";
import { packedOpinion } from "./reading/pack-opinion.ts";

const folders =
  process.argv.slice(2).length > 0 ? process.argv.slice(2) : ["tests/corpus/learn", "tests/corpus/put-away"];
const lined: Lined[] = folders.flatMap((folder) => {
  const corpus = readCorpora(folder);
  const gardens = gardensOf(corpus);
  return corpus.lines.flatMap((line) => {
    const where = gardens.get(line.gardener);
    return where === undefined ? [] : [{ line, where }];
  });
});
const folds = foldsOf(
  lined.map(({ line }) => line.gardener),
  4,
);
const options = [0, 1, 2, 3].flatMap((fold) => {
  const others = learnOpinion(lined.filter(({ line }) => folds.get(line.gardener) !== fold));
  return lined
    .filter(({ line }) => folds.get(line.gardener) === fold)
    .map(({ line, where }) => optionsOf(line, where, others));
});
const choice = [...learnChoice(options)]
  .filter(([, weight]) => Math.abs(weight) >= 0.01)
  .sort(([a], [b]) => (a < b ? -1 : 1));
write("choice", Object.fromEntries(choice.map(([name, weight]) => [name, Math.round(weight * 1000)])));
write("opinion", packedOpinion(learnOpinion(lined)));

/** One key a line: of the choice that is one feature, so that a difference can be read. */
function write(name: string, weights: PackedOpinion | Record<string, number>): void {
  const text = JSON.stringify(weights).replaceAll(/([\d"\]]),"(?=[\w: ,]+":)/g, '$1,\n"');
  writeFileSync(`src/records/reading/${name}.weights.json`, `${text}\n`);
}
