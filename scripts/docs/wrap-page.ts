/** docs/wrap.md: how films are heard, with the rules printed from their table. */
import { APPLY_FROM, PROPOSE_FROM, type SpokenRule, spokenRules, USUAL_LIMIT } from "../../src/wrap/index.ts";

export function wrapPage(): string {
  const rows = (hears: SpokenRule["hears"]) =>
    spokenRules
      .filter((rule) => rule.hears === hears)
      .map(({ id, meaning, needs, example, not }) => `| \`${id}\` | ${meaning} | ${needs} | ${example} | ${not} |`);
  const table = (hears: SpokenRule["hears"]) =>
    ["| rule | hears | needs | such as | not |", "|---|---|---|---|---|", ...rows(hears)].join("\n");
  return `# After filming

    plotreel wrap EPISODE

reads the captions beside \`episodes/EPISODE/index.md\` (WebVTT or SubRip; \`--captions FILE\` for any other file, also plain
text with a time at the start of each paragraph) and writes into \`out/wraps/EPISODE\`:

| file | holds |
|---|---|
| \`wrap.md\` | the report that is printed: what to decide first, what was made after |
| \`captions.corrected.vtt\` or \`.srt\` | every caption, with the names set right; your own file is never touched |
| \`chapters.txt\`, \`chapters.vtt\` | chapters for a description, and as a track |
| \`description.txt\` | disclosures, chapters, varieties with their sources, gear, earlier films, cautions; at most ${USUAL_LIMIT.toLocaleString("en")} characters (\`--limit\`) |
| \`edit-log.csv\`, \`edit-log.otio\` | stops, things shown, promises and doubts with their times, for a spreadsheet and for an editing program (OpenTimelineIO) |
| \`wrap.json\` | all of it as data, as \`--json\` prints it |

Run it again whenever you like. A file that you have edited stays yours: the new version is written beside it
(\`description.new.txt\`), and you are told. Without captions you get what the records alone can tell.

## Names

Captioners write words they know for names they don't: "ooh cheeky carry" for Uchiki Kuri. Runs of up to eight words are
compared by sound with the varieties, beds and gear of your records, their "also spelled" and "say it as". What grows at the
bed you are standing at counts for more, and so does its crop said nearby; runs of everyday words count for less. What is
${PROPOSE_FROM} sure or more is proposed, and from ${APPLY_FROM} on it is made in the corrected copy. A name said right within a few words
shows that the first try was a slip or a joke, and it stays. "Say it as" is the best help you can give.

Words of your own, people's names for example, go into \`glossary.txt\` in the records folder, one a line, with how they have
been heard: \`Ines: eness, in ess\`.

## Stops and chapters

Which bed you are at is found from what you say: its name, its varieties, crops and gear, what viewers are owed there, and
words of turning ("and this is"). The plan's order helps and is no law. Every turn has a confidence. When one is wrong, write
its time into the record (\`stops: [{bed: long-bed, at: "1:14"}]\`): your time counts, and the rest is found around it.

Chapters follow common practice of video sites: the first at 0:00, at least three, none shorter than ten seconds.

## Promises

Numbers come with the report; \`plotreel wrap EPISODE --accept 1 3\` writes those promises into \`promised:\` of the episode's
record and changes nothing else in it. Days are counted from the filming day: "this week" ends on Sunday, "in the autumn" with
November, "next year" with December.

${table("promise")}

People promise in more ways than rules have: "that one's for when the rains are here, and you'll be stood beside me". Whatever is
like the promises of some forty speakers is told as one too. Which words make a promise is learned from what they said
(\`npm run learn:promises\`); nothing of your films is learned or leaves this machine.

## Questions and doubts

${table("question")}
${rows("doubt").join("\n")}

## Facts

Counts, days, ages, sizes, weights of the day, and "new to me" are compared with the records as they were on the filming day.
What disagrees is listed with both sides, and nothing is changed.

## The page of the film

\`plotreel publish\` reads the captions beside published episodes and puts on the film's page: chapters whose times open the film
there, the varieties as they are named with their sources, the photos of that day, and what is said, with a field to find a
word in it. Names heard wrong are set right there too. The film itself stays where it is: the page has a plain link to
it and asks no other server for anything. Addresses get the time in both common spellings (\`?t=62#t=62\`). The pages of
varieties and beds name the times at which films show them.

Captions that name a private record, that repeat words of a private note, or that are spoken while you stand at a private bed
are left out of the page. Everybody who watches the film still hears them: what nobody may know must not be in the film.

## Where things came from

\`obtained:\` in varieties and gear decides what is said beside a thing and at the top of the description: paid promotion, own
product, commission link, given free, on loan. What has no \`obtained:\` is a warning and never taken for bought. The words follow
the sense of the FTC's Endorsement Guides (16 CFR 255.5) and of the CAP Code (2.1, 2.3). They are help with your records, not
legal advice: local rules decide.

## How well it hears

\`node scripts/bench-wrap.ts\`, part of \`npm run bench\`, scores it on the demo's eight films. Each has clean captions, and automatic ones made from them by a
seeded script (\`scripts/mangle-captions.ts\`) that hears names with a pronouncing dictionary, not with the code that finds them
again. Rules were made and set on four of the films (June 2024, March 2025, August 2025, May 2026). Of the other four only totals
and kinds of error were looked at; their words had been read once, to label what they promise.
`;
}
