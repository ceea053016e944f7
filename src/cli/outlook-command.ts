/** `plotreel outlook`: the coming weeks as Markdown to read, as data, and as a calendar to subscribe to. */
import path from "node:path";
import { makeOutlook, outlookMarkdown } from "../tour/index.ts";
import { EXIT } from "./command-error.ts";
import type { Effects } from "./effects.ts";
import { expectedWindows } from "./expected-windows.ts";
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
  const made = makeOutlook(garden, { today, weeks: options.weeks, windows: expectedWindows(loaded) });
  if (options.ics === true) {
    const file = path.resolve(effects.cwd, options.out, "outlook.ics");
    await effects.writeText(file, outlookCalendar(made, garden.settings));
    effects.err(`Calendar: ${file}`);
  }
  effects.out(options.json === true ? JSON.stringify(made, null, 2) : outlookMarkdown(made, garden.settings).trimEnd());
  return EXIT.done;
}
