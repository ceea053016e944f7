/** docs/notes.md: how a note is read, shown by examples, and below them the plain written form. */
import {
  exampleBed,
  exampleBeds,
  exampleVarieties,
  factLines,
  firstNote,
  type LineExample,
  layouts,
  type NoteExample,
  ownWords,
  questionLines,
  settledNote,
  storyLines,
  taughtNote,
} from "./reading-examples.ts";
import { writtenForm } from "./written-form.ts";

export function notesPage(): string {
  return `${introduction}
## What becomes facts

${table("it is taken to say", factLines)}

Each of them says what was done or seen, and to which plants. How many, how much, which bed and which day may stand anywhere
in the line. A line that names no bed speaks of the note's bed, and one that names no day of the note's day. A name in
capitals that no file describes, like Ruby Hollow, is taken as you name it.

## What you are asked

${table("the likeliest readings", questionLines)}

A verb that gardeners use for two things, two beds in one line, another year, somebody else's plums: rather than guess
a wrong fact onto the record, Plotreel asks. \`npx plotreel settle\` goes through the questions, one key each, the likeliest
reading first. Until then nothing is taken from the line, and you may leave it so for ever. A correction is best made in
the line that was wrong.

## What stays story

${storyLines.map(({ line }) => `- ${line}`).join("\n")}

What was not done, what was last year, what is only thought of, what grows next door, birds and weather: kept as you wrote it,
and nothing is counted. Plotreel does not always notice that a garden was somebody else's, or that a thing did not happen.
When \`check --reading\` shows such a line as facts, write \`= story\` below it.

## Lists, headings, tables, paragraphs

${layouts.map(layout).join("\n")}
## When it is read otherwise than you meant

Say it below the line, behind "=". \`settle\` writes your answers like that, and you can do it yourself. Your own words stay
above, and \`= story\` says that a line holds no fact.

${fenced(bodyOf(settledNote))}

## The words of your garden

What things are called only in your garden stands in \`words.md\`, beside \`garden.md\`: a list item each, with the word, a colon,
and the crop, variety, bed or piece of gear it means. \`settle\` offers to keep what an answer teaches.

${fenced(ownWords)}

From then on it is read so:

${fenced(readingOf(taughtNote))}

${writtenForm()}
The crop words that are known have a page of their own: [crops.md](crops.md).

This page is printed by \`npm run docs\`: the examples from \`scripts/docs/reading-examples.ts\`, where a test holds each of them
against the reader, the rest from the tables in \`src/records\`.
`;
}

const introduction = `# Write as you like

A note is a Markdown file in \`notes/\`, named by its day: \`notes/2026-05-16-long-bed.md\`. Write into it what happened, in the
words you would use over the fence: in any order, several things in a line, as a list, as boxes to tick, as a table, or
as a paragraph with the weather in it.

${fenced(firstNote.note)}

Every line becomes one of three things:

- **facts**, when it is plain what it says: they go into the timeline of the bed;
- **a question**, when it can be read in more than one way: nothing is taken from it until you have answered;
- **story**, when it holds no fact: it is kept as you wrote it.

${fenced(readingOf(firstNote))}

That is what \`npx plotreel check --reading\` shows, and \`npx plotreel watch\` tells it the moment a note is saved. Your own
words are never changed.

In the examples of this page it is Saturday 6 June 2026, and the note's bed is ${exampleBed}. The garden's files describe the
beds ${listed(exampleBeds)}, and the varieties
${listed(exampleVarieties.map(([variety, crop]) => `${variety} (${crop})`))}.
`;

function table(head: string, examples: readonly LineExample[]): string {
  const rows = examples.map(
    ({ line, as, says = [] }) => `| \`${line}\` | ${says.map(quoted).join(as === "question" ? "; or " : "; ")} |`,
  );
  return [`| you write | ${head} |`, "|---|---|", ...rows].join("\n");
}

/** A reading may be several plain lines. */
function quoted(says: string): string {
  return says
    .split("\n")
    .map((line) => `\`${line}\``)
    .join(" and ");
}

function layout(example: NoteExample): string {
  return `${example.about}\n\n${fenced(example.note)}\n\n${fenced(readingOf(example))}\n`;
}

/** As `check --reading` shows it. */
function readingOf({ lines }: NoteExample): string {
  return lines
    .flatMap(({ line, as, says = [] }) => [
      line,
      ...(as === "story" ? ["  – story"] : says.map((one) => `  ${as === "facts" ? "=" : "?"} ${one}`)),
    ])
    .join("\n");
}

function listed(names: readonly string[]): string {
  return `${names.slice(0, -1).join(", ")} and ${names.at(-1)}`;
}

function bodyOf({ note }: NoteExample): string {
  return note.replace(/^---\n[\s\S]*?\n---\n/u, "");
}

function fenced(text: string): string {
  return `\`\`\`\n${text.trimEnd()}\n\`\`\``;
}
