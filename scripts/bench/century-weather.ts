/** A hundred years of daily weather in each layout the almanac reads; the same bytes on every machine. */
import { addDays } from "../../src/calendar.ts";

const STATION = "GBM00099999";
const tenths = { TMAX: "tmax", TMIN: "tmin", PRCP: "rain" } as const;
type Element = keyof typeof tenths;

interface Row {
  readonly day: string;
  readonly tmax: number;
  readonly tmin: number;
  readonly rain: number;
}

export function centuryWeather(years = 100): Readonly<Record<string, string>> {
  const rows: Row[] = [];
  for (let day = `${2026 - years}-01-01`, i = 0; day < "2026-01-01"; day = addDays(day, 1), i += 1) {
    const mean = Math.round(100 - 80 * Math.cos(((i % 365.25) / 365.25) * 2 * Math.PI)) + ((i * 7919) % 60) - 30;
    rows.push({ day, tmax: mean + 50, tmin: mean - 40, rain: (i * 31) % 3 === 0 ? (i * 17) % 200 : 0 });
  }
  const of = (row: Row, element: Element) => row[tenths[element]];
  const elements = Object.keys(tenths) as Element[];
  const whole = (value: number) => (value / 10).toFixed(1);
  return {
    "plain CSV": [
      "date,tmin_c,tmax_c,rain_mm",
      ...rows.map(({ day, tmin, tmax, rain }) => `${day},${whole(tmin)},${whole(tmax)},${whole(rain)}`),
    ].join("\n"),
    "by-year CSV": rows
      .flatMap((row) =>
        elements.map((element) => `${STATION},${row.day.replaceAll("-", "")},${element},${of(row, element)},,,S,`),
      )
      .join("\n"),
    "access CSV": [
      '"STATION","DATE","LATITUDE","LONGITUDE","ELEVATION","NAME","PRCP","PRCP_ATTRIBUTES","TMAX","TMAX_ATTRIBUTES","TMIN","TMIN_ATTRIBUTES"',
      ...rows.map(
        ({ day, tmin, tmax, rain }) =>
          `"${STATION}","${day}","51.5","-1.2","60.0","SOMEWHERE","${rain}",",,S","${tmax}",",,S","${tmin}",",,S"`,
      ),
    ].join("\n"),
    "fixed-width .dly": dly(rows, elements, of),
  };
}

function dly(rows: readonly Row[], elements: readonly Element[], of: (row: Row, element: Element) => number): string {
  const months = Map.groupBy(rows, ({ day }) => day.slice(0, 7));
  return [...months]
    .flatMap(([month, days]) =>
      elements.map((element) => {
        const values = Array.from({ length: 31 }, (_, i) => {
          const row = days[i];
          return `${String(row === undefined ? -9999 : of(row, element)).padStart(5)}  S`;
        });
        return `${STATION}${month.replace("-", "")}${element}${values.join("")}`;
      }),
    )
    .join("\n");
}
