/** docs/records.md: what a record may say, from the schemas that read the records. */
import { keysOf, type RecordKey, type RecordKind, recordKinds } from "./record-kinds.ts";

export function recordsPage(): string {
  return `${introduction}
${recordKinds.map(kindSection).join("\n")}
${others}
${editors}`;
}

function kindSection({ name, files, about, schema }: RecordKind): string {
  const keys = keysOf(schema).filter(({ name: key }) => !ofEvery.includes(key));
  const rows = keys.map((key, at) => keyRow(key, wordsSaid(key, keys.slice(0, at))));
  return `## ${title(name)}: \`${files}\`

${about}

| key | means | for example | seen by |
|---|---|---|---|
${rows.join("\n")}
`;
}

/** Said once above, for every kind. */
const ofEvery = ["title", "private"];

/** A list of words is not said again in the table in which it stands. */
function wordsSaid({ words }: RecordKey, before: readonly RecordKey[]): string {
  const said = words.join(", ");
  return words.length < 2 || before.some((key) => key.words.join(", ") === said) ? "" : `: ${said}`;
}

function keyRow({ name, means = "", example = "", seenBy = "you", needed }: RecordKey, which: string): string {
  return `| \`${name}\`${needed ? " (needed)" : ""} | ${means}${which} | \`${example}\` | ${seenBy} |`;
}

function title(name: string): string {
  return `${name.charAt(0).toUpperCase()}${name.slice(1)}`;
}

const introduction = `# What a record may say

Printed from the schemas that read the records, by \`npm run docs\`. Records are plain Markdown files in one folder. At the head
of a file, between two lines of three hyphens, stand keys with values; below them your own words. Every key is left out unless
you want it, but for those marked as needed, and an empty one counts as left out. An unknown key is told with the nearest known
one.

\`\`\`markdown
---
title: Long Bed
size: 4 x 1.2 m
soil: sandy loam
---

The first bed we dug, along the hedge.
\`\`\`

A file's name is its id: small letters, digits and hyphens. \`plotreel new bed "Long Bed"\` writes a file to fill in, and
\`plotreel new named\` one for everything that notes name and no file describes. Where a key names a bed, a variety or a film, its
file's name, its title and its other names all do.

Of every record:

| key | means | for example |
|---|---|---|
${keysOf(recordKinds[1]?.schema as RecordKind["schema"])
  .filter(({ name }) => ofEvery.includes(name))
  .map(({ name, means, example }) => `| \`${name}\` | ${means} | \`${example}\` |`)
  .join("\n")}

## How to keep anything private

- \`private: true\` in its file keeps a record from viewers, with all that lies in it, grows in it or shows it: a site keeps its
  beds back, a bed its plantings and photos, a note all its lines. In garden.md it keeps the whole garden back.
- Lines of a note are private together: what nobody else is to know goes into a note of its own, such as
  \`2026-05-16-for-me.md\`, with \`private: true\`. A photo stays private with a file beside it that says so.
- \`public: only described\` in garden.md turns the rule round: viewers see only beds and varieties that have a file.
- Where the tables below say "you", what stands there goes onto no page that viewers see; a figure worked out from it may. Where
  they say "viewers", viewers may see it unless something keeps it back. Positions, tasks, questions and prices are yours alone
  wherever they stand.
- In doubt a thing is private: what cannot be read for sure, stands beside an error or resembles something private stays back until
  it is settled. \`plotreel publish --dry-run\` tells what viewers would see, and what is kept back and why.
`;

const others = `## What has no keys

- \`words.md\`: what things are called only in your garden, a list item each: \`- rasps: raspberries\`.
- \`photos/…\`: photos and clips by bed and spot, or by day; [photos.md](photos.md) says where they lie.
- \`weather/*.csv\`: daily lowest and highest temperature and rain; [seasons.md](seasons.md) says in which columns.
- Other files at the top of the folder, and folders of other names, are left alone.
`;

const editors = `## In an editor

Beside this page lie JSON Schemas, one for each kind of record (\`docs/schemas/bed.json\`; where Plotreel is installed,
\`dist/schemas/bed.json\` in its folder). An editor whose YAML support reaches into front matter completes keys and shows their
meaning when it is told which schema belongs to which files:

| schema | files |
|---|---|
${recordKinds.map(({ name, files }) => `| \`${name}.json\` | \`${files}\` |`).join("\n")}

New files do not name their schema themselves: editors know no line for that in front matter, and one that is for editors alone
would stand in your way. The schemas mark nothing that Plotreel reads as wrong, and \`plotreel check\` knows more than they do.
`;
