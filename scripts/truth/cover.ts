/** Cover in pictures of leaves on ground whose truth is drawn: what grows, what lies between and what light does, kind by kind. */
import { canopyCover, isCovered } from "../../src/photos/canopy-cover.ts";
import type { RgbImage } from "../../src/photos/raw-image.ts";
import { type Chance, chance } from "./chance.ts";
import type { TruthRow } from "./table.ts";

type Colour = readonly [red: number, green: number, blue: number];

export interface CoverKind {
  readonly kind: string;
  readonly ground: readonly Colour[];
  readonly leaves: readonly Colour[];
  /** Lies over leaves and ground, in spots: flowers. What they hide does not count. */
  readonly spots?: readonly Colour[];
  /** Lies over everything, this strongly: net. */
  readonly veil?: { readonly colour: Colour; readonly share: number };
  /** What the camera makes of red, green and blue. */
  readonly cast?: Colour;
  /** Half of the picture has this much of the light. */
  readonly shadow?: number;
  /** Points of cover: mean and greatest error allowed, as reached today, and of how many pictures it is said that nobody can tell. */
  readonly goal: { readonly mean: number; readonly worst: number; readonly untold?: number };
}

const soil: readonly Colour[] = [
  [122, 94, 68],
  [104, 80, 58],
  [140, 112, 84],
];
const leaf: readonly Colour[] = [
  [70, 120, 48],
  [92, 140, 62],
  [52, 96, 40],
];

/** Colours as phones show them in even light, by eye: no published table of them is known. */
export const coverKinds: readonly CoverKind[] = [
  { kind: "green leaves on soil", ground: soil, leaves: leaf, goal: { mean: 1, worst: 2 } },
  {
    kind: "wet soil",
    ground: [
      [62, 48, 38],
      [48, 38, 32],
      [74, 60, 48],
    ],
    leaves: leaf,
    goal: { mean: 1, worst: 2 },
  },
  {
    kind: "snow",
    ground: [
      [232, 236, 242],
      [214, 220, 230],
    ],
    leaves: leaf,
    goal: { mean: 1, worst: 2 },
  },
  {
    kind: "straw",
    ground: [
      [206, 184, 132],
      [186, 160, 108],
    ],
    leaves: leaf,
    goal: { mean: 1, worst: 2 },
  },
  {
    kind: "grey boards",
    ground: [
      [150, 146, 140],
      [126, 122, 118],
    ],
    leaves: leaf,
    goal: { mean: 1, worst: 2 },
  },
  {
    kind: "green painted boards",
    ground: [
      [96, 112, 98],
      [108, 122, 108],
    ],
    leaves: leaf,
    goal: { mean: 1, worst: 2, untold: 2 },
  },
  { kind: "half in shadow", ground: soil, leaves: leaf, shadow: 0.35, goal: { mean: 1.5, worst: 3 } },
  {
    kind: "under net, a quarter of it white",
    ground: soil,
    leaves: leaf,
    veil: { colour: [228, 230, 232], share: 0.25 },
    goal: { mean: 2, worst: 5 },
  },
  {
    kind: "under dark net, half of it black",
    ground: soil,
    leaves: leaf,
    veil: { colour: [26, 28, 27], share: 0.5 },
    goal: { mean: 1, worst: 2 },
  },
  {
    kind: "under dark green net, a third of it",
    ground: soil,
    leaves: leaf,
    veil: { colour: [30, 62, 40], share: 0.35 },
    goal: { mean: 1, worst: 2 },
  },
  {
    kind: "under dark green net, half of it",
    ground: soil,
    leaves: leaf,
    veil: { colour: [30, 62, 40], share: 0.5 },
    goal: { mean: 1, worst: 2 },
  },
  {
    kind: "grey and green leaves together",
    ground: soil,
    leaves: [...leaf, [106, 128, 104], [122, 142, 116]],
    goal: { mean: 6, worst: 15, untold: 2 },
  },
  {
    kind: "white and yellow flowers",
    ground: soil,
    leaves: leaf,
    spots: [
      [240, 238, 232],
      [232, 200, 60],
    ],
    goal: { mean: 1, worst: 2 },
  },
  {
    kind: "camera that sees green, a quarter more",
    ground: soil,
    leaves: leaf,
    cast: [1, 1.25, 1],
    goal: { mean: 1, worst: 3 },
  },
  {
    kind: "camera that sees green, four tenths more",
    ground: soil,
    leaves: leaf,
    cast: [1, 1.4, 1],
    goal: { mean: 3, worst: 3, untold: 10 },
  },
  {
    kind: "camera that sees red, a tenth more",
    ground: soil,
    leaves: leaf,
    cast: [1.1, 1, 0.95],
    goal: { mean: 1, worst: 2 },
  },
  {
    kind: "grey leaves (leek, cabbage)",
    ground: soil,
    leaves: [
      [106, 128, 104],
      [122, 142, 116],
      [92, 112, 90],
    ],
    goal: { mean: 1, worst: 2, untold: 2 },
  },
  {
    kind: "red leaves (beet, red lettuce)",
    ground: soil,
    leaves: [
      [104, 40, 56],
      [120, 52, 60],
    ],
    goal: { mean: 1, worst: 2, untold: 10 },
  },
];

const [width, height] = [240, 180];

/** A picture of a kind and the share of it that is leaf. */
export function drawnCover(
  kind: Omit<CoverKind, "goal">,
  wanted: number,
  by: Chance,
): { readonly image: RgbImage; readonly truth: number } {
  const pixels = width * height;
  const colours = new Array<Colour>(pixels);
  const isLeaf = new Uint8Array(pixels);
  const one = (of: readonly Colour[]) => of[by.whole(0, of.length - 1)] as Colour;
  const disc = (colour: Colour, radius: number, leafy: boolean) => {
    const [x0, y0] = [by.whole(0, width - 1), by.whole(0, height - 1)];
    for (let y = Math.max(0, y0 - radius); y < Math.min(height, y0 + radius); y++)
      for (let x = Math.max(0, x0 - radius); x < Math.min(width, x0 + radius); x++)
        if ((x - x0) ** 2 + (y - y0) ** 2 <= radius * radius) {
          colours[y * width + x] = colour;
          isLeaf[y * width + x] = leafy ? 1 : 0;
        }
  };
  colours.fill(kind.ground[0] as Colour);
  for (let lump = 0; lump < 400; lump++) disc(one(kind.ground), by.whole(3, 9), false);
  const leafShare = () => isLeaf.reduce((sum, leafy) => sum + leafy, 0) / pixels;
  // Counting every pixel costs more than drawing a few leaves.
  while (leafShare() < wanted) for (let n = 0; n < 8; n++) disc(one(kind.leaves), by.whole(4, 12), true);
  if (kind.spots) for (let flower = 0; flower < 40; flower++) disc(one(kind.spots), by.whole(2, 5), false);
  const data = new Uint8Array(pixels * 3);
  colours.forEach((colour, at) => {
    const light = (kind.shadow !== undefined && at % width < width / 2 ? kind.shadow : 1) * (1 + 0.12 * by.normal());
    for (const channel of [0, 1, 2] as const) {
      const veil = kind.veil?.share ?? 0;
      const seen = colour[channel] * (1 - veil) * light + (kind.veil?.colour[channel] ?? 0) * veil;
      data[at * 3 + channel] = Math.min(
        255,
        Math.max(0, Math.round(seen * (kind.cast?.[channel] ?? 1) + 3 * by.normal())),
      );
    }
  });
  return { image: { width, height, data }, truth: leafShare() };
}

export interface CoverErrors {
  readonly cases: number;
  /** Of which it is said that nobody can tell; the errors are those of the others, in points. */
  readonly unsure: number;
  readonly mean: number;
  readonly worst: number;
}

/** From bare to nearly full, two pictures each. */
export function coverErrors(kind: CoverKind): CoverErrors {
  const by = chance(11);
  const found = [0, 0.05, 0.2, 0.5, 0.8, 0.97].flatMap((wanted) =>
    Array.from({ length: 2 }, () => {
      const { image, truth } = drawnCover(kind, wanted, by);
      const cover = canopyCover(image);
      return { isUnsure: cover?.isUnsure, error: 100 * Math.abs((cover?.cover ?? Number.NaN) - truth) };
    }),
  );
  const errors = found.filter(({ isUnsure }) => isUnsure !== true).map(({ error }) => error);
  return {
    cases: found.length,
    unsure: found.length - errors.length,
    mean: errors.reduce((sum, error) => sum + error, 0) / errors.length,
    worst: Math.max(...errors),
  };
}

/** What lies white over a bed, with what grows below shining through or not. */
const whiteOver: readonly (Omit<CoverKind, "goal"> & { readonly wanted: readonly number[] })[] = [
  {
    kind: "fleece",
    ground: [
      [226, 228, 230],
      [206, 208, 212],
      [188, 190, 194],
    ],
    leaves: leaf,
    wanted: [0],
  },
  {
    kind: "net, two thirds of it white",
    ground: soil,
    leaves: leaf,
    veil: { colour: [228, 230, 232], share: 0.66 },
    wanted: [0.1, 0.2, 0.5, 0.8, 0.97],
  },
  {
    kind: "fleece with leaves shining through",
    ground: soil,
    leaves: leaf,
    veil: { colour: [232, 233, 235], share: 0.8 },
    wanted: [0, 0.1, 0.2, 0.5, 0.8, 0.97],
  },
];

/** Beds under fleece or white net, and those of every other kind without: whether each is told for what it is. */
export function fleeceTold(): { readonly cases: number; readonly right: number } {
  const by = chance(12);
  const without = coverKinds.map((kind) => ({
    ...kind,
    wanted: kind.kind === "snow" ? [0.2, 0.5] : [0, 0.05, 0.2, 0.8],
  }));
  const all = [
    ...whiteOver.map((kind) => ({ ...kind, isWhite: true })),
    ...without.map((kind) => ({ ...kind, isWhite: false })),
  ];
  const told = all.flatMap(({ isWhite, ...kind }) =>
    kind.wanted.map((wanted) => {
      const found = canopyCover(drawnCover(kind, wanted, by).image);
      return found !== undefined && isCovered(found) === isWhite;
    }),
  );
  return { cases: told.length, right: told.filter(Boolean).length };
}

export function coverRows(): readonly TruthRow[] {
  const kinds = coverKinds.map((kind): TruthRow => {
    const { cases, unsure, mean, worst } = coverErrors(kind);
    const { goal } = kind;
    return {
      quantity: `cover: ${kind.kind}`,
      cases,
      found: `${mean.toFixed(1)} points, worst ${worst.toFixed(1)}${unsure > 0 ? `, ${unsure} not told` : ""}`,
      against: "drawn pictures",
      goal: `${goal.mean}, worst ${goal.worst}${goal.untold === undefined ? "" : `, ${goal.untold} not told`}`,
      met: mean <= goal.mean && worst <= goal.worst && unsure === (goal.untold ?? 0),
    };
  });
  const { cases, right } = fleeceTold();
  const covered = {
    quantity: "covered by fleece, told apart",
    cases,
    found: `${right} right`,
    against: "drawn pictures",
  };
  return [...kinds, { ...covered, goal: "all", met: right === cases }];
}
