/** What can be wrong with a photo, in words, with a way out. */
import type { Bed, Photo, Problem } from "../model.ts";
import { nearestName, problem, type RuleName } from "../records/index.ts";
import { isDated } from "./file-name-date.ts";
import type { ImageKind } from "./image-kind.ts";
import type { VarietyNames } from "./varieties-shown.ts";

type PhotoRule = Extract<RuleName, `photo/${string}`>;

interface Words {
  readonly what: (facts: Facts) => string;
  readonly fix: (facts: Facts) => string;
}

type Facts = Readonly<Record<string, string>>;

const words: Readonly<Record<PhotoRule, Words>> = {
  "photo/unreadable": {
    what: () => "This photo could not be read from the disk.",
    fix: () => "Give yourself the right to read it, or copy it again from the camera.",
  },
  "photo/empty": {
    what: () => "This photo has no bytes in it, as after a copy that was broken off.",
    fix: () => "Copy it again from the camera, or remove it.",
  },
  "photo/not-a-picture": {
    what: () => "This file is named like a photo but holds no picture.",
    fix: () => "Rename it to what it is, or copy the photo again.",
  },
  "photo/wrong-ending": {
    what: ({ is, ending }) => `This photo is ${is}, and its name ends in ${ending}; it is read as what it is.`,
    fix: ({ right }) => `Let its name end in ${right}, so that other programs open it too.`,
  },
  "photo/damaged": {
    what: ({ why }) => `This photo cannot be opened (${why}), so no page shows it; its day still counts.`,
    fix: () => "Copy it again from the camera. If it opens in a photo program, save it there under the same name.",
  },
  "photo/too-large": {
    what: ({ limit }) =>
      `This photo has more than ${limit} million pixels, the most that are opened, so no page shows it.`,
    fix: () => "Save a smaller copy of it under the same name.",
  },
  "photo/no-heic-decoder": {
    what: () => "This photo is HEIC and no decoder for it is installed, so no page shows it; its day still counts.",
    fix: () => "Install heic-decode beside Plotreel, or set the phone to save JPEG.",
  },
  "photo/no-day": {
    what: ({ photos }) =>
      photos === "one photo"
        ? "Nothing in this photo or its name tells the day, so at best the day of the file itself was taken."
        : `Nothing in ${photos} of this folder or in their names tells the day, so at best the day of the file itself was taken.`,
    fix: () => 'Write the day into a sidecar, for example "date: 2026-05-16", or into the file name.',
  },
  "photo/day-disagrees": {
    what: ({ sidecar, photo }) =>
      `The sidecar says ${sidecar}, the photo itself says ${photo}; the photo was believed.`,
    fix: () => "Correct the sidecar, or set the time inside the photo with a photo tool.",
  },
  "photo/clock-disagrees": {
    what: ({ camera, gps, photos }) =>
      `The camera says ${camera}, GPS says ${gps}; ${photos === "one photo" ? "the camera was believed" : `in ${photos} of this folder the two disagree, and the day is the one that stands in each photo`}.`,
    fix: () => "If GPS is right, set the time inside the photo with a photo tool; else this needs nothing.",
  },
  "photo/clip-clock": {
    what: ({ camera, utc, local }) =>
      `The clips of ${camera} say a time that is ${utc} here if it is UTC, as the standard has it, and ${local} if it is the camera's own clock.`,
    fix: ({ key }) => `Write which it is into garden.md, once for this camera: clip clocks: {"${key}": local}, or UTC.`,
  },
  "photo/no-film-program": {
    what: ({ clips }) =>
      `${clips} no still picture, because the program ffmpeg is not on this machine; day and place still count.`,
    fix: () => "Install ffmpeg, or put a photo of the same name beside each clip.",
  },
  "photo/unknown-bed": {
    what: ({ folder, photos }) =>
      `No bed is called "${folder}", so ${photos} in this folder ${photos === "one photo" ? "has" : "have"} no bed.`,
    fix: ({ nearest }) =>
      nearest === undefined
        ? "Name the folder after a bed, or describe the bed in beds/."
        : `Did you mean "${nearest}"? Rename the folder.`,
  },
  "photo/unknown-variety": {
    what: ({ folder, photos }) =>
      `No variety is called "${folder}", so ${photos} in this folder ${photos === "one photo" ? "shows" : "show"} none and ${photos === "one photo" ? "is" : "are"} kept private.`,
    fix: ({ nearest }) =>
      nearest === undefined
        ? "Name the folder after a variety, or describe the variety in varieties/."
        : `Did you mean "${nearest}"? Rename the folder.`,
  },
  "photo/unknown-viewpoint": {
    what: ({ viewpoint, bed, photos }) =>
      `${bed} has other viewpoints than "${viewpoint}", from which ${photos === "one photo" ? "one photo comes" : `${photos} come`}.`,
    fix: ({ nearest, file }) =>
      nearest === undefined
        ? `Describe it under viewpoints in ${file}, so that the next photo can be taken from the same spot.`
        : `Did you mean "${nearest}"? Rename the folder.`,
  },
  "photo/unplaced": {
    what: ({ photos }) =>
      `${photos === "one photo" ? "One photo in this folder belongs" : `${photos} in this folder belong`} to no bed yet.`,
    fix: () =>
      "A photo gets its bed from its folder (photos/BED/VIEWPOINT), from a note about one bed that links it, or from a sidecar.",
  },
};

export function photoProblem(rule: PhotoRule, file: string, facts: Facts = {}): Problem {
  const { what, fix } = words[rule];
  return problem(rule, { file, line: 1, column: 1 }, what(facts), fix(facts));
}

export function clipClockProblem(asks: {
  readonly camera: string;
  readonly path: string;
  readonly utc: string;
  readonly local: string;
}): Problem {
  const { path, camera, utc, local } = asks;
  return photoProblem("photo/clip-clock", path, { camera, utc, local, key: camera.replace(/["\\\n]/g, " ") });
}

/** One for all clips, at the first of them. */
export function noFilmProgram(clips: readonly string[]): Problem[] {
  const [first, ...more] = clips;
  if (first === undefined) return [];
  const said = more.length === 0 ? "This clip has" : `This clip and ${more.length} more have`;
  return [photoProblem("photo/no-film-program", first, { clips: said })];
}

/** One problem for each folder, not for each of its hundred photos; placed at the first of them. */
export function undatedProblems(photos: readonly Photo[]): Problem[] {
  const undated = photos.filter(({ dateBasis }) => dateBasis === "file time" || dateBasis === "unknown");
  return [...Map.groupBy(undated, ({ path }) => path.slice(0, path.lastIndexOf("/"))).values()].map(
    ({ length, 0: first }) => photoProblem("photo/no-day", first?.path ?? "", { photos: counted(length) }),
  );
}

/** One problem for each folder, told by its first photo. */
export function clockProblems(photos: readonly { readonly photo: Photo; readonly gpsSays: string }[]): Problem[] {
  const byFolder = Map.groupBy(photos, ({ photo }) => photo.path.slice(0, photo.path.lastIndexOf("/")));
  return [...byFolder.values()].flatMap(([first, ...more]) =>
    first === undefined
      ? []
      : photoProblem("photo/clock-disagrees", first.photo.path, {
          camera: `${first.photo.day} ${first.photo.time}`,
          gps: first.gpsSays,
          photos: counted(more.length + 1),
        }),
  );
}

/** One for each folder below photos/, placed at its first photo without a bed. */
export function unplacedProblems(photos: readonly Photo[], beds: ReadonlyMap<string, Bed>): Problem[] {
  const byFolder = Map.groupBy(
    photos.filter((photo) => photo.bed === undefined),
    (photo) => photo.path.split("/").slice(1, -1)[0] ?? "",
  );
  return [...byFolder].map(([folder, { length, 0: first }]) => {
    const file = first?.path ?? "";
    const count = counted(length);
    if (folder === "" || isDated(folder)) return photoProblem("photo/unplaced", file, { photos: count });
    const nearest = nearestName(folder, beds.keys());
    return photoProblem("photo/unknown-bed", file, {
      folder,
      photos: count,
      ...(nearest === undefined ? {} : { nearest }),
    });
  });
}

/** One for each folder below photos/varieties/ that is called after no variety. */
export function unknownVarietyProblems(photos: readonly Photo[], names: VarietyNames): Problem[] {
  const unknown = Map.groupBy(photos, ({ path }) => {
    const folder = names.folder(path);
    return folder === undefined || names.called(folder) !== undefined ? undefined : folder;
  });
  return [...unknown].flatMap(([folder, { length, 0: first }]) => {
    if (folder === undefined || first === undefined) return [];
    const nearest = nearestName(folder, names.ids);
    return photoProblem("photo/unknown-variety", first.path, {
      folder,
      photos: counted(length),
      ...(nearest === undefined ? {} : { nearest }),
    });
  });
}

/** One problem for each viewpoint that its bed, which describes others, does not describe. */
export function unknownViewpointProblems(photos: readonly Photo[], beds: ReadonlyMap<string, Bed>): Problem[] {
  const unknown = photos.filter(({ bed, viewpoint }) => {
    const described = beds.get(bed ?? "")?.viewpoints ?? [];
    return viewpoint !== undefined && described.length > 0 && !described.some(({ name }) => name === viewpoint);
  });
  return [...Map.groupBy(unknown, ({ bed, viewpoint }) => `${bed}/${viewpoint}`).values()].flatMap((group) => {
    const [first] = group;
    const bed = beds.get(first?.bed ?? "");
    if (first?.viewpoint === undefined || bed === undefined) return [];
    const nearest = nearestName(
      first.viewpoint,
      bed.viewpoints.map(({ name }) => name),
    );
    const facts = {
      viewpoint: first.viewpoint,
      bed: bed.title,
      photos: counted(group.length),
      file: bed.place?.file ?? "its file",
    };
    return photoProblem("photo/unknown-viewpoint", first.path, {
      ...facts,
      ...(nearest === undefined ? {} : { nearest }),
    });
  });
}

function counted(photos: number): string {
  return photos === 1 ? "one photo" : `${photos} photos`;
}

const kinds: Readonly<Record<ImageKind, { readonly is: string; readonly endings: readonly string[] }>> = {
  jpeg: { is: "a JPEG", endings: ["jpg", "jpeg"] },
  png: { is: "a PNG", endings: ["png"] },
  webp: { is: "a WebP", endings: ["webp"] },
  avif: { is: "an AVIF", endings: ["avif"] },
  heic: { is: "a HEIC", endings: ["heic", "heif"] },
  gif: { is: "a GIF", endings: ["gif"] },
  tiff: { is: "a TIFF", endings: ["tif", "tiff"] },
};

/** The problem of a photo whose name says another kind than its bytes, or undefined. */
export function endingProblem(path: string, kind: ImageKind): Problem | undefined {
  const ending = /\.([^./]+)$/.exec(path)?.[1] ?? "";
  const { is, endings } = kinds[kind];
  if (endings.includes(ending.toLowerCase())) return undefined;
  return photoProblem("photo/wrong-ending", path, { is, ending: `.${ending}`, right: `.${endings[0]}` });
}
