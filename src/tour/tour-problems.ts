/** What is wrong in the records as a tour needs them: shade nobody can reckon with, names that leave a plant open. */

import { readShade, type ShadeReading, type SharedName, sharedNameOf } from "../almanac/index.ts";
import { cropOf } from "../crop-of.ts";
import type { Garden, Place, Problem } from "../model.ts";
import { problem } from "../records/index.ts";

export function tourProblems(garden: Garden): readonly Problem[] {
  return [...shadeProblems(garden), ...nameProblems(garden), ...eatenSweetPeas(garden)];
}

const unread: Readonly<Record<Extract<ShadeReading, { as: "unread" }>["why"], readonly [what: string, fix: string]>> = {
  "no direction": [
    "it names no direction",
    "Say where it stands as seen from the bed: wall to the east, 3 m high, 2 m away.",
  ],
  "two directions": [
    "it names several directions",
    "Write a line for each: wall to the north, 3 m high; wall to the west, 2 m high.",
  ],
  "no height": ["it says no height", "Add the height: wall to the east, 3 m high, 2 m away."],
  "a number": [
    "one of its numbers says no unit that is known, or not what it measures",
    "Write lengths in metres, centimetres, feet or inches, each with high, away or wide: 1.8 m high, 2 m away, 6 m wide.",
  ],
};

function shadeProblems({ beds }: Garden): readonly Problem[] {
  return [...beds.values()].flatMap(({ title, shade, place }) =>
    shade.flatMap((text) => {
      const read = readShade(text);
      if (read.as !== "unread") return [];
      const [what, fix] = unread[read.why];
      return [
        problem(
          "bed/shade-unread",
          place ?? { file: "beds", line: 1, column: 1 },
          `The shade "${text}" of ${title} is not reckoned with: ${what}.`,
          fix,
        ),
      ];
    }),
  );
}

function nameProblems({ varieties, crops, settings }: Garden): readonly Problem[] {
  const named = [...varieties.values()].flatMap((variety) => {
    const crop = variety.crop === undefined ? undefined : crops.get(variety.crop);
    const shared = sharedNameOf({ crop, title: variety.title, botanical: variety.botanical });
    return shared === undefined ? [] : [asked(shared, variety.title, variety.place, botanicalFix)];
  });
  // By stems they are flowers; by weight and in jars somebody means to eat them.
  const wished = (settings.goals ?? []).flatMap(({ what, text, pieces }) =>
    pieces === undefined && /^sweet[ -]?peas?$/i.test(what.trim())
      ? [asked(sweetPeas, text, gardenFile, "Name the pea: 6 quarts of garden peas, or of sugar snaps.")]
      : [],
  );
  return [...named, ...wished];
}

/** garden.md is short, and the words are quoted: its first line will do for a place. */
const gardenFile = { file: "garden.md", line: 1, column: 1 };

const sweetPeas: SharedName = {
  name: "sweet pea",
  means: "the flower (Lathyrus), whose pods and seeds are poisonous, or a garden pea (Pisum)",
};

const botanicalFix = "Write its botanical name into the variety's file: botanical: Genus species.";

function asked({ means }: SharedName, said: string, place: Place | undefined, fix: string): Problem {
  return problem(
    "variety/two-plants",
    place ?? { file: "varieties", line: 1, column: 1 },
    `"${said}" may be ${means}.`,
    fix,
  );
}

/** Sweet peas are cut by the stem; picked by weight they may be peas to eat, or somebody may be about to eat poison. */
function eatenSweetPeas(garden: Garden): readonly Problem[] {
  return garden.events
    .filter(({ kind, grams }) => kind === "picked" && grams !== undefined)
    .filter((event) => cropOf(garden, event)?.id === "sweet-pea")
    .map(({ text, place }) =>
      asked(sweetPeas, text, place, "If they are peas to eat, call them garden peas or sugar snaps in the line."),
    );
}
