/** The parts of a recap film in their order, each with what there is to say, how strongly and why. */

import { say } from "../language/index.ts";
import type { Day } from "../model.ts";
import { comingPoints, nextYearPoints } from "./coming-points.ts";
import { type DraftPoint, type DraftSegment, falling, type Material, point } from "./material.ts";
import type { PromiseRow, SegmentKind } from "./recap.ts";
import { resultPoints } from "./result-points.ts";
import type { TrialResult } from "./trial-results.ts";

const seasonTitles = {
  season: "The season",
  month: "The month",
  "since the last recap": "Since the last recap",
} as const;

export function draftSegments(material: Material): readonly DraftSegment[] {
  const segments: DraftSegment[] = [
    segment(
      "season",
      seasonTitles[material.kind],
      material.paragraph.map((one, index) => point(one, "must", "the season in short", 100 - index)),
    ),
    segment("weather", "The weather", weatherPoints(material)),
    segment(
      "best",
      "What did best",
      material.standings.best.map((one, index) =>
        point(one, index === 0 ? "must" : "should", one.why, falling(80, index)),
      ),
    ),
    segment("worst", "What went wrong", worstPoints(material)),
    segment("results", "What it came to", resultPoints(material)),
    {
      ...segment(
        "growth",
        "The same spot through the season",
        material.photos.map((one, index) =>
          point(one, index === 0 ? "should" : "could", "seen from one spot", falling(46, index)),
        ),
      ),
      photos: material.photos,
    },
    segment("trials", "Trials", material.trials.flatMap(trialPoints)),
    segment(
      "promises",
      "Promises",
      material.promises.map((one) => promisePoint(one, material.from)),
    ),
    segment("to come", "Still to come", comingPoints(material)),
    segment("next year", "Next year", nextYearPoints(material)),
    segment("questions", "Questions and thanks", [
      ...material.credits.questions.map((one, index) => point(one, "could", "viewers asked", falling(38, index))),
      ...material.credits.thanks.map((one, index) =>
        point(one, "should", "somebody gave or lent it", falling(50, index)),
      ),
    ]),
  ];
  return segments
    .map((one) => ({ ...one, points: one.points.filter(({ sentence }) => !sentence.private && sentence.text !== "") }))
    .filter(({ points }) => points.length > 0);
}

function segment(kind: SegmentKind, title: string, points: readonly DraftPoint[]): DraftSegment {
  return { kind, title, points, photos: [] };
}

function weatherPoints({ weather }: Material): readonly DraftPoint[] {
  const sentences = weather?.sentences ?? [];
  return sentences.map((one, index) =>
    point(
      one,
      /frost|degree days/.test(one.text) && index < 3 ? "should" : "could",
      "the year's weather",
      falling(48, index),
    ),
  );
}

/** Varieties first, then causes that the varieties have not told. */
function worstPoints({ standings, losses, book }: Material): readonly DraftPoint[] {
  const told = new Set(standings.worst.map(({ variety }) => book.garden.varieties.get(variety)?.title ?? ""));
  const causes = losses.filter(
    ({ what, standing, plants }) =>
      (standing === "open" || plants > 1) &&
      !what.every((name) => [...told].some((title) => title !== "" && name.includes(title))),
  );
  return [
    ...standings.worst.map((one, index) => point(one, index === 0 ? "must" : "should", one.why, falling(72, index))),
    ...causes.map(({ sentence, standing }, index) =>
      point(
        sentence,
        standing === "open" ? "should" : "could",
        standing === "open" ? "it is not over" : "plants were lost",
        falling(56, index),
      ),
    ),
  ];
}

function trialPoints({ trial, measures, besides, own, remarks }: TrialResult): readonly DraftPoint[] {
  const asked = /[?!.]$/.test(trial.question.trim()) ? trial.question.trim() : `${trial.question.trim()}?`;
  const [first, ...rest] = measures;
  const question = say(asked, [trial]);
  return [
    point(question, "must", "a trial of this season", 78),
    ...(first === undefined ? [] : [point(first.verdict, "must", "what the figures can tell", 77)]),
    ...rest.map(({ verdict }) => point(verdict, "should", "what the figures can tell", 52)),
    ...(besides === undefined ? [] : [point(besides, "should", "it weighs in as well", 51)]),
    ...remarks.map((one) => point(one, "could", "noted beside the figures", 24)),
    ...(own === undefined ? [] : [point({ ...own, text: `Verdict: “${own.text}”` }, "should", "you settled it", 54)]),
  ];
}

function promisePoint(row: PromiseRow, from: Day): DraftPoint {
  if (row.standing === "broken") {
    const now = row.due !== undefined && row.due >= from;
    return point(row, now ? "must" : "should", "still owed", now ? 74 : 50);
  }
  if (row.standing === "open" && row.due === undefined) return point(row, "could", "promised", 34);
  return row.standing === "open" ? point(row, "should", "promised", 44) : point(row, "could", "promised and kept", 36);
}
