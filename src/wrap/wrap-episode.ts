/** Makes the wrap of one episode from its captions, the garden and the brief; each of the last two may be missing parts. */

import { noticesOf } from "../language/index.ts";
import type { Episode, Garden, PlannedTour, Problem } from "../model.ts";
import { problem, sortProblems } from "../records/index.ts";
import { answersOf, questionsFor } from "./answers.ts";
import { beforeUpload } from "./before-upload.ts";
import { grewTooFull } from "./captions-fit.ts";
import { chaptersOf } from "./chapters.ts";
import { promisesSettled } from "./claims/promises-settled.ts";
import { type CleanCaptions, cleanCaptions } from "./clean-captions.ts";
import { correctedFile, type NameToSet, namesToSet, wordsSetRight } from "./corrections.ts";
import { coverageOf } from "./coverage.ts";
import { descriptionOf, USUAL_LIMIT } from "./description.ts";
import { disclosuresOf } from "./disclosures.ts";
import { earlierMentioned } from "./earlier-mentioned.ts";
import { endCards } from "./end-cards.ts";
import { factSentences } from "./fact-words.ts";
import { factsChecked } from "./facts-checked.ts";
import { filmFacts } from "./film-facts.ts";
import { type FilmingDay, filmingDay } from "./filming-day.ts";
import { type FilmHeard, hearFilm } from "./hear-film.ts";
import type { GlossaryWord } from "./known-names.ts";
import { moment } from "./moments.ts";
import { APPLY_FROM } from "./names-heard.ts";
import { noticesSpoken } from "./notices-spoken.ts";
import { type CaptionFile, openCaptions } from "./open-captions.ts";
import { phrasesOf, textOf } from "./phrases.ts";
import { postsOf } from "./posts.ts";
import { privateAloud } from "./private-aloud.ts";
import { promisesHeard } from "./promises-heard.ts";
import { questionsHeard } from "./questions-heard.ts";
import { readCaptions } from "./read-captions.ts";
import { shortsOf } from "./shorts.ts";
import { isGuess, type Stretch } from "./stops-heard.ts";
import { thumbnailsOf } from "./thumbnails.ts";
import { titlesOf } from "./titles.ts";
import { viewersEye } from "./viewers-eye.ts";
import { stretchAt } from "./word-ranges.ts";
import type { FollowUpProposed, Paragraph, StopHeard, Wrap } from "./wrap.ts";

export interface WrapRequest {
  readonly garden: Garden;
  readonly episode: Episode;
  /** The caption file's name and bytes; without it the wrap is what the records alone can give. */
  readonly captions?: { readonly file: string; readonly bytes: Uint8Array } | undefined;
  /** What was planned, as it was kept; else a brief made anew. */
  readonly brief?: PlannedTour | undefined;
  readonly glossary?: readonly GlossaryWord[] | undefined;
  readonly comments?: { readonly file: string; readonly text: string } | undefined;
  /** Longest description, in UTF-16 units. */
  readonly limit?: number | undefined;
  /** How long the film lasts, seconds, when it is known. */
  readonly length?: number | undefined;
}

export interface WrapMade {
  readonly wrap: Wrap;
  /** The caption file's text with the names set right; undefined without captions. */
  readonly corrected?: string | undefined;
  /** Captions to upload, where those of the file roll or are only paragraphs with times. */
  readonly clean?: CleanCaptions | undefined;
  /** Form in which captions were given, and so are corrected. */
  readonly format?: CaptionFile["format"] | undefined;
}

export function wrapEpisode(request: WrapRequest): WrapMade {
  const { garden, episode, captions } = request;
  const { told, film, right, names, file, plan, stops, facts } = listened(request);
  const { speech, stretches, day } = film;
  const { length, chapters, noChapters, coverage, description, disclosures, transcript, earlier } = told;
  const aloud = privateAloud(right);
  const thumbnails = thumbnailsOf(garden, episode.day, stretches);
  const wrap: Omit<Wrap, "beforeUpload"> = {
    episode: episode.id,
    title: episode.title,
    day: episode.day,
    captions: captions?.file,
    length,
    chapters,
    noChapters,
    coverage,
    corrections: names.map(({ correction }) => correction),
    followUps: followUps(film, right, episode),
    questions: questionsHeard(right, stretches),
    ...factsChecked(film, stretches),
    description,
    disclosures,
    shorts: shortsOf(right, stretches, facts, aloud),
    ...postsOf({ film: right, facts, disclosures }),
    titles: titlesOf(right, stretches, facts, thumbnails),
    endCards: endCards(earlier, garden),
    stops: stopsOf(film.turns, plan, speech.end),
    answers: answersOf(day, questionsFor(day, request.comments)),
    thumbnails: stretches.length > 0 ? thumbnails : thumbnailsOf(garden, episode.day, stops),
    transcript,
    earlier,
    noticesSpoken: noticesSpoken(right, disclosures, noticesOf(garden.settings)),
    privateAloud: aloud,
    problems: sortProblems([...(file?.problems ?? []), ...anotherFilm(film, captions?.file, names)]),
  };
  const corrected =
    file === undefined || file.cues.length === 0
      ? undefined
      : correctedFile(file.original, file.cues, speech.words, names);
  const clean =
    file !== undefined && file.cues.length > 0 && (speech.rolling || file.format === "timed text")
      ? cleanCaptions(film, right.speech.words, names, file.cues)
      : undefined;
  const tooFull =
    corrected === undefined || speech.rolling || file === undefined
      ? []
      : grewTooFull(file.cues, readCaptions(file.file, corrected.replace(/^\uFEFF/, "").replace(/\r\n?/g, "\n")).cues);
  const checks = beforeUpload({
    wrap,
    tooFull,
    fast: clean?.fast ?? [],
    captionsEnd: speech.end,
    isLengthKnown: request.length !== undefined,
  });
  return { wrap: { ...wrap, beforeUpload: checks }, corrected, clean, format: file?.format };
}

/** What a film's own page shows. The rest of a wrap is for the person who made it, and takes as long again. */
export type FilmTold = Pick<
  Wrap,
  "length" | "chapters" | "noChapters" | "coverage" | "description" | "disclosures" | "transcript" | "earlier"
>;

export function filmTold(request: WrapRequest): FilmTold {
  return listened(request).told;
}

function listened(request: WrapRequest) {
  const { garden, episode, brief, captions } = request;
  const length = request.length === undefined ? undefined : request.length * 1000;
  const file = captions === undefined ? undefined : openCaptions(captions.file, captions.bytes, length);
  const day = filmingDay(garden, episode);
  const plan = planOf(episode, brief);
  const speech = file?.speech ?? openCaptions("", new Uint8Array()).speech;
  const film = hearFilm({ speech, day, plan, glossary: request.glossary, times: timesOf(episode) });
  const names = namesToSet(film, file?.cues ?? []);
  const right: FilmHeard = { ...film, speech: { ...speech, words: wordsSetRight(speech.words, names) } };
  const { stretches } = film;
  const coverage = coverageOf({ film, stretches, plan, brief, filming: episode.filming });
  const { chapters, none } = chaptersOf(film, stretches);
  const shown = bedsShown(stretches, plan, day);
  const stops = stretches.length > 0 ? stretches : shown.map((bed) => ({ ...nowhere, bed }));
  const disclosures = disclosuresOf(film, varietiesIn(coverage, shown, day), gearIn(film, shown));
  const earlier = earlierMentioned(film);
  const facts = filmFacts(film, stretches);
  const description = descriptionOf({
    film,
    stretches: stops,
    chapters,
    coverage,
    disclosures,
    earlier: earlier.map((one) => one.episode),
    brief,
    happened: factSentences(facts, garden).filter(viewersEye(garden).text),
    limit: request.limit ?? USUAL_LIMIT,
  });
  const told: FilmTold = {
    length: moment(length ?? speech.end).at,
    chapters,
    noChapters: none,
    coverage,
    description,
    disclosures,
    transcript: transcriptOf(right, stretches),
    earlier,
  };
  return { told, film, right, names, file, plan, stops, facts };
}

const nowhere: Stretch = { bed: undefined, from: 0, to: 0, at: 0, confidence: 0, restsOn: [] };

function planOf(episode: Episode, brief: PlannedTour | undefined): readonly string[] {
  const stops = brief?.stops.map(({ bed }) => bed) ?? [];
  return [...new Set(episode.stops.length > 0 ? episode.stops.map(({ bed }) => bed) : stops)];
}

/** Stops that the person has timed in the record. */
function timesOf({ stops }: Episode): readonly { readonly bed: string; readonly at: number }[] {
  return stops.flatMap(({ bed, at }) => (at === undefined ? [] : [{ bed, at: at * 1000 }]));
}

function bedsShown(stretches: readonly Stretch[], plan: readonly string[], { beds }: FilmingDay): readonly string[] {
  const shown = [...new Set(stretches.flatMap(({ bed }) => bed ?? []))];
  return shown.length > 0 ? shown : plan.filter((bed) => beds.has(bed));
}

/** Named ones in order of time, then the silent ones by bed. */
function varietiesIn(coverage: Wrap["coverage"], shown: readonly string[], { beds }: FilmingDay): readonly string[] {
  const alive = shown.flatMap((bed) => (beds.get(bed)?.living ?? []).flatMap(({ variety }) => variety ?? []));
  return [...new Set([...coverage.named.map(({ variety }) => variety), ...alive])];
}

function gearIn({ day, names }: FilmHeard, shown: readonly string[]): readonly string[] {
  const standing = shown.flatMap((bed) => day.beds.get(bed)?.state.gear ?? []);
  const named = names.flatMap(({ name, confidence }) =>
    name.kind === "gear" && confidence >= APPLY_FROM ? [name.record] : [],
  );
  return [...new Set([...standing, ...named])];
}

/** Seconds by which a promise in the record may be timed otherwise and still be the one heard. */
const SAME_PROMISE = 12;

function followUps(film: FilmHeard, right: FilmHeard, episode: Episode): readonly FollowUpProposed[] {
  const settled = promisesSettled(film);
  return promisesHeard(film).map((promise, index) => {
    const { at, time } = moment(promise.at);
    const { kept, putsOff } = settled.get(promise) ?? {};
    return {
      number: index + 1,
      at,
      time,
      said: textOf(right.speech.words, promise.from, promise.to),
      what: promise.what,
      bed: promise.bed,
      due: promise.due,
      rule: promise.rule,
      confidence: promise.confidence,
      ...(kept === undefined ? {} : { kept: moment(kept) }),
      ...(putsOff === undefined ? {} : { putsOff }),
      recorded: episode.promised.some((one) => one.at !== undefined && Math.abs(one.at - at) <= SAME_PROMISE),
    };
  });
}

function stopsOf(stretches: readonly Stretch[], plan: readonly string[], end: number): readonly StopHeard[] {
  return stretches.map((stretch, index) => {
    const { bed, at, confidence, restsOn } = stretch;
    return {
      ...moment(at),
      bed,
      until: moment(stretches[index + 1]?.at ?? end).at,
      confidence: Math.round(confidence * 100) / 100,
      restsOn,
      planned: bed !== undefined && plan.includes(bed),
      ...(isGuess(stretch) && { guess: true }),
    };
  });
}

/** Paragraphs at most this long, in words, so that a time stands near every word. */
const PARAGRAPH = 60;

function transcriptOf(film: FilmHeard, stretches: readonly Stretch[]): readonly Paragraph[] {
  const { words } = film.speech;
  const starts = new Set(stretches.map(({ from }) => from));
  const paragraphs: Paragraph[] = [];
  let from = 0;
  let length = 0;
  const close = (to: number) => {
    const first = words[from];
    const text = textOf(words, from, to);
    if (first !== undefined && text !== "") {
      const bed = stretchAt(stretches, from)?.bed;
      paragraphs.push({ ...moment(first.at), text, bed });
    }
    from = to;
    length = 0;
  };
  for (const phrase of phrasesOf(film.speech)) {
    if (phrase.from > from && (starts.has(phrase.from) || length + phrase.to - phrase.from > PARAGRAPH))
      close(phrase.from);
    length += phrase.to - phrase.from;
  }
  close(words.length);
  return paragraphs;
}

/** Words in which a film of these beds names at least one thing; longer silence about them all means another film. */
const WORDS_A_NAME = 120;
const ENOUGH_WORDS = 150;

function anotherFilm(
  { speech, places, names }: FilmHeard,
  file: string | undefined,
  set: readonly NameToSet[],
): readonly Problem[] {
  const heard = new Set([...places.map(({ text }) => text), ...names.map(({ name }) => name.name)]).size;
  if (file === undefined || speech.words.length < ENOUGH_WORDS || heard * WORDS_A_NAME >= speech.words.length)
    return [];
  const times = heard === 0 ? "nothing" : heard === 1 ? "one thing" : `${heard} things`;
  return [
    problem(
      "captions/another-film",
      { file, line: 1, column: 1 },
      `In ${speech.words.length} words these captions name ${times} of this episode's garden.`,
      set.length > 0
        ? "Check that they belong to this episode."
        : "They may belong to another film: give the right file with --captions.",
    ),
  ];
}
