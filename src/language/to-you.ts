/** A person's own words, said back to them. */

/** The person's "I" is "you" in a brief that speaks to them. */
export function toYou(said: string): string {
  const words: ReadonlyMap<string, string> = new Map(
    Object.entries({
      "i am": "you are",
      "i was": "you were",
      "i'm": "you're",
      "i’m": "you’re",
      i: "you",
      me: "you",
      my: "your",
      mine: "yours",
      myself: "yourself",
      we: "you",
      us: "you",
      our: "your",
      ours: "yours",
    }),
  );
  return said.replace(
    /\b(?:I am|I was|I['’]m|I|me|my|mine|myself|we|us|our|ours)\b/g,
    (word) => words.get(word.toLowerCase()) ?? word,
  );
}
