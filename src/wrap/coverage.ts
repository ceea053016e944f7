/**
 * What of the plan was said or filmed, what was missed, what came unplanned; which varieties were named and which never.
 * Without a brief only the last two can be told.
 */
import { fullStop, sayList } from "../language/index.ts";
import type { Filming, PlannedThing, PlannedTour } from "../model.ts";
import { keeps } from "../tour/index.ts";
import { type Asked, plannedAnswer } from "./claims/planned-answer.ts";
import { covered, reshoots, shotsFilmed, tickOf } from "./filmed-shots.ts";
import type { FilmHeard } from "./hear-film.ts";
import { moment } from "./moments.ts";
import { APPLY_FROM } from "./names-heard.ts";
import { subjectsOf } from "./spoken-subjects.ts";
import type { Word } from "./spoken-words.ts";
import { isGuess, type Stretch } from "./stops-heard.ts";
import { inWords, stretchAt } from "./word-ranges.ts";
import type { Coverage, Covered, PlannedCovered, Reshoot, VarietyNamed } from "./wrap.ts";

type PlannedStop = PlannedTour["stops"][number];

export interface CoverageRequest {
  readonly film: FilmHeard;
  readonly stretches: readonly Stretch[];
  readonly plan: readonly string[];
  readonly brief?: PlannedTour | undefined;
  readonly filming?: Filming | undefined;
}

export function coverageOf(request: CoverageRequest): Coverage {
  const { film, stretches, plan, brief, filming } = request;
  // Without captions or ticks nobody knows what was shown, and nothing is called missed.
  const isSilent = film.speech.words.length === 0;
  const stops = isSilent && filming === undefined ? [] : (brief?.stops ?? []);
  const madeHere = (brief?.followUps ?? []).filter(({ promisedOn }) => promisedOn >= film.day.day);
  // A promise made in this very film was no part of its plan, nor was the shot that is to keep it.
  const isPlanned = ({ key }: { readonly key: string }) => !madeHere.some((promise) => keeps(key, promise));
  const planned = stops.map((stop): PlannedStop => {
    return { ...stop, show: stop.show.filter(isPlanned), shots: stop.shots.filter(isPlanned) };
  });
  const asked: Asked = { film, stretches, subjects: subjectsOf(film, stretches) };
  const things = planned.flatMap((stop) => stop.show.map((point) => thing(point, stop, asked, filming)));
  const shots = filming === undefined ? [] : shotsFilmed(planned, filming);
  const shown = new Set(stretches.flatMap(({ bed }) => (bed === undefined ? [] : [bed])));
  const unheard = isSilent ? [] : plan.filter((bed) => !shown.has(bed));
  const perhapsShown = unheard.filter((bed) => isPerhapsShown(bed, film));
  const bedsMissed = unheard.filter((bed) => !perhapsShown.includes(bed));
  // Of a bed that was not shown at all one line says so.
  const reshoot = reshoots(shots, things).filter(({ what, bed }) => what !== "not filmed" || !bedsMissed.includes(bed));
  return {
    things,
    shots,
    bedsMissed,
    perhapsShown,
    unplanned: unplanned(request),
    named: varietiesNamed(film, stretches),
    neverNamed: isSilent ? [] : neverNamed(film, shown),
    reshoot,
    toPickUp: toPickUp(things, reshoot, film, bedsMissed),
  };
}

/** Whether anything in a stretch that is only guessed at speaks for the bed. */
function isPerhapsShown(bed: string, { turns, places }: FilmHeard): boolean {
  return turns
    .filter(isGuess)
    .some(
      (turn) =>
        turn.bed === bed ||
        inWords(places, ({ word }) => word, turn.from, turn.to).some(({ beds }) => (beds.get(bed) ?? 0) > 0),
    );
}

// ------------------------------------------------------------------------------------------------------------ planned

function thing(point: PlannedThing, stop: PlannedStop, asked: Asked, filming: Filming | undefined): PlannedCovered {
  const { is, word } = plannedAnswer(point, stop.bed, asked);
  const at = word === undefined ? undefined : asked.film.speech.words[word]?.at;
  const shot = stop.shots.find(({ id }) => id === point.shot);
  const tick = shot === undefined ? undefined : tickOf(filming, stop.bed, shot);
  return {
    id: point.id,
    key: point.key,
    bed: stop.bed,
    level: point.level,
    text: point.text,
    covered: covered(is, tick?.state),
    ...(at === undefined ? {} : moment(at)),
    reason: tick?.reason,
  };
}

/** Milliseconds at which a thing to show was told. */
export function saidAt(
  point: PlannedThing,
  bed: string,
  film: FilmHeard,
  stretches: readonly Stretch[],
): number | undefined {
  const { is, word } = plannedAnswer(point, bed, { film, stretches, subjects: subjectsOf(film, stretches) });
  return is === "said" && word !== undefined ? film.speech.words[word]?.at : undefined;
}

// ---------------------------------------------------------------------------------------------------------- unplanned

function unplanned({ film, stretches, plan }: CoverageRequest): Coverage["unplanned"] {
  const { day, names, speech } = film;
  const planned = new Set(plan);
  const beds = stretches.flatMap(({ bed, at }) =>
    bed === undefined || planned.has(bed) || plan.length === 0
      ? []
      : [{ ...moment(at), what: day.garden.beds.get(bed)?.title ?? bed, bed }],
  );
  const seen = new Set<string>();
  const varieties = names.flatMap(({ name, from, confidence }) => {
    if (name.kind !== "variety" || seen.has(name.record) || confidence < APPLY_FROM) return [];
    seen.add(name.record);
    if (plan.length === 0 || [...name.beds].some((bed) => planned.has(bed))) return [];
    const variety = day.garden.varieties.get(name.record);
    return [{ ...moment((speech.words[from] as Word).at), what: variety?.title ?? name.name, variety: name.record }];
  });
  return [...beds, ...varieties].sort((a, b) => a.at - b.at);
}

function varietiesNamed({ day, names, speech }: FilmHeard, stretches: readonly Stretch[]): readonly VarietyNamed[] {
  const named = new Map<string, VarietyNamed>();
  for (const { name, from, confidence } of names) {
    if (name.kind !== "variety" || confidence < APPLY_FROM) continue;
    const before = named.get(name.record);
    if (before !== undefined) {
      named.set(name.record, { ...before, times: before.times + 1 });
      continue;
    }
    named.set(name.record, {
      variety: name.record,
      title: day.garden.varieties.get(name.record)?.title ?? name.name,
      bed: stretchAt(stretches, from)?.bed,
      ...moment((speech.words[from] as Word).at),
      times: 1,
    });
  }
  return [...named.values()];
}

function neverNamed({ day, names }: FilmHeard, beds: ReadonlySet<string>): Coverage["neverNamed"] {
  const named = new Set(names.filter(({ confidence }) => confidence >= APPLY_FROM).map(({ name }) => name.record));
  const silent = new Map<string, { variety: string; title: string; bed: string }>();
  for (const bed of beds) {
    for (const { variety } of day.beds.get(bed)?.living ?? []) {
      const record = variety === undefined ? undefined : day.garden.varieties.get(variety);
      if (record === undefined || named.has(record.id) || silent.has(record.id)) continue;
      silent.set(record.id, { variety: record.id, title: record.title, bed });
    }
  }
  return [...silent.values()];
}

function toPickUp(
  things: readonly PlannedCovered[],
  reshoot: readonly Reshoot[],
  { day }: FilmHeard,
  bedsMissed: readonly string[],
): readonly string[] {
  const title = (bed: string) => day.garden.beds.get(bed)?.title ?? bed;
  const missedBeds = bedsMissed.length === 0 ? [] : [`Not shown at all: ${sayList(bedsMissed.map(title))}.`];
  const again = new Set(reshoot.map(({ key }) => key));
  const open = things.filter(
    ({ level, bed, key }) => level !== "could" && !bedsMissed.includes(bed) && !again.has(key),
  );
  const still = (how: Covered, words: string) =>
    open
      .filter(({ covered }) => covered === how)
      .map(({ text, bed, id, time }) =>
        fullStop(`${title(bed)}, ${id}${time === undefined || words === "" ? "" : `, at ${time}`}${words}: ${text}`),
      );
  return [...missedBeds, ...still("missed", ""), ...still("shown, not said", " shown and not said")];
}
