/** The private field pages: everything, also what viewers never see. */

import { noWeather, type Weather } from "../../almanac/index.ts";
import { addDays } from "../../calendar.ts";
import { capital, fullStop, sayTried } from "../../language/index.ts";
import type { Bed, Day, FollowUp, Garden, Problem, Severity, Task } from "../../model.ts";
import type { PublishedPhoto, TimeLapse } from "../../photos/index.ts";
import { changes, openFollowUps, openTasks } from "../../timeline/index.ts";
import { storyHtml } from "../story-html.ts";
import type { Words } from "../words/index.ts";
import { bedGrowth } from "./bed-growth.ts";
import { bedFacts, bedSize, growing, sayGrowing } from "./bed-pages.ts";
import { bedTimeline } from "./bed-timeline.ts";
import { notYetShown } from "./not-yet-shown.ts";
import { notePages, notesOfBed, notesPage } from "./note-pages.ts";
import { once, onDemand } from "./on-demand.ts";
import { recapPages } from "./recap-pages.ts";
import type { RecapPage } from "./recap-shapes.ts";
import type { FieldBedPage, FieldHomePage, FieldSite, FieldTask, Link, NamingPage } from "./shapes.ts";
import { saySource } from "./sources.ts";
import { thenAndNowPages } from "./then-and-now.ts";
import { namingPage } from "./unnamed-photos.ts";
import { bedsInOrder, livingIn, type View, viewGarden } from "./view.ts";
import { viewpointPages, viewpointsOf } from "./viewpoint-pages.ts";

/** Days of changes on a bed's field page. */
const RECENT = 60;

/** Problems listed before the rest is only counted. */
const LISTED_PROBLEMS = 20;

export function fieldSite(
  garden: Garden,
  today: Day,
  photos: ReadonlyMap<string, PublishedPhoto>,
  briefs: readonly string[],
  fieldLists: readonly string[],
  comparisons: ReadonlyMap<string, PublishedPhoto> = new Map(),
  weather: Weather = noWeather,
  lapses: readonly TimeLapse[] = [],
  stateBeside?: ((photo: string) => string) | undefined,
): FieldSite {
  // Field pages are opened on a phone or from a stick, never below somebody else's path.
  const view = viewGarden(garden, today, "/", photos, comparisons, { lapses, isPrivate: true });
  const recaps = once(() => recapPages(view, weather, true));
  const notes = once(() => notePages(view));
  const naming = once(() => namingPage(view, stateBeside));
  return onDemand<FieldSite>({
    frame: () => ({
      garden: garden.settings.name,
      language: view.locale.tag,
      home: view.links.home,
      navigation: [],
      asOf: view.locale.day(today),
    }),
    home: () => fieldHome(view, briefs, new Set(fieldLists), recaps(), naming()),
    bedPages: () => bedsInOrder(view).map((bed) => fieldBed(view, bed)),
    thenAndNow: () => thenAndNowPages(view),
    viewpoints: () => viewpointPages(view, (bed) => isPrivate(view, bed)),
    naming,
    recaps,
    notes: () => notesPage(view, notes()),
    notePages: notes,
  });
}

function fieldHome(
  view: View,
  briefs: readonly string[],
  fieldLists: ReadonlySet<string>,
  recaps: readonly RecapPage[],
  naming: NamingPage,
): FieldHomePage {
  const { garden, today, links } = view;
  const tasks = [...openTasks(garden, today), ...bedsInOrder(view).flatMap((bed) => tasksOf(view, bed))];
  return {
    briefs: briefs.map((name) => ({
      href: links.brief(name),
      text: garden.episodes.get(name)?.title ?? name,
      fieldList: fieldLists.has(name) ? links.fieldList(name) : undefined,
    })),
    tasks: [...tasks].sort(byDue).map((task) => fieldTask(view, task)),
    followUps: openFollowUps(garden, today).map((followUp) => fieldFollowUp(view, followUp)),
    beds: bedsInOrder(view).map((bed) => ({
      bed: { href: links.bed(bed.id), text: bed.title },
      site: (bed.site === undefined ? undefined : garden.sites.get(bed.site)?.title) ?? "",
      growing: sayGrowing(view, bed),
      isPrivate: isPrivate(view, bed),
    })),
    viewpoints: { href: links.viewpoints, text: view.words.field.sameSpots },
    naming: { href: links.naming, text: view.words.naming.title, summary: naming.summary },
    notes: {
      href: links.notes,
      text: view.words.field.readNotes,
      open: view.words.field.openQuestions(garden.readings.filter(({ as }) => as === "question").length),
    },
    recaps: recaps.map(({ href, name }) => ({ href, text: name })),
    notYetShown: notYetShown(view),
    problems: problems(view.words, garden.problems),
  };
}

function fieldBed(view: View, bed: Bed): FieldBedPage {
  const { garden, today, book, locale } = view;
  const { field } = view.words;
  const known = view.states.get(bed.id);
  const photos = book.byBed.get(bed.id) ?? [];
  return {
    id: bed.id,
    name: bed.title,
    isPrivate: isPrivate(view, bed),
    site: bed.site === undefined ? undefined : garden.sites.get(bed.site)?.title,
    facts: [
      ...[bedSize(view, bed)?.text].filter((size) => size !== undefined),
      ...bedFacts(view, bed),
      ...bed.shade.map((shade) => fullStop(field.shade(shade))),
    ],
    about: storyHtml(bed.body),
    picture: photos[0] === undefined ? undefined : book.picture(photos[0]),
    now: livingIn(view, bed.id).map((planting) => {
      const variety = planting.variety === undefined ? undefined : garden.varieties.get(planting.variety);
      return {
        ...growing(view, planting),
        href: undefined,
        sayAs: variety?.sayAs,
        source: saySource(view.words, variety?.source),
      };
    }),
    troubles: (known?.troubles ?? [])
      .filter(({ ended }) => ended === undefined)
      .map((trouble) => ({
        text: `${fullStop(capital(trouble.cause))} ${field.seenOn(locale.day(trouble.opened, today))}`,
        tried: sayTried(trouble.tried, garden).map((what) => fullStop(capital(what))),
      })),
    tasks: tasksOf(view, bed).map((task) => fieldTask(view, task)),
    followUps: openFollowUps(garden, today)
      .filter((followUp) => followUp.bed === bed.id)
      .map((followUp) => fieldFollowUp(view, followUp)),
    viewpoints: viewpointsOf(view, bed).map(({ href, title, text }) => ({ href, name: title, text })),
    growth: bedGrowth(view, bed),
    timeline: bedTimeline(view, changes(garden, bed.id, addDays(today, -RECENT), today), []),
    notes: garden.notes
      .filter((note) => note.beds.includes(bed.id) && note.story.length > 0 && note.day <= today)
      .toReversed()
      .map((note) => ({
        iso: note.day,
        day: locale.day(note.day),
        title: note.title,
        isPrivate: note.private,
        html: storyHtml(note.story.map(({ text }) => text).join("\n\n")),
        file: note.place.file,
      })),
    readNotes: notesOfBed(view, bed.id),
  };
}

function isPrivate(view: View, bed: Bed): boolean {
  return bed.private || (bed.site !== undefined && view.garden.sites.get(bed.site)?.private === true);
}

function tasksOf(view: View, bed: Bed): readonly Task[] {
  const open = (view.states.get(bed.id)?.tasks ?? []).filter(({ done }) => done === undefined);
  return open.map((task) => ({ ...task, bed: bed.id })).sort(byDue);
}

function byDue(a: Task, b: Task): number {
  const left = `${a.due ?? "9999"} ${a.opened} ${a.id}`;
  const right = `${b.due ?? "9999"} ${b.opened} ${b.id}`;
  return left < right ? -1 : left > right ? 1 : 0;
}

function fieldTask(view: View, task: Task): FieldTask {
  return {
    what: fullStop(capital(task.what)),
    bed: bedLink(view, task.bed),
    ...due(view, task.due),
    note: `${task.place.file}:${task.place.line}`,
  };
}

function fieldFollowUp(view: View, followUp: FollowUp): FieldTask {
  const { garden } = view;
  const film = followUp.episode === undefined ? undefined : garden.episodes.get(followUp.episode)?.title;
  const said = view.words.field.promised(view.locale.day(followUp.promisedOn, view.today), film);
  return {
    what: `${fullStop(capital(followUp.what))} ${said}`,
    bed: bedLink(view, followUp.bed),
    ...due(view, followUp.due),
    note: `${followUp.place.file}:${followUp.place.line}`,
  };
}

function due(view: View, day: Day | undefined): Pick<FieldTask, "due" | "isLate"> {
  if (day === undefined) return { due: undefined, isLate: false };
  const { due: said } = view.words.field;
  const isLate = day < view.today;
  const when = view.locale.weekdayAndDay(day, view.today);
  return { due: day === view.today ? said.today : isLate ? said.past(when) : said.coming(when), isLate };
}

function bedLink(view: View, id: string | undefined): Link | undefined {
  const bed = id === undefined ? undefined : view.garden.beds.get(id);
  return bed === undefined ? undefined : { href: view.links.bed(bed.id), text: bed.title };
}

const SEVERITIES: readonly Severity[] = ["error", "warning", "hint"];

function problems({ field }: Words, all: readonly Problem[]): FieldHomePage["problems"] {
  const counted = SEVERITIES.map(
    (severity) => [severity, all.filter((problem) => problem.severity === severity).length] as const,
  ).filter(([, n]) => n > 0);
  const inOrder = SEVERITIES.flatMap((severity) => all.filter((problem) => problem.severity === severity));
  const left = inOrder.length - LISTED_PROBLEMS;
  return {
    summary: counted.length === 0 ? field.nothingToMend : field.inAll(counted),
    lines: inOrder.slice(0, LISTED_PROBLEMS).map(({ severity, file, line, what, fix }) => ({
      severity: field.severity(severity),
      place: `${file}:${line}`,
      what,
      fix,
    })),
    more: left > 0 ? field.andMore(left) : "",
  };
}
