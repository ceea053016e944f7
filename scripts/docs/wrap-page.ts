/** docs/wrap.md: how films are heard, with the rules printed from their table. */
import {
  APPLY_FROM,
  captionLimits,
  PROPOSE_FROM,
  type SpokenRule,
  spokenRules,
  USUAL_LIMIT,
} from "../../src/wrap/index.ts";

export function wrapPage(): string {
  const rows = (hears: SpokenRule["hears"]) =>
    spokenRules
      .filter((rule) => rule.hears === hears)
      .map(({ id, meaning, needs, example, not }) => `| \`${id}\` | ${meaning} | ${needs} | ${example} | ${not} |`);
  const table = (hears: SpokenRule["hears"]) =>
    ["| rule | hears | needs | such as | not |", "|---|---|---|---|---|", ...rows(hears)].join("\n");
  return `# After filming

    plotreel wrap EPISODE

reads the captions beside \`episodes/EPISODE/index.md\` and writes into \`out/wraps/EPISODE\` what the table below names.
Captions are WebVTT, SubRip, SBV, SubStation Alpha (\`.ass\`), or text with a time at the start of each paragraph ("0:38 the
bean row", "0:38 - 1:02 the bean row", a line "Ann 0:38") in a file with "captions", "subtitles" or "transcript" in its name;
\`--captions FILE\` takes any other file. TTML, JSON and captions timed in frames alone are refused, with what to save instead.

| file | holds |
|---|---|
| \`before-upload.md\` | what is still to be looked at: notices not spoken, private names said aloud with their times, chapters, description, captions, promises, what to shoot again |
| \`wrap.md\` | the report that is printed: what to decide first, what was made after |
| \`captions.corrected.vtt\`, \`.srt\` or as yours ends | your file with the names set right and every other letter as it was, styles, notes, settings and line ends too; your own file is never touched |
| \`captions.clean.vtt\`, \`.srt\` | of automatic captions that roll: a set to upload, every word once, two lines of at most ${captionLimits.line} letters, time to read it, no break inside a name, capitals and marks only where they are certain; where somebody speaks too fast to be read the report says so |
| \`captions.to-fill.vtt\` | the same times with room for another language |
| \`transcript.txt\` | what is said, as text |
| \`chapters.txt\`, \`chapters.vtt\` | chapters for a description, and as a track |
| \`description.txt\` | disclosures, what happened in two sentences, chapters, varieties with their sources, gear, earlier films, cautions; at most ${USUAL_LIMIT.toLocaleString("en")} characters (\`--limit\`) |
| \`pinned-comment.txt\` | the varieties that were named where they grow, with their times and where they came from |
| \`shorts.csv\` | in and out points of 15 to 60 seconds for each first picking, kept promise and trial that was spoken of, with a title |
| \`post.txt\`, \`newsletter.txt\` | a post of at most 280 letters, and a letter of some 150 words |
| \`titles.txt\` | at most three titles to choose from, the strongest first, each with the moment of the film whose picture goes with it, and a photo of that bed where there is one |
| \`end-cards.txt\` | the earlier films that are spoken of, to lead to at the end |
| \`edit-log.csv\` | stops, things shown, promises and doubts with their times, for a spreadsheet |
| \`edit-log.otio\`, \`.edl\`, \`.fcpxml\`, \`markers.edl\` | the same as marks of the film's timeline, for editing programs |
| \`clips.csv\`, \`rough-cut.otio\`, \`.edl\`, \`.fcpxml\` | with \`--clips\`: which file holds what, and the best takes one after the other |
| \`takes.csv\` | where a field list was ticked: each take of each shot, what it is worth and why, and the phone's clock at its end |
| \`wrap.json\` | all of it as data, as \`--json\` prints it |

Run it again whenever you like. A file that you have edited stays yours: the new version is written beside it
(\`description.new.txt\`), and you are told. Without captions you get what the records alone can tell.

## What goes to platforms

The description opens with what happened, and the post and the newsletter tell the same: promises kept in this film, first
pickings of the last month, plants lost since the film before, trials whose sides stand in one bed. Each stands in a public line of your
records and was spoken of at its bed; what only one of the two tells is left out, and so is all that names a private plant, bed,
thing or giver. Nothing is added up. A promise counts as kept when the record says so: \`kept: EPISODE\`, or a line in a note.

Short clips are whole sentences at one stop; none is made where a private name is said aloud, or where the stop is shorter than 15
seconds. The notices that viewers are owed stand first in the comment, the post and the newsletter too; where they leave no room for a
post none is written. A commission is told beside its link, so where there is no link to buy by it is not told, and
the newsletter leaves the variety out.

A title is a phrase you could say, of one thing that happened: a question answered before a trial, a loss, a promise kept, a first
picking, one of each kind. Where nothing of that was heard it is the stop you stayed at longest. Its picture is the film's own at
the moment it is told. End cards name the published films you speak of ("as I showed you in April", "last time"), at most four.

What you do without is said in garden.md, one or several of these:

    wrap without: [pinned comment, shorts, post, newsletter, titles, end cards]

## What was planned, filmed and missed

What was filmed is held against the plan it was filmed by: the one that came home with the ticks, else \`plan.json\`, which the
brief kept beside the episode ([filming-day.md](filming-day.md)). So notes you add after filming make no shot another, and a promise
made in the film is none that it missed. Without either the tour is planned anew. The report lists the takes, and what to go
back for, bed by bed and musts first: takes of which none can be used, what was skipped and why, musts that were not filmed.

A thing counts as said when its own claim was made, not when its plants were named: leeks are said to be lost, in flower or picked
for the first time, a trouble is called by its name. Else it was shown, and not said. A promise is kept, put off again, or owned
up to; a bed you pass by in so many words is not missed.

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
A turn less than 0.35 sure is told as a guess, and nothing is made of it: what is said there is said at no bed that is known.

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

Counts, losses, days, ages, sizes, weights, sources, which variety stands here, and "new to me" are compared with the records as they were on the filming day.
What disagrees is listed with both sides, and nothing is changed. The report counts what was compared, agreed
and differed, and lists what the records tell nothing of: silence is no agreement.

## Film files

    plotreel wrap EPISODE --clips FOLDER

reads the dates, lengths and pictures a second that MP4 and MOV files hold, joins them with what you ticked on the phone, and
writes \`clips.csv\`: for each file the stop, shot and take, which take is the best, and what is said in it where captions of
its own lie beside it (\`GX010001.srt\`). Nothing is decoded or changed, and where a file was made is never read.

A camera's date may be UTC or its own clock, the beginning of a clip or its end, and the clock may be set wrong. Which it is,
is found once for each camera by what fits all your ticks best, and told. Where two readings fit you are asked; without an
answer the files are marked "not sure". \`clip clocks\` in garden.md settles it for good. A file that runs while you tick several
shots is listed with the times within it.

## Timelines

Timelines count whole pictures, so the film's pictures a second must be known: \`--rate 25\`, or the rate of most clips. Without
either none is made, because a wrong rate puts every mark beside its picture. At 29.97 and 59.94 labels are drop frame (SMPTE
ST 12-1), and no moment is rounded up. OpenTimelineIO is written as every reader since 0.14 opens it, edit lists as CMX 3600
(ASCII; the rate stands in a comment, as the form has no place for it), FCPXML as 1.9. \`edit-log.csv\` has a timecode and a short
name beside each sentence.

The rough cut holds the best take of each shot in the order of filming on the files themselves, with two seconds (at most a
tenth of the clip) left at both ends as handles; where captions of a clip tell when is spoken, a second around the words stays.

## Viewers' questions

Questions noted (\`asked:\`) and those in \`comments.txt\` beside the record, a comment a line, are answered from the records, also
where nobody typed a question mark. Things of yours are looked at before plants, so that "where are the cages from?" gives the
gift with its notice. Where several things or varieties may be meant you are asked which; a sentence of your notes that only
shares the question's words is marked as a guess; private persons are never named.

## The page of the film

\`plotreel publish\` reads the captions beside published episodes and puts on the film's page: chapters whose times open the film
there, the varieties as they are named with their sources, the photos of that day, and what is said, with a field to find a
word in it. Names heard wrong are set right there too. The film itself stays where it is: the page has a plain link to
it and asks no other server for anything. Addresses get the time in both common spellings (\`?t=62#t=62\`). The pages of
varieties and beds name the times at which films show them.

Captions that name a private record, that repeat words of a private note, or that are spoken while you stand at a private bed
are left out of the page. Everybody who watches the film still hears them: what nobody may know must not be in the film.

## Where things came from

\`obtained:\` in varieties and gear decides what is said beside a thing and at the top of the description. Sellers and makers
are told of: \`paid promotion\`, \`given by a seller\`, \`lent by a seller\`, \`discounted\`, \`commission link\`, \`own product\`,
\`family business\`. A private person's gift (\`given by a person\`, \`lent by a person\`) owes no notice: it is thanks further
down, and the name stands there only with \`thank by name: yes\` in the record. Of a bare \`gifted\` or \`lent\` nobody knows
which it is: it is told without a name, and you are asked. What has no \`obtained:\` is a warning and never taken for bought,
unless the variety's file has no source and a note line says that its plants were bought; of plants "given" you are asked.

The words are those asked for where you are: \`notices: us\`, \`uk\`, \`au\`, \`eu\` or \`all\` (the strictest) in garden.md, else
by your \`language:\`. Everywhere the guidance wants it in the film itself too, so the page before upload tells of each thing
whether that was heard near its name. The words follow the FTC's Endorsement Guides (16 CFR 255.5), the CAP Code (2.1, 2.3), the
AANA Code of Ethics (2.7) and directive 2005/29/EC. They are help with your records, not legal advice: local rules decide.

## How well it hears

\`node scripts/bench-wrap.ts\`, part of \`npm run bench\`, scores it on the demo's eight films. Each has clean captions, and automatic ones made from them by a
seeded script (\`scripts/mangle-captions.ts\`) that hears names with a pronouncing dictionary, not with the code that finds them
again. Rules were made and set on four of the films (June 2024, March 2025, August 2025, May 2026). Of the other four only totals
and kinds of error were looked at; their words had been read once, to label what they promise.
`;
}
