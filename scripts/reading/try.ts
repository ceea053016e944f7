/** Scratch: cross-validated figures on learn/ and one run on another folder. */
import { gardensOf, type LineOptions, optionsOf, verdictOf } from "./examples.ts";
import { foldsOf, learnChoice, learnOpinion, type Lined } from "./learn.ts";
import { readCorpora } from "./corpus.ts";
import { score } from "./regression.ts";
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import type { OpinionWeights } from "../../src/records/reading/opinion.ts";

const learn = readCorpora("tests/corpus/learn");
const gardens = gardensOf(learn);
const lined: Lined[] = learn.lines.map((line) => ({ line, where: gardens.get(line.gardener)! }));
const K = 4;
const folds = foldsOf(learn.lines.map(({ gardener }) => gardener), K);
const t0 = Date.now();
const out: { fold: number; o: LineOptions; where: Lined["where"] }[] = [];
for (let k = 0; k < K; k++) {
  const kept = `/tmp/op-${k}.json`;
  const weights: OpinionWeights = process.argv.includes("-l") || !existsSync(kept) ? learnOpinion(lined.filter(({ line }) => folds.get(line.gardener) !== k)) : JSON.parse(readFileSync(kept, "utf8"));
  writeFileSync(kept, JSON.stringify(weights));
  for (const one of lined) if (folds.get(one.line.gardener) === k) out.push({ fold: k, o: optionsOf(one.line, one.where, weights), where: one.where });
}
console.log("opinions", Date.now() - t0);
const probs = (o: LineOptions, w: ReadonlyMap<string, number>) => {
  const s = o.options.map(({ features }) => score(features, w));
  const top = Math.max(...s); const e = s.map((v) => Math.exp(v - top)); const all = e.reduce((a, b) => a + b, 0);
  return e.map((v) => v / all);
};
export interface Row { o: LineOptions; where: Lined["where"]; p: number[] }
if (process.argv.includes("-h")) for (const opts of [{ epochs: 6 }, { epochs: 14, l2: 0.002 }, { epochs: 14, l2: 0.006 }, { epochs: 25, l2: 0.002 }, { epochs: 14, l2: 0.015 }]) {
  let first = 0, ll = 0, n = 0;
  for (let k = 0; k < K; k++) {
    const w = learnChoice(out.filter(({ fold }) => fold !== k).map(({ o }) => o), opts);
    for (const one of out) if (one.fold === k) { const p = probs(one.o, w); const any = one.o.options.some((x) => x.verdict === "right"); let good = 0; one.o.options.forEach((x, i) => { if (any ? x.verdict === "right" : x.verdict === "asked") good += p[i]!; }); ll -= Math.log(Math.max(1e-4, good)); n++; const top = p.indexOf(Math.max(...p)); if (any ? one.o.options[top]!.verdict === "right" : one.o.options[top]!.verdict === "asked") first++; }
  }
  console.log(JSON.stringify(opts), "top right", (100 * first / n).toFixed(1), "logloss", (ll / n).toFixed(4));
}
{
  const t: Record<string, Record<string, number>> = {}; let shown = "";
  for (const { o, where } of out) { if (o.form === undefined) continue; const v = verdictOf(o.line, o.form.facts, where); const key = o.form.clean ? "clean" : "over"; t[key] ??= {}; t[key]![v] = (t[key]![v] ?? 0) + 1; if (o.form.clean && (v === "wrong" || v === "part")) { const why: string[] = []; verdictOf(o.line, o.form.facts, where, why); shown += `${v} ${o.line.text}  [${typeof o.line.expect === "string" ? o.line.expect : why.join("; ")}] ${o.form.facts.map((f) => f.kind).join()}\n`; } }
  console.log("form", JSON.stringify(t)); writeFileSync("/tmp/form.txt", shown);
}
const rows: Row[] = [];
for (let k = 0; k < K; k++) {
  const w = learnChoice(out.filter(({ fold }) => fold !== k).map(({ o }) => o));
  for (const one of out) if (one.fold === k) rows.push({ o: one.o, where: one.where, p: probs(one.o, w) });
}
console.log("choices", Date.now() - t0);
{
  const facts = rows.filter(({ o }) => typeof o.line.expect !== "string");
  const able = facts.filter(({ o }) => o.options.some(({ verdict }) => verdict === "right"));
  const best = (r: Row) => { let b = -1; r.o.options.forEach((x, i) => { if (x.verdict !== "asked" && (b < 0 || r.p[i]! > r.p[b]!)) b = i; }); return b; };
  const bestFact = (r: Row) => { let b = -1; r.o.options.forEach((x, i) => { if (x.facts.length > 0 && (b < 0 || r.p[i]! > r.p[b]!)) b = i; }); return b; };
  for (const n of [1, 2, 3]) { const these = facts.filter(({ o }) => Math.min(3, (o.line.expect as unknown[]).length) === n); console.log(`   ${n} events: ${these.length}, right way there ${(100 * these.filter(({ o }) => o.options.some(({ verdict }) => verdict === "right")).length / these.length).toFixed(1)} %, top ${(100 * these.filter((r) => r.o.options[bestFact(r)]?.verdict === "right").length / these.length).toFixed(1)}`); }
  console.log(`fact lines ${facts.length}: right way there ${able.length} (${(100 * able.length / facts.length).toFixed(1)} %), ranked first of all but asking ${(100 * able.filter((r) => r.o.options[best(r)]?.verdict === "right").length / facts.length).toFixed(1)} %, first of facts ${(100 * able.filter((r) => r.o.options[bestFact(r)]?.verdict === "right").length / facts.length).toFixed(1)} %; mean candidates ${(facts.reduce((n, r) => n + r.o.options.length, 0) / facts.length).toFixed(1)}`);
}
function report(name: string, rows: Row[]) {
  const n = rows.length;
  const oracle = rows.filter(({ o }) => o.options.some(({ verdict }) => verdict === "right") || (typeof o.line.expect === "string" && o.line.expect !== "story")).length;
  console.log(`${name}: ${n} lines; a right way among the candidates ${(100 * oracle / n).toFixed(1)} %`);
  for (const accept of [0, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9]) for (const story of [0.5, 0.7, 0.85]) {
    const t: Record<string, number> = {}; let storyN = 0, storyAsked = 0, storyWrong = 0;
    for (const { o, p } of rows) {
      const v = decide(o, p, accept, story);
      t[v] = (t[v] ?? 0) + 1;
      if (o.line.expect === "story") { storyN++; if (v === "asked") storyAsked++; if (v === "wrong") storyWrong++; }
    }
    const f = (k: string) => (100 * (t[k] ?? 0) / n).toFixed(1).padStart(5);
    if ((story === 0.7) || accept === 0.6) console.log(`  accept ${accept} story ${story}: right ${f("right")} first ${f("first")} offered ${f("offered")} asked ${f("asked")} part ${f("part")} silent ${f("silent")} wrong ${f("wrong")} | story asked ${(100 * storyAsked / storyN).toFixed(0)} made fact ${(100 * storyWrong / storyN).toFixed(1)}`);
  }
}
export function decide(o: LineOptions, p: number[], accept: number, story: number): string {
  const open = typeof o.line.expect === "string" && o.line.expect !== "story";
  const order = o.options.map((_, i) => i).sort((a, b) => p[b]! - p[a]!);
  const none = o.options.findIndex((x) => x.facts.length === 0 && x.verdict !== "asked");
  const ps = p[none] ?? 0;
  if (ps >= story) return o.line.expect === "story" ? "right" : open ? "silent" : o.options[none]!.verdict === "right" ? "right" : "silent";
  const top = order[0]!;
  const topFact = order.find((i) => o.options[i]!.facts.length > 0);
  if (topFact !== undefined && topFact === top && p[top]! >= accept) {
    const v = o.options[top]!.verdict; return v === "none" ? "silent" : v === "nothing" ? "right" : open ? "part" : v;
  }
  if (open) return "right";
  const facts = order.filter((i) => o.options[i]!.facts.length > 0);
  const at = facts.findIndex((i) => o.options[i]!.verdict === "right");
  if (o.line.expect === "story") return "asked";
  if (o.options[none]?.verdict === "right") return "asked";
  return at === 0 ? "first" : at > 0 && at < 3 ? "offered" : "asked";
}
report("learn, left out", rows);
if (process.argv.includes("-v")) {
  const fails: string[] = [];
  for (const { o, p, where } of rows) {
    const top = p.indexOf(Math.max(...p));
    const opt = o.options[top]!;
    if (opt.verdict === "right") continue;
    const why: string[] = []; if (opt.verdict !== "asked") verdictOf(o.line, opt.facts, where, why);
    const has = o.options.some(({ verdict }) => verdict === "right") ? "ranked" : "NOT AMONG";
    fails.push(`${opt.verdict.padEnd(6)} ${p[top]!.toFixed(2)} ${has.padEnd(9)} ${o.line.text}\n     want ${JSON.stringify(o.line.expect)}\n     got  ${JSON.stringify(opt.facts.map((f) => Object.fromEntries(Object.entries(f).filter(([k, v]) => v !== undefined && k !== "what"))))}  [${why.join("; ")}]`);
  }
  writeFileSync("/tmp/fails.txt", fails.join("\n"));
}
const folder = process.argv.slice(2).find((arg) => !arg.startsWith("-"));
if (folder !== undefined) {
  const other = folder.endsWith(".json") ? JSON.parse(readFileSync(folder, "utf8")) : readCorpora(folder);
  const g = gardensOf(other);
  const weights = learnOpinion(lined);
  const w = learnChoice(out.map(({ o }) => o));
  const r: Row[] = other.lines.map((line: never) => { const where = g.get((line as { gardener: string }).gardener)!; const o = optionsOf(line, where, weights); return { o, where, p: probs(o, w) }; });
  report(folder, r);
}
{
  const conf = new Map<string, string[]>();
  for (const { o, p } of rows) {
    if (typeof o.line.expect === "string") continue;
    let b = -1, g = -1; o.options.forEach((x, i) => { if (x.facts.length > 0 && (b < 0 || p[i]! > p[b]!)) b = i; if (x.verdict === "right" && (g < 0 || p[i]! > p[g]!)) g = i; });
    if (b < 0 || g < 0 || o.options[b]!.verdict === "right") continue;
    const k = (i: number) => o.options[i]!.facts.map((f) => f.kind).join("+");
    const key = k(b) === k(g) ? "same kinds: " + k(b) : `${k(b)} for ${k(g)}`;
    conf.set(key, [...(conf.get(key) ?? []), o.line.text]);
  }
  const cl = [...conf].sort((a, b) => b[1].length - a[1].length);
  writeFileSync("/tmp/conf.txt", cl.map(([k, t]) => `${t.length} ${k}\n` + t.slice(0, 6).map((x) => "      " + x.slice(0, 140)).join("\n")).join("\n"));
  const causes = new Map<string, string[]>();
  for (const { o, where } of rows) {
    if (typeof o.line.expect === "string" || (process.argv.includes("-1") && o.line.expect.length > 1) || o.options.some(({ verdict }) => verdict === "right")) continue;
    let best: string[] | undefined; let bestOf: (typeof o.options)[number] | undefined;
    for (const opt of o.options) { if (opt.verdict === "asked") continue; const why: string[] = []; const v = verdictOf(o.line, opt.facts, where, why); if (v === "none") why.push("no candidate", "x", "y"); if (best === undefined || why.length < best.length) { best = why; bestOf = opt; } }
    for (const w of best ?? []) { const key = w.replace(/ -?[\d.]+/g, " #").replace(/(variety|crop|cause|extra|bed|to) .* (for) .*/, "$1 … for …").replace(/extra (\S+) .*/, "extra $1"); causes.set(key, [...(causes.get(key) ?? []), o.line.text + "\n            want " + (o.line.expect as {kind:string}[]).map((e) => Object.values(e).join(" ")).join(" + ") + "\n            got  " + bestOf!.facts.map((f) => [f.kind, f.variety ?? f.title, f.crop, f.count?.value, f.grams, f.bed, f.nursery, f.day, f.cause].filter((x) => x !== undefined).join(" ")).join(" + ")]); }
  }
  const l = [...causes].sort((a, b) => b[1].length - a[1].length);
  let s = ""; for (const [k, t] of l) s += `${t.length}  ${k}\n` + t.slice(0, 40).map((x) => `        ${x.slice(0, 500)}\n`).join("");
  writeFileSync("/tmp/causes.txt", s); console.log(l.slice(0, 45).map(([k, t]) => `${t.length} ${k}`).join("\n"));
}
