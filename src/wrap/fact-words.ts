/** What happened in a film, said as its maker would say it: sentences for texts under it, titles for short clips of it. */
import { cropOf } from "../crop-of.ts";
import { capital, cropName, isSingular, sayCount, sayList, theBed, varietyName } from "../language/index.ts";
import type { Garden, Planting } from "../model.ts";
import type { FilmFact } from "./film-facts.ts";

type Of<Kind extends FilmFact["kind"]> = Extract<FilmFact, { kind: Kind }>;

/** The strongest first: one of each kind, then the rest. No sentence adds anything up. */
export function factSentences(facts: readonly FilmFact[], garden: Garden): readonly string[] {
  const of = <Kind extends FilmFact["kind"]>(kind: Kind) => facts.filter((one): one is Of<Kind> => one.kind === kind);
  const kinds = [
    of("kept promise").map(keptSentence),
    firstsSentence(of("first picking"), garden),
    of("loss")
      .toSorted((a, b) => numberLost(b) - numberLost(a))
      .map((one) => lossSentence(one, garden)),
    of("side by side").map((one) => sideSentence(one, garden)),
  ];
  return [...kinds.flatMap(([first]) => first ?? []), ...kinds.flatMap(([, ...rest]) => rest)];
}

/** Of what one short clip shows: facts of one kind. */
export function factsTitle(facts: readonly FilmFact[], garden: Garden): string {
  const firsts = facts.flatMap((one) => (one.kind === "first picking" ? [plantsName(one.planting, garden)] : []));
  const others = facts.flatMap((one) => {
    if (one.kind === "kept promise") return [`Promised: ${promiseWords(one)}`];
    return one.kind === "side by side" ? [`Side by side: ${sayList(one.trial.arms.map(({ name }) => name))}`] : [];
  });
  return [...(firsts.length === 0 ? [] : [`The first ${sayList(firsts)}`]), ...others].join("; ");
}

function plantsName(planting: Planting, garden: Garden, count?: number): string {
  const variety = garden.varieties.get(planting.variety ?? "");
  const crop = cropOf(garden, planting);
  return variety === undefined && crop !== undefined ? cropName(crop, count) : varietyName(variety, crop, count);
}

const MOST_NAMED = 3;

function firstsSentence(firsts: readonly Of<"first picking">[], garden: Garden): readonly string[] {
  const [first] = firsts;
  if (first === undefined) return [];
  const names = firsts.map(({ planting }) => plantsName(planting, garden));
  const said = names.length > MOST_NAMED + 1 ? [...names.slice(0, MOST_NAMED), "others"] : names;
  const { planting } = first;
  const variety = garden.varieties.get(planting.variety ?? "");
  const isOne = names.length === 1 && isSingular({ variety, crop: cropOf(garden, planting) });
  return [`The season's first ${sayList(said)} ${isOne ? "has" : "have"} been picked.`];
}

function numberLost({ changes }: Of<"loss">): number {
  return changes.reduce((sum, { told }) => sum + (told.line?.count?.value ?? 0), 0);
}

/** Several losses are not added up: what was counted once may be counted again. */
function lossSentence({ planting, changes }: Of<"loss">, garden: Garden): string {
  const [change] = changes;
  const causes = new Set(changes.map(({ cause }) => cause?.replace(/^to\s+/i, "")));
  const [cause] = causes;
  const to = causes.size > 1 || cause === undefined ? "" : ` to ${cause}`;
  const told = change?.told;
  const count = told?.line?.count;
  if (changes.length > 1 || told?.is !== "lost" || count === undefined || told.number === "some")
    return `Some of the ${plantsName(planting, garden)} were lost${to}.`;
  if (told.number === "all") return `All the ${plantsName(planting, garden)} were lost${to}.`;
  const { value } = count;
  const number = value === 1 && count.upTo === undefined ? 1 : undefined;
  return `${capital(sayCount(count))} ${plantsName(planting, garden, number)} ${number === 1 ? "was" : "were"} lost${to}.`;
}

/** What promises begin with when they say what the speaker will do. */
const doing =
  /^(?:answer|bring|check|clear|come|compare|count|cut|dig|do|explain|film|find|give|go|grow|harvest|let|lift|look|make|measure|move|name|net|open|pick|plant|prune|put|report|save|say|see|show|sow|stake|start|take|taste|tell|try|weigh)\b/;

function promiseWords({ promise }: Of<"kept promise">): string {
  return promise.what.trim().replace(/[.\s]+$/, "");
}

function keptSentence(fact: Of<"kept promise">): string {
  const what = promiseWords(fact);
  return doing.test(what)
    ? `I said I would ${what}, and in this film I do.`
    : `Promised, and kept in this film: ${what}.`;
}

function sideSentence({ trial, bed }: Of<"side by side">, garden: Garden): string {
  const { arms } = trial;
  const names = sayList(arms.map(({ name }) => `the ${name.replace(/^the\s+/i, "")}`));
  const record = garden.beds.get(bed);
  const where = record === undefined ? "" : ` at ${theBed(record)}`;
  return `${capital(names)} stand side by side${where}.`;
}
