/** What to show at a stop: everything that asks to be shown, each with its reason and its level, the strongest first. */
import { addDays, daysBetween } from "../calendar.ts";
import type { Episode } from "../model.ts";
import { capital, fullStop } from "../timeline/index.ts";
import { batchesOf, bySowing, byVariety } from "./batches.ts";
import { bedVerb, theBed } from "./bed-names.ts";
import type { BedOnTheDay, Lot } from "./bed-on-the-day.ts";
import type { FollowUpLine, Level, Sentence, ShowKind, ShowPoint } from "./brief.ts";
import { dayOnly, speechOf } from "./days-said.ts";
import { expectedFact, readyFrom } from "./expected-picking.ts";
import { mentions } from "./mentions.ts";
import { milestonesSince } from "./milestones.ts";
import { endedSentence, isNews, lostSentences, newSentence } from "./news-sentences.ts";
import { pickedSinceSentence } from "./picked-sentences.ts";
import { heightFact, standsNow } from "./planting-sentences.ts";
import { say, secondsToSay, together } from "./sentence.ts";
import { mostPerStop, showValues } from "./show-values.ts";
import { trialSentence, trialsIn } from "./trial-lines.ts";
import { endedTroubles, openTroubles } from "./trouble-lines.ts";

interface Candidate {
  readonly kind: ShowKind;
  readonly sentence: Sentence;
  readonly why: string;
  readonly lots: readonly Lot[];
}

/** Days within which "ready soon" is worth saying. */
const soon = 14;

/** `owed` are the follow-ups to be kept at this stop. */
export function showPoints(
  here: BedOnTheDay,
  stopId: string,
  owed: readonly FollowUpLine[],
  episode: Episode | undefined,
): readonly ShowPoint[] {
  const { settings } = here.index.garden;
  const found = [
    ...owedPoints(owed),
    ...newPoints(here),
    ...lossPoints(here),
    ...firstTimes(here),
    ...goingOn(here),
    ...besides(here),
  ];
  const sayable = found.filter(({ sentence }) => !sentence.private);
  const all = sayable.length === 0 ? standingPoints(here) : sayable;
  const points = all.map((candidate) => {
    const asked = (episode?.must ?? []).find((name) => isAbout(candidate, name));
    const { level, value } = showValues[candidate.kind];
    const weight = settings.weights[candidate.kind] ?? 1;
    const { text, sources, private: isPrivate } = candidate.sentence;
    return {
      text,
      sources,
      private: isPrivate,
      kind: candidate.kind,
      level: asked === undefined ? level : ("must" as const),
      why: asked === undefined ? candidate.why : `you asked for it; ${candidate.why}`,
      value: value * weight,
      plantings: candidate.lots.map((lot) => lot.planting.id),
      seconds: secondsToSay(candidate.sentence.text, settings.narrationRate),
    };
  });
  return withinLimits(points).map((point, index) => ({ ...point, id: `${stopId}.${index + 1}` }));
}

type Unnumbered = Omit<ShowPoint, "id">;

/** Musts all, then as many of the others as a stop can hold, the strongest first. */
function withinLimits(points: readonly Unnumbered[]): readonly Unnumbered[] {
  const order: readonly Level[] = ["must", "should", "could"];
  return order.flatMap((level) => {
    const ofLevel = points.filter((point) => point.level === level).toSorted((a, b) => b.value - a.value);
    return level === "must" ? ofLevel : ofLevel.slice(0, mostPerStop[level]);
  });
}

function isAbout({ sentence, lots }: Candidate, name: string): boolean {
  if (mentions(sentence.text, [name])) return true;
  return lots.some(({ planting, variety, crop }) =>
    [planting.variety, variety?.title, crop?.name, crop?.plural].some(
      (other) => other?.toLowerCase() === name.toLowerCase(),
    ),
  );
}

function owedPoints(owed: readonly FollowUpLine[]): Candidate[] {
  return owed.map((line) => ({
    kind: "owed",
    sentence: line.now === undefined ? line : together([line, line.now]),
    why: line.standing === "overdue" ? "viewers have been waiting for it" : "viewers were told they would see it",
    lots: [],
  }));
}

function newPoints(here: BedOnTheDay): Candidate[] {
  const fresh = here.growing.filter((lot) => isNews(lot, here));
  return batchesOf(fresh).map((batch) => ({
    kind: "new",
    sentence: newSentence(batch, here),
    why: here.since.episode === undefined ? "this bed has never been shown" : `it came ${here.since.text}`,
    lots: batch.lots,
  }));
}

function lossPoints(here: BedOnTheDay): Candidate[] {
  const lost = lostSentences(here).map(({ sentence, batch }) => ({
    kind: "lost" as const,
    sentence,
    why: "viewers saw more of them last time",
    lots: batch.lots,
  }));
  const ended = here.ended
    .filter(({ planting }) => (planting.ended ?? "") >= here.season)
    .map((lot) => ({
      kind: lot.planting.stage === "lost" ? ("lost" as const) : ("finished" as const),
      sentence: endedSentence(lot, here),
      why: lot.before === undefined ? "it came and went between two tours" : "viewers will look for it",
      lots: [lot],
    }));
  const troubles = openTroubles(here).map((line) => ({
    kind: "trouble" as const,
    sentence: line,
    why: line.opened > here.newsAfter ? "it is new" : "it is not over",
    lots: [],
  }));
  const over = endedTroubles(here).map((sentence) => ({
    kind: "trouble over" as const,
    sentence,
    why: "it ended well",
    lots: [],
  }));
  return [...lost, ...troubles, ...over, ...ended];
}

function firstTimes(here: BedOnTheDay): Candidate[] {
  return milestonesSince(here).map((milestone) => ({
    kind: milestone.kind,
    sentence: milestone,
    why: `first time ${here.since.episode === undefined ? "this season" : here.since.text}`,
    lots: [milestone.lot],
  }));
}

function goingOn(here: BedOnTheDay): Candidate[] {
  const begun = new Set(
    milestonesSince(here)
      .filter(({ kind }) => kind === "first picking")
      .map(({ lot }) => lot.planting.id),
  );
  const picking = byVariety(here.growing)
    .filter((batch) => !batch.lots.some((lot) => begun.has(lot.planting.id)))
    .flatMap((batch) => {
      const sentence = pickedSinceSentence(batch, here);
      return sentence === undefined
        ? []
        : [{ kind: "picking" as const, sentence, why: "it is being picked", lots: batch.lots }];
    });
  const trials = trialsIn(here).map((trial) => ({
    kind: "trial" as const,
    sentence: trialSentence(trial, here),
    why: "the trial is running",
    lots: [],
  }));
  const ready = bySowing(here.growing).flatMap((batch) => {
    const day = readyFrom(batch.lots[0]);
    const near = day !== undefined && day >= here.day && daysBetween(here.day, day) <= soon;
    const fact = near ? expectedFact(batch, here) : undefined;
    return fact === undefined
      ? []
      : [{ kind: "due soon" as const, sentence: fact, why: "it will be ready before the next tour", lots: batch.lots }];
  });
  const grown = here.growing.flatMap((lot) => {
    const measured = lot.events.findLast((event) => event.kind === "measured");
    const fact = measured !== undefined && measured.day > here.newsAfter ? heightFact(lot, here) : undefined;
    return fact === undefined
      ? []
      : [{ kind: "grew" as const, sentence: fact, why: "it was measured again", lots: [lot] }];
  });
  return [...picking, ...trials, ...ready, ...grown];
}

function besides(here: BedOnTheDay): Candidate[] {
  const asked = here.news
    .filter((event) => event.kind === "asked" && event.what !== undefined)
    .map((event) => ({
      kind: "question" as const,
      sentence: say(`A viewer asks: “${(event.what ?? "").trim().replace(/\?*$/, "?")}”`, [event]),
      why: "a viewer wants to know",
      lots: [],
    }));
  const recent = addDays(here.day, -soon);
  const works = here.changes
    .filter((change) => change.kind === "did" && change.day > recent)
    .map((change) => ({
      kind:
        change.effect.gear !== undefined || change.effect.built !== undefined || change.effect.filled !== undefined
          ? ("built" as const)
          : ("work" as const),
      sentence: say(fullStop(capital(change.text)), [change]),
      why: `done on ${dayOnly(change.day, speechOf(here))}`,
      lots: [],
    }))
    .toReversed();
  return [...asked, ...works];
}

/** Nothing happened: what stands is still worth a look, and an empty bed is told as such. */
function standingPoints(here: BedOnTheDay): Candidate[] {
  if (here.growing.length === 0) {
    const text = `${capital(theBed(here.bed))} ${bedVerb(here.bed, "is", "are")} empty at the moment.`;
    return [{ kind: "standing", sentence: say(text, [here.bed]), why: "nothing grows in it", lots: [] }];
  }
  return batchesOf(here.growing)
    .slice(0, 2)
    .map((batch) => ({
      kind: "standing",
      sentence: standsNow(batch, here),
      why: here.since.episode === undefined ? "this bed has never been shown" : `nothing is noted ${here.since.text}`,
      lots: batch.lots,
    }));
}
