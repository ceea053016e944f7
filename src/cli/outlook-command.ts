/** `plotreel outlook`: the coming weeks as Markdown to read, as data, and as a calendar to subscribe to. */
import path from "node:path";
import { allTimed, forecaster, seasonBook } from "../season/index.ts";
import { type ExpectedWindow, makeOutlook, outlookMarkdown } from "../tour/index.ts";
import { EXIT } from "./command-error.ts";
import type { Effects } from "./effects.ts";
import type { Loaded } from "./load-garden.ts";
import { outlookCalendar } from "./outlook-calendar.ts";

export interface OutlookOptions {
  readonly weeks: number;
  readonly json?: boolean | undefined;
  /** Also write a calendar file. */
  readonly ics?: boolean | undefined;
  /** Relative to the current folder, or absolute. */
  readonly out: string;
}

export async function outlook(loaded: Loaded, options: OutlookOptions, effects: Effects): Promise<number> {
  const { garden, today } = loaded;
  const made = makeOutlook(garden, { today, weeks: options.weeks, windows: windowsOf(loaded) });
  if (options.ics === true) {
    const file = path.resolve(effects.cwd, options.out, "outlook.ics");
    await effects.writeText(file, outlookCalendar(made, garden.settings));
    effects.err(`Calendar: ${file}`);
  }
  effects.out(options.json === true ? JSON.stringify(made, null, 2) : outlookMarkdown(made, garden.settings).trimEnd());
  return EXIT.done;
}

/** Windows of living plantings by this garden's own records and, where there are weather files, its heat. */
function windowsOf({ garden, weather, today }: Loaded): ReadonlyMap<string, ExpectedWindow> {
  const book = seasonBook(garden, weather, today);
  const forecast = forecaster(book);
  const waiting = allTimed(book).filter(
    ({ lot, reached, begun }) => reached === undefined && begun <= today && lot.planting.ended === undefined,
  );
  return new Map(
    waiting.map((one) => {
      const { from, likely, to } = forecast(one, today);
      return [one.lot.planting.id, { from, likely, to }];
    }),
  );
}
