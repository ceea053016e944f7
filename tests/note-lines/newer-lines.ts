/** Lines of what came, volunteered, came back, is doing well, was put up, sold and planned; of why, and for how much. */
import type { Case } from "./lines.ts";

export const coming: readonly Case[] = [
  {
    line: "acquired: 6 Sungold from a neighbour",
    says: [{ kind: "acquired", variety: "sungold", count: 6, from: "a neighbour" }],
  },
  {
    line: "bought 3 Elsanta strawberry for £4",
    says: [{ kind: "acquired", variety: "elsanta", count: 3, plantsFrom: "bought", price: "£4" }],
  },
  {
    line: "bought 6 Genovese basil plants",
    says: [{ kind: "acquired", variety: "genovese", count: 6, plantsFrom: "bought" }],
  },
  {
    line: "was given 4 leeks by Aunt May, rather leggy",
    beds: ["long-bed"],
    says: [
      {
        ...{ kind: "acquired", crop: "leek", count: 4, plantsFrom: "given" },
        ...{ from: "Aunt May", detail: "rather leggy" },
      },
    ],
  },
  {
    line: "acquired: 2 Crown Prince ($5.98 each, the last two) from the market",
    says: [
      {
        ...{ kind: "acquired", variety: "crown-prince", count: 2, price: "$5.98 each" },
        ...{ from: "the market", detail: "(the last two)" },
      },
    ],
  },
  {
    line: "acquired: the mesh tunnel from next door for a tenner",
    says: [{ kind: "acquired", gear: "mesh-tunnel", from: "next door", price: "a tenner" }],
  },
  {
    line: "acquired: 11 bags of pine bark",
    says: [{ kind: "acquired", what: "11 bags of pine bark" }],
  },
  { line: "bought 2 bags of compost", says: "story" },
  { line: "bought Dad a hat with beans on it", says: "story" },
  {
    line: "volunteer: 3 tomatoes in Long Bed, by the gate",
    says: [{ kind: "volunteer", crop: "tomato", count: 3, bed: "long-bed", spot: "by the gate" }],
  },
  { line: "self-sown dill in Cold Frame", says: [{ kind: "volunteer", crop: "dill", bed: "cold-frame" }] },
  {
    line: "came back: 5 strawberries, the old row",
    beds: ["long-bed"],
    says: [{ kind: "came back", crop: "strawberry", count: 5, bed: "long-bed", spot: "the old row" }],
  },
  {
    line: "overwintered Musselburgh in Long Bed",
    says: [{ kind: "came back", variety: "musselburgh", bed: "long-bed" }],
  },
];

export const staying: readonly Case[] = [
  { line: "doing: leeks, thriving", says: [{ kind: "doing", crop: "leek", what: "thriving" }] },
  {
    line: "doing: Crown Prince in Squash Bed, well ahead of the Uchiki Kuri",
    says: [{ kind: "doing", variety: "crown-prince", bed: "squash-bed", what: "well ahead of the Uchiki Kuri" }],
  },
  { line: "doing: Long Bed, full to the edges", says: [{ kind: "doing", bed: "long-bed", what: "full to the edges" }] },
  {
    line: "preserved: 6 pints of tomatoes",
    says: [{ kind: "preserved", crop: "tomato", litres: 3.409568, what: "6 pints of tomatoes" }],
  },
  {
    line: "preserved: 9 jars of blackcurrant jam",
    says: [{ kind: "preserved", crop: "blackcurrant", count: 9, what: "9 jars of blackcurrant jam" }],
  },
  { line: "froze 2 kg of peas", says: [{ kind: "preserved", crop: "pea", grams: 2000, what: "2 kg of peas" }] },
  {
    line: "put up 32 quarts of tomatoes",
    says: [{ kind: "preserved", crop: "tomato", litres: 36.36872, what: "32 quarts of tomatoes" }],
  },
  { line: "froze solid last night", says: "story" },
  {
    line: "sold: 12 bunches of radish, for £1 a bunch",
    says: [{ kind: "sold", crop: "radish", count: 12, unit: "bunch", price: "£1 a bunch" }],
  },
  {
    line: "sold 6 Black Beauty from Cold Frame to the café at £2 each",
    says: [
      {
        ...{ kind: "sold", variety: "black-beauty", count: 6, bed: "cold-frame" },
        ...{ price: "£2 each", detail: "to the café" },
      },
    ],
  },
  { line: "sold 3 kg of tomatoes", says: [{ kind: "sold", crop: "tomato", grams: 3000 }] },
  {
    line: "plan: move the rhubarb next year",
    says: [{ kind: "plan", crop: "rhubarb", what: "move the rhubarb next year" }],
  },
  {
    line: "next year: 40 leeks in Long Bed because the last lot were so good",
    says: [
      {
        ...{ kind: "plan", crop: "leek", bed: "long-bed", what: "40 leeks in Long Bed" },
        reason: "because the last lot were so good",
      },
    ],
  },
];

export const reasonsAndPrices: readonly Case[] = [
  {
    line: "planted 12 Musselburgh in Long Bed, row 2, because of the moth last year",
    says: [
      {
        ...{ kind: "planted", variety: "musselburgh", count: 12, bed: "long-bed", spot: "row 2" },
        reason: "because of the moth last year",
      },
    ],
  },
  {
    line: "put up the mesh tunnel in Brassica Bed to keep the pigeons off",
    says: [{ kind: "put up", gear: "mesh-tunnel", bed: "brassica-bed", reason: "to keep the pigeons off" }],
  },
  {
    line: "pruned the Sungold so that the air gets through",
    says: [{ kind: "did", variety: "sungold", what: "pruned the Sungold", reason: "so that the air gets through" }],
  },
  // The bed behind it is no part of the reason.
  {
    line: "did: moved the pots because of the wind, in Long Bed",
    says: [{ kind: "did", bed: "long-bed", what: "moved the pots because of the wind" }],
  },
  {
    line: "planted 3 bought Black Beauty in Cold Frame, £2.50 each",
    says: [
      {
        ...{ kind: "planted", variety: "black-beauty", count: 3, bed: "cold-frame" },
        ...{ plantsFrom: "bought", price: "£2.50 each" },
      },
    ],
  },
  {
    line: "mulched Long Bed with bark, 4 bags at €5 a bag",
    says: [{ kind: "did", bed: "long-bed", what: "mulched Long Bed with bark, 4 bags", price: "€5 a bag" }],
  },
  {
    line: "transplanted 12 Musselburgh from Cold Frame to Long Bed",
    says: [{ kind: "moved", variety: "musselburgh", count: 12, bed: "cold-frame", toBed: "long-bed" }],
  },
  {
    line: "transplanted 12 Musselburgh into Long Bed",
    says: [{ kind: "planted", variety: "musselburgh", count: 12, bed: "long-bed" }],
  },
  // Pounds are a weight where nothing says that they were paid.
  { line: "picked 4 pounds of Sungold", says: [{ kind: "picked", variety: "sungold", grams: 1814.36948 }] },
];
