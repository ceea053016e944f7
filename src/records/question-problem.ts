/** An open question as a problem: the line a person should look at, what it may say, and how to answer. */
import type { LineReading, Problem } from "../model.ts";
import { problem } from "./problem-rules.ts";

/** Undefined for what is facts or story. */
export function questionProblem({ as, place, readings }: LineReading): Problem | undefined {
  if (as !== "question") return undefined;
  const offered = readings.map(({ line }) => (line === "" ? "no fact" : `"${line.split("\n").join('" and "')}"`));
  if (offered.length === 0) {
    return problem(
      "note/question",
      place,
      "This line may hold a fact, and no reading explains it.",
      'Say it in plain words: "plotreel settle" asks for them and writes them below the line.',
    );
  }
  return problem(
    "note/question",
    place,
    offered.length === 1 ? "This line is not read for sure." : "This line can be read in more than one way.",
    `Is it ${offered.join(", or ")}? "plotreel settle" asks, and writes the answer below the line.`,
  );
}
