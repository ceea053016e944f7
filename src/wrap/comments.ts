/** What viewers ask in their comments, also where nobody typed a question mark. */

/** "Hi, love the film, which …": what may stand before a question in its sentence. */
const opener =
  /^(?:hi|hello|hey|thanks|please|sorry|oh|so|and|but|also|just|btw|wow|ok|okay|great|lovely|nice|love)\b[^,:-]{0,40}[,:-]\s*|^(?:and|so|but|also|please)\s+/i;

/** A question word with its verb or noun: "when I was a boy" and "what a lovely bed" ask nothing. */
const asks =
  /^(?:which|what|whats|what's|wheres|where's|where|when|how|who|why)\b(?!\s+(?:an?|i|we|my|our)\b)(?:\s+[\p{L}'’-]+){0,3}?\s*\b(?:is|are|was|were|do|does|did|can|could|should|would|will|have|has|variety|varieties|kind|sort|type|make|brand|much|many|long|deep|far|often|tall|from|get|called)\b/iu;
const shortAsks = /^(?:what's|whats|where's|wheres|how's|hows)\s/i;
const inverted =
  /^(?:is|are|was|were|do|does|did|can|could|will|would|have|has)\s+(?:it|that|this|these|those|they|you|the|your|there)\b/i;
const wishes =
  /\b(?:wondering|(?:like|love|want|dying|need|curious) to know|any (?:idea|chance)|(?:can|could|may) i ask|can you tell|could you tell|please tell|tell us|let us know|do you know|remind me|name of (?:that|the|those)|links? please)\b/i;
/** "You got that shade cloth where": only in a short sentence of one to the speaker. */
const endsAsking = /\b(?:you|y['’]?all)\b[^,]{0,40}\b(?:where|when|how)$/i;

/** The whole comment where any sentence of it asks something. */
export function asksSomething(comment: string): boolean {
  return comment.split(/(?<=[.!?…])\s+/).some((sentence) => {
    if (sentence.includes("?")) return true;
    const typed = asIfTyped(sentence.trim());
    const bare = withoutOpener(withoutOpener(typed));
    // "Love the arch, did you build it": after a comma only the speaker is asked.
    const later = bare.split(/,\s+|\s[-–—]\s/).slice(1);
    const isAsked = asks.test(bare) || shortAsks.test(bare) || inverted.test(bare);
    return isAsked || later.some((clause) => asksYou.test(clause)) || wishes.test(typed) || endsAsking.test(typed);
  });
}

const asksYou = /^(?:did|do|are|have|can|could|would|will) (?:you|they|it|those|these)\b/i;

/** Short forms as they are said: "pls what r those" is "please what are those". */
export function asIfTyped(comment: string): string {
  return comment
    .replace(/\bpls\b|\bplz\b/gi, "please")
    .replace(/\b(what|where|how|who)s\b/gi, "$1's")
    .replace(/\br\b/g, "are")
    .replace(/\bu\b/g, "you")
    .replace(/\bw\/?(?=\s)/g, "with");
}

function withoutOpener(sentence: string): string {
  return sentence.replace(opener, "");
}
