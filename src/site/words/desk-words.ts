/** What the first of the private pages says: today's desk. */
import { capital, sayNumber, sayPlural } from "../../language/index.ts";

export const deskWords = {
  title: "Today",
  outdoors: "Write outdoors, also without a signal",
  film: "Next film",
  noFilm: "The next planned film will stand here, with what it owes.",
  /** Which is made as it would be made now. */
  brief: "The brief as it stands now",
  /** Days until it, and "Saturday 18 July". */
  when: (days: number, day: string) => {
    if (days === 0) return "Today.";
    if (days === 1) return `Tomorrow, ${day}.`;
    if (days > 1) return `In ${sayNumber(days)} days, on ${day}.`;
    return `Its day was ${day}, and it is not marked as filmed.`;
  },
  owed: "Owed to viewers",
  best: "At its best this week",
  nothingBest: "Nothing is noted that will be gone, ready or in flower this week.",
  lastLook: (about: string, day: string) => `A last look at ${about}, until ${day}.`,
  ready: (about: string, day: string) => `${capital(about)}: ready from about ${day}.`,
  toFlower: (about: string, day: string) => `${capital(about)}: in flower from about ${day}.`,
  inFlower: (names: string) => `In flower: ${names}.`,
  picking: (names: string) => `Being picked: ${names}.`,
  tasks: "To do this week",
  noTasks: "Nothing is due this week.",
  more: (n: number) => `${capital(sayNumber(n))} more`,
  lines: (n: number) => capital(sayPlural(n, "line", "lines")),
  notThisWeek: (n: number) => `${capital(sayNumber(n))} more, not due this week`,
  questions: "Questions to you",
  noQuestions: "No line waits for an answer.",
  settleIt:
    "“plotreel settle” asks, and writes the answer below the line. While “plotreel watch” runs, a tap here does.",
  answersTo: (line: string) => `What does “${line}” say?`,
  moreQuestions: (n: number) => `${capital(sayPlural(n, "more question waits", "more questions wait"))} in the notes.`,
  asks: "Worth asking yourself",
  inWords: (such: string) => `In a few words, such as: ${such}`,
  keep: "Keep it",
  neverAgain: "Don’t ask again",
  asksWhere: "“plotreel settle --asks” asks, and keeps the answer. While “plotreel watch” runs, a tap here does.",
  others: "Everything else",
  problems: "To mend in the records",
};
