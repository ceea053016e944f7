/** The data of `plotreel timeline`: one bed on a day, for people's own scripts. Days are ISO calendar days, units SI. */
import { daysBetween } from "../calendar.ts";
import { changeSentence } from "../language/index.ts";
import type { ChangeKind, Day, Garden, Planting, Stage } from "../model.ts";
import { changes, state } from "../timeline/index.ts";

export interface TimelineView {
  /** Bed id. */
  readonly bed: string;
  readonly on: Day;
  /** Null: since the notes begin. */
  readonly since: Day | null;
  readonly plantings: readonly PlantingView[];
  readonly changes: readonly ChangeView[];
}

export interface PlantingView {
  readonly id: string;
  /** Variety id; null when the notes name only the crop. */
  readonly variety: string | null;
  readonly crop: string | null;
  /** Plants alive; the lower end when it was said as a range; null when nobody counted. */
  readonly count: number | null;
  readonly sown: Day | null;
  readonly planted: Day | null;
  /** Days since sowing, or since planting where no sowing is known; up to its end when it has ended. */
  readonly ageDays: number | null;
  /** Days since it was planted or sown in its bed. */
  readonly daysInGround: number | null;
  readonly stage: Stage;
  readonly stageSince: Day;
  readonly heightCm: number | null;
  readonly heightOn: Day | null;
  /** `count` is null when pieces of several kinds (stems and bunches) were picked, which cannot be added up. */
  readonly picked: { readonly grams: number; readonly count: number | null; readonly times: number };
  readonly source: string | null;
  readonly sayAs: string | null;
  readonly lastNote: NoteView;
}

export interface ChangeView {
  readonly kind: ChangeKind;
  readonly date: Day;
  /** Planting id. */
  readonly planting: string | null;
  readonly text: string;
  readonly note: NoteView;
}

interface NoteView {
  readonly file: string;
  readonly line: number;
}

/** What lives in a bed on a day or has ended since `since`, and what changed after `since` up to and with that day. */
export function timelineView(
  garden: Garden,
  bed: string,
  { on, since }: { readonly on: Day; readonly since?: Day | undefined },
): TimelineView {
  const plantings = state(garden, bed, on).plantings.filter(
    (planting) => planting.ended === undefined || since === undefined || planting.ended > since,
  );
  const changed = changes(garden, bed, since ?? "", on);
  return {
    bed,
    on,
    since: since ?? null,
    plantings: plantings.map((planting) => plantingView(garden, planting, on)),
    changes: changed.map((change) => ({
      kind: change.kind,
      date: change.day,
      planting: change.planting ?? null,
      text: changeSentence(change, garden),
      note: { file: change.note.file, line: change.note.line },
    })),
  };
}

function plantingView(garden: Garden, planting: Planting, on: Day): PlantingView {
  const variety = planting.variety === undefined ? undefined : garden.varieties.get(planting.variety);
  const until = planting.ended ?? on;
  const age = (from: Day | undefined) => (from === undefined ? null : daysBetween(from, until));
  const pieces = Object.values(planting.picked.counts);
  return {
    id: planting.id,
    variety: planting.variety ?? null,
    crop: planting.crop ?? null,
    count: planting.count?.value ?? null,
    sown: planting.sown ?? null,
    planted: planting.planted ?? null,
    ageDays: age(planting.sown ?? planting.planted),
    daysInGround: age(planting.planted ?? planting.sown),
    stage: planting.stage,
    stageSince: planting.stageSince,
    heightCm: planting.heightCm ?? null,
    heightOn: planting.heightOn ?? null,
    picked: {
      grams: planting.picked.grams,
      count: pieces.length > 1 ? null : (pieces[0] ?? 0),
      times: planting.picked.times,
    },
    source: variety?.source?.name ?? null,
    sayAs: variety?.sayAs ?? null,
    lastNote: { file: planting.lastNote.file, line: planting.lastNote.line },
  };
}
