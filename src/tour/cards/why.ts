/** Why a thing is as it is, and what is done differently: reasons, remedies, places, times, the person's own remarks. */

import { daysBetween, yearBefore } from "../../calendar.ts";
import { own, toCircumstance, toPause, type Way } from "../../films/index.ts";
import { isNewToGarden } from "../../garden/index.ts";
import { capital, cultivar, inBed, theGear } from "../../language/index.ts";
import type { Bed, Event } from "../../model.ts";
import type { BedOnTheDay, Lot } from "../bed-on-the-day.ts";
import type { Weighed } from "../candidates/candidate.ts";
import { spanWords } from "./figure.ts";
import { specialOf } from "./own-words.ts";
import { quotedWays } from "./quoted.ts";
import { lastSeasonOf, many, type Remembered, seasonsGrown } from "./remembered.ts";

/** The most worth first. */
export function reasonsAt(
  here: BedOnTheDay,
  show: readonly Weighed[],
  remembered: readonly Remembered[],
): readonly (readonly Way[])[] {
  const shown = [...new Set(show.flatMap(({ lots }) => lots))].filter(({ planting }) => !planting.private);
  const season = eventsOf(here, shown);
  const fresh = shown.filter(
    ({ variety }) => variety !== undefined && isNewToGarden(here.index.garden, variety.id, here.day),
  );
  return [
    ...season.flatMap((event) => reasonGiven(event, here)),
    ...remedies(here, remembered),
    ...season.flatMap((event) => remarks(event, here)),
    ...quotedWays(here),
    ...fresh.flatMap((lot) => specials(lot)),
    ...fresh.flatMap((lot) => comesFrom(lot)),
    ...shown.flatMap((lot) => placeOrTime(lot, here)),
    ...groundWork(here),
    ...shown.flatMap((lot) => specials(lot)),
    ...shown.flatMap((lot) => comesFrom(lot)),
    ...tried(here),
    ...shown.flatMap((lot) => everyYear(lot, here)),
  ];
}

/** This season's lines of the plants shown and of the bed itself. */
function eventsOf(here: BedOnTheDay, shown: readonly Lot[]): readonly Event[] {
  const ofPlants = shown.flatMap(({ events }) => events);
  const ofBed = here.news.filter((event) => event.variety === undefined && event.crop === undefined);
  return [...new Set([...ofPlants, ...ofBed])].filter(({ day, private: hidden }) => day >= here.season && !hidden);
}

/** "Mesh doors: because of the blight". Where one thing alone grows its name is left out, as everywhere when it is too long. */
function reasonGiven(event: Event, here: BedOnTheDay): readonly (readonly Way[])[] {
  if (event.reason === undefined) return [];
  const reason = event.reason.trim();
  const { gear, varieties, crops } = here.index.garden;
  const variety = varieties.get(event.variety ?? "");
  const crop = crops.get(event.crop ?? variety?.crop ?? "");
  const plants = here.growing.length < 2 || (variety ?? crop) === undefined ? undefined : cultivar({ variety, crop });
  const putUp = gear.get(event.gear ?? "");
  const what = putUp?.private === false ? putUp.title : plants;
  const bare = own(capital(reason), [event]);
  return [what === undefined ? [bare] : [own(`${capital(what)}: ${reason}`, [event]), bare]];
}

/** Items nested below a line are its remarks; told with the plants they speak of, else nobody knows what is meant. */
function remarks(event: Event, here: BedOnTheDay): readonly (readonly Way[])[] {
  // "Picked 4 cucumbers, 6 hot wax still yellow": the rest of a line is of what it names last.
  const isLast = here.index.event(nextOfLine(event.id)) === undefined;
  const { varieties, crops } = here.index.garden;
  const variety = varieties.get(event.variety ?? "");
  const crop = crops.get(event.crop ?? variety?.crop ?? "");
  const name =
    variety === undefined && crop === undefined ? "" : `${capital(event.cause ?? cultivar({ variety, crop }))}: `;
  return [...(isLast ? sayings(event) : []), ...event.more.filter((said) => !said.startsWith("="))].map((said) => {
    const words = said.trim().replace(/\.$/, "");
    return [own(`${name}${words}`, [event]), own(capital(words), [event])];
  });
}

/** Of "notes/….md:7" the second event of the line, of "…:7/2" the third. */
function nextOfLine(id: string): string {
  const colon = id.lastIndexOf(":") + 1;
  const [line = "", number = "1"] = id.slice(colon).split("/");
  return `${id.slice(0, colon)}${line}/${Number(number) + 1}`;
}

/** Of the rest of a line what is more than an amount or a place: "wider than last year so they dry off". */
const telling = /\b(?:than|so|because|like|never|not|first|last|than|too|hardly|still|only|without|instead|again)\b/i;

/** The rest of a line where it is a remark, and stands in the line as it is quoted. */
function sayings({ detail, text }: Event): readonly string[] {
  return detail !== undefined && telling.test(detail) && text.includes(detail) ? [detail] : [];
}

/** What gear is put up against; a net that keeps birds out does nothing for blight. */
const against: readonly (readonly [gear: RegExp, cause: RegExp])[] = [
  [/\b(?:net|netting|mesh|fleece|cage|cloches?)\b/i, /moth|butterfl|caterpillar|fly\b|flies|flea beetle|aphid|thrips/i],
  [/\b(?:net|netting|cage|mesh)\b/i, /pigeon|bird|crow|rabbit|deer|squirrel|cat\b/i],
  [/\b(?:fleece|cloches?|tunnel)\b/i, /frost|cold|hail/i],
  [/\b(?:collars?|copper|wool|traps?)\b/i, /slug|snail|cutworm/i],
  [/\b(?:shade)\b/i, /heat|sun|scorch/i],
];

function guards(gear: string, cause: string): boolean {
  return against.some(([things, causes]) => things.test(gear) && causes.test(cause));
}

/** Gear that stands since this season where its crop had trouble before: the remedy, told with what it is for. */
function remedies(here: BedOnTheDay, remembered: readonly Remembered[]): readonly (readonly Way[])[] {
  const [past] = remembered;
  if (past === undefined || !past.lastYear) return [];
  const putUp = here.index.garden.events.filter(
    (event) =>
      event.kind === "put up" &&
      event.bed === here.bed.id &&
      event.day >= here.season &&
      event.day <= here.day &&
      !event.private,
  );
  return putUp.flatMap((event) => {
    const gear = here.index.garden.gear.get(event.gear ?? "");
    if (gear === undefined || gear.private || !guards(gear.title, past.cause) || !here.now.gear.includes(gear.id))
      return [];
    return [
      [
        {
          frame: "why remedy",
          text: `${capital(theGear(gear.title))} is up, after last year's ${past.cause}`,
          grounds: [event, past.event],
        },
        {
          frame: "why remedy because",
          text: `The ${many(past.crop)} had ${past.cause} ${past.when}, so ${theGear(gear.title)}`,
          grounds: [event, past.event],
        },
      ],
    ];
  });
}

/** A different bed, or two weeks sooner or later than last year. */
const worthSaying = 12;

function placeOrTime(lot: Lot, here: BedOnTheDay): readonly (readonly Way[])[] {
  const before = lastSeasonOf(lot, here);
  const begun = lot.planting.planted ?? lot.planting.sown;
  if (before === undefined || begun === undefined) return [];
  const grounds = [...lot.grounds, ...before.lots.slice(0, 1)];
  const [bed] = before.beds;
  const record = bed === undefined ? undefined : here.index.garden.beds.get(bed);
  const verb = lot.planting.planted === undefined ? "sown" : "planted";
  const days = daysBetween(before.begun, yearBefore(begun));
  const name = cultivar(lot);
  const moved =
    before.beds.length === 1 && record !== undefined && bed !== here.bed.id && !record.private
      ? [
          { frame: "why moved", text: `${name}: ${inBed(record)} last year, here now`, grounds },
          { frame: "why moved was", text: `${name} was ${inBed(record)} last year`, grounds },
        ]
      : [];
  const timed =
    Math.abs(days) >= worthSaying && Math.abs(days) <= 100
      ? [
          {
            frame: "why time",
            text: `${name}: ${verb} ${spanWords(Math.abs(days))} ${days > 0 ? "later" : "earlier"} than last year`,
            grounds,
          },
          {
            frame: "why time this",
            text: `This year ${name} went in ${spanWords(Math.abs(days))} ${days > 0 ? "later" : "earlier"}`,
            grounds,
          },
        ]
      : [];
  return [timed, moved].filter((ways) => ways.length > 0);
}

/** What went into the bed this season, or what it was built of, in the person's words: "leaf mould, no manure". */
function groundWork({ bed, season, day }: BedOnTheDay): readonly (readonly Way[])[] {
  const ways = (what: string, frame: string, said: readonly [string, string]): readonly Way[] => {
    const short = toPause(what, 8);
    if (short === undefined) return [];
    return said.map((words, at) => ({
      frame: at === 0 ? frame : `${frame} this`,
      text: capital(words.replace("…", short)),
      grounds: [bed],
    }));
  };
  const isNew = (work: Bed["filled"][number]) => work.day !== undefined && work.day >= season && work.day <= day;
  return [
    ...bed.filled
      .filter(isNew)
      .map(({ what }) => ways(what, "why ground", ["into this bed this year went …", "what is new in here is …"])),
    ...bed.built.filter(isNew).map(({ what }) => ways(what, "why built", ["built this year: …", "it is a new bed: …"])),
  ].filter((all) => all.length > 0);
}

function specials(lot: Lot): readonly (readonly Way[])[] {
  const special = specialOf(lot.variety);
  if (special === undefined || lot.variety === undefined) return [];
  const room = 10 - cultivar(lot).split(" ").length;
  const short = toCircumstance(special.text, room);
  return short === undefined ? [] : [[own(`${cultivar(lot)}: ${short}`, [lot.variety])]];
}

/** From whom: a neighbour, a swap, one's own seed of last year. What was bought is a matter of the dossier. */
function comesFrom({ variety }: Lot): readonly (readonly Way[])[] {
  const { name, obtained } = variety?.source ?? {};
  if (variety === undefined || variety.private || name === undefined) return [];
  if (obtained !== "swapped" && obtained !== "gifted") return [];
  const short = toCircumstance(name, 9 - cultivar({ variety, crop: undefined }).split(" ").length);
  return short === undefined ? [] : [[own(`${variety.title}: from ${short}`, [variety])]];
}

function tried(here: BedOnTheDay): readonly (readonly Way[])[] {
  return here.now.troubles
    .filter(({ private: hidden, opened }) => !hidden && opened >= here.season)
    .flatMap((trouble) =>
      trouble.tried
        .flatMap((one) => ("what" in one ? (toPause(one.what, 9) ?? []) : []))
        .map((what) => [own(capital(what), [trouble])]),
    );
}

/** "Fourth year of Musselburgh, the one I always grow". */
function everyYear(lot: Lot, here: BedOnTheDay): readonly (readonly Way[])[] {
  const seasons = seasonsGrown(lot, here);
  if (seasons < 3 || lot.planting.perennial) return [];
  const name = cultivar(lot);
  return [
    [
      { frame: "why always", text: `${name}: the same one as every year`, grounds: lot.grounds },
      {
        frame: "why again",
        text: `${name} again, ${seasons === 3 ? "third" : seasons === 4 ? "fourth" : "another"} year running`,
        grounds: lot.grounds,
      },
    ],
  ];
}
