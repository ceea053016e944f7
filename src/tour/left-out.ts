/** Beds the tour passes by, with the reason, what viewers miss and how long it would take. */
import type { Episode } from "../model.ts";
import { changes } from "../timeline/index.ts";
import { theBed } from "./bed-names.ts";
import { bedOnTheDay } from "./bed-on-the-day.ts";
import type { LeftOut, ShowPoint } from "./brief.ts";
import { dayOnly, type Speech } from "./days-said.ts";
import type { GardenIndex } from "./garden-index.ts";
import { type Ground, say } from "./sentence.ts";
import { showPoints } from "./show-points.ts";
import { quietChanges } from "./show-values.ts";
import { newsAfter, sinceFor } from "./since.ts";
import type { StopOrder } from "./stop-order.ts";

type Passed = StopOrder["passed"][number];

export function leftOutLines(
  index: GardenIndex,
  passed: readonly Passed[],
  tours: readonly Episode[],
  speech: Speech,
): readonly LeftOut[] {
  return passed.map((one) => {
    const { bed } = one;
    const { why, miss } = whyPassed(index, one, tours, speech);
    const grounds: Ground[] = miss === undefined ? [bed] : miss.sources.map((place) => ({ place }));
    const text = miss === undefined ? `${theBed(bed)} (${why})` : `${theBed(bed)} (${why}): ${miss.text}`;
    return { ...say(text, grounds), bed: bed.id, title: bed.title, why, miss: miss?.text, seconds: miss?.seconds };
  });
}

function whyPassed(
  index: GardenIndex,
  { bed, why }: Passed,
  tours: readonly Episode[],
  speech: Speech,
): { readonly why: string; readonly miss?: ShowPoint | undefined } {
  const { garden } = index;
  if (why === "private") return { why: "private" };
  if (why === "not in use") {
    const until = bed.inUseUntil !== undefined && bed.inUseUntil < speech.day;
    return { why: until ? `not in use since ${dayOnly(bed.inUseUntil ?? speech.day, speech)}` : "not in use yet" };
  }
  const since = sinceFor(garden, bed, speech.day, tours);
  const from = newsAfter(since, speech.day, garden.settings.seasonStarts);
  const news = changes(garden, bed.id, from, speech.day).some(
    (change) => !change.private && !quietChanges.has(change.kind),
  );
  const seen = since.episode === undefined ? "this season" : `since ${dayOnly(since.day, speech)}`;
  const skipped = why === "skip" ? "you said skip" : undefined;
  if (!news) return { why: skipped ?? `nothing new ${seen}` };
  const [strongest] = showPoints(bedOnTheDay(index, bed, speech.day, since), "", [], undefined);
  const never = since.episode === undefined ? "never shown yet" : `last shown on ${dayOnly(since.day, speech)}`;
  return { why: skipped ?? never, miss: strongest };
}
