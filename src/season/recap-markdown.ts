/** The report of a recap as Markdown that reads as it is: the outline first, then the tables. It stands behind the cards. */

import type { Level } from "../films/index.ts";
import { minutes } from "../films/index.ts";
import { groundUnit, md, sayDay, sayFromGround, sayNumber, sayWeight } from "../language/index.ts";
import type { GardenSettings } from "../model.ts";
import type { Recap, RecapPoint, ResultRow, Segment } from "./recap.ts";

const levelNames: Readonly<Record<Level, string>> = { must: "Must", should: "Should", could: "Could" };

export function recapMarkdown(recap: Recap, settings: GardenSettings): string {
  const parts = [
    head(recap),
    ...recap.segments.filter(({ seconds }) => seconds > 0).map((segment) => segmentMarkdown(segment, settings)),
    leftOut(recap),
    results(recap, settings),
    losses(recap),
    forecasts(recap, settings),
    plan(recap),
    listed(
      "Say it",
      recap.disclosures.map(({ text }) => md(text)),
    ),
    listed(
      "Care",
      recap.cautions.map(({ text }) => md(text)),
    ),
    listed("How the figures were worked out", recap.methods.map(md)),
  ];
  return `${parts.filter((part) => part !== "").join("\n\n")}\n`;
}

function head({ title, spanText, target, seconds }: Recap): string {
  const length =
    target === undefined
      ? `about ${minutes(seconds.chosen)} to say`
      : `${minutes(target)} asked for, ${minutes(seconds.chosen)} planned`;
  return `# Dossier: ${md(title)}\n\n**${spanText} · ${length}**\n\nWhat must be said takes about ${minutes(seconds.must)}, with what should be said ${minutes(seconds.should)}, all of it ${minutes(seconds.all)}.`;
}

function segmentMarkdown({ number, title, show, photos, seconds, kind }: Segment, settings: GardenSettings): string {
  const chosen = show.filter((point) => point.chosen);
  const lines = kind === "season" ? chosen.map(({ text }) => md(text)).join(" ") : chosen.map(pointLine).join("\n");
  const pictures = photos.map(
    ({ title: bed, first, peak, last }) =>
      `- ${md(bed)}: ${[first, peak, last]
        .filter((photo) => photo !== undefined)
        .map(({ path, day }) => `${sayDay(day, settings)} (${md(path)})`)
        .join(" · ")}`,
  );
  return [
    `## ${number} · ${md(title)} · ${clock(seconds)}`,
    lines,
    pictures.length === 0 ? "" : `Photos:\n\n${pictures.join("\n")}`,
  ]
    .filter((part) => part !== "")
    .join("\n\n");
}

function pointLine(point: RecapPoint): string {
  return `- **${levelNames[point.level]}.** ${md(point.text)}`;
}

/** "2 min 10", "40 s" */
function clock(seconds: number): string {
  const whole = Math.floor(seconds / 60);
  const rest = seconds % 60;
  if (whole === 0) return `${rest} s`;
  return rest === 0 ? `${whole} min` : `${whole} min ${String(rest).padStart(2, "0")}`;
}

function leftOut({ leftOut: points }: Recap): string {
  if (points.length === 0) return "";
  return `## Not in this length\n\n${points.map(({ text, seconds }) => `- ${md(text)} *(${seconds} s)*`).join("\n")}`;
}

function results(
  { results: { varieties, crops, beds, sites, total, remarks } }: Recap,
  settings: GardenSettings,
): string {
  if (varieties.length + crops.length === 0) return "";
  const table = (title: string, rows: readonly ResultRow[], ground: boolean) =>
    rows.length === 0 ? "" : [`### By ${title}`, tableOf(rows, settings, ground)].join("\n\n");
  const parts = [
    "## Results",
    `All together: ${md(total.picked)} in ${sayNumber(total.pickings)} ${total.pickings === 1 ? "picking" : "pickings"}${total.lastYear === undefined ? "" : `; last year by then ${md(total.lastYear)}`}${total.value === undefined ? "" : `; worth ${md(total.value)} at your prices`}.`,
    table("variety", varieties, false),
    table("crop", crops, false),
    table("bed", beds, true),
    sites.length < 2 ? "" : table("site", sites, false),
    remarks.map((remark) => `- ${md(remark)}`).join("\n"),
  ];
  return parts.filter((part) => part !== "").join("\n\n");
}

function tableOf(rows: readonly ResultRow[], settings: GardenSettings, ground: boolean): string {
  const values = rows.some(({ value }) => value !== undefined);
  const weight = (grams: number | undefined) => (grams === undefined ? "" : sayWeight(grams, settings.units));
  const header = [
    "",
    "picked",
    "pickings",
    "first",
    "last",
    ground ? `a ${groundUnit(settings)}` : "a plant",
    "last year by then",
    ...(values ? ["worth"] : []),
  ];
  const lines = rows.map((row) => [
    `${row.title}${row.private ? " (private)" : ""}`,
    row.picked,
    String(row.pickings),
    row.first === undefined ? "" : sayDay(row.first, { language: settings.language, near: row.last }),
    row.last === undefined ? "" : sayDay(row.last, { language: settings.language, near: row.last }),
    ground
      ? row.gramsPerSquareMetre === undefined
        ? ""
        : sayFromGround(row.gramsPerSquareMetre, settings.units)
      : row.gramsPerPlant === undefined
        ? row.gramsPerPiece === undefined
          ? ""
          : `${weight(row.gramsPerPiece)} each`
        : weight(row.gramsPerPlant),
    row.lastYear ?? "",
    ...(values ? [row.value ?? ""] : []),
  ]);
  return [header, header.map(() => "---"), ...lines].map((cells) => `| ${cells.map(cell).join(" | ")} |`).join("\n");
}

function losses({ losses: rows }: Recap): string {
  const shown = rows.filter(({ sentence }) => !sentence.private);
  return shown.length === 0
    ? ""
    : `## Losses and troubles\n\n${shown.map(({ sentence }) => `- ${md(sentence.text)}`).join("\n")}`;
}

function forecasts({ forecasts: rows, forecastsChecked }: Recap, settings: GardenSettings): string {
  if (rows.length === 0) return "";
  const day = (of: string) => sayDay(of, { language: settings.language, near: rows[0]?.likely });
  const lines = rows.map(
    ({ name, from, likely, to, goal }) => `| ${cell(name)} | ${goal} | ${day(from)} | ${day(likely)} | ${day(to)} |`,
  );
  const checked =
    forecastsChecked === undefined
      ? ""
      : `\n\nHeld against ${sayNumber(forecastsChecked.plantings)} ${forecastsChecked.plantings === 1 ? "planting" : "plantings"} of the past, such forecasts were off by ${Math.round(forecastsChecked.meanError)} days in the mean (the varieties' days alone: ${Math.round(forecastsChecked.catalogueMeanError)}), and ${Math.round(forecastsChecked.coverage * 100)} % came within their window.`;
  return `## Forecasts\n\n${["| planting | what | from | likely | to |", "|---|---|---|---|---|", ...lines].join("\n")}${checked}`;
}

function plan({ nextYear: { plan: draft, rotation } }: Recap): string {
  if (draft.rows.length === 0) return "";
  const rows = draft.rows.map(({ bed, title, crops }) => {
    const held = crops.map(
      ({ name, plants, pinned }) => `${plants === undefined ? "" : `${plants} `}${name}${pinned ? " (pinned)" : ""}`,
    );
    const notYet = (rotation.notYet[bed] ?? []).map(({ name, from }) => `${name} before ${from}`);
    return `| ${[title, held.join(", "), notYet.join("; ")].map(cell).join(" | ")} |`;
  });
  return `## A draft for ${draft.label}\n\n${["| bed | crops | not yet |", "|---|---|---|", ...rows].join("\n")}`;
}

function listed(title: string, lines: readonly string[]): string {
  return lines.length === 0 ? "" : `## ${title}\n\n${lines.map((line) => `- ${line}`).join("\n")}`;
}

function cell(text: string): string {
  return md(text).replaceAll("|", "\\|");
}
