/** `plotreel publish --dry-run`: what viewers would see that they did not see before, and what is kept back and why. */
import { isDoubt, problemText } from "../records/index.ts";
import { publicGarden, type Seen, whatViewersSee } from "../site/index.ts";
import { EXIT } from "./command-error.ts";
import type { Effects } from "./effects.ts";
import type { Loaded } from "./load-garden.ts";

export function sayWhatViewersWouldSee({ garden, today }: Loaded, before: Seen | undefined, effects: Effects): number {
  const upToToday = { ...garden, photos: garden.photos.filter(({ day }) => day === undefined || day <= today) };
  const seen = whatViewersSee(upToToday, publicGarden(upToToday), before);
  const known = new Set(before?.open);
  const now = new Set(seen.open);
  const fresh = seen.open.filter((thing) => !known.has(thing));
  const gone = (before?.open ?? []).filter((thing) => !now.has(thing));
  if (before === undefined) effects.out("Nothing was published here before, so everything would be new to viewers.");
  list(`Viewers would see ${counted(fresh.length)} they did not see before`, fresh, effects);
  if (gone.length > 0) list(`They would no longer see ${counted(gone.length)}`, gone, effects);
  const kept = seen.keptBack.map(({ what, why }) => `${what}: ${why.replace(/\.$/, "")}`);
  list(`${capital(counted(kept.length))} would be kept back`, kept, effects);
  for (const problem of garden.problems) if (LEFT_OUT.has(problem.rule)) effects.out(`${problemText(problem)}\n`);
  const doubts = garden.problems.filter(isDoubt);
  if (doubts.length === 0) return EXIT.done;
  for (const doubt of doubts) effects.err(problemText(doubt));
  effects.err(`Publishing would stop: ${counted(doubts.length)} may have been meant as private (see above).`);
  return EXIT.problemsFound;
}

/** Words that viewers are not shown although the record they stand in is public. */
const LEFT_OUT: ReadonlySet<string> = new Set(["privacy/named", "privacy/position"]);

function list(heading: string, things: readonly string[], effects: Effects): void {
  effects.out(things.length === 0 ? `${heading}.` : `${heading}:`);
  for (const thing of things) effects.out(`  ${thing.replace(/\s+/g, " ")}`);
  effects.out("");
}

function counted(count: number): string {
  return count === 0 ? "nothing" : count === 1 ? "1 thing" : `${count} things`;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
