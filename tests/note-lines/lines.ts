/**
 * Log lines as gardeners in Britain and America write them, and what each says. The lines are common practice, made for
 * these tests; the note they stand in is of Wednesday 20 May 2026.
 */
import type { Facts } from "./a-garden.ts";

export interface Case {
  readonly line: string;
  /** Beds the note speaks of. */
  readonly beds?: readonly string[];
  readonly says: readonly Facts[] | "story";
}

/** Sowing, coming up, potting on. */
export const sowing: readonly Case[] = [
  {
    line: "sowed 24 Musselburgh leek indoors, 4 trays",
    says: [{ kind: "sowed", variety: "musselburgh", count: 24, nursery: true, detail: "4 trays" }],
  },
  { line: "sowed 20 radish in Long Bed", says: [{ kind: "sowed", crop: "radish", count: 20, bed: "long-bed" }] },
  { line: "up: Musselburgh leeks", says: [{ kind: "up", variety: "musselburgh" }] },
  {
    line: "sowed Nantes carrots, Autumn King and 30 Boltardy in Long Bed last Tuesday",
    says: [
      { kind: "sowed", day: "2026-05-19", variety: "nantes", bed: "long-bed" },
      { kind: "sowed", day: "2026-05-19", variety: "autumn-king", bed: "long-bed" },
      { kind: "sowed", day: "2026-05-19", variety: "boltardy", count: 30, bed: "long-bed" },
    ],
  },
  {
    line: "sowed two rows of Boltardy in Sunny Corner",
    says: [{ kind: "sowed", variety: "boltardy", bed: "sunny-corner", detail: "two rows" }],
  },
  {
    line: "Sowed: 40 broad beans (Aquadulce Claudia) direct in Long Bed, double row, 20cm apart",
    says: [
      {
        kind: "sowed",
        variety: "aquadulce-claudia",
        count: 40,
        bed: "long-bed",
        spacingCm: 20,
        detail: "direct, double row",
      },
    ],
  },
  {
    line: "sown 2 rows of Boltardy",
    beds: ["long-bed"],
    says: [{ kind: "sowed", variety: "boltardy", bed: "long-bed", detail: "2 rows" }],
  },
  {
    line: "sowed carrots 'Autumn King' thinly in Long Bed",
    says: [{ kind: "sowed", variety: "autumn-king", bed: "long-bed", detail: "thinly" }],
  },
  {
    line: "sowed a pinch of Little Gem in modules on the kitchen windowsill",
    says: [
      { kind: "sowed", variety: "little-gem", nursery: true, detail: "a pinch, in modules on the kitchen windowsill" },
    ],
  },
  {
    line: "sowed 36 Musselburgh in 9 cm pots under glass",
    says: [{ kind: "sowed", variety: "musselburgh", count: 36, nursery: true, detail: "in 9 cm pots under glass" }],
  },
  {
    line: "sowed 12 Sungold in the propagator at 21 °C",
    says: [{ kind: "sowed", variety: "sungold", count: 12, nursery: true, detail: "in the propagator at 21 °C" }],
  },
  {
    line: "seeded 200 g of crimson clover over the Squash Bed",
    says: [{ kind: "sowed", crop: "clover", grams: 200, bed: "squash-bed" }],
  },
  {
    line: "sowed peas along the netting in Long Bed",
    says: [{ kind: "sowed", crop: "pea", bed: "long-bed", spot: "along the netting" }],
  },
  {
    line: "direct sowed Boltardy in rows 30 cm apart, 5 cm between plants",
    beds: ["long-bed"],
    says: [{ kind: "sowed", variety: "boltardy", bed: "long-bed", spacingCm: 5, detail: "in rows 30 cm apart" }],
  },
  {
    line: "started 24 Sungold F1 in cells",
    says: [{ kind: "sowed", variety: "sungold", count: 24, nursery: true, detail: "in cells" }],
  },
  {
    line: "sowed 10g of phacelia in Long Bed",
    says: [{ kind: "sowed", crop: "phacelia", grams: 10, bed: "long-bed" }],
  },
  {
    line: "sowed 8-10 Crown Prince indoors",
    says: [{ kind: "sowed", variety: "crown-prince", count: { value: 8, upTo: 10, approx: false }, nursery: true }],
  },
  {
    line: "sowed about 50 Little Gem indoors, two to a cell",
    says: [
      {
        kind: "sowed",
        variety: "little-gem",
        count: { value: 50, approx: true },
        nursery: true,
        detail: "two to a cell",
      },
    ],
  },
  {
    line: "sowed 1/2 oz of Boltardy in Long Bed",
    says: [{ kind: "sowed", variety: "boltardy", grams: 14.174762, bed: "long-bed" }],
  },
  {
    line: "sowed 3 x 12 Musselburgh indoors",
    says: [{ kind: "sowed", variety: "musselburgh", count: 36, nursery: true }],
  },
  {
    line: "sowed 4 trays of 24 Musselburgh indoors",
    says: [{ kind: "sowed", variety: "musselburgh", count: 96, nursery: true }],
  },
  {
    line: "resown Boltardy, first lot never showed",
    beds: ["long-bed"],
    says: [{ kind: "sowed", variety: "boltardy", bed: "long-bed", detail: "first lot never showed" }],
  },
  {
    line: "sowed last of the Musselburgh seed indoors",
    says: [{ kind: "sowed", variety: "musselburgh", nursery: true, detail: "last" }],
  },
  {
    line: "sowed half a dozen Uchiki Kuri on the windowsill, one per pot",
    says: [
      { kind: "sowed", variety: "uchiki-kuri", count: 6, nursery: true, detail: "on the windowsill, one per pot" },
    ],
  },
  {
    line: "sowed twenty-four Musselburgh in root trainers",
    says: [{ kind: "sowed", variety: "musselburgh", count: 24, nursery: true, detail: "in root trainers" }],
  },
  {
    line: "potted on 12 Sungold into 3-inch pots",
    says: [{ kind: "potted on", variety: "sungold", count: 12, detail: "into 3-inch pots" }],
  },
  {
    line: "pricked out 40 Café au Lait seedlings into modules",
    says: [{ kind: "potted on", variety: "cafe-au-lait", count: 40, detail: "seedlings into modules" }],
  },
  {
    line: "sowed black-seeded simpson lettuce in Long Bed",
    says: [{ kind: "sowed", variety: "black-seeded-simpson", bed: "long-bed" }],
  },
  { line: "potted up six Black Beauty", says: [{ kind: "potted on", variety: "black-beauty", count: 6 }] },
  {
    line: "up: Boltardy, day 9",
    beds: ["long-bed"],
    says: [{ kind: "up", variety: "boltardy", bed: "long-bed", detail: "day 9" }],
  },
  { line: "up: 18 of 24 Musselburgh", says: [{ kind: "up", variety: "musselburgh", count: 18, detail: "18 of 24" }] },
  { line: "emerged: Boltardy in Long Bed", says: [{ kind: "up", variety: "boltardy", bed: "long-bed" }] },
  {
    line: "germinated: 20 Musselburgh, very even",
    says: [{ kind: "up", variety: "musselburgh", count: 20, detail: "very even" }],
  },
  {
    line: "Long Bed: sowed 12 Boltardy, row 2",
    says: [{ kind: "sowed", variety: "boltardy", count: 12, bed: "long-bed", spot: "row 2" }],
  },
  {
    line: "sowed broad beans, Aquadulce, in Long Bed",
    says: [{ kind: "sowed", variety: "aquadulce-claudia", bed: "long-bed" }],
  },
  {
    line: "up: Boltardy in Long Bed and Cold Frame",
    says: [
      { kind: "up", variety: "boltardy", bed: "long-bed" },
      { kind: "up", variety: "boltardy", bed: "cold-frame" },
    ],
  },
  {
    line: "SOWED 24 MUSSELBURGH LEEK INDOORS",
    says: [{ kind: "sowed", variety: "musselburgh", count: 24, nursery: true }],
  },
  {
    line: "sowed 6 Café au lait seed under grow lights",
    says: [{ kind: "sowed", variety: "cafe-au-lait", count: 6, nursery: true, detail: "under grow lights" }],
  },
  {
    line: "direct seeded a 10 ft row of Boltardy in Long Bed",
    says: [{ kind: "sowed", variety: "boltardy", bed: "long-bed", detail: "a 10 ft row" }],
  },
  {
    line: "sowed 1 oz Boltardy, 3 in apart, thinned later",
    beds: ["long-bed"],
    says: [
      {
        kind: "sowed",
        variety: "boltardy",
        grams: 28.349523,
        bed: "long-bed",
        spacingCm: 7.62,
        detail: "thinned later",
      },
    ],
  },
  {
    line: "sowed two to three dozen Little Gem in a seed tray",
    says: [
      {
        kind: "sowed",
        variety: "little-gem",
        count: { value: 24, upTo: 36, approx: false },
        nursery: true,
        detail: "in a seed tray",
      },
    ],
  },
  {
    line: "sowed 40 Little Gem in plugs in Cold Frame",
    says: [{ kind: "sowed", variety: "little-gem", count: 40, bed: "cold-frame", nursery: true, detail: "in plugs" }],
  },
  {
    line: "sowed sweet peas, two per rootrainer",
    says: [{ kind: "sowed", crop: "sweet-pea", nursery: true, detail: "two per rootrainer" }],
  },
  {
    line: "sowed Sungold (tomato) in pots",
    says: [{ kind: "sowed", variety: "sungold", nursery: true, detail: "in pots" }],
  },
  {
    line: "sowed leeks: 24 Musselburgh indoors",
    says: [{ kind: "sowed", variety: "musselburgh", count: 24, nursery: true }],
  },
  {
    line: "sowed 30 'Purple Haze' carrots in Long Bed, row 3 on Tuesday",
    says: [{ kind: "sowed", day: "2026-05-19", variety: "purple-haze", count: 30, bed: "long-bed", spot: "row 3" }],
  },
  { line: "sowed green manure in Long Bed", says: [{ kind: "sowed", variety: "green-manure", bed: "long-bed" }] },
  {
    line: "started 6 Crown Prince & 6 Uchiki Kuri on the heat mat",
    says: [
      { kind: "sowed", variety: "crown-prince", count: 6, nursery: true, detail: "on the heat mat" },
      { kind: "sowed", variety: "uchiki-kuri", count: 6, nursery: true, detail: "on the heat mat" },
    ],
  },
  { line: "up: all 24 Musselburgh", says: [{ kind: "up", variety: "musselburgh", count: 24 }] },
  { line: "up: peas in Long Bed", says: [{ kind: "up", crop: "pea", bed: "long-bed" }] },
  { line: "germinated 9/10 Crown Prince", says: [{ kind: "up", variety: "crown-prince", count: 9, detail: "9/10" }] },
  { line: "come up: Boltardy", says: [{ kind: "up", variety: "boltardy" }] },
  {
    line: "Sowed Boltardy and Nantes, 1 row each, Long Bed",
    says: [
      { kind: "sowed", variety: "boltardy", bed: "long-bed", detail: "1 row each" },
      { kind: "sowed", variety: "nantes", bed: "long-bed", detail: "1 row each" },
    ],
  },
  {
    line: "direct sowed carrots in Long Bed under mesh",
    says: [{ kind: "sowed", crop: "carrot", bed: "long-bed", gear: "mesh-tunnel" }],
  },
  {
    line: "sowed 2 × 24 modules of Musselburgh",
    says: [{ kind: "sowed", variety: "musselburgh", nursery: true, detail: "2 × 24 modules" }],
  },
  { line: "up: 90% of Boltardy", says: [{ kind: "up", variety: "boltardy", detail: "90%" }] },
  {
    line: "sowed indoors: 24 Musselburgh, 12 Little Gem",
    says: [
      { kind: "sowed", variety: "musselburgh", count: 24, nursery: true },
      { kind: "sowed", variety: "little-gem", count: 12, nursery: true },
    ],
  },
  {
    line: "sowed in Long Bed: Boltardy, Nantes and Little Gem",
    says: [
      { kind: "sowed", variety: "boltardy", bed: "long-bed" },
      { kind: "sowed", variety: "nantes", bed: "long-bed" },
      { kind: "sowed", variety: "little-gem", bed: "long-bed" },
    ],
  },
  {
    line: "sowed Lollo Rossa lettuce, Little Gem and a few Salad Bowl indoors",
    says: [
      { kind: "sowed", variety: "lollo-rossa", nursery: true },
      { kind: "sowed", variety: "little-gem", nursery: true },
      { kind: "sowed", variety: "salad-bowl", nursery: true, detail: "a few" },
    ],
  },
  { line: "sowed broad beans", says: [{ kind: "sowed", crop: "broad-bean", nursery: true }] },
  {
    line: "sowed 40 Aquadulce in Long Bed, second sowing",
    says: [{ kind: "sowed", variety: "aquadulce-claudia", count: 40, bed: "long-bed", detail: "second sowing" }],
  },
  {
    line: "sowed second batch of Little Gem indoors",
    says: [{ kind: "sowed", variety: "little-gem", nursery: true, detail: "second batch" }],
  },
  {
    line: "sowed Boltardy again in Long Bed",
    says: [{ kind: "sowed", variety: "boltardy", bed: "long-bed", detail: "again" }],
  },
  {
    line: "sowed Little Gem every two weeks in Long Bed",
    says: [{ kind: "sowed", variety: "little-gem", bed: "long-bed", detail: "every two weeks" }],
  },
  {
    line: "sowed Aquadulce 5 cm deep in Long Bed",
    says: [{ kind: "sowed", variety: "aquadulce-claudia", bed: "long-bed", detail: "5 cm deep" }],
  },
  {
    line: "sowed Aquadulce, 2 in deep, 8 in apart, double row in Long Bed",
    says: [
      {
        kind: "sowed",
        variety: "aquadulce-claudia",
        bed: "long-bed",
        spacingCm: 20.32,
        detail: "2 in deep, double row",
      },
    ],
  },
  {
    line: "sowed 2 Crown Prince per pot, 8 pots, on the windowsill",
    says: [
      { kind: "sowed", variety: "crown-prince", count: 2, nursery: true, detail: "per pot, 8 pots, on the windowsill" },
    ],
  },
  {
    line: "sowed 8 pots of Crown Prince, two to a pot",
    says: [{ kind: "sowed", variety: "crown-prince", nursery: true, detail: "8 pots, two to a pot" }],
  },
  {
    line: "sowed Sungold on the heat mat at 70 °F",
    says: [{ kind: "sowed", variety: "sungold", nursery: true, detail: "on the heat mat at 70 °F" }],
  },
  {
    line: "sowed kale 'Nero di Toscana' in seed tray",
    says: [{ kind: "sowed", variety: "nero-di-toscana", nursery: true, detail: "in seed tray" }],
  },
  {
    line: "sowed Nero di Toscana kale and January King cabbage in modules",
    says: [
      { kind: "sowed", variety: "nero-di-toscana", nursery: true, detail: "in modules" },
      { kind: "sowed", variety: "january-king", nursery: true, detail: "in modules" },
    ],
  },
  { line: "sowed salad mix in Herb Trough", says: [{ kind: "sowed", variety: "salad-mix", bed: "herb-trough" }] },
  {
    line: "sowed wildflowers along the path in Long Bed",
    says: [{ kind: "sowed", variety: "wildflowers", bed: "long-bed", spot: "along the path" }],
  },
  {
    line: "sowed a packet of Boltardy in Long Bed",
    says: [{ kind: "sowed", variety: "boltardy", bed: "long-bed", detail: "a packet" }],
  },
  {
    line: "sowed half a packet of Little Gem in Cold Frame",
    says: [{ kind: "sowed", variety: "little-gem", bed: "cold-frame", detail: "half a packet" }],
  },
  {
    line: "sowed parsnips in Long Bed, radish between as markers",
    says: [{ kind: "sowed", crop: "parsnip", bed: "long-bed", detail: "radish between as markers" }],
  },
  {
    line: "sowed lettuce under glass in Cold Frame",
    says: [{ kind: "sowed", crop: "lettuce", bed: "cold-frame", nursery: true, detail: "under glass" }],
  },
  {
    line: "sowed sweet pea seeds in toilet roll tubes",
    says: [{ kind: "sowed", crop: "sweet-pea", nursery: true, detail: "in toilet roll tubes" }],
  },
  {
    line: "sowed 12 Nantes from Drift Lane Seeds in Long Bed",
    says: [{ kind: "sowed", variety: "nantes", count: 12, bed: "long-bed", detail: "from Drift Lane Seeds" }],
  },
  {
    line: "sowed 10 Crown Prince, own seed 2025",
    says: [{ kind: "sowed", variety: "crown-prince", count: 10, nursery: true, detail: "own seed 2025" }],
  },
  {
    line: "sowed 10 Crown Prince 2025 seed",
    says: [{ kind: "sowed", variety: "crown-prince", count: 10, nursery: true, detail: "2025 seed" }],
  },
  {
    line: "sowed 10 Crown Prince, 2024 and 2025 seed",
    says: [{ kind: "sowed", variety: "crown-prince", count: 10, nursery: true, detail: "2024 and 2025 seed" }],
  },
  { line: "up: Boltardy after 9 days", says: [{ kind: "up", variety: "boltardy", detail: "after 9 days" }] },
  { line: "up: Boltardy 80%", says: [{ kind: "up", variety: "boltardy", detail: "80%" }] },
  { line: "germinated: 22/24 Musselburgh", says: [{ kind: "up", variety: "musselburgh", count: 22, detail: "22/24" }] },
  {
    line: "potted on 12 Sungold to 1 litre pots",
    says: [{ kind: "potted on", variety: "sungold", count: 12, detail: "to 1 litre pots" }],
  },
  {
    line: "pricked out 24 Little Gem, 3 left over",
    says: [{ kind: "potted on", variety: "little-gem", count: 24, detail: "3 left over" }],
  },
];

/** Planting and moving. */
export const planting: readonly Case[] = [
  {
    line: "planted 12 Musselburgh leek in Long Bed, 20 cm apart, row 2",
    says: [{ kind: "planted", variety: "musselburgh", count: 12, bed: "long-bed", spacingCm: 20, spot: "row 2" }],
  },
  {
    line: "planted 6 Crown Prince, 4 Uchiki Kuri and 2 Red Kuri in Squash Bed",
    says: [
      { kind: "planted", variety: "crown-prince", count: 6, bed: "squash-bed" },
      { kind: "planted", variety: "uchiki-kuri", count: 4, bed: "squash-bed" },
      { kind: "planted", variety: "red-kuri", count: 2, bed: "squash-bed" },
    ],
  },
  {
    line: "set out 3 bought Black Beauty in Cold Frame",
    says: [{ kind: "planted", variety: "black-beauty", count: 3, bed: "cold-frame", plantsFrom: "bought" }],
  },
  {
    line: "planted 8 Aquadulce in Long Bed on the arch",
    says: [{ kind: "planted", variety: "aquadulce-claudia", count: 8, bed: "long-bed", gear: "arch" }],
  },
  {
    line: "planted 12 Musselburgh in Long Bed yesterday",
    says: [{ kind: "planted", day: "2026-05-19", variety: "musselburgh", count: 12, bed: "long-bed" }],
  },
  {
    line: "planted 6 Gardeners Delight between the tomatoes in Tunnel North",
    says: [
      { kind: "planted", variety: "gardeners-delight", count: 6, bed: "tunnel-north", spot: "between the tomatoes" },
    ],
  },
  {
    line: "planted a dozen Musselburgh by the gate",
    beds: ["long-bed"],
    says: [{ kind: "planted", variety: "musselburgh", count: 12, bed: "long-bed", spot: "by the gate" }],
  },
  {
    line: "planted 12 Musselburgh leeks in Long Bed on 3 May",
    says: [{ kind: "planted", day: "2026-05-03", variety: "musselburgh", count: 12, bed: "long-bed" }],
  },
  {
    line: "planted out the Sungold in Tunnel North, 6 plants, 45 cm apart",
    says: [{ kind: "planted", variety: "sungold", count: 6, bed: "tunnel-north", spacingCm: 45 }],
  },
  {
    line: "set out 6 Crown Prince at 90 cm in the Squash Bed",
    says: [{ kind: "planted", variety: "crown-prince", count: 6, bed: "squash-bed", spacingCm: 90 }],
  },
  {
    line: "transplanted 20 Little Gem between the Musselburgh in Long Bed",
    says: [{ kind: "planted", variety: "little-gem", count: 20, bed: "long-bed", spot: "between the Musselburgh" }],
  },
  {
    line: "planted 30 garlic cloves in Long Bed, 15 cm apart, row 4",
    says: [
      { kind: "planted", crop: "garlic", count: 30, bed: "long-bed", spacingCm: 15, spot: "row 4", detail: "cloves" },
    ],
  },
  {
    line: "planted 60 'Sturon' onion sets in Long Bed",
    says: [{ kind: "planted", variety: "sturon", count: 60, bed: "long-bed", detail: "sets" }],
  },
  {
    line: "planted 5 kg Charlotte seed potatoes in Long Bed, 12 in apart",
    says: [{ kind: "planted", variety: "charlotte", grams: 5000, bed: "long-bed", spacingCm: 30.48 }],
  },
  {
    line: "planted Charlotte, 20 tubers, 35cm apart in Squash Bed",
    says: [{ kind: "planted", variety: "charlotte", count: 20, bed: "squash-bed", spacingCm: 35, detail: "tubers" }],
  },
  {
    line: "planted 1 bought Black Beauty in Step Pots",
    says: [{ kind: "planted", variety: "black-beauty", count: 1, bed: "step-pots", plantsFrom: "bought" }],
  },
  {
    line: "planted 3 Sungold given by Maureen in Tunnel North",
    says: [
      {
        kind: "planted",
        variety: "sungold",
        count: 3,
        bed: "tunnel-north",
        plantsFrom: "given",
        detail: "given by Maureen",
      },
    ],
  },
  {
    line: "planted two dozen Musselburgh in rows 2 and 3 of Long Bed",
    says: [{ kind: "planted", variety: "musselburgh", count: 24, bed: "long-bed", spot: "rows 2 and 3" }],
  },
  {
    line: "planted 6 Gardener's Delight up the arch in Tunnel North",
    says: [{ kind: "planted", variety: "gardeners-delight", count: 6, bed: "tunnel-north", gear: "arch" }],
  },
  {
    line: "planted 4 Uchiki Kuri over the arch",
    beds: ["squash-bed"],
    says: [{ kind: "planted", variety: "uchiki-kuri", count: 4, bed: "squash-bed", gear: "arch" }],
  },
  {
    line: "planted 12 Musselburgh into Long Bed where the Aquadulce were",
    says: [{ kind: "planted", variety: "musselburgh", count: 12, bed: "long-bed", detail: "where the Aquadulce were" }],
  },
  {
    line: "planted 9 Little Gem in the north end of Cold Frame",
    says: [{ kind: "planted", variety: "little-gem", count: 9, bed: "cold-frame", spot: "the north end" }],
  },
  {
    line: "planted 6 dahlias in Long Bed, the corner by the gate",
    says: [{ kind: "planted", crop: "dahlia", count: 6, bed: "long-bed", spot: "the corner by the gate" }],
  },
  {
    line: "planted 5 Café au Lait in Long Bed at the far end, with stakes",
    says: [
      {
        kind: "planted",
        variety: "cafe-au-lait",
        count: 5,
        bed: "long-bed",
        spot: "the far end",
        detail: "with stakes",
      },
    ],
  },
  {
    line: "planted 12 Musselburgh next to the Little Gem",
    beds: ["long-bed"],
    says: [{ kind: "planted", variety: "musselburgh", count: 12, bed: "long-bed", spot: "next to the Little Gem" }],
  },
  {
    line: 'planted 8 Sungold @ 18"',
    beds: ["tunnel-north"],
    says: [{ kind: "planted", variety: "sungold", count: 8, bed: "tunnel-north", spacingCm: 45.72 }],
  },
  {
    line: 'planted 8 Sungold 18" apart',
    beds: ["tunnel-north"],
    says: [{ kind: "planted", variety: "sungold", count: 8, bed: "tunnel-north", spacingCm: 45.72 }],
  },
  {
    line: "planted 10 Little Gem a foot apart in Cold Frame",
    says: [{ kind: "planted", variety: "little-gem", count: 10, bed: "cold-frame", spacingCm: 30.48 }],
  },
  {
    line: "planted 6 Crown Prince 3 ft apart, 4 Uchiki Kuri 2 ft apart in Squash Bed",
    says: [
      { kind: "planted", variety: "crown-prince", count: 6, bed: "squash-bed", spacingCm: 91.44 },
      { kind: "planted", variety: "uchiki-kuri", count: 4, bed: "squash-bed", spacingCm: 60.96 },
    ],
  },
  {
    line: "plugged in 20 Little Gem",
    beds: ["cold-frame"],
    says: [{ kind: "planted", variety: "little-gem", count: 20, bed: "cold-frame" }],
  },
  {
    line: "moved 5 Little Gem from Cold Frame to Long Bed, row 1",
    says: [{ kind: "moved", variety: "little-gem", count: 5, bed: "cold-frame", toBed: "long-bed", spot: "row 1" }],
  },
  {
    line: "moved the Black Beauty to Tunnel North",
    says: [{ kind: "moved", variety: "black-beauty", toBed: "tunnel-north" }],
  },
  {
    line: "planted 12 Musselburgh in Long Bed and Cold Frame",
    says: [
      { kind: "planted", variety: "musselburgh", bed: "long-bed" },
      { kind: "planted", variety: "musselburgh", bed: "cold-frame" },
    ],
  },
  {
    line: "planted 3 x 6 Little Gem in Cold Frame",
    says: [{ kind: "planted", variety: "little-gem", count: 18, bed: "cold-frame" }],
  },
  {
    line: 'planted out 24 leeks in Long Bed, 9" apart, dibbed deep',
    says: [{ kind: "planted", crop: "leek", count: 24, bed: "long-bed", spacingCm: 22.86, detail: "dibbed deep" }],
  },
  {
    line: "planted 4 Sungold in Tunnel North in bottomless pots",
    says: [{ kind: "planted", variety: "sungold", count: 4, bed: "tunnel-north", detail: "in bottomless pots" }],
  },
  {
    line: "planted 2 Sungold in the greenhouse",
    says: [{ kind: "planted", variety: "sungold", count: 2, bed: "greenhouse" }],
  },
  {
    line: "planted 2 Sungold in Greenhouse",
    says: [{ kind: "planted", variety: "sungold", count: 2, bed: "greenhouse" }],
  },
  {
    line: "planted 10 garlic (Germidour) in Long Bed",
    says: [{ kind: "planted", variety: "germidour", count: 10, bed: "long-bed" }],
  },
  {
    line: "planted 10 bare-root raspberry canes along the fence",
    beds: ["long-bed"],
    says: [
      {
        kind: "planted",
        crop: "raspberry",
        count: 10,
        bed: "long-bed",
        spot: "along the fence",
        detail: "bare-root, canes",
      },
    ],
  },
  {
    line: "planted 6 Crown Prince in Squash Bed today, 90cm apart",
    says: [{ kind: "planted", variety: "crown-prince", count: 6, bed: "squash-bed", spacingCm: 90 }],
  },
  {
    line: "planted a Black Beauty in each of the three tubs",
    beds: ["step-pots"],
    says: [
      { kind: "planted", variety: "black-beauty", count: 1, bed: "step-pots", detail: "in each of the three tubs" },
    ],
  },
  {
    line: "planted 5 lb Yukon Gold seed potatoes in Long Bed, 12 inches apart, rows 30 inches apart",
    says: [
      {
        kind: "planted",
        variety: "yukon-gold",
        grams: 2267.96185,
        bed: "long-bed",
        spacingCm: 30.48,
        detail: "rows 30 inches apart",
      },
    ],
  },
  {
    line: "set out six Early Girl tomatoes in Bed 4, 2 feet apart",
    says: [{ kind: "planted", variety: "early-girl", count: 6, bed: "bed-4", spacingCm: 60.96 }],
  },
  {
    line: "planted Sungold x 4, Gardener's Delight x 3 in Tunnel North",
    says: [
      { kind: "planted", variety: "sungold", count: 4, bed: "tunnel-north" },
      { kind: "planted", variety: "gardeners-delight", count: 3, bed: "tunnel-north" },
    ],
  },
  {
    line: "planted 1 fig against the south wall",
    beds: ["step-pots"],
    says: [{ kind: "planted", crop: "fig", count: 1, bed: "step-pots", spot: "against the south wall" }],
  },
  {
    line: "planted out 12 Musselburgh, 6 Little Gem, and 3 Black Beauty in Long Bed yesterday evening",
    says: [
      { kind: "planted", day: "2026-05-19", variety: "musselburgh", count: 12, bed: "long-bed" },
      { kind: "planted", day: "2026-05-19", variety: "little-gem", count: 6, bed: "long-bed" },
      { kind: "planted", day: "2026-05-19", variety: "black-beauty", count: 3, bed: "long-bed" },
    ],
  },
  {
    line: "planted 12 Musselburgh in Long Bed 3 days ago",
    says: [{ kind: "planted", day: "2026-05-17", variety: "musselburgh", count: 12, bed: "long-bed" }],
  },
  {
    line: "planted 12 Musselburgh in Long Bed last Saturday morning",
    says: [{ kind: "planted", day: "2026-05-16", variety: "musselburgh", count: 12, bed: "long-bed" }],
  },
  {
    line: "planted 12 Musselburgh in Long Bed on the 3rd",
    says: [{ kind: "planted", day: "2026-05-03", variety: "musselburgh", count: 12, bed: "long-bed" }],
  },
  {
    line: "planted 12 Musselburgh in Long Bed on 18 May 2026",
    says: [{ kind: "planted", day: "2026-05-18", variety: "musselburgh", count: 12, bed: "long-bed" }],
  },
  {
    line: "planted 12 Musselburgh in Long Bed 2026-05-18",
    says: [{ kind: "planted", day: "2026-05-18", variety: "musselburgh", count: 12, bed: "long-bed" }],
  },
  {
    line: "planted 12 Musselburgh in Long Bed, sown 2 March",
    says: [{ kind: "planted", variety: "musselburgh", count: 12, bed: "long-bed", detail: "sown 2 March" }],
  },
  {
    line: "planted 12 Musselburgh in Long Bed, best since last Tuesday",
    says: [{ kind: "planted", variety: "musselburgh", count: 12, bed: "long-bed", detail: "best since last Tuesday" }],
  },
  {
    line: "planted 12 Muselburgh in Long Bed",
    says: [{ kind: "planted", variety: "muselburgh", count: 12, bed: "long-bed" }],
  },
  {
    line: "planted 12 Musselburgh in Long Bd",
    says: [{ kind: "planted", variety: "musselburgh", count: 12, bed: "long-bd" }],
  },
  {
    line: "planted 6 Black Beauty aubergines in Tunnel North",
    says: [{ kind: "planted", variety: "black-beauty-aubergine", count: 6, bed: "tunnel-north" }],
  },
  {
    line: "planted 6 Lady in Red in Long Bed",
    says: [{ kind: "planted", variety: "lady-in-red", count: 6, bed: "long-bed" }],
  },
  {
    line: 'planted 6 "Black from Tula" in Tunnel North',
    says: [{ kind: "planted", variety: "black-from-tula", count: 6, bed: "tunnel-north" }],
  },
  {
    line: "planted 2 roses and a fig in Step Pots",
    says: [
      { kind: "planted", crop: "rose", count: 2, bed: "step-pots" },
      { kind: "planted", crop: "fig", count: 1, bed: "step-pots" },
    ],
  },
  {
    line: "moved 2 Café au Lait to Step Pots",
    says: [{ kind: "moved", variety: "cafe-au-lait", count: 2, toBed: "step-pots" }],
  },
  {
    line: "moved 5 Little Gem from the Cold Frame into the Long Bed yesterday",
    says: [{ kind: "moved", day: "2026-05-19", variety: "little-gem", count: 5, bed: "cold-frame", toBed: "long-bed" }],
  },
  {
    line: "moved Crown Prince pumpkin from Squash Bed to the corner of Long Bed",
    says: [{ kind: "moved", variety: "crown-prince", bed: "squash-bed", toBed: "long-bed", spot: "the corner" }],
  },
  {
    line: "planted 12 Musselburgh in Long Bed. Best plants yet.",
    says: [{ kind: "planted", variety: "musselburgh", count: 12, bed: "long-bed", detail: "Best plants yet" }],
  },
  {
    line: "planted 12 Musselburgh – 20 cm apart – in Long Bed",
    says: [{ kind: "planted", variety: "musselburgh", count: 12, bed: "long-bed", spacingCm: 20 }],
  },
  {
    line: "sowed Musselburgh leeks, 2 rows; Boltardy beetroot, 1 row in Long Bed",
    says: [
      { kind: "sowed", variety: "musselburgh", bed: "long-bed", detail: "2 rows" },
      { kind: "sowed", variety: "boltardy", bed: "long-bed", detail: "1 row" },
    ],
  },
  {
    line: "sowed 3 rows of Boltardy, 2 rows of Musselburgh in Long Bed",
    says: [
      { kind: "sowed", variety: "boltardy", bed: "long-bed", detail: "3 rows" },
      { kind: "sowed", variety: "musselburgh", bed: "long-bed", detail: "2 rows" },
    ],
  },
  {
    line: "planted 6 Boltardy and 4 Musselburgh under the mesh by the shed in Long Bed, rather late",
    says: [
      {
        kind: "planted",
        variety: "boltardy",
        count: 6,
        bed: "long-bed",
        gear: "mesh-tunnel",
        spot: "by the shed",
        detail: "rather late",
      },
      {
        kind: "planted",
        variety: "musselburgh",
        count: 4,
        bed: "long-bed",
        gear: "mesh-tunnel",
        spot: "by the shed",
        detail: "rather late",
      },
    ],
  },
  {
    line: "sowed 12 Sungold in trays; 8 Crown Prince in pots; 1 tray of Little Gem, all on the mat",
    says: [
      { kind: "sowed", variety: "sungold", count: 12, nursery: true, detail: "in trays" },
      { kind: "sowed", variety: "crown-prince", count: 8, nursery: true, detail: "in pots" },
      { kind: "sowed", variety: "little-gem", nursery: true, detail: "1 tray, all on the mat" },
    ],
  },
  {
    line: "sowed beans: Scarlet Runner (10), Top Crop (20) in Long Bed",
    says: [
      { kind: "sowed", crop: "runner-bean", count: 10, bed: "long-bed" },
      { kind: "sowed", variety: "top-crop", count: 20, bed: "long-bed" },
    ],
  },
  {
    line: "planted Charlotte potatoes x10 in Long Bed and 5 Pink Fir Apple in Cold Frame",
    says: [
      { kind: "planted", variety: "charlotte", count: 10, bed: "long-bed" },
      { kind: "planted", variety: "pink-fir-apple", count: 5, bed: "cold-frame" },
    ],
  },
  {
    line: 'planted 3 "Little Apple" tomatoes in Long Bed',
    says: [{ kind: "planted", variety: "little-apple", count: 3, bed: "long-bed" }],
  },
  {
    line: "planted out toms in Long Bed: Sungold x4, Black Krim x3",
    says: [
      { kind: "planted", variety: "sungold", count: 4, bed: "long-bed" },
      { kind: "planted", variety: "black-krim", count: 3, bed: "long-bed" },
    ],
  },
  {
    line: "sowed chilli Apache 5, pepper Californian Wonder 4 in trays",
    says: [
      { kind: "sowed", variety: "apache", count: 5, nursery: true, detail: "in trays" },
      { kind: "sowed", variety: "californian-wonder", count: 4, nursery: true, detail: "in trays" },
    ],
  },
  {
    line: "Planted out the leeks in Long Bed (24 of them, Musselburgh)",
    says: [{ kind: "planted", variety: "musselburgh", count: 24, bed: "long-bed" }],
  },
  {
    line: "planted 20 sweet potato slips (Beauregard) in Long Bed 12 in apart",
    says: [{ kind: "planted", variety: "beauregard", count: 20, spacingCm: 30.48, bed: "long-bed", detail: "slips" }],
  },
  {
    line: "planted 20 sweet potatoes (North end) in Long Bed",
    says: [{ kind: "planted", crop: "sweet-potato", count: 20, bed: "long-bed", spot: "North end" }],
  },
  {
    line: "planted 12 Musselburgh in Long Bed, row 2; Boltardy looks well",
    says: [
      {
        kind: "planted",
        variety: "musselburgh",
        count: 12,
        bed: "long-bed",
        spot: "row 2",
        detail: "Boltardy looks well",
      },
    ],
  },
  {
    line: "planted out: Sungold x3 (north end), Gardener's Delight x2",
    beds: ["tunnel-north"],
    says: [
      { kind: "planted", variety: "sungold", count: 3, bed: "tunnel-north", spot: "north end" },
      { kind: "planted", variety: "gardeners-delight", count: 2, bed: "tunnel-north" },
    ],
  },
  { line: "transplanted tomatoes to Tunnel North", says: [{ kind: "planted", crop: "tomato", bed: "tunnel-north" }] },
  {
    line: "planted garlic, 40 cloves of Germidour in Long Bed",
    says: [{ kind: "planted", variety: "germidour", count: 40, bed: "long-bed", detail: "cloves" }],
  },
  {
    line: "planted 3 rows of 12 Musselburgh in Long Bed",
    says: [{ kind: "planted", variety: "musselburgh", count: 36, bed: "long-bed" }],
  },
  { line: "moved mint into bigger pot", says: [{ kind: "moved", crop: "mint", detail: "into bigger pot" }] },
  {
    line: "moved trays of Little Gem to Cold Frame",
    says: [{ kind: "moved", variety: "little-gem", toBed: "cold-frame", detail: "trays" }],
  },
  {
    line: "planted 50 tulips Queen of Night in Long Bed",
    says: [{ kind: "planted", variety: "queen-of-night", count: 50, bed: "long-bed" }],
  },
  {
    line: "planted and watered 12 Musselburgh in Long Bed",
    says: [{ kind: "planted", variety: "musselburgh", count: 12, bed: "long-bed", detail: "watered" }],
  },
  {
    line: "planted in Cold Frame 12 Little Gem",
    says: [{ kind: "planted", variety: "little-gem", count: 12, bed: "cold-frame" }],
  },
  {
    line: "planted on 3 May: 12 Musselburgh in Long Bed",
    says: [{ kind: "planted", day: "2026-05-03", variety: "musselburgh", count: 12, bed: "long-bed" }],
  },
  {
    line: "planted yesterday: 12 Musselburgh in Long Bed",
    says: [{ kind: "planted", day: "2026-05-19", variety: "musselburgh", count: 12, bed: "long-bed" }],
  },
  {
    line: "planted out the leeks in Long Bed (24 of them, Boltardy)",
    says: [{ kind: "planted", crop: "leek", count: 24, bed: "long-bed", detail: "Boltardy" }],
  },
  {
    line: "planted out the leeks in Long Bed (24 of them, Musselburgh Improved)",
    says: [{ kind: "planted", crop: "leek", count: 24, bed: "long-bed", detail: "Musselburgh Improved" }],
  },
  {
    line: "planted 6 leeks (Musselburgh) in Long Bed",
    says: [{ kind: "planted", variety: "musselburgh", count: 6, bed: "long-bed" }],
  },
  {
    line: "planted 6 tomatoes (3 Sungold, 3 Gardener's Delight) in Tunnel North",
    says: [
      { kind: "planted", variety: "sungold", count: 3, bed: "tunnel-north" },
      { kind: "planted", variety: "gardeners-delight", count: 3, bed: "tunnel-north" },
    ],
  },
  {
    line: "planted 6 tomatoes: 3 Sungold, 3 Gardener's Delight in Tunnel North",
    says: [
      { kind: "planted", variety: "sungold", count: 3, bed: "tunnel-north" },
      { kind: "planted", variety: "gardeners-delight", count: 3, bed: "tunnel-north" },
    ],
  },
  {
    line: "planted out Musselburgh, all 24, in Long Bed",
    says: [{ kind: "planted", variety: "musselburgh", count: 24, bed: "long-bed" }],
  },
  {
    line: "planted Musselburgh (24) in Long Bed",
    says: [{ kind: "planted", variety: "musselburgh", count: 24, bed: "long-bed" }],
  },
  {
    line: "planted Musselburgh in Long Bed (24)",
    says: [{ kind: "planted", variety: "musselburgh", count: 24, bed: "long-bed" }],
  },
  {
    line: "planted Musselburgh, 24, Long Bed",
    says: [{ kind: "planted", variety: "musselburgh", count: 24, bed: "long-bed" }],
  },
  {
    line: "planted Musselburgh: 24 in Long Bed",
    says: [{ kind: "planted", variety: "musselburgh", count: 24, bed: "long-bed" }],
  },
  {
    line: "planted 24 Musselburgh, Long Bed, 20 cm",
    says: [{ kind: "planted", variety: "musselburgh", count: 24, bed: "long-bed", detail: "20 cm" }],
  },
  {
    line: "planted 2 Black Beauty, one in each corner of Squash Bed",
    says: [{ kind: "planted", variety: "black-beauty", count: 2, bed: "squash-bed", detail: "one in each corner" }],
  },
  {
    line: "planted 1 Crown Prince on the compost heap",
    says: [{ kind: "planted", variety: "crown-prince", count: 1, detail: "on the compost heap" }],
  },
  {
    line: "planted 3 Sungold either side of the door",
    beds: ["tunnel-north"],
    says: [{ kind: "planted", variety: "sungold", count: 3, bed: "tunnel-north", spot: "either side of the door" }],
  },
  {
    line: "planted 12 Little Gem as edging in Long Bed",
    says: [{ kind: "planted", variety: "little-gem", count: 12, bed: "long-bed", detail: "as edging" }],
  },
  {
    line: "planted 12 Little Gem in a block of 3 by 4",
    beds: ["long-bed"],
    says: [{ kind: "planted", variety: "little-gem", count: 12, bed: "long-bed", detail: "in a block of 3 by 4" }],
  },
  {
    line: "planted 12 Little Gem in 2 rows, 25 cm between rows and 20 cm between plants",
    beds: ["long-bed"],
    says: [
      {
        kind: "planted",
        variety: "little-gem",
        count: 12,
        bed: "long-bed",
        spacingCm: 20,
        detail: "in 2 rows, 25 cm between rows",
      },
    ],
  },
  {
    line: "planted 10 Little Gem 8 in apart in Long Bed",
    says: [{ kind: "planted", variety: "little-gem", count: 10, bed: "long-bed", spacingCm: 20.32 }],
  },
  {
    line: "planted 10 Little Gem 8in. apart in Long Bed",
    says: [{ kind: "planted", variety: "little-gem", count: 10, bed: "long-bed", spacingCm: 20.32 }],
  },
  {
    line: "planted 12 Musselburgh in Long Bed; watered in",
    says: [{ kind: "planted", variety: "musselburgh", count: 12, bed: "long-bed", detail: "watered in" }],
  },
  {
    line: "planted 12 Musselburgh in Long Bed (row 2)",
    says: [{ kind: "planted", variety: "musselburgh", count: 12, bed: "long-bed", spot: "row 2" }],
  },
  {
    line: "planted 12 Musselburgh in Long Bed row 2",
    says: [{ kind: "planted", variety: "musselburgh", count: 12, bed: "long-bed", spot: "row 2" }],
  },
  {
    line: "planted 12 Musselburgh, Long Bed row 2",
    says: [{ kind: "planted", variety: "musselburgh", count: 12, bed: "long-bed", spot: "row 2" }],
  },
  {
    line: "planted 12 Musselburgh row 2 Long Bed",
    says: [{ kind: "planted", variety: "musselburgh", count: 12, bed: "long-bed", spot: "row 2" }],
  },
  {
    line: "planted 12 Musselburgh at the back of Long Bed",
    says: [{ kind: "planted", variety: "musselburgh", count: 12, bed: "long-bed", spot: "the back" }],
  },
  {
    line: "planted 12 Musselburgh along the south edge of Long Bed",
    says: [{ kind: "planted", variety: "musselburgh", count: 12, bed: "long-bed", spot: "along the south edge" }],
  },
  {
    line: "planted 12 Musselburgh in the second row of Long Bed",
    says: [{ kind: "planted", variety: "musselburgh", count: 12, bed: "long-bed", spot: "the second row" }],
  },
  {
    line: "planted 12 Musselburgh in front of the beans in Long Bed",
    says: [{ kind: "planted", variety: "musselburgh", count: 12, bed: "long-bed", spot: "in front of the beans" }],
  },
  {
    line: "planted 12 Musselburgh where peas were",
    beds: ["long-bed"],
    says: [{ kind: "planted", variety: "musselburgh", count: 12, bed: "long-bed", detail: "where peas were" }],
  },
  {
    line: "planted 12 Musselburgh after the peas in Long Bed",
    says: [{ kind: "planted", variety: "musselburgh", count: 12, bed: "long-bed", detail: "after the peas" }],
  },
  {
    line: "planted 12 Musselburgh under the plum tree",
    says: [{ kind: "planted", variety: "musselburgh", count: 12, spot: "under the plum tree" }],
  },
  {
    line: "planted 12 Musselburgh under fleece in Long Bed",
    says: [{ kind: "planted", variety: "musselburgh", count: 12, bed: "long-bed", detail: "under fleece" }],
  },
  {
    line: "planted 12 Musselburgh with 6 Little Gem in Long Bed",
    says: [
      { kind: "planted", variety: "musselburgh", count: 12, bed: "long-bed" },
      { kind: "planted", variety: "little-gem", count: 6, bed: "long-bed" },
    ],
  },
  {
    line: "planted the rest of the Musselburgh in Long Bed",
    says: [{ kind: "planted", variety: "musselburgh", bed: "long-bed", detail: "the rest" }],
  },
  {
    line: "planted remaining 9 Musselburgh in Long Bed",
    says: [{ kind: "planted", variety: "musselburgh", count: 9, bed: "long-bed", detail: "remaining" }],
  },
  {
    line: "planted all the Musselburgh in Long Bed",
    says: [{ kind: "planted", variety: "musselburgh", bed: "long-bed" }],
  },
  {
    line: "planted some Musselburgh in Long Bed",
    says: [{ kind: "planted", variety: "musselburgh", bed: "long-bed" }],
  },
  {
    line: "planted sweet peas at the foot of the arch in Long Bed",
    says: [{ kind: "planted", crop: "sweet-pea", bed: "long-bed", detail: "at the foot of the arch" }],
  },
  {
    line: "planted up Herb Trough with thyme, sage and 2 rosemary",
    says: [
      { kind: "planted", crop: "thyme", bed: "herb-trough" },
      { kind: "planted", crop: "sage", bed: "herb-trough" },
      { kind: "planted", crop: "rosemary", count: 2, bed: "herb-trough" },
    ],
  },
  {
    line: "planted Herb Trough: thyme, sage, rosemary",
    says: [
      { kind: "planted", crop: "thyme", bed: "herb-trough" },
      { kind: "planted", crop: "sage", bed: "herb-trough" },
      { kind: "planted", crop: "rosemary", bed: "herb-trough" },
    ],
  },
  {
    line: "planted thyme and sage in Herb Trough, one at each end",
    says: [
      { kind: "planted", crop: "thyme", bed: "herb-trough", detail: "one at each end" },
      { kind: "planted", crop: "sage", bed: "herb-trough", detail: "one at each end" },
    ],
  },
  {
    line: "planted strawberry runners in Step Pots, 5 of them",
    says: [{ kind: "planted", crop: "strawberry", count: 5, bed: "step-pots", detail: "runners" }],
  },
  {
    line: "planted 3 blueberries in ericaceous compost in Step Pots",
    says: [{ kind: "planted", crop: "blueberry", count: 3, bed: "step-pots", detail: "in ericaceous compost" }],
  },
  {
    line: "planted dahlia tubers: 3 Café au Lait, 2 Bishop of Llandaff in Long Bed",
    says: [
      { kind: "planted", variety: "cafe-au-lait", count: 3, bed: "long-bed", detail: "tubers" },
      { kind: "planted", variety: "bishop-of-llandaff", count: 2, bed: "long-bed", detail: "tubers" },
    ],
  },
  { line: "planted out dahlias", says: [{ kind: "planted", crop: "dahlia" }] },
  {
    line: "planted seed potatoes, Charlotte, 10 tubers in Long Bed",
    says: [{ kind: "planted", variety: "charlotte", count: 10, bed: "long-bed", detail: "tubers" }],
  },
  {
    line: "planted garlic cloves 6 inches apart in Long Bed",
    says: [{ kind: "planted", crop: "garlic", bed: "long-bed", spacingCm: 15.24, detail: "cloves" }],
  },
  {
    line: "planted onion sets",
    beds: ["long-bed"],
    says: [{ kind: "planted", crop: "onion", bed: "long-bed", detail: "sets" }],
  },
  {
    line: "planted apple tree in Long Bed",
    says: [{ kind: "planted", crop: "apple", bed: "long-bed", detail: "tree" }],
  },
  {
    line: "planted a Victoria plum against the wall",
    beds: ["long-bed"],
    says: [{ kind: "planted", variety: "victoria", count: 1, bed: "long-bed", spot: "against the wall" }],
  },
  {
    line: "transplanted Little Gem from Cold Frame to Long Bed",
    says: [{ kind: "moved", variety: "little-gem", bed: "cold-frame", toBed: "long-bed" }],
  },
  {
    line: "transplanted 12 Little Gem from the cold frame into Long Bed",
    says: [{ kind: "moved", variety: "little-gem", count: 12, bed: "cold-frame", toBed: "long-bed" }],
  },
  {
    line: "replanted 3 Musselburgh that had been pulled up by birds",
    beds: ["long-bed"],
    says: [
      {
        kind: "planted",
        variety: "musselburgh",
        count: 3,
        bed: "long-bed",
        detail: "that had been pulled up by birds",
      },
    ],
  },
  { line: "moved 3 Black Beauty", says: [{ kind: "moved", variety: "black-beauty", count: 3 }] },
  { line: "moved pots of Sungold outside", says: [{ kind: "moved", variety: "sungold", detail: "pots, outside" }] },
  {
    line: "planted 3 Black Beauty from seed sown in March in Cold Frame",
    says: [
      { kind: "planted", variety: "black-beauty", count: 3, bed: "cold-frame", detail: "from seed sown in March" },
    ],
  },
  {
    line: "planted 6 Little Gem in Long Bed, Monday's batch",
    says: [{ kind: "planted", variety: "little-gem", count: 6, bed: "long-bed", detail: "Monday's batch" }],
  },
  {
    line: "planted 6 Little Gem (Wilma's) in Long Bed",
    says: [{ kind: "planted", variety: "little-gem", count: 6, bed: "long-bed", detail: "(Wilma's)" }],
  },
  {
    line: "planted 2 of Wilma's Red in Long Bed",
    says: [{ kind: "planted", variety: "wilmas-red", count: 2, bed: "long-bed" }],
  },
  { line: "planted 2 Wilma's Red", says: [{ kind: "planted", variety: "wilmas-red", count: 2 }] },
];

/** Thinning, flowering, fruiting, measuring, testing soil. */
export const growing: readonly Case[] = [
  { line: "first flower: Black Beauty", says: [{ kind: "flowered", variety: "black-beauty" }] },
  { line: "measured Crown Prince 42 cm tall", says: [{ kind: "measured", variety: "crown-prince", heightCm: 42 }] },
  { line: "thinned Boltardy to 20", says: [{ kind: "thinned", variety: "boltardy", count: 20 }] },
  {
    line: "thinned Boltardy to 5 cm apart in Long Bed",
    says: [{ kind: "thinned", variety: "boltardy", bed: "long-bed", spacingCm: 5 }],
  },
  { line: "measured Black Beauty 3 ft 2 in", says: [{ kind: "measured", variety: "black-beauty", heightCm: 96.52 }] },
  { line: "soil temperature 12 °C in Long Bed", says: [{ kind: "measured", celsius: 12, bed: "long-bed" }] },
  { line: "soil test Long Bed pH 6.4", says: [{ kind: "soil test", ph: 6.4, bed: "long-bed" }] },
  { line: "soil pH 6.4 in Long Bed", says: [{ kind: "soil test", ph: 6.4, bed: "long-bed" }] },
  {
    line: "thinned Boltardy to 10 cm",
    beds: ["long-bed"],
    says: [{ kind: "thinned", variety: "boltardy", bed: "long-bed", spacingCm: 10 }],
  },
  {
    line: "thinned the Boltardy in Long Bed to 4 in apart",
    says: [{ kind: "thinned", variety: "boltardy", bed: "long-bed", spacingCm: 10.16 }],
  },
  { line: "thinned carrots to 2 inches", says: [{ kind: "thinned", crop: "carrot", spacingCm: 5.08 }] },
  {
    line: "first flower: Crown Prince, a male one",
    says: [{ kind: "flowered", variety: "crown-prince", detail: "a male one" }],
  },
  { line: "first flowers on Black Beauty", says: [{ kind: "flowered", variety: "black-beauty" }] },
  {
    line: "first female flower: Crown Prince in Squash Bed",
    says: [{ kind: "flowered", variety: "crown-prince", bed: "squash-bed" }],
  },
  {
    line: "in flower: Café au Lait, Aquadulce",
    says: [
      { kind: "flowered", variety: "cafe-au-lait" },
      { kind: "flowered", variety: "aquadulce-claudia" },
    ],
  },
  {
    line: "flowering: all the sweet peas in Long Bed",
    says: [{ kind: "flowered", crop: "sweet-pea", bed: "long-bed" }],
  },
  { line: "first fruit set on Sungold", says: [{ kind: "fruited", variety: "sungold" }] },
  { line: "set fruit: Black Beauty, 3 of them", says: [{ kind: "fruited", variety: "black-beauty", count: 3 }] },
  { line: "measured Crown Prince 2.1 m long", says: [{ kind: "measured", variety: "crown-prince", heightCm: 210 }] },
  {
    line: "measured Crown Prince: 180 cm across",
    says: [{ kind: "measured", variety: "crown-prince", detail: "180 cm across" }],
  },
  {
    line: "measured Sungold 6 ft 2 in tall in Tunnel North",
    says: [{ kind: "measured", variety: "sungold", heightCm: 187.96, bed: "tunnel-north" }],
  },
  { line: "measured Sungold 5'4\"", says: [{ kind: "measured", variety: "sungold", heightCm: 162.56 }] },
  {
    line: "measured Musselburgh 30cm, Little Gem 12 cm",
    beds: ["long-bed"],
    says: [
      { kind: "measured", variety: "musselburgh", heightCm: 30, bed: "long-bed" },
      { kind: "measured", variety: "little-gem", heightCm: 12, bed: "long-bed" },
    ],
  },
  {
    line: "measured soil 12 °C in Long Bed",
    says: [{ kind: "measured", celsius: 12, bed: "long-bed", detail: "soil" }],
  },
  {
    line: "measured the biggest Crown Prince 4.2 kg",
    says: [{ kind: "measured", variety: "crown-prince", grams: 4200, detail: "the biggest" }],
  },
  { line: "soil temp 54 °F", beds: ["long-bed"], says: [{ kind: "measured", celsius: 12.222222, bed: "long-bed" }] },
  { line: "soil test: pH 6.4", beds: ["long-bed"], says: [{ kind: "soil test", ph: 6.4, bed: "long-bed" }] },
  {
    line: "pH 6.8 in Brassica Bed, limed in winter",
    says: [{ kind: "soil test", ph: 6.8, bed: "brassica-bed", detail: "limed in winter" }],
  },
  { line: "tested soil in Long Bed: 6.4", says: [{ kind: "soil test", ph: 6.4, bed: "long-bed" }] },
  {
    line: "soil test Long Bed: pH 6.4, low in potash",
    says: [{ kind: "soil test", ph: 6.4, bed: "long-bed", detail: "low in potash" }],
  },
  {
    line: "measured Crown Prince vine 4.2 m",
    says: [{ kind: "measured", variety: "crown-prince", heightCm: 420, detail: "vine" }],
  },
  {
    line: "measured tallest sunflower: 7 ft 3 in",
    says: [{ kind: "measured", crop: "sunflower", heightCm: 220.98, detail: "tallest" }],
  },
  {
    line: "measured Musselburgh at 2.5 cm across",
    says: [{ kind: "measured", variety: "musselburgh", detail: "at 2.5 cm across" }],
  },
  { line: "height: Sungold 1.9 m", says: [{ kind: "measured", variety: "sungold", heightCm: 190 }] },
  {
    line: "measured Aquadulce 30-35 cm tall",
    says: [{ kind: "measured", variety: "aquadulce-claudia", heightCm: 30, detail: "30-35 cm tall" }],
  },
  { line: "measured compost 62 °C", says: [{ kind: "measured", celsius: 62, detail: "compost" }] },
  { line: "thinned Boltardy, 20 left", says: [{ kind: "thinned", variety: "boltardy", count: 20 }] },
  { line: "thinned beetroot to one every 10 cm", says: [{ kind: "thinned", crop: "beetroot", spacingCm: 10 }] },
  { line: "thinned apples", says: [{ kind: "thinned", crop: "apple" }] },
  {
    line: "first flower: Sungold in Tunnel North on Monday",
    says: [{ kind: "flowered", day: "2026-05-18", variety: "sungold", bed: "tunnel-north" }],
  },
  { line: "first flower on the sweet peas!", says: [{ kind: "flowered", crop: "sweet-pea" }] },
  {
    line: "in bloom: roses, Café au Lait",
    says: [
      { kind: "flowered", crop: "rose" },
      { kind: "flowered", variety: "cafe-au-lait" },
    ],
  },
  { line: "set fruit: Sungold, first truss", says: [{ kind: "fruited", variety: "sungold", detail: "first truss" }] },
  { line: "soil test: 6.4", beds: ["long-bed"], says: [{ kind: "soil test", ph: 6.4, bed: "long-bed" }] },
  { line: "weighed the pumpkin", says: [{ kind: "measured", crop: "pumpkin" }] },
  {
    line: "thinned and weeded Boltardy in Long Bed",
    says: [{ kind: "thinned", variety: "boltardy", bed: "long-bed", detail: "weeded" }],
  },
  { line: "thinned the carrots again", says: [{ kind: "thinned", crop: "carrot", detail: "again" }] },
  {
    line: "thinned Boltardy from 40 to 20",
    says: [{ kind: "thinned", variety: "boltardy", count: 20, detail: "from 40" }],
  },
  { line: "first ripe Sungold", says: [{ kind: "fruited", variety: "sungold" }] },
  {
    line: "first flowers: Sungold, Black Beauty, Crown Prince",
    says: [
      { kind: "flowered", variety: "sungold" },
      { kind: "flowered", variety: "black-beauty" },
      { kind: "flowered", variety: "crown-prince" },
    ],
  },
  { line: "flowering: everything in Long Bed", says: [{ kind: "flowered", bed: "long-bed", detail: "everything" }] },
  { line: "measured Crown Prince", says: [{ kind: "measured", variety: "crown-prince" }] },
  {
    line: "measured Sungold at 1.8 m, still growing",
    says: [{ kind: "measured", variety: "sungold", heightCm: 180, detail: "still growing" }],
  },
  { line: "measured Sungold 6 feet", says: [{ kind: "measured", variety: "sungold", heightCm: 182.88 }] },
  {
    line: "measured the tallest Sungold: 2.1 m",
    says: [{ kind: "measured", variety: "sungold", heightCm: 210, detail: "the tallest" }],
  },
  { line: "soil test Long Bed", says: [{ kind: "soil test", bed: "long-bed" }] },
  {
    line: "soil test Long Bed 6.4, Cold Frame 7.0",
    says: [
      { kind: "soil test", ph: 6.4, bed: "long-bed" },
      { kind: "soil test", ph: 7, bed: "cold-frame" },
    ],
  },
  { line: "soil: pH 6.4", says: [{ kind: "soil test", ph: 6.4 }] },
  { line: "soil temperature 8 degrees in Long Bed", says: [{ kind: "measured", celsius: 8, bed: "long-bed" }] },
  {
    line: "measured Crown Prince again: 3.4 m",
    says: [{ kind: "measured", variety: "crown-prince", heightCm: 340, detail: "again" }],
  },
  {
    line: "measured Crown Prince 3.4 m, up from 2.1 m",
    says: [{ kind: "measured", variety: "crown-prince", heightCm: 340, detail: "up from 2.1 m" }],
  },
  {
    line: "measured Crown Prince fruit 24 cm across, 3.1 kg",
    says: [{ kind: "measured", variety: "crown-prince", grams: 3100, detail: "fruit 24 cm across" }],
  },
  {
    line: "measured 3 Musselburgh, 22-28 mm thick",
    says: [{ kind: "measured", variety: "musselburgh", count: 3, detail: "22-28 mm thick" }],
  },
  { line: "measured leeks: 2.5 cm", says: [{ kind: "measured", crop: "leek", heightCm: 2.5 }] },
  {
    line: "first flower: Crown Prince 3 days early",
    says: [{ kind: "flowered", variety: "crown-prince", detail: "3 days early" }],
  },
  {
    line: "first flower - Crown Prince, Uchiki Kuri",
    says: [
      { kind: "flowered", variety: "crown-prince" },
      { kind: "flowered", variety: "uchiki-kuri" },
    ],
  },
  {
    line: "first pod: Aquadulce in Long Bed",
    says: [{ kind: "fruited", variety: "aquadulce-claudia", bed: "long-bed" }],
  },
  {
    line: "set fruit: Crown Prince (2), Uchiki Kuri (4)",
    says: [
      { kind: "fruited", variety: "crown-prince", count: 2 },
      { kind: "fruited", variety: "uchiki-kuri", count: 4 },
    ],
  },
];

/** Picking, cutting, digging, saving seed. */
export const picking: readonly Case[] = [
  {
    line: "picked 1st courgettes (2)",
    says: [{ kind: "picked", crop: "courgette", count: 2, unit: "fruit", detail: "1st" }],
  },
  {
    line: "picked 3 lb from the Black Beauty, Tom helped",
    says: [{ kind: "picked", variety: "black-beauty", grams: 1360.77711, detail: "Tom helped" }],
  },
  { line: "picked a mess of okra", says: [{ kind: "picked", crop: "okra", detail: "a mess" }] },
  { line: "picked 200 g strawbs", says: [{ kind: "picked", crop: "strawberry", grams: 200 }] },
  {
    line: "picked 1.4 kg Black Beauty from Cold Frame",
    says: [{ kind: "picked", variety: "black-beauty", grams: 1400, bed: "cold-frame" }],
  },
  { line: "cut 12 stems Café au Lait", says: [{ kind: "picked", variety: "cafe-au-lait", count: 12, unit: "stem" }] },
  {
    line: "harvested 3 bunches of Boltardy and 2 heads of Little Gem from Long Bed",
    says: [
      { kind: "picked", variety: "boltardy", count: 3, unit: "bunch", bed: "long-bed" },
      { kind: "picked", variety: "little-gem", count: 2, unit: "head", bed: "long-bed" },
    ],
  },
  { line: "dug 2 lb 3 oz Charlotte potatoes", says: [{ kind: "picked", variety: "charlotte", grams: 992.233309 }] },
  {
    line: "picked 3 Crown Prince, 8.4 kg",
    says: [{ kind: "picked", variety: "crown-prince", count: 3, unit: "fruit", grams: 8400 }],
  },
  { line: "saved seed: Black Beauty, 30 g", says: [{ kind: "saved seed", variety: "black-beauty", grams: 30 }] },
  {
    line: "picked ½ lb of Sungold and 1 1/2 lb Gardener's Delight",
    says: [
      { kind: "picked", variety: "sungold", grams: 226.796185 },
      { kind: "picked", variety: "gardeners-delight", grams: 680.388555 },
    ],
  },
  { line: "picked 1.4kg Black Beauty", says: [{ kind: "picked", variety: "black-beauty", grams: 1400 }] },
  { line: "picked 1,4 kg Black Beauty", says: [{ kind: "picked", variety: "black-beauty", grams: 1400 }] },
  {
    line: "picked 500g of Sungold and 2 cucumbers from Tunnel North",
    says: [
      { kind: "picked", variety: "sungold", grams: 500, bed: "tunnel-north" },
      { kind: "picked", crop: "cucumber", count: 2, unit: "fruit", bed: "tunnel-north" },
    ],
  },
  { line: "picked 12 Sungold", says: [{ kind: "picked", variety: "sungold", count: 12, unit: "fruit" }] },
  {
    line: "picked 3 Crown Prince (8.4 kg) from Squash Bed",
    says: [{ kind: "picked", variety: "crown-prince", count: 3, unit: "fruit", grams: 8400, bed: "squash-bed" }],
  },
  {
    line: "picked a crate of Crown Prince",
    says: [{ kind: "picked", variety: "crown-prince", count: 1, unit: "crate" }],
  },
  {
    line: "picked a dozen stems of Café au Lait",
    says: [{ kind: "picked", variety: "cafe-au-lait", count: 12, unit: "stem" }],
  },
  { line: "picked a few Sungold", says: [{ kind: "picked", variety: "sungold", detail: "a few" }] },
  { line: "picked a handful of Sungold", says: [{ kind: "picked", variety: "sungold", count: 1, unit: "handful" }] },
  { line: "picked a trug of Black Beauty", says: [{ kind: "picked", variety: "black-beauty", detail: "a trug" }] },
  {
    line: "picked about 2 lb of Sungold",
    says: [{ kind: "picked", variety: "sungold", grams: 907.18474, detail: "about 2 lb" }],
  },
  { line: "picked 2-3 lb Sungold", says: [{ kind: "picked", variety: "sungold", grams: 907.18474, detail: "2-3 lb" }] },
  { line: "picked 2 pints of blueberries", says: [{ kind: "picked", crop: "blueberry", litres: 1.136523 }] },
  { line: "picked 3 punnets strawberries", says: [{ kind: "picked", crop: "strawberry", count: 3, unit: "punnet" }] },
  {
    line: "picked the last of the Aquadulce, 2.3 kg",
    says: [{ kind: "picked", variety: "aquadulce-claudia", grams: 2300 }],
  },
  { line: "picked first Sungold!", says: [{ kind: "picked", variety: "sungold", detail: "first" }] },
  {
    line: "picked Black Beauty 3, Sungold 12",
    says: [
      { kind: "picked", variety: "black-beauty", count: 3, unit: "fruit" },
      { kind: "picked", variety: "sungold", count: 12, unit: "fruit" },
    ],
  },
  {
    line: "picked: Sungold 300 g, Gardener's Delight 450 g",
    says: [
      { kind: "picked", variety: "sungold", grams: 300 },
      { kind: "picked", variety: "gardeners-delight", grams: 450 },
    ],
  },
  { line: "picked 6 ears of sweetcorn", says: [{ kind: "picked", crop: "sweetcorn", count: 6, unit: "ear" }] },
  { line: "picked 2 lettuces", says: [{ kind: "picked", crop: "lettuce", count: 2, unit: "head" }] },
  {
    line: "picked 1 lb 4 oz of Gardener's Delight today",
    says: [{ kind: "picked", variety: "gardeners-delight", grams: 566.990463 }],
  },
  { line: "harvested 14 oz. Sungold", says: [{ kind: "picked", variety: "sungold", grams: 396.893324 }] },
  {
    line: "cut 3 bunches of Café au Lait for the house",
    says: [{ kind: "picked", variety: "cafe-au-lait", count: 3, unit: "bunch", detail: "for the house" }],
  },
  { line: "cut 10 sweet peas", says: [{ kind: "picked", crop: "sweet-pea", count: 10, unit: "stem" }] },
  { line: "cut two Little Gem", says: [{ kind: "picked", variety: "little-gem", count: 2, unit: "head" }] },
  {
    line: "dug 3.2 kg Charlotte from Long Bed, some slug damage",
    says: [{ kind: "picked", variety: "charlotte", grams: 3200, bed: "long-bed", detail: "some slug damage" }],
  },
  { line: "lifted 30 Musselburgh", says: [{ kind: "picked", variety: "musselburgh", count: 30, unit: "piece" }] },
  {
    line: "lifted 42 onions, about 5 kg",
    says: [{ kind: "picked", crop: "onion", count: 42, unit: "bulb", grams: 5000, detail: "about 5 kg" }],
  },
  { line: "pulled 3 bunches Boltardy", says: [{ kind: "picked", variety: "boltardy", count: 3, unit: "bunch" }] },
  {
    line: "saved seed: Aquadulce, 200 seeds",
    says: [{ kind: "saved seed", variety: "aquadulce-claudia", count: 200 }],
  },
  {
    line: "saved seed from Gardener's Delight, 5 fruits",
    says: [{ kind: "saved seed", variety: "gardeners-delight", count: 5, unit: "fruit" }],
  },
  { line: "saved 30 g Black Beauty", says: [{ kind: "saved seed", variety: "black-beauty", grams: 30 }] },
  { line: "saved seeds of Uchiki Kuri", says: [{ kind: "saved seed", variety: "uchiki-kuri" }] },
  {
    line: "pulled 12 Boltardy from Long Bed",
    says: [{ kind: "picked", variety: "boltardy", count: 12, unit: "root", bed: "long-bed" }],
  },
  {
    line: "picked first courgette, Black Beauty, 180 g",
    says: [{ kind: "picked", variety: "black-beauty", grams: 180, detail: "first" }],
  },
  {
    line: "picked 5 Black Beauty, 1.2 kg in all, from Squash Bed",
    says: [{ kind: "picked", variety: "black-beauty", count: 5, unit: "fruit", grams: 1200, bed: "squash-bed" }],
  },
  { line: "picked 2 quarts strawberries", says: [{ kind: "picked", crop: "strawberry", litres: 2.273045 }] },
  { line: "picked 1 bushel apples", says: [{ kind: "picked", crop: "apple", litres: 35.23907 }] },
  { line: "picked 3/4 lb of Sungold", says: [{ kind: "picked", variety: "sungold", grams: 340.194278 }] },
  { line: "picked 1½ lb Sungold", says: [{ kind: "picked", variety: "sungold", grams: 680.388555 }] },
  { line: "picked 1.5 lbs. Sungold", says: [{ kind: "picked", variety: "sungold", grams: 680.388555 }] },
  {
    line: "picked 12 oz Sungold, 8 oz Gardener's Delight and a cucumber",
    says: [
      { kind: "picked", variety: "sungold", grams: 340.194278 },
      { kind: "picked", variety: "gardeners-delight", grams: 226.796185 },
      { kind: "picked", crop: "cucumber", count: 1, unit: "fruit" },
    ],
  },
  {
    line: "picked 20 stems each of Café au Lait and sweet peas",
    says: [
      { kind: "picked", variety: "cafe-au-lait", count: 20, unit: "stem" },
      { kind: "picked", crop: "sweet-pea", count: 20, unit: "stem" },
    ],
  },
  { line: "picked 12 cobs of sweetcorn", says: [{ kind: "picked", crop: "sweetcorn", count: 12, unit: "ear" }] },
  { line: "picked 250 g", beds: ["long-bed"], says: [{ kind: "picked", grams: 250, bed: "long-bed" }] },
  { line: "picked peas", says: [{ kind: "picked", crop: "pea" }] },
  {
    line: "picked one last courgette",
    says: [{ kind: "picked", crop: "courgette", count: 1, unit: "fruit", detail: "last" }],
  },
  {
    line: "picked Aquadulce: 1.2 kg podded",
    says: [{ kind: "picked", variety: "aquadulce-claudia", grams: 1200, detail: "podded" }],
  },
  {
    line: "picked 3 kg apples (windfalls) from the neighbour's tree",
    says: [{ kind: "picked", crop: "apple", grams: 3000, detail: "(windfalls) from the neighbour's tree" }],
  },
  {
    line: "harvested garlic, 34 bulbs, 1.5 kg",
    beds: ["long-bed"],
    says: [{ kind: "picked", crop: "garlic", count: 34, unit: "bulb", grams: 1500, bed: "long-bed" }],
  },
  { line: "harvested all the onions from Long Bed", says: [{ kind: "picked", crop: "onion", bed: "long-bed" }] },
  {
    line: "dug the first Charlotte, 1.1 kg from two plants",
    says: [{ kind: "picked", variety: "charlotte", grams: 1100, detail: "the first, from two plants" }],
  },
  { line: "dug up 3 Musselburgh", says: [{ kind: "picked", variety: "musselburgh", count: 3, unit: "piece" }] },
  {
    line: "cut 1 Crown Prince, 4.1 kg",
    says: [{ kind: "picked", variety: "crown-prince", count: 1, unit: "fruit", grams: 4100 }],
  },
  { line: "cut 2 hearts of Little Gem", says: [{ kind: "picked", variety: "little-gem", count: 2, unit: "head" }] },
  {
    line: "cut 15 cm stems of Café au Lait, 20 of them",
    says: [{ kind: "picked", variety: "cafe-au-lait", count: 20, unit: "stem", detail: "15 cm stems" }],
  },
  {
    line: "gathered 40 pods of Aquadulce",
    says: [{ kind: "picked", variety: "aquadulce-claudia", count: 40, unit: "pod" }],
  },
  { line: "saved seed: 30 g Aquadulce", says: [{ kind: "saved seed", variety: "aquadulce-claudia", grams: 30 }] },
  {
    line: "saved seed from 3 Gardener's Delight",
    says: [{ kind: "saved seed", variety: "gardeners-delight", count: 3 }],
  },
  { line: "collected seed of sweet pea", says: [{ kind: "saved seed", crop: "sweet-pea" }] },
  {
    line: "picked courgettes (3), beans (500 g) and lettuce",
    says: [
      { kind: "picked", crop: "courgette", count: 3, unit: "fruit" },
      { kind: "picked", crop: "bean", grams: 500 },
      { kind: "picked", crop: "lettuce" },
    ],
  },
  {
    line: "picked: 3 courgettes; 500 g beans; 1 lettuce",
    says: [
      { kind: "picked", crop: "courgette", count: 3, unit: "fruit" },
      { kind: "picked", crop: "bean", grams: 500 },
      { kind: "picked", crop: "lettuce", count: 1, unit: "head" },
    ],
  },
  {
    line: "picked beans: 500 g, courgettes: 3",
    says: [
      { kind: "picked", crop: "bean", grams: 500 },
      { kind: "picked", crop: "courgette", count: 3, unit: "fruit" },
    ],
  },
  { line: "picked 1 qt. blueberries", says: [{ kind: "picked", crop: "blueberry", litres: 1.136523 }] },
  {
    line: "picked 1 pt raspberries and 2 cups of currants",
    says: [{ kind: "picked", crop: "raspberry", litres: 0.568261, detail: "2 cups of currants" }],
  },
  { line: "cut sweet peas, 3 bunches", says: [{ kind: "picked", crop: "sweet-pea", count: 3, unit: "bunch" }] },
  { line: "picked the first 6 Sungold", says: [{ kind: "picked", variety: "sungold", count: 6, unit: "fruit" }] },
  { line: "picked and froze 1 kg peas", says: [{ kind: "picked", crop: "pea", grams: 1000, detail: "froze" }] },
  { line: "picked today 1 kg Sungold", says: [{ kind: "picked", variety: "sungold", grams: 1000 }] },
  {
    line: "picked 1 kg Sungold this morning from Tunnel North",
    says: [{ kind: "picked", variety: "sungold", grams: 1000, bed: "tunnel-north" }],
  },
  {
    line: "picked 1 kg Sungold yesterday in the rain",
    says: [{ kind: "picked", day: "2026-05-19", variety: "sungold", grams: 1000, detail: "in the rain" }],
  },
  {
    line: "picked 4 lettuces: 2 Little Gem, 2 Lollo Rossa",
    says: [
      { kind: "picked", variety: "little-gem", count: 2, unit: "head" },
      { kind: "picked", variety: "lollo-rossa", count: 2, unit: "head" },
    ],
  },
  { line: "harvested 2.5kg potatoes - Charlotte", says: [{ kind: "picked", variety: "charlotte", grams: 2500 }] },
  {
    line: "harvested Charlotte potatoes from 4 plants: 3.2 kg",
    says: [{ kind: "picked", variety: "charlotte", grams: 3200, detail: "from 4 plants" }],
  },
  {
    line: "harvested 1 pumpkin 8 lb 4 oz",
    says: [{ kind: "picked", crop: "pumpkin", count: 1, unit: "fruit", grams: 3742.137053 }],
  },
  {
    line: "picked tomatoes 2.1 kg, cucumbers 3, beans 800 g",
    says: [
      { kind: "picked", crop: "tomato", grams: 2100 },
      { kind: "picked", crop: "cucumber", count: 3, unit: "fruit" },
      { kind: "picked", crop: "bean", grams: 800 },
    ],
  },
  { line: "picked 700 g of mixed tomatoes", says: [{ kind: "picked", crop: "tomato", grams: 700, detail: "mixed" }] },
  {
    line: "picked a few raspberries, ate them all",
    says: [{ kind: "picked", crop: "raspberry", detail: "a few, ate them all" }],
  },
  { line: "cut 1 cabbage", says: [{ kind: "picked", crop: "cabbage", count: 1, unit: "head" }] },
  { line: "cut lettuce", says: [{ kind: "picked", crop: "lettuce" }] },
  { line: "cut chard, two handfuls", says: [{ kind: "picked", crop: "chard", count: 2, unit: "handful" }] },
  { line: "cut asparagus 12 spears", says: [{ kind: "picked", crop: "asparagus", count: 12, unit: "stem" }] },
  { line: "dug potatoes", says: [{ kind: "picked", crop: "potato" }] },
  {
    line: "dug 1 row of Charlotte, 6.3 kg",
    says: [{ kind: "picked", variety: "charlotte", grams: 6300, detail: "1 row" }],
  },
  {
    line: "lifted garlic and hung it in the shed",
    says: [{ kind: "picked", crop: "garlic", detail: "hung it in the shed" }],
  },
  { line: "picked rhubarb 1.2 kg", says: [{ kind: "picked", crop: "rhubarb", grams: 1200 }] },
  { line: "picked 12 sticks rhubarb", says: [{ kind: "picked", crop: "rhubarb", count: 12, unit: "stem" }] },
  { line: "pulled 1 kg rhubarb", says: [{ kind: "picked", crop: "rhubarb", grams: 1000 }] },
  { line: "pulled rhubarb", says: [{ kind: "picked", crop: "rhubarb" }] },
  { line: "pulled carrots", says: [{ kind: "picked", crop: "carrot" }] },
  { line: "cut a bunch of mint", says: [{ kind: "picked", crop: "mint", count: 1, unit: "bunch" }] },
  { line: "cut basil tops", says: [{ kind: "picked", crop: "basil", detail: "tops" }] },
  {
    line: "cut flowers: 10 Café au Lait, 12 sweet peas",
    says: [
      { kind: "picked", variety: "cafe-au-lait", count: 10, unit: "stem", detail: "flowers" },
      { kind: "picked", crop: "sweet-pea", count: 12, unit: "stem", detail: "flowers" },
    ],
  },
  {
    line: "picked over the raspberries, 300 g",
    says: [{ kind: "picked", crop: "raspberry", grams: 300, detail: "over" }],
  },
  {
    line: "saved seed from the best Crown Prince",
    says: [{ kind: "saved seed", variety: "crown-prince", detail: "the best" }],
  },
  { line: "saved seed: Aquadulce", says: [{ kind: "saved seed", variety: "aquadulce-claudia" }] },
  { line: "saved seed 20 g", says: [{ kind: "saved seed", grams: 20 }] },
  {
    line: "picked 2 kg Black Beauty with Tom",
    says: [{ kind: "picked", variety: "black-beauty", grams: 2000, detail: "with Tom" }],
  },
  {
    line: "picked 2 kg Black Beauty for Mum's birthday",
    says: [{ kind: "picked", variety: "black-beauty", grams: 2000, detail: "for Mum's birthday" }],
  },
  {
    line: "picked 12 Café au Lait, Mum's birthday",
    says: [{ kind: "picked", variety: "cafe-au-lait", count: 12, unit: "stem", detail: "Mum's birthday" }],
  },
  {
    line: "picked 1.2 kg Sungold, total 8.4 kg",
    says: [{ kind: "picked", variety: "sungold", grams: 1200, detail: "total 8.4 kg" }],
  },
  {
    line: "picked 1.2 kg Sungold (8.4 kg so far)",
    says: [{ kind: "picked", variety: "sungold", grams: 1200, detail: "(8.4 kg so far)" }],
  },
  {
    line: "picked 300 g Sungold and the first 2 Black Beauty",
    says: [
      { kind: "picked", variety: "sungold", grams: 300 },
      { kind: "picked", variety: "black-beauty", count: 2, unit: "fruit", detail: "the first" },
    ],
  },
  {
    line: "picked Sungold, Black Beauty and 2 Little Gem",
    says: [
      { kind: "picked", variety: "sungold" },
      { kind: "picked", variety: "black-beauty" },
      { kind: "picked", variety: "little-gem", count: 2, unit: "head" },
    ],
  },
  {
    line: "picked beans daily, about 200 g",
    says: [{ kind: "picked", crop: "bean", grams: 200, detail: "daily, about 200 g" }],
  },
  {
    line: "picked: beans 1 kg, froze half",
    says: [{ kind: "picked", crop: "bean", grams: 1000, detail: "froze half" }],
  },
  {
    line: "picked 6 courgettes, far too many",
    says: [{ kind: "picked", crop: "courgette", count: 6, unit: "fruit", detail: "far too many" }],
  },
  {
    line: "picked 6 courgettes, 2 of them marrows",
    says: [{ kind: "picked", crop: "courgette", count: 6, unit: "fruit", detail: "2 of them marrows" }],
  },
  {
    line: "cut 8 Café au Lait and 4 stems of greenery",
    says: [{ kind: "picked", variety: "cafe-au-lait", count: 8, unit: "stem", detail: "4 stems of greenery" }],
  },
  { line: "cut 2 buckets of dahlias", says: [{ kind: "picked", crop: "dahlia", detail: "2 buckets" }] },
];

/** Troubles, losses, giving away, clearing. */
export const losing: readonly Case[] = [
  {
    line: "trouble: blackfly on Aquadulce, growing tips",
    says: [{ kind: "trouble", variety: "aquadulce-claudia", cause: "blackfly", detail: "growing tips" }],
  },
  {
    line: "lost 3 Sungold, damped off",
    says: [{ kind: "lost", variety: "sungold", count: 3, cause: "damping off" }],
  },
  {
    line: "lost 3 Musselburgh leek to leek moth",
    says: [{ kind: "lost", variety: "musselburgh", count: 3, cause: "leek moth" }],
  },
  {
    line: "cleared Aquadulce from Long Bed",
    says: [{ kind: "cleared", variety: "aquadulce-claudia", bed: "long-bed" }],
  },
  { line: "over: slugs in Long Bed", says: [{ kind: "cured", bed: "long-bed", cause: "slugs" }] },
  {
    line: "gave away 4 Musselburgh leek to the school",
    says: [{ kind: "gave away", variety: "musselburgh", count: 4, detail: "to the school" }],
  },
  {
    line: "died: 2 Black Beauty in Cold Frame, frost",
    says: [{ kind: "lost", variety: "black-beauty", count: 2, bed: "cold-frame", cause: "frost" }],
  },
  {
    line: "pulled the last Boltardy from Long Bed",
    says: [{ kind: "cleared", variety: "boltardy", bed: "long-bed", detail: "the last" }],
  },
  { line: "pulled out Aquadulce", says: [{ kind: "cleared", variety: "aquadulce-claudia" }] },
  { line: "trouble: slugs", says: [{ kind: "trouble", cause: "slugs" }] },
  {
    line: "trouble: slugs on Little Gem in Cold Frame",
    says: [{ kind: "trouble", variety: "little-gem", bed: "cold-frame", cause: "slugs" }],
  },
  { line: "trouble: carrot fly in Long Bed", says: [{ kind: "trouble", bed: "long-bed", cause: "carrot fly" }] },
  {
    line: "trouble: tomato blight on Sungold and Gardener's Delight in Tunnel North",
    says: [
      { kind: "trouble", variety: "sungold", bed: "tunnel-north", cause: "tomato blight" },
      { kind: "trouble", variety: "gardeners-delight", bed: "tunnel-north", cause: "tomato blight" },
    ],
  },
  {
    line: "trouble: Black Beauty leaves yellowing",
    says: [{ kind: "trouble", variety: "black-beauty", cause: "leaves yellowing" }],
  },
  {
    line: "trouble: blossom end rot, Gardener's Delight",
    says: [{ kind: "trouble", variety: "gardeners-delight", cause: "blossom end rot" }],
  },
  {
    line: "trouble: whitefly under the leaves of Sungold",
    says: [{ kind: "trouble", variety: "sungold", spot: "under the leaves of Sungold", cause: "whitefly" }],
  },
  {
    line: "trouble: powdery mildew on the courgettes, lower leaves only",
    says: [{ kind: "trouble", crop: "courgette", cause: "powdery mildew", detail: "lower leaves only" }],
  },
  {
    line: "trouble: something eating the brassicas at night",
    says: [{ kind: "trouble", cause: "something eating the brassicas at night" }],
  },
  {
    line: "trouble: something has been digging in Long Bed",
    says: [{ kind: "trouble", bed: "long-bed", cause: "something has been digging" }],
  },
  {
    line: "spotted blackfly on Aquadulce",
    says: [{ kind: "trouble", variety: "aquadulce-claudia", cause: "blackfly" }],
  },
  {
    line: "found leek moth on Musselburgh in Long Bed",
    says: [{ kind: "trouble", variety: "musselburgh", bed: "long-bed", cause: "leek moth" }],
  },
  { line: "pest: cabbage white on the kale", says: [{ kind: "trouble", crop: "kale", cause: "cabbage white" }] },
  {
    line: "cured: blackfly on Aquadulce, ladybirds did it",
    says: [{ kind: "cured", variety: "aquadulce-claudia", cause: "blackfly", detail: "ladybirds did it" }],
  },
  {
    line: "over: powdery mildew on the courgettes",
    says: [{ kind: "cured", crop: "courgette", cause: "powdery mildew" }],
  },
  { line: "gone: slugs in Cold Frame", says: [{ kind: "cured", bed: "cold-frame", cause: "slugs" }] },
  { line: "lost 2 Black Beauty to frost", says: [{ kind: "lost", variety: "black-beauty", count: 2, cause: "frost" }] },
  { line: "lost 4 lettuces, slugs", says: [{ kind: "lost", crop: "lettuce", count: 4, cause: "slugs" }] },
  {
    line: "lost everything in Cold Frame to the frost",
    says: [{ kind: "lost", bed: "cold-frame", cause: "the frost" }],
  },
  {
    line: "lost half the Musselburgh to leek moth in Long Bed",
    says: [{ kind: "lost", variety: "musselburgh", bed: "long-bed", cause: "leek moth", detail: "half" }],
  },
  {
    line: "lost one Café au Lait (vine weevil)",
    says: [{ kind: "lost", variety: "cafe-au-lait", count: 1, cause: "vine weevil" }],
  },
  {
    line: "lost about 10 Musselburgh in Long Bed to pigeons, net next time",
    says: [
      {
        kind: "lost",
        variety: "musselburgh",
        count: { value: 10, approx: true },
        bed: "long-bed",
        cause: "pigeons",
        detail: "net next time",
      },
    ],
  },
  { line: "died: Sungold", says: [{ kind: "lost", variety: "sungold" }] },
  {
    line: "killed 2 Sungold by overwatering",
    says: [{ kind: "lost", variety: "sungold", count: 2, cause: "overwatering" }],
  },
  {
    line: "gave away 6 Sungold to the neighbours",
    says: [{ kind: "gave away", variety: "sungold", count: 6, detail: "to the neighbours" }],
  },
  {
    line: "gave 4 Black Beauty to Ann",
    says: [{ kind: "gave away", variety: "black-beauty", count: 4, detail: "to Ann" }],
  },
  { line: "cleared Long Bed", says: [{ kind: "cleared", bed: "long-bed" }] },
  {
    line: "cleared the Aquadulce from Long Bed and composted the tops",
    says: [{ kind: "cleared", variety: "aquadulce-claudia", bed: "long-bed", detail: "composted the tops" }],
  },
  { line: "cleared broad beans", says: [{ kind: "cleared", crop: "broad-bean" }] },
  {
    line: "cleared Long Bed and Cold Frame",
    says: [
      { kind: "cleared", bed: "long-bed" },
      { kind: "cleared", bed: "cold-frame" },
    ],
  },
  {
    line: "pulled 3 Sungold from Tunnel North, blight",
    says: [{ kind: "cleared", variety: "sungold", count: 3, bed: "tunnel-north", detail: "blight" }],
  },
  { line: "lifted the dahlias from Long Bed", says: [{ kind: "cleared", crop: "dahlia", bed: "long-bed" }] },
  {
    line: "lifted Café au Lait for storing",
    says: [{ kind: "cleared", variety: "cafe-au-lait", detail: "for storing" }],
  },
  {
    line: "trouble: greenfly, all the roses in Step Pots",
    says: [{ kind: "trouble", crop: "rose", bed: "step-pots", cause: "greenfly" }],
  },
  { line: "trouble: hail damage in Squash Bed", says: [{ kind: "trouble", bed: "squash-bed", cause: "hail damage" }] },
  { line: "trouble: nothing but slugs", says: [{ kind: "trouble", cause: "nothing but slugs" }] },
  {
    line: "trouble: Sungold splitting after rain",
    says: [{ kind: "trouble", variety: "sungold", cause: "splitting after rain" }],
  },
  {
    line: "trouble: leek moth in the Musselburgh",
    says: [{ kind: "trouble", variety: "musselburgh", cause: "leek moth" }],
  },
  {
    line: "trouble: mildew on Crown Prince and Uchiki Kuri, oldest leaves",
    says: [
      { kind: "trouble", variety: "crown-prince", cause: "mildew", detail: "oldest leaves" },
      { kind: "trouble", variety: "uchiki-kuri", cause: "mildew", detail: "oldest leaves" },
    ],
  },
  {
    line: "noticed whitefly on Sungold in Tunnel North",
    says: [{ kind: "trouble", variety: "sungold", bed: "tunnel-north", cause: "whitefly" }],
  },
  {
    line: "lost 2 of 6 Crown Prince to slugs",
    says: [{ kind: "lost", variety: "crown-prince", count: 2, cause: "slugs", detail: "2 of 6" }],
  },
  {
    line: "lost all Little Gem to slugs in Cold Frame",
    says: [{ kind: "lost", variety: "little-gem", bed: "cold-frame", cause: "slugs" }],
  },
  {
    line: "lost 12 plants to frost in Cold Frame",
    says: [{ kind: "lost", count: 12, bed: "cold-frame", cause: "frost" }],
  },
  {
    line: "lost 3 Sungold in Tunnel North: damping off",
    says: [{ kind: "lost", variety: "sungold", count: 3, bed: "tunnel-north", cause: "damping off" }],
  },
  { line: "lost Sungold because of the heat", says: [{ kind: "lost", variety: "sungold", cause: "the heat" }] },
  {
    line: "dead: 2 Café au Lait, rotted over winter",
    says: [{ kind: "lost", variety: "cafe-au-lait", count: 2, detail: "rotted over winter" }],
  },
  { line: "eaten: 4 Little Gem by slugs", says: [{ kind: "lost", variety: "little-gem", count: 4, cause: "slugs" }] },
  {
    line: "gave away: 6 Sungold, 4 Black Beauty",
    says: [
      { kind: "gave away", variety: "sungold", count: 6 },
      { kind: "gave away", variety: "black-beauty", count: 4 },
    ],
  },
  {
    line: "gave 6 Sungold to the school and 4 Black Beauty to next door",
    says: [
      { kind: "gave away", variety: "sungold", count: 6, detail: "to the school" },
      { kind: "gave away", variety: "black-beauty", count: 4, detail: "to next door" },
    ],
  },
  {
    line: "cleared peas and beans from Long Bed",
    says: [
      { kind: "cleared", crop: "pea", bed: "long-bed" },
      { kind: "cleared", crop: "bean", bed: "long-bed" },
    ],
  },
  { line: "cleared out Cold Frame", says: [{ kind: "cleared", bed: "cold-frame" }] },
  { line: "cleared the squash, frosted", says: [{ kind: "cleared", crop: "squash", detail: "frosted" }] },
  { line: "lost another 3 Musselburgh", says: [{ kind: "lost", variety: "musselburgh", count: 3, detail: "another" }] },
  { line: "trouble: slugs, slugs, slugs", says: [{ kind: "trouble", cause: "slugs", detail: "slugs, slugs" }] },
  { line: "took out Aquadulce", says: [{ kind: "cleared", variety: "aquadulce-claudia" }] },
  { line: "trouble - slugs on Little Gem", says: [{ kind: "trouble", variety: "little-gem", cause: "slugs" }] },
  {
    line: "trouble: frost last night, Crown Prince and Uchiki Kuri",
    says: [
      { kind: "trouble", day: "2026-05-19", variety: "crown-prince", cause: "frost" },
      { kind: "trouble", day: "2026-05-19", variety: "uchiki-kuri", cause: "frost" },
    ],
  },
  {
    line: "trouble: Crown Prince - powdery mildew",
    says: [{ kind: "trouble", variety: "crown-prince", cause: "powdery mildew" }],
  },
  {
    line: "trouble: 3 Sungold with blossom end rot",
    says: [{ kind: "trouble", variety: "sungold", cause: "blossom end rot" }],
  },
  { line: "trouble: blight!", says: [{ kind: "trouble", cause: "blight" }] },
  {
    line: "trouble: cabbage whites laying on kale and cabbages in Brassica Bed",
    says: [
      { kind: "trouble", crop: "kale", bed: "brassica-bed", cause: "cabbage whites laying" },
      { kind: "trouble", crop: "cabbage", bed: "brassica-bed", cause: "cabbage whites laying" },
    ],
  },
  {
    line: "trouble on Aquadulce: blackfly",
    says: [{ kind: "trouble", variety: "aquadulce-claudia", cause: "blackfly" }],
  },
  { line: "trouble in Long Bed: slugs", says: [{ kind: "trouble", bed: "long-bed", cause: "slugs" }] },
  { line: "trouble: wind damage", says: [{ kind: "trouble", cause: "wind damage" }] },
  {
    line: "trouble: deer ate the tops of Aquadulce in Long Bed",
    says: [{ kind: "trouble", variety: "aquadulce-claudia", bed: "long-bed", cause: "deer ate the tops of Aquadulce" }],
  },
  { line: "cured: mildew", says: [{ kind: "cured", cause: "mildew" }] },
  { line: "cured: Crown Prince", says: [{ kind: "cured", variety: "crown-prince" }] },
  { line: "over: frost", says: [{ kind: "cured", cause: "frost" }] },
  {
    line: "lost: 3 Crown Prince, slugs overnight",
    says: [{ kind: "lost", variety: "crown-prince", count: 3, cause: "slugs overnight" }],
  },
  { line: "lost a Black Beauty", says: [{ kind: "lost", variety: "black-beauty", count: 1 }] },
  { line: "lost the lot to blight in Tunnel North", says: [{ kind: "lost", bed: "tunnel-north", cause: "blight" }] },
  { line: "lost 5 plants", says: [{ kind: "lost", count: 5 }] },
  { line: "lost Aquadulce", says: [{ kind: "lost", variety: "aquadulce-claudia" }] },
  { line: "dead: Sungold", says: [{ kind: "lost", variety: "sungold" }] },
  { line: "gave away surplus Sungold", says: [{ kind: "gave away", variety: "sungold", detail: "surplus" }] },
  { line: "gave away 2 kg Black Beauty", says: [{ kind: "gave away", variety: "black-beauty", grams: 2000 }] },
  { line: "gave away 6", says: [{ kind: "gave away", count: 6 }] },
  {
    line: "gave away 2 Sungold to Wilma and 3 to the school",
    says: [{ kind: "gave away", variety: "sungold", count: 2, detail: "to Wilma and 3 to the school" }],
  },
  { line: "lost 2 Sungold, Wilma's cat", says: [{ kind: "lost", variety: "sungold", count: 2, cause: "Wilma's cat" }] },
  {
    line: "cleared Aquadulce from Long Bed, Wilma helped",
    says: [{ kind: "cleared", variety: "aquadulce-claudia", bed: "long-bed", detail: "Wilma helped" }],
  },
  { line: "trouble: leaf miner on chard", says: [{ kind: "trouble", crop: "chard", cause: "leaf miner" }] },
  {
    line: "trouble: rust on Musselburgh and garlic in Long Bed",
    says: [
      { kind: "trouble", variety: "musselburgh", bed: "long-bed", cause: "rust" },
      { kind: "trouble", crop: "garlic", bed: "long-bed", cause: "rust" },
    ],
  },
  {
    line: "trouble: split fruit on Sungold, too much rain",
    says: [{ kind: "trouble", variety: "sungold", cause: "split fruit", detail: "too much rain" }],
  },
  {
    line: "trouble: birds pulled 4 Little Gem in Cold Frame",
    says: [{ kind: "trouble", variety: "little-gem", bed: "cold-frame", cause: "birds pulled 4 Little Gem" }],
  },
  { line: "trouble: hot and dry", says: [{ kind: "trouble", cause: "hot and dry" }] },
  {
    line: "trouble: no fruit set on Crown Prince",
    says: [{ kind: "trouble", variety: "crown-prince", cause: "no fruit set" }],
  },
  { line: "trouble: Long Bed waterlogged", says: [{ kind: "trouble", bed: "long-bed", cause: "waterlogged" }] },
  {
    line: "trouble: bolting Little Gem",
    says: [{ kind: "trouble", variety: "little-gem", cause: "bolting Little Gem" }],
  },
  {
    line: "cured: slugs in Long Bed, beer traps",
    says: [{ kind: "cured", bed: "long-bed", cause: "slugs", detail: "beer traps" }],
  },
];

/** Work done, gear put up and taken down. */
export const working: readonly Case[] = [
  { line: "mulched with pea straw", says: [{ kind: "did", what: "mulched with pea straw" }] },
  { line: "fed toms w/ comfrey", says: [{ kind: "did", what: "fed toms w/ comfrey", crop: "tomato" }] },
  {
    line: "did: pruned side shoots, all tomatoes",
    says: [{ kind: "did", crop: "tomato", what: "pruned side shoots, all tomatoes" }],
  },
  {
    line: "put up the mesh tunnel in Brassica Bed",
    says: [{ kind: "put up", bed: "brassica-bed", gear: "mesh-tunnel" }],
  },
  { line: "took down mesh from Brassica Bed", says: [{ kind: "took down", bed: "brassica-bed", gear: "mesh-tunnel" }] },
  {
    line: "put up a big green net in Brassica Bed",
    says: [{ kind: "put up", bed: "brassica-bed", what: "big green net" }],
  },
  { line: "watered Long Bed", says: [{ kind: "did", bed: "long-bed", what: "watered Long Bed" }] },
  {
    line: "pinched out Black Beauty in Cold Frame",
    says: [{ kind: "did", variety: "black-beauty", bed: "cold-frame", what: "pinched out Black Beauty in Cold Frame" }],
  },
  {
    line: "watered Harbour Yard",
    says: [
      { kind: "did", bed: "step-pots", what: "watered Harbour Yard" },
      { kind: "did", bed: "herb-trough", what: "watered Harbour Yard" },
    ],
  },
  {
    line: "cut back the sage",
    beds: ["herb-trough"],
    says: [{ kind: "did", crop: "sage", bed: "herb-trough", what: "cut back the sage" }],
  },
  { line: "dug over Long Bed", says: [{ kind: "did", bed: "long-bed", what: "dug over Long Bed" }] },
  { line: "put up the arch in Tunnel North", says: [{ kind: "put up", bed: "tunnel-north", gear: "arch" }] },
  { line: "put up arch over Long Bed", says: [{ kind: "put up", bed: "long-bed", gear: "arch" }] },
  {
    line: "put up netting over the Brassica Bed against pigeons",
    says: [{ kind: "put up", bed: "brassica-bed", what: "netting", detail: "against pigeons" }],
  },
  { line: "set up a water butt by the shed", says: [{ kind: "put up", spot: "by the shed", what: "water butt" }] },
  { line: "took down the arch", says: [{ kind: "took down", gear: "arch" }] },
  { line: "took the arch down", says: [{ kind: "took down", gear: "arch" }] },
  { line: "removed mesh from Brassica Bed", says: [{ kind: "took down", bed: "brassica-bed", gear: "mesh-tunnel" }] },
  { line: "netted Brassica Bed", says: [{ kind: "did", bed: "brassica-bed", what: "netted Brassica Bed" }] },
  {
    line: "watered everything",
    beds: ["long-bed", "cold-frame"],
    says: [
      { kind: "did", bed: "long-bed", what: "watered everything" },
      { kind: "did", bed: "cold-frame", what: "watered everything" },
    ],
  },
  { line: "fed tomatoes with comfrey", says: [{ kind: "did", crop: "tomato", what: "fed tomatoes with comfrey" }] },
  {
    line: "mulched Long Bed with compost, 5 cm deep",
    says: [{ kind: "did", bed: "long-bed", what: "mulched Long Bed with compost, 5 cm deep" }],
  },
  {
    line: "weeded between the leeks in Long Bed",
    says: [{ kind: "did", crop: "leek", bed: "long-bed", what: "weeded between the leeks in Long Bed" }],
  },
  { line: "staked Café au Lait", says: [{ kind: "did", variety: "cafe-au-lait", what: "staked Café au Lait" }] },
  {
    line: "tied in Sungold and Gardener's Delight",
    says: [
      { kind: "did", variety: "sungold", what: "tied in Sungold and Gardener's Delight" },
      { kind: "did", variety: "gardeners-delight", what: "tied in Sungold and Gardener's Delight" },
    ],
  },
  {
    line: "pinched out side shoots on Sungold",
    says: [{ kind: "did", variety: "sungold", what: "pinched out side shoots on Sungold" }],
  },
  { line: "earthed up Charlotte", says: [{ kind: "did", what: "earthed up Charlotte" }] },
  {
    line: "sprayed soap on the Aquadulce in Long Bed",
    says: [
      { kind: "did", variety: "aquadulce-claudia", bed: "long-bed", what: "sprayed soap on the Aquadulce in Long Bed" },
    ],
  },
  { line: "hardened off Sungold", says: [{ kind: "did", variety: "sungold", what: "hardened off Sungold" }] },
  { line: "deadheaded the dahlias", says: [{ kind: "did", crop: "dahlia", what: "deadheaded the dahlias" }] },
  {
    line: "did: pruned Sungold, pinched out Gardener's Delight",
    says: [
      { kind: "did", variety: "sungold", what: "pruned Sungold, pinched out Gardener's Delight" },
      { kind: "did", variety: "gardeners-delight", what: "pruned Sungold, pinched out Gardener's Delight" },
    ],
  },
  { line: "put the mesh over Brassica Bed", says: [{ kind: "put up", bed: "brassica-bed", gear: "mesh-tunnel" }] },
  { line: "put the arch up in Squash Bed", says: [{ kind: "put up", bed: "squash-bed", gear: "arch" }] },
  {
    line: "put up mesh over the leeks in Long Bed",
    says: [{ kind: "put up", bed: "long-bed", gear: "mesh-tunnel", detail: "over the leeks" }],
  },
  {
    line: "put up canes in Long Bed for Aquadulce",
    says: [{ kind: "put up", bed: "long-bed", what: "canes", detail: "for Aquadulce" }],
  },
  { line: "installed drip line in Tunnel North", says: [{ kind: "put up", bed: "tunnel-north", what: "drip line" }] },
  { line: "took the mesh off Brassica Bed", says: [{ kind: "took down", bed: "brassica-bed", gear: "mesh-tunnel" }] },
  {
    line: "took down mesh in Brassica Bed to weed",
    says: [{ kind: "took down", bed: "brassica-bed", gear: "mesh-tunnel", detail: "to weed" }],
  },
  {
    line: "did: watered Tunnel North, 40 l",
    says: [{ kind: "did", bed: "tunnel-north", what: "watered Tunnel North, 40 l" }],
  },
  {
    line: "did: picked off caterpillars, Brassica Bed",
    says: [{ kind: "did", bed: "brassica-bed", what: "picked off caterpillars, Brassica Bed" }],
  },
  {
    line: "weeded and mulched Long Bed",
    says: [{ kind: "did", bed: "long-bed", what: "weeded and mulched Long Bed" }],
  },
  {
    line: "fed Sungold and Gardener's Delight with seaweed in Tunnel North",
    says: [
      {
        kind: "did",
        variety: "sungold",
        bed: "tunnel-north",
        what: "fed Sungold and Gardener's Delight with seaweed in Tunnel North",
      },
      {
        kind: "did",
        variety: "gardeners-delight",
        bed: "tunnel-north",
        what: "fed Sungold and Gardener's Delight with seaweed in Tunnel North",
      },
    ],
  },
  { line: "pruned the Victoria plum", says: [{ kind: "did", crop: "plum", what: "pruned the Victoria plum" }] },
  {
    line: "sprayed Crown Prince with milk for mildew",
    says: [{ kind: "did", variety: "crown-prince", what: "sprayed Crown Prince with milk for mildew" }],
  },
  { line: "netted the cherries", says: [{ kind: "did", crop: "cherry", what: "netted the cherries" }] },
  {
    line: "mulched Harbour Yard",
    says: [
      { kind: "did", bed: "step-pots", what: "mulched Harbour Yard" },
      { kind: "did", bed: "herb-trough", what: "mulched Harbour Yard" },
    ],
  },
  {
    line: "cut back and fed the sage in Herb Trough",
    says: [{ kind: "did", crop: "sage", bed: "herb-trough", what: "cut back and fed the sage in Herb Trough" }],
  },
  { line: "put up fleece over Musselburgh", says: [{ kind: "put up", what: "fleece", detail: "over Musselburgh" }] },
  { line: "lifted and divided rhubarb", says: [{ kind: "did", crop: "rhubarb", what: "lifted and divided rhubarb" }] },
  { line: "lifted 5 rhubarb crowns", says: [{ kind: "did", crop: "rhubarb", what: "lifted 5 rhubarb crowns" }] },
  {
    line: "picked slugs off Little Gem",
    says: [{ kind: "did", variety: "little-gem", what: "picked slugs off Little Gem" }],
  },
  { line: "picked off caterpillars", says: [{ kind: "did", what: "picked off caterpillars" }] },
  {
    line: "dug in green manure",
    beds: ["long-bed"],
    says: [{ kind: "did", bed: "long-bed", what: "dug in green manure" }],
  },
  {
    line: "moved the arch to Squash Bed",
    says: [
      { kind: "took down", gear: "arch" },
      { kind: "put up", bed: "squash-bed", gear: "arch" },
    ],
  },
  { line: "put up bean poles in Long Bed", says: [{ kind: "put up", bed: "long-bed", what: "bean poles" }] },
  {
    line: "put out slug traps in Long Bed",
    says: [{ kind: "did", bed: "long-bed", what: "put out slug traps in Long Bed" }],
  },
  { line: "took down bean poles", says: [{ kind: "took down", what: "bean poles" }] },
  {
    line: "removed side shoots from Sungold",
    says: [{ kind: "did", variety: "sungold", what: "removed side shoots from Sungold" }],
  },
  { line: "removed lower leaves", says: [{ kind: "did", what: "removed lower leaves" }] },
  { line: "removed fleece from Long Bed", says: [{ kind: "took down", bed: "long-bed", what: "fleece" }] },
  {
    line: "covered Little Gem with fleece",
    says: [{ kind: "did", variety: "little-gem", what: "covered Little Gem with fleece" }],
  },
  { line: "watered in seedlings", says: [{ kind: "did", what: "watered in seedlings" }] },
  { line: "watered 20 l on Long Bed", says: [{ kind: "did", bed: "long-bed", what: "watered 20 l on Long Bed" }] },
  { line: "fed: Sungold, tomato feed", says: [{ kind: "did", variety: "sungold", what: "fed: Sungold, tomato feed" }] },
];

/** Things to do, promises, questions. */
export const telling: readonly Case[] = [
  {
    line: "to do by 2026-06-20: net the brassicas",
    says: [{ kind: "to do", what: "net the brassicas", due: "2026-06-20" }],
  },
  {
    line: "promised: show the leeks again in July",
    says: [{ kind: "promised", crop: "leek", what: "show the leeks again in July", due: "2026-07-31" }],
  },
  {
    line: "asked: which variety is the red lettuce?",
    says: [{ kind: "asked", crop: "lettuce", what: "which variety is the red lettuce?" }],
  },
  { line: "to do: order garlic", says: [{ kind: "to do", crop: "garlic", what: "order garlic" }] },
  {
    line: "to do by Friday: net the brassicas",
    says: [{ kind: "to do", what: "net the brassicas", due: "2026-05-22" }],
  },
  {
    line: "to do this week: thin Boltardy",
    says: [{ kind: "to do", variety: "boltardy", what: "thin Boltardy", due: "2026-05-24" }],
  },
  {
    line: "todo: feed Sungold on Sunday",
    says: [{ kind: "to do", variety: "sungold", what: "feed Sungold on Sunday", due: "2026-05-24" }],
  },
  {
    line: "to do by end of June: clear Aquadulce from Long Bed",
    says: [
      {
        kind: "to do",
        variety: "aquadulce-claudia",
        bed: "long-bed",
        what: "clear Aquadulce from Long Bed",
        due: "2026-06-30",
      },
    ],
  },
  {
    line: "to do before July: prune the plum",
    says: [{ kind: "to do", crop: "plum", what: "prune the plum", due: "2026-06-30" }],
  },
  {
    line: "to do net Brassica Bed by 12 June",
    says: [{ kind: "to do", bed: "brassica-bed", what: "net Brassica Bed by 12 June", due: "2026-06-12" }],
  },
  { line: "done: net the brassicas", says: [{ kind: "done", what: "net the brassicas" }] },
  {
    line: "promised to show the Crown Prince again next week",
    says: [
      { kind: "promised", variety: "crown-prince", what: "show the Crown Prince again next week", due: "2026-05-31" },
    ],
  },
  {
    line: "promised by 20 June: the slug results",
    says: [{ kind: "promised", what: "the slug results", due: "2026-06-20" }],
  },
  {
    line: "promised: a second look at Long Bed this autumn",
    says: [{ kind: "promised", bed: "long-bed", what: "a second look at Long Bed this autumn", due: "2026-11-30" }],
  },
  {
    line: "asked: is the red lettuce a named one?",
    says: [{ kind: "asked", crop: "lettuce", what: "is the red lettuce a named one?" }],
  },
  {
    line: "asked which variety the big squash is",
    says: [{ kind: "asked", crop: "squash", what: "which variety the big squash is" }],
  },
  {
    line: "question: how often do you water Sungold?",
    says: [{ kind: "asked", variety: "sungold", what: "how often do you water Sungold?" }],
  },
  {
    line: "to do: sow Little Gem in 2 weeks",
    says: [{ kind: "to do", variety: "little-gem", what: "sow Little Gem in 2 weeks", due: "2026-06-03" }],
  },
  {
    line: "to do: by mid July clear Aquadulce",
    says: [{ kind: "to do", variety: "aquadulce-claudia", what: "clear Aquadulce", due: "2026-07-20" }],
  },
  {
    line: "to do tomorrow: water Tunnel North",
    says: [{ kind: "to do", bed: "tunnel-north", what: "water Tunnel North", due: "2026-05-21" }],
  },
  {
    line: "to do when it rains: plant leeks",
    says: [{ kind: "to do", crop: "leek", what: "when it rains: plant leeks" }],
  },
  {
    line: "todo - net the cherries before June",
    says: [{ kind: "to do", crop: "cherry", what: "net the cherries before June", due: "2026-05-31" }],
  },
  {
    line: "done: net the cherries on Monday",
    says: [{ kind: "done", day: "2026-05-18", crop: "cherry", what: "net the cherries" }],
  },
  {
    line: "promised: slug trial results by the end of the season",
    says: [{ kind: "promised", what: "slug trial results by the end of the season", due: "2026-12-31" }],
  },
  { line: "promised to answer the mildew question", says: [{ kind: "promised", what: "answer the mildew question" }] },
  {
    line: "promise: Crown Prince harvest in late September",
    says: [
      { kind: "promised", variety: "crown-prince", what: "Crown Prince harvest in late September", due: "2026-09-30" },
    ],
  },
  {
    line: "asked: Why are your leeks so thin?",
    says: [{ kind: "asked", crop: "leek", what: "Why are your leeks so thin?" }],
  },
  {
    line: "asked: how far apart are the squash in Squash Bed",
    says: [{ kind: "asked", crop: "squash", bed: "squash-bed", what: "how far apart are the squash in Squash Bed" }],
  },
  {
    line: "viewer asked: what is the pink dahlia",
    says: [{ kind: "asked", crop: "dahlia", what: "what is the pink dahlia" }],
  },
  { line: "done: watered Tunnel North", says: [{ kind: "done", bed: "tunnel-north", what: "watered Tunnel North" }] },
  { line: "to do: feed tomatoes weekly", says: [{ kind: "to do", crop: "tomato", what: "feed tomatoes weekly" }] },
  {
    line: "to do: by the weekend, earth up Charlotte in Long Bed",
    says: [{ kind: "to do", bed: "long-bed", what: "earth up Charlotte in Long Bed", due: "2026-05-24" }],
  },
  {
    line: "to do - order onion sets (Sturon) before September",
    says: [{ kind: "to do", crop: "onion", what: "order onion sets (Sturon) before September", due: "2026-08-31" }],
  },
  {
    line: "to do: sow Little Gem, Long Bed, mid June",
    says: [
      {
        kind: "to do",
        variety: "little-gem",
        bed: "long-bed",
        what: "sow Little Gem, Long Bed, mid June",
        due: "2026-06-20",
      },
    ],
  },
  { line: "to do urgent: net", says: [{ kind: "to do", what: "urgent: net" }] },
  { line: "promised: a slug update", says: [{ kind: "promised", what: "a slug update" }] },
  {
    line: "promised: taste test of Sungold vs Gardener's Delight in August",
    says: [
      {
        kind: "promised",
        variety: "sungold",
        what: "taste test of Sungold vs Gardener's Delight in August",
        due: "2026-08-31",
      },
    ],
  },
  {
    line: "promised for July: the leeks",
    says: [{ kind: "promised", crop: "leek", what: "the leeks", due: "2026-07-31" }],
  },
  {
    line: "asked: can you grow Crown Prince up an arch?",
    says: [{ kind: "asked", variety: "crown-prince", what: "can you grow Crown Prince up an arch?" }],
  },
];

/** What only begins like a log line, or has a slip in its verb. */
export const story: readonly Case[] = [
  { line: "sowd 12 Musselburgh in Long Bed", says: "story" },
  { line: "the robin came back", says: "story" },
  { line: "sow 12 Musselburgh in Long Bed", says: "story" },
  { line: "started raining at noon", says: "story" },
  { line: "started well, ended in a hailstorm", says: "story" },
  { line: "planted out brassicas before the rain", says: "story" },
  { line: "up early this morning, frost on the windows", says: "story" },
  { line: "Musselburgh up in Long Bed", says: "story" },
  { line: "picked up the seed order from the post office", says: "story" },
  { line: "cut the grass", says: "story" },
  { line: "dug a hole", says: "story" },
  { line: "lifted the cloches", says: "story" },
  { line: "found my trowel", says: "story" },
  { line: "over the fence they are growing giant leeks", says: "story" },
  { line: "lost my gloves", says: "story" },
  { line: "died down: rhubarb", says: "story" },
  { line: "gave up on the Sungold", says: "story" },
  { line: "moved house", says: "story" },
  { line: "fed the cat", says: "story" },
  { line: "to do", says: "story" },
  { line: "done for the day", says: "story" },
  { line: "asked the neighbours over", says: "story" },
  { line: "saved the day", says: "story" },
  { line: "started hardening off the tomatoes", says: "story" },
  { line: "picked nothing, too wet", says: "story" },
  { line: "I planted 12 Musselburgh in Long Bed", says: "story" },
  { line: "then sowed 12 Boltardy in Long Bed", says: "story" },
  { line: "Sungold: first flower", says: "story" },
  { line: "Musselburgh looking well", says: "story" },
  { line: "Long Bed needs weeding", says: "story" },
  { line: "harvset 2 kg Black Beauty", says: "story" },
  { line: "planting 12 Musselburgh in Long Bed", says: "story" },
  { line: "scattered 3 g of Boltardy in Long Bed", says: "story" },
  { line: "The Black Beauty are huge", says: "story" },
  { line: "needed: net for Long Bed", says: "story" },
  { line: "frost forecast for Long Bed", says: "story" },
  { line: "picked salad", says: "story" },
  { line: "picked flowers for the house", says: "story" },
  { line: "pulled bindweed in Long Bed", says: "story" },
  { line: "pulled weeds", says: "story" },
  { line: "cut herbs", says: "story" },
  { line: "cut 3 bouquets", says: "story" },
  { line: "harvested honey", says: "story" },
  { line: "gathered windfalls", says: "story" },
  { line: "collected leaves for leafmould", says: "story" },
  { line: "dug out the compost bay", says: "story" },
  { line: "dug 2 trenches", says: "story" },
  { line: "moved seedlings to Cold Frame", says: "story" },
  { line: "put fleece over the potatoes", says: "story" },
  { line: "put straw under the strawberries", says: "story" },
  { line: "took cuttings of rosemary", says: "story" },
  { line: "gave away produce", says: "story" },
  { line: "first tomato: Sungold", says: "story" },
  { line: "first courgette", says: "story" },
  { line: "first flower", says: "story" },
  { line: "in flower", says: "story" },
  { line: "measured rain 12 mm", says: "story" },
  { line: "up: nothing yet", says: "story" },
];
