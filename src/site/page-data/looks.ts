/** The style page: what the look of the pages is made of, and why, shown on the garden's own records. */

import { addDays } from "../../calendar.ts";
import { digits } from "../../language/index.ts";
import { changes } from "../../timeline/index.ts";
import { colourPairs } from "../look/colour-pairs.ts";
import { contrast } from "../look/contrast.ts";
import { readSchemes } from "../look/read-schemes.ts";
import { colourDeclarations, type Schemes, type Tokens } from "../look/tokens.ts";
import { bedGrowth } from "./bed-growth.ts";
import { bedTimeline } from "./bed-timeline.ts";
import type { LookScheme, LookSize, LooksPage } from "./looks-shapes.ts";
import type { FieldNotePage, NoteLine } from "./note-shapes.ts";
import type { CropGroup } from "./shapes.ts";
import { varietyList } from "./variety-list.ts";
import { bedsInOrder, type View } from "./view.ts";

/** Rows, photos under the slider and days that are enough to judge a part by. */
const ROWS = 4;
const FRAMES = 6;
const DAYS = 2;

/** Letters with marks, and the two other alphabets plants are written in. */
const ALPHABETS = ["Zürner", "Čornyj", "Łowicka", "Bárónő", "Đà Lạt", "Агроном", "Αγγελική"];

const OWN: Readonly<Record<Exclude<keyof Schemes, "paper">, { readonly id: string; readonly isPrivate: boolean }>> = {
  light: { id: "by-day", isPrivate: false },
  dark: { id: "by-night", isPrivate: false },
  field: { id: "field-by-day", isPrivate: true },
  fieldDark: { id: "field-by-night", isPrivate: true },
};

/** `notes` newest first. */
export function looksPage(view: View, notes: readonly FieldNotePage[]): LooksPage {
  const { garden, book, links, today } = view;
  const schemes = readSchemes();
  const { groups } = varietyList(view);
  const rows = groups.flatMap((group) => group.rows);
  const grown = bedsInOrder(view).map((bed) => ({ bed, growth: bedGrowth(view, bed) }));
  const { bed, growth } = grown.find((one) => one.growth.charts.length > 0) ?? grown[0] ?? {};
  const comparison = grown.flatMap((one) => one.growth.comparisons)[0];
  const picture = book.all.find((photo) => photo.bed !== undefined && book.isWide(photo)) ?? book.all[0];
  return {
    href: links.looks,
    schemes: schemesOf(view, schemes),
    letters: sizes(schemes.light, /^size/u),
    distances: sizes(schemes.light, /^space|^step$/u),
    alphabets: ALPHABETS,
    css: styles(schemes),
    row: rows.find((row) => row.isNew && row.sayAs !== undefined) ?? rows[0],
    group: fewOf(groups.find((group) => group.rows.length > 2 && group.someNew) ?? groups[0]),
    picture: picture === undefined ? undefined : book.picture(picture),
    comparison: comparison && { ...comparison, ...lastFrames(comparison.frames, comparison.before) },
    chart: growth?.charts[0],
    reading: readingOf(notes),
    days:
      bed === undefined
        ? []
        : bedTimeline(view, changes(garden, bed.id, addDays(today, -60), today), []).slice(0, DAYS),
  };

  /** The ends of what can be chosen, so that the page stays light. */
  function lastFrames(frames: NonNullable<typeof comparison>["frames"], before: number) {
    const chosen = frames[before];
    const few = [...(chosen === undefined ? [] : [chosen]), ...frames.slice(-FRAMES).filter((one) => one !== chosen)];
    return { frames: few, before: 0, after: few.length - 1 };
  }
}

/** The first lines of the newest note that has some of each. */
function readingOf(notes: readonly FieldNotePage[]): readonly NoteLine[] {
  const kinds = ({ lines }: FieldNotePage) => new Set(lines.map(({ as }) => as)).size;
  const most = Math.max(0, ...notes.map(kinds));
  return notes.find((note) => kinds(note) === most)?.lines.slice(0, ROWS) ?? [];
}

function fewOf(group: CropGroup | undefined): CropGroup | undefined {
  // Pages of varieties are public ones: here a name leads nowhere.
  const rows = group?.rows.slice(0, ROWS).map((row) => ({ ...row, href: "#list", anchor: undefined }));
  return group && { ...group, rows: rows ?? [], letters: [] };
}

function schemesOf({ words }: View, schemes: Schemes): readonly LookScheme[] {
  return (Object.keys(OWN) as (keyof typeof OWN)[]).map((name) => ({
    ...OWN[name],
    title: words.looks.schemes[name],
    pairs: colourPairs.map(({ on, ground, least, use }) => ({
      id: `${on}-on-${ground}`,
      name: words.looks.pair(on, ground),
      contrast: words.looks.contrast(
        digits(Math.floor(contrast(schemes[name][on] ?? "", schemes[name][ground] ?? "") * 10) / 10),
        least,
      ),
      isText: use === "text",
    })),
  }));
}

function sizes(tokens: Tokens, names: RegExp): readonly LookSize[] {
  return Object.entries(tokens).flatMap(([name, value]) => (names.test(name) ? [{ name, value }] : []));
}

/** A part of the page wears a scheme by setting its colours again. */
function styles(schemes: Schemes): string {
  const worn = (Object.keys(OWN) as (keyof typeof OWN)[]).map(
    (name) =>
      `.${OWN[name].id} { color-scheme: ${name.toLowerCase().endsWith("dark") ? "dark" : "light"}; ${colourDeclarations(schemes[name])} }`,
  );
  const pairs = colourPairs.map(({ on, ground, use }) =>
    use === "text"
      ? `.${on}-on-${ground} { background: var(--${ground}); color: var(--${on}); }`
      : `.${on}-on-${ground} { border: var(--edge-line) solid var(--${on}); background: var(--${ground}); }`,
  );
  const letters = sizes(schemes.light, /^size/u).map(({ name }) => `.is-${name} { font-size: var(--${name}); }`);
  const distances = sizes(schemes.light, /^space|^step$/u).map(({ name }) => `.is-${name} { width: var(--${name}); }`);
  return `${[...worn, ...pairs, ...letters, ...distances].join("\n")}\n`;
}
