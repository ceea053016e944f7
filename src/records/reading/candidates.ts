/** All ways to take a line that are worth weighing: for each clause the kinds it may tell of, and their combinations. */
import type { EventKind } from "../../model.ts";
import type { Word } from "../line-words.ts";
import { type Clause, clausesOf } from "./clauses.ts";
import type { Fact } from "./fact.ts";
import { type FindContext, seenIn, textOf } from "./find-mentions.ts";
import { type FrameContext, type Framed, frame, troubleEnds } from "./frames.ts";
import type { AmountMention, BedMention, CueMention, Mention, PlantMention, VerbMention } from "./mention.ts";
import { type Opinion, type OpinionWeights, opinionOf } from "./opinion.ts";
import { maskedWords, opinionFeatures } from "./opinion-words.ts";

export interface CandidateContext extends FindContext {
  readonly beds: readonly string[];
  readonly southern: boolean;
}

/** Why a kind was proposed for a clause. */
export type Ground = "verb" | "weak verb" | "no verb" | "opinion" | "before" | "form";

interface Choice {
  readonly clause: Clause;
  /** Undefined: nothing comes of it. */
  readonly kind?: EventKind | undefined;
  readonly framed?: Framed | undefined;
  readonly ground?: Ground | undefined;
  /** Place of the kind among those of its verb. */
  readonly rank: number;
  readonly opinion: Opinion;
  /** For cutting the search short only. */
  readonly cost: number;
}

export interface Candidate {
  readonly facts: readonly Fact[];
  readonly choices: readonly Choice[];
  /** The line was parted at every joint. */
  readonly fine?: boolean | undefined;
}

interface Path {
  readonly choices: readonly Choice[];
  readonly cost: number;
  /** Plants of the last clause that named some. */
  readonly plants: readonly PlantMention[];
  readonly fine?: boolean | undefined;
}

export interface Weighed {
  readonly words: readonly Word[];
  readonly mentions: readonly Mention[];
  readonly clauses: readonly Clause[];
  readonly opinion: Opinion;
  readonly candidates: readonly Candidate[];
}

const widest = 24;

export function candidatesOf(text: string, context: CandidateContext, weights: OpinionWeights): Weighed {
  const { words, mentions } = seenIn(text, context);
  const clauses = clausesOf(words, mentions);
  const opinion = opinionOf(
    opinionFeatures(maskedWords(words, mentions, 0, words.length), mentions, context.names, true),
    weights,
  );
  const frames: FrameContext = {
    words,
    text,
    noteDay: context.noteDay,
    southern: context.southern,
    monthFirst: context.monthFirst,
    beds: context.beds,
    all: mentions,
  };
  const search = (parts: readonly Clause[]): Path[] => {
    let beam: Path[] = [{ choices: [], cost: 0, plants: [] }];
    for (const clause of parts) {
      const own =
        parts.length === 1
          ? opinion
          : opinionOf(
              opinionFeatures(
                maskedWords(words, clause.mentions, clause.from, clause.end),
                clause.mentions,
                context.names,
                false,
              ),
              weights,
            );
      // The same for every path that leads here.
      const unsaid = [...withoutVerb(clause), ...byOtherWords(clause, words)];
      const next: typeof beam = [];
      for (const path of beam) {
        const last = path.choices.findLast(({ kind }) => kind !== undefined)?.kind;
        const here = clause.mentions.filter((one): one is PlantMention => one.type === "plant");
        for (const choice of choicesOf(text, clause, unsaid, own, opinion, last, path.plants, frames)) {
          next.push({
            choices: [...path.choices, choice],
            cost: path.cost + choice.cost,
            plants: here.length > 0 ? here : path.plants,
          });
        }
      }
      next.sort((a, b) => a.cost - b.cost);
      beam = next.slice(0, widest);
    }
    return beam;
  };
  const fine = clausesOf(words, mentions, true);
  const paths = search(clauses);
  if (fine.length !== clauses.length) paths.push(...search(fine).map((path) => ({ ...path, fine: true })));
  // What stands apart may still be told of one thing: "Leeks planted! The small ones. 42."
  if (clauses.length > 1 && words.length < 30)
    paths.push(...search([{ from: 0, end: words.length, mentions }]).slice(0, 6));
  const seen = new Set<string>();
  const candidates: Candidate[] = [];
  for (const { choices, fine: finer } of paths) {
    const facts = choices.flatMap(({ framed }) => framed?.facts ?? []);
    const key = signature(facts);
    if (seen.has(key)) continue;
    seen.add(key);
    candidates.push({ facts: merged(facts), choices, fine: finer });
  }
  if (!candidates.some(({ facts }) => facts.length === 0))
    candidates.push({ facts: [], choices: clauses.map((clause) => ({ clause, rank: 0, opinion, cost: 0 })) });
  return { words, mentions, clauses, opinion, candidates };
}

/** Two ways that give the same facts are one. */
export function signature(facts: readonly Fact[]): string {
  return JSON.stringify(
    facts.map(
      ({
        kind,
        variety,
        title,
        crop,
        count,
        grams,
        litres,
        heightCm,
        girthCm,
        celsius,
        ph,
        bed,
        toBed,
        nursery,
        day,
        due,
        cause,
      }) => [
        kind,
        variety,
        title,
        variety === undefined && title === undefined ? crop : undefined,
        count?.value,
        grams,
        litres,
        heightCm,
        girthCm,
        celsius,
        ph,
        bed,
        toBed,
        nursery,
        day,
        due,
        cause,
      ],
    ),
  );
}

/** The same thing said twice of the same plant is one fact. */
function merged(facts: readonly Fact[]): readonly Fact[] {
  const out: Fact[] = [];
  for (const fact of facts) {
    const at = out.findIndex(
      (one) =>
        one.kind === fact.kind &&
        one.variety === fact.variety &&
        one.title === fact.title &&
        one.crop === fact.crop &&
        one.bed === fact.bed &&
        one.day === fact.day,
    );
    const before = out[at];
    if (before === undefined || !compatible(before, fact)) out.push(fact);
    else out[at] = { ...fact, ...withoutUndefined(before) };
  }
  return out;
}

function compatible(a: Fact, b: Fact): boolean {
  return (["count", "grams", "litres", "heightCm", "girthCm", "celsius", "ph", "cause"] as const).every(
    (key) => a[key] === undefined || b[key] === undefined,
  );
}

function withoutUndefined(fact: Fact): Fact {
  return Object.fromEntries(Object.entries(fact).filter(([, value]) => value !== undefined)) as unknown as Fact;
}

function choicesOf(
  text: string,
  clause: Clause,
  /** Kinds that it may tell of where no verb says so. */
  unsaid: readonly EventKind[],
  opinion: Opinion,
  line: Opinion,
  last: EventKind | undefined,
  before: readonly PlantMention[],
  context: FrameContext,
): readonly Choice[] {
  const proposed = new Map<EventKind, { readonly ground: Ground; readonly rank: number }>();
  const propose = (kind: EventKind, ground: Ground, rank = 0) => {
    if (!proposed.has(kind)) proposed.set(kind, { ground, rank });
  };
  for (const kind of byForm(text, clause)) propose(kind, "form");
  const verbs = clause.mentions.filter((one): one is VerbMention => one.type === "verb");
  for (const verb of verbs)
    if (!verb.weak) for (const [rank, kind] of verb.kinds.entries()) propose(kind, "verb", rank);
  for (const verb of verbs)
    if (verb.weak) for (const [rank, kind] of verb.kinds.entries()) propose(kind, "weak verb", rank);
  const plants = clause.mentions.some(({ type }) => type === "plant");
  if (last !== undefined && plants && verbs.every(({ weak }) => weak)) propose(last, "before");
  for (const kind of unsaid) propose(kind, "no verb");
  const likely = [...opinion].filter(([label, p]) => p > 0.08 && !notKinds.has(label)).sort((a, b) => b[1] - a[1]);
  for (const [label] of likely.slice(0, 4)) propose(label as EventKind, "opinion");
  const choices: Choice[] = [];
  for (const [kind, { ground, rank }] of proposed) {
    const framed = frame(kind, clause, before, context);
    if (framed === undefined || framed.facts.length === 0) continue;
    const p = Math.max(0.002, Math.sqrt((opinion.get(kind) ?? 0.01) * (line.get(kind) ?? 0.01)));
    const cost = groundCost[ground] + 0.25 * rank - 0.8 * Math.log(p) + (framed.borrowed ? 0.4 : 0);
    choices.push({ clause, kind, framed, ground, rank, opinion, cost });
    const counted = countedOnly(framed);
    if (counted !== undefined) choices.push({ clause, kind, framed: counted, ground, rank, opinion, cost: cost + 0.5 });
  }
  choices.sort((a, b) => a.cost - b.cost);
  const kept = choices.slice(0, 7);
  const content =
    verbs.some(({ weak }) => !weak) || clause.mentions.some(({ type }) => type === "amount" || type === "cause");
  const story = Math.max(0.02, opinion.get("story") ?? 0.5);
  kept.push({
    clause,
    rank: 0,
    opinion,
    cost: (content && plants ? 1.2 : content ? 0.6 : 0.2) - 0.4 * Math.log(story),
  });
  return kept;
}

/** "1.1 kg of tomatoes, in a drawer with a banana": what has no amount beside something that has one may be told of in passing. */
function countedOnly(framed: Framed): Framed | undefined {
  const counted = framed.facts.filter(({ count, grams, litres }) => (count ?? grams ?? litres) !== undefined);
  if (counted.length === 0 || counted.length === framed.facts.length) return undefined;
  const isTold = (one: Mention) =>
    one.type !== "plant" ||
    counted.some(
      (fact) =>
        fact.crop === one.crop &&
        fact.variety === one.variety &&
        (one.variety ?? fact.title ?? one.title) === (one.variety ?? one.title),
    );
  return { ...framed, facts: counted, used: new Set([...framed.used].filter(isTold)) };
}

const notKinds = new Set(["story", "ask", "correction", "renamed", "fact", "several"]);
const groundCost: Readonly<Record<Ground, number>> = {
  form: 0,
  verb: 0.2,
  before: 0.5,
  "no verb": 0.6,
  "weak verb": 0.9,
  opinion: 1.1,
};

/** Checkboxes, a head with a colon. */
function byForm(text: string, clause: Clause): readonly EventKind[] {
  if (clause.from > 0 && !/^\s*(?:[-*]\s*)?\[/.test(text)) return [];
  if (/^\s*(?:[-*]\s*)?\[ ?\]/.test(text)) return ["to do"];
  if (/^\s*(?:[-*]\s*)?(?:\[[xX✓]\]|DONE\b|[Dd]one:|✓|✔)/.test(text)) return ["done"];
  return [];
}

/** What a clause without a verb may tell of, by what stands in it. */
function withoutVerb(clause: Clause): readonly EventKind[] {
  const kinds: EventKind[] = [];
  const plants = clause.mentions.some(({ type }) => type === "plant");
  const amounts = clause.mentions.filter((one): one is AmountMention => one.type === "amount");
  const uses = new Set(amounts.map(({ use }) => use));
  if (uses.has("ph")) kinds.push("soil test");
  if (plants && (uses.has("mass") || uses.has("pieces") || uses.has("volume"))) kinds.push("picked");
  if (plants && uses.has("vessel")) kinds.push("preserved", "picked", "sowed");
  if (plants && uses.has("share")) kinds.push("up");
  if (plants && clause.mentions.some((one) => one.type === "stand")) kinds.push("sowed");
  if (clause.mentions.some(({ type }) => type === "cause")) kinds.push("trouble", "lost");
  if (clause.mentions.some(({ type }) => type === "gear")) kinds.push("put up");
  if (plants && uses.has("length")) kinds.push("measured");
  if (plants && uses.has("count")) kinds.push("planted", "sowed", "picked");
  if (plants && uses.has("spacing")) kinds.push("planted");
  return kinds;
}

const fromSomebody = /\b(?:off|from|ex|via|courtesy of|gift of) (?:\p{Lu}|my |our |the |a |an |mum|mam|dad|nan)/u;
const toSomebody = /\b(?:to|for) (?:\p{Lu}|my |our |the |mum|mam|dad|nan|next door)/u;

/** What came from somebody, went to somebody, went from bed to bed, or is over, where no verb says so. */
function byOtherWords(clause: Clause, words: readonly Word[]): readonly EventKind[] {
  const kinds: EventKind[] = [];
  const has = (type: Mention["type"]) => clause.mentions.some((one) => one.type === type);
  const said = textOf(words, clause.from, clause.end);
  const beds = clause.mentions.filter((one): one is BedMention => one.type === "bed");
  if (has("cause") && troubleEnds.test(said) && !/\b(?:so far|yet)\b/.test(said)) kinds.push("cured");
  if (has("plant") && (beds.length > 1 || beds.some(({ role }) => role === "to"))) kinds.push("moved");
  if ((has("plant") || has("gear")) && fromSomebody.test(said)) kinds.push("acquired");
  if (has("plant") && toSomebody.test(said)) kinds.push("gave away");
  return kinds;
}

export function cuesOf(clause: Clause): readonly CueMention[] {
  return clause.mentions.filter((one): one is CueMention => one.type === "cue");
}
