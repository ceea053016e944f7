/**
 * Questions worth asking the person: of what viewers will ask about and no record tells, and after weeks in which nothing was
 * written. A few, the most worth first, each with the taps that answer it; what an answer is kept as stands in answer-kept.ts.
 */
import { daysBetween, seasonStart } from "../calendar.ts";
import { cropOf } from "../crop-of.ts";
import { maturityOf, usualMaturityOf } from "../facts/index.ts";
import { bookOf } from "../garden/index.ts";
import { inBed, isSingular, isUnnamed, onDay, thePlants } from "../language/index.ts";
import type { Bed, Day, Garden, Place, Planting } from "../model.ts";
import { compare } from "../order.ts";
import { living } from "../timeline/index.ts";

export type AskedKind = "quiet" | "source" | "variety" | "picked" | "again" | "sown";

export interface WorthAsking {
  /** Stays the same as long as the question does: "source rondo". */
  readonly id: string;
  readonly kind: AskedKind;
  /** "Where did the Rondo peas come from?" */
  readonly text: string;
  /** Why it is asked now, where the question does not tell. */
  readonly why?: string | undefined;
  /** Answers of one tap. */
  readonly taps: readonly string[];
  /** An answer in words, such as this one. */
  readonly such: string;
  /** Variety id, bed id and planting it is about. */
  readonly variety?: string | undefined;
  readonly bed?: string | undefined;
  readonly planting?: Planting | undefined;
  readonly place?: Place | undefined;
}

/** What the next film shows, as far as it is known. */
export interface NextShown {
  /** Planting ids. */
  readonly plantings?: ReadonlySet<string> | undefined;
  /** Bed ids. */
  readonly beds?: ReadonlySet<string> | undefined;
  /** Ids of the beds alone that are asked about, before a film: then no quiet weeks either. */
  readonly only?: ReadonlySet<string> | undefined;
}

/** More questions than this at a time nobody answers, nor more of one kind. */
const MOST = 3;
const MOST_OF_A_KIND = 2;

/** Days without a note after which it is asked what happened. */
const QUIET = 14;

/** Days past those that a crop usually takes until somebody must have picked it. */
const LATE = 14;

/** A thing of the next film goes before all others; then what viewers ask most. From what they ask below films: which, from where. */
const WORTH: Readonly<Record<AskedKind, number>> = {
  quiet: 100,
  source: 30,
  variety: 28,
  picked: 24,
  again: 16,
  sown: 12,
};
const IN_THE_FILM = 40;

export function worthAsking(garden: Garden, today: Day, film: NextShown = {}): readonly WorthAsking[] {
  const notAsked = new Set((garden.settings.doNotAsk ?? []).map(bareQuestion));
  const worth = ({ kind, planting, bed }: WorthAsking) => {
    const isShown = planting !== undefined && (film.plantings?.has(planting.id) ?? film.beds?.has(bed ?? "") ?? false);
    return WORTH[kind] + (isShown ? IN_THE_FILM : 0);
  };
  const since = ({ planting }: WorthAsking) => planting?.since ?? "";
  const { only } = film;
  const asked = plantingsOf(garden, today)
    .filter(({ bed }) => only?.has(bed.id) !== false)
    .flatMap((one) => askedOf(garden, one, today));
  const all = [...(only === undefined ? quiet(garden, today) : []), ...asked]
    .filter(({ text }) => !notAsked.has(bareQuestion(text)))
    .toSorted((a, b) => worth(b) - worth(a) || compare(since(b), since(a)) || compare(a.id, b.id));
  const chosen: WorthAsking[] = [];
  for (const one of all) {
    if (chosen.length === MOST) break;
    const about = ({ variety, planting }: WorthAsking) => variety ?? planting?.id;
    if (chosen.filter(({ kind }) => kind === one.kind).length === MOST_OF_A_KIND) continue;
    // One thing at a time of the same plants.
    if (chosen.some((other) => other.text === one.text || (about(one) !== undefined && about(other) === about(one))))
      continue;
    chosen.push(one);
  }
  return chosen;
}

/** Those of the next film that is planned, where its record lists its stops. */
export function askedNow(garden: Garden, today: Day): readonly WorthAsking[] {
  const [next] = [...garden.episodes.values()]
    .filter(({ status, day, stops }) => status === "planned" && day >= today && stops.length > 0)
    .toSorted((a, b) => compare(a.day, b.day));
  return worthAsking(garden, today, { beds: next && new Set(next.stops.map(({ bed }) => bed)) });
}

/** A question as it is compared: signs and spaces make no other one of it. */
function bareQuestion(text: string): string {
  return text
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, " ")
    .trim();
}

function quiet(garden: Garden, today: Day): readonly WorthAsking[] {
  const last = garden.notes.findLast(({ day }) => day <= today);
  if (last === undefined || daysBetween(last.day, today) < QUIET) return [];
  return [
    {
      id: "quiet",
      kind: "quiet",
      text: "What has happened in the garden since you last wrote?",
      why: `Your last note is ${onDay(last.day, { settings: garden.settings, day: today }).replace(/^on /, "of ")}.`,
      taps: ["Nothing new"],
      such: "picked the first beans, slugs on the lettuces",
    },
  ];
}

interface Standing {
  readonly bed: Bed;
  readonly planting: Planting;
}

/** What viewers may see: alive, or ended this season; of private things nobody asks. */
function plantingsOf(garden: Garden, today: Day): readonly Standing[] {
  const book = bookOf(garden);
  const season = seasonStart(today, garden.settings.seasonStarts);
  return [...garden.beds.values()]
    .filter((bed) => !bed.private && garden.sites.get(bed.site ?? "")?.private !== true)
    .flatMap((bed) => {
      const state = book.stateOf(bed.id, today);
      const alive = new Set(living(state));
      return state.plantings
        .filter(
          (one) => !one.private && (alive.has(one) || ((one.ended ?? "") >= season && one.takenToBeOver !== true)),
        )
        .map((planting) => ({ bed, planting }));
    });
}

function askedOf(garden: Garden, { bed, planting }: Standing, today: Day): readonly WorthAsking[] {
  const variety = garden.varieties.get(planting.variety ?? "");
  if (variety?.private === true || planting.selfSown === true) return [];
  const crop = cropOf(garden, planting);
  if (crop === undefined && variety === undefined) return [];
  const named = { variety, crop };
  const plants = planting.count?.value;
  const one = isSingular(named, plants);
  const the = thePlants(named, plants);
  const about = { bed: bed.id, planting, place: bookOf(garden).event(planting.firstEvent)?.place };
  const ended = planting.ended !== undefined;
  const asked: WorthAsking[] = [];
  if (isUnnamed(named)) {
    if (!ended && crop !== undefined)
      asked.push({
        ...about,
        id: `variety ${planting.id}`,
        kind: "variety",
        text: `Which variety ${one ? "is" : "are"} ${the} ${inBed(bed)}?`,
        taps: [],
        such: "the name on the packet or the label",
      });
  } else if (variety !== undefined) {
    const ofVariety = { ...about, variety: variety.id };
    if (variety.source === undefined && planting.plantsFrom === undefined && planting.from === undefined && !ended)
      asked.push({
        ...ofVariety,
        id: `source ${variety.id}`,
        kind: "source",
        text: `Where did ${the} come from?`,
        taps: ["Bought", "Own saved seed", "Swapped", "Given by a person"],
        such: "Drift Lane Seeds",
      });
    if (ended && variety.described && variety.growAgain === undefined && planting.picked.times > 0)
      asked.push({
        ...ofVariety,
        id: `again ${variety.id}`,
        kind: "again",
        text: `Would you grow ${the} again?`,
        taps: ["Yes", "No"],
        such: "yes, but two weeks later",
      });
  }
  if (isLongReady(garden, planting, today) && !ended)
    asked.push({
      ...about,
      variety: variety?.id,
      id: `picked ${planting.id}`,
      kind: "picked",
      text: `When did you first pick ${the}${isUnnamed(named) ? ` ${inBed(bed)}` : ""}?`,
      taps: ["Today", "Yesterday"],
      such: "14 July",
    });
  if (!ended && wantsSowing(garden, about.place))
    asked.push({
      ...about,
      variety: variety?.id,
      id: `sown ${planting.id}`,
      kind: "sown",
      text: `When ${one ? "was" : "were"} ${the} ${inBed(bed)} sown?`,
      taps: ["Bought as plants"],
      such: "14 March",
    });
  return asked;
}

/** Long past its days without one picking on record; what is grown for its flowers is not picked by all. */
function isLongReady(garden: Garden, planting: Planting, today: Day): boolean {
  if (planting.picked.times > 0 || planting.perennial || planting.implied) return false;
  const own = maturityOf(garden, planting)?.value;
  const usual = usualMaturityOf(garden, planting)?.value;
  const by = own?.goal === "picking" ? own.ready : usual?.goal === "picking" ? usual.latest : undefined;
  return by !== undefined && daysBetween(by, today) > LATE && daysBetween(by, today) < 120;
}

function wantsSowing(garden: Garden, place: Place | undefined): boolean {
  return garden.doubts.some(
    (doubt) =>
      doubt.rule === "timeline/no-sowing" && doubt.place.file === place?.file && doubt.place.line === place.line,
  );
}
