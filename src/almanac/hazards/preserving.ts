/** Jars, drying, fermenting, drinks: what can grow or form in food that is kept. */
import type { WorkHazard } from "./work-hazard.ts";

const number = String.raw`(?:\d+|a|an|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|fifteen|twenty|thirty|forty|fifty|several|some|more)`;
const many = `(?:${number}[- ]){1,2}`;
const jars = "(?:quarts?|pints?|jars?|half[- ]pints?|kilners?)";
/** Food in jars in any words: "put up twelve quarts", "six jars of", "bottled". */
const kept = `(?:canned|canning|jarred|bottled|bottling|preserv(?:ed|ing)|put up ${many}${jars}|${jars} of)`;
const lowAcid =
  "(?:beans?|corn|sweetcorn|peas|beets?|beetroot|carrots?|pumpkins?|squash|potatoes|asparagus|okra|soup|stock|meat|mushrooms?|vegetables?)";
const line = (words: string): RegExp => new RegExp(words, "i");

export const preserving: readonly WorkHazard[] = [
  {
    what: "Low-acid vegetables in jars",
    words: line(
      String.raw`\b(?:canned|canning|jarred|water[- ]?bath\w*|bottling|preserv(?:ed|ing))\b|\bput up ${many}${jars}\b|\bbottled (?:\d+|${many}${jars})|\b(?:processed|bottled) (?:\w+ )?${lowAcid}\b|\b${jars} of (?:\w+ )?${lowAcid}\b`,
    ),
    caution:
      "Beans, peas, corn, roots, squash, meat and soup in jars need a pressure canner and a tested recipe: boiling water doesn't kill botulism.",
    facts:
      "the line is pH 4.6; boiling-water canners don't protect low-acid food; a jar that leaks, bulges, spurts or smells goes out untasted; home-canned low-acid food of doubtful history is boiled 10 min at up to 1,000 ft (300 m), 1 min more for each further 1,000 ft",
    sources: ["CDC13", "USDAG"],
    proof: "seen",
  },
  {
    what: "Tomatoes, figs and other borderline fruit",
    words: line(String.raw`\b${kept}\b.{0,40}\b(?:tomato\w*|figs?|melons?)\b|\b(?:passata|salsa|ketchup)\b`),
    caution:
      "Tomatoes need bottled lemon juice or citric acid in each jar, pressure canner or not; salsa and sauce follow a tested recipe to the letter.",
    facts: "figs and Asian pears need acid too, melons and bananas count as low acid",
    sources: [],
    proof: "memory",
  },
  {
    what: "White-fleshed peaches and nectarines",
    words: line(String.raw`\b${kept}\b.{0,40}\b(?:peach(?:es)?|nectarines?)\b`),
    caution: "White-fleshed peaches and nectarines aren't sour enough for boiling water: freeze them.",
    defer: "Ask your extension office or food agency.",
    facts: "yellow ones are the tested fruit",
    sources: ["UME20"],
    proof: "seen",
  },
  {
    what: "Elderberries in jars",
    words: /\belder(?:berr(?:y|ies)|flowers?)\b/i,
    caution:
      "Elderberries aren't sour enough for jars of juice or syrup: freeze them, or follow the one tested jelly recipe; always cook them.",
    defer: "Ask your extension office, and a poison centre if someone is ill.",
    facts:
      "average pH 4.8, the limit is 4.6; juice pressed with leaves and stems made 11 of 25 ill within 15 minutes (California, August 1983, 8 flown to hospital)",
    sources: ["UMN20", "UME20", "CDC84"],
    proof: "seen",
  },
  {
    what: "Altitude",
    words: /\b(?:canned|canning|water[- ]?bath\w*|pressure[- ]?cann\w+)\b/i,
    caution: "Above 1,000 feet (300 m) jars need more time or more pressure: look it up for your height.",
    defer: "The tested recipe has the table.",
    facts: "water boils near 203 °F (95 °C) at 5,000 ft (1,500 m)",
    sources: ["USDAG", "CSUE"],
    proof: "seen",
  },
  {
    what: "Garlic, herbs, chillies or vegetables in oil",
    words:
      /\b(?:garlic|herbs?|basil|rosemary|chilli(?:es)?|chili(?:es)?|peppers?|tomato(?:es)?|mushrooms?|pesto)\b.{0,30}\boil\b|\binfus(?:ed|ing)\b.{0,20}\boil\b|\boil infus\w+/i,
    caution:
      "Garlic or fresh herbs in oil can grow botulism, which you can't see or smell: make it fresh, keep it cold, use it within days or freeze it.",
    defer: "Follow a tested recipe.",
    facts:
      "three or more outbreaks in North America; publishers say 2 to 3 days (Missouri), 2 to 4 (Oklahoma), 10 (Penn State, older), 3 weeks (Oregon, older): print no number but the strictest; dried garlic and herbs carry less risk",
    sources: ["PSU", "OKS", "MUE"],
    proof: "seen",
  },
  {
    what: "Pickles and chutney",
    words: /\b(?:pickl(?:e|es|ed)|chutneys?|relish)\b/i,
    caution: "Pickles are safe by their acid: keep the recipe's vinegar at its strength and don't thin it.",
    facts: "vinegar of 5 % in US recipes; UK recipes 5 to 6 %",
    sources: [],
    proof: "memory",
  },
  {
    what: "Fermenting",
    words: /^(?!.*\bseeds?\b).*\b(?:ferment\w*|sauerkraut|kimchi|kraut|brined?|lacto\w*)\b/i,
    caution:
      "Ferments are made safe by the right salt, cool temperature and keeping air off: weigh the salt, don't cut it, throw out what is mouldy, slimy or smells bad.",
    defer: "Follow a tested recipe.",
    facts:
      "finished pH 4.6 or lower; no recorded case from vegetables fermented properly (F. Breidt, USDA); no copper, brass or galvanised pots",
    sources: ["CLEM", "UCF"],
    proof: "seen",
  },
  {
    what: "Jam and jelly",
    words: /\b(?:jams?(?![- ]jar)|jelly|jellies|marmalade)\b/i,
    caution: "Jam keeps by sugar and acid: no cutting the sugar without a recipe for it, and seal hot.",
    facts: "mouldy jam goes out whole",
    sources: [],
    proof: "memory",
  },
  {
    what: "Oven, dishwasher, open-kettle, wax or reused lids",
    words: /\b(?:oven[- ]cann\w+|open[- ]kettle|paraffin wax)\b|\bjars? upside down\b|\bdishwasher\b.{0,20}\bjars?\b/i,
    caution: "Oven, dishwasher, upside-down and open-kettle canning aren't safe: use a canner and fresh lids.",
    defer: "Follow a tested recipe.",
    sources: ["USDAG"],
    proof: "seen",
  },
  {
    what: "Pumpkin, squash or courgette in jars",
    words: line(String.raw`\b${kept}\b.{0,30}\b(?:pumpkins?|squash|courgettes?|zucchinis?)\b|\bpumpkin butter\b`),
    caution: "Pumpkin purée and courgettes have no safe canning time: freeze them.",
    defer: "Ask your extension office or food agency.",
    facts: "pumpkin in cubes only, by pressure",
    sources: [],
    proof: "memory",
  },
  {
    what: "Drying, freezing, storing, root cellar",
    words:
      /\b(?:dehydrat\w+|root cellar|cellar|clamp(?:ed)?)\b|\bdried (?:\w+ )?(?:apples?|tomatoes|chillies|chilies|mushrooms|beans?)\b/i,
    caution: "Throw stored roots and fruit away when mouldy; a cellar full of roots and silage uses up air.",
    defer: "Follow a tested recipe for drying.",
    sources: [],
    proof: "memory",
  },
  {
    what: "Rhubarb and elder drinks, fruit wine",
    words:
      /\b(?:elder(?:berry|flower)|rhubarb|plum|damson|dandelion|blackberry|gooseberry|parsnip|fruit|grape|home[- ]?made|country|made|bottled|racked) wine\b|\bwine[- ]?making\b|\b(?:cordial|mead|cider|schnapps|distill\w*)\b/i,
    caution:
      "Home wine: stalks only for rhubarb, cooked berries only for elder; open bottles away from faces; distilling is against the law in many countries.",
    defer: "Follow a tested recipe and local law.",
    facts: "bottles that ferment on can burst",
    sources: [],
    proof: "memory",
  },
  {
    what: "Dry beans in a slow cooker",
    words: /\b(?:slow[- ]?cooker|crock[- ]?pot)\b/i,
    caution: "Boil kidney beans hard before they go into a slow cooker: half-warm ones are worse than raw.",
    defer: "Ask a poison centre if someone is ill.",
    facts:
      "soak 5 h, drain, boil in fresh water; 10 min at a full boil destroys the toxin, FDA says 30 min to be sure; 4 or 5 beans can make ill, within 1 to 3 h; up to five times worse after 80 °C",
    sources: ["KSU17"],
    proof: "seen",
  },
];
