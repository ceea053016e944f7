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

/** More news than this are not what makes the day. */
const mostNews = 4;

export function aheadMarkdown(ahead: Ahead, settings: GardenSettings): string {
  const voice: Voice = { settings, day: ahead.from };
  const write = markdownWriter(false);
  const parts = [
    `# The next ${ahead.weeks === 1 ? "week" : sayPlural(ahead.weeks, "week", "weeks")}`,
    `**${dayOnly(ahead.from, voice)} to ${dayOnly(ahead.to, voice)}**`,
    deadlines(ahead, voice, write),
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

function filmingDays({ best }: Ahead, voice: Voice, { md }: Markdown): string {
  if (best.length === 0 || best.every(({ things }) => things === 0)) {
    return "## Days worth filming\n\nNothing is on record yet that would make a film.";
  }
  const line = ({ day, things, value, news }: FilmingDay) => {
    const told = news.slice(0, mostNews).map(md);
    const more = news.length - told.length;
    const rest = more > 0 ? [`${more} more`] : [];
    const why = told.length === 0 ? "" : `: ${[...told, ...rest].join(", ")}`;
    return `- **${sayWeekday(day, voice.settings)} ${dayOnly(day, voice)}**, ${sayPlural(things, "thing", "things")} to show, worth ${sayNumber(value)}${why}.`;
  };
  return `## Days worth filming\n\nThe richest day of each week, as the notes stand today:\n\n${best.map(line).join("\n")}`;
}

function expected({ expected: all }: Ahead, voice: Voice, { item }: Markdown): string {
  if (all.length === 0)
    return "## Expected\n\nNo variety that grows has days to maturity on record that end in this time.";
  const lines = all.map((one) => item(one, { before: `**${capital(dayOnly(one.day, voice))}.** ` }));
  return `## Expected\n\n${lines.join("\n")}`;
}
