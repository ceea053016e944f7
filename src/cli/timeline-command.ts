/** `plotreel timeline [BED]`: what stands in the beds and what changed, as data or as lines to read. */
import { sayDay } from "../language/index.ts";
import type { Day, Garden } from "../model.ts";
import { nearestName } from "../records/index.ts";
import { CommandError, EXIT } from "./command-error.ts";
import type { Effects } from "./effects.ts";
import type { Loaded } from "./load-garden.ts";
import { timelineView } from "./timeline-view.ts";

export interface TimelineOptions {
  readonly bed?: string | undefined;
  readonly on?: Day | undefined;
  readonly since?: Day | undefined;
  readonly json?: boolean | undefined;
}

export function timeline({ garden, today }: Loaded, options: TimelineOptions, effects: Effects): number {
  const span = { on: options.on ?? today, since: options.since };
  if (span.since !== undefined && span.since > span.on) {
    throw new CommandError(`--since ${span.since} is later than ${span.on}. Give the earlier day to --since.`);
  }
  const beds = options.bed === undefined ? [...garden.beds.keys()] : [bedNamed(garden, options.bed)];
  const views = beds.map((bed) => timelineView(garden, bed, span));
  if (options.json === true) {
    effects.out(JSON.stringify(options.bed === undefined ? views : views[0], null, 2));
    return EXIT.done;
  }
  for (const view of views) {
    effects.out(garden.beds.get(view.bed)?.title ?? view.bed);
    for (const change of view.changes)
      effects.out(`  ${sayDay(change.date, { ...garden.settings, near: span.on })}: ${change.text}`);
    if (view.changes.length === 0) effects.out("  Nothing changed.");
    for (const line of clipLines(garden, view.bed, span)) effects.out(line);
  }
  const elsewhere = options.bed === undefined ? clipLines(garden, undefined, span) : [];
  if (elsewhere.length > 0) effects.out("Clips of no bed");
  for (const line of elsewhere) effects.out(line);
  return EXIT.done;
}

/** Films have a day and a place whether or not a program can take a picture out of them. */
function clipLines(
  { photos, settings }: Garden,
  of: string | undefined,
  { on, since = "" }: { readonly on: Day; readonly since?: Day | undefined },
): readonly string[] {
  return photos.flatMap(({ isClip, bed, day, path }) =>
    isClip === true && bed === of && (day === undefined || (day > since && day <= on))
      ? [`  ${day === undefined ? "without a day" : sayDay(day, { ...settings, near: on })}: clip ${path}`]
      : [],
  );
}

/** A bed by its id, its title or another name it is called by. */
function bedNamed(garden: Garden, name: string): string {
  const wanted = name.toLowerCase();
  for (const bed of garden.beds.values()) {
    if ([bed.id, bed.title, ...bed.alsoCalled].some((known) => known.toLowerCase() === wanted)) return bed.id;
  }
  const names = [...garden.beds.values()].flatMap((bed) => [bed.title, ...bed.alsoCalled]);
  const nearest = nearestName(name, names);
  throw new CommandError(
    `No bed is called "${name}".${nearest === undefined ? ` The beds are: ${[...garden.beds.keys()].join(", ")}.` : ` Did you mean "${nearest}"?`}`,
  );
}
