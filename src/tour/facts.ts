/** Facts of a stop, ready to be said: plants in order, each with its life, place, height, picking and what to expect; then the bed. */

import type { Level } from "../films/index.ts";
import type { Sentence } from "../language/index.ts";
import { batchesOf, bySowing, byVariety } from "./batches.ts";
import { bedFacts, placeFacts } from "./bed-facts.ts";
import type { BedOnTheDay } from "./bed-on-the-day.ts";
import type { Fact, Stop } from "./brief.ts";
import { expectedFact } from "./expected-picking.ts";
import { thisDayLastYear } from "./last-seen.ts";
import { pickedFact, pickedUnassigned } from "./picked-sentences.ts";
import { heightFact, lifeFact } from "./planting-sentences.ts";

export function factsOf(here: BedOnTheDay): readonly Fact[] {
  const { growing } = here;
  const places = placeFacts(here);
  const ofPlants = [
    ...batchesOf(growing).map((batch) => lifeFact(batch, here)),
    ...places.filter((fact) => fact.follow !== undefined),
    ...growing.map((lot) => heightFact(lot, here)),
    ...byVariety(growing).map((batch) => pickedFact(batch, here)),
    ...bySowing(growing).map((batch) => expectedFact(batch, here)),
  ].filter((fact) => fact !== undefined);
  const order = new Map(batchesOf(growing).flatMap((batch, at) => batch.lots.map(({ planting }) => [planting.id, at])));
  const at = (fact: Fact) => order.get(fact.plantings[0] ?? "") ?? 0;
  return [
    ...ofPlants.toSorted((a, b) => at(a) - at(b)),
    ...places.filter((fact) => fact.follow === undefined),
    ...pickedUnassigned(here),
    ...[thisDayLastYear(here)].filter((fact) => fact !== undefined),
    ...bedFacts(here),
  ];
}

export interface FactParagraph extends Sentence {
  /** What it tells of: plants, or the bed itself. */
  readonly about: "plants" | "bed";
  /** How strongly what it speaks of is shown: "no" when it is not; undefined of the bed as a whole. */
  readonly shown?: Level | "no" | undefined;
}

/**
 * The facts that the things to show have not told already, in paragraphs: one for each lot of plants, with pronouns after
 * the first sentence, then one for the bed.
 */
export function factParagraphs(stop: Stop): readonly FactParagraph[] {
  const told = new Set(stop.show.filter((point) => point.kind === "new").flatMap((point) => point.plantings));
  const untold = stop.facts.filter(
    (fact) =>
      !fact.private &&
      !stop.show.some((point) => point.text.includes(fact.text)) &&
      !(
        (fact.kind === "life" || fact.kind === "place") &&
        fact.plantings.length > 0 &&
        fact.plantings.every((id) => told.has(id))
      ),
  );
  const paragraphs: { plants: string; text: string; fact: Fact }[][] = [];
  for (const fact of untold) {
    const plants = fact.plantings.toSorted().join(" ");
    const last = paragraphs.at(-1)?.at(-1);
    const follows = last !== undefined && last.plants === plants && plants !== "" && fact.follow !== undefined;
    const bedToo = fact.kind === "bed" && last?.fact.kind === "bed";
    const line = { plants, text: follows ? (fact.follow ?? fact.text) : fact.text, fact };
    if (follows || bedToo) paragraphs.at(-1)?.push(line);
    else paragraphs.push([line]);
  }
  const levelOf = (plantings: readonly string[]): Level | "no" =>
    levels.find((level) =>
      stop.show.some((point) => point.level === level && point.plantings.some((id) => plantings.includes(id))),
    ) ?? "no";
  return paragraphs.map((lines) => ({
    text: lines.map(({ text }) => text).join(" "),
    sources: lines.flatMap(({ fact }) => fact.sources),
    private: false,
    about: lines[0]?.fact.kind === "bed" ? "bed" : "plants",
    shown: plantless(lines) ? undefined : levelOf(lines.flatMap(({ fact }) => fact.plantings)),
  }));
}

const levels: readonly Level[] = ["must", "should", "could"];

function plantless(lines: readonly { readonly fact: Fact }[]): boolean {
  return lines.every(({ fact }) => fact.plantings.length === 0);
}
