/** The sentences of a recap. */

import { airborne, rotationRule, rotationRules, soilDiseases } from "../../almanac/index.ts";
import {
  bedVerb,
  capital,
  dayOnly,
  fullStop,
  inBed,
  isSingular,
  label,
  plantName,
  sayAge,
  sayAirTemperature,
  sayClimb,
  sayDistance,
  sayList,
  sayNumber,
  sayPicked,
  sayPickings,
  sayPlural,
  sayRain,
  sayShare,
  sayWeight,
  theBed,
  type Voice,
} from "../../language/index.ts";
import { fahrenheitPerCelsius, gramsPerPound } from "../../measures.ts";
import type { Day, GardenSettings } from "../../model.ts";
import { takingVerb } from "../../timeline/index.ts";
import type {
  BedName,
  BedYieldFacts,
  ForecastFacts,
  HeatFacts,
  LossFacts,
  PhotoSetFacts,
  Plants,
  PromiseFacts,
  RainFacts,
  RotationFacts,
  StandingFacts,
  StationFacts,
  TakenPlants,
  ThanksFacts,
  TotalFacts,
} from "./facts.ts";
import { partOf, percentMore } from "./per-cent.ts";

/** "810 degree days": a sum in Fahrenheit degrees is 1.8 times one in Celsius degrees. */
function sayHeat(degreeDays: number, { units }: GardenSettings, withUnit = true): string {
  const sum = Math.round(units === "us" ? degreeDays * fahrenheitPerCelsius : degreeDays);
  const said = sum >= 10_000 ? String(sum) : sayNumber(sum);
  return withUnit ? `${said} ${sum === 1 ? "degree day" : "degree days"}` : said;
}

/** ", six days late"; `apart` is negative before the usual day. */
function againstUsual(apart: number | undefined): string {
  if (apart === undefined) return "";
  if (apart === 0) return ", the usual day";
  const span = Math.abs(apart) === 7 ? "a week" : sayAge(Math.abs(apart));
  return `, ${span} ${apart > 0 ? "late" : "early"}`;
}

/** Nobody remembers a season by the gram: from ten kilograms, or twenty pounds, on it is told whole. */
function wholeOf(grams: number, units: GardenSettings["units"]): number {
  const unit = units === "us" ? gramsPerPound : 1000;
  return grams < 10_000 ? grams : Math.round(grams / unit) * unit;
}

/** ", nearly 70 per cent more than 2024", ", 20 kg more than by this day last year". */
function besideLastYear(grams: number, before: number, than: string, units: GardenSettings["units"]): string {
  const ratio = grams / before;
  if (Math.abs(ratio - 1) < noNews) return `, as much as ${than}`;
  const percent = percentMore(ratio);
  if (percent !== undefined && !than.startsWith("by")) return `, ${percent} ${than}`;
  const apart = sayWeight(wholeOf(Math.abs(grams - before), units), units);
  return `, ${apart} ${ratio > 1 ? "more" : "less"} than ${than.startsWith("by") ? than : `in ${than}`}`;
}

/** Days apart below which two years are called alike: a warm afternoon makes more. */
const alike = 2;

/** Ratios nearer to 1 than this are no news. */
const noNews = 0.04;

function shareSaid(share: number): string {
  const fractions: readonly (readonly [number, string])[] = [
    [0.075, "a twentieth"],
    [0.14, "a tenth"],
    [0.22, "a sixth"],
    [0.29, "a quarter"],
    [0.41, "a third"],
    [0.6, "a half"],
  ];
  return fractions.find(([most]) => share < most)?.[1] ?? sayShare(share);
}

function causesSaid(causes: readonly string[]): string {
  return causes.length === 0 ? "" : ` to ${sayList(causes)}`;
}

export const recapWords = {
  /** "Crown Prince squash" in a sentence, "Crown Prince, squash" in a list. */
  plants: (plants: Plants) => plantName(plants),
  label: (plants: Plants) => label(plants),
  harvest: sayPicked,
  nothingPicked: "nothing",
  noAmount: "no amount noted",

  total(facts: TotalFacts, voice: Voice): string {
    const { grams, stems, pickings, from, to, whole, past, finished, mean, lastYearGrams } = facts;
    const { units } = voice.settings;
    const when = whole ? `By ${dayOnly(to, voice)}` : `From ${dayOnly(from, voice)} to ${dayOnly(to, voice)}`;
    const head = whole && finished ? facts.season : `${when} the garden`;
    const gave = past || (whole && finished) ? "gave" : "has given";
    if (pickings === 0) return `${head} ${gave} nothing that was noted.`;
    const weight = (of: number) => sayWeight(wholeOf(of, units), units);
    const than = finished ? String(facts.lastYear) : "by this day last year";
    const compared = grams > 0 && lastYearGrams !== undefined ? besideLastYear(grams, lastYearGrams, than, units) : "";
    const parts = [
      ...(grams > 0 ? [`${weight(grams)}${compared}`] : []),
      ...(stems > 0 ? [`${sayPlural(stems, "stem", "stems")} of flowers`] : []),
    ];
    if (parts.length === 0) return `${head} ${gave} ${sayPlural(pickings, "picking", "pickings")}.`;
    const average =
      mean === undefined || compared !== ""
        ? ""
        : `, against ${weight(mean.grams)} in the mean of ${sayNumber(mean.seasons)} earlier seasons`;
    return `${head} ${gave} ${parts.join(compared === "" ? " and " : ", and ")}${average}.`;
  },

  /** `share` of all that was weighed, in hundredths. */
  gaveMost: (said: string, grams: number, share: number, { settings }: Voice) =>
    `The ${said} gave most, ${sayWeight(grams, settings.units)}${share < 1 ? "" : `, ${share} % of all that was weighed`}.`,

  /** "Slugs took eleven leek plants, the gale eight plants; leek moth and clubroot are not over."; may be empty. */
  setbacks(taken: readonly TakenPlants[], open: readonly string[]): string {
    const lost = taken.map(({ cause, plants, noted, crop }, index) => {
      const many = sayPlural(plants, index === 0 ? "plant" : "more", index === 0 ? "plants" : "more");
      // Three tomatoes would be fruits.
      const all = `${sayNumber(plants)} ${crop === undefined ? "" : `${crop.name} `}${plants === 1 ? "plant" : "plants"}`;
      if (!noted)
        return `${index === 0 ? "" : "and "}${many} ${plants === 1 ? "was" : "were"} lost without a cause noted`;
      if (index === 0 || taken[0]?.noted === false) return `${cause} took ${all}`;
      return `${cause} ${crop?.id === taken[0]?.crop?.id ? sayNumber(plants) : all}`;
    });
    const goingOn =
      open.length === 0
        ? ""
        : `${sayList(open)} ${open.length === 1 && !/[^s]s$/.test(open[0] ?? "") ? "is" : "are"} not over`;
    const text = [lost.join(", "), goingOn].filter((part) => part !== "").join("; ");
    return text === "" ? "" : `${capital(text)}.`;
  },

  trials(settled: readonly string[], running: readonly string[]): string {
    const parts = [
      settled.length === 0
        ? ""
        : `${sayPlural(settled.length, "trial was settled", "trials were settled")}: ${sayList(settled)}`,
      running.length === 0 ? "" : `${sayPlural(running.length, "trial is", "trials are")} running: ${sayList(running)}`,
    ].filter((part) => part !== "");
    return `${capital(parts.join("; "))}.`;
  },

  weather: {
    tooFew: (known: number, days: number) =>
      `Of ${sayNumber(days)} days the weather files have ${known === 1 ? "one" : `only ${sayNumber(known)}`}, too few to tell of frost, heat or rain.`,
    nights(frosts: number, hard: number, soFar: boolean): string {
      const nights =
        frosts === 0
          ? "There was no night of frost"
          : `There ${frosts === 1 ? "was" : "were"} ${sayPlural(frosts, "night", "nights")} of frost`;
      const cold = hard === 0 || frosts === 0 ? "" : `, ${sayNumber(hard)} of them hard`;
      return `${nights}${cold}${soFar ? " so far" : ""}.`;
    },
    /** `apart`: days after the usual day. */
    lastFrost: (day: Day, apart: number | undefined, voice: Voice) =>
      `The last frost of spring was on ${dayOnly(day, voice)}${againstUsual(apart)}.`,
    firstFrost: (day: Day, apart: number | undefined, voice: Voice) =>
      `The first frost of autumn was on ${dayOnly(day, voice)}${againstUsual(apart)}.`,
    frostFree: (days: number) => `No frost for ${sayPlural(days, "day", "days")}.`,
    extremes: (
      hottest: { readonly day: Day; readonly value: number },
      coldest: { readonly day: Day; readonly value: number },
      voice: Voice,
    ) =>
      `The hottest day was ${dayOnly(hottest.day, voice)} with ${sayAirTemperature(hottest.value, voice.settings.units)}, the coldest night ${dayOnly(coldest.day, voice)} with ${sayAirTemperature(coldest.value, voice.settings.units)}.`,
    rain({ millimetres, wetDays, rainDays, dry }: RainFacts, voice: Voice): string {
      const spell =
        dry === undefined || dry.days < 5
          ? ""
          : `; the longest spell without was ${sayPlural(dry.days, "day", "days")}, from ${dayOnly(dry.from, voice)} to ${dayOnly(dry.to, voice)}`;
      if (wetDays === 0)
        return `No rain was measured${dry === undefined ? "" : ` in ${sayPlural(rainDays, "day", "days")}`}.`;
      return `It rained ${sayRain(millimetres, voice.settings.units)} on ${sayPlural(wetDays, "day", "days")}${spell}.`;
    },
    rainSince(film: Day, millimetres: number, wetDays: number, voice: Voice): string {
      const since = `Since the last film on ${dayOnly(film, voice)}`;
      return wetDays === 0
        ? `${since} no rain has fallen.`
        : `${since} it has rained ${sayRain(millimetres, voice.settings.units)} on ${sayPlural(wetDays, "day", "days")}.`;
    },
    heat({ since, heat, base, lastYear, daysAhead, days }: HeatFacts, voice: Voice): string {
      const { settings } = voice;
      const begun = `Since ${dayOnly(since, voice)} there were ${sayHeat(heat, settings)} above ${sayAirTemperature(base, settings.units)}${days === undefined ? "" : ` in the ${days.inBoth} of ${days.of} days that both years have`}`;
      if (lastYear === undefined) return `${begun}.`;
      const apart = heatApart(heat, lastYear, daysAhead).replace(/ (?:of |with )?last year$/, "");
      const then = days === undefined ? "by the same day last year" : "in the same days last year";
      return `${begun}, against ${sayHeat(lastYear, settings, false)} ${then}: ${apart}.`;
    },
    gaps: (days: number) =>
      `${capital(sayPlural(days, "day", "days"))} of this time have no temperatures in the files, so frosts and heat may be told too low.`,
    /** One sentence for the season's paragraph, from the last frost and the heat; undefined without both. */
    short(
      frost: { readonly day: Day; readonly apart: number | undefined } | undefined,
      heat: HeatFacts | undefined,
      voice: Voice,
    ): string | undefined {
      const parts = [
        frost === undefined
          ? undefined
          : `the last frost came on ${dayOnly(frost.day, voice)}${againstUsual(frost.apart)}`,
        heat?.lastYear === undefined || heat.daysAhead === undefined
          ? undefined
          : `in warmth the season is ${heatApart(heat.heat, heat.lastYear, heat.daysAhead)}`,
      ].filter((part) => part !== undefined);
      return parts.length === 0 ? undefined : `${capital(parts.join(", and "))}.`;
    },
    source({ station, distanceKm, higherM, days }: StationFacts, { units }: GardenSettings): string {
      const away = distanceKm === undefined ? "" : `, ${sayDistance(distanceKm, units)} from the garden`;
      const height =
        higherM === undefined || Math.abs(higherM) < 30
          ? ""
          : ` and ${sayClimb(Math.abs(higherM), units)} ${higherM > 0 ? "higher" : "lower"}`;
      const from =
        distanceKm === 0
          ? "a file taken as measured in the garden"
          : `station ${station ?? "without a name"}${away}${height}`;
      return `${from} (${days} days)`;
    },
    method: (sources: readonly string[], bridgedDays: number) =>
      `Weather: daily minimum, maximum and rain${sources.length === 0 ? "" : ` from ${sources.join("; ")}; each day from the nearest that has it whole`}.${bridgedDays === 0 ? "" : ` ${capital(sayPlural(bridgedDays, "day", "days"))} in gaps of three days at most lie on a straight line between their neighbours.`}`,
    heatMethod:
      "Heat: degree days by the simple average, the middle of the day's highest and lowest temperature less 4.4 °C (40 °F), never below nothing (first reading of McMaster and Wilhelm, 1997).",
    frostLeft: (days: number, frost: Day, voice: Voice) =>
      `${capital(sayPlural(days, "day", "days"))} ${days === 1 ? "is" : "are"} left to the usual first frost on ${dayOnly(frost, voice)}.`,
  },

  /** "The Crown Prince squash gave 26.1 kg from five plants, 5.22 kg a plant; last year it was 2.64 kg."; undefined when there is nothing to tell. */
  standing(facts: StandingFacts, voice: Voice): string | undefined {
    const { plants, now, each, before, lost, causes, otherTroubles } = facts;
    const { settings } = voice;
    const name = `The ${plantName(plants)}`;
    const single = isSingular(plants);
    const amount = sayPicked(now, settings);
    const years = {
      "same days": " in the same days last year",
      "same day": " by the same day last year",
      "whole year": " last year",
    };
    const parts: string[] = [];
    if (now.times > 0) {
      const gave =
        amount === undefined
          ? `${single ? "was" : "were"} ${takingVerb(plants.crop)} ${now.times === 1 ? "once" : `${sayNumber(now.times)} times`}, no amount noted`
          : `gave ${amount}${each === undefined ? ` ${sayPickings(now.times)}` : ""}`;
      const plant =
        each === undefined
          ? ""
          : ` from ${sayNumber(each.plants)} plants, ${sayWeight(each.grams, settings.units)} a plant`;
      const compared = each?.lastYear === undefined && before !== undefined && amount !== undefined;
      const of = (plants: number | undefined) =>
        !compared || each !== undefined || facts.set?.before === undefined || plants === undefined
          ? ""
          : ` from ${sayPlural(plants, "plant", "plants")}`;
      const then =
        each?.lastYear !== undefined
          ? `; last year it was ${sayWeight(each.lastYear, settings.units)}`
          : compared
            ? `, against ${sayPicked(before, settings)}${of(facts.set?.before)}${years[facts.span]}`
            : "";
      parts.push(`${name} ${gave}${of(facts.set?.now)}${plant}${then}`);
    }
    if (facts.allLost) {
      const gone = `${single ? "was" : "were"} all lost${causesSaid(causes)}`;
      parts.push(parts.length === 0 ? `${name} ${gone}` : `${single ? "it" : "they"} ${gone}`);
    }
    if (lost > 0) {
      const of = facts.began === undefined ? "" : ` of ${sayNumber(facts.began)}`;
      const some = `${sayNumber(lost)}${of} ${lost === 1 && of === "" ? "plant" : "plants"}`;
      const end =
        facts.never === undefined
          ? ""
          : facts.never === "not planted"
            ? " before they were planted out"
            : ` and gave nothing before ${dayOnly(facts.never.gone, voice)}, when the last were gone`;
      parts.push(
        parts.length === 0
          ? `${name} lost ${some}${causesSaid(causes)}${end}`
          : `${some} ${lost === 1 ? "was" : "were"} lost${causesSaid(causes)}`,
      );
    }
    if (otherTroubles.length > 0) {
      const were = otherTroubles.length > 1 || /[^s]s$/.test(otherTroubles[0] ?? "") ? "were" : "was";
      parts.push(
        parts.length === 0
          ? `${name} had ${sayList(otherTroubles)}`
          : `${sayList(otherTroubles)} ${were} on ${single ? "it" : "them"}`,
      );
    }
    return parts.length === 0 ? undefined : `${capital(parts.join("; "))}.`;
  },

  loss(facts: LossFacts, voice: Voice): string {
    const { plants, first, last, end } = facts;
    const names =
      facts.moreKinds > 0 ? [...facts.names, sayPlural(facts.moreKinds, "other kind", "other kinds")] : facts.names;
    const what = sayList(names);
    const where = facts.bed === undefined ? "" : ` ${inBed(facts.bed)}`;
    const cause = facts.cause === undefined ? "" : capital(facts.cause);
    const days =
      first === last ? `on ${dayOnly(first, voice)}` : `between ${dayOnly(first, voice)} and ${dayOnly(last, voice)}`;
    const some = sayPlural(plants, "plant", "plants");
    const lost =
      plants === 0
        ? facts.all && cause !== "" && what !== ""
          ? `${cause} took all the ${what}${where}, ${days}`
          : undefined
        : cause !== ""
          ? `${cause} took ${some}${what === "" ? "" : ` of the ${what}`}${where}, ${days}`
          : `${capital(some)}${what === "" ? "" : ` of the ${what}`}${where} ${plants === 1 ? "was" : "were"} lost, no cause noted, ${days}`;
    const seen = `${cause === "" ? "Plants were lost" : cause}${what === "" ? where : ` on the ${what}${where}`}, seen ${days}`;
    const over =
      end === undefined
        ? ""
        : end === "open"
          ? "; not over yet"
          : end === "open, past"
            ? "; no line says that it was over"
            : `; over by ${dayOnly(end.over, voice)}`;
    const worse =
      facts.lastYear === undefined
        ? ""
        : ` Last year by then it was ${facts.lastYear === 0 ? "none" : sayNumber(facts.lastYear)}.`;
    const tried = facts.tried.length === 0 ? "" : ` Tried: ${facts.tried.join("; ")}.`;
    return `${lost ?? seen}${over}.${worse}${tried}`;
  },

  /** "The long bed gave 53.3 kg and 17 fruits; about two thirds of the weight was squash." */
  bedYield({ bed, amount, pickings, mostly }: BedYieldFacts): string {
    const most =
      mostly === undefined
        ? ""
        : mostly.share === undefined
          ? `, all of it ${mostly.crop.plural}`
          : `; ${partOf(mostly.share)} of the weight was ${mostly.crop.plural}`;
    return `${capital(theBed(bed))} gave ${amount}${most === "" ? ` ${sayPickings(pickings)}` : most}.`;
  },
  sameHeat(day: Day, then: number, now: number, { settings }: Voice): string {
    const gave = then > 0 ? sayWeight(then, settings.units) : "nothing that was weighed";
    return `Last year the same warmth had come together by ${dayOnly(day, { settings, day })}, and by then the garden had given ${gave}; now it is ${sayWeight(now, settings.units)}.`;
  },

  photos({ bed, days, span, green }: PhotoSetFacts, voice: Voice): string {
    const cover =
      green === undefined
        ? ""
        : `; green went from ${Math.round(green.from * 100)} % to ${Math.round(green.to * 100)} % of ${green.of === "bed" ? "the bed" : "the picture"}`;
    return `${capital(theBed(bed))} from one spot on ${sayList(days.map((day) => dayOnly(day, voice)))}, ${sayAge(span)} from first to last${cover}.`;
  },

  promise({ what, promisedOn, kept, due, standing }: PromiseFacts, voice: Voice): string {
    const day = (of: Day) => dayOnly(of, voice);
    const promised = `Promised on ${day(promisedOn)}: ${what.charAt(0).toLowerCase()}${what.slice(1)}${/[?!]$/.test(what) ? "" : "."}`;
    const end =
      kept !== undefined
        ? `Kept on ${day(kept)}${due !== undefined && kept > due ? ", later than said" : ""}.`
        : standing === "broken" && due !== undefined
          ? `It was due by ${day(due)} and is still owed.`
          : due === undefined
            ? "Still to come."
            : due === voice.day
              ? "It is due today."
              : `Due by ${day(due)}.`;
    return `${promised} ${end}`;
  },

  /** "The Crown Prince squash should be ready between 2 September and 14 October, most likely about 22 September; squash takes about a quarter longer here than its record says." */
  forecast(facts: ForecastFacts, voice: Voice): string {
    const { plants, from, likely, to, expected } = facts;
    const day = (of: Day) => dayOnly(of, voice);
    const ready = facts.goal === "flower" ? "be in flower" : "be ready";
    const name = `The ${plantName(plants)}`;
    const single = isSingular(plants);
    const apart = facts.ratio - 1;
    const own =
      facts.learnedFrom === 0
        ? ""
        : Math.abs(apart) < noNews
          ? `; ${sayPlural(facts.learnedFrom, "earlier planting", "earlier plantings")} here kept to that`
          : `; ${plants.crop?.plural ?? "such plants"} here took about ${shareSaid(Math.abs(apart))} ${apart > 0 ? "longer" : "less"} than the record says`;
    if (expected.by < voice.day)
      return `${name} ${single ? "was" : "were"} expected to ${ready} by ${day(expected.by)} and ${single ? "is" : "are"} not; what is as late as that mostly comes by ${day(to)}${own}.`;
    if (expected.from <= voice.day)
      return `${name} may ${ready} any day up to ${day(to)}${likely > voice.day ? `, most likely about ${day(likely)}` : ""}${own}.`;
    return `${name} should ${ready} between ${day(from)} and ${day(to)}, most likely about ${day(likely)}${own}.`;
  },
  planting: (plants: Plants, bed: BedName | undefined, began: "sown" | "planted", on: Day, voice: Voice) =>
    `${plantName(plants)}${bed === undefined ? "" : ` ${inBed(bed)}`}, ${began} on ${dayOnly(on, voice)}`,
  timeToSow: (rows: readonly { readonly crops: readonly string[]; readonly by: Day }[], voice: Voice) =>
    `There is still time to sow ${rows.map(({ crops, by }) => `${sayList(crops)} up to ${dayOnly(by, voice)}`).join(", ")}.`,

  rotation({ bed, crops, family, gap, years, disease }: RotationFacts): string {
    const rule = rotationRule(family);
    const after = gap === 1 ? "the season after" : `${sayNumber(gap)} seasons after`;
    const wait =
      disease === undefined
        ? `Leave ${sayNumber(years)} seasons between them, or ${rule?.reason}`
        : `With ${disease} seen there leave ${sayNumber(years)} seasons between them`;
    return `${capital(theBed(bed))} had ${sayList(crops.map(({ plural }) => plural))} ${after} ${bedVerb(bed, "its", "their")} last of ${rule?.name}. ${wait}.`;
  },
  /** "the cabbage family" */
  family: (family: string) => rotationRule(family)?.name ?? family,
  planned: (what: string) => fullStop(`Planned: ${what}`),
  moreRotation: (n: number) =>
    `${capital(sayPlural(n, "more bed or family", "more beds and families"))} came back too soon; the table has them.`,
  /** `disease` is a name in the table of diseases. */
  diseaseSeen(disease: string, beds: readonly BedName[]): string {
    const row = soilDiseases.find(({ name }) => name === disease);
    return `${capital(disease)} was seen in ${sayList(beds.map(theBed))}. ${row?.advice}`;
  },
  /** `row` is the place in the table of what comes through the air. */
  noCure(row: number, causes: readonly string[]): string {
    const why = airborne[row]?.why ?? "";
    const many = causes.length > 1;
    return why.startsWith("It ")
      ? `${capital(sayList(causes))} ${many || /s$/.test(causes[0] ?? "") ? "fly" : "flies"} in, so a net in time does more than another bed.`
      : why;
  },

  thanks({ to, plants, gear, more, how }: ThanksFacts): string {
    const shown = [
      ...plants.map((one) => plantName(one)),
      ...gear.map((title) => `the ${title.charAt(0).toLowerCase()}${title.slice(1)}`),
    ];
    // That something was given or lent is said; that seed was swapped goes without saying.
    const words = { lent: ", lent", gifted: ", given free", swapped: "" };
    return `Thanks${to === undefined ? "" : ` to ${to}`} for ${sayList(more > 0 ? [...shown, sayPlural(more, "more", "more")] : shown)}${how === undefined ? "" : words[how]}.`;
  },

  remarks: {
    noAmount: (n: number) =>
      `${capital(sayPlural(n, "picking says", "pickings say"))} no amount: counted as ${n === 1 ? "a picking" : "pickings"}, and missing in the weights.`,
    unassigned: (n: number) =>
      `${capital(sayPlural(n, "picking says", "pickings say"))} not which of several plantings was picked: in the totals of the bed and the crop, and in no planting's.`,
    countedOnly: "What was only counted, such as stems and heads, has no weight and no part in the shares.",
  },

  methods: {
    picked:
      "Picked: note lines of the days told, added up by weight, by volume and by piece, which are never turned into one another.",
    plant:
      "A plant's yield: all that its planting gave, over the plants set out less those given away, moved or thinned.",
    forecasts:
      "Forecasts: the variety's days, slower while the day is shorter than ten hours, times what this garden's own plantings took; where weather is known, averaged with the same in degree days. The window is made to hold four times in five, for what has not come by the day of asking; plantings that are overdue teach with those that came.",
    trials:
      "Trials: one value for each row, bed or pot treated apart, from days that all arms have; exact permutation test of the difference of their means, two-sided, within beds and seasons where these hold as many of each; the interval of the difference from the same test, 95 %. Rows next to one another count as one, and so does a bed that one arm has for itself. Plots needed: power 0.8 at 0.05, with the spread seen.",
    needs:
      "Plants needed: goal over own yield of finished plantings, the lost ones with them; else the range of handbooks, from Kansas State University's yields of rows (MF315) at the closest and widest spacing and, from memory, such tables by the plant; jars by the USDA Complete Guide to Home Canning (AIB 539, 2015), where a need says so from memory of it.",
    rotation: `Rotation: the same family off a bed for ${rotationSources()}; longer after a disease that stays in the soil. Why: common knowledge of growers, from memory.`,
    draft: (season: string, exact: boolean) =>
      `The draft for ${season} was ${exact ? "found by trying every choice" : "found by search, and a better one may exist"}.`,
  },
};

/** "three days ahead of last year", "level with last year". */
function heatApart(heat: number, lastYear: number, daysAhead: number | undefined): string {
  if (daysAhead === undefined)
    return heat > lastYear ? "more than last year had had by then" : "less than last year had had by then";
  if (Math.abs(daysAhead) <= alike) return "level with last year";
  return `${sayPlural(Math.abs(daysAhead), "day", "days")} ${daysAhead > 0 ? "ahead of" : "behind"} last year`;
}

/** "three seasons (the cabbage family and the onion family by West Virginia University Extension), two seasons (…)": each page for the families it names. */
function rotationSources(): string {
  return [...Map.groupBy(rotationRules, ({ years }) => years)]
    .map(([years, rules]) => {
      const pages = [...Map.groupBy(rules, ({ source }) => source.title)].map(
        ([title, named]) => `${sayList(named.map(({ name }) => name))} by ${title}`,
      );
      return `${sayNumber(years)} seasons (${pages.join("; ")})`;
    })
    .join(", ");
}
