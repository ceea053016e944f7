/**
 * Titles to choose from, each with the moment whose picture goes with it: what the film is about is the strongest thing that
 * happened in it, never a list. A title is a phrase somebody could say, from facts that were spoken of where they stand; where
 * nothing happened it is the stop with the longest stay.
 */
import { cropOf } from "../crop-of.ts";
import { capital, cropName, sayMonth, theBed, varietyName } from "../language/index.ts";
import type { Garden } from "../model.ts";
import type { FilmFact } from "./film-facts.ts";
import type { FilmHeard } from "./hear-film.ts";
import { moment } from "./moments.ts";
import type { Stretch } from "./stops-heard.ts";
import { viewersEye } from "./viewers-eye.ts";
import type { Thumbnail, TitleOffered } from "./wrap.ts";

/** More is a list again. */
const MOST = 3;
/** Letters beyond which sites cut a title off. */
const LONGEST = 70;
/** Less sure than this that the film is at a bed, and no title says so. */
const SURE = 0.6;

export function titlesOf(
  film: FilmHeard,
  stretches: readonly Stretch[],
  facts: readonly FilmFact[],
  thumbnails: readonly Thumbnail[],
): readonly TitleOffered[] {
  const { garden, episode } = film.day;
  if (film.speech.words.length === 0 || episode.private || garden.settings.private === true) return [];
  const eye = viewersEye(garden);
  const told = facts
    .flatMap((fact) => titleOf(fact, garden).map((one) => ({ ...one, fact })))
    .filter(({ title }) => title.length <= LONGEST && eye.text(title))
    .sort((a, b) => a.rank - b.rank || a.fact.from - b.fact.from);
  // One of each kind: three first pickings are a list.
  const best = [...Map.groupBy(told, ({ fact }) => fact.kind).values()].flatMap(([first]) => first ?? []);
  const offered = best
    .toSorted((a, b) => a.rank - b.rank)
    .slice(0, MOST)
    .map(({ title, fact }): TitleOffered => {
      const photo = photoOf(fact, thumbnails, garden);
      return { title, bed: fact.bed, ...moment(film.speech.words[fact.from]?.at ?? 0), photo };
    });
  return offered.length > 0 ? offered : longestStay(film, stretches, thumbnails);
}

/** Of that bed, and of no other variety than the title is about. */
function photoOf(fact: FilmFact, thumbnails: readonly Thumbnail[], { photos }: Garden): string | undefined {
  const about = (() => {
    if (fact.kind === "side by side") return fact.trial.arms.map(({ variety }) => variety);
    return [fact.kind === "kept promise" ? fact.promise.variety : fact.planting.variety];
  })();
  const { photo, others = [] } = thumbnails.find(({ bed }) => bed === fact.bed) ?? {};
  return [photo, ...others].find((path) => {
    const shown = photos.find((one) => one.path === path)?.varieties;
    return shown?.every((variety) => about.includes(variety));
  });
}

interface Ranked {
  readonly title: string;
  /** The lower, the stronger. */
  readonly rank: number;
}

/** A question answered is what people stay for; then sides compared, what went wrong, what was promised, what is new. */
const ranks = { answer: 0, trial: 1, loss: 2, promise: 3, first: 4 } as const;

function titleOf(fact: FilmFact, garden: Garden): readonly Ranked[] {
  if (fact.kind === "kept promise") return promised(fact.promise.what);
  if (fact.kind === "side by side") {
    const { title } = fact.trial;
    return [{ title: /\bor\b/i.test(title) ? `${title}?` : title, rank: ranks.trial }];
  }
  const variety = garden.varieties.get(fact.planting.variety ?? "");
  const crop = cropOf(garden, fact.planting);
  if (fact.kind === "first picking") {
    const name = crop === undefined ? varietyName(variety, crop) : cropName(crop);
    return [{ title: `The season's first ${name}`, rank: ranks.first }];
  }
  const [cause, ...others] = new Set(fact.changes.map((change) => change.cause?.replace(/^to\s+/i, "")));
  const name = crop === undefined ? variety?.title : cropName(crop);
  // One plant is no story.
  const isOne = fact.changes.every(({ told }) => told.is === "lost" && told.line?.count?.value === 1);
  const doer = isOne || others.length > 0 ? undefined : doers.get(cause?.toLowerCase().replace(/^the\s+/, "") ?? "");
  return doer === undefined || name === undefined
    ? []
    : [{ title: `What the ${doer} did to the ${name}`, rank: ranks.loss }];
}

/** What takes plants, as one speaks of it. */
const doers: ReadonlyMap<string, string> = new Map(
  (
    "slugs snails pigeons mice rats voles rabbits deer birds blackbirds caterpillars aphids frost blight wind gale storm drought heat " +
    "moth rust mildew hail rain cats squirrels gophers possums wallabies kangaroos monkeys earwigs beetles"
  )
    .split(" ")
    .map((word) => [word, word]),
);

/** "Say how close I dared to plant the squash" is "How close I dared to plant the squash". */
const answers =
  /^(?:say|show|tell|explain|find out|see|report)(?: (?:you|viewers|everybody))? ((?:how|what|why|which|where|who)\b.*)$/i;

function promised(what: string): readonly Ranked[] {
  const said = what.trim().replace(/[.\s]+$/, "");
  const answer = answers.exec(said)?.[1];
  if (answer !== undefined) {
    const isAsked = /^(?:which|who)\b/i.test(answer);
    return [{ title: `${capital(answer)}${isAsked ? "?" : ""}`, rank: ranks.answer }];
  }
  // What was promised on a condition, or with more than one thing in it, is said up to there.
  const short = said.split(/,|\s(?:when|if|once|and|as soon as|after|before|because)\s/)[0] as string;
  return doing.test(short) ? [{ title: `I said I would ${short}`, rank: ranks.promise }] : [];
}

/** A promise that begins with what the speaker does. */
const doing =
  /^(?:bring|check|come|compare|count|cut|dig|dry|eat|film|give|go|let|lift|look|make|measure|move|name|net|open|pick|plant|prune|put|save|show|sow|taste|try|weigh)\b/;

function longestStay(
  { speech, day: { garden, day } }: FilmHeard,
  stretches: readonly Stretch[],
  thumbnails: readonly Thumbnail[],
): readonly TitleOffered[] {
  const eye = viewersEye(garden);
  const ends = (index: number) => stretches[index + 1]?.at ?? speech.end;
  const stays = stretches.flatMap(({ bed, at, confidence }, index) =>
    bed === undefined || confidence < SURE || !eye.bed(bed) ? [] : [{ bed, at, length: ends(index) - at }],
  );
  const [longest] = stays.toSorted((a, b) => b.length - a.length);
  const record = garden.beds.get(longest?.bed ?? "");
  if (longest === undefined || record === undefined) return [];
  const title = `${capital(theBed(record))} in ${sayMonth(day, { language: garden.settings.language, near: day })}`;
  const { photo } = thumbnails.find(({ bed }) => bed === longest.bed) ?? {};
  return eye.text(title) ? [{ title, bed: longest.bed, ...moment(longest.at), photo }] : [];
}

export function titleLines(titles: readonly TitleOffered[]): string {
  return titles
    .map(({ title, time, photo }) => {
      const picture = photo === undefined ? "" : `, or ${photo}`;
      return `${title}\nPicture: the film at ${time}${picture}\n`;
    })
    .join("\n");
}
