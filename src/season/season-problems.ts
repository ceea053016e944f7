/** What is wrong in the records as the season's work needs them: trials that can compare nothing, wishes nobody can read. */
import type { Garden, Problem, Trial } from "../model.ts";
import { problem } from "../records/index.ts";
import { bedMeant, isUnknownProduct, meantBy } from "./crop-words.ts";
import { overlappingArms } from "./trial-arms.ts";

export function seasonProblems(garden: Garden): readonly Problem[] {
  return [...[...garden.trials.values()].flatMap(trialProblems), ...wishProblems(garden)];
}

function trialProblems(trial: Trial): readonly Problem[] {
  const place = trial.place ?? { file: "trials", line: 1, column: 1 };
  if (trial.arms.length < 2) {
    return [
      problem(
        "trial/one-arm",
        place,
        `The trial "${trial.title}" has ${trial.arms.length === 0 ? "no arms" : "one arm"}, so there is nothing to compare.`,
        "Give it two arms or more, also one where everything was as usual.",
      ),
    ];
  }
  return overlappingArms(trial).map(([one, other]) =>
    problem(
      "trial/arms-overlap",
      place,
      `Nothing tells the arms "${one}" and "${other}" of "${trial.title}" apart: they have the same variety, bed and name.`,
      "Give each arm a variety, a bed or a name of its own, and write that name in the note lines.",
    ),
  );
}

/** garden.md is short, and the words are quoted: its first line will do for a place. */
const gardenFile = { file: "garden.md", line: 1, column: 1 };

function wishProblems(garden: Garden): readonly Problem[] {
  const { goals = [], pins = [] } = garden.settings;
  return [
    ...goals
      .filter(({ what }) => meantBy({ garden }, what).crop === undefined)
      .map(({ text }) =>
        problem(
          "goal/unknown-crop",
          gardenFile,
          `The goal "${text}" names no crop or variety there is.`,
          "Name the crop in it: 10 kg of leeks.",
        ),
      ),
    ...goals
      .filter(({ jars, what }) => jars !== undefined && isUnknownProduct({ garden }, what))
      .map(({ text }) =>
        problem(
          "goal/unknown-crop",
          gardenFile,
          `The goal "${text}" is of a product that the canning guide's table here does not name, so no amount is reckoned.`,
          'Name one of the table in docs/seasons.md, such as "tomato sauce", or a weight of the fresh crop.',
        ),
      ),
    ...pins.flatMap((pin) => {
      const crop = meantBy({ garden }, pin.crop).crop;
      const bed = bedMeant({ garden }, pin.bed);
      if (crop !== undefined && bed !== undefined) return [];
      const what = crop === undefined ? `no crop is called "${pin.crop}"` : `no bed is called "${pin.bed}"`;
      return [
        problem(
          "goal/unknown-pin",
          gardenFile,
          `The pin "${pin.text}" is left out of the draft for next year: ${what}.`,
          "Name a crop and a bed as the records do: tomatoes in Tomato Pots.",
        ),
      ];
    }),
  ];
}
