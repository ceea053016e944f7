/** The private field pages: everything, also what viewers never see. */

import { noWeather, type Weather } from "../../almanac/index.ts";
import { seasonOf } from "../../garden/index.ts";
import { capital, fullStop, sayTried } from "../../language/index.ts";
import type { Bed, Day, Garden } from "../../model.ts";
import type { PublishedPhoto, TimeLapse } from "../../photos/index.ts";
import { openFollowUps } from "../../timeline/index.ts";
import type { Ahead } from "../../tour/index.ts";
import { storyHtml } from "../story-html.ts";
import { TAP_SCRIPT } from "../workbench-files.ts";
import { bedGrowth } from "./bed-growth.ts";
import { bedFacts, bedSeasons, bedSize, growing } from "./bed-pages.ts";
import { type DayLines, dayLines } from "./day-lines.ts";
import { desk } from "./desk.ts";
import { fieldFollowUp, fieldTask, tasksOf } from "./field-tasks.ts";
import { type Jump, jumpsOf, notePages, notesOfBed, notesPage } from "./note-pages.ts";
import { once, onDemand, pagesOnDemand } from "./on-demand.ts";
import { recapLinks, recapPages } from "./recap-pages.ts";
import { seasonRibbon } from "./ribbon/season-ribbon.ts";
import type { FieldBedPage, FieldSite } from "./shapes.ts";
import { saySource } from "./sources.ts";
import { thenAndNowPages } from "./then-and-now.ts";
import { namingPage } from "./unnamed-photos.ts";
import { bedsInOrder, isPrivateBed, livingIn, type View, viewGarden } from "./view.ts";
import { viewpointPages, viewpointsOf } from "./viewpoint-pages.ts";

export interface FieldGiven {
  /** Copies by photo path. */
  readonly photos: ReadonlyMap<string, PublishedPhoto>;
  readonly comparisons?: ReadonlyMap<string, PublishedPhoto> | undefined;
  readonly weather?: Weather | undefined;
  readonly lapses?: readonly TimeLapse[] | undefined;
  /** Episodes that have a brief, and those of them that have a field list. */
  readonly briefs?: readonly string[] | undefined;
  readonly fieldLists?: readonly string[] | undefined;
  /** The week ahead; without it the desk tells only what is there today. */
  readonly ahead?: (() => Ahead) | undefined;
  /** Somebody is there to write what is tapped and typed. */
  readonly workbench?: WorkbenchStates | undefined;
}

/** What stands in a file, as a digest: in that beside a photo, and in any. */
export interface WorkbenchStates {
  stateBeside(photo: string): string;
  stateOf(file: string): string;
}

export function fieldSite(garden: Garden, today: Day, given: FieldGiven): FieldSite {
  const { photos, comparisons = new Map(), weather = noWeather, lapses = [], workbench } = given;
  // Field pages are opened on a phone or from a stick, never below somebody else's path.
  const view = viewGarden(garden, today, "/", photos, comparisons, { lapses, isPrivate: true });
  const notes = once(() => notePages(view, workbench?.stateOf));
  const naming = once(() => namingPage(view, workbench?.stateBeside));
  const jump = once(() => jumpsOf(view));
  const written = once(() => dayLines(view, jump()));
  return onDemand<FieldSite>({
    frame: () => ({
      garden: garden.settings.name,
      language: view.locale.tag,
      home: view.links.home,
      navigation: [],
      asOf: view.locale.day(today),
    }),
    home: () =>
      desk(view, {
        briefs: given.briefs ?? [],
        fieldLists: new Set(given.fieldLists),
        ahead: given.ahead?.(),
        recaps: recapLinks(view),
        naming: naming(),
        jump: jump(),
        ribbon: seasonRibbon(view, seasonOf(today, garden.settings.seasonStarts), weather, written()),
        stateOf: workbench?.stateOf,
      }),
    bedPages: () =>
      pagesOnDemand(
        bedsInOrder(view),
        ({ id }) => ({ id }),
        (bed): FieldBedPage => ({
          ...fieldBed(view, bed, { weather, jump: jump(), written: written() }),
          live: workbench === undefined ? undefined : liveBed(view, bed),
        }),
      ),
    thenAndNow: () => thenAndNowPages(view),
    viewpoints: () => viewpointPages(view, (bed) => isPrivateBed(view, bed)),
    naming,
    recaps: () => recapPages(view, weather, true),
    notes: () => notesPage(view, notes()),
    notePages: notes,
  });
}

/** A bed where something can be written and dropped: its photos, and those of each variety that grows there. */
function liveBed(view: View, bed: Bed): FieldBedPage["live"] {
  const grown = new Set(livingIn(view, bed.id).flatMap(({ variety }) => variety ?? []));
  return {
    write: view.links.writeAbout(bed.id),
    script: view.links.home + TAP_SCRIPT,
    drop: `bed=${encodeURIComponent(bed.id)}`,
    varieties: [...grown].map((id) => ({ drop: dropOf(id), name: view.garden.varieties.get(id)?.title ?? id })),
  };
}

function dropOf(variety: string): string {
  return `variety=${encodeURIComponent(variety)}`;
}

interface Around {
  readonly weather: Weather;
  readonly jump: Jump;
  readonly written: DayLines;
}

function fieldBed(view: View, bed: Bed, { weather, jump, written }: Around): FieldBedPage {
  const { garden, today, book, locale } = view;
  const { field } = view.words;
  const known = view.states.get(bed.id);
  const photos = book.byBed.get(bed.id) ?? [];
  return {
    id: bed.id,
    name: bed.title,
    isPrivate: isPrivateBed(view, bed),
    site: bed.site === undefined ? undefined : garden.sites.get(bed.site)?.title,
    facts: [
      ...[bedSize(view, bed)?.text].filter((size) => size !== undefined),
      ...bedFacts(view, bed),
      ...bed.shade.map((shade) => fullStop(field.shade(shade))),
    ],
    about: storyHtml(bed.body),
    ...bedSeasons(view, bed, weather, written),
    picture: photos[0] === undefined ? undefined : book.picture(photos[0]),
    now: livingIn(view, bed.id).map((planting) => {
      const variety = planting.variety === undefined ? undefined : garden.varieties.get(planting.variety);
      return {
        ...growing(view, planting),
        href: undefined,
        sayAs: variety?.sayAs,
        source: saySource(view.words, variety?.source),
        drop: variety && dropOf(variety.id),
      };
    }),
    troubles: (known?.troubles ?? [])
      .filter(({ ended }) => ended === undefined)
      .map((trouble) => ({
        text: `${fullStop(capital(trouble.cause))} ${field.seenOn(locale.day(trouble.opened, today))}`,
        tried: sayTried(trouble.tried, garden).map((what) => fullStop(capital(what))),
      })),
    tasks: tasksOf(view, bed).map((task) => fieldTask(view, task, jump)),
    followUps: openFollowUps(garden, today)
      .filter((followUp) => followUp.bed === bed.id)
      .map((followUp) => fieldFollowUp(view, followUp, jump)),
    viewpoints: viewpointsOf(view, bed).map(({ href, title, text }) => ({ href, name: title, text })),
    growth: bedGrowth(view, bed),
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
