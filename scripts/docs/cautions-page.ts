/** docs/cautions.md, printed from the hazard table: every row with its line, its source, and whether that was read or remembered. */
import {
  type HazardSource,
  hazardSources,
  type PlantHazard,
  plantHazards,
  workCaution,
  workHazards,
} from "../../src/almanac/index.ts";

export function cautionsPage(): string {
  return `${introduction}
## Plants

${table(
  "plant | harms by | part | how grave | animals | caution | shown | source",
  plantHazards.map((row) =>
    [
      row.title,
      row.routes.join(", "),
      row.part,
      row.grade,
      row.animals ?? "not listed",
      row.caution,
      shown(row),
      sourceOf(row),
    ].join(" | "),
  ),
)}

## Work

${table(
  "work | caution | figures behind it | source",
  workHazards.map((row) => [row.what, workCaution(row), row.facts ?? "", sourceOf(row)].join(" | ")),
)}

## Sources

All were looked at on 29 November 2026 as stored copies; what was only seen in part is no proof of the rest.

${table(
  "sign | what | how much was seen",
  Object.entries(hazardSources).map(([sign, { what, how }]) => `${sign} | ${what} | ${how}`),
)}
`;
}

function shown({ show }: PlantHazard): string {
  if (show === "always") return "always";
  return typeof show === "string" ? show : "when a line names the part or the work";
}

/** What rests on memory alone has no sign of a source and says so. */
function sourceOf(row: {
  readonly sources: readonly HazardSource[];
  readonly proof: string;
  readonly remark?: string;
}): string {
  if (row.proof === "memory") return `**from memory**${row.remark === undefined ? "" : `: ${row.remark}`}`;
  const of = row.remark ?? row.sources.join(", ");
  if (row.proof === "animals only") return `${of}; **for people from memory**`;
  return row.proof === "partly" ? `${of}; **in part from memory**` : of;
}

function table(head: string, rows: readonly string[]): string {
  const rule = head.split(" | ").map(() => "---");
  return [`| ${head} |`, `|${rule.join("|")}|`, ...rows.map((row) => `| ${row} |`)].join("\n");
}

const introduction = `# Cautions

Where a plant or the work can hurt somebody, the brief, the field list, the description and the recap say so. These are
reminders and no advice: each defers to a poison centre, a doctor or vet, the label, a tested recipe, the maker, or local rules.
Your own \`caution:\` in a variety's file stands beside them and never in their place.

**A plant that has no row here is not called harmless. Nobody looked, or nobody found anything.**

A row is found by the first word of \`botanical:\` in the variety's file (and by the second, where a genus holds food and
poison), without it by the crop, then by whole common names. A cultivar's name says nothing: a tomato called Potato Leaf is a
tomato. Names that two plants share are asked about by \`plotreel check\` (\`variety/two-plants\`), and take no row until
\`botanical:\` says which it is.

At a stop stand at most three lines of the table, the gravest first; the others stand at the end of the brief. Many rows wait
for a line that names the part or the work ("pruned the figs"). Rows of what harms only animals wait until garden.md says that
there are some, or a line names one:

    animals: cats, hens
    poison centre: 555 0100, day and night

\`poison centre:\` is printed as you wrote it, once in each brief. No number is guessed: look yours up before you need it.
`;
