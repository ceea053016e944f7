/** Today's desk, the first of the private pages: what is to be done now, each thing once, errors last. */
import { addDays, daysBetween } from "../../calendar.ts";
import { cropOf } from "../../crop-of.ts";
import { sayList, varietyName } from "../../language/index.ts";
import type { Day, Planting, Problem, Severity } from "../../model.ts";
import { isBeingPicked, openFollowUps, openTasks } from "../../timeline/index.ts";
import { type Ahead, askedNow } from "../../tour/index.ts";
import { WRITE_SCRIPT } from "../workbench-files.ts";
import { sayGrowing } from "./bed-pages.ts";
import { bedLink, byDue, fieldFollowUp, fieldTask, tasksOf } from "./field-tasks.ts";
import { notYetShown } from "./not-yet-shown.ts";
import { ASKED, type Jump } from "./note-pages.ts";
import type {
  AskedLine,
  DeskFilm,
  FieldHomePage,
  FieldTask,
  Folded,
  Link,
  NamingPage,
  SeasonRibbon,
} from "./shapes.ts";
import { bedsInOrder, isPrivateBed, livingIn, type View } from "./view.ts";

/** Days that "this week" reaches ahead. */
const WEEK = 7;

/** What is listed of each kind before the rest is folded away or only counted. */
const LISTED = { owed: 6, best: 8, names: 12, photos: 3, questions: 6, problems: 20 } as const;

/** What of these stands open on a screen that a hand holds. */
const OPEN = { questions: 2, problems: 5 } as const;

export interface DeskGiven {
  readonly briefs: readonly string[];
  readonly fieldLists: ReadonlySet<string>;
  readonly ahead: Ahead | undefined;
  readonly recaps: readonly Link[];
  readonly naming: NamingPage;
  readonly jump: Jump;
  readonly ribbon: SeasonRibbon | undefined;
  /** Only while somebody is there to write. */
  readonly stateOf: ((file: string) => string) | undefined;
}

export function desk(view: View, given: DeskGiven): FieldHomePage {
  const { today, links, words, locale } = view;
  const { jump, recaps, naming, stateOf } = given;
  const film = nextFilm(view, given.briefs);
  return {
    day: locale.weekdayAndDay(today, today),
    writing:
      stateOf === undefined
        ? undefined
        : {
            day: today,
            beds: bedsInOrder(view).map(({ id, title }) => ({ id, href: links.bed(id), text: title })),
            script: links.home + WRITE_SCRIPT,
          },
    outdoors: { href: links.outdoors, text: words.desk.outdoors },
    film: film === undefined ? undefined : deskFilm(view, film, given.fieldLists),
    owed: owed(view, jump),
    best: best(view, given.ahead),
    tasks: tasks(view, jump),
    naming: {
      href: links.naming,
      text: words.naming.title,
      summary: naming.summary,
      photos: naming.photos.slice(0, LISTED.photos).map(({ picture }) => picture),
    },
    questions: questions(view, jump, stateOf),
    ribbon: given.ribbon,
    asks: askedNow(view.garden, today).map(({ id, text, why, taps, such }) => ({
      id,
      text,
      why,
      taps,
      such,
      isLive: stateOf !== undefined,
    })),
    beds: bedsInOrder(view).map((bed) => ({
      bed: { href: links.bed(bed.id), text: bed.title },
      drop: stateOf === undefined ? undefined : `bed=${encodeURIComponent(bed.id)}`,
      site: (bed.site === undefined ? undefined : view.garden.sites.get(bed.site)?.title) ?? "",
      growing: sayGrowing(view, bed),
      isPrivate: isPrivateBed(view, bed),
    })),
    others: [
      ...given.briefs.filter((name) => name !== film).map((name) => briefLink(view, name)),
      { href: links.notes, text: words.field.readNotes },
      { href: links.viewpoints, text: words.field.sameSpots },
      ...recaps.map(({ href, text }) => ({ href, text: words.field.recapOf(text) })),
    ],
    ...unseen(view),
    problems: problems(view, jump),
  };
}

/** The first whose day is still to come; else the last of those whose day is past and that are not filmed yet. */
function nextFilm({ garden, today }: View, briefs: readonly string[]): string | undefined {
  const days = briefs
    .map((name) => ({ name, day: garden.episodes.get(name)?.day ?? "" }))
    .sort((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : 0));
  return (days.find(({ day }) => day >= today) ?? days.at(-1))?.name;
}

function briefLink({ garden, links }: View, name: string): Link {
  return { href: links.brief(name), text: garden.episodes.get(name)?.title ?? name };
}

function deskFilm(view: View, name: string, fieldLists: ReadonlySet<string>): DeskFilm {
  const { garden, today, words, locale, links } = view;
  const day = garden.episodes.get(name)?.day ?? today;
  return {
    brief: briefLink(view, name),
    when: words.desk.when(daysBetween(today, day), locale.weekdayAndDay(day, today)),
    fieldList: fieldLists.has(name) ? links.fieldList(name) : undefined,
  };
}

function owed(view: View, jump: Jump): Folded<FieldTask> {
  const all = openFollowUps(view.garden, view.today).map((followUp) => fieldFollowUp(view, followUp, jump));
  const later = all.slice(LISTED.owed);
  return { now: all.slice(0, LISTED.owed), later, laterSaid: view.words.desk.more(later.length) };
}

function tasks(view: View, jump: Jump): Folded<FieldTask> {
  const { garden, today, words } = view;
  const all = [...openTasks(garden, today), ...bedsInOrder(view).flatMap((bed) => tasksOf(view, bed))].sort(byDue);
  const isNow = ({ due }: { readonly due?: Day | undefined }) => due !== undefined && due <= addDays(today, WEEK);
  const later = all.filter((task) => !isNow(task));
  const shown = (some: typeof all) => some.map((task) => fieldTask(view, task, jump));
  return { now: shown(all.filter(isNow)), later: shown(later), laterSaid: words.desk.notThisWeek(later.length) };
}

/** What will soon be gone, what should come within the week, what is there today. */
function best(view: View, ahead: Ahead | undefined): FieldHomePage["best"] {
  const { today, words, locale } = view;
  const until = addDays(today, WEEK);
  const when = (day: Day) => locale.weekdayAndDay(day, today);
  const coming = [
    ...(ahead?.deadlines ?? [])
      .filter(({ kind, day }) => kind === "soon gone" && day <= until)
      .map(({ about, day, bed }) => ({ text: words.desk.lastLook(about, when(day)), bed: bedLink(view, bed) })),
    ...(ahead?.expected ?? [])
      .filter(({ kind, day }) => kind !== "verdict" && day <= until)
      .map(({ about, day, bed, kind }) => ({
        text: kind === "ready" ? words.desk.ready(about, when(day)) : words.desk.toFlower(about, when(day)),
        bed: bedLink(view, bed),
      })),
  ];
  const inFlower = namesOf(view, ({ stage, ended }) => stage === "flowering" && ended === undefined);
  const picking = namesOf(view, (planting) => isBeingPicked(planting, today));
  return [
    ...coming.slice(0, LISTED.best),
    ...(inFlower === "" ? [] : [{ text: words.desk.inFlower(inFlower) }]),
    ...(picking === "" ? [] : [{ text: words.desk.picking(picking) }]),
  ];
}

function namesOf(view: View, isMeant: (planting: Planting) => boolean): string {
  const { garden } = view;
  const names = new Set(
    bedsInOrder(view)
      .flatMap((bed) => livingIn(view, bed.id))
      .filter(isMeant)
      .map((planting) =>
        varietyName(
          planting.variety === undefined ? undefined : garden.varieties.get(planting.variety),
          cropOf(garden, planting),
        ),
      ),
  );
  const all = [...names].sort(view.compare);
  const few = all.slice(0, LISTED.names);
  return sayList(few.length === all.length ? few : [...few, view.words.sentences.bed.more(all.length - few.length)]);
}

/** The newest first: what was written last is what a person still knows. */
function questions(view: View, jump: Jump, stateOf: DeskGiven["stateOf"]): FieldHomePage["questions"] {
  const { garden, today, words } = view;
  const days = new Map(garden.notes.map(({ place, day }) => [place.file, day]));
  const all = garden.readings
    .filter(({ as, place }) => as === "question" && (days.get(place.file) ?? "") <= today)
    .toSorted((a, b) => ((days.get(a.place.file) ?? "") < (days.get(b.place.file) ?? "") ? 1 : -1));
  const asked = all.slice(0, LISTED.questions).map(({ place: { file, line }, text, readings }): AskedLine => {
    return {
      text,
      from: jump(file, line),
      offered: readings.map(({ line: plain }) => plain.split("\n").filter((one) => one !== "")),
      tap: stateOf === undefined ? undefined : { file, line, state: stateOf(file) },
    };
  });
  const open = Math.min(OPEN.questions, asked.length);
  return {
    asked,
    open,
    laterSaid: words.desk.more(asked.length - open),
    more: all.length > asked.length ? words.desk.moreQuestions(all.length - asked.length) : "",
  };
}

function unseen(view: View): Pick<FieldHomePage, "notYetShown" | "notYetShownSaid"> {
  const hints = notYetShown(view);
  return { notYetShown: hints, notYetShownSaid: view.words.desk.lines(hints.length) };
}

const SEVERITIES: readonly Severity[] = ["error", "warning", "hint"];

/** Without the questions, which stand above. */
function problems({ garden, words: { field, desk } }: View, jump: Jump): FieldHomePage["problems"] {
  const all = garden.problems.filter(({ rule }: Problem) => rule !== ASKED);
  const counted = SEVERITIES.map(
    (severity) => [severity, all.filter((problem) => problem.severity === severity).length] as const,
  ).filter(([, n]) => n > 0);
  const inOrder = SEVERITIES.flatMap((severity) => all.filter((problem) => problem.severity === severity));
  const left = inOrder.length - LISTED.problems;
  const listed = inOrder.slice(0, LISTED.problems);
  const open = Math.min(OPEN.problems, listed.filter(({ severity }) => severity !== "hint").length);
  return {
    summary: counted.length === 0 ? field.nothingToMend : field.inAll(counted),
    open,
    laterSaid: desk.more(listed.length - open),
    lines: listed.map(({ severity, file, line, what, fix }) => ({
      severity: field.severity(severity),
      from: jump(file, line),
      what,
      fix,
    })),
    more: left > 0 ? field.andMore(left) : "",
  };
}
