/**
 * The time zone of a town whose country has several, by its region and where it lies. Between zones, where the line runs
 * along counties, nothing is said: the person is asked. From the IANA time zone database and the zones of US law (49 CFR 71).
 */
import type { Town } from "./towns.ts";

/** From west to east: a zone and the longitude it ends at; undefined where either may be. */
type Zones = string | readonly (readonly [zone: string | undefined, until: number])[];

const east = "America/New_York";
const central = "America/Chicago";
const mountain = "America/Denver";
const pacific = "America/Los_Angeles";

/** By the letters of the state: its name, its zones. */
const states: Readonly<Record<string, readonly [name: string, zones: Zones | undefined]>> = {
  AL: ["alabama", central],
  AK: ["alaska", "America/Anchorage"],
  AZ: ["arizona", "America/Phoenix"],
  AR: ["arkansas", central],
  CA: ["california", pacific],
  CO: ["colorado", mountain],
  CT: ["connecticut", east],
  DE: ["delaware", east],
  DC: ["district of columbia", east],
  FL: [
    "florida",
    [
      [central, -85.3],
      [undefined, -84.8],
      [east, 0],
    ],
  ],
  GA: ["georgia", east],
  HI: ["hawaii", "Pacific/Honolulu"],
  ID: ["idaho", undefined],
  IL: ["illinois", central],
  IN: [
    "indiana",
    [
      [undefined, -86.4],
      ["America/Indianapolis", 0],
    ],
  ],
  IA: ["iowa", central],
  KS: [
    "kansas",
    [
      [undefined, -100.9],
      [central, 0],
    ],
  ],
  KY: [
    "kentucky",
    [
      [central, -86.8],
      [undefined, -84.9],
      [east, 0],
    ],
  ],
  LA: ["louisiana", central],
  ME: ["maine", east],
  MD: ["maryland", east],
  MA: ["massachusetts", east],
  MI: [
    "michigan",
    [
      [undefined, -87],
      ["America/Detroit", 0],
    ],
  ],
  MN: ["minnesota", central],
  MS: ["mississippi", central],
  MO: ["missouri", central],
  MT: ["montana", mountain],
  NE: [
    "nebraska",
    [
      [mountain, -102],
      [undefined, -100.3],
      [central, 0],
    ],
  ],
  NV: ["nevada", pacific],
  NH: ["new hampshire", east],
  NJ: ["new jersey", east],
  NM: ["new mexico", mountain],
  NY: ["new york", east],
  NC: ["north carolina", east],
  ND: [
    "north dakota",
    [
      [undefined, -100],
      [central, 0],
    ],
  ],
  OH: ["ohio", east],
  OK: ["oklahoma", central],
  OR: [
    "oregon",
    [
      [pacific, -118.5],
      [undefined, 0],
    ],
  ],
  PA: ["pennsylvania", east],
  RI: ["rhode island", east],
  SC: ["south carolina", east],
  SD: [
    "south dakota",
    [
      [mountain, -102],
      [undefined, -99.8],
      [central, 0],
    ],
  ],
  TN: [
    "tennessee",
    [
      [central, -86],
      [undefined, -84.5],
      [east, 0],
    ],
  ],
  TX: [
    "texas",
    [
      [mountain, -106],
      [undefined, -104],
      [central, 0],
    ],
  ],
  UT: ["utah", mountain],
  VT: ["vermont", east],
  VA: ["virginia", east],
  WA: ["washington", pacific],
  WV: ["west virginia", east],
  WI: ["wisconsin", central],
  WY: ["wyoming", mountain],
};

/** Countries whose towns keep one time, but for islands and enclaves. */
const countries: Readonly<Record<string, Zones>> = {
  DE: "Europe/Berlin",
  ES: [
    ["Atlantic/Canary", -12],
    ["Europe/Madrid", 180],
  ],
  MY: "Asia/Kuala_Lumpur",
  NZ: "Pacific/Auckland",
  PT: [
    ["Atlantic/Azores", -20],
    ["Atlantic/Madeira", -14],
    ["Europe/Lisbon", 180],
  ],
};

const letters = new Map(Object.entries(states).map(([letter, [name]]) => [name, letter]));

/** "MN" of "Minnesota", in small letters or not. */
export function stateCalled(name: string): string | undefined {
  return letters.get(name.toLowerCase());
}

/** By the borders of the states, a degree off them where they bend; the Barrier Range keeps Adelaide's time, and is asked. */
function zoneInAustralia(latitude: number, longitude: number): string | undefined {
  if (longitude < 128) return "Australia/Perth";
  if (longitude < 130) return undefined;
  if (longitude < 137 || (longitude < 141 && latitude < -27)) {
    if (latitude > -25) return "Australia/Darwin";
    return latitude < -27 ? "Australia/Adelaide" : undefined;
  }
  if (longitude < 139) return undefined;
  if (latitude > -28.05) return "Australia/Brisbane";
  if (latitude > -29.3 || (longitude < 142.5 && latitude > -33.5) || longitude < 141.2) return undefined;
  if (latitude < -39.2) return "Australia/Hobart";
  return latitude < -36.3 && longitude < 149 ? "Australia/Melbourne" : "Australia/Sydney";
}

export function zoneOfTown({ country, region, latitude, longitude }: Omit<Town, "name" | "people">) {
  if (country === "AU") return zoneInAustralia(latitude, longitude);
  const zones = country === "US" ? states[region]?.[1] : countries[country];
  if (zones === undefined || typeof zones === "string") return zones;
  return zones.find(([, until]) => longitude < until)?.[0];
}
