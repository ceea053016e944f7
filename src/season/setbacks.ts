/** What went wrong in a stretch of days: plants lost and troubles, by cause, with what was tried and whether last year was worse. */
import { sayTried } from "../language/index.ts";
import type { Day, Event, Place } from "../model.ts";
import type { SeasonBook } from "./season-book.ts";

export interface Setback {
  /** "slugs", "leek moth"; "no cause noted" when no line says why. */
  readonly cause: string;
  readonly noted: boolean;
  /** Plants counted as lost. */
  readonly plants: number;
  /** A line says that all were lost, and nobody counted them. */
  readonly all: boolean;
  /** Lines that tell of a loss or a trouble. */
  readonly times: number;
  /** Variety ids, ids of crops told of without a variety, and bed ids where a line or its planting names one. */
  readonly varieties: readonly string[];
  readonly crops: readonly string[];
  readonly beds: readonly string[];
  readonly first: Day;
  readonly last: Day;
  /** Seen as a trouble and not over by the last day. */
  readonly open: boolean;
  /** The day on which the last trouble of this cause was noted as over. */
  readonly over?: Day | undefined;
  /** Things done against it, as said. */
  readonly tried: readonly string[];
  readonly sources: readonly Place[];
  readonly private: boolean;
}

const noCause = "no cause noted";

interface Draft {
  plants: number;
  all: boolean;
  times: number;
  varieties: Set<string>;
  crops: Set<string>;
  beds: Set<string>;
  days: Day[];
  open: boolean;
  over?: Day;
  tried: Set<string>;
  sources: Place[];
  private: boolean;
}

/** Most plants lost first, then the longest told. */
export function setbacks(book: SeasonBook, from: Day, to: Day): readonly Setback[] {
  const drafts = new Map<string, Draft>();
  const draft = (cause: string): Draft => {
    const key = plainCause(cause);
    const known = drafts.get(key);
    if (known !== undefined) return known;
    const made: Draft = {
      plants: 0,
      all: false,
      times: 0,
      varieties: new Set(),
      crops: new Set(),
      beds: new Set(),
      days: [],
      open: false,
      tried: new Set(),
      sources: [],
      private: true,
    };
    drafts.set(key, made);
    return made;
  };
  for (const event of book.events) {
    if (event.kind !== "lost" || event.day < from || event.day > to) continue;
    const found = draft(event.cause ?? noCause);
    found.plants += event.count?.value ?? 0;
    found.all ||= lostAll(event);
    found.times += 1;
    if (event.variety !== undefined) found.varieties.add(event.variety);
    else if (event.crop !== undefined) found.crops.add(event.crop);
    if (event.bed !== undefined) found.beds.add(event.bed);
    found.days.push(event.day);
    found.sources.push(event.place);
    found.private &&= event.private;
  }
  for (const { trouble, bed } of book.troubles) {
    if (trouble.opened > to || (trouble.ended ?? to) < from || trouble.opened < from) continue;
    const found = draft(trouble.cause);
    found.times += 1;
    for (const variety of trouble.varieties) found.varieties.add(variety);
    found.beds.add(bed);
    found.days.push(trouble.opened);
    found.open ||= trouble.ended === undefined || trouble.ended > to;
    if (trouble.ended !== undefined && trouble.ended <= to && trouble.ended > (found.over ?? ""))
      found.over = trouble.ended;
    for (const what of sayTried(trouble.tried, book.garden)) found.tried.add(what);
    found.sources.push(trouble.place);
    found.private &&= trouble.private;
  }
  return [...drafts]
    .map(([cause, found]): Setback => {
      const days = found.days.toSorted();
      return {
        cause,
        noted: cause !== noCause,
        plants: found.plants,
        all: found.all && found.plants === 0,
        times: found.times,
        varieties: [...found.varieties].sort(),
        crops: [...found.crops].sort(),
        beds: [...found.beds].sort(),
        first: days[0] ?? from,
        last: days.at(-1) ?? from,
        open: found.open,
        // What took plants after it was called over was not over.
        over: found.open || (found.over ?? "") < (days.at(-1) ?? "") ? undefined : found.over,
        tried: [...found.tried],
        sources: found.sources,
        private: found.private,
      };
    })
    .sort((a, b) => b.plants - a.plants || b.times - a.times || (a.cause < b.cause ? -1 : 1));
}

/** "lost all the beans to frost": how many there were, no line says. */
export function lostAll({ count, text }: Pick<Event, "count" | "text">): boolean {
  return count === undefined && /^\W*\w+:?\s+(?:all|every|everything|the lot|the rest|the whole)\b/i.test(text);
}

/** "Mosaic" and "cucumber mosaic" stay two; only case, articles and the end of the line are levelled. */
function plainCause(cause: string): string {
  const words = cause
    .trim()
    .replace(/(?<![.!,;])[.!,;]+$/, "")
    .replace(/\s+/g, " ");
  return words === "" ? noCause : words.charAt(0).toLowerCase() + words.slice(1);
}
