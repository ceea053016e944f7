/** What is told of files the moment they are saved. */
import type { Garden } from "../model.ts";
import { namesOfGarden, problemText } from "../records/index.ts";
import { sayOpen, sayReadings } from "./reading-words.ts";

/** Each line of the saved notes with its reading, then everything that is wrong or doubtful in the saved files. */
export function saySaved(saved: ReadonlySet<string>, garden: Garden): readonly string[] {
  const readings = garden.readings.filter(({ place }) => saved.has(place.file));
  const problems = garden.problems.filter(({ file }) => saved.has(file));
  const open = sayOpen(readings);
  return [
    ...(readings.length === 0 ? [] : sayReadings(readings, garden, namesOfGarden(garden))),
    ...problems.flatMap((problem) => ["", problemText(problem)]),
    ...(open === undefined ? [] : ["", open]),
  ];
}
