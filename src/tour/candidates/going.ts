/** What will soon be gone, so that this tour may be the last to show it. */

import { cropFacts } from "../../almanac/index.ts";
import { addDays, daysBetween } from "../../calendar.ts";
import { cropName, cultivar, dayOnly, isSingular, mentions, onDay, say, sayList } from "../../language/index.ts";
import type { Place, Task } from "../../model.ts";
import { agree, batchOf, byVariety, theBatch } from "../batches.ts";
import { type BedOnTheDay, type Lot, voiceOf } from "../bed-on-the-day.ts";
import type { Candidate } from "./candidate.ts";

/** A tour a fortnight is as often as most people film; what goes within it is not seen again. */
const lastLook = 14;

/** A frost is said earlier: it takes everything at once. */
const beforeFrost = 21;

const leaving: readonly (readonly [verb: RegExp, doing: string])[] = [
  [/^lift\b/i, "lifting"],
  [/^dig (?:up|out)\b/i, "digging up"],
  [/^dig\b/i, "digging"],
  [/^pull\b/i, "pulling"],
  [/^clear\b/i, "clearing"],
  [/^take (?:out|up|down)\b/i, "taking out"],
  [/^cut (?:down|back)\b/i, "cutting down"],
  [/^(?:harvest|pick the last|strip)\b/i, "the last picking"],
];

export function goingCandidates(here: BedOnTheDay): Candidate[] {
  const [from, to] = [addDays(here.day, -lastLook), addDays(here.day, lastLook)];
  const near = here.now.tasks.filter(({ done, due = "" }) => done === undefined && due >= from && due <= to);
  const asTasks = near.flatMap((task) => byTask(task, here));
  const told = new Set(asTasks.flatMap(({ lots }) => lots.map((lot) => lot.planting.id)));
  const others = byVariety(here.growing.filter((lot) => !told.has(lot.planting.id) && !lot.planting.perennial));
  return [...asTasks, ...others.flatMap((batch) => asLastYear(batch.lots, here)), ...byFrost(here)];
}

/** "A last look at the Rose de Lautrec garlic: lifting was due yesterday." */
function byTask(task: Task, here: BedOnTheDay): Candidate[] {
  const doing = leaving.find(([verb]) => verb.test(task.what))?.[1];
  if (doing === undefined || task.due === undefined) return [];
  const named = here.growing.filter(({ variety }) => variety !== undefined && mentions(task.what, [variety.title]));
  const meant =
    named.length > 0
      ? named
      : here.growing.filter(({ crop }) => crop !== undefined && mentions(task.what, [crop.name, crop.plural]));
  const [first, ...more] = meant;
  if (first === undefined) return [];
  const batch = batchOf([first, ...more]);
  const due = `${doing} ${task.due < here.day ? "was" : "is"} due ${onDay(task.due, voiceOf(here))}`;
  return [
    {
      kind: "going",
      sentence: say(`A last look at ${theBatch(batch)}: ${due}.`, [task]),
      why: "it may be gone by the next tour",
      about: theBatch(batch),
      gist: due,
      keepBy: cultivar(first),
      lots: batch.lots,
      until: task.due,
    },
  ];
}

/** "Soon gone: last year the Kelvedon Wonder peas were out on 24 July." */
function asLastYear(lots: readonly [Lot, ...Lot[]], here: BedOnTheDay): Candidate[] {
  const [lot] = lots;
  const { variety, stage } = lot.planting;
  if (variety === undefined || (stage !== "picking" && stage !== "flowering")) return [];
  const year = 365;
  const from = addDays(here.day, -year);
  const before = here.index
    .everyLotOf(variety)
    .filter(
      ({ planting: { ended, stage: left } }) =>
        left !== "lost" && ended !== undefined && ended > from && ended <= addDays(from, lastLook),
    );
  const last = before.at(-1);
  const ended = last?.planting.ended;
  const change = last?.changes.findLast(({ day }) => day === ended);
  if (ended === undefined || change?.kind !== "cleared") return [];
  const batch = batchOf(lots);
  const day = dayOnly(ended, voiceOf(here)).replace(/ \d{4}$/, "");
  return [
    {
      kind: "going",
      sentence: say(`Soon gone: last year ${theBatch(batch)} ${agree(batch, "was", "were")} out on ${day}.`, [change]),
      why: "it may be gone by the next tour",
      about: theBatch(batch),
      gist: `out on ${day} last year`,
      keepBy: cultivar(lot),
      lots,
      until: addDays(ended, year),
    },
  ];
}

const covered = /tunnel|greenhouse|glass|\bframe|windowsill|porch|indoors/i;
const settingsFile: Place = { file: "garden.md", line: 1, column: 1 };

/** "The usual first frost is on 5 November, and dahlias and cosmos are tender." */
function byFrost(here: BedOnTheDay): Candidate[] {
  const { firstFrost } = here.index.garden.settings;
  if (firstFrost === undefined || covered.test(`${here.bed.title} ${here.site?.title ?? ""}`)) return [];
  const frost = `${here.day.slice(0, 4)}-${firstFrost}`;
  const away = daysBetween(here.day, frost);
  if (!(away >= 0 && away <= beforeFrost)) return [];
  const tender = here.growing.filter(({ crop }) => {
    const hardiness = cropFacts(crop?.id)?.hardiness?.value;
    return hardiness === "tender" || hardiness === "very tender";
  });
  const [first] = tender;
  if (first === undefined) return [];
  const crops = [...new Set(tender.flatMap(({ crop }) => (crop === undefined ? [] : [cropName(crop, 2)])))];
  const are = crops.length === 1 && isSingular(first) ? "is" : "are";
  const day = dayOnly(frost, voiceOf(here));
  return [
    {
      kind: "going",
      sentence: say(`The usual first frost is on ${day}, and ${sayList(crops)} ${are} tender.`, [
        { place: settingsFile },
        ...tender.flatMap((lot) => lot.grounds.slice(0, 1)),
      ]),
      why: "frost ends it",
      about: sayList(crops),
      gist: `until the frost, usually on ${day}`,
      keepBy: crops[0] ?? "frost",
      lots: tender,
      of: "frost",
      until: frost,
    },
  ];
}
