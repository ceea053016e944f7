/**
 * The rules by which promises, questions and doubts are heard. The page docs/wrap.md prints them from this table; a row
 * more is a rule more. They look at one statement at a time, in small letters with straight apostrophes.
 */

export type Heard = "promise" | "question" | "doubt";

/** What a statement must hold beside the words of its rule. */
export type Needs = "nothing" | "a time" | "a time or a condition";

export interface SpokenRule {
  /** Permanent name. */
  readonly id: string;
  readonly hears: Heard;
  /** What it means, for the manual. */
  readonly meaning: string;
  readonly words: RegExp;
  /** Words with which it does not hold after all. */
  readonly unless?: RegExp | undefined;
  readonly needs: Needs;
  /** How sure it is, from 0 to 1. */
  readonly confidence: number;
  readonly example: string;
  readonly not: string;
}

const will =
  "(?:'ll|\\u2019ll| will| shall|'m going to| am going to|'re going to| are going to| aim to| mean to| plan to|'m fixing to| intend to)";
const also = "(?:(?:also|definitely|certainly|then|all|both|try and|try to|have to|be able to|come and|be) )?";

/** Acts that are done before viewers or for them. */
const forViewers =
  "show|tell|say|let you|count|weigh|weighing|measure|film|bring|come back|be back|return|open|taste|report|share|explain|compare|post|answer|" +
  "make you|make a|do (?:it|that|this|one|a|the)|give you|keep you|update|reveal|go through|go back|look at|have a look|take you|write";

/** Beginnings with "I'll" that promise nothing. */
const idle =
  "(?:just|not|never|be (?!back|show|tell|weigh|count|film|sow|plant|bring)|begin|start|admit|confess|bet|get letters|see you|always|say this|tell you what|let you into|give you that|come to that)";

/** Invitations, goodbyes, idle wishes and earlier promises told again: none of them is a promise. */
export const noPromise =
  /\bif you(?:'re| are) ever\b|\bone day (?:i|we)(?:'ll| will)\b|\buntil we meet\b|\bif god\b|\b(?:i|we) told you\b[^.]{0,24}\b(?:i|we|you)(?:'ll| will)\b|\bcatch you\b|\bwe(?:'ll| will) meet in\b|\bsee you\b|\b(?:maybe|perhaps) one day\b|\b(?:i|we) (?:said|told you|promised)(?: you)?(?: that)? (?:i|we)(?:'ll| will)\b/;

export const spokenRules: readonly SpokenRule[] = [
  {
    id: "promise/show-later",
    hears: "promise",
    meaning: "The speaker will show, tell, count, weigh or bring something, at a time or on a condition.",
    words: new RegExp(`\\b(?:i|we)${will} ${also}(?:${forViewers})\\b`),
    unless: new RegExp(`\\b(?:i|we)${will} ${idle}|\\bwhat (?:i|we)${will}`),
    needs: "a time or a condition",
    confidence: 0.95,
    example: "I'll show you the leeks again in July.",
    not: "I'll show you round the yard.",
  },
  {
    id: "promise/report-back",
    hears: "promise",
    meaning: "The speaker will report back, or will do something on camera, with no time given.",
    words: new RegExp(
      `\\b(?:i|we)${will} ${also}(?:let you (?:all )?know|report back|keep you (?:posted|updated|informed)|get back to you|update you|come back to (?:this|that|it|them)|(?:[a-z']+ ){1,7}(?:on camera|on film|in the next (?:film|video|one|episode)|next time))\\b`,
    ),
    unless: new RegExp(`\\bwhat (?:i|we)${will}|\\b(?:i|we)${will} (?:not|never)\\b`),
    needs: "nothing",
    confidence: 0.85,
    example: "I'll let you know.",
    not: "Let me know what you think.",
  },
  {
    id: "promise/do-later",
    hears: "promise",
    meaning: "The speaker will do something in the garden, at a time or on a condition.",
    words: new RegExp(`\\b(?:i|we)${will} ${also}[a-z]`),
    unless: new RegExp(
      `\\b(?:i|we)${will} ${idle}|\\bwhat (?:i|we)${will}|\\b(?:i|we)${will} (?:see|find out|know|need|want|like|think|hope|eat|be)\\b`,
    ),
    needs: "a time or a condition",
    confidence: 0.85,
    example: "I'll sow the same packet again in June.",
    not: "It'll be small, and I'll eat it anyway.",
  },
  {
    id: "promise/as-it-is",
    hears: "promise",
    meaning:
      "Something to come told as if it were: the speaker shows, tells or films it, or is doing it, at a time to come.",
    words:
      /\b(?:i|we) (?:show|tell|film|measure|give) (?:it for )?(?:you|again)\b|\b(?:i'm|we're|i am|we are) (?:moving|making|filming|sowing|planting|digging|lifting|dividing|pruning|taking|pulling|cutting|putting|doing)\b/,
    unless: /\b(?:always|every|usually|sometimes|last (?:year|month|week|time))\b/,
    needs: "a time",
    confidence: 0.8,
    example: "Next spring I'm moving the foxgloves into the tunnel.",
    not: "I'm moving along the path now.",
  },
  {
    id: "promise/beside-you",
    hears: "promise",
    meaning: "Something to come told as if it were, with viewers beside the speaker, or shown to them.",
    words:
      /\b(?:i|we) (?!am\b|was\b|were\b|had\b|did\b|have\b|said\b|told\b|got\b)[a-z]+ (?:[a-z']+ ){0,6}(?:with you|for you|to you|in front of you|with the camera|on camera)\b|\b(?:and )?you (?:sow|count|dig|cut|pick|come|plant|taste|weigh) (?:[a-z']+ ){0,3}with me\b|\byou (?:get|have) (?:it|them|both|that|the) (?:too|then|numbers?|answer|result|next)\b|\band (?:i|we) (?:film|show|tell|weigh|measure|count|compare)\b/,
    unless: /\b(?:always|every|usually|sometimes|last (?:year|month|week|time)|yesterday)\b/,
    needs: "a time or a condition",
    confidence: 0.8,
    example: "In October we dig one up and I cook it with you.",
    not: "I walk the whole row with you now.",
  },
  {
    id: "promise/comes-later",
    hears: "promise",
    meaning: "The thing itself will come, in a film or at a time.",
    words:
      /\b(?:it|that|this|they|those)(?:'ll| will) be (?:up|out|online|in the next)\b|\b(?:it|that|this)(?:'s| is|)? com(?:es|ing) (?:in )?(?:in the next|next|on|this)\b|\b(?:i'm|we're|i am|we are) (?:paying|moving|writing|bringing) (?:it|that|them|this)\b/,
    needs: "a time",
    confidence: 0.75,
    example: "That'll be up on Thursday.",
    not: "That'll be up the pole in no time.",
  },
  {
    id: "promise/you-will-see",
    hears: "promise",
    meaning: "Viewers will see, hear or have something, at a time or on a condition.",
    words: /\byou(?:'ll| will| shall) (?:all |both |be able to )?(?:see|have|hear|get|meet|find out)\b/,
    unless:
      /\bas you(?:'ll| will)|\bthat you(?:'ll| will) see\b|\byou(?:'ll| will) see (?:here|that|how|why|what i mean)\b|\byou(?:'ll| will) have to\b/,
    needs: "a time or a condition",
    confidence: 0.9,
    example: "You'll see this bed again in August.",
    not: "As you'll see, the net is off.",
  },
  {
    id: "promise/find-out",
    hears: "promise",
    meaning: "Speaker and viewers will see or find out together, at a time.",
    words: /\bwe(?:'ll| will| shall) (?:all |both )?(?:see|find out|know|learn|compare|count)\b/,
    needs: "a time",
    confidence: 0.82,
    example: "We'll find out in July.",
    not: "We'll see.",
  },
  {
    id: "promise/yet-to",
    hears: "promise",
    meaning: "Something the speaker has yet to do.",
    words:
      /\b(?:i|we)(?:'ve| have) yet to [a-z]|\b(?:i|we) still (?:have|need|want) to [a-z]|\b(?:i|we)(?:'ve| have) still (?:got )?to [a-z]|\bremind me to [a-z]|\b(?:i|we)(?:'ve| have) still got (?:that|it|this|those) to do\b|\bis still pending\b|\bhold me to (?:it|that)\b/,
    unless: /\b(?:yet|still (?:have|need|got|want)|still) to (?:see|meet|find|understand|decide|hear)\b/,
    needs: "nothing",
    confidence: 0.8,
    example: "I've yet to net the brassicas.",
    not: "I've yet to meet a slug that minds copper.",
  },
  {
    id: "question/to-viewers",
    hears: "question",
    meaning: "Viewers are asked for something.",
    words:
      /\b(?:let me know|tell me (?:what|how|if|whether|which|why|where|below|in the comments)|what do you (?:think|do|grow|use|sow)|(?:does|do|has|have) any(?:one|body)(?: of you)?|if any(?:one|body) knows|any(?:one|body) know|(?:some|any)(?:one|body)(?:'ll| will) know|write and tell me|put it in the comments|ask (?:me )?(?:below|in the comments)|how do you|have you (?:ever )?(?:grown|tried|had)|do you know)\b/,
    unless:
      /\b(?:let you know|people (?:ask|write)|was asked|been asked|i let you|(?:didn't|don't|did|to|they|never) tell me)\b/,
    needs: "nothing",
    confidence: 0.85,
    example: "If anybody knows what this is, let me know.",
    not: "There's nothing in it, is there?",
  },
  {
    id: "doubt/does-not-know",
    hears: "doubt",
    meaning: "The speaker does not know, or cannot explain.",
    words:
      /\bi (?:don't|do not|can't|cannot|couldn't|never) (?:know|explain|tell|understand|remember|say) (?:what|why|how|which|whether|if|it|that|yet|when|where)\b|\bi(?:'ve| have) no idea\b|\bi(?:'m| am) not (?:sure|certain|convinced)\b|\bi (?:can't|cannot) explain\b|\bi (?:never|don't) know\b(?= *$)/,
    unless: /\bi don't know (?:about you|if you)\b/,
    needs: "nothing",
    confidence: 0.85,
    example: "I can't explain it.",
    not: "I don't mind it.",
  },
  {
    id: "doubt/undecided",
    hears: "doubt",
    meaning: "The speaker has not decided, or leaves it open.",
    words:
      /\bi(?:'ve| have) not (?:decided|made up my mind)\b|\bi(?:'m| am) not (?:calling it|saying) yet\b|\bi haven't (?:decided|made up my mind)\b|\bi(?:'m| am) in two minds\b|\bi (?:do )?wonder (?:if|whether|why|what|how)\b|\bi(?:'m| am) still not sure\b/,
    needs: "nothing",
    confidence: 0.85,
    example: "I've not decided.",
    not: "It's a wonder they came up.",
  },
];

/** Beside a due date: words that put something later, or make it depend. */
export const laterWords =
  /\bnext time\b|\b(?:the )?next (?:time|one|film|tour|episode|video|round|walk)\b|\banother (?:time|day)\b|\bone day\b|\bin (?:a|the) few (?:days|weeks|months)\b|\bsoon\b/;
export const conditionWords =
  /\b(?:when|whenever|once|if|as soon as|the day|the minute|the moment|the morning|the night|(?:the )?first (?:night|day|frost|morning|decent|good|real|hard|big)|until|till|after) (?!you(?:'d| would)? (?:like|rather|want|look))/;

/** Said after a promise, these belong to it. */
export const afterwards =
  /^(?:and )?(?:that's a promise|i promise|you're my witness(?:es)?|hold me to (?:it|that)|i will|i'll let you know|we'll see|i'll tell you)\b/;
