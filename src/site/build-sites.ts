/**
 * The public site and the private field pages: built side by side beside the live folders, the public one read through by
 * the privacy gate, and only then put in place of the old ones.
 */
import { copyFileSync, linkSync } from "node:fs";
import { chmod, mkdir, readdir, writeFile } from "node:fs/promises";
import path from "node:path";
import type { Weather } from "../almanac/index.ts";
import type { Day, Garden, GardenSettings } from "../model.ts";
import type { PublishedPhoto, TimeLapse } from "../photos/index.ts";
import type { Ahead } from "../tour/index.ts";
import type { FieldList } from "./field-list/field-list-data.ts";
import { placeFieldLists } from "./field-list/place-field-lists.ts";
import { headersFile, robots, siteMap } from "./host-files.ts";
import { makePages, type PagesReport } from "./make-pages.ts";
import { outdoorsPage } from "./outdoors/outdoors-data.ts";
import { placeOutdoors } from "./outdoors/place-outdoors.ts";
import { listOwnFiles, refuseForeignFiles } from "./own-files.ts";
import { fieldSite } from "./page-data/field-site.ts";
import { publicSite } from "./page-data/public-site.ts";
import type { SiteFile } from "./page-data/shapes.ts";
import { FIELD_PAGES, PUBLIC_PAGES } from "./page-table.ts";
import { placeSharedPictures } from "./place-shared-pictures.ts";
import { type Breach, gatePublicFolder } from "./privacy-gate.ts";
import { type FilmTexts, publicCaptions } from "./public-captions.ts";
import { publicGarden } from "./public-garden.ts";
import { refuseWhilePublishing, whilePublishing } from "./publish-lock.ts";
import { indexForSearch } from "./search-index.ts";
import { clearNext, dropNext, nextFolder, putLive, whereItLies } from "./swap-folders.ts";
import { lapseFilms, lapsePictures, lapsesOf } from "./time-lapses.ts";
import { placeViewpointPhotos } from "./viewpoint-photos.ts";
import { keepWhatViewersSee, type Seen, whatViewersSee } from "./what-viewers-see.ts";
import { withoutDirectionControls } from "./without-direction-controls.ts";

export interface BuildOptions {
  /** Gets `public` and `private`. */
  readonly outDir: string;
  /** Whatever lies here may be deleted at any time. */
  readonly cacheDir: string;
  readonly today: Day;
  /** Copies by photo path, from the photos room; a photo without copies is not shown. */
  readonly photos: ReadonlyMap<string, PublishedPhoto>;
  /** Comparison copies by photo path; without them no two photos are shown as a pair. */
  readonly comparisons?: ReadonlyMap<string, PublishedPhoto> | undefined;
  /** Of seasons from one spot; each site shows those of which it may show every photo. */
  readonly lapses?: readonly TimeLapse[] | undefined;
  /** Finished brief pages for the field pages; the name is the episode's id or a day. */
  readonly briefs: readonly { readonly name: string; readonly html: string }[];
  /** Lists to tick off while filming, one for each brief that has one. */
  readonly fieldLists?: readonly FieldList[] | undefined;
  /** The garden's weather; without it the recaps tell none. */
  readonly weather?: Weather | undefined;
  /** The week ahead, for the first of the private pages. */
  readonly ahead?: (() => Ahead) | undefined;
  /** What films say; without it their pages show what the records tell. */
  readonly films?: FilmTexts | undefined;
  readonly report?: PagesReport | undefined;
  /** What viewers saw of the garden the last time. */
  readonly before?: Seen | undefined;
}

export interface BuiltSites {
  readonly publicDir: string;
  readonly privateDir: string;
  readonly publicPages: number;
  readonly privatePages: number;
  readonly pages: number;
}

/** The public pages would have told something private. The old site stays in place. */
export class PrivacyBreach extends Error {
  readonly breaches: readonly Breach[];

  constructor(breaches: readonly Breach[]) {
    const [first] = breaches;
    super(
      `The public site was not handed over, because something private would have been in it. ${first?.file}: ${first?.what}`,
    );
    this.name = "PrivacyBreach";
    this.breaches = breaches;
  }
}

const ONLY_OWNER = 0o700;

/** Throws, and changes nothing, when publishing into this folder would disturb another run or lose somebody's files. */
export async function refusePlace(outDir: string): Promise<void> {
  await refuseWhilePublishing(path.resolve(outDir));
  for (const site of ["public", "private"]) await refuseForeignFiles(path.resolve(outDir, site));
}

/** Throws `PrivacyBreach`, or what `refusePlace` throws. */
export async function buildSites(garden: Garden, options: BuildOptions): Promise<BuiltSites> {
  return whilePublishing(path.resolve(options.outDir), (assertLockHeld) => build(garden, options, assertLockHeld));
}

async function build(
  recorded: Garden,
  options: BuildOptions,
  assertLockHeld: () => Promise<void>,
): Promise<BuiltSites> {
  const garden = withoutLaterPhotos(recorded, options.today);
  const publicDir = await whereItLies(path.resolve(options.outDir, "public"));
  const privateDir = await whereItLies(path.resolve(options.outDir, "private"));
  const cacheDir = path.resolve(options.cacheDir);
  const live = [publicDir, privateDir];
  const open = publicGarden(garden);
  const comparisons = options.comparisons ?? new Map();
  const lapses = options.lapses ?? [];
  const field = fieldSite(garden, options.today, {
    photos: options.photos,
    comparisons,
    weather: options.weather,
    lapses,
    briefs: options.briefs.map(({ name }) => name),
    fieldLists: (options.fieldLists ?? []).map(({ tour }) => tour),
    ahead: options.ahead,
  });
  const films = options.films && publicCaptions(garden, open, options.films);
  const pages = publicSite(open, options.today, options.photos, comparisons, options.weather, films, lapses);
  for (const folder of live) await refuseForeignFiles(folder);
  for (const folder of live) await clearNext(folder);
  // Other people who use this machine may look at the public site only, where the disk knows of such things.
  await chmod(nextFolder(privateDir), ONLY_OWNER).catch(() => undefined);
  try {
    const { base } = garden.settings;
    const { report } = options;
    const viewers = { name: "public", pages: PUBLIC_PAGES, base } as const;
    await makePages(viewers, pages, { cacheDir, outDir: nextFolder(publicDir) }, report);
    const own = { name: "field", pages: FIELD_PAGES, base: "/" } as const;
    await makePages(own, field, { cacheDir, outDir: nextFolder(privateDir) }, report);
    for (const copies of [options.photos, comparisons]) {
      await placePhotos(nextFolder(publicDir), open, copies);
      await placePhotos(nextFolder(privateDir), garden, copies);
    }
    await placeFiles(path.join(nextFolder(publicDir), "photos"), lapsePictures(lapsesOf(open, lapses)));
    await placeFiles(path.join(nextFolder(privateDir), "photos"), lapsePictures(lapsesOf(garden, lapses)));
    await placeFiles(nextFolder(privateDir), lapseFilms(lapsesOf(garden, lapses)));
    if (garden.settings.address !== undefined)
      await placeSharedPictures(nextFolder(publicDir), pages, options.photos, path.join(cacheDir, "photos"));
    await placeViewpointPhotos(nextFolder(privateDir), field.viewpoints, options.photos);
    await placeBriefs(nextFolder(privateDir), options.briefs);
    await placeOutdoors(nextFolder(privateDir), outdoorsPage(garden, field.viewpoints, options.today), options.photos);
    await placeFieldLists(nextFolder(privateDir), options.fieldLists ?? []);
    await placeHostFiles(nextFolder(publicDir), garden.settings, pages.files);
    options.report?.step("Making the search");
    await indexForSearch(nextFolder(publicDir));
    await keepWhatViewersSee(nextFolder(privateDir), whatViewersSee(garden, open, options.before));
    for (const folder of live) await listOwnFiles(nextFolder(folder));
    options.report?.step("Reading every public file for anything private");
    const gateCache = path.join(cacheDir, "pages", "passed-the-gate.json");
    const breaches = await gatePublicFolder(nextFolder(publicDir), garden, { gateCache });
    if (breaches.length > 0) throw new PrivacyBreach(breaches);
    const publicPages = await countPages(nextFolder(publicDir));
    const privatePages = await countPages(nextFolder(privateDir));
    // While pages were made somebody may have put a file into the old site, or taken this run for dead.
    for (const folder of live) await refuseForeignFiles(folder);
    await assertLockHeld();
    await putLive(live);
    return { publicDir, privateDir, publicPages, privatePages, pages: publicPages + privatePages };
  } finally {
    await dropNext(live);
  }
}

/** A camera whose clock runs ahead, or a site made as of an earlier day. */
function withoutLaterPhotos(garden: Garden, today: Day): Garden {
  const photos = garden.photos.filter(({ day }) => day === undefined || day <= today);
  return photos.length === garden.photos.length ? garden : { ...garden, photos };
}

/** Photo copies are linked from the cache where the disk can, so that a thousand of them cost nothing. */
async function placePhotos(
  siteDir: string,
  garden: Garden,
  photos: ReadonlyMap<string, PublishedPhoto>,
): Promise<void> {
  const files = new Map(
    garden.photos.flatMap((photo) =>
      photo.day === undefined
        ? []
        : (photos.get(photo.path)?.files ?? []).map((file) => [file.name, file.cachePath] as const),
    ),
  );
  await placeFiles(path.join(siteDir, "photos"), files);
}

async function placeFiles(folder: string, files: ReadonlyMap<string, string>): Promise<void> {
  for (const [name, cachePath] of files) {
    const target = path.join(folder, name);
    await mkdir(path.dirname(target), { recursive: true });
    try {
      linkSync(cachePath, target);
    } catch {
      copyFileSync(cachePath, target);
    }
  }
}

async function placeBriefs(siteDir: string, briefs: BuildOptions["briefs"]): Promise<void> {
  if (briefs.length === 0) return;
  const folder = path.join(siteDir, "briefs");
  await mkdir(folder, { recursive: true });
  for (const { name, html } of briefs) await writeFile(path.join(folder, `${name}.html`), html);
}

/** What programs read, beside the pages people read. */
async function placeHostFiles(
  siteDir: string,
  { base, address }: GardenSettings,
  files: readonly SiteFile[],
): Promise<void> {
  const home = address === undefined ? undefined : address + base;
  const built = (await readdir(siteDir, { recursive: true })).map((file) => file.split(path.sep).join("/"));
  const all = [
    ...files,
    { path: "_headers", text: headersFile(base) },
    ...(home === undefined
      ? []
      : [
          { path: "sitemap.xml", text: siteMap(built, home) },
          { path: "robots.txt", text: robots(home) },
        ]),
  ];
  for (const file of all) await writeFile(path.join(siteDir, file.path), withoutDirectionControls(file.text));
}

async function countPages(siteDir: string): Promise<number> {
  return (await readdir(siteDir, { recursive: true })).filter((file) => file.endsWith(".html")).length;
}
