/** What a ribbon says: the bars in words, the week's weather, how to move along it. */
import { capital } from "../../language/index.ts";

/** A planting through a season; days as they are said. */
export interface Life {
  /** The year in which it came, where that is an earlier one. */
  readonly since?: string | undefined;
  readonly sown?: string | undefined;
  readonly planted?: string | undefined;
  /** When it was first noted. */
  readonly noted: string;
  /** When it came from another bed, and from which where that is known: "the long bed". */
  readonly moved?: { readonly day: string; readonly from?: string | undefined } | undefined;
  readonly first?: string | undefined;
  /** Undefined when it was picked on one day. */
  readonly last?: string | undefined;
  readonly over?:
    | { readonly day: string; readonly by: "move" | "loss" | "end"; readonly to?: string | undefined }
    | undefined;
}

function ended({ day, by, to }: NonNullable<Life["over"]>): string {
  if (by === "move") return `moved${to === undefined ? "" : ` to ${to}`} on ${day}`;
  return by === "loss" ? `lost on ${day}` : `over on ${day}`;
}

export const ribbonWords = {
  /** "Sown on 25 April, planted on 30 May, moved here from the long bed on 12 July, picked from 2 to 20 September, over on 3 October." */
  life({ since, sown, planted, moved, noted, first, last, over }: Life): string {
    const began = [
      since === undefined ? undefined : `here since ${since}`,
      sown === undefined ? undefined : `sown on ${sown}`,
      planted === undefined ? undefined : `planted on ${planted}`,
      moved && `moved here${moved.from === undefined ? "" : ` from ${moved.from}`} on ${moved.day}`,
    ].filter((part) => part !== undefined);
    const parts = [
      ...(began.length === 0 ? [`noted on ${noted}`] : began),
      ...(first === undefined ? [] : [last === undefined ? `picked on ${first}` : `picked from ${first} to ${last}`]),
      ...(over === undefined ? [] : [ended(over)]),
    ];
    return `${capital(parts.join(", "))}.`;
  },

  /** "Something grew from 21 March to 18 July, picked from 3 May to 17 July." */
  bed({ from, to, first, last }: { from: string; to: string; first?: string | undefined; last?: string | undefined }) {
    const picked =
      first === undefined ? "" : last === undefined ? `, picked on ${first}` : `, picked from ${first} to ${last}`;
    return `Something grew from ${from} to ${to}${picked}.`;
  },

  filmed: (title: string) => `Filmed: ${title}.`,

  /** Temperatures as they are said. */
  week({ low, high, rain }: { low: string; high: string; rain?: "dry" | "some" | "wet" | undefined }): string {
    const wet = rain === undefined ? "" : rain === "dry" ? ", dry" : rain === "wet" ? ", wet" : ", some rain";
    return `The week: ${low} to ${high}${wet}.`;
  },

  of: (season: string) => `The season of ${season}`,
  stands: "In the bed:",
  empty: "The bed was empty.",
  /** The slider fills in the day itself. */
  photoOf: "Photo of {day}.",
  move: "Day of the season",
  earlier: "Earlier",
  later: "Later",
  photos: "Photos:",
  dayByDay: "Day by day",
};
