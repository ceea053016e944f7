/** What speaks for and against taking a line one way, as named numbers; their weights are learned (scripts/learn-reading.ts). */

import type { EventKind } from "../../model.ts";
import { type Candidate, cuesOf, signature, type Weighed } from "./candidates.ts";
import type { Fact } from "./fact.ts";
import { needsPlant } from "./frames.ts";
import { type AmountMention, isVerb } from "./mention.ts";

/** Takes a feature; one that comes again counts again. */
export type Add = (name: string, value?: number) => void;

/** What the written form makes of the line, and whether it left nothing over. */
export interface FormReading {
  readonly facts: readonly Fact[];
  readonly clean: boolean;
}

const asked = ["ask", "correction", "renamed"];

export function candidateFeatures(candidate: Candidate, line: Weighed, form: FormReading | undefined, add: Add): void {
  const { facts, choices } = candidate;
  const kinds = [...new Set(facts.map(({ kind }) => kind))];
  const told = facts.length > 0;
  add(`n:${Math.min(facts.length, 4)}`);
  add(`kinds:${Math.min(kinds.length, 3)}`);
  const log = (p: number | undefined) => Math.log(Math.min(0.999, Math.max(0.001, p ?? 0.001)));
  const p = (label: string) => line.opinion.get(label) ?? 0.001;
  if (told) {
    add("not story", log(1 - p("story")));
    add(
      "not asked",
      log(
        1 -
          Math.min(
            0.99,
            asked.reduce((sum, label) => sum + p(label), 0),
          ),
      ),
    );
  } else add("story", log(p("story")));
  for (const kind of kinds) {
    add(`k:${kind}`);
    add("line", log(p(kind)) / kinds.length);
    add("line sum", log(p(kind)));
  }
  if (told) {
    const several = line.opinion.get("several") ?? 0.2;
    add(facts.length > 1 ? "several" : "one", log(facts.length > 1 ? several : 1 - several));
  }
  if (candidate.fine === true) add("parted finely");
  let missing = 0;
  for (const [label, value] of line.opinion) {
    if (
      label === "story" ||
      label === "fact" ||
      label === "several" ||
      asked.includes(label) ||
      kinds.some((kind) => kind === label)
    )
      continue;
    missing += log(1 - value);
  }
  add("missing", missing);
  const used = new Set<unknown>();
  for (const choice of choices) {
    const cues = new Set(cuesOf(choice.clause).map(({ is }) => is));
    const verbs = choice.clause.mentions.filter(isVerb);
    const plants = choice.clause.mentions.filter(({ type }) => type === "plant");
    if (choice.kind === undefined) {
      if (verbs.length > 0 && told) add("passed over: verb");
      if (plants.length > 0 && told) add("passed over: plant");
      if (choice.clause.mentions.some(({ type }) => type === "amount") && told) add("passed over: amount");
      for (const cue of cues) add(`${cue}, nothing`);
      if (told) add("passed over", log(choice.opinion.get("story")));
      continue;
    }
    for (const cue of cues) add(`${cue}, told`);
    if (cues.size > 0) for (const cue of cues) add(`${cue}, ${choice.kind}`);
    add(`ground: ${choice.ground}`);
    add(`ground: ${choice.ground}, ${choice.kind}`);
    if (choice.rank > 0) add("rank", Math.min(choice.rank, 3));
    if (verbs.length > 0 && choice.ground !== "verb") add("against the verb");
    const said = verbs.filter(({ kinds }) => kinds.includes(choice.kind as EventKind));
    for (const { kinds } of said) add(`verb of ${Math.min(kinds.length, 4)}`);
    if (verbs.length === 1 && said.length === 1) add("only verb");
    if (choice.framed?.borrowed === true) add("borrowed");
    if (choice.framed?.borrowed === true) add(`borrowed, ${choice.kind}`);
    add("clause", log(choice.opinion.get(choice.kind)));
    if (verbs.length > 1) add("several verbs", verbs.length - 1);
    for (const mention of choice.framed?.used ?? []) used.add(mention);
    if (choice.clause.end - choice.clause.from > 14) add("long clause");
  }
  for (const mention of line.mentions) {
    if (!told || used.has(mention)) continue;
    if (mention.type === "amount") {
      const { use } = mention as AmountMention;
      if (use !== "label" && use !== "price" && use !== "time") add(`left: ${use}`);
    } else if (
      mention.type === "plant" ||
      mention.type === "cause" ||
      mention.type === "bed" ||
      mention.type === "day" ||
      mention.type === "gear"
    )
      add(`left: ${mention.type}`);
  }
  for (const fact of facts) factFeatures(fact, add, facts.length);
  if (told && line.mentions.some((one) => one.type === "plant" && one.basis === "guess")) add("guess");
  if (told && line.clauses.length > 3) add("many clauses", line.clauses.length - 3);
  if (told) add(`words:${line.words.length < 6 ? 0 : line.words.length < 12 ? 1 : line.words.length < 20 ? 2 : 3}`);
  if (form !== undefined) {
    const same = sameFacts(form.facts, facts);
    const how = form.clean ? "clean" : "left over";
    add(`form ${how}: ${same ? "same" : sameKinds(form.facts, facts) ? "same kinds" : told ? "other" : "none"}`);
  } else add(`no form: ${told ? "told" : "none"}`);
}

function factFeatures(fact: Fact, add: Add, of: number): void {
  const share = 1 / of;
  const { kind } = fact;
  const plant = fact.variety ?? fact.title ?? fact.crop;
  if (plant === undefined) add(`no plant, ${kind}`, share);
  if (plant === undefined && needsPlant.has(kind)) add("no plant where needed", share);
  if (fact.count !== undefined) add(`count, ${kind}`, share);
  if (fact.unit !== undefined) add(`pieces, ${kind}`, share);
  if (fact.grams !== undefined) add(`mass, ${kind}`, share);
  if (fact.litres !== undefined) add(`volume, ${kind}`, share);
  if ((fact.heightCm ?? fact.girthCm) !== undefined) add(`length, ${kind}`, share);
  if (fact.cause !== undefined) add(`cause, ${kind}`, share);
  if (fact.nursery === true) add(`nursery, ${kind}`, share);
  if (fact.toBed !== undefined) add(`to bed, ${kind}`, share);
  if (fact.day !== undefined) add(`day, ${kind}`, share);
  if (fact.ph !== undefined) add(`ph, ${kind}`, share);
  if (fact.variety === undefined && fact.title === undefined && fact.crop !== undefined)
    add(`crop only, ${kind}`, share);
}

/** What speaks for asking instead of any of these. */
export function askFeatures(line: Weighed, form: FormReading | undefined, add: Add): void {
  add("ask", 1);
  const log = (p: number | undefined) => Math.log(Math.min(0.999, Math.max(0.001, p ?? 0.001)));
  for (const label of asked) add(`ask: ${label}`, log(line.opinion.get(label)));
  const cues = new Set(line.clauses.flatMap(cuesOf).map(({ is }) => is));
  for (const cue of cues) add(`ask: ${cue}`);
  add(`ask: words ${line.words.length < 6 ? 0 : line.words.length < 12 ? 1 : line.words.length < 20 ? 2 : 3}`, 1);
  add(`ask: clauses ${Math.min(4, line.clauses.length)}`, 1);
  const plants = line.mentions.filter(({ type }) => type === "plant");
  add(`ask: plants ${Math.min(3, plants.length)}`, 1);
  const amounts = line.mentions.filter(({ type }) => type === "amount").length;
  add(`ask: amounts ${Math.min(3, amounts)}`, 1);
  const best = Math.max(
    0.001,
    ...[...line.opinion].filter(([label]) => !asked.includes(label) && label !== "several").map(([, value]) => value),
  );
  add("ask: best", Math.log(best));
  if (line.mentions.some((one) => one.type === "plant" && one.basis === "guess")) add("ask: guess", 1);
  if (form === undefined) add("ask: no form", 1);
}

function sameFacts(a: readonly Fact[], b: readonly Fact[]): boolean {
  return a.length === b.length && signature(a) === signature(b);
}

function sameKinds(a: readonly Fact[], b: readonly Fact[]): boolean {
  return a.length === b.length && a.every(({ kind }, index) => kind === b[index]?.kind);
}
