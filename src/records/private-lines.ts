/** Lines that say of themselves that nobody else is to see them, within a note that is public. Doubt means private. */

const marks = [
  // "(not for the film)", "never on camera", "don't put that on the site"
  /\b(?:not|never|don'?t|nothing)\b[^.;!?]{0,24}\b(?:for|on|in|to) (?:the |my |our )?(?:films?|camera|videos?|viewers|channel|blog|site|website|web|internet|air|public|publication)\b/iu,
  /\boff[- ](?:camera|air|the record)\b/iu,
  /\b(?:do not|don'?t|never) (?:film|publish|post|show|mention) (?:this|that|it|him|her|them|any of it)\b/iu,
  /\bkeep(?:ing)? (?:this|that|it) (?:private|quiet|secret|off|to (?:myself|ourselves))\b/iu,
  /\bbetween (?:you and me|ourselves)\b/iu,
  /^[^\p{L}]*(?:private|confidential|secret)\b[^\p{L}]*(?:[:)\]–—-]|$)/iu,
];

export function saysPrivate(text: string): boolean {
  return marks.some((mark) => mark.test(text));
}
