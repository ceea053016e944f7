/** docs/messages.md, printed from the table of rules. */
import { chapterOf, problemRules, type RuleName, ruleMeanings } from "../../src/records/index.ts";

export function messagesPage(): string {
  const rules = (Object.entries(problemRules) as [RuleName, (typeof problemRules)[RuleName]][]).map(([name, rule]) => ({
    name,
    group: name.split("/")[0] ?? "",
    ...rule,
  }));
  const sections = [...new Set(rules.map(({ group }) => group))].map((group) => {
    const rows = rules.filter((rule) => rule.group === group);
    return [
      `## ${chapterOf(group)?.title ?? group}`,
      "",
      `Explained in [${page(group)}](${page(group)}).`,
      "",
      "| rule | is | says |",
      "|---|---|---|",
      ...rows.map(({ name, severity }) => `| \`${name}\` | ${severity} | ${ruleMeanings[name]} |`),
      "",
    ].join("\n");
  });
  return `${introduction}\n${sections.join("\n")}`;
}

function page(group: string): string {
  return chapterOf(group)?.page.replace("docs/", "") ?? "records.md";
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

With \`--json\` each also says under \`see\` where this manual explains what the rule is about, and under \`expected\` what would
have been right, where the rule wants one kind of value.

Rule names are permanent. This page is printed from the table in \`src/records/problem-rules.ts\` by \`npm run docs\`.
`;
