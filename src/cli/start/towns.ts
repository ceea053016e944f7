/** Towns by name: where they lie, and which time zones their country has. */
import { normaliseName } from "../../records/index.ts";
import { stateCalled } from "./town-zones.ts";

export interface Town {
  readonly name: string;
  /** ISO 3166 code: "GB". */
  readonly country: string;
  /** By letters, where people know it so: "MO"; else empty. */
  readonly region: string;
  readonly people: number;
  readonly latitude: number;
  readonly longitude: number;
}

export function readTowns(table: string): readonly Town[] {
  return table
    .split("\n")
    .filter((line) => line !== "" && !line.startsWith("#"))
    .map((line) => {
      const [name = "", country = "", region = "", thousands, latitude, longitude] = line.split("\t");
      return {
        name,
        country,
        region,
        people: Number(thousands) * 1000,
        latitude: Number(latitude),
        longitude: Number(longitude),
      };
    });
}

/** Of a name, or a name, a comma and a country or region; the largest first. Whole names go before beginnings of names. */
export function townsCalled(written: string, towns: readonly Town[]): readonly Town[] {
  const [name = "", ...rest] = written.split(",").map((part) => part.trim());
  const within = rest.map((part) => part.toLowerCase());
  const wanted = normaliseName(name);
  if (wanted === "") return [];
  const there = towns.filter((town) => within.every((part) => liesIn(town, part)));
  const called = there.filter((town) => normaliseName(town.name) === wanted);
  const found = called.length > 0 ? called : there.filter((town) => normaliseName(town.name).startsWith(`${wanted} `));
  return [...found].sort((a, b) => b.people - a.people);
}

function liesIn({ country, region }: Town, part: string): boolean {
  const said = [country, region, countryName(country)].map((one) => one.toLowerCase());
  if (country === "US" && stateCalled(part) === region) return true;
  return said.includes(part) || (COMMON[part] ?? "") === country || (COMMON_REGIONS[part] ?? "") === region;
}

/** How countries and the parts of one are called beside their official names. */
const COMMON: Readonly<Record<string, string>> = { uk: "GB", usa: "US", america: "US", "great britain": "GB" };
const COMMON_REGIONS: Readonly<Record<string, string>> = {
  england: "ENG",
  scotland: "SCT",
  wales: "WLS",
  "northern ireland": "NIR",
};

const countryNames = new Intl.DisplayNames("en-GB", { type: "region" });

function countryName(code: string): string {
  return countryNames.of(code) ?? code;
}

/** "Springfield, MO, United States". */
export function sayTown({ name, region, country }: Town): string {
  return [name, ...(region === "" ? [] : [region]), countryName(country)].join(", ");
}

/** IANA names; none of a place that is no country of its own. */
export function timeZonesOf(country: string): readonly string[] {
  // Older engines have it as a property, newer ones as a function.
  const locale = new Intl.Locale(`und-${country}`) as Intl.Locale & {
    readonly timeZones?: readonly string[];
    getTimeZones?(): readonly string[];
  };
  return locale.getTimeZones?.() ?? locale.timeZones ?? [];
}
