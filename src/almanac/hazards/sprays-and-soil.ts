/** Sprays, pellets and dusts; soil, compost, manure and water. */
import type { WorkHazard } from "./work-hazard.ts";

export const spraysAndSoil: readonly WorkHazard[] = [
  {
    what: "Any pesticide, herbicide, fungicide",
    words:
      /\b(?:spray(?:s|ed|ing)?|insecticides?|fungicides?|herbicides?|pesticides?|weed ?killer|glyphosate|pyrethr\w+)\b/i,
    caution:
      "Name the product, follow its label (days to harvest, bees, pond, gloves), and use only what is allowed where you are.",
    defer: "Some are only for people licensed for them.",
    facts:
      "in Britain garden products must be authorised and the user answers for right use; in the US the label is law",
    sources: ["HSEG"],
    proof: "seen",
  },
  {
    what: "Metaldehyde slug pellets",
    words: /\b(?:metaldehyde|slug (?:pellets?|bait)|snail (?:pellets?|bait))\b/i,
    caution:
      "Metaldehyde pellets kill dogs and hedgehogs and are banned in Great Britain: hand old ones in; if a dog ate any, go to a vet at once.",
    facts:
      "selling and using unlawful in GB from 1 April 2022, storing too; sold in other countries; ferric phosphate is the allowed pellet",
    sources: ["VPIS22", "PLY"],
    proof: "seen",
  },
  {
    what: "Copper, Bordeaux mixture",
    words:
      /\b(?:copper (?:spray|fungicide|sulphate|sulfate|mix\w*|oxychloride|hydroxide)|(?:applied|sprayed) (?:with )?copper|bordeaux (?:mix\w*)|burgundy mix\w*)\b/i,
    caution:
      "Copper sprays hurt eyes and kill fish and worms: goggles on, not near a pond, only where they are still allowed.",
    defer: "Follow the label.",
    facts:
      "one copper hydroxide label carries DANGER, irreversible eye damage; Bordeaux mixture is no longer sold to British gardeners (from memory)",
    sources: ["UFC"],
    proof: "partly",
  },
  {
    what: "Neem oil",
    words: /\b(?:neem|azadirachtin)\b/i,
    caution:
      "Neem irritates eyes and skin and harms bees when wet: spray at dusk as the label says; not authorised everywhere.",
    facts:
      "US label word CAUTION; EPA expects no harm when labels are kept; not authorised for British gardens (from memory)",
    sources: ["NPICN", "EPAN", "UFC"],
    proof: "seen",
  },
  {
    what: "Home-made mixtures: soap, garlic, chilli, rhubarb leaf",
    words:
      /\b(?:soap\w*|washing[- ]up liquid|dish soap|garlic|chilli(?:es)?|chili(?:es)?|rhubarb(?: lea(?:f|ves))?|tomato leaf)\b.{0,30}\bspray\w*|\bspray\w*\b.{0,30}\b(?:soap\w*|washing[- ]up liquid|dish soap|garlic|chilli(?:es)?|chili(?:es)?|rhubarb(?: lea(?:f|ves))?|tomato leaf)\b|\bhome[- ]?made spray|\b(?:soap\w*|washing[- ]up liquid|garlic water|chilli water|rhubarb leaf)\b.{0,40}\bon the (?:aphids|greenfly|blackfly|caterpillars|whitefly)/i,
    caution:
      "A home-made spray is a pesticide too: in Britain it isn't legal, elsewhere it may scorch plants and skin; label the bottle, keep it from children.",
    defer: "Ask your regulator.",
    facts: "a letter of the British regulator (2011) says use of unapproved home-made pesticides is an offence",
    sources: ["CRD11"],
    proof: "seen",
  },
  {
    what: "Tobacco or nicotine mixture",
    words: /\b(?:nicotine|tobacco (?:tea|water|spray)|cigarettes?)\b/i,
    caution: "Never make tobacco spray: it poisons through the skin and a spoonful can kill a child.",
    defer: "If any was swallowed or spilt on skin, call a poison centre.",
    facts: "nicotine sprays were withdrawn in most countries about thirty years ago",
    sources: ["LBG18"],
    proof: "partly",
  },
  {
    what: "Vinegar as weedkiller",
    words:
      /\bvinegar\b.{0,40}\b(?:weed\w*|spray\w*)|\b(?:weed\w*|spray\w*)\b.{0,40}\bvinegar\b|\bacetic\b|\bhorticultural vinegar\b/i,
    caution:
      "Strong vinegar burns eyes and skin for good: goggles and gloves, a labelled product, never in a drink bottle.",
    defer: "Rinse an eye at once and see a doctor.",
    facts:
      "kitchen vinegar 4 to 6 %, horticultural 20 % and more; over 11 % burns skin; in Britain kitchen vinegar isn't an authorised weedkiller (from memory)",
    sources: ["NPICA", "WSU16"],
    proof: "seen",
  },
  {
    what: "Diatomaceous earth, dusts, lime, sulphur",
    once: true,
    words: /\bdiatom\w*|\bdusted\b.{0,25}\bwith\b|\b(?:garden lime|limed|liming|quicklime|sulphur|sulfur|rock dust)\b/i,
    caution: "Don't breathe or rub in dusts: mask and goggles on, still air, and only the kind labelled for pests.",
    facts: "pool grade holds crystalline silica, which harms lungs; dust irritates eyes and nose",
    sources: ["NPICD", "NPICB"],
    proof: "seen",
  },
  {
    what: "Rat and ant poison",
    words: /\b(?:rat (?:bait|poison)|rodenticides?|mouse bait|ant powder|mole poison|gopher bait)\b/i,
    caution: "Rat bait stays in locked boxes: it kills pets and owls; a vet at once if eaten.",
    defer: "Follow the label.",
    sources: [],
    proof: "memory",
  },
  {
    what: "Potting mix and bagged compost",
    words: /\b(?:potting (?:mix|compost|soil)|bag(?:s|ged)? (?:of )?(?:compost|mulch|bark)|multi[- ]?purpose)\b/i,
    caution:
      "Open bags of compost away from your face, damp the dust, gloves and mask on, wash hands: it can carry Legionella.",
    defer: "See a doctor for a cough with fever within ten days, and say that you gardened.",
    facts:
      "NSW: about 40 % of its Legionella cases are L. longbeachae; 63 people in 2018, 132 in 2022; ill after 2 to 10 days; older people, smokers, weak immunity most",
    sources: ["NSWH18", "NSWH23"],
    proof: "seen",
  },
  {
    what: "Turning compost, leaf mould, bark",
    words:
      /\b(?:turn(?:ed|ing)?|siev(?:ed?|ing)|screen(?:ed|ing)?|fork(?:ed|ing)?)\b.{0,20}\b(?:compost|leaf ?mould|leaf ?mold|bark|chips)\b|\bwood ?chips?\b/i,
    caution:
      "Turning mouldy compost throws up spores: damp it; with asthma, weak lungs or weak immunity let somebody else do it.",
    defer: "Ask a doctor first if your chest is weak.",
    facts:
      "an ordinary dust mask is too coarse, N95/FFP2 at least; deaths in healthy people are very rare (one in 2008)",
    sources: ["NAC"],
    proof: "seen",
  },
  {
    what: "Cuts and punctures in soil",
    words:
      /\bcut (?:my|his|her|a) (?:finger|hand|thumb)\b|\bthorn in\b|\bpricked (?:my|his|her)\b|\bstabbed\b|\bfork through\b|\bbarbed wire\b/i,
    caution: "Wash cuts and thorn pricks well, and ask a doctor about tetanus.",
    facts:
      "CDC: booster every 10 years for adults, after a dirty wound when the last is over 5 years; Britain counts five doses and decides by wound",
    sources: ["CDCT"],
    proof: "partly",
  },
  {
    what: "Fresh manure before harvest",
    words:
      /\b(?:fresh|raw|horse|cow|chicken|poultry|sheep|rabbit|goat|pig|farmyard) manure\b|\bmuck\b|\bslurry\b|\bmanure tea\b/i,
    caution:
      "Fresh manure and salads don't mix: 120 days before picking where food touches soil, 90 days for other food (US organic rule), better in autumn or well composted.",
    defer: "Local rules may ask for more; a doctor if ill.",
    facts:
      "US NOP: 120 days / 90 days, dug in; composted by the rule 131 to 170 °F (55 to 77 °C), 15 days, turned 5 times; Georgia: composted manure at least 120 days before; Colorado note: 9 months; UK summary of FSA advice: none within 6 months of harvest fresh, 2 months if batch-stored, 4 months after stock (a later edition asks 12 months for fresh, from memory); no manure tea on growing salads; never dog, cat or pig",
    sources: ["USU06", "CSUM", "UMEM", "UGA", "DEN00", "FSAM"],
    proof: "seen",
  },
  {
    what: "Manure or hay with weedkiller, and dog or cat dirt",
    words:
      /\b(?:aminopyralid|(?:weed ?killer|herbicide).{0,20}manure|manure.{0,20}(?:weed ?killer|herbicide)|dog (?:poo|waste|mess)|cat (?:litter|poo|mess))\b/i,
    caution: "Keep cat and dog dirt out of food beds, gloves on, most of all in pregnancy.",
    defer: "Ask a doctor if in doubt.",
    facts: "toxoplasma, roundworm",
    sources: [],
    proof: "memory",
  },
  {
    what: "Ponds and water butts",
    words: /\b(?:ponds?|water butts?|rain barrels?|cisterns?|paddling pools?|water features?)\b/i,
    caution:
      "Small children drown in a few centimetres: cover or fence the pond, lid on the butt, eyes on them while you film.",
    defer: "If the worst happens, call an ambulance.",
    facts:
      "Britain: about 5 children under 6 a year in garden ponds; 1995 to 2005: 58 in ponds, 10 in outdoor containers; ages 1 and 2 most; a pond of 50 cm is to a toddler like 1.8 m to an adult",
    sources: ["ROSPA", "NSCB"],
    proof: "seen",
  },
  {
    what: "Stored rain and grey water on salads",
    words:
      /\bgr[ea]y ?water\b|\b(?:rain ?water|butt)\b.{0,40}\b(?:salads?|lettuces?|seedlings?)\b|\b(?:salads?|lettuces?|seedlings?)\b.{0,40}\b(?:rain ?water|butt)\b/i,
    caution: "Water salads at the root with clean water; don't spray warm stale water.",
    defer: "Ask a doctor about fever and cough.",
    facts: "Legionella likes 20 to 45 °C",
    sources: [],
    proof: "memory",
  },
  {
    what: "Blue-green scum on a pond",
    words: /\b(?:blue[- ]?green (?:alga\w*|scum)|algal bloom|pond scum)\b/i,
    caution: "Blue-green scum can poison dogs and people: nobody in, dogs on the lead.",
    defer: "Ask a vet or your local authority.",
    sources: [],
    proof: "memory",
  },
  {
    what: "Foul soil, old paint, ash",
    words:
      /\b(?:lead (?:paint|in (?:the |our )?soil)|coal ash|contaminated (?:soil|land)|brownfield)\b|\bfound lead\b/i,
    caution: "Beds beside old paint, roads or ash: have the soil tested before eating from it, and use raised beds.",
    defer: "Ask your health or extension office.",
    sources: [],
    proof: "memory",
  },
];
