/** The one set of a recap: its cover, a card for each thread, and the report as their dossier. */
import { allOf, cautionsFor, closingCaution, namesPoison, type Weather } from "../../almanac/index.ts";
import { cropOf } from "../../crop-of.ts";
import { filmLength, makeWording } from "../../films/index.ts";
import { capital, type Sentence, say, sayList, sayNumber } from "../../language/index.ts";
import type { Garden } from "../../model.ts";
import { betweenDays } from "../../order.ts";
import { gatherRecap, type RecapRequest } from "../make-recap.ts";
import type { Material } from "../material.ts";
import { inShort, type ThreadVoice } from "../recap-words/thread-words.ts";
import type { Thread } from "../threads/thread.ts";
import { threadsOf } from "../threads/threads.ts";
import { cardOfThread } from "./card-of-thread.ts";
import type { RecapCards, RecapCover, ThreadCard } from "./recap-card.ts";

/** Threads that the year in a sentence names. */
const mostInShort = 3;
const mostOpeners = 2;

interface Told {
  readonly thread: Thread;
  readonly card: ThreadCard;
}

export function makeRecapCards(garden: Garden, weather: Weather | undefined, request: RecapRequest): RecapCards {
  const { recap, material } = gatherRecap(garden, weather, request);
  const threads = threadsOf(material, request.forViewers === true);
  const voice: ThreadVoice = {
    garden,
    day: recap.to,
    lastSeason: lastSeason(material),
    soFar: recap.to < material.season.to,
  };
  const { told, left } = inLength(threads, voice, request.target);
  return {
    cover: coverOf(told, left, { recap, material, voice }),
    cards: told.map(({ card }) => card),
    dossier: recap,
  };
}

/** "2024", "2024/25" */
function lastSeason({ book, season }: Material): string {
  return book.seasons.find(({ year }) => year === season.year - 1)?.label ?? String(season.year - 1);
}

/** What fits into the length asked for, the most worth first; what comes next stays to the end. */
function inLength(threads: readonly Thread[], voice: ThreadVoice, target: number | undefined) {
  const lengthOf = (thread: Thread) =>
    cardOfThread(thread, 0, 0, { voice, wording: makeWording(), disclosed: new Set() })?.seconds ?? 0;
  const kept = new Set(threads);
  if (target !== undefined) {
    let room = target - threads.filter(({ kind }) => kind === "next").reduce((sum, one) => sum + lengthOf(one), 0);
    for (const thread of threads.filter(({ kind }) => kind !== "next")) {
      const seconds = lengthOf(thread);
      if (seconds <= room) room -= seconds;
      else kept.delete(thread);
    }
  }
  const telling = { voice, wording: makeWording(), disclosed: new Set<string>() };
  const told: Told[] = [];
  let begins = 0;
  for (const thread of threads) {
    const card = kept.has(thread) ? cardOfThread(thread, told.length + 1, begins, telling) : undefined;
    if (card === undefined) continue;
    told.push({ thread, card });
    begins += card.seconds;
  }
  return { told, left: threads.filter((thread) => !kept.has(thread)) };
}

interface Covering {
  readonly recap: RecapCards["dossier"];
  readonly material: Material;
  readonly voice: ThreadVoice;
}

function coverOf(told: readonly Told[], left: readonly Thread[], { recap, material, voice }: Covering): RecapCover {
  const seconds = told.reduce((sum, { card }) => sum + card.seconds, 0);
  return {
    title: recap.title,
    span: recap.spanText,
    length: filmLength(recap.target ?? seconds),
    cards: told.length,
    year: yearInASentence(told, voice),
    openers: told.slice(1, 1 + mostOpeners).map(({ card }) => card.opening),
    rows: told.map(({ card }) => ({
      number: card.number,
      title: card.title,
      seconds: card.seconds,
      begins: card.begins,
      must: card.kind === "debt",
      mayGo: false,
    })),
    fallsOut: left.flatMap((thread) => {
      const [short] = inShort(thread, voice);
      return short === undefined ? [] : [say(capital(short[1]), [{ sources: thread.lead.sources }])];
    }),
    settle: toSettle(told, material),
    cautions: cautions(told, material),
  };
}

/** Of its strongest threads, no two said alike. */
function yearInASentence(told: readonly Told[], voice: ThreadVoice): Sentence | undefined {
  const heard = new Set<string>();
  const shown = told
    .flatMap(({ thread }) => {
      const found = inShort(thread, voice).find(([frame]) => !heard.has(frame));
      if (found === undefined) return [];
      heard.add(found[0]);
      return [{ text: found[1], thread }];
    })
    .slice(0, mostInShort);
  if (shown.length === 0) return undefined;
  const texts = shown.map(({ text }) => text);
  const joined = texts.length < 3 ? sayList(texts) : `${texts.slice(0, -1).join("; ")}; and ${texts.at(-1)}`;
  return say(
    `${capital(joined)}.`,
    shown.map(({ thread }) => ({ sources: [...thread.lead.sources, ...(thread.figure?.sources ?? []).slice(0, 2)] })),
  );
}

/** What was tried and never said to have come of anything, what failed without a plan, and what is still a question. */
function toSettle(told: readonly Told[], { book, from, to }: Material): readonly Sentence[] {
  const { garden } = book;
  const open = garden.readings.filter(
    (line) =>
      line.as === "question" &&
      !line.private &&
      line.readings.some(({ events }) => events.some(({ day }) => day >= from && day <= to)),
  );
  const picking = open.filter(({ readings }) =>
    readings.some(({ events }) => events.some((event) => event.kind === "picked")),
  );
  const [first] = open;
  const silent = told.filter(
    ({ thread, card }) =>
      thread.kind === "tried" && thread.figure === undefined && card.now.length < 2 && card.why === undefined,
  );
  const failed = told.filter(({ thread }) => thread.kind === "failed" && thread.next === undefined);
  const ask = (question: string, of: readonly Told[]) =>
    of.length === 0
      ? []
      : [
          say(
            `${question}: ${sayList(of.map(({ card }) => card.title))}?`,
            of.map(({ thread }) => ({ sources: thread.lead.sources })),
          ),
        ];
  return [
    ...ask("What came of it", silent),
    ...ask("What will you do about it next year", failed),
    ...(first === undefined
      ? []
      : [
          say(
            `${capital(sayNumber(open.length))} ${open.length === 1 ? "line is" : "lines are"} still a question to you${picking.length === 0 ? "" : `, ${sayNumber(picking.length)} perhaps of pickings, so no sum is told that they could change`}: settle them, and there is more to tell.`,
            open.slice(0, 3),
          ),
        ]),
  ];
}

/** Of what the cards tell. */
function cautions(told: readonly Told[], { book, from, to }: Material): readonly Sentence[] {
  const { garden } = book;
  const crops = new Set(told.flatMap(({ thread }) => cropOf(garden, thread.about)?.id ?? []));
  const lots = book.lots.filter(
    ({ crop, planting }) =>
      crop !== undefined && crops.has(crop.id) && planting.since <= to && (planting.ended ?? to) >= from,
  );
  const news = betweenDays(book.events, from, to).filter(
    (event) => !event.private && crops.has(cropOf(garden, event)?.id ?? ""),
  );
  const table = cautionsFor({ growing: lots, news, garden });
  const closing = namesPoison(table) ? [say(closingCaution(garden.settings), [])] : [];
  const all = [...allOf(table), ...closing].filter((one) => !one.private);
  return all.filter((one, at) => all.findIndex(({ text }) => text === one.text) === at);
}
