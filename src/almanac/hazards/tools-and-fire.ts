/** Timber, tools, trenches, fire, heat; animals and children in the garden. */
import type { WorkHazard } from "./work-hazard.ts";

export const toolsAndFire: readonly WorkHazard[] = [
  {
    what: "Old railway sleepers, creosote",
    words:
      /\b(?:railway sleepers?|old sleepers?|lifted the sleepers?|sleepers|railroad ties?|creosoted?|telegraph poles?)\b/i,
    caution:
      "Creosoted sleepers don't belong round food or where people sit: gloves, no burning, no sawing without a mask; use new untreated timber.",
    defer: "Ask the council where to take old ones.",
    facts:
      "EU and UK since 30 June 2003: not indoors, in play areas, garden furniture, containers for growing, or where skin touches often; amateur creosote banned 2003; GB: landscape uses of newly treated wood end 1 April 2027",
    sources: ["SLP", "NFU", "BALI26"],
    proof: "seen",
  },
  {
    what: "Pressure-treated timber",
    words: /\b(?:treated (?:timber|wood|lumber|posts?)|pressure[- ]treated|CCA|tanali[sz]ed|pallets?)\b/i,
    caution: "Timber from before 2004 may hold arsenic: don't use it for food beds, don't burn it, catch the sawdust.",
    defer: "Ask your extension office or council.",
    facts:
      "US makers stopped CCA for most home uses after 31 December 2003; newer wood holds copper; leaching stays within centimetres",
    sources: ["EPA03", "ANR8128", "AUEX"],
    proof: "seen",
  },
  {
    what: "Ladders, steps",
    once: true,
    words: /\b(?:step)?ladders?\b|\bstep ?stool\b|\bclimbed (?:up )?(?:the |some )?steps\b|\bup (?:on )?a chair\b/i,
    caution:
      "Ladder on firm level ground, at 1 out for 4 up, three points of contact, no reaching, and nobody films from it.",
    defer: "Follow the maker's instructions.",
    facts: "HSE: light work, up to 30 minutes at a time; 75 degrees",
    sources: ["HSEL", "HSE402"],
    proof: "seen",
  },
  {
    what: "Mowers",
    words: /\bmow(?:ed|ing|ers?|n)\b|\bride[- ]on\b/i,
    caution:
      "Mower: stones and toys off first, strong shoes, children indoors, engine off before you touch it, never backwards with somebody behind.",
    defer: "Follow the maker's instructions.",
    facts:
      "American Academy of Pediatrics: at least 12 years for a push mower, 16 for a ride-on; under 6 indoors; about 9,000 children hurt a year in the US",
    sources: ["AAP10", "AAP16"],
    proof: "seen",
  },
  {
    what: "Strimmers, brush cutters, hedge trimmers, shredders, chain saws",
    words:
      /\b(?:strimm\w*|brush ?cutters?|weed[- ]?(?:eaters?|whack\w*)|line trimmers?|hedge ?trimmers?|chain ?saw\w*|shredders?|chippers?|rotavat\w+|tillers?|power tools?)\b/i,
    caution:
      "Cutting tool: eyes, ears, boots and long trousers on, everybody 15 m away, the camera too; no metal flails on a brush cutter.",
    defer: "Follow the maker's instructions; a chain saw is for trained people.",
    facts:
      "HSE warned against chain and flail heads (2010, repeated 2013); 15 m from HSE and makers (from memory); chopping giant hogweed, spurge or ivy throws sap",
    sources: ["HSE13"],
    proof: "partly",
  },
  {
    what: "Sap and power tools",
    words:
      /\b(?:strimm\w*|hedge ?trimm\w*|shredd\w*|chipp(?:ed|ing|er))\b.{0,40}\b(?:hogweed|parsnips?|laurel|spurge|euphorbia|oleander|yew|rue)\b/i,
    caution: "Don't strim or shred plants with burning or poisonous sap: cut them by hand, covered up.",
    defer: "A doctor looks at blisters.",
    sources: ["NYD"],
    proof: "partly",
  },
  {
    what: "Trenches and holes",
    words: /\bdug (?:a|the|out the) (?:\w+ )?(?:trench|hole|pit|drain|pond)\b|\b(?:excavat\w+|footings?)\b/i,
    caution:
      "A trench can fall in at any depth: slope or shore it, stay out of it alone, and ask for pipes and cables before digging.",
    defer: "Ask the cable and pipe service and local rules.",
    facts:
      "OSHA: protection from 5 ft (1.5 m), way out within 25 ft from 4 ft, spoil 2 ft back; 3 or 4 ft of earth can stop breathing",
    sources: ["OSHA", "UDEL"],
    proof: "seen",
  },
  {
    what: "Heat",
    words: /\b(?:heat ?waves?|hot days?|sunstroke|heatstroke)\b|\b(?:3[2-9]|4\d) ?°? ?C\b|\b(?:9\d|1[01]\d) ?°? ?F\b/i,
    caution:
      "Film and dig early or late: out of the sun from 11 to 3, water with you; somebody confused, very hot or fainting needs an ambulance.",
    facts: "glasshouses and polytunnels heat up faster; older people and children most",
    sources: ["UKH24"],
    proof: "seen",
  },
  {
    what: "Bonfires",
    words:
      /\bbonfires?\b|\bburn(?:ed|t|ing)? (?:the |all the )?(?:\w+ )?(?:brush|prunings|waste|weeds|leaves|haulms?)\b|\b(?:incinerator|flame gun)\b/i,
    caution:
      "Bonfire: away from sheds and hedges, check for hedgehogs and children, no petrol, no treated wood, plastic, oleander, yew or poison ivy, water at hand.",
    defer: "Local rules first; the fire brigade if it spreads.",
    facts: "tell neighbours; many places forbid it; smoke of poison ivy and oleander harms lungs",
    sources: ["STF", "NID", "MED", "UVM", "COR", "SCHN"],
    proof: "seen",
  },
  {
    what: "Smoke and fumes in closed places",
    words: /\b(?:paraffin heaters?|greenhouse heaters?|barbecues?|generators?|sulphur candles?|fumigat\w+)\b/i,
    caution: "Heaters, engines and smoke candles need open doors: carbon monoxide gives no warning.",
    defer: "Call an ambulance if anyone is drowsy.",
    sources: [],
    proof: "memory",
  },
  {
    what: "Lifting, electric tools, batteries",
    words: /\b(?:extension leads?|electric (?:mowers?|trimmers?|saws?)|pressure washers?)\b/i,
    caution: "Electric tools in the garden run on an RCD (GFCI) socket and never in rain.",
    defer: "Ask an electrician, and follow the maker's instructions.",
    sources: [],
    proof: "memory",
  },
  {
    what: "Bees, wasps, ticks",
    words: /\b(?:stung|bee stings?|wasp stings?|wasps?|hornets?|swarm(?:ed)?|ticks|beehives?)\b/i,
    caution:
      "Stings can be dangerous: swelling of the face or trouble breathing needs an ambulance; look for ticks after long grass.",
    sources: [],
    proof: "memory",
  },
  {
    what: "Foraging and edible flowers on film",
    words: /\b(?:forag(?:ed|ing|e)|wild food|edible flowers?)\b|\btea (?:from|of)\b/i,
    caution:
      "Nothing goes in a mouth on camera unless its botanical name is certain; edible flowers only from plants never sprayed.",
    defer: "Ask a poison centre if someone is ill.",
    sources: ["RHSA"],
    proof: "partly",
  },
  {
    what: "Mushrooms",
    words: /\b(?:mushrooms?(?! compost)|toadstools?)\b/i,
    caution:
      "Never eat a garden mushroom from a film: some deadly ones look like good ones; call a poison centre at once.",
    sources: ["NSMI"],
    proof: "seen",
  },
  {
    what: "Hens and pets in the garden",
    words:
      /\b(?:our|the|my|neighbou?r'?s|free[- ]range) (?:hens?|chickens?|dogs?|cats?|pony|ponies|horses?|goats?|rabbits?|tortoises?)\b|\b(?:fed|gave|for) (?:.{0,20} )?(?:hens|chickens|goats|ponies|horses|rabbits)\b|\bpoultry\b(?! manure)/i,
    caution:
      "Animals in the shot: keep clippings, bulbs, pellets and compost heaps out of reach; mouldy compost poisons dogs; a vet knows.",
    sources: ["ASPCA"],
    proof: "partly",
  },
  {
    what: "Children",
    words: /\b(?:child|children|kids|toddlers?|school (?:children|garden|visit|class)\w*)\b/i,
    caution: "Children eat what they see picked: say on camera what is food and what isn't.",
    defer: "A poison centre helps if someone ate the wrong thing.",
    sources: ["RHSA"],
    proof: "seen",
  },
];
