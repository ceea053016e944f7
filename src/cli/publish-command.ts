/** `plotreel publish`: the public site and the private field pages, into two separate folders. */
import path from "node:path";
import type { Garden } from "../model.ts";
import { isDoubt, problemText } from "../records/index.ts";
import {
  buildSites,
  type FieldList,
  ForeignFiles,
  goneFromView,
  keptBackAsBefore,
  lastSeen,
  PrivacyBreach,
  PublishRunning,
  refusePlace,
} from "../site/index.ts";
import { CommandError, EXIT } from "./command-error.ts";
import type { Effects } from "./effects.ts";
import type { Loaded } from "./load-garden.ts";
import { placeToPublish } from "./place-to-publish.ts";
import { sayWhatViewersWouldSee } from "./publish-dry-run.ts";
import { addressToServe } from "./serve-address.ts";
import { serveSites } from "./serve-sites.ts";
import { siteMaterials } from "./site-materials.ts";

export interface PublishOptions {
  /** Relative to the current folder, or absolute. */
  readonly out: string;
  /** Path below which the public site is served, with a slash at both ends; stands above what garden.md says. */
  readonly base?: string | undefined;
  /** Show both sites on this machine until the command is stopped. */
  readonly serve?: boolean | undefined;
  /** With `serve`: an address of this machine by which other devices are let in to the field pages. */
  readonly address?: string | undefined;
  /** Publish what is sure, and keep back what is in doubt. */
  readonly holdBack?: boolean | undefined;
  /** Only say what viewers would see that they did not see before, and what is kept back. */
  readonly dryRun?: boolean | undefined;
  /** With `dryRun`: every single thing, not only how many. */
  readonly whole?: boolean | undefined;
}

export async function publish(read: Loaded, options: PublishOptions, effects: Effects): Promise<number> {
  const { cacheDir, report } = read;
  // Said before the long work, not after it.
  if (options.address !== undefined && options.serve !== true) {
    throw new CommandError("--address says where to serve, so it goes with --serve.");
  }
  const address = options.address === undefined ? undefined : addressToServe(options.address, effects.ownAddresses());
  const outDir = await placeToPublish(path.resolve(effects.cwd, options.out), read.recordsDir);
  const before = await lastSeen(path.join(outDir, "private"));
  const loaded = { ...read, garden: keptBackAsBefore(read.garden, before) };
  if (options.whole === true && options.dryRun !== true)
    throw new CommandError("--whole says how much is told, so it goes with --dry-run.");
  if (options.dryRun === true)
    return sayWhatViewersWouldSee(loaded, { before, isWhole: options.whole === true }, effects);
  try {
    await refusePlace(outDir);
    if (options.holdBack !== true) stopInDoubt(loaded.garden, effects);
    const { garden, materials, photoWork } = await siteMaterials(loaded, options);
    const fieldLists: FieldList[] = [];
    const briefs: { readonly name: string; readonly html: string }[] = [];
    for (const brief of materials.briefs) {
      briefs.push({ name: brief.name, html: await brief.page() });
      fieldLists.push(await brief.fieldList());
    }
    const sites = await buildSites(garden, {
      ...materials,
      outDir,
      cacheDir,
      briefs,
      fieldLists,
      before,
      report,
    });
    report.end();
    for (const problem of photoWork.problems) effects.err(problemText(problem));
    effects.out(`Public site: ${sites.publicDir} (${sites.publicPages} pages)`);
    effects.out(`Private field pages: ${sites.privateDir} (${sites.privatePages} pages)`);
    const seen = await lastSeen(sites.privateDir);
    for (const { what, why, fix } of seen === undefined ? [] : goneFromView(garden, seen, before))
      if (!what.includes(" of note ")) effects.err(`No longer shown: ${what}, because ${why}. ${fix ?? ""}`.trimEnd());
    if (options.serve === true) await serveSites(sites, { base: garden.settings.base, address }, effects);
    return EXIT.done;
  } catch (error) {
    if (error instanceof PublishRunning || error instanceof ForeignFiles)
      throw new CommandError(error.message, EXIT.couldNot);
    if (!(error instanceof PrivacyBreach)) throw error;
    report.end();
    for (const { file, what } of error.breaches) effects.err(`${file}: ${what}`);
    throw new CommandError(
      "Nothing was published, because something private would have been in the public site (see above). The last good site is still in place.",
      EXIT.couldNot,
    );
  }
}

/** What may have been meant as private is kept back in any case; whether the rest may go out without it is for the person to say. */
function stopInDoubt({ problems }: Garden, effects: Effects): void {
  const doubts = problems.filter(isDoubt);
  if (doubts.length === 0) return;
  for (const doubt of doubts) effects.err(problemText(doubt));
  const [what, it] = doubts.length === 1 ? ["one thing", "it"] : [`${doubts.length} things`, "them"];
  throw new CommandError(
    `Nothing was published, because ${what} in your records may have been meant as private and cannot be read for sure (see above). Mend ${it}, or publish the rest without ${it}: plotreel publish --hold-back. The last good site is still in place.`,
    EXIT.problemsFound,
  );
}
