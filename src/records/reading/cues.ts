/** Words that say how a clause is meant: not done, another year's, only thought of, still to come, a habit, another person's. */
import type { Word } from "../line-words.ts";
import type { CueKind } from "./mention.ts";

const rows: Readonly<Record<CueKind, string>> = {
  not:
    "hardly any, hardly a, scarcely, barely any, not, no, never, none, nothing, nil, zero, didnt, did not, dont, do not, doesnt, wasnt, werent, isnt, arent, havent, hasnt, hadnt, couldnt, cant, wouldnt, wont, " +
    "no sign of, no signs of, not a, without, forgot to, forgot, meant to, failed to, yet to, still waiting, waiting for, waiting on, skipped, skip, nor, neither, nearly, almost, instead of, nobody, nowt, nae, didnae, no yet, not yet, should have",
  past:
    "last year, last yr, last season, last summer, last spring, last autumn, last winter, last fall, last back end, the year before, year before last, years ago, a year ago, yrs ago, used to, " +
    "previous year, the other year, in my childhood, when i was, back in, in those days, once had, years back, the last time, in the old days, back home, this time last year, a few years, since last year, as last year",
  may:
    "might, may, maybe, perhaps, could, would, if, unless, wish, wishing, thinking of, thinking about, thinking, think about, considering, consider, hoping, hope, hopefully, tempted, wondering, wonder, supposed to, ought to, ought, " +
    "should, possibly, probably, reckon, dreaming of, id, had i, were i, what if, or else, unsure, not sure, either, cannot decide, cant decide, on the list",
  future:
    "will, shall, going to, gonna, gunna, ill, well be, itll, theyll, tomorrow, next week, next month, next year, next yr, next season, next spring, next summer, next autumn, next fall, next winter, next time, next weekend, next monday, next tuesday, next wednesday, next thursday, next friday, next saturday, next sunday, " +
    "soon, later, to come, in a week, in a fortnight, in a month, in two weeks, this weekend, come spring, come autumn, come october, come september, must, need to, needs to, about to, due, to be, intend, intention, plan to, planning, want to, wants to, waiting to, ready to, time to, until",
  habit:
    "usually, always, every year, every spring, every summer, every autumn, normally, generally, each year, often, traditionally, as a rule, whenever, most years, some years, every time, every season, people say, they say, supposedly, folk, rule of thumb, rule is, best to, you should, never plant, never sow",
  other:
    "next doors, the neighbours, the neighbors, at my brothers, at my sisters, at my mums, at my dads, the plot next, my brothers, my sisters, stir in, into ribbons, into slices, into cubes, into strips, into rounds, into chunks, into wedges, into bite, simmer for, bake for, boil for, roast for, fry until, serve with, add the, season with, preheat the, a friend, the book, book says, says to, a neighbour, a neighbor, an old boy, my sister, my brother, my neighbour, my neighbor, the neighbour, the neighbor, neighbours, neighbors, next door, my mother, my father, my mum, my mom, my dad, my nan, my gran, my grandmother, my grandfather, my uncle, my aunt, my auntie, my friend, my cousin, my boss, the lad next, they, theirs, hers, he, she, his, her, their, " +
    "somebody, someone, a man, a woman, a lady, the lady, the radio, the telly, the book, the paper, the forum, the internet, article, recipe, in the shop, from the shop, shop bought, store bought, supermarket, at the show, viewer, viewers, customer, mrs, mr, miss, plot 4, plot 7",
  question:
    "?, anyone, how come, wonder why, who knows, which ones, what is, whats, is it, are they, or was it, or was that",
  correction:
    "correction, corrected, amend, errata, erratum, should read, should have been, that should be, was not, not the, i was wrong, got it wrong, oops, whoops, sorry, mistake, typo, misread, miscounted, recounted, actually, in fact, i said, i wrote, i put, turns out, mislabelled, mislabeled, renamed, now called, henceforth, is called, to be called, is filed as, " +
    "known as, keys out to, identified as, really, scratch that, ignore, strike, make that, call it, i mean, i meant, no it was",
};

const byFirst = new Map<string, { readonly words: readonly string[]; readonly is: CueKind }[]>();
for (const [is, forms] of Object.entries(rows)) {
  for (const form of forms.split(", ")) {
    const words = form.split(" ");
    const first = words[0] ?? "";
    byFirst.set(first, [...(byFirst.get(first) ?? []), { words, is: is as CueKind }]);
  }
}
for (const list of byFirst.values()) list.sort((a, b) => b.words.length - a.words.length);

/** Every cue that begins at a word; one word may be several: "should" is a doubt, and with "have" what was not done. */
export function cuesAt(words: readonly Word[], at: number): readonly { readonly is: CueKind; readonly end: number }[] {
  const found: { is: CueKind; end: number }[] = [];
  for (const { words: form, is } of byFirst.get(words[at]?.lower ?? "") ?? []) {
    if (found.some((one) => one.is === is)) continue;
    if (form.every((part, index) => words[at + index]?.lower === part)) found.push({ is, end: at + form.length });
  }
  return found;
}
