/**
 * Daily weather as text: GHCN-Daily in its three published layouts (fixed-width .dly, by-year CSV, access CSV; NOAA NCEI,
 * GHCN-Daily readme), and a plain CSV with named columns. Everything comes out in °C and mm.
 */

import { dayOf } from "../calendar.ts";
import { celsiusOf, millimetresPerInch } from "../measures.ts";
import type { Day, Position } from "../model.ts";
import { WeatherCollector, type WeatherElement, type WeatherFile } from "./weather-collector.ts";
import { rowsOf } from "./weather-rows.ts";

/** GHCN-Daily elements we read; their values are tenths. */
const elements: ReadonlyMap<string, WeatherElement> = new Map(
  Object.entries({ TMAX: "tmax", TMIN: "tmin", PRCP: "rain" }),
);

export function readWeather(file: string, text: string): WeatherFile {
  const first = text.replace(/^\uFEFF/, "").trimStart();
  if (/^[A-Z0-9_-]{11}\d{6}[A-Z0-9]{4}/.test(first)) return readDly(file, first);
  if (/^"?[A-Z0-9_-]{11}"?,"?\d{8}"?,/.test(first)) return readByYear(file, first);
  const header = (/^[^\r\n]*/.exec(first)?.[0] ?? "").toUpperCase();
  return /(^|,)"?STATION"?,/.test(header) && /(^|,)"?DATE"?(,|$)/.test(header)
    ? readAccess(file, first)
    : readPlain(file, first);
}

/** Columns 1-11 station, 12-15 year, 16-17 month, 18-21 element, then 31 times value 5, measurement, quality and source flag. */
function readDly(file: string, text: string): WeatherFile {
  const found = new WeatherCollector(file);
  text.split(/\r?\n/).forEach((row, index) => {
    const element = elements.get(row.slice(17, 21));
    if (element === undefined) return;
    const station = row.slice(0, 11);
    const [year, month] = [Number(row.slice(11, 15)), Number(row.slice(15, 17))];
    for (let slot = 0; slot < 31; slot += 1) {
      const at = 21 + slot * 8;
      const written = row.slice(at, at + 5).trim();
      if (written === "" || written === "-9999") continue;
      if ((row[at + 6] ?? " ") !== " ") found.flagged += 1;
      else found.add(station, dayOf(year, month, slot + 1), element, Number(written) / 10, index + 1);
    }
  });
  return found.finish("ghcn dly");
}

/** ID,YYYYMMDD,ELEMENT,VALUE,MFLAG,QFLAG,SFLAG,OBSTIME without a header. */
function readByYear(file: string, text: string): WeatherFile {
  const found = new WeatherCollector(file);
  rowsOf(text).forEach(([station = "", date = "", name = "", value = "", , quality = ""], index) => {
    const element = elements.get(name);
    if (element === undefined || value === "" || value === "-9999") return;
    if (quality.trim() !== "") found.flagged += 1;
    else found.add(station, compactDay(date), element, Number(value) / 10, index + 1);
  });
  return found.finish("ghcn by year");
}

/** STATION,DATE,LATITUDE,LONGITUDE,ELEVATION,…,TMAX,TMAX_ATTRIBUTES with attributes "measurement,quality,source". */
function readAccess(file: string, text: string): WeatherFile {
  const found = new WeatherCollector(file);
  const [header = [], ...body] = rowsOf(text);
  const columns = header.map((name) => name.trim().toUpperCase());
  const cellsOf = (name: string) => {
    const at = columns.indexOf(name);
    return (row: readonly string[]) => (row[at] ?? "").trim();
  };
  const [stationOf, dateOf] = [cellsOf("STATION"), cellsOf("DATE")];
  const [latitudeOf, longitudeOf, elevationOf] = [cellsOf("LATITUDE"), cellsOf("LONGITUDE"), cellsOf("ELEVATION")];
  const values = [...elements].map(([name, element]) => ({
    element,
    valueIn: cellsOf(name),
    attributesIn: cellsOf(`${name}_ATTRIBUTES`),
  }));
  const toSi = convertedFrom(body, values, found);
  let place = "";
  body.forEach((row, index) => {
    const station = stationOf(row);
    const day = accessDay(dateOf(row));
    const here = `${station} ${latitudeOf(row)} ${longitudeOf(row)} ${elevationOf(row)}`;
    if (here !== place) {
      place = here;

      const position = positionOf(latitudeOf(row), longitudeOf(row), elevationOf(row));
      if (position !== undefined) found.place(station, position, day, index + 2);
    }
    for (const { element, valueIn, attributesIn } of values) {
      const value = valueIn(row);
      if (value === "" || value === "-9999") continue;
      if (isFlagged(attributesIn(row))) found.flagged += 1;
      else found.add(station, day, element, toSi(Number(value), element), index + 2);
    }
  });

  return found.finish("ghcn access");
}

/** "2026-06-14", with or without an hour behind it. */
function accessDay(written: string): Day | undefined {
  return /^\d{4}-\d\d-\d\d/.test(written)
    ? dayOf(Number(written.slice(0, 4)), Number(written.slice(5, 7)), Number(written.slice(8, 10)))
    : undefined;
}

/** Attributes are "measurement,quality,source"; any letter for quality says that a check failed. */
function isFlagged(attributes: string): boolean {
  const quality = attributes.charAt(attributes.indexOf(",") + 1);
  return attributes.includes(",") && quality !== "" && quality !== "," && quality !== " ";
}

/** Search services hand out values already converted; tenths are whole numbers, converted ones are not. */
function convertedFrom(
  body: readonly (readonly string[])[],
  values: readonly { readonly element: WeatherElement; readonly valueIn: (row: readonly string[]) => string }[],
  found: WeatherCollector,
): (value: number, element: WeatherElement) => number {
  if (!body.some((row) => values.some(({ valueIn }) => valueIn(row).includes(".")))) return (value) => value / 10;
  const highest = values.find(({ element }) => element === "tmax");
  const fahrenheit = body.some((row) => Number(highest?.valueIn(row)) > 57);

  found.problem(
    "weather/units-converted",
    1,
    `Values here have been converted from tenths already; they are taken as ${fahrenheit ? "°F and inches" : "°C and mm"}.`,
    "If that is wrong, fetch the file again in the archive's own units.",
  );
  if (!fahrenheit) return (value) => value;
  return (value, element) => (element === "rain" ? value * millimetresPerInch : celsiusOf(value));
}

function positionOf(latitude: string, longitude: string, elevation: string): Position | undefined {
  const [north, east] = [Number(latitude), Number(longitude)];
  if (latitude === "" || longitude === "" || !(Math.abs(north) <= 90) || !(Math.abs(east) <= 180)) return undefined;
  const height = Number(elevation);
  const known = elevation !== "" && Number.isFinite(height) && height > -500;
  return { latitude: north, longitude: east, elevation: known ? height : undefined };
}

interface PlainColumn {
  readonly index: number;
  readonly element: WeatherElement;
  readonly toSi: (value: number) => number;
}

/** A header names the columns and their units: `date,tmin_c,tmax_c,rain_mm`, `Date;Min (°F);Max (°F);Rain (in)`. */
function readPlain(file: string, text: string): WeatherFile {
  const found = new WeatherCollector(file);
  const [header = [], ...body] = rowsOf(text);
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
    const day = plainDay((row[date] ?? "").trim());
    if (day === undefined) {
      badDates += 1;
      if (badDates > 1) return;
      const written = row[date] ?? "";
      found.problem(
        "weather/no-date",
        index + 2,
        `"${written}" is not a day.`,
        "Write days as year-month-day: 2026-06-14.",
      );
      return;
    }
    for (const { index: at, element, toSi } of columns) {
      const value = (row[at] ?? "").trim().replace(/^(-?\d+),(\d+)$/, "$1.$2");
      if (value !== "" && !/^(-9999|na|n\/a|-)$/i.test(value))
        found.add("", day, element, toSi(Number(value)), index + 2);
    }
  });
  return found.finish("plain");
}

function plainDay(written: string): Day | undefined {
  const parts = /^(\d{4})-?(\d\d)-?(\d\d)$/.exec(written);
  return parts === null ? undefined : dayOf(Number(parts[1]), Number(parts[2]), Number(parts[3]));
}

function compactDay(written: string): Day | undefined {
  return dayOf(Number(written.slice(0, 4)), Number(written.slice(4, 6)), Number(written.slice(6, 8)));
}

function plainColumn(name: string, index: number): PlainColumn | undefined {
  const fahrenheit = /(_|\(|°|\b)f\b|fahrenheit/.test(name);
  const inches = /\b(in|inch|inches)\b|_in\b/.test(name);
  const degrees = fahrenheit ? celsiusOf : (value: number) => value;
  if (/^t?max|^high|maximum/.test(name)) return { index, element: "tmax", toSi: degrees };
  if (/^t?min|^low|minimum/.test(name)) return { index, element: "tmin", toSi: degrees };
  if (/rain|precip|prcp/.test(name))
    return { index, element: "rain", toSi: inches ? (value) => value * millimetresPerInch : (value) => value };
  return undefined;
}
