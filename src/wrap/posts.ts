/**
 * Texts that go out beside the film: a comment to pin under it, a post, a newsletter. All from the same public facts, with the
 * notices that viewers are owed first, since these texts are read without the description.
 */
import { countWords } from "../films/index.ts";
import { noticesOf, sayDay, sayList, theBed } from "../language/index.ts";
import { topLines } from "./disclosures.ts";
import { SURE } from "./fact-check.ts";
import { factSentences } from "./fact-words.ts";
import type { FilmFact } from "./film-facts.ts";
import type { FilmHeard } from "./hear-film.ts";
import { varietiesOnScreen, varietyLine, varietySaid } from "./variety-lines.ts";
import { type ViewersEye, viewersEye } from "./viewers-eye.ts";
import type { Disclosure, Wrap } from "./wrap.ts";

export interface PostsRequest {
  readonly film: FilmHeard;
  readonly facts: readonly FilmFact[];
  readonly disclosures: readonly Disclosure[];
}

export type Posts = Pick<Wrap, "pinnedComment" | "post" | "newsletter">;

const QUESTIONS = "Is there one you would like to know more about? Ask below: I read every question.";
/** Letters of a post. */
const POST = 280;
/** Words of a newsletter's text beyond which varieties are left to the film's own list. */
const WORDS = 150;
/** Sentences of what happened, and beds by name, in a newsletter. */
const HAPPENED = 3;
const BEDS = 4;
/** Words that varieties get however much else there is to say. */
const FEW = 30;

export function postsOf(request: PostsRequest): Posts {
  const { garden, episode } = request.film.day;
  // Without captions nobody knows what was on screen.
  if (request.film.speech.words.length === 0 || episode.private || garden.settings.private === true) return {};
  return { pinnedComment: pinnedComment(request), post: post(request), newsletter: newsletter(request) };
}

function pinnedComment({ film, disclosures }: PostsRequest): string | undefined {
  const { garden } = film.day;
  const seen = varietiesOnScreen(film);
  if (seen.length === 0) return undefined;
  const ids = new Set(seen.map(({ variety }) => variety.id));
  const listed = disclosures.filter(({ kind, record }) => kind === "variety" && ids.has(record));
  const lines = seen.map(({ variety, time }) => varietyLine(varietySaid(garden, variety, disclosures), time));
  return text([
    ...topLines(listed, noticesOf(garden.settings)),
    "What you saw, and where it came from:",
    ...lines,
    QUESTIONS,
  ]);
}

/** These texts have no link to buy by; where they lead, the notice of it stands first. */
function notices({ film, disclosures }: PostsRequest): readonly string[] {
  const owed = disclosures.filter(({ obtained }) => obtained !== "commission link");
  return topLines(owed, noticesOf(film.day.garden.settings));
}

function sentences({ film, facts }: PostsRequest): readonly string[] {
  const { garden } = film.day;
  return factSentences(facts, garden).filter(viewersEye(garden).text);
}

/** Undefined where the notices alone leave no room: a post without them would be worse than none. */
function post(request: PostsRequest): string | undefined {
  const { title, link } = request.film.day.episode;
  const ending = link === undefined ? title : `${title}: ${link}`;
  const fits = (lines: readonly string[]) => lines.join("\n").length <= POST;
  const top = notices(request);
  if (!fits([...top, ending])) return undefined;
  let told = "";
  for (const sentence of sentences(request)) {
    const more = told === "" ? sentence : `${told} ${sentence}`;
    if (fits([...top, more, ending])) told = more;
  }
  return text([...top, ...(told === "" ? [] : [told]), ending]);
}

function newsletter(request: PostsRequest): string {
  const { garden, episode } = request.film.day;
  const eye = viewersEye(garden);
  const top = notices(request).join("\n");
  const happened = sentences(request).slice(0, HAPPENED).join(" ");
  const owed = episode.promised.flatMap(({ what, bed }) =>
    (bed === undefined || eye.bed(bed)) && eye.text(what) ? [what.trim().replace(/[.\s]+$/, "")] : [],
  );
  const next = owed.length === 0 ? "" : `What I promised for later: ${owed.join("; ")}.`;
  const watch = episode.link === undefined ? QUESTIONS_BY_LETTER : `The film: ${episode.link}\n${QUESTIONS_BY_LETTER}`;
  const before = [episode.title, top, happened, walked(request.film, eye)];
  const after = [next, watch];
  const room = WORDS - countWords([...before, ...after].join(" "));
  return `${[...before, whereFrom(request, room), ...after].filter((one) => one !== "").join("\n\n")}\n`;
}

function walked({ day: { garden, day }, stretches }: FilmHeard, eye: ViewersEye): string {
  const sure = stretches.filter(({ confidence }) => confidence >= SURE);
  const beds = [...new Set(sure.flatMap(({ bed }) => bed ?? []))].flatMap((id) => {
    const bed = garden.beds.get(id);
    return bed === undefined || !eye.bed(id) ? [] : [theBed(bed)];
  });
  const named = beds.length > BEDS + 1 ? [...beds.slice(0, BEDS), "more"] : beds;
  const filmed = `Filmed on ${sayDay(day, { language: garden.settings.language })} in ${garden.settings.name}.`;
  return beds.length === 0 ? filmed : `${filmed} The walk goes by ${sayList(named)}.`;
}

/** As many of the varieties that were on screen as there is room for, in words. */
function whereFrom({ film, disclosures }: PostsRequest, words: number): string {
  const seen = varietiesOnScreen(film).map(({ variety }) => variety);
  const told: string[] = [];
  let room = Math.max(words, FEW) - countWords(WHERE_FROM);
  // A commission is told beside its link, and no link to buy by stands here.
  for (const variety of seen.filter(({ source }) => source?.obtained !== "commission link")) {
    const { name, from } = varietySaid(film.day.garden, variety, disclosures);
    const one = from === undefined ? name : `${name} (${from})`;
    room -= countWords(one);
    if (room < 0) break;
    told.push(one);
  }
  const rest = seen.length > told.length ? " All stand under the film, with their times." : "";
  return told.length === 0 ? "" : `${WHERE_FROM} ${told.join("; ")}.${rest}`;
}

const WHERE_FROM = "On screen, with where they came from:";
const QUESTIONS_BY_LETTER = "Ask under the film which variety is which, or where one came from: I read every question.";

function text(lines: readonly string[]): string {
  return `${lines.join("\n")}\n`;
}
