/** Weather made of days written out in a test. */
import { noWeather, type SeriesDay, type Weather } from "../../src/almanac/index.ts";

export function weatherOf(days: Readonly<Record<string, SeriesDay>>): Weather {
  const order = Object.keys(days).sort();
  return {
    ...noWeather,
    days: new Map(order.map((day) => [day, days[day] ?? {}])),
    first: order[0],
    last: order.at(-1),
  };
}
