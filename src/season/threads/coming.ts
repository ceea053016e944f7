/** What comes next and why: plans of these days that no other thread has told, work with a day, what is still to be picked. */
import type { PlantIds } from "../../model.ts";
import type { Telling } from "./telling.ts";
import { type Part, part, type Thread, type Told } from "./thread.ts";

export function comingThread({ material }: Telling, others: readonly Thread[]): readonly Thread[] {
  const { book, from, to, past, forecasts } = material;
  const { garden } = book;
  const told = new Set(others.flatMap(({ next }) => (next?.sources ?? []).map(({ file, line }) => `${file}:${line}`)));
  const plans = garden.plans.filter(
    ({ said, private: hidden, place }) =>
      !hidden && said >= from && said <= to && !told.has(`${place.file}:${place.line}`),
  );
  const open = garden.events.filter(
    ({ kind, day, private: hidden, due }) =>
      kind === "to do" && !hidden && day >= from && day <= to && due !== undefined && due > to,
  );
  const tasks = open.map((event) =>
    part<Told>({ is: "task", what: event.what ?? event.text, due: event.due }, [event], to),
  );
  const soon = past
    ? []
    : forecasts
        .filter(({ private: hidden, overdue }) => !hidden && !overdue)
        .slice(0, 2)
        .map((one) =>
          part<Told>({ is: "expected", of: idsOf(one.planting), goal: one.goal, likely: one.likely }, [one], to),
        );
  const planned = plans.map((plan) => part<Told>({ is: "planned", what: plan.what, said: plan.said }, [plan], to));
  const [lead, ...rest] = [...planned, ...tasks, ...soon];
  if (lead === undefined) return [];
  const reasons = plans.flatMap((plan): Part<Told>[] =>
    plan.reason === undefined ? [] : [part({ is: "own words", text: plan.reason }, [plan], to)],
  );
  return [
    {
      kind: "next",
      about: {},
      worth: 48 + (plans.length > 0 ? 6 : 0),
      lead,
      now: rest,
      notes: reasons,
      gear: [],
      photos: [],
    },
  ];
}

/** "long-bed/crown-prince/2026-05-24" */
function idsOf(planting: string): PlantIds {
  return { variety: planting.split("/")[1] };
}
