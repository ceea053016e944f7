/** What the calendar does by itself: annuals end with their season, perennials go into their next year. */
import { addDays } from "../calendar.ts";
import type { Day, Stage } from "../model.ts";
import { type Growing, type Ledger, plantKey } from "./ledger.ts";
import { become, takeOut } from "./living-plantings.ts";
import { daysIntoSpring, nextSeason, yearOfLife } from "./seasons.ts";
import { forgetTroubles } from "./troubles.ts";
import { notesWentOn, pushChange, report } from "./write-down.ts";

/** Lets time pass up to a day, before the events of that day are gone through. */
export function passTime(ledger: Ledger, to: Day): void {
  const ends = [...ledger.endings.keys()].filter((day) => day < to);
  const turns: Day[] = [];
  for (let turn = nextTurn(ledger); turn <= to; turn = nextTurn(ledger)) {
    turns.push(turn);
    ledger.season = turn;
  }
  if (ends.length === 0 && turns.length === 0) return;
  for (const day of [...new Set([...ends, ...turns.map((turn) => addDays(turn, -1))])].sort()) {
    for (const growing of ledger.endings.get(day) ?? []) endWithoutWord(ledger, growing, day);
    ledger.endings.delete(day);
    if (turns.includes(addDays(day, 1))) turnSeason(ledger, addDays(day, 1));
  }
}

function nextTurn(ledger: Ledger): Day {
  return nextSeason(ledger.season, ledger.records.settings.seasonStarts);
}

function turnSeason(ledger: Ledger, first: Day): void {
  for (const bed of ledger.beds.values()) {
    forgetTroubles(ledger, bed, addDays(first, -1));
    for (const growing of bed.living) {
      if (growing.now.perennial) beginNextYear(ledger, growing, first);
      else if (growing.endsBy === undefined && first <= ledger.lastDay) ledger.ofUnknownLife.add(growing);
    }
  }
}

/** What a perennial showed last season it has yet to show again. */
const passing: ReadonlySet<Stage> = new Set(["up", "flowering", "fruiting", "picking"]);

function beginNextYear(ledger: Ledger, growing: Growing, day: Day): void {
  const { seasonStarts } = ledger.records.settings;
  const begun = growing.now.sown ?? growing.now.planted;
  const year = begun === undefined ? undefined : yearOfLife(begun, day, seasonStarts);
  if (year === 1) return;
  const now = become(growing, passing.has(growing.now.stage) ? { stage: "growing", stageSince: day } : {});
  pushChange(ledger, {
    kind: "stage",
    bed: now.bed,
    day,
    event: now.firstEvent,
    note: now.lastNote,
    private: now.private,
    told: { is: "next year", plants: now, year },
    effect: { plantings: [now] },
  });
}

function endWithoutWord(ledger: Ledger, growing: Growing, day: Day): void {
  const before = growing.now;
  if (before.ended !== undefined) return;
  const troubles = takeOut(ledger, growing, day);
  const now = become(growing, { ended: day, stage: "finished", stageSince: day, takenToBeOver: true });
  const change = pushChange(ledger, {
    kind: "taken to be over",
    bed: now.bed,
    day,
    event: now.firstEvent,
    note: now.lastNote,
    private: now.private,
    told: { is: "taken to be over", plants: now },
    effect: { plantings: [now], troubles: troubles.map(({ trouble }) => trouble.now) },
  });
  if (growing.proven !== true) growing.endedWithoutWord = { change, before, troubles };
  ledger.endedWithoutWord.add(growing);
}

/**
 * Asks of plants whose season turned and that neither their file nor the table of crops knows: each variety once, while any
 * of it stands and nothing showed that it does come back.
 */
export function askWhetherTheyLast(ledger: Ledger): void {
  const asked = new Set<string>();
  for (const { now, cameBack } of ledger.ofUnknownLife) {
    const key = plantKey(now);
    if (now.ended !== undefined || cameBack === true || asked.has(key)) continue;
    asked.add(key);
    report(ledger, {
      rule: "timeline/annual-or-perennial",
      place: now.lastNote,
      day: now.since,
      plants: now,
      bed: now.bed,
    });
  }
}

/** Hints for plantings that no line ended, once the notes have gone on so long that it will not come any more. */
export function reportEndings(ledger: Ledger): void {
  for (const { now } of ledger.endedWithoutWord) {
    if (now.ended === undefined || !notesWentOn(ledger, now.ended, daysIntoSpring)) continue;
    const { lastNote: place, bed, ended } = now;
    report(ledger, { rule: "timeline/never-cleared", place, day: ended, plants: now, bed, ended });
  }
}
