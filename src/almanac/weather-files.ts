/**
 * Daily weather as text: GHCN-Daily in its three published layouts (fixed-width .dly, by-year CSV, access CSV; NOAA NCEI,
 * GHCN-Daily readme), and a plain CSV with named columns. Everything comes out in °C and mm.
 */
import { parse } from "csv-parse/sync";
import { dayOf } from "../calendar.ts";
import type { Day, Problem } from "../model.ts";

export interface WeatherDay {
  /** °C. */
  readonly tmax?: number | undefined;
  readonly tmin?: number | undefined;
  /** Millimetres. */
  readonly rain?: number | undefined;
}

export interface WeatherFile {
  readonly file: string;
  readonly layout: "ghcn dly" | "ghcn by year" | "ghcn access" | "plain";
  readonly stations: readonly string[];
  readonly days: ReadonlyMap<Day, WeatherDay>;
  /** Values left out because the source itself flags them as failed. */
  readonly flagged: number;
  readonly problems: readonly Problem[];
}

type Element = keyof WeatherDay;

/** GHCN-Daily elements we read; their values are tenths. */
const ELEMENTS: Readonly<Record<string, Element>> = { TMAX: "tmax", TMIN: "tmin", PRCP: "rain" };

/** Nowhere on Earth has been hotter, colder or wetter in a day (WMO archive of extremes: 56.7 °C, -89.2 °C, 1825 mm; from memory). */
const POSSIBLE: Readonly<Record<Element, readonly [number, number]>> = {
  tmax: [-90, 57],
  tmin: [-90, 57],
  rain: [0, 1830],
};

export function readWeather(file: string, text: string): WeatherFile {
  const first = text.replace(/^\uFEFF/, "").trimStart();
  if (/^[A-Z0-9_-]{11}\d{6}[A-Z0-9]{4}/.test(first)) return readDly(file, first);
  if (/^"?[A-Z0-9_-]{11}"?,"?\d{8}"?,/.test(first)) return readByYear(file, first);
  const header = first.slice(0, first.indexOf("\n")).toUpperCase();
  return /(^|,)"?STATION"?,/.test(header) && /(^|,)"?DATE"?(,|$)/.test(header.trim())
    ? readAccess(file, first)
    : readPlain(file, first);
}

/** Collects values, so that every layout treats doubles, flags and impossible values alike. */
class Collector {
  readonly days = new Map<Day, { tmax?: number; tmin?: number; rain?: number }>();
  readonly stations = new Set<string>();
  readonly problems: Problem[] = [];
  flagged = 0;
  private readonly file: string;
  private readonly impossible = new Map<Element, { line: number; value: number; count: number }>();
  private doubles = { line: 0, day: "", count: 0 };

  constructor(file: string) {
    this.file = file;
  }

  add(day: Day | undefined, element: Element, value: number, line: number): void {
    if (day === undefined || !Number.isFinite(value)) return;
    const [least, most] = POSSIBLE[element];
    if (value < least || value > most) {
      const seen = this.impossible.get(element) ?? { line, value, count: 0 };
      this.impossible.set(element, { ...seen, count: seen.count + 1 });
      return;
    }
    const known = this.days.get(day) ?? {};
    if (known[element] !== undefined) {
      if (this.doubles.count === 0) this.doubles = { line, day, count: 0 };
      this.doubles.count += 1;
      return;
    }
    this.days.set(day, { ...known, [element]: value });
  }

  problem(rule: string, line: number, what: string, fix: string): void {
    this.problems.push({ rule, severity: "warning", file: this.file, line, column: 1, what, fix });
  }

  finish(layout: WeatherFile["layout"]): WeatherFile {
    for (const [element, { line, value, count }] of this.impossible) {
      this.problem(
        "weather/impossible-value",
        line,
        `${count === 1 ? "One value" : `${count} values`} of ${element} cannot be (the first is ${value}); ${count === 1 ? "it was" : "they were"} left out.`,
        element === "rain"
          ? "Check the unit: rain is in millimetres."
          : "Check the unit: this looks like Fahrenheit or tenths of a degree; name the column tmax_f, or divide by ten.",
      );
    }
    if (this.doubles.count > 0) {
      this.problem(
        "weather/day-twice",
        this.doubles.line,
        `${this.doubles.day} stands in this file more than once; the first values were kept.`,
        "Take the doubled lines out.",
      );
    }
    const days = new Map([...this.days].sort(([a], [b]) => (a < b ? -1 : 1)));
    return {
      file: this.file,
      layout,
      stations: [...this.stations].sort(),
      days,
      flagged: this.flagged,
      problems: this.problems,
    };
  }
}

/** Columns 1-11 station, 12-15 year, 16-17 month, 18-21 element, then 31 times value 5, measurement, quality and source flag. */
function readDly(file: string, text: string): WeatherFile {
  const found = new Collector(file);
  text.split(/\r?\n/).forEach((row, index) => {
    const element = ELEMENTS[row.slice(17, 21)];
    if (element === undefined) return;
    found.stations.add(row.slice(0, 11));
    for (let slot = 0; slot < 31; slot += 1) {
      const at = 21 + slot * 8;
      const value = Number(row.slice(at, at + 5));
      if (row.slice(at, at + 5).trim() === "" || value === -9999) continue;
      if ((row[at + 6] ?? " ") !== " ") found.flagged += 1;
      else
        found.add(
          dayOf(Number(row.slice(11, 15)), Number(row.slice(15, 17)), slot + 1),
          element,
          value / 10,
          index + 1,
        );
    }
  });
  return found.finish("ghcn dly");
}

/** ID,YYYYMMDD,ELEMENT,VALUE,MFLAG,QFLAG,SFLAG,OBSTIME without a header. */
function readByYear(file: string, text: string): WeatherFile {
  const found = new Collector(file);
  rows(text).forEach(([station = "", date = "", name = "", value = "", , quality = ""], index) => {
    const element = ELEMENTS[name];
    if (element === undefined || value === "" || value === "-9999") return;
    found.stations.add(station);
    if (quality.trim() !== "") found.flagged += 1;
    else
      found.add(
        dayOf(Number(date.slice(0, 4)), Number(date.slice(4, 6)), Number(date.slice(6, 8))),
        element,
        Number(value) / 10,
        index + 1,
      );
  });
  return found.finish("ghcn by year");
}

/** STATION,DATE,…,TMAX,TMAX_ATTRIBUTES with attributes "measurement,quality,source". */
function readAccess(file: string, text: string): WeatherFile {
  const found = new Collector(file);
  const [header = [], ...body] = rows(text);
  const column = new Map(header.map((name, index) => [name.trim().toUpperCase(), index]));
  const cell = (row: readonly string[], name: string) => (row[column.get(name) ?? -1] ?? "").trim();
  // Search services hand out values already converted; tenths are whole numbers, converted ones are not.
  const converted = body.some((row) => Object.keys(ELEMENTS).some((name) => cell(row, name).includes(".")));
  const hottest = Math.max(
    ...body.map((row) => Number(cell(row, "TMAX") || Number.NaN)).filter((value) => !Number.isNaN(value)),
    -100,
  );
  const fahrenheit = converted && hottest > 57;
  if (converted) {
    found.problem(
      "weather/units-converted",
      1,
      `Values here have been converted from tenths already; they are taken as ${fahrenheit ? "°F and inches" : "°C and mm"}.`,
      "If that is wrong, fetch the file again in the archive's own units.",
    );
  }
  body.forEach((row, index) => {
    found.stations.add(cell(row, "STATION"));
    const day = /^(\d{4})-(\d\d)-(\d\d)/.exec(cell(row, "DATE"));
    for (const [name, element] of Object.entries(ELEMENTS)) {
      const value = cell(row, name);
      if (value === "" || value === "-9999") continue;
      if ((cell(row, `${name}_ATTRIBUTES`).split(",")[1] ?? "").trim() !== "") found.flagged += 1;
      else {
        const number = Number(value);
        const si = !converted
          ? number / 10
          : !fahrenheit
            ? number
            : element === "rain"
              ? number * 25.4
              : (number - 32) / 1.8;
        found.add(
          day === null ? undefined : dayOf(Number(day[1]), Number(day[2]), Number(day[3])),
          element,
          si,
          index + 2,
        );
      }
    }
  });
  return found.finish("ghcn access");
}

interface PlainColumn {
  readonly index: number;
  readonly element: Element;
  readonly toSi: (value: number) => number;
}

/** A header names the columns and their units: `date,tmin_c,tmax_c,rain_mm`, `Date;Min (°F);Max (°F);Rain (in)`. */
function readPlain(file: string, text: string): WeatherFile {
  const found = new Collector(file);
  const [header = [], ...body] = rows(text);
  const names = header.map((name) => name.trim().toLowerCase());
  const date = names.findIndex((name) => /^(date|day)$/.test(name));
  const columns = names.map(plainColumn).filter((column) => column !== undefined);
  if (date < 0 || columns.length === 0) {
    found.problem(
      "weather/no-columns",
      1,
      "The first line does not name a date and a temperature or rain column.",
      "Begin the file with a line such as: date,tmin_c,tmax_c,rain_mm",
    );
    return found.finish("plain");
  }
  let badDates = 0;
  body.forEach((row, index) => {
    const parts = /^(\d{4})-?(\d\d)-?(\d\d)$/.exec((row[date] ?? "").trim());
    const day = parts === null ? undefined : dayOf(Number(parts[1]), Number(parts[2]), Number(parts[3]));
    if (day === undefined) {
      badDates += 1;
      if (badDates === 1)
        found.problem(
          "weather/no-date",
          index + 2,
          `"${row[date] ?? ""}" is not a day.`,
          "Write days as year-month-day: 2026-06-14.",
        );
      return;
    }
    for (const { index: at, element, toSi } of columns) {
      const value = (row[at] ?? "").trim().replace(/^(-?\d+),(\d+)$/, "$1.$2");
      if (value !== "" && !/^(-9999|na|n\/a|-)$/i.test(value)) found.add(day, element, toSi(Number(value)), index + 2);
    }
  });
  return found.finish("plain");
}

function plainColumn(name: string, index: number): PlainColumn | undefined {
  const fahrenheit = /(_|\(|°|\b)f\b|fahrenheit/.test(name);
  const inches = /\b(in|inch|inches)\b|_in\b/.test(name);
  const degrees = fahrenheit ? (value: number) => (value - 32) / 1.8 : (value: number) => value;
  if (/^t?max|^high|maximum/.test(name)) return { index, element: "tmax", toSi: degrees };
  if (/^t?min|^low|minimum/.test(name)) return { index, element: "tmin", toSi: degrees };
  if (/rain|precip|prcp/.test(name))
    return { index, element: "rain", toSi: inches ? (value) => value * 25.4 : (value) => value };
  return undefined;
}

function rows(text: string): string[][] {
  return parse(text, {
    relax_column_count: true,
    relax_quotes: true,
    skip_empty_lines: true,
    delimiter: [",", ";", "\t"],
  }) as string[][];
}
