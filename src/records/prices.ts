/**
 * What something cost, as people say it: "for £4", "$3 each", "50p a bunch", "a tenner the lot". Prices are private, so
 * they are taken out of a line before the rest of it is read, and out of everything that viewers see.
 */

const small = "a|an|one|two|three|four|five|six|seven|eight|nine|ten|twelve|fifteen|twenty|thirty|forty|fifty";
/** From its first digit on: beginning anew at each of a long number takes as long as the number squared. */
const number = String.raw`(?<!\d)(?<!\d[.,])\d+(?:[.,]\d+)*`;

/** "£4", "4 €", "50p", "two dollars", "a tenner"; but not "1 buck’s horn plantain". */
const money = [
  String.raw`[£$€¥]\s?${number}`,
  String.raw`${number}\s?(?:[£$€¥¢]|(?:euros?|eur|dollars?|bucks?|quid|pence|cents?|francs?|gbp|usd|chf)\b(?!['’]))`,
  String.raw`${number}p\b`,
  String.raw`\b(?:${small})\s(?:euros?|dollars?|bucks?|quid|pence|cents?|francs?)\b(?!['’])`,
  String.raw`\ba\s(?:tenner|fiver)\b`,
].join("|");

/** "for 4 pounds", "a pound each": without such words a pound is a weight. */
const pounds = String.raw`(?:${number}|\b(?:${small}))\spounds?`;

const per =
  "bunch|bag|pot|plant|tray|punnet|box|crate|pound|kilo|kg|lb|stem|head|bundle|jar|pair|dozen|piece|packet|pack|pkt|root|pint|quart|" +
  "sack|load|metre|roll|strip|plug|tuber|bulb|crown";
const tail = String.raw`(?:\s?(?:each\b|ea\b\.?|apiece\b|altogether\b|(?:all\s)?in\sall\b|the\s(?:lot|${per})\b|(?:a|an|per)\s(?:piece|${per})\b|\/\s?(?:${per})\b))`;
const lead = String.raw`(?:\b(?:for|at|cost|costs|costing|paid|price|priced\sat)\s+|@\s*)`;

const price = new RegExp(
  String.raw`(?:${lead}?(${money})(${tail}?)|${lead}(${pounds})(?!\sof\b)(${tail}?)|(\b(?:${small})\spounds?)(\s?(?:each|apiece|the\slot)\b))`,
  "giu",
);

/** Most lines say nothing of money, and looking closer at each would cost more than the rest of reading it. */
const anyMoney =
  /[£$€¥¢@]|\d\s?p\b|\b(?:euros?|eur|dollars?|bucks?|quid|pence|cents?|francs?|tenner|fiver|pounds?|gbp|usd|chf)\b/iu;

/** A text without what it says of prices, and what it said of them. */
export function withoutPrice(text: string): { readonly text: string; readonly price?: string | undefined } {
  if (!anyMoney.test(text)) return { text };
  const said: string[] = [];
  const left = text.replace(price, (_all, ...parts: unknown[]) => {
    said.push(
      parts
        .slice(0, 6)
        .filter((part) => typeof part === "string")
        .join("")
        .trim(),
    );
    return "\uFFFC";
  });
  if (said.length === 0) return { text };
  // With the price goes what joined it to the rest: its comma, its brackets, the space before it.
  const bare = left
    .replace(/\s*\(\s*\uFFFC\s*\)/gu, "")
    .replace(/\(\s*\uFFFC\s*[,;]?\s*/gu, "(")
    .replace(/(?:\s*[,;]|\s+[-–—])?\s*\uFFFC(?=\s*(?:[,;.)]|$))/gu, "")
    .replace(/(?:(?<!\s)\s+)?\uFFFC\s*/gu, " ")
    .replace(/^[\s,;]+|(?<!\s)\s+$/gu, "");
  return { text: bare, price: said.join(", ") };
}
