/** What comes next at a stop, with its day: the last thing said, which leads on. */

import { daysBetween } from "../../calendar.ts";
import { own, toPause, type Way } from "../../films/index.ts";
import { capital, cultivar, dayOnly, plantName, sayMonth } from "../../language/index.ts";
import type { Day } from "../../model.ts";
import { habitOf } from "../../timeline/index.ts";
import { bySowing } from "../batches.ts";
import { type BedOnTheDay, type Lot, voiceOf } from "../bed-on-the-day.ts";
import type { Weighed } from "../candidates/candidate.ts";
import { expectedDay } from "../expected-picking.ts";
import { trialsIn } from "../trial-lines.ts";
import { takingHand } from "./hands.ts";

/** Further away than this a day is only a month. */
const monthsAway = 45;

/** What is shown first, then the soonest. */
export function nextWays(here: BedOnTheDay, show: readonly Weighed[]): readonly (readonly Way[])[] {
  const shown = new Set(show.flatMap(({ lots }) => lots));
  const waited = bySowing(here.growing)
    .flatMap(({ lots }) => {
      const [lot] = lots;
      const day = expectedDay(lot, here);
      const reached = lot.events.some(
        (event) => event.kind === (isFlower(lot) ? "flowered" : "picked") && event.day >= here.season,
      );
      return day === undefined || day <= here.day || reached || lot.planting.private ? [] : [{ lot, day }];
    })
    .toSorted((a, b) => Number(shown.has(b.lot)) - Number(shown.has(a.lot)) || (a.day < b.day ? -1 : 1));
  return [...trials(here), ...waited.map(({ lot, day }) => waitWays(lot, day, here)), ...tasks(here)];
}

function isFlower({ crop }: Lot): boolean {
  return crop?.use === "flower";
}

function waitWays(lot: Lot, day: Day, here: BedOnTheDay): readonly Way[] {
  const when = soonSaid(day, here);
  const grounds = [...lot.grounds, ...(lot.variety === undefined ? [] : [lot.variety])];
  const name = plantName(lot);
  if (isFlower(lot)) {
    return [
      { frame: "next flower", text: `${name} in flower ${when}`, grounds },
      { frame: "next opens", text: `Flowers on ${cultivar(lot)} ${when}`, grounds },
    ];
  }
  if (habitOf(lot.crop).atOnce === true) {
    return [
      { frame: "next lift", text: `${capital(takingHand(lot))} the ${name} ${when}`, grounds },
      { frame: "next all", text: `${name}, out ${when}`, grounds },
    ];
  }
  return [
    { frame: "next first", text: `The first ${name} ${when}`, grounds },
    { frame: "next ready", text: `${name}, ready ${when}`, grounds },
    { frame: "next taking", text: `${capital(takingHand(lot))} the first ${name} ${when}`, grounds },
    { frame: "next then", text: `${capital(when)}, if all goes well: ${name}`, grounds },
    {
      frame: "next wait",
      text: `${name}: wait ${when.replace(/^about/, "until about").replace(/^in/, "until")}`,
      grounds,
    },
  ];
}

/** "about 10 August", "in November". */
function soonSaid(day: Day, here: BedOnTheDay): string {
  const voice = voiceOf(here);
  if (daysBetween(here.day, day) > monthsAway) {
    return `in ${sayMonth(day, { language: voice.settings.language, near: here.day })}`;
  }
  return `about ${dayOnly(day, voice)}`;
}

function tasks(here: BedOnTheDay): readonly (readonly Way[])[] {
  return here.now.tasks
    .filter(({ done, due, private: hidden }) => done === undefined && due !== undefined && !hidden)
    .flatMap((task) => {
      const what = toPause(task.what, 7);
      const day = task.due ?? here.day;
      const due = `${day < here.day ? "due since" : "by"} ${dayOnly(day, voiceOf(here))}`;
      return what === undefined ? [] : [[own(`${capital(what)}, ${due}`, [task])]];
    });
}

function trials(here: BedOnTheDay): readonly (readonly Way[])[] {
  return trialsIn(here).flatMap((trial) => {
    if (trial.verdictDue === undefined || trial.verdictDue <= here.day) return [];
    const when = dayOnly(trial.verdictDue, voiceOf(here));
    return [
      [
        { frame: "next verdict", text: `My verdict on this trial, ${when}`, grounds: [trial] },
        { frame: "next settled", text: `To be settled on ${when}`, grounds: [trial] },
      ],
    ];
  });
}
