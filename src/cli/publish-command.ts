/** `plotreel publish`: the public site and the private field pages, into two separate folders. */
import path from "node:path";
import { publishPhotos } from "../photos/index.ts";
import { buildSites } from "../site/index.ts";
import { briefFor } from "./brief-command.ts";
import { EXIT } from "./command-error.ts";
import type { Effects } from "./effects.ts";
import type { Loaded } from "./load-garden.ts";

export interface PublishOptions {
  /** Relative to the current folder, or absolute. */
  readonly out: string;
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
    .map(({ id }) => briefFor(loaded, id));
  report.step("Making the pages");
  const sites = await buildSites(garden, {
    outDir: path.resolve(effects.cwd, options.out),
    cacheDir,
    today,
    photos: photos.copies,
    briefs,
  });
  report.end();
  for (const problem of photos.problems) effects.err(`${problem.file}: ${problem.what} ${problem.fix}`);
  effects.out(`Public site: ${sites.publicDir} (${sites.publicPages} pages)`);
  effects.out(`Private field pages: ${sites.privateDir} (${sites.privatePages} pages)`);
  return EXIT.done;
}
