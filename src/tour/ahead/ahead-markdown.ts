/** The weeks ahead as Markdown: deadlines first, then the days worth filming, then what is expected. */
import {
  capital,
  dayOnly,
  type Markdown,
  markdownWriter,
  sayNumber,
  sayPlural,
  sayWeekday,
  type Voice,
} from "../../language/index.ts";
import type { GardenSettings } from "../../model.ts";
import type { Ahead, FilmingDay } from "./ahead.ts";

/** More reasons than this are not what makes the day. */
const mostReasons = 4;

export function aheadMarkdown(ahead: Ahead, settings: GardenSettings): string {
  const voice: Voice = { settings, day: ahead.from };
  const write = markdownWriter(false);
  const parts = [
    `# The next ${ahead.weeks === 1 ? "week" : sayPlural(ahead.weeks, "week", "weeks")}`,
    `**${dayOnly(ahead.from, voice)} to ${dayOnly(ahead.to, voice)}**`,
    deadlines(ahead, voice, write),
    owed(ahead, write),
    filmingDays(ahead, voice, write),
    expected(ahead, voice, write),
  ];
  return `${parts.filter((part) => part !== "").join("\n\n")}\n`;
}

function deadlines({ deadlines: all }: Ahead, voice: Voice, { item }: Markdown): string {
  if (all.length === 0) return "";
  const lines = all.map((one) => item(one, { before: `**By ${dayOnly(one.day, voice)}.** ` }));
  return `## Film it in time\n\n${lines.join("\n")}`;
}

function owed({ owed: all }: Ahead, { item }: Markdown): string {
  return all.length === 0 ? "" : `## Promised for no day\n\n${all.map((one) => item(one)).join("\n")}`;
}

function filmingDays({ best }: Ahead, voice: Voice, { md }: Markdown): string {
  if (best.length === 0 || best.every(({ things, film }) => things === 0 && film === undefined)) {
    return "## Days worth filming\n\nNothing is on record yet that would make a film.";
  }
  const line = ({ day, things, reasons, film }: FilmingDay) => {
    const planned = film === undefined ? [] : [`“${film}” is planned`].map(md);
    const told = [...planned, ...reasons.slice(0, mostReasons).map(md)];
    const more = reasons.length - (told.length - planned.length);
    const rest = more > 0 ? [`${sayNumber(more)} more`] : [];
    const why = told.length === 0 ? "nothing new is expected that week" : [...told, ...rest].join("; ");
    const all = things === 0 ? "" : ` In all ${sayPlural(things, "thing", "things")} to show.`;
    return `- **${sayWeekday(day, voice.settings)} ${dayOnly(day, voice)}**: ${why}.${all}`;
  };
  return `## Days worth filming\n\nThe day of each week that has a film planned or the most reasons, as the notes stand today:\n\n${best.map(line).join("\n")}`;
}

function expected({ expected: all }: Ahead, voice: Voice, { item }: Markdown): string {
  if (all.length === 0)
    return "## Expected\n\nNothing that grows should be ready in this time, by its variety's days or by what its crop takes as a rule.";
  const lines = all.map((one) => item(one, { before: `**${capital(dayOnly(one.day, voice))}.** ` }));
  return `## Expected\n\n${lines.join("\n")}`;
}
