/** Everything a line can be asked about, in whole sentences. */
import { expect, test } from "vitest";
import { gardenNames, gardenNamesOnceHeard, problemsOf, told } from "./a-garden.ts";

const notAVerb = (word: string, meant: string) =>
  `note/unknown-verb: "${word}" is not a verb of the note format, so this line was kept as story. Did you mean ${meant}? (verbs: docs/notes.md)`;

test.each([
  ["sowd 12 Musselburgh in Long Bed", notAVerb("sowd", '"sowed"')],
  ["plnated 4 Little Gem in Long Bed", notAVerb("plnated", '"planted"')],
  ["picekd 3 lb peas", notAVerb("picekd", '"picked"')],
  ["Picekd 400 g Black Beauty", notAVerb("Picekd", '"picked"')],
  ["harvset 2 kg Black Beauty", notAVerb("harvset", '"harvested"')],
  ["sow 12 Musselburgh in Long Bed", notAVerb("sow", '"sowed"')],
  ["planting 12 Musselburgh in Long Bed", notAVerb("planting", '"planted"')],
  ["picking Black Beauty", notAVerb("picking", '"picked"')],
  ["waterd Long Bed", notAVerb("waterd", '"watered"')],
])("%s", (line, problem) => {
  expect(told(line)).toBe("story");
  expect(problemsOf(line)).toEqual([problem]);
});

test("a fact in a verb nobody knows, a name before its verb, and a word before it", () => {
  expect(problemsOf("scattered 3 g of Boltardy in Long Bed")).toEqual([
    'note/unknown-verb: "scattered" is not a verb of the note format, so this line was kept as story. ' +
      'Begin with another verb, or with "did:". (verbs: docs/notes.md)',
  ]);
  expect(problemsOf("Musselburgh leeks up in Long Bed")).toEqual([
    'note/unknown-verb: "up" stands after the name, so this line was kept as story. ' +
      'Begin with the verb: "up: Musselburgh leeks". (verbs: docs/notes.md)',
  ]);
  expect(problemsOf("we planted 12 Musselburgh in Long Bed")).toEqual([
    'note/unknown-verb: "we" stands before the verb, so this line was kept as story. ' +
      'Begin with the verb: "planted". (verbs: docs/notes.md)',
  ]);
});

test.each([
  ["3 Sungold died from cold", "died", "3 Sungold"],
  ["the carrots are up in Long Bed", "up", "carrots"],
  ["carrots up", "up", "carrots"],
  ["peas flowering", "flowering", "peas"],
  ["broad beans up 18/20", "up", "broad beans"],
  ["courgette (Defender) x2 planted in Long Bed", "planted", "courgette (Defender) x2"],
])("%s tells a fact the wrong way round", (line, verb, name) => {
  expect(told(line)).toBe("story");
  expect(problemsOf(line)).toEqual([
    `note/unknown-verb: "${verb}" stands after the name, so this line was kept as story. ` +
      `Begin with the verb: "${verb}: ${name}". (verbs: docs/notes.md)`,
  ]);
});

test.each([
  ["blackfly on the broad beans, pinched tops out", "trouble: blackfly on broad beans"],
  ["squash bugs already on the zucchini", "trouble: squash bugs on zucchini"],
  ["blight?? on Sungold", "trouble: blight on Sungold"],
  ["4 Crown Prince, 6.2 kg - curing in the lean-to", "picked 4 Crown Prince, 6.2 kg"],
  ["1st strawbs, 200 g", "picked strawbs, 200 g"],
])("%s tells a fact without its verb", (line, meant) => {
  expect(told(line)).toBe("story");
  expect(problemsOf(line)).toEqual([
    "note/unknown-verb: This line begins with no verb of the note format, so it was kept as story. " +
      `Begin with what it tells: "${meant}". (verbs: docs/notes.md)`,
  ]);
});

test("plants that were bought and planted in one line", () => {
  expect(problemsOf("bought 6 Genovese basil plants, planted in Long Bed between the tomatoes")).toEqual([
    'note/unknown-verb: "bought" is not a verb of the note format, so this line was kept as story. ' +
      'Begin with what was done: "planted 6 bought Genovese basil plants in Long Bed between the tomatoes". (verbs: docs/notes.md)',
  ]);
});

test.each([
  "bought 2 coffees",
  "bought the Sunday paper",
  "volunteers from the school planted the border",
  "came back to a flooded plot",
  "froze last night",
  "received a letter about the beans and the peas, of all things",
  "tomatoes up against the wall",
  "3 tomatoes",
  "the beans and the peas",
  "the robin came back",
  "The Long Bed looks tired",
  "Crown Prince is taking over",
  "Musselburgh looking well",
  "needed: net for Long Bed",
  "but Long Bed stayed dry",
  "cut short by rain",
  "up early, frost on the windows",
  "lost my gloves in Long Bed",
  "gave up on the Sungold",
  "Long Bed",
  "frost forecast for Long Bed",
  "time to net Long Bed",
  "sold nothing",
  "sowd", // no name the garden knows
])("%s is ordinary prose", (line) => {
  expect([told(line), problemsOf(line)]).toEqual(["story", []]);
});

test("names spelled nearly like one that a file describes", () => {
  expect(problemsOf("planted 12 Muselburgh in Long Bed")).toEqual([
    'note/unknown-variety: No file describes a variety "Muselburgh", so it is taken as a new one. Did you mean "Musselburgh"?',
  ]);
  expect(problemsOf("planted 12 Musselburgh in Long Bd")).toEqual([
    'note/unknown-bed: No file describes a bed "Long Bd", so it is taken as a new one. Did you mean "Long Bed"?',
  ]);
  expect(problemsOf("planted 12 Nantes in Sunny Corner")).toEqual([]);
  // A second reading still says so.
  const first = gardenNames();
  told("planted 12 Muselburgh in Long Bed", { names: first });
  expect(problemsOf("planted 12 Muselburgh in Long Bed", { names: gardenNamesOnceHeard(first) }).length).toBe(1);
});

test("lines that name no plant", () => {
  expect([told("planted out before the rain"), problemsOf("planted out before the rain")]).toEqual([
    "story",
    [
      'note/no-plant: After "planted out" this line names no plant, so it was kept as story. ' +
        "Name the variety or crop; begin the name with a capital letter if no file describes it yet.",
    ],
  ]);
  expect([told("picked 250 g from Long Bed"), problemsOf("picked 250 g from Long Bed")]).toEqual([
    [{ kind: "picked", grams: 250, bed: "long-bed" }],
    [
      'note/no-plant: After "picked" this line names no plant, so it counts for no planting. ' +
        "Name the variety or crop; begin the name with a capital letter if no file describes it yet.",
    ],
  ]);
  for (const line of [
    "cleared Long Bed",
    "lost everything in Long Bed",
    "soil temperature 12 °C in Long Bed",
    "moved Long Bed to Cold Frame",
  ]) {
    expect([line, problemsOf(line)]).toEqual([line, []]);
  }
});

test("beds that a line leaves open", () => {
  const beds = ["long-bed", "cold-frame"];
  expect(problemsOf("planted 12 Musselburgh", { beds })).toEqual([
    'note/which-bed: This line does not say in which of the note\'s 2 beds it was planted. Add "in" and the bed.',
  ]);
  expect(problemsOf("planted 12 Musselburgh")).toEqual([
    'note/which-bed: This line does not say in which bed it was planted. Add "in" and the bed, or a "bed" in the note\'s front matter.',
  ]);
  expect(problemsOf("sowed 12 Boltardy", { beds })).toEqual([
    'note/which-bed: This line does not say in which of the note\'s 2 beds it was sown. Add "in" and the bed.',
  ]);
  expect(problemsOf("sowed 12 Boltardy and 12 Musselburgh")).toEqual([
    'note/sown-where: This sowing names no bed, so it is taken as indoors. Add "indoors", or the bed it was sown in.',
  ]);
  expect(problemsOf("planted 12 Musselburgh in Long Bed and Cold Frame")).toEqual([
    "note/which-bed: This line gives one amount for 2 beds, so it was counted for none of them. Write a line for each bed, with its own amount.",
  ]);
  for (const line of [
    "picked 1 kg Boltardy",
    "potted on 12 Sungold",
    "sowed 12 Boltardy indoors",
    "gave away 3 Sungold",
  ]) {
    expect([line, problemsOf(line, { beds })]).toEqual([line, []]);
  }
});

test("days that cannot be", () => {
  expect(problemsOf("planted 12 Musselburgh in Long Bed on 30 February")).toEqual([
    'note/unclear-day: "30 February" does not exist: February has 29 days at most. Correct the day. Until then the line counts for the note\'s own day.',
  ]);
  expect(problemsOf("planted 12 Musselburgh in Long Bed on 3/5")).toEqual([
    'note/unclear-day: "3/5" can be read in two ways, so the line is taken to tell of the note\'s own day. ' +
      "Write the month as a word, or year, month and day, for example 2026-05-20.",
  ]);
  expect(problemsOf("planted 12 Musselburgh in Long Bed on 25 May")).toEqual([
    'note/day-after-note: "25 May" is after the day of this note, 2026-05-20, so the line is taken to tell of the note\'s own day. ' +
      'Correct the day, or write what is still to come as a "to do" line.',
  ]);
  expect(told("planted 12 Musselburgh in Long Bed on 25 May")).toEqual([
    { kind: "planted", variety: "musselburgh", count: 12, bed: "long-bed", detail: "on 25 May" },
  ]);
});
