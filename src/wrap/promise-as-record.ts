/**
 * A promise as a thing to do, in the words that go into the record and that a card says months later: what is owed, the
 * condition it hangs on, and of what it is where the speaker only pointed.
 */

/** What stands before the commitment and says when: "When they come into flower | I'm going to pinch the tops out". */
const hangsOn =
  /^(?:(?:and|so|but|then|now|well|come [a-z]+),? )*((?:when|once|as soon as|if|whenever|the (?:minute|day|moment|first time)|after|before|until|next time|the next time)\b[^.?!]*?),? (?=(?:i|we)(?:'ll| will| shall|'m|'re| am| are)\b)/i;
/** What viewers do there, kept of a second clause: "and you can watch the lot". */
const watched =
  /,? (?:and|so) you(?:'ll| will| can| could| may) (?:all )?(watch|see|hear|taste|look) ?([^,.?!]*)(.*)$/i;
const along =
  /,? (?:and|so) (?:i|we)(?:'ll| will) (?:(?:bring|take) you (?:along|with me|with us|in with me)|have you (?:along|with me|with us))\b[^,.?!]*/i;
const filmed = /,? (?:and|so) (?:i|we)(?:'ll| will) (?:film|record) (it|this|that|them)\b/i;

/** A pointing word as what is done to, and no part of "this bed", "that one tree". */
const pointing =
  /^([a-z]+(?: (?:up|out|off|down))?) (it|them|those|these|that|this|him|her|one|these ones|this one|that one)(?=$|,| (?!(?:bed|row|lot|tree|plant|pot|tub|bush|patch|border|way|week|month|year|side|end|time|morning|evening|spring|summer|autumn|fall|winter)s?\b)(?:again|in|on|after|before|next|by|when|once|at|for|with|and|from|right|start|side|up|out|off|down|over|open|here|there|to|against|start)\b)/i;

/**
 * `said`: the sentence; `about`: what was named last before it, at the same stop. "I'll show you the leeks again in July, and then
 * you can laugh" becomes "show the leeks again in July", "We'll see which is first. I'll let you know" becomes "say which is
 * first". What is added behind a comma is left out, but not that viewers may watch.
 */
export function whatIsPromised(said: string, about: readonly string[] = []): string {
  const text = said.replace(/[.?!]+$/, "").replace(/[.?!] (?=(?:and )?(?:i|we)(?:'ll| will) let you)/i, " ");
  const told = /\bwe(?:'ll| will) see (.+?) (?:and )?i(?:'ll| will) let you know/i.exec(text)?.[1];
  if (told !== undefined) return withMonths(`say ${told}`);
  const shown = watched.exec(text);
  const others = [
    ...(shown === null || isLaughed(shown[0]) ? [] : [`let viewers ${shown[1]?.toLowerCase()} ${shown[2] ?? ""}`]),
    ...(along.test(text) ? ["take viewers along"] : []),
    ...(filmed.test(text) ? [`film ${filmed.exec(text)?.[1]}`] : []),
  ].map((one) => one.trim());
  const owed = withMonths(plainDeed(text));
  const condition = hangsOn.exec(text)?.[1]?.replace(/,? (?:and|so|but)$/i, "");
  const isLeft = condition !== undefined && !owed.toLowerCase().includes(condition.toLowerCase());
  const pointed = isLeft && condition.split(" ").length > POINTS_ENOUGH ? owed : withWhat(owed, about);
  const whole = [pointed, ...others].join(pointed.includes(",") ? ", and " : " and ");
  return whole + (isLeft ? `, ${withMonths(small(condition))}` : "");
}

/** A condition of more words names what it is about: "when the first Cherokee Purple gets ripe". */
const POINTS_ENOUGH = 5;

function isLaughed(text: string): boolean {
  return /\b(?:laugh|see (?:for yourself|what i mean|why))\b/i.test(text);
}

/** "weigh those in October" as it is read months later: "weigh those (Sturmer Pippin) in October". */
function withWhat(owed: string, about: readonly string[]): string {
  if (about.length === 0) return owed;
  return owed.replace(pointing, (_, verb: string, word: string) => `${verb} ${word} (${about.join(", ")})`);
}

function plainDeed(text: string): string {
  const done =
    /\b(?:i|we)(?:'ll| will| shall|'m going to| am going to|'re going to| are going to) (?:also |definitely |then |all )?(.+)$/i.exec(
      text,
    ) ?? /\b(?:yet to|still have to|still need to|still want to|still to|remind me to) (.+)$/i.exec(text);
  const seen = /\byou(?:'ll| will) (?:all )?(?:see|have|get|hear) (.+)$/i.exec(text);
  const going = /\b(?:i|we)(?:'m|'re| am| are) ([a-z]+ing) (.+)$/i.exec(text);
  const now = /\b(?:i|we) (measure|take|make|show|tell|film|lift|give|weigh|count) (.+)$/i.exec(text);
  const rest =
    done?.[1] ??
    (going === null || seen !== null ? undefined : `${plainVerb(going[1] ?? "")} ${going[2]}`) ??
    (now === null || seen !== null ? undefined : `${now[1]} ${now[2]}`) ??
    (seen === null ? text : `show ${seen[1]}`);
  return rest
    .replace(/[.?!] .*$/, "")
    .replace(/^be ([a-z]+ing)\b/i, (_, verb: string) => plainVerb(verb))
    .replace(/,? because .*$/i, "")
    .replace(/, (?:i|it|they|he|she|that|this|you|we|one|don't|like|definitely|for like)(?:'\w+)?\b.*$/i, "")
    .replace(/^(show|tell|give|bring|make) (?:you|them) (?:all )?/i, (_, verb: string) =>
      verb === "tell" ? "say " : `${verb} `,
    )
    .replace(/^let you (?:all )?know\b/i, "say")
    .replace(/,? and (?:then )?(?:i|we)(?:'ll| will) (?=see|say|find|count|know|tell|weigh|show)/i, " and ")
    .replace(/ and (show|tell|give) you (?:all )?/i, (_, verb: string) => ` and ${verb === "tell" ? "say" : verb} `)
    .replace(/,? (?:and|but|so) (?:then |there |you |i'll |we'll |we |i |that ).*$/i, "")
    .replace(/ (?:for you|with you|you know|of course|i promise|i swear|that's a promise|i will)\b.*$/i, "")
    .replace(/[,;\s]+$/, "")
    .trim();
}

function small(text: string): string {
  return /^I\b/.test(text) ? text : `${text[0]?.toLowerCase() ?? ""}${text.slice(1)}`;
}

/** "pulling" as it stands in a list of things to do: "pull". */
function plainVerb(verb: string): string {
  const stem = verb.replace(/ing$/, "");
  if (/^(?:mov|mak|tak|giv|prun|com|sav|slic|bak|leav|divid|writ|shar|stak|tim)$/.test(stem)) return `${stem}e`;
  return /([bdgmnprt])\1$/.test(stem) ? stem.slice(0, -1) : stem;
}

/** Captions without capitals write "in july"; a record does not. */
function withMonths(text: string): string {
  const named =
    /\b(in|by|until|till|before|come|next|last|of|early|late) (january|february|march|april|may|june|july|august|september|october|november|december)\b/g;
  return text.replace(named, (_, lead: string, month: string) => `${lead} ${month[0]?.toUpperCase()}${month.slice(1)}`);
}
