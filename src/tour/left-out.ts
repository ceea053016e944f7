/** Beds the tour passes by, with the reason and what viewers miss. */

import type { Episode } from "../model.ts";
import { changes } from "../timeline/index.ts";
import { theBed } from "./bed-names.ts";
import type { LeftOut } from "./brief.ts";
import { dayOnly, type Speech } from "./days-said.ts";
import type { GardenIndex } from "./garden-index.ts";
import { type Ground, say } from "./sentence.ts";
import { newsAfter, sinceFor } from "./since.ts";
import type { StopOrder } from "./stop-order.ts";

export function leftOutLines(
  index: GardenIndex,
  order: StopOrder,
  tours: readonly Episode[],
  speech: Speech,
): readonly LeftOut[] {
  return order.passed.map(({ bed, why }) => {
    const line = whyPassed(index, bed.id, why, tours, speech);
    return { ...say(`${theBed(bed)} (${line.text})`, line.grounds), bed: bed.id, title: bed.title, why: line.text };
  });
}

function whyPassed(
  index: GardenIndex,
  id: string,
  why: StopOrder["passed"][number]["why"],
  tours: readonly Episode[],
  speech: Speech,
): { readonly text: string; readonly grounds: readonly Ground[] } {
  const { garden } = index;
  const bed = garden.beds.get(id);
  if (bed === undefined) return { text: "not known", grounds: [] };
  if (why === "private") return { text: "private", grounds: [bed] };
  if (why === "skip") return { text: "you said skip", grounds: [] };
  if (why === "not in use") {
    const until = bed.inUseUntil !== undefined && bed.inUseUntil < speech.day;
    return {
      text: until ? `not in use since ${dayOnly(bed.inUseUntil ?? speech.day, speech)}` : "not in use yet",
      grounds: [bed],
    };
  }
  const since = sinceFor(garden, bed, speech.day, tours);
  const news = changes(garden, id, newsAfter(since, speech.day, garden.settings.seasonStarts), speech.day).filter(
    (change) => !change.private && !quietKinds.has(change.kind),
  );
  const latest = news.at(-1);
  const seen = since.episode === undefined ? "this season" : `since ${dayOnly(since.day, speech)}`;
  if (latest === undefined)
    return {
      text: `nothing new ${seen}`,
      grounds: since.episode === undefined ? [] : [garden.episodes.get(since.episode) ?? {}],
    };
  const more = news.length === 1 ? "" : `, the latest of ${news.length} things ${seen}`;
  return { text: `${latest.text.replace(/\.$/, "")}${more}`, grounds: [latest] };
}

/** Changes that are no news to viewers. */
const quietKinds: ReadonlySet<string> = new Set(["to do", "done", "overdue", "promised", "asked"]);
