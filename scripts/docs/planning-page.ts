/** docs/planning.md, printed from the tables of values and of time on film, and from a tour planned on the demo garden's terms. */
import { highSun } from "../../src/almanac/index.ts";
import { filmTime, offFilm, stopOverhead } from "../../src/films/film-time.ts";
import { cardLimits } from "../../src/films/index.ts";
import { mostShots } from "../../src/tour/cards/card.ts";
import { mostPerStop, novelty, repeated, showValues, toldAgain } from "../../src/tour/show-values.ts";

export function planningPage(): string {
  return `${introduction}
${valueTable()}

Some values change with what is on record:

- Of several things of one kind at one stop the second is worth ${repeated} of the first, the third less again.
- What speaks only of plants that something stronger has shown already is worth ${toldAgain} of its value.
- Where captions lie beside the films: what no film has named is worth ${novelty.neverNamed} times as much; what goes on as before and
  was named in the last film ${novelty.namedLastTime} times.
- \`weights\` in garden.md multiply a row: \`weights: {trial: 1.5, work: 0}\`.

## What stands on a card

Of what is chosen, a card for each stop holds what is needed while the camera runs, the same on paper and on the phone:

| part | at most | what it is |
|---|---|---|
| opening | ${cardLimits.opening} words | the one whole sentence, said to the lens, without a figure: what is owed, else what began last year, else trouble, else a first |
| then | ${cardLimits.before} words | what viewers saw here last time |
| now | ${cardLimits.nowPhrases} times ${cardLimits.now} words | what is shown, the hand’s verb first, in order along the bed by the spots of your notes |
| figure | ${cardLimits.figure} words | one, rounded to two digits, held against last year or the last photo; without a comparison there is none |
| why | ${cardLimits.why} words | a reason your notes give, a remedy for last year’s trouble, another place or time, or what your files say of the plant |
| names | ${cardLimits.names} | how to say them, and which are new to this garden, new in this bed, or grown every year |
| say | all of them | gifts, loans, links and debts, in the first person |
| next | ${cardLimits.next} words | what to look out for, with its day |

What is spoken comes to ${cardLimits.spoken} words at most. When it is more, then, the third thing now, the figure, the second thing now and
the reason go, in this order, into the dossier below; letters are never made smaller. The limits are common practice of people who
speak to camera: one thought and one figure at a time, only the first sentence whole. The back of a card has at most ${mostShots} shots; *hold 10* is ten
seconds, of which the edit uses four.

## How long things take

Words are counted at the garden's \`narration rate\` (130 words a minute unless garden.md says otherwise; the usual band is
120 to 160). A number in digits counts as two words. On top of that, in seconds:

${timeTable()}

A stop costs ${stopOverhead} seconds before anything is said there. In the garden it takes longer than on film: ${offFilm.setUp} seconds for setting
up at each stop, ${offFilm.changeOfSite / 60} minutes for packing up and unpacking between two sites, and the way between them at
${(offFilm.walkingPace * 3.6).toFixed(0)} km an hour on foot, at ${(offFilm.ride * 3.6).toFixed(0)} km an hour when it is more than ${offFilm.furthestWalk / 1000} km. That moves the clock and leaves the film's length alone.
${rest}`;
}

function valueTable(): string {
  const rows = Object.entries(showValues).map(
    ([kind, { level, value, filmed }]) => `| ${kind} | ${level} | ${value} | ${filmed} |`,
  );
  return ["| kind | level | value | filmed |", "|---|---|---|---|", ...rows].join("\n");
}

function timeTable(): string {
  const { opening, goodbye, walk, wide, handling } = filmTime;
  const rows = [
    ["the greeting and one opening line", opening],
    ["the goodbye", goodbye],
    ["walking up to a stop, the link line spoken over it", walk],
    ["the stop as a whole, held before anything is said", wide],
    ...Object.entries(handling),
  ].map(([what, seconds]) => `| ${what} | ${seconds} |`);
  return ["| what | seconds |", "|---|---|", ...rows].join("\n");
}

const introduction = `# How a tour is planned

\`plotreel brief TOUR\` looks at every bed for what asks to be shown, weighs it, and fits it into the film's length (\`target: 12 min\`
in the episode's record). What viewers were promised and what is new to them is always in. Of everything else it takes
what adds up to most; of two choices worth the same, the one given first. Without a target each stop shows at most ${mostPerStop.should} things
that should and ${mostPerStop.could} that could be shown.

What falls out is listed with its length and the word that brings it back. In the episode's record:

    target: 12 min
    must: [Uchiki Kuri]        # lift it to a must
    keep: [mint trough]        # hold it as it is; something weaker goes
    skip: [beetroot]           # leave it out, even when it is owed

A name is a bed, a variety, a crop, or words of the sentence. When the musts alone are too long for the target, all of them
stay, and the brief says by how much.

## What things are worth

Common practice of people who film their gardens, not science.
`;

const rest = `
## The walk

Stops listed in the episode's record stay in that order; the brief says how many steps another would save, and changes
nothing. Where none are listed, each site is walked the shortest way between the beds' plan positions. Sites follow their
\`order\`; where none has one, the order that gives the best light. In a site's record, all of it optional, in metres on its plan:

    gates: [{x: 13, y: 0}]       # where it is entered and left
    must pass: [{x: 6, y: 4}]    # points every walk takes in
    start: {x: 13, y: 0}         # or a bed's name
    end: Long Bed

and in an episode's record \`first stop\` and \`last stop\`. Beds without a place on the plan come last in their site.

## The light

A bed's light follows from the sun at its site, the direction its first viewpoint looks in (else the side the bed faces), and
the obstacles its record names: \`shade: wall to the east, 3 m high, 2 m away\`. The best start is the quarter of an hour that
puts most stops into good light at their own time; the person's own \`start\`, or \`--start 09:30\`, goes before it. Where the
light of less than half of the stops is known, nothing is said of the tour's. In garden.md:

    film between: 08:00 to 12:00
    low sun: {from: -4, to: 6}   # degrees between which the sun counts as low

\`--overcast\` plans for cloud: even light from every side.

| light | when | worth |
|---|---|---|
| sun behind you, from the side | the sun within 60° of straight behind the camera; between | 100 |
| against the light | within 60° of straight ahead | 25 |
| hard light from above | the sun ${highSun}° high or more, whichever way the camera looks | 50 |
| in the wall's shade | what stands there is higher than the sun's way to the bed's middle | 50 |
| soft, even | under a tunnel's skin or glass; under cloud | 100 |

The thirds of the circle, the ${highSun}° and the worths are common practice and ours: handbooks of portrait light put the main light
some 30 to 45° above the eyes, garden photographers keep away from a summer noon, and none of those seen draws a line in degrees.

Shade is read in metres, centimetres, feet and inches and in sixteen directions ("6 feet 6 inches high, SSW"). A line that
cannot be reckoned with is told by \`plotreel check\` (\`bed/shade-unread\`) and not guessed.

## The weeks ahead

\`plotreel ahead\` lists what must be filmed or done by a day, what is promised for none, the day of each week with the most
reasons to film, in words, and when things should be ready: by their days to maturity and by what this garden's own records
and weather say; where a variety's file gives no days, by what its crop takes as a rule, and then it says so. \`--ics\` writes
it as a calendar; private things stay out of that.

This page is printed from the tables in \`src/tour/show-values.ts\` and \`src/films/film-time.ts\` by \`npm run docs\`.
`;
