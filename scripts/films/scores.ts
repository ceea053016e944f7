/** One film's wrap held against its labels: stops, names, promises, what the records contradict, chapter titles, private names. */
import type { PlannedTour } from "../../src/model.ts";
import type { Wrap } from "../../src/wrap/index.ts";
import { nothing, type Score, sum } from "../mis-hearing/hearing-scores.ts";
import { chapterTitles } from "./chapter-scores.ts";
import { plannedAgainst, type Wanted } from "./planned-scores.ts";

interface Span {
  readonly id: string;
  readonly kind: string;
  readonly at: number;
  readonly to: number;
  readonly said: string;
  readonly due?: string | null;
  readonly dueAlso?: readonly (string | null)[];
  readonly loose?: boolean;
  readonly bed?: string | null;
  readonly bedAlso?: readonly (string | null)[];
  readonly agrees?: boolean | null;
  readonly records?: unknown;
  readonly either?: boolean;
}

export interface FilmLabels {
  readonly episode: string;
  readonly day: string;
  readonly stops: readonly { readonly bed: string | null; readonly at: number }[];
  readonly chapters: readonly {
    readonly bed?: string | null;
    readonly at: number;
    readonly title: string;
    readonly also: readonly string[];
  }[];
  readonly names: readonly {
    readonly at: number;
    readonly kind: string;
    readonly id: string | null;
    readonly right: string;
    readonly said: string;
    readonly heard: string;
    readonly mangled: boolean;
  }[];
  readonly spans: readonly Span[];
  readonly private: readonly unknown[];
  readonly wanted: readonly Wanted[];
}

export interface FilmScores {
  readonly scores: ReadonlyMap<string, Score>;
  readonly misses: readonly string[];
}

/** Seconds by which what is heard may lie beside what was labelled. */
const BESIDE = 4;
const BEFORE = 3;

export function scoredFilm(labels: FilmLabels, wrap: Wrap, brief: PlannedTour, automatic: boolean): FilmScores {
  const scores = new Map<string, Score>();
  const misses: string[] = [];
  const add = (what: string, score: Partial<Score>) =>
    scores.set(what, sum(scores.get(what) ?? nothing, { ...nothing, ...score }));
  const within = (at: number, kind: (span: Span) => boolean) =>
    labels.spans.filter((span) => kind(span) && span.at - BEFORE <= at && at <= span.to + 1);

  for (const { bed, at } of labels.stops) {
    if (bed === null) continue;
    const near = wrap.stops.some((stop) => stop.bed === bed && Math.abs(stop.at - at) <= 5);
    add("stops within 5 s", near ? { right: 1 } : { missed: 1 });
    if (!near) misses.push(`stop ${bed} at ${at.toFixed(0)}`);
  }

  const applied = wrap.corrections.filter((one) => one.applied && one.sort === "spelling");
  const isOf = (name: FilmLabels["names"][number], one: Wrap["corrections"][number]) =>
    one.record === name.id && Math.abs(one.at - name.at) <= BESIDE;
  if (automatic) {
    for (const name of labels.names.filter(({ mangled, kind, id }) => mangled && id !== null && kind === "variety")) {
      const right = applied.some((one) => isOf(name, one));
      add("mangled varieties set right", right ? { right: 1 } : { missed: 1 });
      if (!right) misses.push(`name ${name.said}, heard ${name.heard}`);
    }
  }
  // Films whose names nobody labelled say nothing of them.
  for (const one of labels.names.length === 0 ? [] : applied) {
    if (labels.names.some((name) => isOf(name, one))) continue;
    add(automatic ? "mangled varieties set right" : "corrections of clean captions", { wrong: 1 });
    misses.push(`correction ${one.heard} to ${one.name}`);
  }

  const promises = labels.spans.filter(({ kind }) => kind === "promise");
  const kept = new Map<Span, Wrap["followUps"][number]>();
  for (const one of wrap.followUps) {
    // A sentence that runs on begins long before the promise in it.
    const [span] = [
      ...promises.filter((other) => holds(one.said, other.said)),
      ...within(one.at, ({ kind }) => kind === "promise"),
    ];
    if (span !== undefined) {
      if (!kept.has(span)) kept.set(span, one);
    } else if (within(one.at, ({ kind }) => kind === "either").length === 0) {
      add("promises", { wrong: 1 });
      misses.push(`no promise: ${one.said}`);
    }
  }
  for (const span of promises) {
    const one = kept.get(span);
    add("promises", one === undefined ? { missed: 1 } : { right: 1 });
    if (one === undefined) misses.push(`promise: ${span.said}`);
    else {
      const due = isDue(span, one.due);
      const bed = (one.bed ?? null) === (span.bed ?? null) || (span.bedAlso ?? []).includes(one.bed ?? null);
      add("  their due day", due ? { right: 1 } : { wrong: 1 });
      add("  their bed", bed ? { right: 1 } : { wrong: 1 });
      if (!due) misses.push(`due ${one.due} for ${span.due}: ${span.said}`);
      if (!bed) misses.push(`bed ${one.bed} for ${span.bed}: ${span.said}`);
    }
  }

  const contradicted = labels.spans.filter(({ kind, agrees }) => kind === "claim" && agrees === false);
  const found = new Set<Span>();
  for (const one of wrap.disagreements) {
    const [span] = within(one.at, (other) => contradicted.includes(other));
    if (span !== undefined) found.add(span);
    else if (within(one.at, ({ either, agrees }) => either === true || agrees === null).length === 0) {
      add("what the records contradict", { wrong: 1 });
      misses.push(`no contradiction: ${one.said} | ${one.records}`);
    }
  }
  for (const span of contradicted) {
    add("what the records contradict", found.has(span) ? { right: 1 } : { missed: 1 });
    if (!found.has(span)) misses.push(`contradicted: ${span.said} | ${JSON.stringify(span.records)}`);
  }

  for (const { fit, title } of chapterTitles(labels, wrap)) {
    add("chapter titles fit to publish", fit ? { right: 1 } : { wrong: 1 });
    if (!fit) misses.push(`chapter: ${title}`);
  }
  for (const { wanted, isSaid, told, isToldSaid, isPutOff } of plannedAgainst(labels.wanted, wrap, brief)) {
    const right = isSaid === isToldSaid;
    add("planned: said or not said", right ? { right: 1 } : { wrong: 1 });
    if (!right) misses.push(`planned, ${String(wanted.said)}, told as ${told}: ${wanted.what}`);
    if (isPutOff) add("  put off, told as put off", told === "put off again" ? { right: 1 } : { missed: 1 });
    else if (told === "put off again") add("  put off, told as put off", { wrong: 1 });
  }
  return { scores, misses };
}

/** Whether what was heard has the first words of what was labelled in it. */
function holds(heard: string, labelled: string): boolean {
  const plain = (text: string) =>
    ` ${text
      .toLowerCase()
      .replace(/[^\p{L}\p{N}]+/gu, " ")
      .trim()} `;
  const first = plain(labelled).trim().split(" ").slice(0, 5).join(" ");
  return plain(heard).includes(` ${first} `);
}

/** A day that is loose may lie a week beside. */
function isDue(span: Span, due: string | undefined): boolean {
  const right = [span.due ?? null, ...(span.dueAlso ?? [])];
  if (right.includes(due ?? null)) return true;
  if (span.loose !== true || due === undefined || typeof span.due !== "string") return false;
  return Math.abs(Date.parse(due) - Date.parse(span.due)) <= 7 * 86_400_000;
}
