/** What to say at a stop, in order, ready to be read aloud: the link, what was seen last, the things shown, what comes next. */
import { daysBetween } from "../calendar.ts";
import { dayOnly, inTurn, type Sentence, say } from "../language/index.ts";
import { bySowing, theBatch } from "./batches.ts";
import { type BedOnTheDay, voiceOf } from "./bed-on-the-day.ts";
import type { OutlineLine, ShowKind } from "./brief.ts";
import type { Weighed } from "./candidates/candidate.ts";
import { aboutWhen, expectedDay, expectedFact } from "./expected-picking.ts";
import { lastSeen, wasBare } from "./last-seen.ts";

/** The order in which things are told, whatever their worth: promises and news first, work and questions last. */
const tellingOrder: readonly ShowKind[] = [
  "owed",
  "new",
  "first time",
  "up",
  "first flower",
  "in flower",
  "first fruit",
  "ready",
  "first picking",
  "only picking",
  "picking",
  "last year",
  "a year ago",
  "grew",
  "side by side",
  "trial",
  "trouble",
  "trouble over",
  "lost",
  "finished",
  "going",
  "due soon",
  "built",
  "work",
  "question",
  "standing",
];

export function outlineOf(
  here: BedOnTheDay,
  link: OutlineLine,
  show: readonly Weighed[],
  closing: OutlineLine | undefined,
): readonly OutlineLine[] {
  const told = show.toSorted((a, b) => tellingOrder.indexOf(a.kind) - tellingOrder.indexOf(b.kind));
  // The link has said it already when the bed was bare.
  const seen = wasBare(here) || here.since.episode === undefined ? [] : lastSeen(here, "you");
  return [
    link,
    ...seen.filter((line) => !line.private).map(aloud),
    ...told.map(({ said, sentence }) => aloud(said ?? sentence)),
    ...(closing === undefined ? [] : [closing]),
  ];
}

/** Cues for the eye are no words to say. */
function aloud({ text, sources }: Sentence): OutlineLine {
  return { text: text.replace(/ \(say [^)]+\)/g, ""), sources };
}

/** Further ahead than this nobody waits for it. */
const soonEnough = 60;

/** "Next here: the Chioggia beetroot, ready from about 26 July." What is expected next and was not just told. */
export function closingLine(
  here: BedOnTheDay,
  show: readonly Weighed[],
  tour: string,
  turn: number,
): OutlineLine | undefined {
  const expected: ReadonlySet<ShowKind> = new Set(["due soon", "ready", "going"]);
  const told = new Set(show.flatMap(({ kind, lots }) => (expected.has(kind) ? lots : [])));
  const coming = bySowing(here.growing).flatMap((batch) => {
    const day = expectedDay(batch.lots[0], here);
    if (day === undefined || day <= here.day || daysBetween(here.day, day) > soonEnough) return [];
    const fact = batch.lots.some((lot) => told.has(lot)) ? undefined : expectedFact(batch, here);
    return fact === undefined || fact.private ? [] : [{ batch, day, fact }];
  });
  const next = coming.toSorted((a, b) => (a.day < b.day ? -1 : 1))[0];
  if (next !== undefined) {
    const state = next.batch.crop?.use === "flower" ? "in flower" : "ready";
    const when = `${state} ${aboutWhen(next.batch.lots[0], next.day, here)}`;
    const who = theBatch(next.batch);
    return line(
      inTurn(tour, turn, [
        `Next here: ${who}, ${when}.`,
        `Still to come: ${who}, ${when}.`,
        `Look out for ${who}, ${when}.`,
      ]),
      next.fact,
    );
  }
  const task = here.now.tasks.find(
    ({ what, done, due, private: own }) =>
      done === undefined && !own && due !== undefined && due >= here.day && /^(?:sow|plant|set out)\b/i.test(what),
  );
  if (task?.due === undefined) return undefined;
  const { text, sources } = say(
    `The plan for here: ${task.what.replace(/[.;,\s]+$/, "")}, by ${dayOnly(task.due, voiceOf(here))}.`,
    [task],
  );
  return { text, sources };
}

function line(text: string, { sources }: Sentence): OutlineLine {
  return { text, sources };
}
