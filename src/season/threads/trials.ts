/** A trial as far as it can be told: what came out ahead, by how much, and whether so few plots can tell anything. */
import { sentencesOf } from "../../language/index.ts";
import type { MeasureResult, TrialResult } from "../trial-results.ts";
import type { Telling } from "./telling.ts";
import { type Figure, type Part, part, type Thread, type Told } from "./thread.ts";

export function trialThreads({ material }: Telling): readonly Thread[] {
  return material.trials.filter((one) => !one.private && !one.trial.private).map((one) => threadOf(one, material.to));
}

/** Plots a side from which on a trial can begin to tell. */
const enough = 4;

function threadOf({ trial, measures, own, remarks }: TrialResult, to: string): Thread {
  const measure = measures.find(({ compared }) => compared !== undefined);
  const plots =
    measure === undefined ? 0 : Math.min(...measure.arms.map((arm) => arm.plots.length).filter((n) => n > 0));
  const few: Part<Told>[] =
    measure === undefined || plots >= enough
      ? []
      : [part({ is: "too few plots", plots, kind: kindOfPlot(measure) }, [trial, measure.verdict], to)];
  const verdict =
    own === undefined ? [] : sentencesOf(own.text).map((text) => part<Told>({ is: "own words", text }, [own], to));
  return {
    kind: "trial",
    about: {},
    worth: 50 + (measure === undefined ? 0 : 10) + (own === undefined ? 0 : 6) + (trial.status === "settled" ? 4 : 0),
    lead: part({ is: "asked", question: trial.question, title: trial.title }, [trial], to),
    now: [
      ...verdict.slice(0, 1),
      ...few,
      ...verdict.slice(1),
      ...remarks.slice(0, 2).map((one) => part<Told>({ is: "own words", text: one.text }, [one], to)),
    ],
    figure: measure === undefined ? undefined : armsOf(measure, to),
    notes: [],
    gear: [],
    photos: [],
  };
}

function kindOfPlot({ arms }: MeasureResult): string | undefined {
  return arms.flatMap((arm) => arm.plots).find(({ plot }) => plot !== undefined)?.plot?.kind;
}

/** The two arms furthest apart, of a measure of which more can be said than that one was first. */
function armsOf({ measure, arms, compared, verdict }: MeasureResult, to: string): Part<Figure> | undefined {
  if (compared === undefined || measure.kind === "days") return undefined;
  const mean = (name: string) => arms.find((arm) => arm.name === name)?.mean;
  const [high, low] = [mean(compared.higher), mean(compared.lower)];
  if (high === undefined || low === undefined || low <= 0) return undefined;
  return part({ is: "arms", higher: compared.higher, lower: compared.lower, ratio: high / low }, [verdict], to);
}
