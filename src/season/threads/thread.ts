/**
 * A thread of a year: one thing with what went before, what was done and what came of it. It joins what lies in several beds,
 * films and years; every part is a fact with its lines, and words are made of it last (recap-words/thread-words.ts).
 */
import type { Fact } from "../../facts/index.ts";
import { type Ground, sourcesOf } from "../../language/index.ts";
import type { Day, Picked, PlantIds } from "../../model.ts";
import type { RecapPhoto } from "../recap.ts";

export type ThreadKind =
  /** Something was done differently, for a reason or by a plan of an earlier season. */
  | "tried"
  /** Plants were lost, or gave less than before. */
  | "failed"
  /** Each plant, or a crop, gave far more than the year before. */
  | "surprise"
  /** A crop beside the year before, where little else is on record. */
  | "crop"
  /** Never grown here before. */
  | "new"
  /** The bed that changed most, from one spot. */
  | "bed"
  | "trial"
  /** What the whole season came to. */
  | "year"
  /** Promised to viewers and not kept. */
  | "debt"
  /** What comes next year, and why. */
  | "next";

/** What one part of a thread tells. */
export type Told =
  /** As the person wrote it. `of` where the words do not say of what. */
  | { readonly is: "own words"; readonly text: string; readonly of?: PlantIds | undefined }
  | { readonly is: "planned"; readonly what: string; readonly said: Day; readonly of?: PlantIds | undefined }
  | { readonly is: "done because"; readonly reason: string; readonly gear?: string | undefined; readonly of: PlantIds }
  | { readonly is: "put up"; readonly gear: string; readonly on: Day }
  /** A line of a day names it; what was done with it is still a question. */
  | { readonly is: "gear on a day"; readonly gear: string; readonly on: Day }
  | { readonly is: "begun"; readonly of: PlantIds; readonly kind: "sowed" | "planted"; readonly on: Day }
  | { readonly is: "trouble then"; readonly of: PlantIds; readonly cause: string; readonly plants: number }
  | { readonly is: "trouble again"; readonly of: PlantIds; readonly cause: string }
  | {
      readonly is: "lost";
      readonly of: PlantIds;
      readonly cause?: string | undefined;
      readonly plants: number;
      readonly began?: number | undefined;
      readonly all: boolean;
    }
  | { readonly is: "had"; readonly of: PlantIds; readonly cause: string; readonly over?: Day | undefined }
  | { readonly is: "another way next"; readonly of: PlantIds }
  | { readonly is: "tried against"; readonly what: string }
  | { readonly is: "gave"; readonly of: PlantIds; readonly picked: Picked }
  | { readonly is: "more or less"; readonly of: PlantIds; readonly ratio: number; readonly each: boolean }
  | { readonly is: "never grown before"; readonly of: PlantIds; readonly from?: string | undefined }
  | { readonly is: "seen from one spot"; readonly bed: string }
  | { readonly is: "stood"; readonly on: Day; readonly crops: readonly string[]; readonly bare: boolean }
  | { readonly is: "asked"; readonly question: string; readonly title: string }
  | { readonly is: "too few plots"; readonly plots: number; readonly kind?: string | undefined }
  | { readonly is: "season"; readonly ratio?: number | undefined }
  | { readonly is: "mostly"; readonly of: PlantIds; readonly share: number }
  | { readonly is: "stems"; readonly count: number }
  | { readonly is: "owed"; readonly promises: number }
  | { readonly is: "promise"; readonly what: string; readonly due?: Day | undefined }
  | { readonly is: "task"; readonly what: string; readonly due?: Day | undefined }
  | { readonly is: "expected"; readonly of: PlantIds; readonly goal: "flower" | "picking"; readonly likely: Day };

/** The one figure of a thread, with what it is held against. */
export type Figure =
  | { readonly is: "picked"; readonly of: PlantIds; readonly now: Picked; readonly before: Picked }
  | { readonly is: "each plant"; readonly of: PlantIds; readonly grams: number; readonly before: number }
  | { readonly is: "season"; readonly grams: number; readonly before: number; readonly year: number }
  | { readonly is: "lost of"; readonly plants: number; readonly began: number }
  | { readonly is: "kept of"; readonly kept: number; readonly made: number }
  | { readonly is: "green"; readonly from: number; readonly to: number }
  | { readonly is: "arms"; readonly higher: string; readonly lower: string; readonly ratio: number };

/** Rests on a line that is still a question to the person: told in their words alone, and never to viewers. */
export type Part<Value> = Fact<Value> & { readonly asks?: true | undefined };

export interface Thread {
  readonly kind: ThreadKind;
  /** What it is of. */
  readonly about: PlantIds & { readonly bed?: string | undefined };
  /** What is worth most comes first. */
  readonly worth: number;
  readonly lead: Part<Told>;
  readonly before?: Part<Told> | undefined;
  readonly now: readonly Part<Told>[];
  readonly figure?: Part<Figure> | undefined;
  /** The most telling first. */
  readonly notes: readonly Part<Told>[];
  readonly next?: Part<Told> | undefined;
  /** Gear ids that it names. */
  readonly gear: readonly string[];
  readonly photos: readonly RecapPhoto[];
}

/** A fact that rests on these lines. */
export function part<Value>(
  value: Value,
  grounds: readonly (Ground | undefined)[],
  day: Day,
  asks = false,
): Part<Value> {
  const isPrivate = grounds.some((ground) => ground?.private === true);
  return { value, sources: sourcesOf(grounds), private: isPrivate, day, ...(asks ? { asks } : {}) };
}
