/** `plotreel publish`: the public site and the private field pages, into two separate folders. */
import path from "node:path";
import { publishPhotos } from "../photos/index.ts";
import { problemText } from "../records/index.ts";
import { type BuiltSites, briefPage, buildSites, PrivacyBreach, serveFolder } from "../site/index.ts";
import { briefFor } from "./brief-command.ts";
import { CommandError, EXIT } from "./command-error.ts";
import type { Effects } from "./effects.ts";
import type { Loaded } from "./load-garden.ts";

export interface PublishOptions {
  /** Relative to the current folder, or absolute. */
  readonly out: string;
  /** Show both sites on this machine until the command is stopped. */
  readonly serve?: boolean | undefined;
}

export async function publish(loaded: Loaded, options: PublishOptions, effects: Effects): Promise<number> {
  const { garden, recordsDir, cacheDir, today, report } = loaded;
  const photos = await publishPhotos(garden.photos, {
    recordsDir,
    cacheDir: path.join(cacheDir, "photos"),
    onProgress: (done, total) => report.progress("Making photo copies", done, total),
  });
  const briefs = [...garden.episodes.values()]
    .filter(({ status }) => status === "planned")
    .map(({ id }) => ({ name: id, html: briefPage(briefFor(loaded, id), garden) }));
  const outDir = path.resolve(effects.cwd, options.out);
  try {
    const sites = await buildSites(garden, { outDir, cacheDir, today, photos: photos.copies, briefs, report });
    report.end();
    for (const problem of photos.problems) effects.err(problemText(problem));
    effects.out(`Public site: ${sites.publicDir} (${sites.publicPages} pages)`);
    effects.out(`Private field pages: ${sites.privateDir} (${sites.privatePages} pages)`);
    if (options.serve === true) await show(sites, garden.settings.base, effects);
    return EXIT.done;
  } catch (error) {
    if (!(error instanceof PrivacyBreach)) throw error;
    report.end();
    for (const { file, what } of error.breaches) effects.err(`${file}: ${what}`);
    throw new CommandError(
      "Nothing was published, because something private would have been in the public site (see above). The last good site is still in place.",
      EXIT.couldNot,
    );
  }
}

/** Both sites by loopback address, which nothing but this machine can reach. */
async function show(sites: BuiltSites, base: string, effects: Effects): Promise<void> {
  const servers = [await serveFolder(sites.publicDir, { base }), await serveFolder(sites.privateDir)];
  effects.out(`Look at the public site at ${servers[0]?.url} and at your field pages at ${servers[1]?.url}`);
  effects.out("Both are served on this machine only. Ctrl-C ends it.");
  await effects.untilStopped();
  for (const server of servers) await server.close();
}
