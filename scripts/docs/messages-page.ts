/** docs/messages.md, printed from the table of rules. */
import { problemRules } from "../../src/records/index.ts";

/** What each group of rules is about, by the first part of their names. */
const groups: Readonly<Record<string, string>> = {
  folder: "The records folder",
  text: "Text and encodings",
  "front-matter": "Front matter",
  record: "Keys and values",
  date: "Dates",
  link: "Records that name other records",
  name: "Names",
  bed: "Beds",
  variety: "Varieties",
  note: "Notes and their lines",
  photo: "Photos",
  timeline: "What the lines add up to",
  captions: "Captions",
  "field-list": "Field lists brought back",
  plan: "Plans kept",
};

export function messagesPage(): string {
  const rules = Object.entries(problemRules).map(([name, rule]) => ({
    name,
    group: name.split("/")[0] ?? "",
    ...rule,
  }));
  const sections = [...new Set(rules.map(({ group }) => group))].map((group) => {
    const rows = rules.filter((rule) => rule.group === group);
    return [
      `## ${groups[group] ?? group}`,
      "",
      "| rule | is | says |",
      "|---|---|---|",
      ...rows.map(({ name, severity, meaning }) => `| \`${name}\` | ${severity} | ${meaning} |`),
      "",
    ].join("\n");
  });
  return `${introduction}\n${sections.join("\n")}`;
}

const introduction = `# Messages

\`plotreel check\` tells everything that is wrong or doubtful in the records, in one run. Each message has three lines:

    notes/2026-05-16-long-bed.md:7:3 warning note/unknown-verb
      "sowd" is not a verb of the note format, so this line was kept as story.
      Did you mean "sowed"? (verbs: docs/notes.md)

First the file, its line and its column, both counted from 1, how grave it is, and the rule; then what is wrong; then
what to do. Nothing in the records is ever changed by it.

- **error**: part of a file could not be read. \`plotreel check\` ends with exit code 1.
- **warning**: everything was read, and something is probably not as it was meant.
- **hint**: nothing is wrong; there is something you may want to know.

Rule names are permanent. This page is printed from the table in \`src/records/problem-rules.ts\` by \`npm run docs\`.
`;
