/**
 * The text under a film: disclosures first, then what happened, what it is, chapters, varieties in walking order with their sources, gear,
 * earlier films, cautions. Public: nothing private is in it. When it is too long, the least is cut first and named.
 */

import { noticesOf, sayDay, sayList, sayPlural } from "../language/index.ts";
import type { PlannedTour } from "../model.ts";
import { chapterLines } from "./chapters.ts";
import { thanksLines, topLines } from "./disclosures.ts";
import type { FilmHeard } from "./hear-film.ts";
import type { Stretch } from "./stops-heard.ts";
import { varietyLine, varietySaid } from "./variety-lines.ts";
import type { Chapter, Coverage, Description, Disclosure } from "./wrap.ts";

/** Common practice of video sites. */
export const USUAL_LIMIT = 5000;

export interface DescriptionRequest {
  readonly film: FilmHeard;
  readonly stretches: readonly Stretch[];
  readonly chapters: readonly Chapter[];
  readonly coverage: Coverage;
  readonly disclosures: readonly Disclosure[];
  readonly earlier: readonly string[];
  readonly brief?: PlannedTour | undefined;
  /** What happened, the strongest first. */
  readonly happened: readonly string[];
  readonly limit: number;
}

interface Part {
  /** Named when it is cut. */
  readonly name: string;
  readonly text: string;
  /** Higher goes first when room is short; undefined never goes. */
  readonly goes?: number | undefined;
}

export function descriptionOf(request: DescriptionRequest): Description {
  const { limit } = request;
  let parts = [
    ...opening(request),
    ...varieties(request),
    ...gear(request),
    ...thanks(request),
    ...earlierFilms(request),
    ...cautions(request),
  ];
  const cut: string[] = [];
  while (written(parts).length > limit) {
    const next = parts.reduce<Part | undefined>(
      (top, part) => ((part.goes ?? 0) > (top?.goes ?? 0) ? part : top),
      undefined,
    );
    if (next === undefined) break;
    parts = parts.filter((part) => part !== next);
    cut.push(next.name);
  }
  const text = written(parts);
  if (text.length <= limit) return { text, length: text.length, limit, cut };
  const line = text.lastIndexOf("\n", limit);
  const short = text.slice(0, line > 0 ? line : limit);
  return { text: short, length: short.length, limit, cut: [...cut, "everything after that"] };
}

function written(parts: readonly Part[]): string {
  return parts.length === 0 ? "" : `${parts.map(({ text }) => text).join("\n\n")}\n`;
}

/** Sentences of what happened that a description opens with. */
const OPENING = 2;

function opening({ film, stretches, chapters, disclosures, happened }: DescriptionRequest): Part[] {
  const { garden, episode, day } = film.day;
  const beds = [...new Set(stretches.flatMap(({ bed }) => bed ?? []))].flatMap((id) => {
    const bed = garden.beds.get(id);
    return bed === undefined || bed.private ? [] : [bed.title];
  });
  const most = 3;
  const named =
    beds.length <= most + 1 ? beds : [...beds.slice(0, most), sayPlural(beds.length - most, "more bed", "more beds")];
  const walk = named.length === 0 ? "" : ` It stops at ${sayList(named)}.`;
  const filmed = `Filmed on ${sayDay(day, { language: garden.settings.language })} in ${garden.settings.name}.${walk}`;
  const top = topLines(disclosures, noticesOf(garden.settings));
  return [
    ...(top.length === 0 ? [] : [{ name: "disclosures", text: top.join("\n") }]),
    ...(happened.length === 0 ? [] : [{ name: "what happened", text: happened.slice(0, OPENING).join(" "), goes: 1 }]),
    { name: "opening line", text: `${episode.title}\n${filmed}` },
    ...(chapters.length === 0 ? [] : [{ name: "chapters", text: chapterLines(chapters).join("\n") }]),
  ];
}

/** Varieties by bed in walking order: those named, and those that only stood there. */
function varieties({ film, stretches, coverage, disclosures }: DescriptionRequest): Part[] {
  const { garden } = film.day;
  const times = new Map(coverage.named.map((one) => [one.variety, one]));
  const done = new Set<string>();
  const line = (id: string): string | undefined => {
    const variety = garden.varieties.get(id);
    if (variety === undefined || variety.private || done.has(id)) return undefined;
    done.add(id);
    return varietyLine(varietySaid(garden, variety, disclosures), times.get(id)?.time);
  };
  const parts: Part[] = [];
  const quiet: string[] = [];
  for (const bed of new Set(stretches.flatMap(({ bed: one }) => one ?? []))) {
    const record = garden.beds.get(bed);
    if (record?.private === true) continue;
    const named = coverage.named.filter((one) => one.bed === bed).flatMap(({ variety }) => line(variety) ?? []);
    if (named.length > 0) {
      parts.push({
        name: `the varieties of ${record?.title ?? bed}`,
        text: [record?.title ?? bed, ...named].join("\n"),
        goes: 2,
      });
    }
    const alive = film.day.beds.get(bed)?.living ?? [];
    for (const { variety } of alive) {
      const there = variety === undefined || times.has(variety) ? undefined : line(variety);
      if (there !== undefined) quiet.push(there);
    }
  }
  const seen =
    quiet.length === 0
      ? []
      : [
          {
            name: sayPlural(quiet.length, "variety that was not named", "varieties that were not named"),
            text: ["Also growing there", ...quiet].join("\n"),
            goes: 4,
          },
        ];
  return [...parts, ...seen];
}

function gear({ film, disclosures }: DescriptionRequest): Part[] {
  const lines = disclosures
    .filter(({ kind }) => kind === "gear")
    .flatMap(({ record, beside, obtained, named: from, thing }) => {
      const got =
        beside ??
        (obtained === undefined ? undefined : [from, obtained].filter((word) => word !== undefined).join(", "));
      const { link } = film.day.garden.gear.get(record) ?? {};
      return got === undefined
        ? []
        : [{ text: `${thing}: ${got}${link === undefined ? "" : ` ${link}`}`, owed: beside !== undefined }];
    });
  const owed = lines.filter((line) => line.owed);
  const rest = lines.filter((line) => !line.owed);
  const part = (name: string, these: typeof lines, title: string, goes?: number): Part[] =>
    these.length === 0 ? [] : [{ name, text: [title, ...these.map(({ text }) => text)].join("\n"), goes }];
  return [
    ...part("gear", owed, "Things in this film"),
    ...part("gear that was bought", rest, owed.length === 0 ? "Things in this film" : "Also in this film", 3),
  ];
}

function thanks({ disclosures }: DescriptionRequest): Part[] {
  const lines = thanksLines(disclosures);
  return lines.length === 0 ? [] : [{ name: "thanks", text: lines.join("\n"), goes: 3 }];
}

function earlierFilms({ film, earlier }: DescriptionRequest): Part[] {
  const lines = earlier.flatMap((id) => {
    const episode = film.day.garden.episodes.get(id);
    return episode === undefined || episode.private
      ? []
      : [`${episode.title}${episode.link === undefined ? "" : `: ${episode.link}`}`];
  });
  return lines.length === 0
    ? []
    : [{ name: "the earlier films", text: ["Earlier films mentioned", ...lines].join("\n"), goes: 5 }];
}

/** Cautions stay whatever the length: they are there for those who copy what they see. */
function cautions({ film, stretches, coverage, brief }: DescriptionRequest): Part[] {
  const shown = new Set(stretches.map(({ bed }) => bed));
  const own = coverage.named.flatMap(({ variety }) => {
    const record = film.day.garden.varieties.get(variety);
    return record?.caution === undefined || record.private
      ? []
      : [`${record.title}: ${record.caution.replace(/[.\s]+$/, "")}.`];
  });
  const usual = (brief?.stops ?? [])
    .filter(({ bed }) => shown.has(bed))
    .flatMap(({ cautions: all, furtherCautions }) => [...all, ...furtherCautions])
    .flatMap((one) => (one.private ? [] : [one.text]));
  const lines = [...new Set([...own, ...usual])];
  if (lines.length === 0) return [];
  const closing = brief?.closingCaution === undefined ? [] : [brief.closingCaution];
  return [{ name: "cautions", text: ["Take care", ...lines, ...closing].join("\n") }];
}
