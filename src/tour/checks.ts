/** Before you film: what is missing, doubtful or overdue, as notes to the person. */

import { daysBetween } from "../calendar.ts";
import type { Book } from "../garden/index.ts";
import {
  capital,
  cultivar,
  type Ground,
  inBed,
  isSingular,
  isUnnamed,
  looksHardToSay,
  onDay,
  type Sentence,
  say,
  sayList,
  sayNumber,
  sayPlural,
  theBed,
  thePlants,
  type Voice,
  withPreposition,
} from "../language/index.ts";
import { openTasks } from "../timeline/index.ts";
import type { BedOnTheDay, Lot } from "./bed-on-the-day.ts";
import type { Check } from "./brief.ts";
import { doubtsNoted } from "./doubts.ts";
import { ownLinesAt } from "./own-lines.ts";
import type { PhotosByBed } from "./spot.ts";
import { isOverdue, taskLine } from "./task-lines.ts";
import { trialsIn } from "./trial-lines.ts";

/** Longer lists than this end in the number of the rest. */
const mostListed = 6;

export function checksBefore(
  index: Book,
  stops: readonly BedOnTheDay[],
  photos: PhotosByBed,
  voice: Voice,
): readonly Check[] {
  return [
    ...sourceChecks(stops),
    ...nameChecks(stops),
    ...unnamedChecks(stops),
    ...unreadChecks(stops),
    ...taskChecks(index, stops, voice),
    ...doubtsNoted(index, stops, voice).map((sentence) => check("doubt", sentence)),
    ...photoChecks(stops, photos, voice),
    ...trialChecks(stops, voice),
  ];
}

export function check(kind: Check["kind"], sentence: Sentence, bed?: string): Check {
  return { ...sentence, kind, bed };
}

/** "Where did the white courgettes and the basil by the door come from?" */
function sourceChecks(stops: readonly BedOnTheDay[]): readonly Check[] {
  const lots = distinctVarieties(stops).filter(
    ({ lot }) => lot.variety?.source === undefined && lot.planting.plantsFrom === undefined && !isUnnamed(lot),
  );
  if (lots.length === 0) return [];
  const names = lots.map(({ lot, here }) => `${thePlants(lot, lot.plants)}${spotWords(lot, here, lots.length)}`);
  return [
    check(
      "source",
      say(
        `Where did ${shortList(names)} come from?`,
        lots.map(({ lot }) => groundOf(lot)),
      ),
    ),
  ];
}

/** Where a thing is, when few are listed and the words help to find it. */
function spotWords(lot: Lot, here: BedOnTheDay, listed: number): string {
  if (listed > 3) return "";
  if (lot.planting.spot === undefined) return ` ${inBed(here.bed)}`;
  const spot = withPreposition(lot.planting.spot);
  return spot.startsWith("in ") ? ` ${spot} of ${theBed(here.bed)}` : ` ${spot} ${inBed(here.bed)}`;
}

function nameChecks(stops: readonly BedOnTheDay[]): readonly Check[] {
  const lots = distinctVarieties(stops).filter(
    ({ lot: { variety, crop } }) =>
      variety !== undefined &&
      variety.sayAs === undefined &&
      !isUnnamed({ variety, crop }) &&
      looksHardToSay(cultivar({ variety, crop })),
  );
  if (lots.length === 0) return [];
  const names = lots.map(({ lot }) => cultivar(lot));
  const who = lots.length === 1 ? `How is ${names[0]} said?` : `How are these said: ${shortList(names)}?`;
  return [
    check(
      "say it as",
      say(
        who,
        lots.map(({ lot }) => groundOf(lot)),
      ),
    ),
  ];
}

/** "Which variety are the lettuces in the cold frame?" */
function unnamedChecks(stops: readonly BedOnTheDay[]): readonly Check[] {
  return stops.flatMap((here) => {
    const lots = here.growing.filter((lot) => isUnnamed(lot));
    if (lots.length === 0) return [];
    const names = lots.map((lot) =>
      thePlants({ crop: lot.crop, variety: lot.crop === undefined ? lot.variety : undefined }, lot.plants),
    );
    const distinct = [...new Set(names)];
    const one = distinct.length === 1 && lots.every((lot) => isSingular(lot, lot.plants));
    const text = `Which variety ${one ? "is" : "are"} ${sayList(distinct)} ${inBed(here.bed)}?`;
    return [
      check(
        "unnamed",
        say(
          text,
          lots.flatMap((lot) => lot.events.slice(0, 1)),
        ),
        here.bed.id,
      ),
    ];
  });
}

/** One line for the whole tour: what is still a question is told nowhere as a fact. */
function unreadChecks(stops: readonly BedOnTheDay[]): readonly Check[] {
  const lines = new Map(
    stops.flatMap((here) =>
      ownLinesAt(here)
        .now.filter(({ asks }) => asks)
        .map((line) => [`${line.place.file}:${line.place.line}`, line] as const),
    ),
  );
  if (lines.size === 0) return [];
  const are = lines.size === 1 ? "is still a question" : "are still questions";
  const text = `${capital(sayPlural(lines.size, "line", "lines"))} of your notes about these stops ${are}; “plotreel settle” asks.`;
  return [check("unread", say(text, [...lines.values()]))];
}

function taskChecks(index: Book, stops: readonly BedOnTheDay[], voice: Voice): readonly Check[] {
  const ofBeds = stops.flatMap((here) => here.now.tasks.filter((task) => task.done === undefined));
  const overdue = [...ofBeds, ...openTasks(index.garden, voice.day)].filter((task) => isOverdue(task.due, voice.day));
  const distinct = [...new Map(overdue.map((task) => [task.id, task])).values()];
  return distinct
    .toSorted((a, b) => ((a.due ?? "") < (b.due ?? "") ? -1 : 1))
    .map((task) => {
      const { text, sources, private: isPrivate } = taskLine(task, voice);
      return { text, sources, private: isPrivate, kind: "task", bed: task.bed };
    });
}

/** "No photo of the tunnel's north side for 16 days." */
function photoChecks(stops: readonly BedOnTheDay[], photos: PhotosByBed, voice: Voice): readonly Check[] {
  const gap = voice.settings.photoGapDays;
  const never: BedOnTheDay[] = [];
  const old = new Map<number, BedOnTheDay[]>();
  for (const here of stops) {
    const last = (photos.get(here.bed.id) ?? []).findLast((photo) => (photo.day ?? "") <= voice.day)?.day;
    if (last === undefined) never.push(here);
    else {
      const days = daysBetween(last, voice.day);
      if (days >= gap) old.set(days, [...(old.get(days) ?? []), here]);
    }
  }
  const lines = [...old]
    .sort(([a], [b]) => b - a)
    .map(([days, beds]) =>
      check("photo", say(`No photo of ${bedList(beds)} for ${sayPlural(days, "day", "days")}.`, [])),
    );
  if (never.length === 0) return lines;
  const text =
    never.length === stops.length && stops.length > 1
      ? "There is no photo yet of any bed in this tour."
      : `No photo yet of ${bedList(never)}.`;
  return [...lines, check("photo", say(text, []))];
}

function bedList(beds: readonly BedOnTheDay[]): string {
  return shortList(beds.map((here) => theBed(here.bed)));
}

function trialChecks(stops: readonly BedOnTheDay[], voice: Voice): readonly Check[] {
  const due = stops.flatMap((here) => trialsIn(here)).filter((trial) => (trial.verdictDue ?? "9999") <= voice.day);
  return [...new Set(due)].map((trial) =>
    check("trial", say(`${trial.title}: the verdict was due ${onDay(trial.verdictDue ?? voice.day, voice)}.`, [trial])),
  );
}

/** One lot for each variety of the tour, in walking order. */
function distinctVarieties(
  stops: readonly BedOnTheDay[],
): readonly { readonly lot: Lot; readonly here: BedOnTheDay }[] {
  const found = new Map<string, { lot: Lot; here: BedOnTheDay }>();
  for (const here of stops) {
    for (const lot of here.growing) {
      const key = lot.planting.variety ?? lot.planting.id;
      if (!found.has(key)) found.set(key, { lot, here });
    }
  }
  return [...found.values()];
}

function groundOf(lot: Lot): Ground | undefined {
  return lot.variety?.place === undefined ? lot.events[0] : lot.variety;
}

function shortList(names: readonly string[]): string {
  if (names.length <= mostListed + 1) return sayList(names);
  return sayList([...names.slice(0, mostListed), `${sayNumber(names.length - mostListed)} more`]);
}
