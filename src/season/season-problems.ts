/** What is wrong in the records as the season's work needs them: trials that can compare nothing, wishes nobody can read. */
import type { Garden, Goal, Problem, Trial } from "../model.ts";
import { problem } from "../records/index.ts";
import { bedMeant, isOfItself, meantBy, productMeant } from "./crop-words.ts";
import { vessel } from "./needs.ts";
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
    ...goals.flatMap((goal) => {
      const wrong = unreckoned(garden, goal);
      return wrong === undefined
        ? []
        : [problem("goal/unknown-crop", gardenFile, `The goal "${goal.text}" ${wrong.what}`, wrong.fix)];
    }),
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

/** Why nothing can be reckoned for a goal; undefined where something can. */
function unreckoned(garden: Garden, { what, jars }: Goal): { readonly what: string; readonly fix: string } | undefined {
  const meant = meantBy({ garden }, what);
  if (jars !== undefined)
    return productMeant(meant, what) !== undefined
      ? undefined
      : {
          what: "is of a product that the canning guide's table here does not name, so no amount is reckoned.",
          fix: 'Name one of the table in docs/seasons.md, such as "tomato sauce", or a weight of the fresh crop.',
        };
  if (meant.crop === undefined)
    return { what: "names no crop or variety there is.", fix: "Name the crop in it: 10 kg of leeks." };
  if (vessel.test(what))
    return {
      what: "does not say how much goes into one, so no amount is reckoned.",
      fix: "Say quarts or pints of a product of the canning guide's table in docs/seasons.md, or a weight of the fresh crop.",
    };
  if (!isOfItself(meant, what))
    return {
      what: `is of something made of ${meant.crop.plural}, and how much of them that takes is not known, so no amount is reckoned.`,
      fix: `Name the ${meant.crop.plural} themselves: 10 kg of ${meant.crop.plural}.`,
    };
  return undefined;
}
