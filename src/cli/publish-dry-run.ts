/** `plotreel publish --dry-run`: what viewers would see that they did not see before, and what is kept back and why. */
import { capital, sayList } from "../language/index.ts";
import { isDoubt, problemText } from "../records/index.ts";
import { goneFromView, publicGarden, type Seen, whatViewersSee } from "../site/index.ts";
import { EXIT } from "./command-error.ts";
import type { Effects } from "./effects.ts";
import type { Loaded } from "./load-garden.ts";

/** `isWhole` tells every single thing; else each kind is told by its number. */
export function sayWhatViewersWouldSee(
  { garden, today }: Loaded,
  { before, isWhole }: { readonly before: Seen | undefined; readonly isWhole: boolean },
  effects: Effects,
): number {
  const upToToday = { ...garden, photos: garden.photos.filter(({ day }) => day === undefined || day <= today) };
  const seen = whatViewersSee(upToToday, publicGarden(upToToday), before);
  const known = new Set(before?.open);
  const fresh = seen.open.filter((thing) => !known.has(thing));
  const gone = goneFromView(upToToday, seen, before);
  const kept = seen.keptBack.map(({ what, why }) => `${what}: ${why.replace(/\.$/, "")}`);
  if (before === undefined) effects.out("Nothing was published here before, so everything would be new to viewers.");
  effects.out(`New to viewers: ${kindsOf(fresh)}.`);
  if (gone.length > 0) effects.out(`No longer shown: ${kindsOf(gone.map(({ what }) => what))}.`);
  effects.out(`Kept back, as ever or from now on: ${kindsOf(seen.keptBack.map(({ what }) => what))}.`);
  effects.out("");
  // What goes is told thing by thing: nobody may find it out from a viewer.
  list(
    "No longer shown",
    gone.map(({ what, why, fix }) => `${what}: because ${why}${fix === undefined ? "" : `. ${fix}`}`),
    effects,
  );
  if (isWhole) {
    list("New to viewers", fresh, effects);
    list("Kept back", kept, effects);
    for (const problem of garden.problems) if (LEFT_OUT.has(problem.rule)) effects.out(`${problemText(problem)}\n`);
  } else {
    byKind("New to viewers", fresh, effects);
    const why = Map.groupBy(seen.keptBack, ({ why }) => reasonOf(why));
    list(
      "Kept back, and why",
      [...why].map(([reason, things]) => `${things.length} because ${reason}: ${some(things.map(({ what }) => what))}`),
      effects,
    );
    const leftOut = garden.problems.filter(({ rule }) => LEFT_OUT.has(rule)).length;
    if (leftOut > 0)
      effects.out(
        `Words are left out in ${leftOut} ${leftOut === 1 ? "place" : "places"}, because they name something private.`,
      );
    if (fresh.length + kept.length > 0) effects.out('Every single one: "plotreel publish --dry-run --whole".');
  }
  const doubts = garden.problems.filter(isDoubt);
  if (doubts.length === 0) return EXIT.done;
  for (const doubt of doubts) effects.err(problemText(doubt));
  effects.err(
    `Publishing would stop: ${doubts.length === 1 ? "1 thing" : `${doubts.length} things`} may have been meant as private (see above).`,
  );
  return EXIT.problemsFound;
}

/** Without the file of each. */
function reasonOf(why: string): string {
  const usual = ["it is marked private", "it is in doubt"].find((begins) => why.startsWith(begins));
  return usual ?? (why.endsWith(".") ? why.slice(0, -1) : why);
}

/** Words that viewers are not shown although the record they stand in is public. */
const LEFT_OUT: ReadonlySet<string> = new Set(["privacy/named", "privacy/position"]);

/** How things begin in the list, with the words for one and for several. */
const KINDS: readonly (readonly [begins: string, one: string, several: string])[] = [
  ["site ", "site", "sites"],
  ["bed ", "bed", "beds"],
  ["variety ", "variety", "varieties"],
  ["gear ", "thing of your gear", "things of your gear"],
  ["trial ", "trial", "trials"],
  ["film ", "film", "films"],
  ["photo ", "photo", "photos"],
  ["line of note ", "line of your notes", "lines of your notes"],
  ["words of note ", "piece of story", "pieces of story"],
  ["note ", "note", "notes"],
];

/** "2 beds, one film and 14 lines of your notes" */
function kindsOf(things: readonly string[]): string {
  return things.length === 0 ? "nothing" : sayList(grouped(things).map(({ count }) => count));
}

function grouped(things: readonly string[]) {
  return KINDS.flatMap((kind) => {
    const [begins, one, several] = kind;
    const own = things.filter((thing) => KINDS.find(([first]) => thing.startsWith(first)) === kind);
    if (own.length === 0) return [];
    return [
      {
        count: `${own.length} ${own.length === 1 ? one : several}`,
        own: own.map((thing) => thing.slice(begins.length)),
      },
    ];
  });
}

function byKind(heading: string, things: readonly string[], effects: Effects): void {
  list(
    heading,
    grouped(things).map(({ count, own }) => `${capital(count)}: ${some(own)}`),
    effects,
  );
}

/** Names of one kind that are said before it is said how many more there are, and letters of one. */
const NAMED = 3;
const LONGEST = 60;

function some(things: readonly string[]): string {
  const named = things.slice(0, NAMED).map((thing) => {
    const plain = thing.replace(/\s+/g, " ");
    if (plain.length <= LONGEST) return plain;
    const cut = plain.slice(0, LONGEST);
    return `${cut.slice(0, Math.max(cut.lastIndexOf(" "), LONGEST / 2))} …`;
  });
  return `${named.join("; ")}${things.length > NAMED ? `; and ${things.length - NAMED} more` : ""}`;
}

function list(heading: string, things: readonly string[], effects: Effects): void {
  if (things.length === 0) return;
  effects.out(`${heading}:`);
  for (const thing of things) effects.out(`  ${thing.replace(/\s+/g, " ")}`);
  effects.out("");
}
