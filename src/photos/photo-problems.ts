/** What can be wrong with a photo, as problems with a way out. */
import { closest, distance } from "fastest-levenshtein";
import type { Bed, Photo, Problem, Severity } from "../model.ts";

interface PhotoRule {
  readonly severity: Severity;
  readonly what: (facts: Readonly<Record<string, string>>) => string;
  readonly fix: (facts: Readonly<Record<string, string>>) => string;
}

const rules = {
  "photo/unreadable": {
    severity: "warning",
    what: () => "This photo could not be read from the disk.",
    fix: () => "Check the file's permissions, or copy it again from the camera.",
  },
  "photo/empty": {
    severity: "warning",
    what: () => "This photo has no bytes in it, as after a copy that was broken off.",
    fix: () => "Copy it again from the camera, or remove it.",
  },
  "photo/not-a-picture": {
    severity: "warning",
    what: () => "This file is named like a photo but holds no picture.",
    fix: () => "Rename it to what it is, or copy the photo again.",
  },
  "photo/no-day": {
    severity: "hint",
    what: () => "Nothing in this photo or its name tells the day, so the day of the file itself was taken.",
    fix: () => 'Write the day into its sidecar, for example "date: 2026-05-16", or into the file name.',
  },
  "photo/damaged": {
    severity: "warning",
    what: ({ why }) => `This photo cannot be opened (${why}), so no page shows it; its day still counts.`,
    fix: () => "Copy it again from the camera. If it opens in a photo program, save it there under the same name.",
  },
  "photo/no-heic-decoder": {
    severity: "warning",
    what: () => "This photo is HEIC and no decoder for it is installed, so no page shows it; its day still counts.",
    fix: () => "Install heic-decode beside Plotreel, or set the phone to save JPEG.",
  },
  "photo/too-large": {
    severity: "warning",
    what: ({ limit }) =>
      `This photo has more than ${limit} million pixels, the most that are opened, so no page shows it.`,
    fix: () => "Save a smaller copy of it under the same name.",
  },
  "photo/day-disagrees": {
    severity: "hint",
    what: ({ sidecar, photo }) =>
      `The sidecar says ${sidecar}, the photo itself says ${photo}; the photo was believed.`,
    fix: () => "Correct the sidecar, or set the time inside the photo with a photo tool.",
  },
  "photo/unknown-bed": {
    severity: "warning",
    what: ({ folder, photos }) =>
      `No bed is called "${folder}", so ${photos} in this folder ${photos === "one photo" ? "has" : "have"} no bed.`,
    fix: ({ nearest }) =>
      nearest === ""
        ? "Name the folder after a bed, or describe the bed in beds/."
        : `Did you mean "${nearest}"? Rename the folder.`,
  },
  "photo/unplaced": {
    severity: "hint",
    what: ({ photos }) =>
      `${capital(photos ?? "")} in this folder ${photos === "one photo" ? "belongs" : "belong"} to no bed yet.`,
    fix: () => "A photo gets its bed from its folder (photos/BED/VIEWPOINT), from a note about one bed that links it, or from a sidecar.",
  },
} as const satisfies Record<string, PhotoRule>;

export type PhotoRuleName = keyof typeof rules;

export function photoProblem(rule: PhotoRuleName, file: string, facts: Readonly<Record<string, string>> = {}): Problem {
  const { severity, what, fix }: PhotoRule = rules[rule];
  return { rule, severity, file, line: 1, column: 1, what: what(facts), fix: fix(facts) };
}

/** One problem for each folder, not for each of its hundred photos; placed at the first of them. */
export function unplacedProblems(photos: readonly Photo[], beds: ReadonlyMap<string, Bed>): Problem[] {
  const byFolder = new Map<string, Photo[]>();
  for (const photo of photos) {
    if (photo.bed !== undefined) continue;
    const folder = photo.path.split("/").slice(1, -1)[0] ?? "";
    const known = byFolder.get(folder);
    if (known) known.push(photo);
    else byFolder.set(folder, [photo]);
  }
  return [...byFolder].map(([folder, [first, ...rest]]) => {
    const file = first?.path ?? "";
    const count = rest.length === 0 ? "one photo" : `${rest.length + 1} photos`;
    const named = folder !== "" && !/^\d{4}(-\d\d){0,2}$/.test(folder);
    return named
      ? photoProblem("photo/unknown-bed", file, { folder, photos: count, nearest: nearestBed(folder, beds) })
      : photoProblem("photo/unplaced", file, { photos: count });
  });
}

function nearestBed(folder: string, beds: ReadonlyMap<string, Bed>): string {
  if (beds.size === 0) return "";
  const nearest = closest(folder, [...beds.keys()]);
  return distance(folder, nearest) <= Math.max(1, Math.floor(nearest.length / 3)) ? nearest : "";
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
