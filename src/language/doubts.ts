/** What the timeline was in doubt about, as a gardener is told: what stands in the notes, and what to do about it. */
import { writeDay } from "../calendar.ts";
import type { Doubt } from "../model.ts";
import { sayNoneGrow, sentence, someOf, wholePlanting } from "./changes/sentence-parts.ts";
import type { Names } from "./names.ts";
import { capital, sayList, sayNumber } from "./numbers.ts";

export interface Told {
  readonly what: string;
  readonly fix: string;
}

const nameTheBed = `Name the bed: "in Long Bed".`;
const cameFromElsewhere = `write "bought" or "given" before the name if plants came from elsewhere`;

export function sayDoubt(doubt: Doubt, names: Names): Told {
  const { bed, day: near } = names;
  switch (doubt.rule) {
    case "timeline/several-beds":
      return {
        what: `The line names no bed, and its note is about several; it was taken to mean ${bed(doubt.bed)}.`,
        fix: `Name the bed in the line: "in ${bed(doubt.bed)}".`,
      };
    case "timeline/nothing-planted":
      return sayNothingPlanted(doubt, names);
    case "timeline/before-planting": {
      const { name, were, they } = someOf(names, doubt.plants, undefined);
      return {
        what: `This is noted of ${name} in ${bed(doubt.bed)} before ${they} ${were} sown or planted there, on ${near(doubt.begun, doubt.day)}.`,
        fix: "Correct the date of this line or of that one.",
      };
    }
    case "timeline/bed-not-in-use": {
      const bound = `${doubt.bound === "since" ? "is in use since" : "was in use until"} ${near(doubt.of, doubt.day)}`;
      return {
        what: `${bed(doubt.bed)} ${bound}, and this line is of ${near(doubt.day, doubt.day)}.`,
        fix: `Correct the date of the line, or "in use ${doubt.bound}" in the bed's file.`,
      };
    }
    case "timeline/sown-where": {
      const { name, were } = someOf(names, doubt.plants, undefined);
      return {
        what: `The line does not say where ${name} ${were} sown; it was taken as sown indoors.`,
        fix: `Write "indoors", or the bed: "in Long Bed".`,
      };
    }
    case "timeline/no-sowing": {
      const { name, were, they } = wholePlanting(names, doubt.plants);
      return {
        what: `No line says when ${name} planted on ${near(doubt.day, doubt.day)} ${were} sown.`,
        fix: `Write "bought" or "given" before the name if ${they} ${were} not raised here, or add the "sowed … indoors" line.`,
      };
    }
    case "timeline/variety-from-nursery":
      return {
        what: `The line names only ${names.plants(doubt.plants)}; the only ones in the nursery were ${names.plants(doubt.meant)}, so they were taken to be those.`,
        fix: "Write the variety in the line.",
      };
    case "timeline/more-than-there":
      return sayMoreThanThere(doubt, names);
    case "timeline/more-than-sown":
      return sayMoreThanSown(doubt, names);
    case "timeline/no-bed": {
      const { name, were } = someOf(names, doubt.plants, undefined);
      const happened =
        doubt.doing === "planted" ? `${were} planted` : `came up by ${doubt.one ? "itself" : "themselves"}`;
      return { what: `The line does not say in which bed ${name} ${happened}.`, fix: nameTheBed };
    }
    case "timeline/nothing-there": {
      const where = doubt.beds.length === 0 ? "anywhere" : `in ${sayList(doubt.beds.map(bed), "or")}`;
      const { name, were } = someOf(names, doubt.plants, undefined);
      const grow = were === "were" ? "grow" : "grows";
      return {
        what: sentence(`the line says that ${name} ${were} ${doubt.doing}, but none ${grow} ${where} on this day`),
        fix: "Correct the name, the bed or the date, or add the line that says when they were sown or planted.",
      };
    }
    case "timeline/picked-of-several":
      return {
        what: `${capital(names.plants(doubt.plants))} of several plantings grow in ${doubt.beds.map(bed).join(" and ")}, and the line does not say which were picked; they were counted for ${bed(doubt.bed)} and for none of them.`,
        fix: "Write the variety in the line, or one line for each.",
      };
    case "timeline/in-another-bed":
      return {
        what: `${sayNoneGrow(names, doubt.plants)} in ${sayList(doubt.beds.map(bed), "or")}; the line was taken to mean those in ${sayList(doubt.otherBeds.map(bed))}.`,
        fix: "Name the bed in the line, or add the line that says when they were planted there.",
      };
    case "timeline/several-plantings":
      return saySeveralPlantings(doubt, names);
    case "timeline/after-its-end":
      return {
        what: `This speaks of ${names.plants(doubt.plants)} in ${bed(doubt.bed)}, which ended on ${near(doubt.ended, doubt.day)}; it was added to that planting.`,
        fix: "If others grow there now, add the line that says when they were sown or planted.",
      };
    case "timeline/never-cleared": {
      const { name, were, they } = wholePlanting(names, doubt.plants);
      return {
        what: `No line says when ${name} in ${bed(doubt.bed)} ${were} cleared; ${they} ${countsOf(they)} as over from ${writeDay(doubt.ended)}.`,
        fix: `Add a line with the day it was done: "cleared ${names.plants(doubt.plants)} from ${bed(doubt.bed)}".`,
      };
    }
    case "timeline/annual-or-perennial": {
      const { name, they } = wholePlanting(names, doubt.plants);
      const stand = they === "they" ? "stand" : "stands";
      return {
        what: `Nothing says whether ${name} in ${bed(doubt.bed)} ${stand} for years or for one season; ${they} ${countsOf(they)} as alive.`,
        fix: `Write "perennial: true" or "perennial: false" in varieties/${doubt.plants.variety ?? doubt.plants.crop ?? "name"}.md, or a line with the day it was cleared.`,
      };
    }
    case "timeline/gear-not-there":
      return {
        what: `No line says that ${names.gear(doubt.gear)} was put up there.`,
        fix: `Add the "put up" line on its day, or correct the bed.`,
      };
    case "timeline/no-such-trouble":
      return {
        what: `"${capital(doubt.cause)}" is noted as over, and no open trouble of that name was found.`,
        fix: `Write the same words as in the "trouble" line, and the same bed or variety.`,
      };
    case "timeline/no-such-promise":
      return {
        what: `"${doubt.what}" is put off by a newer promise, and no open promise of those words was found.`,
        fix: `Write behind "puts off" the words that stand behind "what" in the earlier promise.`,
      };
    case "timeline/trouble-left-open":
      return {
        what: `Nothing says when the trouble "${doubt.cause}" of ${writeDay(doubt.day)} ended; it was taken as over when the season did.`,
        fix: `Write "cured: ${doubt.cause}" with the bed or variety on the day it was seen to be over.`,
      };
  }
}

type Of<Rule extends Doubt["rule"]> = Extract<Doubt, { readonly rule: Rule }>;

function sayNothingPlanted({ plants, bed }: Of<"timeline/nothing-planted">, names: Names): Told {
  const { name, were, they } = someOf(names, plants, undefined);
  if (bed === undefined)
    return {
      what: `${sayNoneGrow(names, plants)} anywhere on this day, and the line names no bed, so it could not be placed.`,
      fix: `Name the bed, or add the line that says when ${they} ${were} sown or planted.`,
    };
  return {
    what: `No line says when the ${name} in ${names.bed(bed)} ${were} sown or planted.`,
    fix: `Add a "sowed" or "planted" line on its day; until then ${they} ${countsOf(they)} from here.`,
  };
}

function sayMoreThanThere({ plants, bed, number, left, doing }: Of<"timeline/more-than-there">, names: Names): Told {
  if (doing === "planted") {
    const { name, were } = someOf(names, plants, { value: number, approx: false });
    return {
      what: `${capital(name)} ${were} planted, but only ${sayNumber(left)} stood in ${names.bed(bed)}, where they were sown.`,
      fix: `Correct the count here or in the "sowed" line, or ${cameFromElsewhere}.`,
    };
  }
  return {
    what: `${howMany(names, plants, number)} ${doing}, but ${leftOver(left)} left in ${names.bed(bed)}.`,
    fix: "Correct the count here or in the line that planted them.",
  };
}

function sayMoreThanSown(doubt: Of<"timeline/more-than-sown">, names: Names): Told {
  const { plants, number, left, sowings, doing, day } = doubt;
  const [only = "", another] = sowings;
  const sown = another === undefined ? `the sowing of ${names.day(only, day)}` : `${sayNumber(sowings.length)} sowings`;
  const correct = `Correct the count here or in the "sowed" line`;
  return {
    what: `${howMany(names, plants, number)} ${doing}, but ${leftOver(left)} left of ${sown}.`,
    fix: doing === "planted" ? `${correct}, or ${cameFromElsewhere}.` : `${correct}.`,
  };
}

function saySeveralPlantings(doubt: Of<"timeline/several-plantings">, names: Names): Told {
  const { plants, beds, chosen, manyBeds, day } = doubt;
  const begun = ({ bed, since }: (typeof chosen)[0]) =>
    `${manyBeds ? `the one in ${names.bed(bed)}, ` : "that of "}${names.day(since, day)}`;
  return {
    what: `Several plantings of ${names.plants(plants)} stand in ${sayList(beds.map(names.bed))}; the line was taken to mean ${sayList(chosen.map(begun))}.`,
    fix: manyBeds
      ? "Name the bed in the line."
      : `Say where in the bed, for example "row 2", here and where they were sown or planted.`,
  };
}

/** "Twelve Musselburgh leeks were". */
function howMany(names: Names, plants: Of<"timeline/more-than-there">["plants"], number: number): string {
  return `${capital(sayNumber(number))} ${names.plants(plants, number)} ${number === 1 ? "was" : "were"}`;
}

function leftOver(left: number): string {
  return left === 0 ? "none was" : left === 1 ? "only one was" : `only ${sayNumber(left)} were`;
}

function countsOf(they: "they" | "it"): string {
  return they === "they" ? "count" : "counts";
}
