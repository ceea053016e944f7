/** Gardens nobody would make up: lines in any order, counts of nought, any latitude, seasons that begin on any day. */
import fc from "fast-check";
import { addDays } from "../../src/calendar.ts";

const beds = ["Long Bed", "Tomato Pots", "Tunnel", "Blueberry Tubs"];
const varieties: readonly (readonly [title: string, crop: string, days: string])[] = [
  ["Crown Prince", "squash", "95 from planting"],
  ["Musselburgh", "leek", "150 from planting"],
  ["Boltardy", "beetroot", "90 from sowing"],
  ["Greyhound", "cabbage", "65 from planting"],
  ["Gardener's Delight", "tomato", "68 from planting"],
  ["Matucana", "sweet pea", "65 from planting"],
  ["Bluecrop", "blueberry", ""],
  ["Germidour", "garlic", "265 from planting"],
  ["Oddity", "moonfruit", "1 from sowing"],
];

const name = fc.constantFrom(...varieties.map(([title]) => title));
const bed = fc.constantFrom(...beds);
const count = fc.constantFrom("", "0 ", "1 ", "2 ", "12 ", "about 10 ", "8-10 ", "a row of ");
const amount = fc.constantFrom(
  "",
  "0 kg ",
  "1.4 kg ",
  "900 g ",
  "3 ",
  "12 stems ",
  "2 bunches ",
  "1 pint ",
  "38 1/2 lb ",
  "5 heads ",
);
const cause = fc.constantFrom("slugs", "clubroot", "blight", "the cat", "powdery mildew");

const line = fc.oneof(
  fc.tuple(count, name).map(([n, what]) => `sowed ${n}${what} indoors`),
  fc.tuple(count, name, bed).map(([n, what, where]) => `direct sowed ${n}${what} in ${where}`),
  fc.tuple(count, name, bed).map(([n, what, where]) => `planted ${n}${what} in ${where}, 30 cm apart, netted row`),
  fc.tuple(count, name, bed).map(([n, what, where]) => `planted ${n}bought ${what} in ${where}, bare row`),
  fc.tuple(amount, name, bed).map(([n, what, where]) => `picked ${n}${what} from ${where}`),
  fc
    .tuple(amount, name, bed)
    .map(([n, what, where]) => `picked ${n}${what} from ${where}, 3 heads, 2 clean, netted row`),
  fc.tuple(name, bed).map(([what, where]) => `first flower: ${what} in ${where}`),
  fc.tuple(name, bed).map(([what, where]) => `cleared ${what} from ${where}`),
  fc.tuple(fc.nat(40), name, cause).map(([n, what, why]) => `lost ${n} ${what} to ${why}`),
  fc.tuple(cause, name, bed).map(([why, what, where]) => `trouble: ${why} on ${what} in ${where}`),
  fc.tuple(cause, name).map(([why, what]) => `cured: ${why} on ${what}`),
  fc.tuple(fc.nat(12), bed).map(([n, where]) => `soil test ${where} pH ${n + 1}.${n % 10}`),
  name.map((what) => `saved seed: ${what}, 30 g`),
  name.map((what) => `promised: show the ${what} again in July`),
  fc.tuple(name, fc.nat(900)).map(([what, cm]) => `measured ${what} ${cm} cm tall`),
  fc.constant("asked: what is that?"),
);

export interface Scene {
  /** Texts of the records folder by path. */
  readonly files: Readonly<Record<string, string>>;
  /** A weather file. */
  readonly weather: string;
  readonly latitude: number | undefined;
  readonly today: string;
}

export const scene: fc.Arbitrary<Scene> = fc
  .record({
    notes: fc.array(fc.tuple(fc.integer({ min: 0, max: 1200 }), fc.array(line, { minLength: 1, maxLength: 5 })), {
      maxLength: 40,
    }),
    units: fc.constantFrom("metric", "us"),
    starts: fc.constantFrom("1 January", "1 July", "29 February", "1 November"),
    latitude: fc.constantFrom(54.3, -36, 0, 71, undefined),
    weatherDays: fc.nat(900),
    weatherKind: fc.constantFrom("usual", "fahrenheit", "gaps", "empty", "flat"),
    frost: fc.boolean(),
    goals: fc.subarray([
      "28 quarts of tomato sauce",
      "10 kg of leeks",
      "9 pints of okra",
      "60 Crown Prince",
      "5 kg of nothing known",
      "300 stems of sweet peas",
      "0.001 g of beetroot",
    ]),
    measure: fc.constantFrom(
      "kilograms a head at picking",
      "clean roots in every twenty dug",
      "kilograms picked",
      "days to first picking",
      "height",
      "how it looks",
    ),
    arms: fc.integer({ min: 0, max: 3 }),
    seed: fc.nat(1000),
  })
  .map(({ notes, units, starts, latitude, weatherDays, weatherKind, frost, goals, measure, arms, seed }) => {
    const files: Record<string, string> = {
      "garden.md": [
        "---",
        "name: Any Garden",
        "time zone: Europe/London",
        "language: en-GB",
        `units: ${units}`,
        `season starts: ${starts}`,
        ...(frost ? ["last frost: 20 April", "first frost: 5 November"] : []),
        ...(goals.length === 0 ? [] : ["goals:", ...goals.map((goal) => `  - ${goal}`)]),
        "pins: [tomatoes in Tomato Pots, dragons in Long Bed]",
        "prices: {tomato: £4 a kg, lettuce: 0.50 a head}",
        "---",
        "",
      ].join("\n"),
      "trials/net.md": [
        "---",
        "title: Net",
        "question: Does a net help",
        `arms: [${["{name: netted row, variety: greyhound, bed: long-bed}", "{name: bare row, variety: greyhound, bed: long-bed}", "{name: bare row, variety: greyhound, bed: long-bed}"].slice(0, arms).join(", ")}]`,
        `measure: ${measure}`,
        "started: 2023-03-01",
        "---",
        "",
      ].join("\n"),
    };
    for (const [index, title] of beds.entries()) {
      const size = index === 3 ? "" : `size: ${index === 2 ? "0.1 x 0.1 m" : "4 x 1.2 m"}\n`;
      files[`beds/${title.toLowerCase().replaceAll(" ", "-")}.md`] = `---\ntitle: ${title}\n${size}---\n`;
    }
    for (const [title, crop, days] of varieties) {
      const maturity = days === "" ? "perennial: true" : `days to maturity: ${days}`;
      files[`varieties/${title.toLowerCase().replaceAll("'", "").replaceAll(" ", "-")}.md`] =
        `---\ntitle: "${title}"\ncrop: ${crop}\n${maturity}\nsource: {name: Drift Lane Seeds, obtained: ${seed % 2 === 0 ? "bought" : "saved"}, year: 2019}\n---\n`;
    }
    for (const [index, [offset, lines]] of notes.entries()) {
      files[`notes/${addDays("2023-02-01", offset)}-${index}.md`] = `${lines.map((one) => `- ${one}`).join("\n")}\n`;
    }
    return { files, weather: weatherText(weatherDays, weatherKind), latitude, today: addDays("2024-01-10", seed) };
  });

function weatherText(days: number, kind: string): string {
  if (kind === "empty") return "";
  const rows = Array.from({ length: days }, (_, index) => {
    const warm = kind === "flat" ? 0 : Math.round(100 * Math.sin((index / 365) * 2 * Math.PI)) / 10;
    const [low, high] = kind === "fahrenheit" ? [50 + warm, 70 + warm] : [4 + warm, kind === "flat" ? 4 : 13 + warm];
    return kind === "gaps" && index % 40 > 20 ? "" : `${addDays("2023-01-01", index)},${low},${high},${index % 3}`;
  });
  return ["date,tmin_c,tmax_c,rain_mm", ...rows.filter((row) => row !== "")].join("\n");
}
