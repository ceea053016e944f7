/** Whether what was read of a labelled line is right: every value the label names, and nothing beside it. */
import { type CorpusGarden, type CorpusLine, kindsOf } from "./corpus.ts";

/** An event as `check --reading --json` gives it. */
export interface ReadEvent {
  readonly kind: string;
  readonly crop?: string | undefined;
  readonly variety?: string | undefined;
  readonly count?: number | undefined;
  readonly grams?: number | undefined;
  readonly litres?: number | undefined;
  readonly centimetres?: number | undefined;
  readonly celsius?: number | undefined;
  readonly ph?: number | undefined;
  readonly bed?: string | undefined;
  readonly toBed?: string | undefined;
  readonly nursery?: boolean | undefined;
  readonly day?: string | undefined;
  readonly due?: string | undefined;
  readonly cause?: string | undefined;
}

/** none: facts are meant and none came; nothing: none came, and that is right too. */
export type Verdict = "right" | "part" | "wrong" | "none" | "nothing";

export function normal(text: string | undefined | null): string {
  return (text ?? "")
    .normalize("NFD")
    .replace(/[\u0300-\u036f]/g, "")
    .toLowerCase()
    .replace(/['’"]/g, "")
    .replace(/[^a-z0-9]+/g, " ")
    .trim();
}

function within(a: string, b: string): boolean {
  return a !== "" && b !== "" && (a.includes(b) || b.includes(a));
}

/** Names that mean one crop on one side of an ocean or the other. */
const groups = [
  "courgette|zucchini",
  "aubergine|eggplant|brinjal",
  "beetroot|beet",
  "chilli|chili|chile|chillies|hot pepper|pepper",
  "sweetcorn|corn|sweet corn|maize",
  "pumpkin|squash|winter squash|gourd",
  "coriander|cilantro",
  "rocket|arugula",
  "swede|rutabaga|neep|turnip",
  "pepper|capsicum|sweet pepper|bell pepper",
  "chard|silverbeet|swiss chard",
  "kumara|sweet potato",
  "broad bean|fava bean|fava",
  "french bean|snap bean|green bean|bean",
  "spring onion|scallion",
  "sugar snap|snap pea|mangetout|pea",
  "okra|ochro|okro|lady s finger|bhindi",
  "long bean|bodi",
  "taro|dasheen|eddoe",
  "gooseberry|groset",
].map((group) => group.split("|"));

function sameCrop(a: string | undefined, b: string | undefined): boolean {
  return within(normal(a), normal(b)) || groups.some((group) => group.includes(normal(a)) && group.includes(normal(b)));
}

/** Units as writers of labels spell them out. */
const spelt: Readonly<Record<string, string>> = {
  kilo: "kg",
  kilogram: "kg",
  gram: "g",
  gr: "g",
  pound: "lb",
  ounce: "oz",
  qt: "quart",
  pt: "pint",
  liter: "litre",
  inch: "in",
  foot: "ft",
  feet: "ft",
  metre: "m",
  meter: "m",
};

function unitOf(written: string): string {
  const one = written.length > 2 ? written.replace(/s$/, "") : written;
  return spelt[one] ?? one;
}

const grams: Readonly<Record<string, number>> = { g: 1, kg: 1000, lb: 453.59237, oz: 28.349523125 };
const lengths: Readonly<Record<string, number>> = { cm: 1, m: 100, mm: 0.1, in: 2.54, ft: 30.48 };
const counted = new Set(["sowed", "planted", "lost", "potted on", "moved", "gave away", "up"]);

/** Of a line whose label lists events. `why` takes what is wrong. */
export function judge(
  line: CorpusLine,
  events: readonly ReadEvent[],
  garden: Pick<CorpusGarden, "units">,
  why: string[] = [],
): Verdict {
  if (typeof line.expect === "string") throw new Error("only for lines with events");
  let worst = 0;
  let missing = 0;
  const used = new Set<number>();
  const bad = (what: string) => {
    worst = 2;
    why.push(what);
  };
  const part = (what: string) => {
    worst = Math.max(worst, 1);
    why.push(what);
  };
  for (const wanted of line.expect) {
    const kinds = kindsOf(wanted.kind);
    let best = -1;
    let top = 0;
    for (const [index, event] of events.entries()) {
      if (used.has(index)) continue;
      let score = 0;
      if (kinds.includes(event.kind)) score += 4;
      if (wanted.var !== undefined && within(normal(event.variety), normal(wanted.var))) score += 3;
      if (wanted.crop !== undefined && sameCrop(event.crop, wanted.crop)) score += 2;
      if (score > top) [top, best] = [score, index];
    }
    const event = events[best];
    if (event === undefined) {
      if (!kinds.includes("story")) missing += 1;
      continue;
    }
    used.add(best);
    if (!kinds.includes(event.kind)) (event.kind === "did" ? part : bad)(`${event.kind} for ${wanted.kind}`);
    if (wanted.var !== undefined) {
      if (event.variety === undefined) part("no variety");
      else if (!within(normal(event.variety), normal(wanted.var))) bad(`variety ${event.variety} for ${wanted.var}`);
    } else if (wanted.crop !== undefined) {
      if (event.crop === undefined && event.variety === undefined) part("no crop");
      else if (!sameCrop(event.crop, wanted.crop) && !sameCrop(event.variety, wanted.crop))
        (event.crop !== undefined ? bad : part)(`crop ${event.crop ?? event.variety} for ${wanted.crop}`);
    }
    if (wanted.n !== undefined) {
      if (event.count === undefined) part("no count");
      else if (event.count !== Number(wanted.n)) bad(`count ${event.count} for ${wanted.n}`);
    } else if (event.count !== undefined && wanted.amt === undefined && counted.has(event.kind))
      bad(`count ${event.count}, none said`);
    if (wanted.amt !== undefined) judgeAmount(String(wanted.amt), event, garden, bad, part);
    if (wanted.bed !== undefined) {
      if (event.bed === undefined) part("no bed");
      else if (normal(event.bed) !== normal(wanted.bed)) bad(`bed ${event.bed} for ${wanted.bed}`);
    }
    if (wanted.to !== undefined) {
      if (event.toBed === undefined) part("no bed to");
      else if (normal(event.toBed) !== normal(wanted.to)) bad(`to ${event.toBed} for ${wanted.to}`);
    }
    if (wanted.bed === undefined && event.bed !== undefined && normal(event.bed) !== normal(line.bed))
      bad(`bed ${event.bed} not said`);
    if (wanted.loc === "in" && event.kind === "sowed" && event.nursery !== true) bad("sown in the bed for indoors");
    if (wanted.loc === "out" && event.nursery === true) bad("indoors for in the bed");
    const day = wanted.day ?? line.date;
    if ((event.day ?? line.date) !== day) bad(`day ${event.day} for ${day}`);
    if (wanted.cause !== undefined && !within(normal(event.cause), normal(wanted.cause)))
      part(`cause ${event.cause} for ${wanted.cause}`);
    if (wanted.ph !== undefined && event.ph !== Number(wanted.ph))
      (event.ph === undefined ? part : bad)(`ph ${event.ph}`);
    if (wanted.due !== undefined && event.due !== wanted.due) part(`due ${event.due} for ${wanted.due}`);
  }
  const did = line.expect.some(({ kind }) => kind === "did");
  for (const [index, event] of events.entries()) {
    if (!used.has(index) && !(event.kind === "did" && did))
      bad(`extra ${event.kind} ${event.variety ?? event.crop ?? ""}`);
  }
  if (events.length === 0) return line.expect.every(({ kind }) => kindsOf(kind).includes("story")) ? "nothing" : "none";
  if (missing > 0) part(`${missing} missing`);
  return worst === 2 ? "wrong" : worst === 1 ? "part" : "right";
}

function judgeAmount(
  amount: string,
  event: ReadEvent,
  garden: Pick<CorpusGarden, "units">,
  bad: (what: string) => void,
  part: (what: string) => void,
): void {
  const parts = [...amount.matchAll(/([\d.]+)\s*([a-zA-Z]*)/g)].map(
    ([, number, of = ""]) =>
      (of === "dozen" ? [12 * Number(number), ""] : [Number(number), unitOf(of)]) as [number, string],
  );
  const [first] = parts;
  if (first === undefined) return;
  const [value, unit] = first;
  const near = (got: number | undefined, want: number, what: string) => {
    if (got === undefined) part(`no ${what}`);
    else if (Math.abs(got - want) > Math.max(0.01 * want, 0.2)) bad(`${what} ${got} for ${want}`);
  };
  const us = garden.units === "us";
  const sum = (factors: Readonly<Record<string, number>>) =>
    parts.reduce((total, [number, of]) => total + number * (factors[of] ?? 0), 0);
  if (unit in grams) near(event.grams, sum(grams), "weight");
  else if (unit === "pint") near(event.litres, value * (us ? 0.473176 : 0.568261), "volume");
  else if (unit === "quart") near(event.litres, value * (us ? 0.946353 : 1.136523), "volume");
  else if (unit === "bushel") near(event.litres, value * (us ? 35.239 : 36.3687), "volume");
  else if (unit === "peck") near(event.litres, value * 8.80977, "volume");
  else if (unit === "gallon" || unit === "gal") near(event.litres, value * (us ? 3.785411784 : 4.54609), "volume");
  else if (unit === "l" || unit === "litre" || unit === "ml")
    near(event.litres, unit === "ml" ? value / 1000 : value, "volume");
  else if (unit in lengths) near(event.centimetres, sum(lengths), "length");
  else if (unit === "F") near(event.celsius, (value - 32) / 1.8, "temperature");
  else near(event.count, value, "number");
}
