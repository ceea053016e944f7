/**
 * How people put off what they had promised, and how they say that it is done. Nobody's very words: a later occasion is named
 * ("another day", "the next film"), a verb of putting off is used ("will have to wait", "pushed back"), or it is said that now is not
 * the time ("not today", "no light left"). Where all of it speaks of a garden as well ("leave the leeks till spring") it counts only
 * beside a promise that was named.
 */

const shoot =
  "(?:time|one|film|video|vid|episode|instal?lment|tour|walk|visit|round|go|go round|goround|upload|update|part|chapter)";

/** An occasion to film on. */
const laterFilm = `(?:next|following|coming) (?:wee )?${shoot}|(?:another|some other|a different) (?:time|day|film|video|episode|tour|walk)|one of these days|(?:own|separate|later|future) (?:film|video|episode)`;

const notNow =
  "not (?:(?:going|showing|doing|filming)(?: \\w+){1,4} )?(?:today|tonight|this (?:time|week|morning|evening|afternoon))|(?:no|out of|short of|short on|lost the|havent the|havent got the|not enough) (?:time|light|daylight|puff|battery|steam|hours)|(?:light|battery|daylight)(?:s| is| has| was)? (?:gone|dead|dying|going|flat)|off the menu|this time (?:round|around)";

/** Of a film and of nothing in a garden. */
export const putsOffFilming = new RegExp(
  `\\b(?:${laterFilm}|${notNow}|owe (?:you|ye|yall) (?:that|it|this|one)|(?:story|job|tale) for (?:another|a different))\\b`,
);

const it = "(?:it|that|this|them|those|these|him|her|the \\w+(?: \\w+)?)";

const postponing = [
  `put(?:ting)? ${it} (?:off|back)`,
  `(?:put|pushed|moved|held|set|shoved) (?:off|back|over)`,
  `(?:push|pushing|mov(?:e|ing)|hold|holding|carry|carrying|roll|rolling|shift|shifting) ${it} (?:off|back|over|to|on|till|until)`,
  "postpon\\w*",
  "(?:have|has|had|got|can|could|must|will|ll|itll|theyll|thatll) (?:to |just |got to )?(?:wait|bide)",
  "(?:come|coming|get|getting|circle) (?:back|round|around) to",
  `(?:leav|sav|keep)(?:e|ing)? ${it} (?:be )?(?:for|till|until|to|over)`,
  `(?:keeping|saving|leaving) (?:for|till|until)`,
  `(?:park|skip|skipping|shelve) ${it}`,
  `spare (?:you|ye|yall)`,
  "(?:still|remains) (?:a debt|owing|owed|outstanding|due)",
  "for now",
].join("|");

/** Of a garden as well: it counts beside a promise that was named. */
export const putsOffAnything = new RegExp(`\\b(?:${postponing})\\b`);

/** What may be said of much else, and puts off where a promise was named and nothing says that it was kept: a time to come. */
export const putsOffPerhaps =
  /\b(?:till|until|(?<!(?:days?|weeks?|months?|years?) )later|next|another|a separate|part (?:two|2|three|3)|rain ?check|down the (?:road|line|track)|on the list|give (?:it|them|him|her)|(?:isnt|arent|not) ready|in (?:a|an|the) (?:week|month|fortnight|spring|summer|autumn|fall|winter|new year)|(?:in|for|by|come|before) (?:january|february|march|april|may|june|july|august|september|october|november|december|christmas|easter))\b/;

/** "There they hang", "as promised", "so I did". */
export const showsIt =
  /\b(?:here|there) (?:it|they|he|she|you|ye|we) (?:is|are|be|go|goes|hangs?|stands?|lies?|sits?|have|has)\b|\b(?:here|there)(?:s| is| are) (?:it|your|yours|the result)\b|\bas promised\b|\b(?:keep|kept|keeping) my (?:word|promise)\b|\b(?:so|and|well|yes|yesterday) (?:i|we) (?:did|have done|finally did)\b/;

/** Of a promise to show: "these are the ones". */
export const showsThem = new RegExp(
  `${showsIt.source}|\\b(?:thats|this is|these are|those are)\\b(?! (?:a|for|all|it|not|why|how|what|where|when|the (?:trouble|problem|thing|trick|deal))\\b)|\\blook at (?:that|this|those|these|them)\\b`,
);

export const denies =
  /\b(?:not|never|no|nope|didnt|havent|hasnt|hadnt|cant|cannot|couldnt|wasnt|isnt|arent|wont|dont|aint|forgot|forgotten|failed)\b/;
