/** What the recap pages show, as plain data: every sentence finished, every chart drawn. */
import type { SeasonRibbon } from "./ribbon/ribbon-shapes.ts";
import type { Link, Picture } from "./shapes.ts";

/** A table with a head; the first cell of a row names it. */
export interface DataTable {
  readonly title: string;
  readonly head: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

/** A drawing with the same numbers as a table behind it. */
export interface ChartFigure {
  readonly id: string;
  readonly title: string;
  /** What it shows, for those who do not see it. */
  readonly summary: string;
  /** Whole `<svg>` element; its letters and lines are styled by class. */
  readonly svg: string;
  readonly method: string;
  readonly table: DataTable;
}

export interface RecapLine {
  readonly text: string;
  /** "Must"; only on the private page. */
  readonly level?: string | undefined;
  /** File and line it rests on; only on the private page. */
  readonly file?: string | undefined;
}

export interface RecapPictures {
  readonly bed: Link;
  readonly text: string;
  readonly pictures: readonly Picture[];
}

export interface RecapSection {
  readonly id: string;
  readonly title: string;
  readonly lines: readonly RecapLine[];
  readonly pictures: readonly RecapPictures[];
  readonly charts: readonly ChartFigure[];
  readonly tables: readonly DataTable[];
}

/** A day of the notebook, on the private page. */
export interface RecapNote {
  readonly iso: string;
  readonly day: string;
  readonly title?: string | undefined;
  /** Safe HTML. */
  readonly html: string;
}

/** One thread of the year: the sentence it begins with, and what it tells. */
export interface RecapThread {
  readonly id: string;
  readonly title: string;
  readonly opening: string;
  readonly lines: readonly string[];
  readonly bed?: Link | undefined;
  readonly pictures: readonly Picture[];
}

export interface RecapPage {
  /** File name: "2026", "2025-26". */
  readonly id: string;
  readonly href: string;
  /** "2026", "2026 so far" */
  readonly name: string;
  readonly title: string;
  readonly span: string;
  readonly paragraph: string;
  /** Of the public page: the season across its beds. */
  readonly ribbon?: SeasonRibbon | undefined;
  /** The year in a sentence. */
  readonly year?: string | undefined;
  /** What the cards of the film tell; the report folds below them. */
  readonly threads: readonly RecapThread[];
  /** How the film may begin; only on the private page. */
  readonly opening: readonly string[];
  readonly sections: readonly RecapSection[];
  readonly methods: readonly string[];
  readonly notes: readonly RecapNote[];
}
