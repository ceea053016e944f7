/** What is shown now: at most three short phrases, the hand's verb first, in order along the bed. */
import {
  cardLimits,
  fits,
  type NowPhrase,
  own,
  promised,
  toCircumstance,
  toPause,
  type Way,
  type Wording,
} from "../../films/index.ts";
import { finderOf, type OwnLine } from "../../garden/index.ts";
import {
  cropName,
  cultivar,
  isUnnamed,
  oneOf,
  plainWords,
  plantName,
  sayLength,
  sayNumber,
  theGear,
  withPreposition,
} from "../../language/index.ts";
import { type Batch, batchOf } from "../batches.ts";
import type { BedOnTheDay, Lot } from "../bed-on-the-day.ts";
import type { OwedLine, Weighed } from "../candidates/candidate.ts";
import { ownLinesAt } from "../own-lines.ts";
import { isOverAlready, isTakenLongAgo } from "../picked-sentences.ts";
import { trialsIn } from "../trial-lines.ts";
import { handsForTrouble, takingHand } from "./hands.ts";
import { leftToRight } from "./left-to-right.ts";
import { specialOf } from "./own-words.ts";
import { bareCause } from "./remembered.ts";

export interface Shown extends NowPhrase {
  readonly spot?: string | undefined;
  readonly lots: readonly Lot[];
}

interface HandWay extends Way {
  readonly hand?: string | undefined;
}

/** In order of worth: the first three are the card's, laid out along the bed; the others are for the dossier. */
export function nowPhrases(
  here: BedOnTheDay,
  show: readonly Weighed[],
  owed: readonly OwedLine[],
  wording: Wording,
): readonly Shown[] {
  const told = new Set<Lot>();
  const hands = new Set<string>();
  return show.flatMap((point): readonly Shown[] => {
    const again = point.lots.length > 0 && point.lots.every((lot) => told.has(lot)) && point.kind !== "owed";
    if (again) return [];
    const line = point.kind === "owed" ? owed.find(({ what }) => what === point.keepBy) : undefined;
    const ways = line === undefined ? pointWays(point, here) : owedWays(line, here);
    // The same movement twice at one stop looks like a mistake.
    const open = ways.filter(({ hand }) => hand === undefined || !hands.has(verbOf(hand)));
    const found = wording.choose(open, cardLimits.now);
    const answers = line === undefined ? [] : answersInNotes(line, here);
    const answer = wording.choose(
      answers.map(({ words, line: on }) => own(`“${words}”`, [on])),
      cardLimits.now,
    );
    const answered = answer === undefined || answer.private ? [] : [{ ...answer, lots: point.lots }];
    if (found === undefined || found.private) return answered;
    if (point.kind !== "owed") for (const lot of point.lots) told.add(lot);
    const hand = open.find(({ text }) => text === found.text)?.hand;
    if (hand !== undefined) hands.add(verbOf(hand));
    return [{ ...found, hand, spot: point.lots[0]?.planting.spot, lots: point.lots }, ...answered];
  });
}

/** "bend" of "bend down to": two ways to bend are one movement. */
function verbOf(hand: string): string {
  return hand.split(" ")[0] ?? hand;
}

export function alongTheBed(phrases: readonly Shown[]): readonly Shown[] {
  return leftToRight(phrases);
}

const doing = /^(?:bring|compare|count|cut|dig|lift|measure|open|pick|plant|pull|show|sow|taste|weigh|look)\b/i;

function owedWays(line: OwedLine, here: BedOnTheDay): readonly HandWay[] {
  const grounds = [...line.sources, ...(line.now?.sources ?? [])].map((place) => ({
    place,
    private: line.now?.private,
  }));
  const what = promised(line.what);
  const short = doing.test(what) ? toCircumstance(what, cardLimits.now) : undefined;
  const hand = short !== undefined && fits(short, 4) ? short : short?.split(" ")[0];
  const answer = answerOf(line, here);
  return [
    ...(short === undefined ? [] : [{ frame: `own: ${short}`, text: short, grounds, hand }]),
    ...(answer === undefined ? [] : [{ ...answer, grounds }]),
  ];
}

/** Clauses of later lines that do what was promised: "weighed 9 lb 4 oz trimmed" of a promise to weigh the garlic. */
function answersInNotes(
  { what, promisedOn }: OwedLine,
  here: BedOnTheDay,
): readonly { readonly words: string; readonly line: OwnLine }[] {
  const find = finderOf(here.index.garden);
  const plain = plainWords(what);
  const [varieties, crops] = [find.varieties(plain), find.crops(plain)];
  const verb = plainWords(promised(what)).trim().split(" ")[0] ?? "";
  const counts = /\bhow (?:many|much)\b/i.test(what);
  return ownLinesAt(here)
    .now.filter(({ day }) => day > promisedOn)
    .filter(
      (line) => line.varieties.some((id) => varieties.includes(id)) || line.crops.some((id) => crops.includes(id)),
    )
    .flatMap((line) =>
      line.text
        .split(/[,;]\s/)
        .filter((clause) => {
          const words = plainWords(clause);
          if (/\b(?:will|ll|when)\b/.test(words)) return false;
          return counts ? /\d/.test(words) : verb.length > 3 && words.includes(` ${verb.slice(0, 5)}`);
        })
        .map((words) => ({ words, line })),
    );
}

function answerOf(line: OwedLine, here: BedOnTheDay): Omit<HandWay, "grounds"> | undefined {
  const spaced = line.lots.find(({ planting }) => planting.spacingCm !== undefined)?.planting.spacingCm;
  if (spaced !== undefined && /\b(?:how close|apart|spacing)\b/i.test(line.what)) {
    const length = sayLength(spaced, here.index.garden.settings.units);
    return { frame: `own: ${length}`, text: `lay the rule down: ${length} apart`, hand: "lay the rule down" };
  }
  const first = firstNamed(line.now?.text ?? "");
  return first === undefined
    ? undefined
    : { frame: "owed first was", text: `hold one up: first was ${first}`, hand: "hold one up" };
}

/**
 * "eighteen Bleu de Solaise", "Musselburgh" when nobody counted; of several varieties each with its own number, and the crop
 * alone where those are too long: nobody says "44 potatoes" of two rows of plants.
 */
function counted(batch: Batch): string {
  const [lot] = batch.lots;
  const byName = [...Map.groupBy(batch.lots, cultivar)];
  if (byName.length > 1) {
    const each = byName.map(([name, [first, ...more]]) => {
      const plants = first === undefined ? undefined : batchOf([first, ...more]).plants;
      return plants === undefined ? name : `${sayNumber(plants)} ${name}`;
    });
    const list = each.join(", ");
    return fits(list, 5) || batch.crop === undefined ? list : `the ${cropName(batch.crop, 2)}`;
  }
  const name = cultivar(lot);
  return batch.plants === undefined
    ? name
    : `${sayNumber(batch.plants)} ${isUnnamed(lot) ? plantName(lot, batch.plants) : name}`;
}

function pointWays(point: Weighed, here: BedOnTheDay): readonly HandWay[] {
  const grounds = point.sentence.sources.map((place) => ({ place, private: point.sentence.private }));
  const [lot, ...more] = point.lots;
  const way = (hand: string, rest: string, frame = hand): HandWay => ({
    frame: `now ${point.kind} ${frame}`,
    text: `${hand}${rest}`,
    grounds,
    hand,
  });
  if (point.kind === "trial") {
    const [a, b] = trialsIn(here)[0]?.arms ?? [];
    return a === undefined || b === undefined
      ? []
      : [way("compare", ` ${a.name} with ${b.name}`), way("stand between", ` ${a.name} and ${b.name}`)];
  }
  if (point.kind === "side by side")
    return [way("hold up", " the photo from last time"), way("frame it", " like the earlier photo")];
  if (point.kind === "built" || point.kind === "work") return gearWays(here, way);
  if (lot === undefined) return [];
  const batch = batchOf([lot, ...more]);
  const name =
    point.lots.length > 1 && new Set(point.lots.map(cultivar)).size > 1 && batch.crop !== undefined
      ? cropName(batch.crop, 2)
      : cultivar(lot);
  const plants = plantName(lot);
  const where = lot.planting.spot === undefined ? undefined : toPause(withPreposition(lot.planting.spot), 3);
  const at = where === undefined ? "" : `, ${where}`;
  const special = specialOf(lot.variety);
  const short = special === undefined || special.private ? undefined : toPause(special.text, 4);
  const ownWays =
    short === undefined
      ? []
      : [
          {
            frame: `own: ${short}`,
            text: `${cultivar(lot)}: ${short}`,
            grounds: [...grounds, lot.variety].filter((one) => one !== undefined),
            hand: undefined,
          },
        ];
  const named = short === undefined || point.lots.length > 1 ? [] : [...handed(point, counted(batch), short, way)];
  switch (point.kind) {
    case "new":
    case "first time":
      return [
        ...named,
        way("kneel by", ` ${counted(batch)}${at}`),
        way("point out", ` ${counted(batch)}${at}`),
        way("bend down to", ` ${counted(batch)}`),
        way(oneOf(`${batch.id} hand`, ["walk up to", "stroke", "look along"]), ` the ${name}`),
        way("stroke", ` the ${name}`),
        way("walk up to", ` the ${name}`),
        ...ownWays,
      ];
    case "trouble":
      return handsForTrouble(point.keepBy).flatMap((hand) => [
        way(hand, `: ${bareCause(point.keepBy)} on ${name}`),
        way(hand, `: ${bareCause(point.keepBy)}`),
      ]);
    case "trouble over":
      return [
        way("run a hand through", `: no ${bareCause(point.keepBy)}`),
        way("lift a leaf", `: ${bareCause(point.keepBy)} gone`),
      ];
    case "lost":
      return [way("show the gap", ` among the ${name}`), way("put a hand", ` where ${name} are missing`)];
    case "first flower":
    case "in flower":
      return [
        way("tilt", ` one ${name} flower up`),
        way("cup", ` a flower of ${name}`),
        way("follow", ` the ${name} flowers upward`),
        way("bring", ` one ${name} close`),
        way("smell", ` the ${name}`),
      ];
    case "first fruit":
      return [way("lift the leaves off", ` the first ${name}`), way("hold", ` one ${name} in the palm`), ...ownWays];
    case "first picking":
    case "picking":
    case "only picking": {
      if (isTakenLongAgo(lot, here)) return [];
      if (isOverAlready(point, here))
        return [...ownWays, way("walk past", ` the ${name}`), way("touch", ` the ${name}`)];
      const verb = takingHand(lot);
      return point.kind === "only picking"
        ? [way("hold up", ` the ${plants}`), way("weigh", ` the ${plants} in the hand`)]
        : [
            way(verb, ` a few ${plants}`),
            way(verb, ` some ${name}${at}`, `${verb} some`),
            way("show", ` a handful of ${plants}`),
            way(verb, ` ${name}`, `${verb} name`),
          ];
    }
    case "finished":
      return [way("show", ` where ${name} stood`, "stood"), way("sweep a hand over", ` the ${name} ground`)];
    case "ready":
      return [way("feel", ` whether ${name} is ready`), way("test", ` one ${name}`)];
    case "due soon":
      return [way("show", ` how far ${name} is`, "far"), way("part the leaves of", ` ${name}`)];
    case "going":
      return [way("linger on", ` the ${name}`), way("hold", ` one last ${name}`, "hold last")];
    case "grew":
      return [way("stand", ` a rule against ${name}`), way("measure", ` ${name} against yourself`)];
    case "up":
      return [way("get low over", ` the ${name} seedlings`), way("brush", ` the ${name} seedlings`)];
    default:
      return point.kind === "standing"
        ? [...ownWays, way("walk past", ` the ${plants}`), way("touch", ` the ${plants}`)]
        : [];
  }
}

/** "point out six Opalka: long ones": what is special about a thing, while the hand shows it. */
function handed(
  { kind }: Weighed,
  what: string,
  special: string,
  way: (hand: string, rest: string, frame?: string) => HandWay,
): readonly HandWay[] {
  const words = /^[A-Z][a-z]+\b/.test(special) ? special.charAt(0).toLowerCase() + special.slice(1) : special;
  return ["point out", "kneel by", "hold on to"].map((hand) =>
    way(hand, ` ${what}: ${words}`, `${kind} ${hand} special`),
  );
}

function gearWays(here: BedOnTheDay, way: (hand: string, rest: string) => HandWay): readonly HandWay[] {
  return here.now.gear
    .flatMap((id) => here.index.garden.gear.get(id) ?? [])
    .filter(({ private: hidden }) => !hidden)
    .flatMap(({ title }) => [way("put a hand on", ` ${theGear(title)}`)]);
}

/** "Gardener's Delight" of "First picked were the Gardener's Delight in the tomato pots, …". */
function firstNamed(text: string): string | undefined {
  if (!text.startsWith("First ")) return undefined;
  const words = text.split(" ").slice(0, 20);
  const from = words.findIndex((word) => word === "was" || word === "were") + 1;
  const to = words.findIndex((word, at) => at > from && (word === "in" || word === "on"));
  const named = words.slice(from, to).filter((word, at) => !(at === 0 && word === "the"));
  return from === 0 || to < 0 ? undefined : named.join(" ");
}
