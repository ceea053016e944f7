/** Lines that say of themselves that nobody else is to see them, within a note that is public. Doubt means private. */

const marks = [
  // "(not for the film)", "never on camera", "don't put that on the site"
  /\b(?:not|never|don'?t|nothing)\b[^.;!?]{0,24}\b(?:for|on|in|to) (?:the |my |our )?(?:films?|camera|videos?|viewers|channel|blog|site|website|web|internet|air|public|publication)\b/iu,
  // "Nae for the camera", "no on the film"
  /\b(?:nae|no) (?:for|on) (?:the )?(?:films?|camera|video)\b/iu,
  /\b(?:keep|leave|cut) (?:this|that|it|him|her|them|me)? ?(?:aff|off|out of|from) (?:the )?(?:films?|camera|video)\b/iu,
  /\boff[- ](?:camera|air|the record)\b/iu,
  // "No photo permission for Kofi", "has no media consent"
  /\bno (?:photo|photos|picture|media|film|filming|image) (?:permission|consent|release)\b|\bno filming\b/iu,
  /\b(?:staff|volunteers) only\b/iu,
  /\b(?:do not|don'?t|never) (?:film|publish|post|show|mention|say) (?:this|that|it|him|her|them|any of it|\p{Lu}\p{Ll}+['’]?s? name)\b/iu,
  /\bkeep(?:ing)? (?:this|that|it) (?:private|quiet|secret|off|to (?:myself|ourselves))\b/iu,
  /\b(?:be|a)tween (?:you and me|ourselves)\b|\bjust (?:for|between) (?:us|me|ourselves)\b/iu,
  /^[^\p{L}]*(?:private|confidential|secret)\b[^\p{L}]*(?:[:)\]–—-]|$)/iu,
  /[([](?:private|confidential|secret)[)\]]/iu,
];

/** What only a heading means by it: "Private notes", "Just for me". */
const headings = [
  /^[^\p{L}]*(?:private|confidential|secret|personal)\b/iu,
  /\b(?:only|just) for (?:me|us|my)/iu,
  /^[^\p{L}]*(?:(?:just )?between us|don['’]?t film)\b/iu,
];

/** `isBed`: it is called so, and a bed may be called Secret Corner. */
export function headingSaysPrivate(title: string, isBed: boolean): boolean {
  return saysPrivate(title) || (!isBed && headings.some((mark) => mark.test(title)));
}

/** A line with nothing of its own to say: "Not for the film:", "(off camera)". What stands below it is meant. */
export function leadsPrivate(text: string): boolean {
  const isBare = /^[^\p{L}]*(?:not for (?:the |my |our )?\p{L}+|off[- ]camera|private|confidential|secret)[^\p{L}]*$/iu;
  const colon = text.lastIndexOf(":");
  const ends = colon >= 0 && !/[\p{L}\p{N}]/u.test(text.slice(colon));
  return saysPrivate(text) && (ends || isBare.test(text));
}

export function saysPrivate(text: string): boolean {
  return marks.some((mark) => mark.test(text));
}
