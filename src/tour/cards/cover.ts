/** The cover: the one page above all cards, in the order in which it is needed on the day. */
import { type CoverRow, filmLength, promised, toPause } from "../../films/index.ts";
import { capital, type Sentence, say, sayList, sayNumber, theBed } from "../../language/index.ts";
import type { Brief, Check, Stop } from "../brief.ts";
import type { OwedLine } from "../candidates/candidate.ts";
import type { PlannedStop } from "../plan/plan-tour.ts";
import { lightWords } from "../plan-words.ts";
import { mayHaveBeenSeen } from "../since.ts";
import { worthAsking } from "../worth-asking.ts";
import type { Card, Caution, Owed, TourCover } from "./card.ts";
import { bareCause, many, rememberedAt } from "./remembered.ts";

/** More is no preparation any more, it is a day's work. */
const mostToSettle = 8;
const mostOpeners = 2;
const mostToGo = 3;

/** Minutes between being there and the first shot: common practice of people who set up alone. */
const settingUp = 15;

export function coverOf(
  brief: Brief,
  planned: readonly PlannedStop[],
  cards: readonly Card[],
  owed: readonly OwedLine[],
): TourCover {
  const gone = fallsOut(brief, planned);
  const going = new Set(gone.map(({ number }) => number));
  const length = brief.target ?? brief.plan.seconds;
  return {
    title: brief.title,
    day: brief.dateText,
    length: filmLength(length),
    stops: cards.length,
    times: times(brief),
    light: coverLight(brief),
    film: filmInASentence(planned, owed),
    openers: brief.opening.filter(({ kind, private: hidden }) => kind !== "owed" && !hidden).slice(0, mostOpeners),
    rows: brief.stops.map((stop) => rowOf(stop, going)),
    fallsOut: gone.map(({ sentence }) => sentence),
    owed: brief.followUps.map((line) => owedLine(line, brief)),
    settle: toSettle(brief).map(bare),
    asks: asksOf(brief, planned),
    cautions: cautions(brief.stops),
    poison: brief.closingCaution,
    kit: brief.kit,
  };
}

/** Light of a few stops is no light of the tour; it stands in the dossier then. */
export function coverLight(brief: Brief): string | undefined {
  if (brief.plan.litStops * 2 <= brief.stops.length) return undefined;
  const atStart = brief.plan.light === undefined ? undefined : `${capital(brief.plan.light)}.`;
  const all = [atStart, lightWords(brief)].filter((part) => part !== undefined).join(" ");
  return all === "" ? undefined : all;
}

/**
 * What can be settled on the spot; the others are questions to the plan, and stand in the dossier, as do all names and sources
 * that are not known: the few worth asking for stand above.
 */
const onTheSpot: ReadonlySet<Check["kind"]> = new Set(["say it as", "unread", "task", "photo", "trial", "doubt"]);

export function toSettle({ checks, tasks }: Brief): readonly Sentence[] {
  return [...checks.filter(({ kind }) => onTheSpot.has(kind)), ...tasks.filter(({ overdue }) => !overdue)].slice(
    0,
    mostToSettle,
  );
}

/** Of what the film shows; what happened in a quiet fortnight the desk asks. */
function asksOf({ date }: Brief, planned: readonly PlannedStop[]): readonly Sentence[] {
  const [first] = planned;
  if (first === undefined) return [];
  const plantings = new Set(
    planned.flatMap(({ show }) => show.flatMap(({ lots }) => lots.map((lot) => lot.planting.id))),
  );
  const beds = new Set(planned.map(({ here }) => here.bed.id));
  return worthAsking(first.here.index.garden, date, { plantings, only: beds }).map(({ text, place }) => ({
    text,
    sources: place === undefined ? [] : [place],
    private: false,
  }));
}

function bare({ text, sources, private: hidden }: Sentence): Sentence {
  return { text, sources, private: hidden };
}

function times({ plan }: Brief): string | undefined {
  if (plan.start === undefined) return undefined;
  const [hours = 0, minutes = 0] = plan.start.split(":").map(Number);
  const there = (hours * 60 + minutes - settingUp + 1440) % 1440;
  const clock = `${Math.floor(there / 60)}:${String(there % 60).padStart(2, "0")}`;
  const end = plan.end === undefined ? "" : `, done about ${plan.end}`;
  return `Be there ${clock}, first shot ${plan.start}${end}.`;
}

function rowOf({ number, title, seconds, begins, show }: Stop, going: ReadonlySet<number>): CoverRow {
  return { number, title, seconds, begins, must: show.some(({ level }) => level === "must"), mayGo: going.has(number) };
}

/** Stops without a must, the least worth first; where every stop has one, nothing falls out by itself. */
function fallsOut(
  { stops }: Brief,
  planned: readonly PlannedStop[],
): readonly { readonly number: number; readonly sentence: Sentence }[] {
  return stops
    .map((stop, at) => ({ stop, here: planned[at]?.here, worth: stop.show.reduce((sum, { value }) => sum + value, 0) }))
    .filter(({ stop }) => !stop.show.some(({ level }) => level === "must"))
    .toSorted((a, b) => a.worth - b.worth)
    .slice(0, mostToGo)
    .map(({ stop, here }) => {
      const [strongest] = stop.show;
      const saved = `${Math.floor(stop.seconds / 60)}:${String(stop.seconds % 60).padStart(2, "0")}`;
      return {
        number: stop.number,
        sentence: say(`${theBed(stop)} (${stop.number}), ${saved}`, [
          here?.bed,
          ...(strongest?.sources ?? []).slice(0, 1).map((place) => ({ place })),
        ]),
      };
    });
}

function owedLine(
  { what, standing, waits, stop, sources, private: hidden }: Brief["followUps"][number],
  { stops }: Brief,
): Owed {
  const short = toPause(promised(what), 12) ?? promised(what);
  if (waits !== undefined) {
    const bare = short.endsWith(waits) ? short : `${short}, ${waits}`;
    return { text: bare, sources, private: hidden, standing: "waiting" };
  }
  const at = stops.find(({ id }) => id === stop);
  const line = sources.map(({ file, line }) => `${file}:${line}`);
  const point = at?.show.find(
    ({ kind, sources: grounds }) =>
      kind === "owed" && grounds.some(({ file, line: on }) => line.includes(`${file}:${on}`)),
  );
  return { text: short, sources, private: hidden, standing, stop: at?.number, shot: point?.shot };
}

/** Each caution once, with all the plants and stops it is for. */
function cautions(stops: readonly Stop[]): readonly Caution[] {
  const byText = new Map<string, { names: string[]; stops: number[]; line: Sentence }>();
  for (const stop of stops) {
    for (const line of [...stop.cautions, ...stop.furtherCautions]) {
      const [, name, text] = /^([^:.]{1,60}): (.+)$/s.exec(line.text) ?? [];
      const key = text ?? line.text;
      const known = byText.get(key) ?? { names: [], stops: [], line };
      if (name !== undefined && !known.names.includes(name)) known.names.push(name);
      if (!known.stops.includes(stop.number)) known.stops.push(stop.number);
      byText.set(key, known);
    }
  }
  return [...byText].map(([text, { names, stops: at, line }]) => ({
    text: names.length === 0 ? text : `${sayList(names)}: ${text}`,
    sources: line.sources,
    private: line.private,
    stops: at,
  }));
}

/** "Answers owed on the cabbages and the leeks, clubroot, and the first Kelvedon Wonder peas." */
function filmInASentence(planned: readonly PlannedStop[], owed: readonly OwedLine[]): Sentence | undefined {
  const kept = owed.filter(
    ({ keptAt, private: hidden }) => !hidden && planned.some(({ here }) => here.bed.id === keptAt),
  );
  const crops = [
    ...new Set(
      kept.flatMap(({ lots }) => lots.flatMap(({ crop }) => (crop === undefined ? [] : [`the ${many(crop)}`]))),
    ),
  ];
  const debts =
    kept.length === 0
      ? []
      : [
          say(
            crops.length === 0 || crops.length > 3
              ? `${sayNumber(kept.length)} ${kept.length === 1 ? "promise" : "promises"} to keep`
              : `what I owe you on ${sayList(crops)}`,
            [],
          ),
        ].map((line) => ({ ...line, sources: kept.flatMap(({ sources }) => sources) }));
  const again = planned.flatMap(({ here }) =>
    rememberedAt(here)
      .filter(({ lastYear, again }) => lastYear && again)
      .slice(0, 1),
  );
  const stories = again
    .slice(0, 1)
    .map(({ cause, crop, event }) => say(`${cause} on the ${many(crop)} for the second year`, [event]));
  const points = planned
    .flatMap(({ here, show }) => show.map((point) => ({ here, point })))
    .filter(({ point }) => point.kind !== "owed" && !point.sentence.private && point.lots.length > 0)
    .toSorted((a, b) => b.point.value - a.point.value);
  const threads = points.flatMap(({ point, here }) => {
    const isSeen = point.kind === "new" && mayHaveBeenSeen(here.index.garden, here.since, here.day);
    const words = isSeen ? undefined : threadOf(point.kind, point.about, point.keepBy, here.bed.title);
    return words === undefined
      ? []
      : [{ about: point.about, kind: point.kind, line: { ...say(words, []), sources: point.sentence.sources } }];
  });
  // One thread of a kind, and one of the same plants.
  const kinds = threads
    .filter(({ kind, about }, at) => threads.findIndex((other) => other.kind === kind || other.about === about) === at)
    .map(({ line }) => line);
  const parts = [...debts, ...stories, ...kinds].slice(0, 3);
  if (parts.length === 0) return undefined;
  return {
    text: `${capital(sayList(parts.map(({ text }) => text)))}.`,
    sources: parts.flatMap(({ sources }) => sources),
    private: false,
  };
}

function threadOf(kind: string, about: string, keepBy: string, bed: string): string | undefined {
  const inThe = theBed({ title: bed });
  if (kind === "trouble") return `${bareCause(keepBy)} in ${inThe}`;
  if (kind === "only picking") return `what came of ${about}`;
  if (kind === "first picking") return about.replace(/^the /, "the first ");
  if (kind === "first flower") return `${about} in flower`;
  if (kind === "first fruit") return `fruit on ${about}`;
  if (kind === "new") return `${about} you have not met`;
  if (kind === "going") return `a last look at ${about}`;
  return undefined;
}
