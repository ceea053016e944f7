/**
 * Every rule by which something in the records is called wrong. Names are permanent: people silence hints by them and
 * look them up in docs/messages.md; what each means stands in rule-meanings.ts, so that the phone does not carry it.
 */

import type { Place, Problem } from "../model.ts";
import { compare } from "../order.ts";
import { lineRules, problemOf, type Rule } from "./line-rules.ts";

export const problemRules = {
  "folder/missing": { severity: "error" },
  "folder/empty": { severity: "hint" },
  "folder/no-settings": { severity: "hint" },
  "folder/link-loop": { severity: "warning" },
  "folder/link-outside": { severity: "warning", doubt: true },
  "folder/link-broken": { severity: "warning", doubt: true },
  "folder/unreadable": { severity: "error" },
  "folder/folder-not-file": { severity: "error" },
  "folder/file-not-folder": { severity: "error" },
  "folder/same-id": { severity: "error" },
  "folder/file-name": { severity: "hint" },
  "folder/not-read": { severity: "warning", doubt: true },
  "folder/misspelt": { severity: "warning", doubt: true },
  "folder/not-a-photo": { severity: "hint" },

  "table/no-headings": { severity: "error" },
  "table/unknown-column": { severity: "hint" },
  "table/like-private": { severity: "warning", doubt: true },
  "table/no-name": { severity: "warning" },
  "table/same-variety": { severity: "error" },

  "text/not-utf8": { severity: "error" },
  "text/not-text": { severity: "error" },
  "text/empty": { severity: "error" },
  "text/very-long": { severity: "warning" },

  "front-matter/unclosed": { severity: "error" },
  "front-matter/not-a-mapping": { severity: "error" },
  "front-matter/yaml": { severity: "error" },
  "front-matter/duplicate-key": { severity: "error" },
  "front-matter/expands": { severity: "error" },
  "front-matter/not-first": { severity: "error" },
  "front-matter/language": { severity: "error" },

  "record/unknown-key": { severity: "error" },
  "record/missing-key": { severity: "error" },
  "record/wrong-value": { severity: "error" },

  ...lineRules,

  "link/unknown-bed": { severity: "warning" },
  "link/unknown-variety": { severity: "warning" },
  "link/unknown-crop": { severity: "warning" },
  "link/unknown-site": { severity: "warning", doubt: true },
  "link/unknown-episode": { severity: "warning" },
  "link/unknown-photo": { severity: "warning" },

  "episode/not-known-what-was-shown": { severity: "hint" },

  "words/not-read": { severity: "warning" },
  "words/unknown-meaning": { severity: "warning" },
  "words/twice": { severity: "warning" },
  "words/name-of-another": { severity: "hint" },

  "field-list/not-whole": { severity: "error", doubt: false },
  "field-list/not-one": { severity: "error", doubt: false },
  "field-list/another-tour": { severity: "warning" },
  "field-list/file-name": { severity: "warning" },
  "plan/not-read": { severity: "warning" },

  "photo/unreadable": { severity: "warning" },
  "photo/empty": { severity: "warning" },
  "photo/not-a-picture": { severity: "warning" },
  "photo/wrong-ending": { severity: "hint" },
  "photo/damaged": { severity: "warning" },
  "photo/too-large": { severity: "warning" },
  "photo/no-heic-decoder": { severity: "warning" },
  "photo/no-day": { severity: "hint" },
  "photo/day-disagrees": { severity: "hint" },
  "photo/clock-disagrees": { severity: "hint" },
  "photo/clip-clock": { severity: "hint" },
  "photo/no-film-program": { severity: "hint" },
  "photo/unknown-bed": { severity: "warning" },
  "photo/unknown-variety": { severity: "warning" },
  "photo/unknown-viewpoint": { severity: "hint" },
  "voice/waits": { severity: "hint" },
  "photo/unplaced": { severity: "hint" },

  "timeline/more-than-sown": { severity: "warning" },
  "timeline/more-than-there": { severity: "warning" },
  "timeline/no-sowing": { severity: "hint" },
  "timeline/sown-where": { severity: "hint" },
  "timeline/no-bed": { severity: "warning" },
  "timeline/variety-from-nursery": { severity: "hint" },
  "timeline/before-planting": { severity: "warning" },
  "timeline/nothing-planted": { severity: "hint" },
  "timeline/nothing-there": { severity: "warning" },
  "timeline/in-another-bed": { severity: "hint" },
  "timeline/several-plantings": { severity: "hint" },
  "timeline/several-beds": { severity: "hint" },
  "timeline/after-its-end": { severity: "hint" },
  "timeline/picked-of-several": { severity: "hint" },
  "timeline/never-cleared": { severity: "hint" },
  "timeline/annual-or-perennial": { severity: "hint" },
  "timeline/no-such-trouble": { severity: "hint" },
  "timeline/no-such-promise": { severity: "hint" },
  "timeline/trouble-left-open": { severity: "hint" },
  "timeline/gear-not-there": { severity: "hint" },
  "timeline/bed-not-in-use": { severity: "warning" },

  "trial/one-arm": { severity: "warning" },
  "trial/arms-overlap": { severity: "warning" },

  "goal/unknown-crop": { severity: "warning" },
  "goal/unknown-pin": { severity: "warning" },

  "weather/no-columns": { severity: "warning" },
  "weather/no-date": { severity: "warning" },
  "weather/impossible-value": { severity: "warning" },
  "weather/wrong-unit": { severity: "warning" },
  "weather/min-above-max": { severity: "warning" },
  "weather/day-twice": { severity: "warning" },
  "weather/units-converted": { severity: "hint" },
  "weather/station-moved": { severity: "hint" },
  "weather/gap": { severity: "hint" },

  "captions/none": { severity: "error", doubt: false },
  "captions/not-read": { severity: "error", doubt: false },
  "captions/encoding": { severity: "hint" },
  "captions/no-header": { severity: "warning" },
  "captions/time": { severity: "warning" },
  "captions/arrow": { severity: "warning" },
  "captions/no-empty-line": { severity: "warning" },
  "captions/stray-text": { severity: "warning" },
  "captions/frames": { severity: "hint" },
  "captions/end-before-start": { severity: "warning" },
  "captions/out-of-order": { severity: "warning" },
  "captions/overlap": { severity: "hint" },
  "captions/past-end": { severity: "warning" },
  "captions/another-film": { severity: "warning" },
  "bed/shade-unread": { severity: "warning" },
  "variety/two-plants": { severity: "warning" },
  "privacy/mark-unclear": { severity: "error" },
  "privacy/like-private": { severity: "error" },
  "privacy/described-no-more": { severity: "error" },
  "privacy/named-in-title": { severity: "error" },
  "privacy/position": { severity: "hint" },
  "privacy/photo": { severity: "error" },
  "privacy/named": { severity: "hint" },
} as const satisfies Record<string, Rule>;

export type RuleName = keyof typeof problemRules;

/** A problem by its rule; the severity is the table's. `what` and `fix` are whole sentences. */
export function problem(rule: RuleName, place: Place, what: string, fix: string, expected?: string): Problem {
  return problemOf(problemRules[rule], rule, place, what, fix, expected);
}

/** Order in which problems are shown: by file, line, column, rule. Files compare by code unit, the same everywhere. */
export function sortProblems(problems: readonly Problem[]): readonly Problem[] {
  return problems.toSorted(
    (a, b) =>
      compare(a.file, b.file) ||
      a.line - b.line ||
      a.column - b.column ||
      compare(a.rule, b.rule) ||
      compare(a.what, b.what),
  );
}
