/** Words of the tool's own English that a garden in the United States has others for. Never said of what a person wrote. */

/** The plural before its singular, so that the longer word goes first. */
const american: readonly (readonly [british: string, american: string])[] = [
  ["broad beans", "fava beans"],
  ["broad bean", "fava bean"],
  ["spring onions", "green onions"],
  ["spring onion", "green onion"],
  ["sweetcorn", "sweet corn"],
  ["courgettes", "zucchini"],
  ["courgette", "zucchini"],
  ["aubergines", "eggplants"],
  ["aubergine", "eggplant"],
  ["chillies", "chilies"],
  ["chilli", "chili"],
  ["beetroot", "beets"],
  ["polytunnels", "hoop houses"],
  ["polytunnel", "hoop house"],
  ["strimmers", "string trimmers"],
  ["strimmer", "string trimmer"],
  ["petrol", "gasoline"],
  ["centres", "centers"],
  ["centre", "center"],
  ["mouldy", "moldy"],
  ["mould", "mold"],
  ["sulphur", "sulfur"],
  ["coloured", "colored"],
  ["colour", "color"],
  ["neighbours", "neighbors"],
  ["neighbour", "neighbor"],
  ["grey", "gray"],
];

const words = new RegExp(`\\b(?:${american.map(([british]) => british).join("|")})\\b`, "gi");
const byWord = new Map(american);

/** The text in the garden's own English. */
export function inItsEnglish(text: string, language: string): string {
  if (!/^en-US\b/u.test(language)) return text;
  return text.replace(words, (found) => {
    const said = byWord.get(found.toLowerCase()) ?? found;
    return /^\p{Lu}/u.test(found) ? said.charAt(0).toUpperCase() + said.slice(1) : said;
  });
}
