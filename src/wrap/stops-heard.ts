/**
 * Which stop is when: the speech cut into stretches, each at one bed, by dynamic programming over its phrases.
 *
 * A phrase scores for a bed by what in it speaks for that bed, and a little by what was said just before. Going from one
 * bed to another costs; less when the plan has it next, when the speaker turns to it in so many words, or after a breath.
 * The best way through all phrases is the cut; stop-ways.ts finds it, and how sure each of its turns is.
 */
import type { Phrase } from "./phrases.ts";
import { type PlaceHeard, phraseOf } from "./places-heard.ts";
import type { Word } from "./spoken-words.ts";
import { bestWay, type Moves, sureness } from "./stop-ways.ts";
import { inWords } from "./word-ranges.ts";

export interface Stretch {
  /** Bed id; undefined before the first bed, after the last, and between. */
  readonly bed: string | undefined;
  /** Words, the last one excluded. */
  readonly from: number;
  readonly to: number;
  /** Milliseconds at which it begins. */
  readonly at: number;
  /** From 0 to 1: that the film turns here, give or take a phrase. 1 for the beginning, and for times the person gave. */
  readonly confidence: number;
  /** Words it rests on, the first that speak for it. */
  readonly restsOn: readonly string[];
}

/** Less sure than this that the film turns to a bed, the turn is a guess: it is told as one, and nothing is made of it. */
export const SURE_OF_A_TURN = 0.35;

/** The stretches with guesses left open: what is said there is said at no bed that is known. */
export function withoutGuesses(stretches: readonly Stretch[]): readonly Stretch[] {
  return stretches.map((one) => (isGuess(one) ? { ...one, bed: undefined, restsOn: [] } : one));
}

export function isGuess({ bed, confidence }: Stretch): boolean {
  return bed !== undefined && confidence < SURE_OF_A_TURN;
}

export interface StopsRequest {
  readonly words: readonly Word[];
  readonly phrases: readonly Phrase[];
  readonly places: readonly PlaceHeard[];
  /** Beds in the order of the plan. */
  readonly plan: readonly string[];
  /** Stops the person has timed. */
  readonly times?: readonly TimedStop[] | undefined;
}

/** `at` in milliseconds. */
export interface TimedStop {
  readonly bed: string;
  readonly at: number;
}

/** Costs of going from bed to bed, in the same units as the words' weights. */
const turn = {
  any: 4.2,
  next: -1.4,
  later: -0.4,
  back: 0.6,
  unplanned: 1.6,
  leave: 1.2,
  arrive: -1.2,
  start: 2.5,
} as const;
/** What makes a turn cheaper where a phrase begins so. */
const opening = { turning: -1.1, breath: -0.5, named: -0.8 } as const;
/** A turn to a bed for which neither this phrase nor the next says anything. */
const UNHEARD = 0.8;
/** Words of leave-taking make it cheap to be at no bed any more. */
const FAREWELL = 3.5;
/** A bed never planned takes part when the speech says so much for it. */
const WORTH_A_STATE = 4;
const MOST_STATES = 60;
/** Share of what was said that goes on speaking for its bed, and milliseconds in which that fades to a third. */
const LINGERS = 0.25;
const FADES = 8000;
/** A phrase at no bed at all scores so much: more before the first bed has been heard of plainly than after it. */
const NOWHERE_YET = 0.35;
const NOWHERE = 0.05;
const PLAINLY = 1.5;

const turning =
  /^(?:right |so |and |now |ok |okay |well |then |but |um |uh )*(?:now|next|first|(?:ill|well|we) (?:begin|start)|here(?:s| is| are| we)|this is|these are|and this|and these|over here|down here|and down|down in|up here|in here|along here|beside|on to|onto|moving on|lets|come|the last|and the last|last of all|and the |in the |south |north |east |west )/;
const closing =
  /^(?:right |so |and |well |now |but |um |uh )*(?:thats (?:it|us|the|all)|thank|thanks|see you|ill see you|mind the|have a|bye|goodbye|until next|till next)/;

/** What a time the person gave for a stop says for its bed. */
const OWN_TIME = 12;

/** `howSure` false: only which bed is where, for which half the work is enough; each confidence is 1 then. */
export function stopsHeard(asked: StopsRequest, howSure = true): readonly Stretch[] {
  const { words, phrases, times = [] } = asked;
  if (words.length === 0) return [];
  const anchors = times.flatMap(({ bed, at }): PlaceHeard[] => {
    const word = words.findIndex((one) => one.at >= at);
    return word < 0 ? [] : [{ word, to: word, text: "the time in the record", beds: new Map([[bed, OWN_TIME]]) }];
  });
  const request = { ...asked, places: [...asked.places, ...anchors].sort((a, b) => a.word - b.word) };
  const { places } = request;
  if (times.length > 0 && request.plan.every((bed) => times.some((one) => one.bed === bed))) return timed(asked, times);
  const states = statesOf(request);
  const scores = scoresOf(request, states);
  const moves = movesOf(request, states, scores.said);
  const path = bestWay(phrases.length, states.length, scores.all, moves);
  const sure = howSure ? sureness(phrases.length, states.length, scores.all, moves, path) : undefined;
  const stretches: Stretch[] = [];
  let first = 0;
  for (let at = 1; at <= path.length; at += 1) {
    if (at < path.length && path[at] === path[first]) continue;
    const bed = states[path[first] as number];
    const from = (phrases[first] as Phrase).from;
    const to = at < path.length ? (phrases[at] as Phrase).from : words.length;
    stretches.push({
      bed,
      from,
      to,
      at: (phrases[first] as Phrase).at,
      confidence:
        first === 0 || sure === undefined ? 1 : surenessOf(sure.turns[first] as number, sure.there.subarray(first, at)),
      restsOn: bed === undefined ? [] : namedThere(places, bed, from, to),
    });
    first = at;
  }
  return arrivals(stretches, request);
}

/** How sure some phrase of a stretch must be of its bed, so that it does not matter at which phrase just the film turned to it. */
const NO_OTHER_BED = 0.9;

function surenessOf(turned: number, there: Float64Array): number {
  const mean = there.reduce((sum, one) => sum + one, 0) / there.length;
  return there.some((one) => one >= NO_OTHER_BED) ? Math.max(turned, mean) : Math.min(turned, mean);
}

/** Milliseconds after which a bed that is named at last was not there before, and by which it may be named late. */
const NAMED_LATE = 8000;
const NAMED_STILL = 45_000;
/** How plainly words are a bed's own name. */
const OWN_NAME = 4;

/** Plants of a bed spoken of on the way to it do not make the arrival: that is where the bed is named. */
function arrivals(stretches: readonly Stretch[], { words, phrases, places }: StopsRequest): readonly Stretch[] {
  const begins = stretches.map(({ bed, from, to, at }, index) => {
    if (bed === undefined || index === 0 || opensWithTurn(words, from)) return from;
    const named = inWords(places, ({ word }) => word, from, to).find(({ beds }) => (beds.get(bed) ?? 0) >= OWN_NAME);
    const phrase = named === undefined ? undefined : phrases[phraseOf(phrases, named.word)];
    const late = phrase === undefined ? 0 : phrase.at - at;
    return phrase !== undefined && phrase.from > from && late > NAMED_LATE && late < NAMED_STILL ? phrase.from : from;
  });
  return stretches.map((one, index) => {
    const from = begins[index] as number;
    const at = from === one.from ? one.at : (words[from] as Word).at;
    return { ...one, from, to: begins[index + 1] ?? one.to, at };
  });
}

function opensWithTurn(words: readonly Word[], from: number): boolean {
  const first = words.slice(from, from + 8).map(({ plain }) => plain);
  return turning.test(`${first.join(" ")} `);
}

/** Every planned stop has the person's own time: there is nothing to find out. */
function timed({ words, places }: StopsRequest, times: readonly TimedStop[]): readonly Stretch[] {
  const inOrder = [...times].sort((a, b) => a.at - b.at);
  const first = (ms: number) => {
    const found = words.findIndex(({ at }) => at >= ms);
    return found < 0 ? words.length : found;
  };
  const begins = [
    ...((inOrder[0]?.at ?? 0) > 0 ? [{ bed: undefined, at: 0 }] : []),
    ...inOrder.map(({ bed, at }) => ({ bed: bed as string | undefined, at })),
  ];
  return begins.map(({ bed, at }, index) => {
    const [from, to] = [index === 0 ? 0 : first(at), first(begins[index + 1]?.at ?? Number.POSITIVE_INFINITY)];
    const restsOn = bed === undefined ? [] : namedThere(places, bed, from, to);
    return { bed, from, to, at, confidence: 1, restsOn };
  });
}

/** The first words of a stretch that speak for its bed. */
function namedThere(places: readonly PlaceHeard[], bed: string, from: number, to: number): readonly string[] {
  const here = inWords(places, ({ word }) => word, from, to).filter(({ beds }) => (beds.get(bed) ?? 0) > 0);
  return [...new Set(here.slice(0, 4).map(({ text }) => text))];
}

/** Nowhere first, then the planned beds in order, then others that much speaks for. */
function statesOf({ places, plan }: StopsRequest): readonly (string | undefined)[] {
  const sums = new Map<string, number>();
  for (const { beds } of places) for (const [bed, weight] of beds) sums.set(bed, (sums.get(bed) ?? 0) + weight);
  const others = [...sums]
    .filter(([bed, sum]) => sum >= WORTH_A_STATE && !plan.includes(bed))
    .sort((a, b) => b[1] - a[1] || (a[0] < b[0] ? -1 : 1))
    .slice(0, MOST_STATES)
    .map(([bed]) => bed);
  return [undefined, ...new Set(plan), ...others];
}

/** Of every phrase at every state, row by row: what it says itself, and with what lingers. */
interface Scores {
  readonly said: Float64Array;
  readonly all: Float64Array;
}

function scoresOf({ phrases, places }: StopsRequest, states: readonly (string | undefined)[]): Scores {
  const count = states.length;
  const index = new Map(states.map((bed, at) => [bed, at]));
  const scores = new Float64Array(phrases.length * count);
  const said = new Float64Array(phrases.length * count);
  for (const { word, beds } of places) {
    const row = phraseOf(phrases, word) * count;
    for (const [bed, weight] of beds) {
      const at = index.get(bed);
      if (at !== undefined) said[row + at] = (said[row + at] as number) + weight;
    }
  }
  const lingering = new Float64Array(count);
  const first = places.find(({ beds }) => [...beds.values()].some((weight) => weight >= PLAINLY));
  const begins = first === undefined ? phrases.length : phraseOf(phrases, first.word);
  phrases.forEach(({ at }, phrase) => {
    // Captions may stand out of order; time that went backwards has not passed.
    const passed = Math.max(0, at - (phrases[phrase - 1]?.at ?? at));
    const fade = Math.exp(-passed / FADES);
    for (let state = 0; state < count; state += 1) {
      const now = said[phrase * count + state] as number;
      const before = (lingering[state] as number) * fade;
      scores[phrase * count + state] = state === 0 ? (phrase < begins ? NOWHERE_YET : NOWHERE) : now + before;
      lingering[state] = before * 0.5 + LINGERS * now;
    }
  });
  return { said, all: scores };
}

function movesOf(
  { words, phrases, places, plan }: StopsRequest,
  states: readonly (string | undefined)[],
  said: Float64Array,
): Moves {
  const count = states.length;
  const order = new Map(plan.map((bed, at) => [bed, at]));
  const between = new Float64Array(count * count);
  states.forEach((from, a) => {
    states.forEach((to, b) => {
      if (a === b) return;
      let cost = turn.any as number;
      const [here, there] = [from === undefined ? -1 : order.get(from), to === undefined ? undefined : order.get(to)];
      if (to === undefined) cost += turn.leave;
      else if (there === undefined) cost += turn.unplanned;
      else if (here === undefined) cost += 0;
      else if (there === here + 1) cost += turn.next;
      else cost += there > here ? turn.later : turn.back;
      if (from === undefined) cost += turn.arrive;
      between[a * count + b] = -cost;
    });
  });
  const at = new Float64Array(phrases.length * count);
  const named = new Set(
    places
      .filter(({ beds }) => [...beds.values()].some((weight) => weight >= 4))
      .map(({ word }) => phraseOf(phrases, word)),
  );
  phrases.forEach(({ from, to }, phrase) => {
    const text = `${words
      .slice(from, Math.min(to, from + 8))
      .map(({ plain }) => plain)
      .join(" ")} `;
    const before = words[from - 1];
    const paused = before !== undefined && (words[from] as Word).at - before.at > 900 + 60 * before.plain.length;
    let ease = paused ? -opening.breath : 0;
    if (turning.test(text)) ease -= opening.turning;
    if (named.has(phrase)) ease -= opening.named;
    for (let state = 1; state < count; state += 1) {
      const here = phrase * count + state;
      at[here] = (said[here] as number) + (said[here + count] ?? 0) > 0 ? ease : -UNHEARD;
    }
    at[phrase * count] = closing.test(text) ? FAREWELL : 0;
  });
  return { between, at, start: turn.start };
}
