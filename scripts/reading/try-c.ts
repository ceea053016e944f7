import { gardensOf, contextOf } from "./examples.ts";
import { foldsOf, learnOpinion, type Lined } from "./learn.ts";
import { kindsOf, readCorpora } from "./corpus.ts";
import { opinionOf } from "../../src/records/reading/opinion.ts";
import { maskedWords, opinionFeatures } from "../../src/records/reading/opinion-words.ts";
import { findMentions } from "../../src/records/reading/find-mentions.ts";
import { gzipSync } from "node:zlib";
import { wordsOf } from "../../src/records/line-words.ts";
const learn = readCorpora("tests/corpus/learn");
const gardens = gardensOf(learn);
const lined: Lined[] = learn.lines.map((line) => ({ line, where: gardens.get(line.gardener)! }));
const K = 4; const folds = foldsOf(learn.lines.map(({ gardener }) => gardener), K);
for (const opts of [{ l1: 1, rate: 2, epochs: 6, seen: 4 }, { l1: 0.6, rate: 3, epochs: 6, seen: 3, l2: 0.3 }, { l1: 1.5, rate: 3, epochs: 8, seen: 3, l2: 0.1 }] as const) {
  let n = 0, sfa = 0, kind = 0, kn = 0; const t0 = Date.now(); let size = 0; let ll = 0, lln = 0;
  for (let k = 0; k < K; k++) {
    const w = learnOpinion(lined.filter(({ line }) => folds.get(line.gardener) !== k), opts);
    size = gzipSync(JSON.stringify(w)).length;
    for (const { line, where } of lined) {
      if (folds.get(line.gardener) !== k) continue;
      const { find } = contextOf(line, where); const words = wordsOf(line.text); const m = findMentions(words, find);
      const op = new Map(opinionOf(opinionFeatures(maskedWords(words, m, 0, words.length), m, where.names, true), w));
      const fact = op.get("fact")!; op.delete?.("fact" as never); const sf = (op.get("story")! > fact && op.get("story")! > Math.max(op.get("ask")!, op.get("correction")!, op.get("renamed")!)) ? "story" : Math.max(op.get("ask")!, op.get("correction")!, op.get("renamed")!) > fact ? "ask" : "fact"; const top = [...op].sort((a, b) => b[1] - a[1]);
      const is = (l: string) => l === "story" ? "story" : ["ask", "correction", "renamed"].includes(l) ? "ask" : "fact";
      n++;
      const exp = typeof line.expect === "string" ? [line.expect] : line.expect.flatMap((e) => kindsOf(e.kind));
      if (exp.some((x) => is(x) === sf)) sfa++;
      for (const [l, p] of op) { const y = exp.includes(l) ? 1 : 0; ll -= Math.log(Math.max(1e-4, y ? p : 1 - p)); lln++; }
      kn++; if (exp.includes(top[0]![0])) kind++;
    }
  }
  console.log(JSON.stringify(opts), "story/fact/ask", (100 * sfa / n).toFixed(1), "top kind right", (100 * kind / kn).toFixed(1), "logloss", (ll / lln).toFixed(4), "gz", size, "ms", Date.now() - t0);
}
