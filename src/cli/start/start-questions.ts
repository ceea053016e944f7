/** The four questions of `plotreel start`, each of which a flag answers too; nothing is asked when nobody watches. */
import path from "node:path";
import { CommandError, EXIT } from "../command-error.ts";
import type { Effects } from "../effects.ts";
import type { NewGarden } from "./first-files.ts";
import { placeOf, readPlace, SKIP, type StartPlace, sayChoice } from "./place.ts";
import { sayTown, type Town, timeZonesOf } from "./towns.ts";

export interface StartFlags {
  readonly name?: string | undefined;
  /** A town, latitude and longitude, or "skip". */
  readonly place?: string | undefined;
  readonly units?: "metric" | "us" | undefined;
  readonly timeZone?: string | undefined;
  /** A folder; "none" when there are none. */
  readonly photos?: string | undefined;
}

export interface StartAnswers {
  readonly garden: NewGarden;
  /** A folder that is there; undefined when no photos are to be brought in. */
  readonly photos?: string | undefined;
}

const NONE = "none";

export async function startAnswers(
  flags: StartFlags,
  towns: () => readonly Town[],
  effects: Effects,
): Promise<StartAnswers> {
  if (!effects.canAsk) sayMissing(flags);
  const name = (flags.name ?? (await line("What is your garden called?", effects))).trim() || "My garden";
  const place = await whichPlace(flags.place, towns, effects);
  const timeZone = await whichTimeZone(flags.timeZone, place, effects);
  const units = flags.units ?? (await whichUnits(effects));
  const photos = await whichPhotos(flags.photos, effects);
  return { garden: { name, place, timeZone, units, language: englishOf(place.country, units) }, photos };
}

/** Photos can be brought in on any later day, so only they may go without saying. */
function sayMissing({ name, place, units }: StartFlags): void {
  const missing = [
    ...(name === undefined ? ['--name "My garden"'] : []),
    ...(place === undefined ? [`--place TOWN (or "54.3, -5.6", or ${SKIP})`] : []),
    ...(units === undefined ? ["--units metric (or us)"] : []),
  ];
  if (missing.length === 0) return;
  throw new CommandError(
    `Nobody is at this terminal to be asked, so say it with the command: ${missing.join(", ")}. --photos FOLDER brings photos in.`,
  );
}

async function whichPlace(
  flag: string | undefined,
  towns: () => readonly Town[],
  effects: Effects,
): Promise<StartPlace> {
  const question =
    "Which town is it near? Or latitude and longitude, such as 54.3, -5.6; or nothing, to leave it open. Viewers never learn it.";
  for (let written = flag; ; written = undefined) {
    const text = written ?? (await line(question, effects));
    // Nothing at all needs no table.
    const read = readPlace(text, text.trim() !== "" && text !== SKIP ? towns() : []);
    if ("place" in read) return read.place;
    if ("towns" in read) {
      const chosen = await whichTown(text, read.towns, effects);
      if (chosen !== undefined) return placeOf(chosen);
    } else {
      if (!effects.canAsk) throw new CommandError(read.refused);
      effects.out(read.refused);
    }
  }
}

/** More than these nobody looks through. */
const MOST_SHOWN = 8;

async function whichTown(name: string, towns: readonly Town[], effects: Effects): Promise<Town | undefined> {
  const shown = towns.slice(0, MOST_SHOWN);
  if (!effects.canAsk) {
    const choices = shown.map((town) => `--place "${sayChoice(town, towns)}"`).join("; ");
    throw new CommandError(`There are ${towns.length} towns called ${name}. Say which: ${choices}.`);
  }
  const keys = shown.map((town, at) => ({
    key: String.fromCharCode(97 + at),
    means: `${sayTown(town)} (${town.people.toLocaleString("en-GB")} people, at ${town.latitude}, ${town.longitude})`,
  }));
  const key = await effects.askKey("Which of these?", [...keys, { key: "n", means: "none of them" }]);
  if (key === undefined) throw stopped();
  return shown[keys.findIndex((one) => one.key === key)];
}

/** The town's, or its country has one zone, or the machine stands in one of its zones; else the person says. */
async function whichTimeZone(
  flag: string | undefined,
  { country, timeZone, position, zones: near = [] }: StartPlace,
  effects: Effects,
): Promise<string> {
  if (flag === undefined && timeZone !== undefined) return timeZone;
  const here = effects.timeZone();
  const zones = country === undefined ? near : timeZonesOf(country);
  // Far from any town nobody knows what the clocks say, least of all this machine.
  const isOpen = position === undefined || zones.includes(here) || country !== undefined;
  if (flag === undefined && isOpen && (zones.length === 0 || zones.includes(here))) return here;
  const [only] = zones;
  if (flag === undefined && zones.length === 1 && only !== undefined) return only;
  for (let written = flag; ; written = undefined) {
    if (written === undefined && !effects.canAsk)
      throw new CommandError(
        zones.length === 0
          ? "No town is near that place to tell its time zone. Say it: --time-zone Europe/London (or another region and city)."
          : `${country === undefined ? "Towns near that place keep" : "That country has"} several time zones. Say which: --time-zone ${zones.slice(0, 4).join(" or ")} …`,
      );
    const cities = zones.map(cityOf).join(", ");
    const question =
      zones.length === 0
        ? "Which city has the same time as the garden? Write it as Europe/London."
        : `Which of these has the same time as the garden? ${cities}.`;
    const text = (written ?? (await line(question, effects))).trim();
    const zone = zones.find((one) => cityOf(one).toLowerCase() === text.toLowerCase()) ?? text;
    if (isTimeZone(zone)) return zone;
    const refused = `"${text}" is not a time zone. Write its city, or region and city, for example Europe/London.`;
    if (!effects.canAsk) throw new CommandError(refused);
    effects.out(refused);
  }
}

/** "New York" of America/New_York. */
function cityOf(zone: string): string {
  return zone.slice(zone.lastIndexOf("/") + 1).replaceAll("_", " ");
}

function isTimeZone(text: string): boolean {
  try {
    new Intl.DateTimeFormat("en", { timeZone: text });
    return text.includes("/") || text === "UTC";
  } catch {
    return false;
  }
}

async function whichUnits(effects: Effects): Promise<"metric" | "us"> {
  const key = await effects.askKey("Which units do you use?", [
    { key: "m", means: "metric: metres, kilograms, Celsius" },
    { key: "u", means: "US: feet, pounds, Fahrenheit" },
  ]);
  if (key === undefined) throw stopped();
  return key === "u" ? "us" : "metric";
}

async function whichPhotos(flag: string | undefined, effects: Effects): Promise<string | undefined> {
  if (flag === undefined && !effects.canAsk) return undefined;
  for (let written = flag; ; written = undefined) {
    const text = unquoted(written ?? (await line("Where are photos of it? A folder; or nothing, for now.", effects)));
    if (text === "" || text.toLowerCase() === NONE) return undefined;
    if ((await effects.namesIn(path.resolve(effects.cwd, text))) !== undefined) return text;
    const refused = `There is no folder at ${text}. Give the folder your photos are in, or "${NONE}".`;
    if (!effects.canAsk) throw new CommandError(refused);
    effects.out(refused);
  }
}

/** A folder that is dropped on a terminal comes in quotes. */
function unquoted(text: string): string {
  return text.trim().replace(/^(['"])(.*)\1$/, "$2");
}

async function line(question: string, effects: Effects): Promise<string> {
  const answer = await effects.askLine(question);
  if (answer === undefined) throw stopped();
  return answer;
}

function stopped(): CommandError {
  return new CommandError("Stopped. Nothing was written.", EXIT.couldNot);
}

/** Where English is written, its own way of writing dates; else the one that goes with the units. */
function englishOf(country: string | undefined, units: "metric" | "us"): string {
  const own = ["GB", "IE", "US", "AU", "NZ", "CA", "ZA"].find((code) => code === country);
  return `en-${own ?? (units === "us" ? "US" : "GB")}`;
}
