/** Troubles of plants and beds: opened, what was tried against them, ended. */

import { daysBetween, seasonStart } from "../calendar.ts";
import type { ChangeEffect, Day, Event, Tried, Trouble } from "../model.ts";
import {
  type BedLedger,
  bedLedger,
  bedsMeant,
  type Growing,
  type Ledger,
  type OpenTrouble,
  plantIds,
} from "./ledger.ts";
import { become, byBed } from "./living-plantings.ts";
import { plantingsMeant } from "./plantings-meant.ts";
import { likeness, wordsOf } from "./same-words.ts";
import { addChange, at, notesWentOn, pushChange, report } from "./write-down.ts";

/** How much two causes must have in common to be one: "black fly" and "blackfly again" are. */
const sameCause = 0.5;

export function openTrouble(ledger: Ledger, event: Event): void {
  const meant = plantingsMeant(ledger, event);
  const plantings = meant.is === "plantings" ? meant.plantings : [];
  // Seedlings that ail in the nursery stand in no bed.
  if (meant.is === "lots") return;
  const here: ReadonlyMap<string, readonly Growing[]> =
    plantings.length > 0 ? byBed(plantings) : new Map(bedsMeant(ledger, event).map((bed) => [bed, []]));
  for (const [bed, growing] of here) openIn(ledger, event, bedLedger(ledger, bed), growing, here.size > 1);
}

function openIn(ledger: Ledger, event: Event, bed: BedLedger, growing: readonly Growing[], many: boolean): void {
  const cause = event.cause ?? event.what ?? event.detail ?? "something";
  const ids = growing.map(({ now }) => now.id);
  const known = bed.troubles.find(({ now }) => isSameCause(now.cause, cause) && concerns(now, ids));
  const named = plantIds(ledger.records, event).variety;
  const varieties = growing.map(({ now }) => now.variety).concat(growing.length === 0 ? named : []);
  const trouble: OpenTrouble = known ?? {
    now: {
      id: many ? `${event.id}@${bed.id}` : event.id,
      cause,
      varieties: [],
      plantings: [],
      opened: event.day,
      tried: [],
      private: event.private,
      place: event.place,
    },
  };
  trouble.now = {
    ...trouble.now,
    varieties: [...new Set([...trouble.now.varieties, ...varieties.filter((variety) => variety !== undefined)])],
    plantings: [...new Set([...trouble.now.plantings, ...ids])],
  };
  if (known === undefined) bed.troubles.push(trouble);
  const after = growing.map((one) => become(one, {}, event));
  addChange(ledger, event, {
    kind: "trouble opened",
    bed: bed.id,
    told: { is: "trouble", plantings: after, known: known !== undefined },
    effect: { plantings: after, troubles: [trouble.now] },
    cause,
  });
}

export function endTrouble(ledger: Ledger, event: Event): void {
  const meant = plantingsMeant(ledger, event);
  const growing = meant.is === "plantings" ? meant.plantings : [];
  const ids = growing.map(({ now }) => now.id);
  const cause = event.cause ?? event.what;
  const named = event.variety !== undefined || event.crop !== undefined;
  const beds = growing.length > 0 ? [...byBed(growing).keys()] : bedsMeant(ledger, event);
  const bedLedgers = beds.length > 0 ? beds.map((bed) => bedLedger(ledger, bed)) : [...ledger.beds.values()];
  let found = false;
  for (const bed of bedLedgers) {
    const over = bed.troubles.filter(
      ({ now }) => (cause === undefined || isSameCause(now.cause, cause)) && (!named || concerns(now, ids)),
    );
    for (const trouble of over) {
      found = true;
      close(bed, trouble, event.day);
      addChange(ledger, event, {
        kind: "trouble ended",
        bed: bed.id,
        told: {
          is: "trouble over",
          plantings: growing.filter(({ now }) => now.bed === bed.id).map(({ now }) => now),
          days: daysBetween(trouble.now.opened, event.day),
        },
        effect: { troubles: [trouble.now] },
        cause: trouble.now.cause,
      });
    }
  }
  if (!found) endUnknownTrouble(ledger, event, beds, growing);
}

function endUnknownTrouble(ledger: Ledger, event: Event, beds: readonly string[], growing: readonly Growing[]): void {
  const cause = event.cause ?? event.what ?? "the trouble";
  if (!endedWithPlants(ledger, event, cause, beds))
    report(ledger, { rule: "timeline/no-such-trouble", ...at(event), cause });
  for (const bed of beds) {
    const plantings = growing.filter(({ now }) => now.bed === bed).map(({ now }) => now);
    addChange(ledger, event, { kind: "trouble ended", bed, told: { is: "trouble over", plantings }, cause });
  }
}

/** Whether such a trouble ended a while ago because its plants were cleared or lost: then it is known to be over. */
function endedWithPlants(ledger: Ledger, event: Event, cause: string, beds: readonly string[]): boolean {
  const past = [...ledger.beds.values()].filter(({ id }) => beds.length === 0 || beds.includes(id));
  return past.some(({ pastTroubles }) =>
    pastTroubles.some(
      ({ now }) => now.ended !== undefined && daysBetween(now.ended, event.day) <= 60 && isSameCause(now.cause, cause),
    ),
  );
}

/**
 * Notes work as tried against the troubles that its line names, of the plants it names or, when it names none, of the bed: that
 * somebody took leaves off beside a trouble does not make it a treatment. Gives those troubles as they become. Private work
 * stays out of them, because a trouble can be public.
 */
export function tryAgainst(
  bed: BedLedger,
  event: Event,
  tried: Tried,
  { words, plantings }: { readonly words: string; readonly plantings: readonly string[] },
): ChangeEffect {
  if (event.private) return {};
  const said = wordsOf([event.text, words, event.reason, event.cause, event.detail, ...event.more].join(" "));
  const meant = bed.troubles.filter(
    ({ now }) =>
      isNamed(now.cause, said) && (plantings.length === 0 || now.plantings.some((id) => plantings.includes(id))),
  );
  for (const trouble of meant) trouble.now = { ...trouble.now, tried: [...trouble.now.tried, tried] };
  return meant.length === 0 ? {} : { troubles: meant.map(({ now }) => now) };
}

/** By its last word, "moth" of "leek moth": the words before it name plants too. "Black fly" is "blackfly". */
function isNamed(cause: string, said: readonly string[]): boolean {
  const words = wordsOf(cause);
  const last = words.at(-1);
  return last !== undefined && (said.includes(last) || ` ${said.join("")}`.includes(words.join("")));
}

/**
 * Troubles nobody wrote of again are taken as over when a season ends: those of a bed with the season they began in, those
 * of plants that live on (scale on a bay tree) with the one after it.
 */
export function forgetTroubles(ledger: Ledger, bed: BedLedger, lastDay: Day): void {
  const { seasonStarts } = ledger.records.settings;
  const season = seasonStart(lastDay, seasonStarts);
  const forgotten = bed.troubles.filter(({ now }) => now.plantings.length === 0 || now.opened < season);
  for (const trouble of forgotten) {
    const { opened, cause, place } = trouble.now;
    close(bed, trouble, lastDay);
    pushChange(ledger, {
      kind: "trouble ended",
      bed: bed.id,
      day: lastDay,
      event: trouble.now.id.replace(/@.*$/s, ""),
      note: place,
      private: trouble.now.private,
      told: { is: "trouble forgotten" },
      effect: { troubles: [trouble.now] },
      cause,
    });
    if (notesWentOn(ledger, lastDay, 0))
      report(ledger, { rule: "timeline/trouble-left-open", place, day: opened, cause });
  }
}

function close(bed: BedLedger, trouble: OpenTrouble, day: Day): void {
  bed.troubles = bed.troubles.filter((other) => other !== trouble);
  trouble.now = { ...trouble.now, ended: day };
}

function isSameCause(a: string, b: string): boolean {
  return likeness(wordsOf(a), wordsOf(b)) >= sameCause || wordsOf(a).join("") === wordsOf(b).join("");
}

/** Whether a trouble is of one of these plantings, or both are of the bed as a whole. */
function concerns(trouble: Trouble, plantings: readonly string[]): boolean {
  return plantings.length === 0
    ? trouble.plantings.length === 0
    : trouble.plantings.some((id) => plantings.includes(id));
}
