/**
 * Facts, a question or story: the learned choice among a line's ways, with limits that no learning moves. What is another
 * year's, still to come, only thought of or denied never stands as a fact.
 */
import type { EventKind } from "../../model.ts";
import type { Word } from "../line-words.ts";
import { isMisspeltVerb, kindsOfSlip } from "../unknown-verb.ts";
import { type Candidate, cuesOf, type Weighed } from "./candidates.ts";
import type { Fact } from "./fact.ts";
import { type Add, askFeatures, candidateFeatures, type FormReading } from "./features.ts";
import { type CueKind, isGardenThing, isVerb, ownVerbsOf } from "./mention.ts";

export interface Decision {
  readonly as: "facts" | "question" | "story";
  readonly facts: readonly Fact[];
  /** Of a question: ways to take the line, the likeliest first. */
  readonly offered: readonly (readonly Fact[])[];
}

export interface Thresholds {
  /** Least probability of a way that is taken as facts. */
  readonly facts: number;
  /** The same in a paragraph. */
  readonly prose: number;
  /** Least probability that a line holds no fact, of one that names something of a garden. */
  readonly story: number;
  /** The same in a paragraph. */
  readonly proseStory: number;
  /** The same of one that names nothing. */
  readonly nothing: number;
}

export type ChoiceWeights = Readonly<Record<string, number>>;

export interface Way {
  readonly candidate: Candidate;
  readonly p: number;
}

/** The ways of a line with their probabilities; what is left of 1 is that it should be asked about. */
function waysOf(
  line: Weighed,
  form: FormReading | undefined,
  weights: ChoiceWeights,
): { readonly ways: readonly Way[]; readonly asking: number } {
  const candidates: Candidate[] = [...line.candidates];
  if (form !== undefined && !candidates.some(({ facts }) => sameAs(facts, form.facts)))
    candidates.push({ facts: form.facts, choices: [] });
  const scores = candidates.map((candidate) =>
    scoreOf(weights, (add) => candidateFeatures(candidate, line, form, add)),
  );
  const first = unknownOpening(line);
  const slip = first === undefined ? [] : kindsOfSlip(first);
  for (const [index, candidate] of candidates.entries()) {
    if (tellsOwnVerbs(candidate, line)) scores[index] = (scores[index] as number) + ownVerbWeight;
    if (saysItsMeasure(candidate, line)) scores[index] = (scores[index] as number) + measureWeight;
    // "plantd 3 leeks" is asked about, and what it most likely was is asked first.
    if (candidate.facts.some(({ kind }) => slip.includes(kind)))
      scores[index] = (scores[index] as number) + ownVerbWeight;
  }
  const ask = scoreOf(weights, (add) => askFeatures(line, form, add));
  const top = Math.max(ask, ...scores);
  const powers = scores.map((value) => Math.exp(value - top));
  const asking = Math.exp(ask - top);
  const all = powers.reduce((sum, value) => sum + value, asking);
  const ways = candidates
    .map((candidate, index) => ({ candidate, p: (powers[index] as number) / all }))
    .sort((a, b) => b.p - a.p);
  return { ways, asking: asking / all };
}

/** What the person's own word list says of a verb was their answer once: it outweighs what writers in general mean by it. */
const ownVerbWeight = 3;

function tellsOwnVerbs({ facts }: Candidate, { mentions }: Weighed): boolean {
  const own = ownVerbsOf(mentions);
  return own.length > 0 && own.every(({ kinds }) => facts.some(({ kind }) => kinds.includes(kind)));
}

/** A height said to be one, stems or bunches of what was cut: a measure tells more of what was done than the words around it. */
const measureWeight = 3;
const cutting = /^(?:cut|cuts|picked|harvested|pulled|dug|lifted|gathered|taken)$/;
const height = /^(?:tall|high|height)$/;

function saysItsMeasure(
  { facts: [fact, ...more], choices }: Candidate,
  { words, mentions, clauses }: Weighed,
): boolean {
  if (fact === undefined || more.length > 0 || clauses.length > 1) return false;
  if (mentions.filter(({ type }) => type === "plant").length !== 1) return false;
  const said = (pattern: RegExp) => words.some(({ lower }) => pattern.test(lower));
  if (fact.kind === "measured") return fact.heightCm !== undefined && said(height);
  // "Cut back and weighed out", "dug, split and gave away": another thing was done too.
  if (!mentions.filter(isVerb).every(({ kinds }) => kinds.includes("picked"))) return false;
  const isCut = fact.unit === "stem" || fact.unit === "bunch";
  return fact.kind === "picked" && isCut && said(cutting) && choices.length === 1;
}

function sameAs(a: readonly Fact[], b: readonly Fact[]): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}

function scoreOf(weights: ChoiceWeights, tell: (add: Add) => void): number {
  let sum = 0;
  tell((name, value = 1) => {
    if (Object.hasOwn(weights, name)) sum += value * (weights[name] as number);
  });
  return sum / 1000;
}

function isOfTask(fact: Fact | undefined): boolean {
  return fact?.kind === "to do" || fact?.kind === "done";
}

/** Kinds that are said of what is still to come or wanted, so that a word of doubt takes nothing from them. */
const ofTheFuture = new Set<EventKind>(["to do", "promised", "plan", "asked", "done"]);
const stops = new Set<CueKind>(["past", "may", "future"]);
/** Kinds in which another person acts. */
const fromOthers = new Set<EventKind>(["acquired", "asked", "gave away", "sold"]);
/** Kinds that a denial may tell of: "no sign of the beans" is a loss, "no more aphids" a cure. */
const denied = new Set<EventKind>(["lost", "cured", "trouble", "doing", "up", "cleared", "came back"]);

/** Whether a fact stands in a clause that says it was not so, not yet so, or so in another year. */
function isHedged(candidate: Candidate, line: Weighed): boolean {
  const whole = new Set(line.clauses.flatMap((clause) => cuesOf(clause)).map(({ is }) => is));
  if (candidate.choices.every(({ kind }) => kind === undefined))
    return [...whole].some((cue) => stops.has(cue) || cue === "not" || cue === "correction");
  return candidate.choices.some(({ kind, clause }) => {
    if (kind === undefined || ofTheFuture.has(kind)) return false;
    const cues = cuesOf(clause);
    if (cues.some(({ is }) => stops.has(is))) return true;
    // "36 leeks, really 30": which of them it was is asked.
    const puts = cues.find(({ is }) => is === "correction");
    if (puts !== undefined && clause.mentions.some(({ type, from }) => type === "amount" && from >= puts.end))
      return true;
    return cues.some(({ is, from, end }) => {
      // What somebody else did is no fact of this garden, unless it came here.
      if (is === "other" && end - from > 1 && from <= clause.from + 1) return !fromOthers.has(kind);
      if (is !== "not") return false;
      const opens = from <= clause.from + 1;
      // "not an aphid left" and "no sign of the beans" tell something, "not lost" and "didn't come up" do not.
      const plain =
        /^(?:not|didnt|dont|doesnt|wasnt|werent|isnt|arent|havent|hasnt|couldnt|didnae)$/.test(
          line.words[from]?.lower ?? "",
        ) &&
        !/^an?$/.test(line.words[end]?.lower ?? "") &&
        end === from + 1;
      if (denied.has(kind)) return plain && (opens || governs(clause.mentions, end));
      return opens || governs(clause.mentions, end);
    });
  });
}

/** Whether a fact is put together from more than the line says: its kind from elsewhere than its verb, a move without its way. */
function isGuessed(candidate: Candidate, line: Weighed): boolean {
  // The written form alone says it.
  if (candidate.choices.every(({ kind }) => kind === undefined)) return false;
  // "yesterday, the Aquadulce, cleared": what was done stands apart from its plant.
  const isGuess = candidate.choices.some(
    ({ kind, ground }) => kind !== undefined && ground !== "verb" && ground !== "form",
  );
  const passesOver = candidate.choices.some(({ kind, clause }) => kind === undefined && clause.mentions.some(isVerb));
  if (isGuess && (passesOver || opensWithSlip(line))) return true;
  // Between two beds a move has a way.
  const beds = line.mentions.filter(({ type }) => type === "bed").length;
  if (beds > 1 && candidate.facts.some(({ kind, toBed }) => kind === "moved" && toBed === undefined)) return true;
  return candidate.choices.some(({ kind, clause, ground, opinion }) => {
    if (kind === undefined) return false;
    // Work on a thing, or a cure of nobody knows what, is asked about.
    if (kind === "did" || kind === "cured")
      if (!clause.mentions.some(({ type }) => type === "plant" || type === "bed" || type === "cause")) return true;
    // What only the opinion thinks of may be right, and is asked; so is what the clause's verb does not say, unless the opinion is sure.
    if (ground === "opinion") return true;
    return ground !== "form" && (opinion.get(kind) ?? 0) < 0.8 && saysOther(clause.mentions, kind);
  });
}

/** The word a line opens with, where it is nothing that is known: "plnated 4 leeks". */
function unknownOpening({ words: [first], mentions }: Weighed): Word | undefined {
  return mentions.some(({ from }) => from === 0) ? undefined : first;
}

/** What was done is likely then, and still a guess. */
function opensWithSlip(line: Weighed): boolean {
  const first = unknownOpening(line);
  return first !== undefined && isMisspeltVerb(first);
}

/** Whether the clause has verbs, and none of them says this. */
function saysOther(mentions: Candidate["choices"][number]["clause"]["mentions"], kind: EventKind): boolean {
  const verbs = mentions.filter(isVerb);
  return verbs.length > 0 && !verbs.some(({ kinds }) => kinds.includes(kind));
}

/** A denial stands right before what was done: "didn't sow". */
function governs(mentions: Candidate["choices"][number]["clause"]["mentions"], end: number): boolean {
  return mentions.some((one) => one.type === "verb" && one.from >= end && one.from <= end + 2);
}

export function decide(
  line: Weighed,
  form: FormReading | undefined,
  weights: ChoiceWeights,
  limits: Thresholds,
  { prose, isTask }: { readonly prose: boolean; readonly isTask: boolean },
): Decision {
  const { ways, asking } = waysOf(line, form, weights);
  const task = isTask ? ways.find(({ candidate: { facts } }) => facts.length === 1 && isOfTask(facts[0])) : undefined;
  if (task !== undefined) return { as: "facts", facts: task.candidate.facts, offered: [] };
  const none = ways.find(({ candidate }) => candidate.facts.length === 0)?.p ?? 0;
  const names = line.mentions.some(isGardenThing);
  if (none >= (names ? (prose ? limits.proseStory : limits.story) : limits.nothing))
    return { as: "story", facts: [], offered: [] };
  const [first] = ways.filter(({ candidate }) => candidate.facts.length > 0);
  const bar = prose ? limits.prose : limits.facts;
  const stands = (way: Candidate) => !isHedged(way, line) && !isGuessed(way, line);
  // What names nothing of a garden may be anything.
  if (first !== undefined && first === ways[0] && first.p >= bar && names && stands(first.candidate))
    return { as: "facts", facts: first.candidate.facts, offered: [] };
  const offered = ways.filter(({ candidate }) => candidate.facts.length > 0).slice(0, 3);
  if (offered.length === 0)
    return { as: names && !prose && asking > none ? "question" : "story", facts: [], offered: [] };
  return { as: "question", facts: [], offered: offered.map(({ candidate }) => candidate.facts) };
}
