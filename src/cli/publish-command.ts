/** `plotreel publish`: the public site and the private field pages, into two separate folders. */
import path from "node:path";
import type { Garden } from "../model.ts";
import { publishComparisons, publishPhotos } from "../photos/index.ts";
import { problemText } from "../records/index.ts";
import { briefPage, buildSites, type FieldList, PrivacyBreach, PublishRunning } from "../site/index.ts";
import { briefFor } from "./brief-command.ts";
import { CommandError, EXIT } from "./command-error.ts";
import type { Effects } from "./effects.ts";
import { fieldListOf } from "./field-list-of.ts";
import type { Loaded } from "./load-garden.ts";
import { measured } from "./measured-garden.ts";
import { addressToServe } from "./serve-address.ts";
import { serveSites } from "./serve-sites.ts";

export interface PublishOptions {
  /** Relative to the current folder, or absolute. */
  readonly out: string;
  /** Path below which the public site is served, with a slash at both ends; stands above what garden.md says. */
  readonly base?: string | undefined;
  /** Show both sites on this machine until the command is stopped. */
  readonly serve?: boolean | undefined;
  /** With `serve`: an address of this machine by which other devices are let in to the field pages. */
  readonly address?: string | undefined;
}

function servedBelow(garden: Garden, base: string): Garden {
  return { ...garden, settings: { ...garden.settings, base } };
}

export async function publish(loaded: Loaded, options: PublishOptions, effects: Effects): Promise<number> {
  const { recordsDir, cacheDir, today, report } = loaded;
  // Said before the long work, not after it.
  if (options.address !== undefined && options.serve !== true) {
    throw new CommandError("--address says where to serve, so it goes with --serve.");
  }
  const address = options.address === undefined ? undefined : addressToServe(options.address, effects.ownAddresses());
  const photos = await publishPhotos(loaded.garden.photos, {
    recordsDir,
    cacheDir: path.join(cacheDir, "photos"),
    onProgress: (done, total) => report.progress("Making photo copies", done, total),
  });
  const grown = await measured(loaded);
  const garden = options.base === undefined ? grown.garden : servedBelow(grown.garden, options.base);
  const comparisons = await publishComparisons(grown.viewpoints, {
    recordsDir,
    cacheDir: path.join(cacheDir, "comparisons"),
    today,
    onProgress: (done, total) => report.progress("Laying photos over one another", done, total),
  });
  const planned = [...garden.episodes.values()]
    .filter(({ status }) => status === "planned")
    .map(({ id }) => briefFor(grown, id));
  const briefs = planned.map((brief) => ({ name: brief.tour, html: briefPage(brief, garden) }));
  const fieldLists: FieldList[] = [];
  for (const brief of planned) fieldLists.push(await fieldListOf(loaded, brief));
  const outDir = path.resolve(effects.cwd, options.out);
  try {
    const sites = await buildSites(garden, {
      outDir,
      cacheDir,
      today,
      photos: photos.copies,
      comparisons,
      briefs,
      fieldLists,
      report,
    });
    report.end();
    for (const problem of photos.problems) effects.err(problemText(problem));
    effects.out(`Public site: ${sites.publicDir} (${sites.publicPages} pages)`);
    effects.out(`Private field pages: ${sites.privateDir} (${sites.privatePages} pages)`);
    if (options.serve === true) await serveSites(sites, { base: garden.settings.base, address }, effects);
    return EXIT.done;
  } catch (error) {
    if (error instanceof PublishRunning) throw new CommandError(error.message, EXIT.couldNot);
    if (!(error instanceof PrivacyBreach)) throw error;
    report.end();
    for (const { file, what } of error.breaches) effects.err(`${file}: ${what}`);
    throw new CommandError(
      "Nothing was published, because something private would have been in the public site (see above). The last good site is still in place.",
      EXIT.couldNot,
    );
  }
}
