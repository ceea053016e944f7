/** Readings as data, and as problems: exactly what programs are promised. */
import { describe, expect, it } from "vitest";
import { questionProblem, readingData } from "../../src/records/index.ts";
import { gardenNames } from "../note-lines/a-garden.ts";
import { event, facts, offered, place, question, story } from "./asked.ts";

const names = gardenNames();

describe("a reading as data", () => {
  it("has every figure, plain, and names as titles", () => {
    const sowed = event("moved", {
      id: "x",
      variety: "crown-prince",
      count: { value: 8, upTo: 10, approx: true },
      unit: "head",
      grams: 1200,
      litres: 2,
      heightCm: 42,
      celsius: -1.5,
      ph: 6.4,
      bed: "cold-frame",
      toBed: "squash-bed",
      nursery: true,
      day: "2026-07-16",
      due: "2026-07-20",
      cause: "frost",
      reason: "because of the moth",
      what: "moved out",
      spot: "row 2",
      gear: "arch",
      detail: "at last",
    });
    expect(readingData(facts("8 to 10 out, -1.5", [sowed]), names)).toEqual({
      file: place.file,
      line: 7,
      text: "8 to 10 out, -1.5",
      as: "facts",
      events: [
        {
          kind: "moved",
          crop: "squash",
          variety: "Crown Prince",
          count: 8,
          unit: "head",
          grams: 1200,
          litres: 2,
          centimetres: 42,
          celsius: -1.5,
          ph: 6.4,
          bed: "Cold Frame",
          toBed: "Squash Bed",
          nursery: true,
          day: "2026-07-16",
          due: "2026-07-20",
          cause: "frost",
          reason: "because of the moth",
          what: "moved out",
        },
      ],
      readings: [],
    });
  });

  it("has no key for what the line does not say", () => {
    const [only] = readingData(facts("leeks up", [event("up", { crop: "leek" })]), names).events;
    expect(Object.keys(only ?? {})).toEqual(["kind", "crop", "day"]);
  });

  it("has a question's readings in their order, a name that no record has as its plain line writes it", () => {
    const asked = question("BK toms in", [
      offered('planted "Black Krim" tomato', event("planted", { variety: "black-krim", crop: "tomato" })),
      offered("", ...[]),
    ]);
    expect(readingData(asked, names)).toMatchObject({
      as: "question",
      events: [],
      readings: [
        {
          line: 'planted "Black Krim" tomato',
          events: [{ kind: "planted", crop: "tomato", variety: "Black Krim", day: "2026-07-18" }],
        },
        { line: "", events: [] },
      ],
    });
  });
});

describe("an open question as a problem", () => {
  it("says what the line may mean and how to settle it", () => {
    const asked = question("lifted the onions", [
      offered("picked onions from Long Bed", event("picked", { crop: "onion" })),
      offered("cleared onions from Long Bed\npicked onions", event("cleared", { crop: "onion" })),
      offered(""),
    ]);
    expect(questionProblem(asked)).toEqual({
      rule: "note/question",
      severity: "hint",
      ...place,
      what: "This line can be read in more than one way.",
      fix:
        'Is it "picked onions from Long Bed", or "cleared onions from Long Bed" and "picked onions", or no fact? ' +
        '"plotreel settle" asks, and writes the answer below the line.',
    });
  });

  it("says so when one reading is not sure, or none explains the line", () => {
    expect(questionProblem(question("on BK", [offered("picked tomatoes")]))?.what).toBe(
      "This line is not read for sure.",
    );
    expect(questionProblem(question("on BK", []))?.what).toBe("This line may hold a fact, and no reading explains it.");
  });

  it("is none where the line is facts or story", () => {
    expect(questionProblem(facts("leeks up", [event("up", { crop: "leek" })]))).toBeUndefined();
    expect(questionProblem(story("Rain."))).toBeUndefined();
  });
});
