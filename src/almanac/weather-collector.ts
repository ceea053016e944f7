/** Collects the values of one weather file, so that every layout treats doubles, flags and impossible values alike. */
import type { Day, Position, Problem } from "../model.ts";
import { problem, type RuleName } from "../records/index.ts";

export interface WeatherDay {
  /** °C. */
  readonly tmax?: number | undefined;
  readonly tmin?: number | undefined;
  /** Millimetres. */
  readonly rain?: number | undefined;
}

export type WeatherElement = keyof WeatherDay;

/** What one station of a file measured, in order of day. */
export interface StationDays {
  /** As the archive names it; undefined in a plain file. */
  readonly station?: string | undefined;
  /** Where the file says it stands. */
  readonly position?: Position | undefined;
  readonly days: ReadonlyMap<Day, WeatherDay>;
}

export interface WeatherFile {
  readonly file: string;
  readonly layout: "ghcn dly" | "ghcn by year" | "ghcn access" | "plain";
  readonly stations: readonly StationDays[];
  /** Values left out because the source itself flags them as failed. */
  readonly flagged: number;
  readonly problems: readonly Problem[];
}

/** Nowhere on Earth has been hotter, colder or wetter in a day (WMO archive of extremes: 56.7 °C, -89.2 °C, 1825 mm; from memory). */
const possible: Readonly<Record<WeatherElement, readonly [number, number]>> = {
  tmax: [-90, 57],
  tmin: [-90, 57],
  rain: [0, 1830],
};

const elementWords: Readonly<Record<WeatherElement, string>> = {
  tmax: "highest temperature",
  tmin: "lowest temperature",
  rain: "rain",
};

/** From this many impossible values on, and this share of all, a column is in another unit and none of it can be trusted. */
const wrongUnit = { values: 3, share: 0.01 };

interface Slip {
  readonly line: number;
  readonly shown: string;
  count: number;
}

type Values = { -readonly [element in WeatherElement]: number | undefined };

export class WeatherCollector {
  flagged = 0;
  private readonly file: string;
  private readonly stations = new Map<string, { days: Map<Day, Values>; last: Day; inOrder: boolean }>();
  private readonly positions = new Map<string, Position>();
  private readonly problems: Problem[] = [];
  private readonly impossible = new Map<WeatherElement, Slip>();
  private readonly counted: Record<WeatherElement, number> = { tmax: 0, tmin: 0, rain: 0 };
  private doubles: Slip | undefined;
  private current: { readonly station: string; readonly day: Day; readonly values: Values } | undefined;

  constructor(file: string) {
    this.file = file;
  }

  add(station: string, day: Day | undefined, element: WeatherElement, value: number, line: number): void {
    if (day === undefined || !Number.isFinite(value)) return;
    this.counted[element] += 1;
    const [least, most] = possible[element];
    if (value < least || value > most) {
      const slip = this.impossible.get(element) ?? { line, shown: String(Number(value.toFixed(1))), count: 0 };
      slip.count += 1;
      this.impossible.set(element, slip);
      return;
    }
    const known = this.valuesOf(station, day);
    if (known[element] === undefined) known[element] = value;
    else {
      this.doubles ??= { line, shown: day, count: 0 };
      this.doubles.count += 1;
    }
  }

  /** The values of a day so far. Most lines speak of the day of the line before. */
  private valuesOf(station: string, day: Day): Values {
    if (this.current?.day === day && this.current.station === station) return this.current.values;
    let series = this.stations.get(station);
    if (series === undefined) {
      series = { days: new Map(), last: "", inOrder: true };
      this.stations.set(station, series);
    }
    let values = series.days.get(day);
    if (values === undefined) {
      series.inOrder &&= day > series.last;
      series.last = day;
      values = { tmax: undefined, tmin: undefined, rain: undefined };
      series.days.set(day, values);
    }
    this.current = { station, day, values };
    return values;
  }

  /** Where a station stands; the first place told counts, and another one later is said. */
  place(station: string, position: Position, day: Day | undefined, line: number): void {
    const known = this.positions.get(station);
    if (known === undefined) this.positions.set(station, position);
    else if (known.latitude !== position.latitude || known.longitude !== position.longitude) {
      const moved = this.problems.some(({ rule, what }) => rule === "weather/station-moved" && what.includes(station));
      if (moved) return;
      this.problem(
        "weather/station-moved",
        line,
        `The station ${station} stands elsewhere from ${day ?? "here"} on, so its earlier and later days are not of one place.`,
        "Nothing needs to be done if the two places are alike; else keep the days of each in a file of their own.",
      );
    }
  }

  problem(rule: RuleName, line: number, what: string, fix: string): void {
    this.problems.push(problem(rule, { file: this.file, line, column: 1 }, what, fix));
  }

  finish(layout: WeatherFile["layout"]): WeatherFile {
    for (const [element, slip] of this.impossible) this.leaveOut(element, slip);
    const upsideDown = this.dropUpsideDown();
    if (upsideDown !== undefined) {
      this.problem(
        "weather/min-above-max",
        1,
        `On ${upsideDown.shown}${upsideDown.count === 1 ? "" : ` and ${others(upsideDown.count)}`} the lowest temperature is above the highest; both were left out.`,
        "Look whether the two columns were taken for one another.",
      );
    }
    if (this.doubles !== undefined) {
      this.problem(
        "weather/day-twice",
        this.doubles.line,
        `${this.doubles.shown} stands in this file more than once; the first values were kept.`,
        "Take the doubled lines out.",
      );
    }
    return {
      file: this.file,
      layout,
      stations: [...this.stations]
        .map(([station, { days, inOrder }]) => ({
          station: station === "" ? undefined : station,
          position: this.positions.get(station),
          days: inOrder ? days : new Map([...days].sort(([a], [b]) => (a < b ? -1 : 1))),
        }))
        .sort((a, b) => ((a.station ?? "") < (b.station ?? "") ? -1 : 1)),
      flagged: this.flagged,
      problems: this.problems,
    };
  }

  private leaveOut(element: WeatherElement, { line, shown, count }: Slip): void {
    const all = this.counted[element];
    const another = count >= wrongUnit.values && count / all >= wrongUnit.share;
    const what = elementWords[element];
    if (another) {
      for (const { days } of this.stations.values()) for (const values of days.values()) values[element] = undefined;
      this.problem(
        "weather/wrong-unit",
        line,
        `${count} of ${all} values of ${what} cannot be (the first is ${shown}), so the column is in another unit than its name says, and none of it was used.`,
        unitFix(element),
      );
    } else {
      this.problem(
        "weather/impossible-value",
        line,
        `${count === 1 ? "One value" : `${count} values`} of ${what} cannot be (the first is ${shown}); ${count === 1 ? "it was" : "they were"} left out.`,
        unitFix(element),
      );
    }
  }

  private dropUpsideDown(): Slip | undefined {
    let slip: Slip | undefined;
    for (const { days } of this.stations.values()) {
      for (const [day, values] of days) {
        if (values.tmin === undefined || values.tmax === undefined || values.tmin <= values.tmax) continue;
        values.tmin = undefined;
        values.tmax = undefined;
        slip ??= { line: 1, shown: day, count: 0 };
        slip.count += 1;
      }
    }
    return slip;
  }
}

function others(count: number): string {
  return count === 2 ? "one other day" : `${count - 1} other days`;
}

function unitFix(element: WeatherElement): string {
  return element === "rain"
    ? "Check the unit: rain is in millimetres unless the column's name says inches (rain_in)."
    : "Check the unit: this looks like Fahrenheit or tenths of a degree; name the column tmax_f, or divide by ten.";
}
