/** The words of threads: what each opens with, its phrases, its figure, and the thread in short for the cover. */
import { cropOf } from "../../crop-of.ts";
import {
  askedIn,
  cardLimits,
  countWords,
  fits,
  own,
  promised,
  ratioWords,
  toPause,
  twoDigits,
  type Way,
} from "../../films/index.ts";
import {
  capital,
  cropName,
  cultivar,
  sayDay,
  sayList,
  sayMonth,
  sayNumber,
  sayPicked,
  sayWeight,
  theBed,
  theGear,
  thePlants,
} from "../../language/index.ts";
import { gramsPerOunce, gramsPerPound } from "../../measures.ts";
import type { Day, Garden, GardenSettings, Picked, PlantIds } from "../../model.ts";
import { onlyCounted } from "../../picked.ts";
import { cutsMeaning } from "../threads/remarks.ts";
import type { Figure, Part, Thread, Told } from "../threads/thread.ts";
import { partOf, partWords, percentMore } from "./per-cent.ts";

export interface ThreadVoice {
  readonly garden: Garden;
  /** The last day told. */
  readonly day: Day;
  /** "2024", "2024/25" */
  readonly lastSeason: string;
  /** The season is not over: the one before is told up to the same day. */
  readonly soFar: boolean;
}

/** Groups of ways, the most telling first; a way of a later group is taken when none of an earlier one fits. */
export function openingWays(thread: Thread, voice: ThreadVoice): readonly (readonly Way[])[] {
  const { lead } = thread;
  const grounds = groundsOf(lead);
  const ways = (...texts: readonly (readonly [frame: string, text: string])[]) =>
    texts.map(([frame, text]): Way => ({ frame, text, grounds }));
  const { value } = lead;
  switch (value.is) {
    case "planned": {
      const short = withoutDigits(value.what, 11);
      const month = sayMonth(value.said, { language: voice.garden.settings.language, near: value.said });
      const nothingSaid = ways(["changed", `This year ${theCrop(value.of, voice)} went another way.`]);
      if (short === undefined)
        return [thread.kind === "next" ? ways(["comes next", "Next year begins with a plan."]) : nothingSaid];
      return thread.kind === "next"
        ? [
            /\bnext\b/i.test(short)
              ? ways(["plan", `The plan: ${short}.`])
              : ways(["next plan", `Next year: ${short}.`], ["plan next", `The plan for next year: ${short}.`]),
            ways(["comes next", "Next year begins with a plan."]),
          ]
        : [
            ways(
              ["wrote in", `In ${month} I wrote: “${short}.”`],
              ["plan was", `The plan was: “${short}.”`],
              ["promised myself", `I had one thing to change: “${short}.”`],
            ),
            nothingSaid,
          ];
    }
    case "done because": {
      const gear = voice.garden.gear.get(value.gear ?? "");
      const what = gear === undefined ? theCrop(value.of, voice) : theGear(gear.title);
      return [
        gear === undefined
          ? ways(
              ["because", `${capital(what)} went another way ${value.reason}.`],
              ["because was", `I changed something for ${what}, ${value.reason}.`],
            )
          : ways(
              ["gear because", `${capital(what)} went up ${value.reason}.`],
              ["gear so", `Up went ${what}, ${value.reason}.`],
            ),
        ways(["changed", `This year ${theCrop(value.of, voice)} went another way.`]),
      ];
    }
    case "own words": {
      const short = withoutDigits(value.text, 9);
      const of = theCrop(value.of, voice);
      return [
        short === undefined
          ? []
          : ways(
              ["another way", `${capital(of)}, another way: ${short}.`],
              ["this time", `What was new for ${of}: ${short}.`],
            ),
        ways(["changed", `This year ${of} went another way.`]),
      ];
    }
    case "lost": {
      const { cause } = value;
      const plants = thePlantsOf(value.of, voice);
      const share = value.all ? "all" : partWords(value.began === undefined ? undefined : value.plants / value.began);
      const by = cause === undefined ? undefined : bareCause(cause);
      return by === undefined
        ? [ways(["lost unknown", `${capital(share)} of ${plants} were lost, and no note says why.`])]
        : [
            ways(
              ["took", `${capital(by)} took ${share} of ${plants}.`],
              ["lost to", `${capital(share)} of ${plants} were lost to ${by}.`],
              ["went to", `${capital(share)} of ${plants} went to ${by}.`],
            ),
            ways(["took some", `${capital(by)} did the damage here.`]),
          ];
    }
    case "more or less": {
      const plants = thePlantsOf(value.of, voice);
      const before = voice.soFar && !value.each ? "by this day last year" : "the year before";
      const far =
        value.ratio > 1.9 || value.ratio < 0.55 ? "far " : value.ratio < 1.18 && value.ratio > 0.82 ? "a little " : "";
      if (value.ratio > 0.94 && value.ratio < 1.06)
        return [ways(["as much", `${capital(plants)} gave what they gave ${before}.`])];
      if (value.ratio < 1)
        return [
          ways(
            ["gave less", `${capital(plants)} gave ${far}less than ${before}.`],
            ["poor year", `A poor year for ${plants}.`],
            ["less from", `${capital(`${far}less`)} came from ${plants} than ${before}.`],
          ),
        ];
      return [
        ways(
          ["gave more", `${capital(plants)} gave ${far}more than ${before}.`],
          ["more from", `${capital(`${far}more`)} came from ${plants} than ${before}.`],
        ),
      ];
    }
    case "another way next": {
      const of = theCrop(value.of, voice);
      return [
        ways(
          ["went wrong", `What went wrong with ${of}, and what comes instead.`],
          ["another way next", `Next year ${of} go another way.`],
        ),
      ];
    }
    case "never grown before": {
      const plants = thePlantsOf(value.of, voice);
      return [
        ways(
          ["new here", `New to this garden: ${plants}.`],
          ["never before", `${capital(plants)} had never grown here before.`],
        ),
      ];
    }
    case "seen from one spot": {
      const bed = theBed(voice.garden.beds.get(value.bed) ?? { title: value.bed });
      return [
        ways(
          ["one spot", `One spot, one year: watch ${bed}.`],
          ["one bed", `Watch ${bed} from one and the same spot.`],
        ),
      ];
    }
    case "asked": {
      const asked = value.question.trim();
      return [
        [own(/[?!.]$/.test(asked) ? asked : `${asked}?`, grounds)],
        ways(["trial", `A trial this year: ${value.title}.`]),
        ways(["trial", "A trial, as far as it can be told."]),
      ];
    }
    case "season": {
      const ratio = value.ratio ?? 1;
      const [year, before] = voice.soFar ? ["year so far", "the last by now"] : ["year", "the one before"];
      if (ratio > 1.9) return [ways(["far heavier", `A far heavier ${year} than ${before}.`])];
      if (ratio > 1.06) return [ways(["heavier", `A heavier ${year} than ${before}.`])];
      if (ratio < 0.94) return [ways(["lighter", `A lighter ${year} than ${before}.`])];
      return [ways(["as heavy", `As heavy a ${year} as ${before}.`])];
    }
    case "owed":
      return [
        value.promises === 1
          ? ways(["owe one", "One thing I promised you, and still owe."])
          : ways(["owe some", "These I promised you, and still owe."]),
      ];
    case "task":
      return [ways(["task next", `Next: ${phraseText(toPause(bareTask(value.what), 10) ?? "the work is waiting")}.`])];
    case "expected":
      return [ways(["expected next", `Next to come: ${thePlantsOf(value.of, voice)}.`])];
    default:
      return [];
  }
}

/** Whether it can be said in so few words, and how. */
export function phrase(told: Part<Told>, voice: ThreadVoice, words: number): string | undefined {
  const text = phraseWays(told.value, voice, words).find((one) => fits(one, words));
  return text === undefined ? undefined : capital(text);
}

/** The whole of it, for the dossier. */
export function wholePhrase({ value }: Part<Told>, voice: ThreadVoice): string {
  const most = 60;
  return capital(phraseWays(value, voice, most)[0] ?? "");
}

function phraseWays(value: Told, voice: ThreadVoice, words: number): readonly string[] {
  const { settings } = voice.garden;
  const day = (of: Day) => sayDay(of, { language: settings.language, near: voice.day });
  switch (value.is) {
    case "own words": {
      const text = toPause(phraseText(value.text), words);
      if (text === undefined || cutsMeaning(phraseText(value.text), text)) return [];
      const name = value.of === undefined ? undefined : cultivarOf(value.of, voice);
      return name === undefined || text.toLowerCase().includes(name.toLowerCase())
        ? [text]
        : [`${name}: ${text}`, text];
    }
    case "planned": {
      const text = toPause(phraseText(value.what), words);
      return text === undefined ? [] : [text];
    }
    case "put up": {
      const gear = voice.garden.gear.get(value.gear);
      return gear === undefined ? [] : [`${gear.title} up on ${day(value.on)}`];
    }
    case "gear on a day": {
      const gear = voice.garden.gear.get(value.gear);
      return gear === undefined ? [] : [`${gear.title}, ${day(value.on)}`];
    }
    case "begun":
      return [
        `${cultivarOf(value.of, voice) ?? theCrop(value.of, voice)} ${value.kind === "sowed" ? "sown" : "planted"} on ${day(value.on)}`,
      ];
    case "trouble then":
      return [
        value.plants > 0
          ? `the year before, ${bareCause(value.cause)} took ${sayNumber(value.plants)}`
          : `the year before: ${bareCause(value.cause)}`,
      ];
    case "trouble again":
      return [`${bareCause(value.cause)} came again all the same`, `${bareCause(value.cause)} again`];
    case "had":
      return value.over === undefined
        ? [`${bareCause(value.cause)} on them`]
        : [`${bareCause(value.cause)}, over by ${day(value.over)}`];
    case "tried against":
      return [`tried: ${value.what}`, value.what];
    case "gave": {
      const amount = sayPicked(rounded(value.picked, settings), settings);
      return amount === undefined || amount.includes(",") ? [] : [`${amount} picked`];
    }
    case "stood": {
      const names = value.crops.flatMap((id) => {
        const crop = voice.garden.crops.get(id);
        return crop === undefined ? [] : [cropName(crop, 2)];
      });
      for (let most = names.length; most > 0; most -= 1) {
        const list = most === names.length ? sayList(names) : `${names.slice(0, most).join(", ")}, more`;
        if (fits(`${day(value.on)}: ${list}`, words)) return [`${day(value.on)}: ${list}`];
      }
      return [value.bare ? `${day(value.on)}: bare` : day(value.on)];
    }
    case "too few plots": {
      const row = value.kind ?? "plot";
      return value.plots <= 1
        ? [`one ${row} a side settles nothing`]
        : [`${sayNumber(value.plots)} ${row}s a side are too few to tell`];
    }
    case "mostly":
      return [`${partOf(value.share)} of it ${many(value.of, voice)}`];
    case "stems":
      return [`${sayNumber(twoDigits(value.count))} stems of flowers`];
    case "promise": {
      const ways = [promised(value.what), ownPromise(value.what), askedIn(value.what) ?? ""].filter(
        (one) => one !== "" && !/\b(?:you|back)$/i.test(one),
      );
      return ways
        .filter((one) => fits(one, words))
        .concat(words > 7 ? ways.flatMap((one) => toPause(one, words) ?? []) : []);
    }
    case "task": {
      const text = toPause(phraseText(bareTask(value.what)), words);
      if (text === undefined) return [];
      return value.due === undefined || /\bby\b/.test(text) ? [text] : [`${text}, by ${day(value.due)}`, text];
    }
    case "expected":
      return [
        `${many(value.of, voice)}: first ${value.goal === "flower" ? "flower" : "picking"} about ${day(value.likely)}`,
      ];
    default:
      return [];
  }
}

/** Without a comparison there is no figure; the exact ones stand in the dossier. `words`: how many there is room for. */
export function figureText(figure: Figure, voice: ThreadVoice, words: number = cardLimits.figure): string | undefined {
  const { settings } = voice.garden;
  switch (figure.is) {
    case "picked": {
      const amount = sayPicked(rounded(figure.now, settings), settings);
      const then = sayPicked(rounded(figure.before, settings), settings);
      if (amount === undefined || amount.includes(",")) return undefined;
      return beside(capital(amount), sizeOf(figure.now) / sizeOf(figure.before), then, voice);
    }
    case "each plant": {
      const weight = (grams: number) => sayWeight(roundedGrams(grams, settings), settings.units);
      const ratio = figure.grams / figure.before;
      return beside(`${weight(figure.grams)} a plant`, ratio, weight(figure.before), { ...voice, soFar: false });
    }
    case "season": {
      // A year's weight keeps its pounds or kilograms: "226 kg, nearly 70 per cent more than 2024", "over 2024" on a card.
      const weight = (grams: number) =>
        sayWeight(grams < 10_000 ? roundedGrams(grams, settings) : whole(grams, settings), settings.units);
      const ratio = figure.grams / figure.before;
      const exact = percentMore(ratio);
      const ways = [exact, exact?.replace(" more than", " over").replace(" less than", " under")];
      const text = voice.soFar
        ? undefined
        : ways
            .filter((way) => way !== undefined)
            .map((way) => `${weight(figure.grams)}, ${way} ${voice.lastSeason}`)
            .find((one) => fits(one, words));
      return text ?? beside(weight(figure.grams), ratio, weight(figure.before), voice);
    }
    case "lost of":
      return `${capital(sayNumber(figure.plants))} of ${sayNumber(figure.began)} lost`;
    case "kept of":
      return `${capital(sayNumber(figure.kept))} of ${sayNumber(figure.made)} promises kept`;
    case "green":
      return `Green from ${Math.round(figure.from * 100)} to ${Math.round(figure.to * 100)} per cent`;
    case "arms": {
      const words = ratioWords(figure.ratio);
      return words === undefined ? undefined : `${capital(figure.higher)}: ${words} the ${figure.lower}`;
    }
  }
}

/** "230 kg, half as much again as 2024"; where that is too long to be said, the two amounts. */
function beside(amount: string, ratio: number, then: string | undefined, { lastSeason, soFar }: ThreadVoice) {
  const words = ratioWords(ratio);
  if (words === undefined) return undefined;
  const when = soFar ? `by then in ${lastSeason}` : `in ${lastSeason}`;
  const ways = [
    soFar ? `${amount}, ${words} ${lastSeason} by then` : `${amount}, ${words} ${lastSeason}`,
    ...(then === undefined || then.includes(",") ? [] : [`${amount}, ${then} ${when}`, `${amount}, ${then} by then`]),
  ];
  return ways.find((one) => fits(one, cardLimits.figure));
}

function sizeOf(picked: Picked): number {
  return picked.grams > 0 ? picked.grams : picked.litres > 0 ? picked.litres : pieces(picked);
}

function whole(grams: number, { units }: GardenSettings): number {
  const unit = units === "us" ? gramsPerPound : 1000;
  return Math.round(grams / unit) * unit;
}

/** What a card is headed with. */
export function titleOfThread({ kind, about, lead }: Thread, voice: ThreadVoice): string {
  const { garden } = voice;
  if (kind === "debt") return "Still owed";
  if (kind === "next") return "What comes next";
  if (kind === "year") return "The whole season";
  if (kind === "trial" && lead.value.is === "asked") return lead.value.title;
  const bed = garden.beds.get(about.bed ?? "");
  if (kind === "bed" && bed !== undefined) return bed.title;
  if (about.variety !== undefined) return garden.varieties.get(about.variety)?.title ?? capital(many(about, voice));
  if (about.crop !== undefined) return capital(many(about, voice));
  if (bed !== undefined) return bed.title;
  return lead.value.is === "lost" && lead.value.cause !== undefined ? capital(bareCause(lead.value.cause)) : "Losses";
}

/** Words of a figure in the year's sentence. */
const inShortWords = 10;

/** A thread in a few words, for the year in a sentence; it begins small. The most telling first. */
export function inShort(thread: Thread, voice: ThreadVoice): readonly (readonly [frame: string, text: string])[] {
  const { lead, about, figure } = thread;
  const { value } = lead;
  const plants = thePlantsOf(about, voice);
  switch (thread.kind) {
    case "tried": {
      const plan = value.is === "planned" ? toPause(value.what, 7) : undefined;
      const gear = thread.gear.flatMap((id) => voice.garden.gear.get(id) ?? [])[0];
      return [
        ...(plan === undefined ? [] : ([[`own ${plan}`, plan]] as const)),
        ...(gear === undefined ? [] : ([["gear", `${theGear(gear.title)} for ${theCrop(about, voice)}`]] as const)),
        ["done", `what changed for ${theCrop(about, voice)}`],
      ];
    }
    case "failed": {
      if (value.is === "another way next") return [["wrong", `what went wrong with ${theCrop(about, voice)}`]];
      if (value.is === "more or less")
        return [
          ["poor", `a poor year for ${plants}`],
          ["less", `less from ${plants}`],
        ];
      if (value.is !== "lost" || value.cause === undefined) return [];
      const share = partWords(value.all ? 1 : value.began === undefined ? undefined : value.plants / value.began);
      return [
        ["lost", `${share} of ${plants} lost to ${bareCause(value.cause)}`],
        ["cause", `${bareCause(value.cause)} on ${plants}`],
      ];
    }
    case "surprise":
      return [["more", `far more from ${plants}`]];
    case "new":
      return [["first", `${many(about, voice)} for the first time`]];
    case "trial":
      return value.is === "asked" ? [["trial", `the trial “${value.title}”`]] : [];
    case "year":
    case "crop": {
      const text = figure === undefined ? undefined : figureText(figure.value, voice, inShortWords);
      if (text === undefined) return [];
      return [["figure", thread.kind === "year" ? text : `${many(about, voice)}: ${text}`]];
    }
    case "debt":
      if (value.is !== "owed") return [];
      return [
        ["owed", value.promises === 1 ? "one promise still owed" : `${sayNumber(value.promises)} promises still owed`],
      ];
    default:
      return [];
  }
}

export function groundsOf({ sources, private: hidden }: Part<unknown>) {
  return [{ sources, private: hidden }];
}

function pieces(picked: Picked): number {
  return Object.values(picked.counts).reduce((sum, count) => sum + (count ?? 0), 0);
}

/** Two digits in the garden's own units. */
function roundedGrams(grams: number, { units }: GardenSettings): number {
  const unit = units === "us" ? (grams < gramsPerPound ? gramsPerOunce : gramsPerPound) : 1;
  return twoDigits(grams / unit) * unit;
}

/** Two digits; pieces only where nothing was weighed or measured. */
function rounded(picked: Picked, settings: GardenSettings): Picked {
  const counts = picked.grams > 0 || picked.litres > 0 ? {} : onlyCounted(picked);
  return {
    ...picked,
    grams: roundedGrams(picked.grams, settings),
    litres: picked.litres,
    counts: Object.fromEntries(Object.entries(counts).map(([unit, n]) => [unit, twoDigits(n ?? 0)])),
    weighed: {},
  };
}

function named(of: PlantIds, { garden }: ThreadVoice) {
  return { variety: garden.varieties.get(of.variety ?? ""), crop: cropOf(garden, of) };
}

function thePlantsOf(of: PlantIds, voice: ThreadVoice): string {
  const { variety, crop } = named(of, voice);
  return variety === undefined && crop === undefined ? "the plants" : thePlants({ variety, crop });
}

function theCrop(of: PlantIds | undefined, voice: ThreadVoice): string {
  const { crop } = named(of ?? {}, voice);
  return crop === undefined ? "things" : `the ${cropName(crop, 2)}`;
}

function many(of: PlantIds, voice: ThreadVoice): string {
  const { variety, crop } = named(of, voice);
  if (of.variety !== undefined && variety !== undefined) return thePlantsOf(of, voice).replace(/^the /, "");
  return crop === undefined ? "plants" : cropName(crop, 2);
}

function cultivarOf(of: PlantIds, voice: ThreadVoice): string | undefined {
  const { variety, crop } = named(of, voice);
  return variety === undefined ? undefined : cultivar({ variety, crop });
}

/** "slugs, in one night" is "slugs". */
function bareCause(cause: string): string {
  const bare = (cause.split(/[,;(]/)[0] ?? cause).trim();
  // "Snails" began a line; a noun of another language keeps its capital.
  return /^[A-Z][a-z]+s$/.test(bare) ? bare.charAt(0).toLowerCase() + bare.slice(1) : bare;
}

function phraseText(text: string): string {
  return text.trim().replace(/(?<![.;,\s])[.;,\s]+$/, "");
}

function bareTask(what: string): string {
  return what.replace(/^\[[ x]?\]\s*/i, "");
}

/** The beginning up to a pause before which no figure stands. */
function withoutDigits(text: string, words: number): string | undefined {
  const pauses = [...text.matchAll(/[,;:.]\s/g)].map(({ index }) => index);
  return [text, ...pauses.toReversed().map((at) => text.slice(0, at))]
    .flatMap((part) => toPause(part, words) ?? [])
    .find((part) => !/\d/.test(part) && countWords(part) > 1);
}

/** "next January I'll come back and show you if I got any" is "show you if I got any". */
function ownPromise(what: string): string {
  return what
    .replace(/^(?:next \w+,? )?I(?:['’]ll| will) (?:come back and )?/i, "")
    .replace(/^what (?=I)/, "say what ");
}
