/** What failed, and what will be done about it: plants lost, and varieties that gave less than the year before. */
import { cropOf } from "../../crop-of.ts";
import type { Event, Plan, PlantIds } from "../../model.ts";
import { type Setback, setbacks } from "../setbacks.ts";
import type { Standing } from "../standings.ts";
import { isRemark, lamentOf } from "./remarks.ts";
import type { Telling } from "./telling.ts";
import { type Part, part, type Thread, type Told } from "./thread.ts";
import { troubleBefore } from "./tried.ts";

/** A seedling or two is what any year takes. */
const fewestPlants = 3;
/** Share of the plants that is worth a card whatever their number. */
const largeShare = 0.5;
/** Less than this of what each plant gave the year before. */
const farLess = 0.7;

export function failedThreads(telling: Telling): readonly Thread[] {
  const { material } = telling;
  const ofVarieties = material.standings.worst
    .filter((one) => !one.private && (isLoss(one) || isPoor(one)))
    .map((one) => varietyThread(one, telling));
  const told = new Set(material.standings.worst.map(({ variety }) => variety));
  const ofCauses = setbacks(material.book, material.from, material.to)
    .filter(
      (one) =>
        !one.private &&
        one.noted &&
        one.varieties.every((id) => !told.has(id)) &&
        (one.plants >= fewestPlants || one.all),
    )
    .map((one) => causeThread(one, telling));
  return [...ofVarieties, ...ofCauses, ...plannedOtherwise(telling)];
}

/** What the person means to do another way, with how they told of what went wrong: their words for both. */
function plannedOtherwise(telling: Telling): readonly Thread[] {
  const { material, now } = telling;
  const { book, from, to } = material;
  return book.garden.plans
    .filter(({ said, private: hidden }) => !hidden && said >= from && said <= to)
    .flatMap((plan): Thread[] => {
      const crop = cropOf(book.garden, plan)?.id;
      const lament =
        crop === undefined
          ? undefined
          : lamentOf(
              crop,
              now.filter(({ day }) => day <= plan.said),
              material,
            );
      if (crop === undefined || lament === undefined) return [];
      return [
        {
          kind: "failed",
          about: { crop },
          worth: 54,
          lead: part({ is: "another way next", of: { crop } }, [plan], to),
          before: undefined,
          now: [lament],
          notes: [],
          next: part({ is: "planned", what: plan.what, said: plan.said }, [plan], to),
          gear: [],
          photos: [],
        },
      ];
    });
}

function isLoss({ facts: { lost, began, lostAll } }: Standing): boolean {
  return lostAll || lost >= fewestPlants || (lost > 1 && began !== undefined && lost / began >= largeShare);
}

function isPoor({ facts: { each } }: Standing): boolean {
  return each !== undefined && each.grams / each.lastYear < farLess;
}

function varietyThread(one: Standing, telling: Telling): Thread {
  const { material } = telling;
  const { to } = material;
  const { facts } = one;
  const of: PlantIds = { variety: one.variety };
  const grounds = one.sources.map((place) => ({ place }));
  const events = troublesOf(one.variety, telling);
  const cause = facts.causes[0];
  const crop = cropOf(material.book.garden, of)?.id;
  const lead: Part<Told> = isLoss(one)
    ? part(
        {
          is: "lost",
          of,
          cause,
          plants: facts.lost,
          began: facts.began,
          all: facts.lostAll || facts.lost === facts.began,
        },
        events.filter(({ kind }) => kind === "lost"),
        to,
      )
    : part(
        {
          is: "more or less",
          of,
          ratio: facts.each === undefined ? 1 : facts.each.grams / facts.each.lastYear,
          each: true,
        },
        grounds,
        to,
      );
  const figure = isLoss(one)
    ? facts.began === undefined || facts.lost === 0 || facts.lost === facts.began
      ? undefined
      : part({ is: "lost of" as const, plants: facts.lost, began: facts.began }, events, to)
    : facts.each === undefined
      ? undefined
      : part({ is: "each plant" as const, of, grams: facts.each.grams, before: facts.each.lastYear }, grounds, to);
  return {
    kind: "failed",
    about: of,
    worth: isLoss(one)
      ? 42 +
        Math.min(12, 3 * Math.log2(1 + facts.lost)) +
        8 * (facts.began === undefined ? 0.5 : facts.lost / facts.began)
      : 46 + Math.min(12, -6 * one.score),
    lead,
    before: crop === undefined ? undefined : troubleBefore(crop, telling),
    now: [...had(of, facts.troubles, events, telling), ...tried(events, telling)],
    figure,
    notes: remarks(events, telling),
    next: remedyPlanned(of, cause, telling),
    gear: [],
    photos: [],
  };
}

function causeThread(one: Setback, telling: Telling): Thread {
  const { to } = telling.material;
  const [variety] = one.varieties;
  const of: PlantIds = one.varieties.length + one.crops.length === 1 ? { variety, crop: one.crops[0] } : {};
  const grounds = one.sources.map((place) => ({ place }));
  const events = telling.now.flatMap(({ event }) =>
    event !== undefined && one.sources.some(({ file, line }) => event.place.file === file && event.place.line === line)
      ? [event]
      : [],
  );
  return {
    kind: "failed",
    about: { ...of, bed: one.beds.length === 1 ? one.beds[0] : undefined },
    worth: 40 + Math.min(12, 3 * Math.log2(1 + one.plants)),
    lead: part({ is: "lost", of, cause: one.cause, plants: one.plants, all: one.all }, grounds, to),
    now: one.tried.slice(0, 2).map((what) => part<Told>({ is: "tried against", what }, grounds, to)),
    notes: remarks(events, telling),
    next: remedyPlanned(of, one.cause, telling),
    gear: [],
    photos: [],
  };
}

function troublesOf(variety: string, { now }: Telling): readonly Event[] {
  return now.flatMap(({ event }) =>
    event?.variety === variety && (event.kind === "lost" || event.kind === "trouble" || event.kind === "cured")
      ? [event]
      : [],
  );
}

/** A trouble without a loss is told with its end. */
function had(
  of: PlantIds,
  troubles: readonly string[],
  events: readonly Event[],
  { material: { to } }: Telling,
): readonly Part<Told>[] {
  return troubles.slice(0, 2).flatMap((cause) => {
    const same = events.filter((event) => event.cause?.toLowerCase() === cause.toLowerCase());
    const over = same.find(({ kind }) => kind === "cured")?.day;
    return same.length === 0 ? [] : [part<Told>({ is: "had", of, cause, over }, same, to)];
  });
}

function tried(events: readonly Event[], { material: { book, to } }: Telling): readonly Part<Told>[] {
  const ids = new Set(events.map(({ place }) => `${place.file}:${place.line}`));
  return book.troubles
    .filter(({ trouble }) => !trouble.private && ids.has(`${trouble.place.file}:${trouble.place.line}`))
    .flatMap(({ trouble }) =>
      trouble.tried.flatMap((one) =>
        "what" in one ? [part<Told>({ is: "tried against", what: one.what }, [trouble], to)] : [],
      ),
    )
    .slice(0, 1);
}

/** What stands beside it in the person's words: "a hot week and nobody there". */
function remarks(events: readonly Event[], { material: { to } }: Telling): readonly Part<Told>[] {
  return events.flatMap((event) =>
    [event.detail, ...event.more]
      .filter((words): words is string => words !== undefined && isRemark(words))
      .map((words) => part<Told>({ is: "own words", text: words.trim() }, [event], to)),
  );
}

/** What the person planned since, of the crop or with the cause in it. */
function remedyPlanned(of: PlantIds, cause: string | undefined, telling: Telling): Part<Told> | undefined {
  const { book, from, to } = telling.material;
  const crop = cropOf(book.garden, of)?.id;
  const found = book.garden.plans.find(
    (plan: Plan) =>
      !plan.private &&
      plan.said >= from &&
      plan.said <= to &&
      ((crop !== undefined && cropOf(book.garden, plan)?.id === crop) ||
        (cause !== undefined && `${plan.what} ${plan.reason ?? ""}`.toLowerCase().includes(cause.toLowerCase()))),
  );
  return found === undefined ? undefined : part({ is: "planned", what: found.what, said: found.said }, [found], to);
}
