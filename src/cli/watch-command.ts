/** `plotreel watch`: both sites on this machine, showing every change of the records as soon as it is saved. */
import path from "node:path";
import { problemText } from "../records/index.ts";
import { type LiveSites, serveLiveSites } from "../site/index.ts";
import { EXIT } from "./command-error.ts";
import type { Effects } from "./effects.ts";
import { type LoadOptions, loadGarden } from "./load-garden.ts";
import { type OpenWorkbench, openWorkbench } from "./open-workbench.ts";
import { saySaved } from "./saved-notes.ts";
import { addressToServe } from "./serve-address.ts";
import { serveByCode } from "./serve-sites.ts";
import { type MaterialsWanted, type SiteMaterials, siteMaterials } from "./site-materials.ts";

/** Milliseconds after a change in which more may follow: an editor writes beside and renames, a copy brings many files. */
const TOGETHER = 40;

/** Folders whose files say nothing of which photos there are nor where they belong. */
const WITHOUT_PHOTOS: ReadonlySet<string> = new Set(["notes", "varieties", "gear", "trials", "episodes"]);

export interface WatchOptions extends LoadOptions, Pick<MaterialsWanted, "base"> {
  /** An address of this machine by which other devices are let in to the field pages. */
  readonly address?: string | undefined;
  /** Opens the private pages in the browser of this machine. */
  readonly open?: boolean | undefined;
}

export async function watch(options: WatchOptions, effects: Effects): Promise<number> {
  const { address } = options;
  if (address !== undefined) addressToServe(address, effects.ownAddresses());
  const loaded = await loadGarden(options, effects);
  let last = await siteMaterials(loaded, options);
  const workbench = openWorkbench(last.garden, last.materials.today, loaded.recordsDir, effects);
  for (const problem of last.photoWork.problems) effects.err(problemText(problem));
  await serveLiveSites(last.garden, { ...last.materials, workbench }, async (sites) => {
    effects.out(`Public site, as viewers would see it: ${sites.publicUrl}`);
    effects.out(`Your field pages: ${sites.privateUrl}`);
    if (address === undefined)
      effects.out("Save a note and the open page follows. On this machine only; Ctrl-C ends it.");
    else await serveByCode(sites.alsoAt, address, effects);
    if (options.open === true) await effects.openInBrowser(sites.privateUrl);
    const stop = await effects.watchFolder(
      loaded.recordsDir,
      oneAfterAnother(async (changed) => {
        last = await showAgain(changed, last, options, sites, workbench, effects);
      }),
    );
    try {
      await effects.untilStopped();
    } finally {
      await stop();
    }
  });
  return EXIT.done;
}

async function showAgain(
  changed: ReadonlySet<string>,
  before: SiteMaterials,
  options: WatchOptions,
  sites: LiveSites,
  workbench: OpenWorkbench,
  effects: Effects,
): Promise<SiteMaterials> {
  try {
    const photoWork = [...changed].every(isWithoutPhotos) ? before.photoWork : undefined;
    const loaded = await loadGarden(options, effects);
    const made = await siteMaterials(loaded, { base: options.base, photoWork });
    workbench.see(made.garden, made.materials.today);
    sites.show(made.garden, { ...made.materials, workbench });
    for (const line of saySaved(changed, made.garden)) effects.err(line);
    effects.err(`Shown again: ${sayChanged(changed)}`);
    return made;
  } catch (error) {
    // A file may vanish while it is read. The next change tries again; until then the pages stay as they were.
    effects.err(`Not shown: ${sayChanged(changed)} could not be read (${(error as Error).message}).`);
    return before;
  }
}

function isWithoutPhotos(file: string): boolean {
  const [folder = ""] = file.split("/");
  return WITHOUT_PHOTOS.has(folder) && /\.(?:md|vtt|srt|json)$/iu.test(file);
}

function sayChanged(changed: ReadonlySet<string>): string {
  const [first = "", ...more] = [...changed].sort();
  if (more.length === 0) return first;
  return more.length === 1 ? `${first} and 1 more file` : `${first} and ${more.length} more files`;
}

/** Collects changes for a moment, and while one round of work is going on, for the next. */
function oneAfterAnother(work: (changed: ReadonlySet<string>) => Promise<void>): (file: string) => void {
  let waiting = new Set<string>();
  let timer: NodeJS.Timeout | undefined;
  let isBusy = false;
  const begin = async () => {
    timer = undefined;
    if (isBusy || waiting.size === 0) return;
    const changed = waiting;
    waiting = new Set();
    isBusy = true;
    try {
      await work(changed);
    } finally {
      isBusy = false;
      if (waiting.size > 0) timer ??= setTimeout(begin, TOGETHER);
    }
  };
  return (file) => {
    waiting.add(file.split(path.sep).join("/"));
    clearTimeout(timer);
    timer = setTimeout(begin, TOGETHER);
  };
}
