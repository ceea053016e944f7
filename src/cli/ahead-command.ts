/** `plotreel ahead`: the coming weeks as Markdown to read, as data, and as a calendar to subscribe to. */
import path from "node:path";
import { aheadMarkdown, lookAhead } from "../tour/index.ts";
import { aheadCalendar } from "./ahead-calendar.ts";
import { EXIT } from "./command-error.ts";
import type { Effects } from "./effects.ts";
import { expectedWindows } from "./expected-windows.ts";
import type { Loaded } from "./load-garden.ts";

export interface AheadOptions {
  readonly weeks: number;
  readonly json?: boolean | undefined;
  /** Also write a calendar file. */
  readonly ics?: boolean | undefined;
  /** Relative to the current folder, or absolute. */
  readonly out: string;
}

export async function ahead(loaded: Loaded, options: AheadOptions, effects: Effects): Promise<number> {
  const { garden, today } = loaded;
  const made = lookAhead(garden, { today, weeks: options.weeks, windows: expectedWindows(loaded) });
  if (options.ics === true) {
    const file = path.resolve(effects.cwd, options.out, "ahead.ics");
    await effects.writeText(file, aheadCalendar(made, garden.settings));
    effects.err(`Calendar: ${file}`);
  }
  effects.out(options.json === true ? JSON.stringify(made, null, 2) : aheadMarkdown(made, garden.settings).trimEnd());
  return EXIT.done;
}
