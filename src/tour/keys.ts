/**
 * What things to show and shots are kept by: what they are of, and nothing of where they stand in a plan. So a tick, a plan
 * and a wrap mean the same shot, whatever was noted in between.
 */
import type { FollowUpLine } from "./brief.ts";
import type { Candidate } from "./candidates/candidate.ts";

/** "long-bed/trouble/clubroot/greyhound/2026-05-24" */
export function thingKey(
  bed: string,
  { kind, of, lots, about }: Pick<Candidate, "kind" | "of" | "lots" | "about">,
): string {
  return keyOf(
    bed,
    kind,
    ...(of === undefined ? [] : [of]),
    ...plantKeys(bed, kind, lots),
    ...(isNameless(of, lots) ? [about] : []),
  );
}

/** What is promised, asked or tried stays itself whatever stands there by now. */
const byWordAlone: ReadonlySet<string> = new Set(["owed", "question", "trial"]);

function plantKeys(bed: string, kind: Candidate["kind"], lots: Candidate["lots"]): readonly string[] {
  if (byWordAlone.has(kind)) return [];
  // A planting's id begins with its bed; of a bed's own plants the key says it once.
  return lots.map(({ planting: { id } }) => (id.startsWith(`${bed}/`) ? id.slice(bed.length + 1) : id)).toSorted();
}

function isNameless(of: string | undefined, lots: Candidate["lots"]): boolean {
  return of === undefined && lots.length === 0;
}

/** Parts in the letters of file names: "long-bed/label/crown-prince". */
export function keyOf(...parts: readonly string[]): string {
  return parts
    .map(plain)
    .filter((part) => part !== "")
    .join("/");
}

function plain(part: string): string {
  const words = (piece: string) =>
    piece
      .toLowerCase()
      .replace(/[^\p{L}\p{N}]+/gu, "-")
      .replace(/^-|-$/g, "");
  return part
    .split("/")
    .map(words)
    .filter((piece) => piece !== "")
    .join("/");
}

/** Of two that are alike in all the second is told apart: "long-bed/lost/crown-prince/2026-05-24/2". */
export function toldApart(): (key: string) => string {
  const times = new Map<string, number>();
  return (key) => {
    const before = times.get(key) ?? 0;
    times.set(key, before + 1);
    return before === 0 ? key : `${key}/${before + 1}`;
  };
}

/** What a promise is, whatever words it is told in: "2026-06-19 show the leeks again". */
export function promiseWords({ promisedOn, what }: Pick<FollowUpLine, "promisedOn" | "what">): string {
  return `${promisedOn} ${what}`;
}

/** Whether a thing or shot of that key is to keep the promise. */
export function keeps(key: string, promise: Pick<FollowUpLine, "promisedOn" | "what">): boolean {
  return `${key}/`.includes(`/${keyOf("owed", promiseWords(promise))}/`);
}
