/**
 * Both sites while records are edited: pages are made when somebody asks for them, from the newest garden, and open pages
 * reload by themselves. On this machine, and for devices that are let in; what is tapped on field pages is handed to whoever keeps
 * the records.
 */
import type { Garden } from "../model.ts";
import type { PublishedPhoto, TimeLapse } from "../photos/index.ts";
import { typedGarden } from "../records/index.ts";
import { preparedText } from "../store/index.ts";
import type { Card } from "../tour/index.ts";
import type { BuildOptions } from "./build-sites.ts";
import type { FieldList } from "./field-list/field-list-data.ts";
import { fieldListPage } from "./field-list/field-list-page.ts";
import { type LastLooks, lastLooks } from "./last-look.ts";
import { type Answer, type LiveServer, type LiveServerOptions, type ServeAt, serveLive } from "./live-server.ts";
import { openTemplates, type SiteTemplates } from "./make-pages.ts";
import { outdoorsPage } from "./outdoors/outdoors-data.ts";
import { outdoorsHtml } from "./outdoors/outdoors-page.ts";
import { OUTDOORS, OUTDOORS_ALONE, outdoorsAlone, outdoorsPlace } from "./outdoors/place-outdoors.ts";
import { fieldSite } from "./page-data/field-site.ts";
import { once } from "./page-data/on-demand.ts";
import { publicSite } from "./page-data/public-site.ts";
import type { FieldSite, PublicSite } from "./page-data/shapes.ts";
import { FIELD_PAGES, PUBLIC_PAGES, templateOf } from "./page-table.ts";
import { READER, readerScript } from "./phone-page.ts";
import { publicCaptions } from "./public-captions.ts";
import { publicGarden } from "./public-garden.ts";
import { lapseFilms, lapsePictures, lapsesOf } from "./time-lapses.ts";
import { copyToMatch } from "./viewpoint-photos.ts";
import { asked, sentFile, type Workbench } from "./workbench.ts";
import { NAMES, TAKES, TAP_SCRIPT, WRITE_SCRIPT } from "./workbench-files.ts";

export interface LiveMaterials extends Omit<BuildOptions, "outDir" | "cacheDir" | "report" | "briefs" | "fieldLists"> {
  readonly briefs: readonly LiveBrief[];
  /** Takes what is tapped and typed; without it pages only show. */
  readonly workbench?: Workbench | undefined;
}

/** A brief of which only the name is known until somebody opens it. */
export interface LiveBrief {
  /** The episode's id. */
  readonly name: string;
  /** The cards as they would be made now. */
  cards(): readonly Card[];
  /** `changed`: beds whose cards are new since the last look; only where it is served live. */
  page(changed?: ReadonlySet<string>): Promise<string>;
  fieldList(): Promise<FieldList>;
}

export interface LiveSites {
  readonly publicUrl: string;
  readonly privateUrl: string;
  /** From now on pages show this garden; open pages reload. */
  show(garden: Garden, materials: LiveMaterials): void;
  /** The field pages at another address of this machine. */
  alsoAt(at: ServeAt): Promise<{ readonly url: string }>;
}

/** Serves until `whileServing` ends. */
export async function serveLiveSites(
  garden: Garden,
  materials: LiveMaterials,
  whileServing: (sites: LiveSites) => Promise<void>,
): Promise<void> {
  const { base } = garden.settings;
  const looks = lastLooks();
  const open = await liveSite({ name: "public", pages: PUBLIC_PAGES, base });
  const take = (at: string, sent: unknown) => materials.workbench && asked(materials.workbench, at, sent);
  const takeFile = (at: string, said: URLSearchParams, bytes: Uint8Array) =>
    materials.workbench && sentFile(materials.workbench, at, said, bytes);
  const own = await liveSite({ name: "field", pages: FIELD_PAGES, base: "/" }, { take, takeFile });
  const show = (newest: Garden, given: LiveMaterials) => {
    open.show(() => forViewers(newest, given));
    own.show(() => forOneself(newest, given, looks));
  };
  try {
    show(garden, materials);
    await whileServing({ publicUrl: open.url, privateUrl: own.url, alsoAt: own.alsoAt, show });
  } finally {
    await open.close();
    await own.close();
  }
}

/** Of a site that has no page of its own for it. */
const NO_SUCH_PAGE =
  '<!doctype html><html lang="en"><head><title>No such page</title></head><body><p>No such page.</p></body></html>';

interface LiveSite<Site> {
  readonly url: string;
  /** Made when the first page of it is asked for: of two sites one is looked at. */
  show(make: () => Shown<Site>): void;
  alsoAt(at: ServeAt): Promise<LiveServer>;
  close(): Promise<void>;
}

async function liveSite<Site extends FieldSite | PublicSite>(
  templates: SiteTemplates<Site>,
  taking: Pick<LiveServerOptions, "take" | "takeFile"> = {},
): Promise<LiveSite<Site>> {
  const site = await openTemplates(templates);
  let shown: (() => Shown<Site>) | undefined;
  const made = async (file: string) => {
    const data = shown?.().data;
    const template = data && templateOf(templates.pages, data, file);
    return template === undefined ? undefined : site.make(template, file);
  };
  const options: LiveServerOptions = {
    base: templates.base,
    ...taking,
    async answer(file) {
      const bytes = site.assets.get(file) ?? (await made(file));
      return bytes === undefined ? await shown?.().beside(file) : { bytes };
    },
    missing: async () => (await made("404.html")) ?? NO_SUCH_PAGE,
  };
  const server = await serveLive(options);
  const servers = [server];
  return {
    url: server.url,
    async alsoAt(at) {
      const other = await serveLive({ ...options, at });
      servers.push(other);
      return other;
    },
    show(make) {
      shown = once(() => {
        const newest = make();
        site.show(newest.data);
        return newest;
      });
      for (const each of servers) each.tell();
    },
    async close() {
      for (const each of servers) await each.close();
    },
  };
}

/** What lies beside the pages, by path below the site. */
type Beside = (file: string) => Answer | undefined | Promise<Answer>;

interface Shown<Site> {
  readonly data: Site;
  readonly beside: Beside;
}

function forViewers(garden: Garden, materials: LiveMaterials): Shown<PublicSite> {
  const { today, photos, comparisons = new Map(), weather, films, lapses = [] } = materials;
  const open = publicGarden(garden);
  const captions = films && publicCaptions(garden, open, films);
  const data = publicSite(open, today, photos, comparisons, weather, captions, lapses);
  return {
    data,
    beside: firstOf(photoFiles(open, [photos, comparisons]), lapseFiles(lapsesOf(open, lapses)), (file) =>
      text(data.files.find(({ path: at }) => at === file)?.text),
    ),
  };
}

function forOneself(garden: Garden, materials: LiveMaterials, looks: LastLooks): Shown<FieldSite> {
  const { today, photos, briefs, comparisons = new Map(), weather, lapses = [], ahead, workbench } = materials;
  const tours = briefs.map(({ name }) => name);
  const data = fieldSite(garden, today, {
    photos,
    comparisons,
    weather,
    lapses,
    briefs: tours,
    fieldLists: tours,
    ahead,
    workbench,
  });
  const outdoors = () => outdoorsPage(garden, data.viewpoints, today);
  return {
    data,
    beside: firstOf(
      workbench === undefined ? () => undefined : writingFiles(garden),
      photoFiles(garden, [photos, comparisons]),
      lapseFiles(lapsesOf(garden, lapses)),
      (file) => onDisk(lapseFilms(lapses).get(file)),
      (file) => text(file === READER ? readerScript() : undefined),
      (file) => text(file === OUTDOORS ? outdoorsHtml(outdoors(), outdoorsPlace) : undefined),
      (file) =>
        file === OUTDOORS_ALONE ? outdoorsAlone(outdoors(), photos).then((html) => ({ bytes: html })) : undefined,
      (file) => {
        const brief = briefs.find(({ name }) => file === `briefs/${name}.html`);
        return brief?.page(looks(brief.name, brief.cards())).then((bytes) => ({ bytes }));
      },
      (file) => {
        const brief = briefs.find(({ name }) => file === `field-lists/${name}.html`);
        return brief
          ?.fieldList()
          .then((list) => ({ bytes: fieldListPage(list, { reader: `../${READER}`, outdoors: `../${OUTDOORS}` }) }));
      },
      (file) => {
        const spot = file.startsWith("viewpoints/")
          ? data.viewpoints.find(({ last }) => last !== undefined && below(last.src) === file)
          : undefined;
        const copy = spot?.last && copyToMatch(photos.get(spot.last.path));
        return copy && { file: copy.cachePath };
      },
    ),
  };
}

/** The scripts of what is written and tapped, and the names that lines are completed and read by. */
function writingFiles(garden: Garden): Beside {
  const made: Readonly<Record<string, () => string>> = {
    [WRITE_SCRIPT]: () => preparedText("phone/write.js"),
    [TAP_SCRIPT]: () => preparedText("phone/taps.js"),
    [NAMES]: () => JSON.stringify(typedGarden(garden)),
    [TAKES]: () => JSON.stringify({ takes: garden.settings.name }),
  };
  return (file) => text(Object.hasOwn(made, file) ? made[file]?.() : undefined);
}

function firstOf(...places: readonly Beside[]): Beside {
  return (file) => {
    for (const place of places) {
      const found = place(file);
      if (found !== undefined) return found;
    }
    return undefined;
  };
}

function text(bytes: string | undefined): Answer | undefined {
  return bytes === undefined ? undefined : { bytes };
}

/** The path of an address at the root of a site. */
function below(address: string): string {
  return address.replace(/^\//u, "").split("/").map(decoded).join("/");
}

function photoFiles(garden: Garden, copies: readonly ReadonlyMap<string, PublishedPhoto>[]): Beside {
  const files = new Map<string, string>(
    garden.photos.flatMap((photo) =>
      photo.day === undefined
        ? []
        : copies.flatMap((of) =>
            (of.get(photo.path)?.files ?? []).map(({ name, cachePath }) => [`photos/${name}`, cachePath] as const),
          ),
    ),
  );
  return (file) => {
    const found = files.get(file);
    return found === undefined ? undefined : { file: found };
  };
}

function lapseFiles(lapses: readonly TimeLapse[]): Beside {
  const pictures = lapsePictures(lapses);
  return (file) => (file.startsWith("photos/") ? onDisk(pictures.get(file.slice("photos/".length))) : undefined);
}

function onDisk(file: string | undefined): Answer | undefined {
  return file === undefined ? undefined : { file };
}

function decoded(part: string): string {
  try {
    return decodeURIComponent(part);
  } catch {
    return part;
  }
}
