/**
 * The verbs of the note format: which words begin a log line, what kind of event they tell of, and what may follow.
 * Reading, writing and the manual page docs/notes.md all go by this table; a new row is a new capability.
 */
import type { EventKind } from "../model.ts";

/**
 * How the rest of a line is read.
 * - plants: amounts and names of plants, beds, spots, spacing
 * - work: what was done, as said; names and beds are found in it
 * - trouble: a cause, then "on" what
 * - gear: a thing that is put up or taken down, then where
 * - soil: a bed and what was measured
 * - words: what is to be done, was promised, asked; names and beds are found in it
 * - goods: plants, seed or a thing that came, from whom and for how much
 * - state: plants or a bed, then how they are, as said
 * - stores: what was put up, as said; the amount, names and beds are found in it
 */
export type LineShape = "plants" | "work" | "trouble" | "gear" | "soil" | "words" | "goods" | "state" | "stores";

/**
 * What must follow a form that is also ordinary English, so that prose stays story:
 * - plant: a colon, an amount, or a plant or bed the garden knows
 * - name: the same, or any name in capitals
 * - colon: a colon
 * - question: a colon, a question mark, or a word that asks
 * - trouble: a colon, or a known pest or disease
 * - number: a colon or a number
 * - gear: gear the garden knows, or a thing such as a net
 * - next: a colon, or right behind it a plant the garden knows, with or without its amount
 */
export type Proof = "plant" | "name" | "colon" | "question" | "trouble" | "number" | "gear" | "next";

export interface Verb {
  readonly kind: EventKind;
  readonly shape: LineShape;
  /** Words that begin such a line, in lower case; the first is the one written out. */
  readonly forms: readonly string[];
  /** Forms that need more before they count. */
  readonly guarded?: Readonly<Partial<Record<Proof, readonly string[]>>> | undefined;
  /** What the line says, for the manual. */
  readonly says: string;
  /** What to mind where the work can hurt someone, for the manual. */
  readonly caution?: string | undefined;
  /** What may follow, for the manual. */
  readonly takes: string;
  /** Lines as a gardener writes them; each is read in the tests. */
  readonly examples: readonly string[];
}

function list(forms: string): readonly string[] {
  return forms.split(", ");
}

/** Work that may begin a line by itself: "pruned the gooseberries" is "did: pruned the gooseberries". */
const work = list(
  "pruned, pinched, pinched out, pinched back, staked, tied, tied in, tied up, trained, trellised, " +
    "fed, watered, watered in, mulched, weeded, hoed, raked, netted, fleeced, covered, uncovered, " +
    "caged, earthed up, hilled, hilled up, ridged up, sprayed, dusted, deadheaded, dead-headed, " +
    "disbudded, debudded, cut back, cut down, cut off, trimmed, clipped, topped, stopped, " +
    "side-shooted, suckered, layered, dug over, dug in, turned, turned over, turned in, forked, " +
    "forked over, tilled, rotavated, double dug, edged, levelled, prepared, prepped, cultivated, " +
    "composted, manured, limed, fertilised, fertilized, side dressed, " +
    "top dressed, topped up, filled, spread, hardened off, shaded, ventilated, vented, aired, " +
    "supported, propped, propped up, strung, hand pollinated, pollinated, divided, " +
    "grafted, budded, blanched, firmed in, heeled in, labelled, labeled, picked off, squashed, " +
    "rubbed off, washed down, scrubbed, cleaned, tidied, swept, solarised, chopped and dropped, put out, put down, laid, added, applied, removed, took off, " +
    "chitted, soaked, disinfected, repaired, mended, painted, drained, flooded, swapped",
);

export const verbTable: readonly Verb[] = [
  {
    kind: "sowed",
    shape: "plants",
    forms: list(
      "sowed, sown, seeded, direct sowed, direct sown, direct seeded, " +
        "resowed, re-sowed, resown, broadcast, undersowed, undersown, sowed direct, " +
        "overseeded",
    ),
    guarded: { name: list("started, started off, planted seed of, planted seeds of") },
    says: "Seed was sown. Indoors, in trays, under glass it opens a nursery lot; with a bed it stands there from now on.",
    takes: "count, variety, indoors or in BED, spacing, spot",
    examples: [
      "sowed 24 Musselburgh leek indoors, 4 trays",
      "sowed Nantes and Autumn King in Long Bed, row 2",
      "started 12 Sungold in modules",
      "direct sowed 40 Boltardy beetroot in Long Bed, 10 cm apart",
    ],
  },
  {
    kind: "up",
    shape: "plants",
    forms: list("emerged, germinated, come up, came up, seedlings up, coming up, germinating, sprouted, showing"),
    guarded: { plant: list("up") },
    says: "Seedlings have come up.",
    takes: "count, variety, BED",
    examples: ["up: Nantes", "germinated: 20 Musselburgh", "emerged: Boltardy in Long Bed"],
  },
  {
    kind: "potted on",
    shape: "plants",
    forms: list(
      "potted on, pricked out, potted up, repotted, re-potted, up-potted, bumped up, pricked off, " + "potted",
    ),
    says: "Seedlings went into larger pots; they stay in the nursery.",
    takes: "count, variety, into what",
    examples: ["potted on 12 Black Beauty into 9 cm pots", "pricked out 30 Café au Lait"],
  },
  {
    kind: "planted",
    shape: "plants",
    forms: list(
      "planted, planted out, set out, transplanted, bedded out, replanted, interplanted, underplanted, " +
        "planted up, plugged in, dibbed in, lined out, transplanted out, put in",
    ),
    says: "Plants went into a bed. They come from the oldest open nursery lot of that variety, unless they were bought or given.",
    takes: "count, variety, BED, spacing, spot, gear it grows on, bought or given",
    examples: [
      "planted 12 Musselburgh leek in Long Bed, 20 cm apart, row 2",
      "planted 6 Crown Prince, 4 Uchiki Kuri and 2 Red Kuri in Squash Bed",
      "set out 3 bought Black Beauty in Cold Frame",
      "planted 8 Trail of Tears in Long Bed on the arch",
    ],
  },
  {
    kind: "thinned",
    shape: "plants",
    forms: list("thinned, thinned out, singled"),
    says: "Plants were thinned; the number is what is left.",
    takes: "variety, to COUNT or to a spacing, BED",
    examples: ["thinned Boltardy to 20", "thinned Nantes to 5 cm apart in Long Bed"],
  },
  {
    kind: "did",
    shape: "work",
    forms: ["did", ...work],
    says: "Work was done. Any of these verbs may begin the line, or “did:” before anything else.",
    caution:
      "A line records what you did and advises nothing: of sprays and treatments follow the product's label and your local rules.",
    takes: "what was done, as said; varieties, crops and beds in it are found",
    examples: ["did: pruned side shoots, all tomatoes", "watered Long Bed", "pinched out Black Beauty in Cold Frame"],
  },
  {
    kind: "flowered",
    shape: "plants",
    forms: list(
      "first flower, first flowers, first bloom, first blooms, flowering, flowered, in flower, " +
        "in bloom, blooming, bloomed, first female flower, first female flowers, first male flower, " +
        "first male flowers, first blossom, in blossom, blossoming, first open flower, came into flower, " +
        "into flower",
    ),
    says: "The first flower is open.",
    takes: "variety, BED",
    examples: ["first flower: Black Beauty", "in flower: Café au Lait in Cutting Patch"],
  },
  {
    kind: "fruited",
    shape: "plants",
    forms: list(
      "first fruit, first fruits, first fruit set, first fruits set, set fruit, fruit set, fruiting, " +
        "fruited, first pod, first pods, setting fruit, fruit setting, podding, first truss set, " +
        "in fruit, first cob, first cobs, hearting up",
    ),
    guarded: { plant: list("first ripe") },
    says: "The first fruit or pod has set.",
    takes: "variety, BED",
    examples: ["first fruit: Black Beauty", "set fruit: Crown Prince in Squash Bed"],
  },
  {
    kind: "picked",
    shape: "plants",
    forms: list(
      "picked, harvested, lifted, gathered, first picking, first pick, first harvest, last picking, " +
        "last harvest, picked the last, picked the first, first cut, dug up",
    ),
    guarded: { name: list("cut, dug, pulled some, collected, foraged") },
    says: "Something was picked, by weight, volume or pieces.",
    takes: "weight, volume or count with a trade unit, variety, from BED",
    examples: [
      "picked 1.4 kg Black Beauty from Cold Frame",
      "cut 12 stems Café au Lait",
      "harvested 3 bunches of Nantes and 2 heads of Little Gem from Long Bed",
      "dug 2 lb 3 oz Charlotte",
    ],
  },
  {
    kind: "measured",
    shape: "plants",
    forms: list("measured, weighed, height, soil temperature, soil temp"),
    says: "A height, length, weight or temperature was measured.",
    takes: "variety, measure, BED",
    examples: [
      "measured Crown Prince 42 cm tall",
      "measured Black Beauty 3 ft 2 in",
      "soil temperature 12 °C in Long Bed",
    ],
  },
  {
    kind: "soil test",
    shape: "soil",
    forms: list("soil test, soil tested, tested soil, tested the soil, soil ph, tested ph"),
    guarded: { number: list("ph, tested, soil") },
    says: "The soil was tested.",
    takes: "BED, pH",
    examples: ["soil test Long Bed pH 6.4", "soil pH 6.4 in Long Bed"],
  },
  {
    kind: "trouble",
    shape: "trouble",
    forms: list("trouble, troubles, problem, problems, pest, pests, disease"),
    guarded: { trouble: list("spotted, found, noticed, saw, seen, first, signs of") },
    says: "Something is wrong with plants; it stays open until it is cured.",
    takes: "cause, on variety, crop or bed, where it shows",
    examples: ["trouble: blackfly on Aquadulce, growing tips", "trouble: slugs in Long Bed"],
  },
  {
    kind: "cured",
    shape: "trouble",
    forms: list("cured, trouble over"),
    guarded: { trouble: list("over, gone, no more, cleared up, recovered from") },
    says: "A trouble has ended.",
    takes: "cause, on variety, crop or bed",
    examples: ["cured: blackfly on Aquadulce", "over: slugs in Long Bed"],
  },
  {
    kind: "lost",
    shape: "plants",
    forms: list("died, lost everything, lost all, lost every, lost the lot"),
    guarded: { name: list("lost, killed, eaten, dead") },
    says: "Plants died or were destroyed.",
    takes: "count, variety, to cause, BED",
    examples: ["lost 3 Musselburgh leek to leek moth", "died: 2 Black Beauty in Cold Frame, frost"],
  },
  {
    kind: "gave away",
    shape: "plants",
    forms: list("gave away, given away, gave, donated"),
    guarded: { plant: list("swapped away") },
    says: "Plants or produce left the garden. Bunches, boxes and weights are produce; a bare number counts plants, or fruit once they bear.",
    takes: "count, variety, to whom",
    examples: ["gave away 4 Musselburgh leek to the school"],
  },
  {
    kind: "cleared",
    shape: "plants",
    forms: list(
      "cleared, pulled up, pulled out, grubbed up, grubbed out, ripped out, took out, cleared out, " + "composted all",
    ),
    guarded: { name: list("pulled") },
    says: "A planting came to its end and left the bed; with only a bed, all of its plantings.",
    takes: "variety, from BED",
    examples: ["cleared Aquadulce from Long Bed", "pulled the last of the Boltardy"],
  },
  {
    kind: "moved",
    shape: "plants",
    forms: list("moved, relocated, transferred"),
    says: "Plants went from one bed to another.",
    takes: "count, variety, from BED to BED",
    examples: ["moved 5 Little Gem from Cold Frame to Long Bed"],
  },
  {
    kind: "put up",
    shape: "gear",
    forms: list("put up, set up, erected, installed, put on, rigged up, assembled"),
    says: "Gear was put up in a bed.",
    takes: "gear, in BED",
    examples: ["put up the mesh tunnel in Brassica Bed"],
  },
  {
    kind: "took down",
    shape: "gear",
    forms: list("took down, taken down, dismantled"),
    guarded: { gear: list("removed, took off, took away") },
    says: "Gear was taken down.",
    takes: "gear, from BED",
    examples: ["took down the mesh tunnel from Brassica Bed"],
  },
  {
    kind: "to do",
    shape: "words",
    forms: list("to do, todo, must do, next job"),
    says: "Something is to be done, by a day if one is said.",
    takes: "by DAY, what",
    examples: ["to do by 2026-06-20: net the brassicas", "to do: order garlic by the end of August"],
  },
  {
    kind: "done",
    shape: "words",
    forms: list("task done, job done"),
    guarded: { colon: list("done, finished") },
    says: "A thing that was to be done is done, in the words it was written down with.",
    takes: "what",
    examples: ["done: net the brassicas"],
  },
  {
    kind: "promised",
    shape: "words",
    forms: list("promised, promise, follow up, owed"),
    says: "Viewers were told they would see something.",
    takes: "what, when",
    examples: ["promised: show the leeks again in July"],
  },
  {
    kind: "asked",
    shape: "words",
    forms: list("viewer asked, viewers asked, question"),
    guarded: { question: list("asked, was asked") },
    says: "A viewer asked something.",
    takes: "the question",
    examples: ["asked: which variety is the red lettuce?"],
  },
  {
    kind: "saved seed",
    shape: "plants",
    forms: list(
      "saved seed, saved seeds, saved seed from, saved seeds from, saved seed of, saved seeds of, " +
        "collected seed, collected seeds, gathered seed, collected seed from, collected seeds from, " +
        "seed saved",
    ),
    guarded: { name: list("saved") },
    says: "Seed was saved for another year.",
    takes: "variety, weight or count",
    examples: ["saved seed: Black Beauty, 30 g"],
  },
  {
    kind: "acquired",
    shape: "goods",
    forms: [],
    guarded: { next: list("acquired, bought, purchased, was given, were given, received") },
    says:
      "Plants, seed or a thing for the garden came. Plants that are set out later are known to have come from there. " +
      "A price is kept to yourself: no public page shows it.",
    takes: "count, variety or thing, from whom, a price, in BED",
    examples: [
      "acquired: 6 Sungold from a neighbour",
      "bought 3 Elsanta strawberry for £4",
      "was given 2 Crown Prince from the plant swap",
      "acquired: a cold frame lid from next door",
    ],
  },
  {
    kind: "volunteer",
    shape: "plants",
    forms: [],
    guarded: { next: list("volunteer, volunteers, self-sown, self-seeded") },
    says: "Plants have come up that nobody sowed; they begin a planting.",
    takes: "count, variety, in BED, spot",
    examples: ["volunteer: 3 tomatoes in Long Bed", "self-sown marigolds in Squash Bed, by the gate"],
  },
  {
    kind: "came back",
    shape: "plants",
    forms: [],
    guarded: { next: list("came back, overwintered, back again") },
    says: "Plants that had died down or stood the winter are alive again this season; a number is how many.",
    takes: "count, variety, BED",
    examples: [
      "came back: Café au Lait in Long Bed",
      "came back: 5 strawberries",
      "overwintered: Musselburgh in Long Bed",
    ],
  },
  {
    kind: "doing",
    shape: "state",
    forms: [],
    guarded: { colon: list("doing") },
    says: "How plants or a bed are getting on, in your own words.",
    takes: "variety or BED, then how they are",
    examples: [
      "doing: leeks, thriving",
      "doing: Crown Prince in Squash Bed, well ahead of the Uchiki Kuri",
      "doing: Long Bed, full to the edges",
    ],
  },
  {
    kind: "preserved",
    shape: "stores",
    forms: [],
    guarded: { next: list("preserved, bottled, canned, froze, pickled, dehydrated") },
    says: "Something was put up: in jars, packets or bottles, dried or frozen. It changes no planting and no total of pickings.",
    caution:
      "A line records what you did and advises nothing: for preserving follow a tested recipe from an authority you trust.",
    takes: "how many jars, packets, pints or how much, of what; varieties, crops and beds in it are found",
    examples: ["preserved: 6 pints of tomatoes", "preserved: 9 jars of blackcurrant jam", "froze 2 kg of peas"],
  },
  {
    kind: "sold",
    shape: "plants",
    forms: [],
    guarded: { plant: list("sold") },
    says: "Plants or produce were sold. A price is kept to yourself: no public page shows it.",
    takes: "count, weight or trade unit, variety, from BED, a price, to whom",
    examples: ["sold: 12 bunches of radish", "sold 6 Black Beauty from Cold Frame, for £2 each"],
  },
  {
    kind: "plan",
    shape: "words",
    forms: [],
    guarded: { colon: list("plan, plans, planned, next year") },
    says: "What you mean to do some day, next year say. It is shown as planned; it never falls due and is never taken as done.",
    takes: "what; varieties, crops and beds in it are found",
    examples: ["plan: move the rhubarb next year", "next year: 40 leeks in Long Bed"],
  },
];
