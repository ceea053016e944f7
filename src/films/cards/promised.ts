/** What a promise was, and what was asked in it: word by word, because it is as long as somebody made it. */

const months = new Set(
  "january february march april may june july august september october november december".split(" "),
);
/** Promises that are kept by telling: what follows the question word is the answer owed. */
const tellings = new Set("say see show tell explain report answer decide".split(" "));
const questions = new Set("whether which how why what who".split(" "));
const conditions = new Set("when once if".split(" "));

/** Without "on camera", the month and the bed it would be kept in, and the condition it hung on. */
export function promised(what: string): string {
  let words = what
    .replace(nextFilm, "")
    .split(/\s+/)
    .filter((word) => word !== "");
  if (words[0]?.toLowerCase() === "to") words = words.slice(1);
  words = words.filter((_, at) => !isAside(words, at) && !(at > 0 && isAside(words, at - 1)));
  words = words.filter((_, at) => !isMonthOf(words, at));
  words = withoutBed(words);
  return bareEnd(withoutCondition(words).join(" "));
}

/** The film it is said in is the next one. */
const nextFilm =
  /,? (?:(?:in|on) (?:the |my |our )?)?next (?:film|video|tour|episode|time)\b|,? on the (?:film|video|camera)\b/i;

/** "whether the netted cabbages stayed clean", where the promise was to find something out. */
export function askedIn(what: string): string | undefined {
  const words = promised(what).split(" ");
  const lower = words.map((word) => word.toLowerCase());
  const tells = lower.findIndex((word, at) => tellings.has(word) || (word === "find" && lower[at + 1] === "out"));
  if (tells < 0) return undefined;
  const asks = lower.findIndex((word, at) => at > tells && questions.has(word));
  return asks < 0 ? undefined : words.slice(asks).join(" ");
}

/** "on camera", "on film" */
function isAside(words: readonly string[], at: number): boolean {
  return words[at]?.toLowerCase() === "on" && ["camera", "film"].includes(letters(words[at + 1]));
}

/** The words of "again in July", "by June". */
function isMonthOf(words: readonly string[], at: number): boolean {
  const said = (index: number) => letters(words[index]);
  const begins = (index: number) => ["in", "by", "before"].includes(said(index)) && months.has(said(index + 1));
  return begins(at) || begins(at - 1) || (said(at) === "again" && begins(at + 1));
}

/** The bed's name at the end, by its capitals: "in Onion Bed". */
function withoutBed(words: readonly string[]): string[] {
  const at = words.findLastIndex((word) => word.toLowerCase() === "in");
  const name = words.slice(at + 1);
  const isName = at > 0 && name.length > 0 && name.every((word) => /^\p{Lu}/u.test(word));
  return isName ? words.slice(0, at) : [...words];
}

/** "Say when they ripen" has no condition, "come back when they are ripe" has. */
function withoutCondition(words: readonly string[]): readonly string[] {
  if (tellings.has(letters(words[0]))) return words;
  const at = words.findIndex((word, index) => {
    const soon = word === "as" && words[index + 1] === "soon" && words[index + 2] === "as";
    return index > 1 && (conditions.has(word.toLowerCase()) || soon);
  });
  return at < 0 ? words : words.slice(0, at);
}

function letters(word: string | undefined): string {
  return bareEnd(word ?? "").toLowerCase();
}

function bareEnd(text: string): string {
  let end = text.length;
  while (end > 0 && ".;, ".includes(text.charAt(end - 1))) end -= 1;
  return text.slice(0, end);
}
