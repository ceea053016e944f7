/** garden.md: the settings of the whole garden, all of them optional. */
import * as z from "zod";
import type { GardenSettings, Position } from "../../model.ts";
import { didYouMean } from "../nearest-spelling.ts";
import {
  clockSpan,
  link,
  monthDay,
  names,
  number,
  oneOf,
  position,
  readAs,
  text,
  texts,
  wrongValue,
} from "./fields.ts";
import { forViewers, forYou } from "./meaning.ts";
import { makePrices, nextYearKeys } from "./next-year.ts";
import { recordKeys } from "./record.ts";

/** An IANA name, kept as written: other names for one zone differ from system to system. */
const timeZone = readAs((written) => {
  try {
    new Intl.DateTimeFormat("en", { timeZone: written });
    return { value: written };
  } catch {
    return wrongValue(
      `"${written}" is not a time zone.`,
      didYouMean(written, Intl.supportedValuesOf("timeZone")) ??
        'Write its region and city, for example "Europe/London".',
    );
  }
});

/** The form in which records are written. There has been one so far. */
const FORM = "1";

/** Records of a later form may hold what this version does not know how to keep private, so nothing of them is published. */
const form = readAs((written) =>
  written === FORM
    ? { value: written }
    : wrongValue(
        `These records are written in form ${written}, and this Plotreel reads form ${FORM}.`,
        `Use a later Plotreel, or write "plotreel: ${FORM}" if they are in that form.`,
      ),
);

const language = readAs((written) => {
  try {
    const [tag] = Intl.DateTimeFormat.supportedLocalesOf(written);
    if (tag !== undefined && /^en\b/u.test(tag)) return { value: tag };
  } catch {
    // Not even formed like a tag: refused like an unknown one.
  }
  return wrongValue(
    `"${written}" is no language that Plotreel speaks: it speaks English, and reads notes in English.`,
    'Write the English you use: "en-GB", "en-IE", "en-US" or "en-AU".',
  );
});

/** Path of the public site, with a slash at both ends. */
const base = readAs((written) => {
  if (!/^\/?[\w./~-]*$/.test(written)) {
    return wrongValue(`"${written}" is not a path.`, 'Write the path below the address, for example "/garden/".');
  }
  return { value: `/${written}/`.replace(/\/{2,}/g, "/") };
});

/** No standard says how low the sun must stand, so both altitudes are the person's own. */
const lowSun = z
  .strictObject({
    from: forYou("the lower height", "-4", number({ from: -18, to: 45, unit: /(?<!\s)\s*(°|degrees?)$/ })),
    to: forYou("the upper height", "6", number({ from: -18, to: 45, unit: /(?<!\s)\s*(°|degrees?)$/ })),
  })
  .transform((written, context) => {
    if (written.from < written.to) return written;
    context.issues.push({
      code: "custom",
      input: written,
      params: { ...wrongValue("These altitudes run downward.", "Write the lower one as from: {from: -4, to: 6}.") },
    });
    return z.NEVER;
  });

export const gardenSchema = z.strictObject({
  ...recordKeys,
  plotreel: forYou("the form the records are written in: 1, the only one so far", "1", form.optional()),
  name: forViewers("what the garden is called", "Gullstone Gardens", text.optional()),
  place: forYou(
    "where it lies on Earth, for sun, light and seasons; never published",
    "{ latitude: 54.3, longitude: -5.6, elevation: 30 }",
    position,
  ),
  "time zone": forViewers(
    "as phones and computers write it; it tells which day is today",
    "Europe/London",
    timeZone.optional(),
  ),
  units: forViewers("the units that pages are written in", "metric", oneOf(["metric", "us"]).optional()),
  language: forViewers("which English, for dates, numbers and names of crops", "en-GB", language.optional()),
  "last frost": forViewers("the usual last frost of spring, month and day", "20 April", monthDay.optional()),
  "first frost": forViewers("the usual first frost of autumn", "5 November", monthDay.optional()),
  "season starts": forViewers(
    "the day a season begins; without it 1 January, south of the equator 1 July",
    "1 January",
    monthDay.optional(),
  ),
  "narration rate": forYou(
    "words a minute in which you speak on camera",
    "130",
    number({ from: 40, to: 300, unit: /(?<!\s)\s*words a minute$/ }).optional(),
  ),
  "photo gap": forYou(
    "days without a photo of a bed before the brief asks for one",
    "14",
    number({ from: 1, to: 366, unit: /(?<!\s)\s*days?$/ }).optional(),
  ),
  kit: forYou("what to pack on a filming day", "[small camera, spare battery]", texts.optional()),
  "clip clocks": forYou(
    "whether the clock in a camera's films is UTC or local, by the camera's maker and model",
    '{ "Maker Model 3": local }',
    z.record(z.string(), oneOf(["UTC", "local"])).optional(),
  ),
  notices: forYou(
    "whose rules hold for what must be said of gifts and payments, where your English does not tell; all is the strictest",
    "uk",
    oneOf(["us", "uk", "au", "eu", "all"]).optional(),
  ),
  "wrap without": forYou(
    "what the wrap need not write",
    "[newsletter]",
    z
      .preprocess(
        (written) => (typeof written === "string" ? written.split(",").map((one) => one.trim()) : written),
        z.array(oneOf(["pinned comment", "shorts", "post", "newsletter", "titles", "end cards"])),
      )
      .optional(),
  ),
  "poison centre": forYou(
    "whom to call when something poisonous was eaten; printed in briefs as you write it",
    "555 0100, day and night",
    text.optional(),
  ),
  "poison center": forYou("the same, as it is spelled in the US", "555 0100", text.optional()),
  animals: forViewers("animals you keep, so that what is poisonous to them is told", "[cats, hens]", names.optional()),
  "may be named": forYou(
    "people and places that viewers may read of; a line or a paragraph that names anybody else is kept back",
    "[Wilma, the Gullstone show]",
    names.optional(),
  ),
  "do not ask": forYou(
    "questions that Plotreel is not to ask you again, as it asked them",
    "[Where did the Rondo peas come from?]",
    texts.optional(),
  ),
  weights: forYou(
    "how much a kind of thing matters in your tours, times the usual; docs/planning.md names the kinds",
    "{ follow-up: 1.5 }",
    z.record(z.string(), number({ from: 0, to: 100 })).optional(),
  ),
  "film between": forYou("the hours in which you can film", "8:00 to 13:00", clockSpan.optional()),
  "low sun": forYou(
    "between which heights of the sun, in degrees, the light counts as low",
    "{ from: -4, to: 6 }",
    lowSun.optional(),
  ),
  ...nextYearKeys,
  address: forViewers("the address of your public site, without a path", "https://garden.example", link.optional()),
  public: forYou(
    "turns the rule round: then viewers see only what a file describes",
    "only described",
    oneOf(["only described"]).optional(),
  ),
  base: forViewers("the path below that address, where there is one", "/garden/", base.optional()),
});

/** What holds where garden.md is silent. The time zone is UTC so that no machine's own zone can change an output. */
export const usualSettings: GardenSettings = {
  name: "My garden",
  southern: false,
  timeZone: "UTC",
  units: "metric",
  language: "en-GB",
  seasonStarts: "01-01",
  narrationRate: 130,
  photoGapDays: 14,
  kit: [],
  weights: {},
  base: "/",
  body: "",
};

/**
 * Time zones of gardens south of the equator, for a garden that tells no position. Those of the IANA time zone database
 * whose principal place lies south of 15° S, where the year has a winter (from memory).
 */
const southernZone =
  /^(?:Australia\/(?!Darwin$|North$)|Antarctica\/|Pacific\/(?:Auckland|Chatham|Norfolk|Tongatapu|Noumea|Rarotonga)$|Africa\/(?:Johannesburg|Maseru|Mbabane|Maputo|Harare|Gaborone|Windhoek)$|Indian\/(?:Antananarivo|Mauritius|Reunion)$|America\/(?:Argentina\/|Buenos_Aires|Santiago|Punta_Arenas|Montevideo|Asuncion|La_Paz|Sao_Paulo)|Atlantic\/Stanley$)/;

function isSouthern(place: Position | undefined, timeZone: string | undefined): boolean {
  return place === undefined ? southernZone.test(timeZone ?? "") : place.latitude < 0;
}

export function makeSettings(front: z.output<typeof gardenSchema>, body: string): GardenSettings {
  const southern = isSouthern(front.place, front["time zone"]);
  return {
    name: front.name ?? front.title ?? usualSettings.name,
    position: front.place,
    southern,
    timeZone: front["time zone"] ?? usualSettings.timeZone,
    units: front.units ?? usualSettings.units,
    language: front.language ?? usualSettings.language,
    lastFrost: front["last frost"],
    firstFrost: front["first frost"],
    // South of the equator too the year of a garden turns in its winter, which is in July.
    seasonStarts: front["season starts"] ?? (southern ? "07-01" : usualSettings.seasonStarts),
    narrationRate: front["narration rate"] ?? usualSettings.narrationRate,
    photoGapDays: front["photo gap"] ?? usualSettings.photoGapDays,
    kit: front.kit ?? usualSettings.kit,
    ...(front["clip clocks"] !== undefined && { clipClocks: front["clip clocks"] }),
    ...(front.notices !== undefined && { notices: front.notices }),
    ...(front["wrap without"] !== undefined && { wrapWithout: front["wrap without"] }),
    poisonCentre: front["poison centre"] ?? front["poison center"],
    animals: front.animals,
    ...(front["may be named"] !== undefined && { mayBeNamed: front["may be named"] }),
    ...(front["do not ask"] !== undefined && { doNotAsk: front["do not ask"] }),
    weights: front.weights ?? usualSettings.weights,
    filmBetween: front["film between"],
    lowSun: front["low sun"],
    goals: front.goals,
    pins: front.pins,
    prices: front.prices === undefined ? undefined : makePrices(front.prices),
    address: front.address?.replace(/(?<!\/)\/+$/, ""),
    base: front.base ?? usualSettings.base,
    ...(front.public !== undefined && { onlyDescribed: true }),
    body,
  };
}
