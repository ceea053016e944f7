/**
 * Where the cautions come from. "how" says how much of each was read on 29 November 2026, as a stored copy: what was only
 * seen in its beginning or in a news copy is no proof of what stands further on.
 */
interface Read {
  readonly what: string;
  readonly how: string;
}

export const hazardSources = {
  ASPCA: {
    what: "American Society for the Prevention of Cruelty to Animals, Animal Poison Control, “Toxic and Non-Toxic Plants”",
    how: "read whole by way of a third-party copy: 471 entries, about 170 genera, each with its ASPCA page address, dated 14 March 2025; letters c d h = cat, dog, horse",
  },
  NCS: {
    what: "North Carolina State Extension, plant pages in their older form (Asparagus officinalis, Iris germanica, Lupinus) and “Poisonous Plants of North Carolina” (Russell, Hardin, Grand, Fraser, 1997; tomato page with a footnote of 26 Oct 2010)",
    how: "those pages seen whole",
  },
  NCS97: {
    what: "North Carolina State University, “Poisonous Plants of North Carolina”, Pastinaca sativa (1997)",
    how: "seen whole",
  },
  NCN: { what: "The News & Observer on NC State's database (baneberry)", how: "beginning seen, a copy" },
  PENN: {
    what: "University of Pennsylvania School of Veterinary Medicine, “Poisonous Plants of Pennsylvania”: Narcissus, Delphinium, Lupinus, Lathyrus, Wisteria; “Solanum tuberosum”",
    how: "beginnings seen",
  },
  DPIC: {
    what: "British Columbia Drug and Poison Information Centre, fact sheets Rhubarb Leaves (2012), Elderberry (2012), Daffodil (2010), Laburnum (2010)",
    how: "seen whole",
  },
  NNE16: { what: "Northern New England Poison Center, “Rhubarb”, 15 June 2016", how: "seen whole" },
  MPC: {
    what: "Missouri Poison Center list, in University of Missouri “Missouri Environment & Garden”, March 2009",
    how: "seen in a copy that breaks off after poison ivy",
  },
  MSD: { what: "MSD (Merck) Manual, consumer version, plant poisoning pages and tables", how: "beginnings seen" },
  MLP: {
    what: "US National Library of Medicine, MedlinePlus, “Lily of the valley poisoning”; “Rhubarb leaves poisoning” (A.D.A.M., hospital copy)",
    how: "beginnings seen",
  },
  HKHA: {
    what: "Hospital Authority Toxicology Reference Laboratory, “Atlas of Poisonous Plants in Hong Kong” (2018), Narcissus",
    how: "seen whole",
  },
  HKM19: { what: "Ng and others, Hong Kong Medical Journal 25(2):102-112, 2019 (62 cases)", how: "abstract seen" },
  CPPIS: {
    what: "Agriculture Canada (Munro), Canadian Poisonous Plants Information System: Narcissus, Lathyrus odoratus, Datura innoxia, Hydrangea macrophylla",
    how: "seen in third-party copies",
  },
  ALB: { what: "Alberta Agriculture, “Poisonous Outdoor Plants: Garden Plants, Vegetables”", how: "beginning seen" },
  NSM: { what: "Nova Scotia Museum, “Plant Poisons”, Tulip", how: "seen" },
  NSMI: {
    what: "Nova Scotia Museum, “Plant Poisons”, front page (monkshood, buttercup, mushrooms named)",
    how: "seen",
  },
  TAMU: { what: "Texas A&M, “Poisonous Plants” (plantanswers.com)", how: "beginning seen" },
  YK64: {
    what: "Youngken and Karas, “Common Poisonous Plants of New England”, US Public Health Service, 1964",
    how: "pages for foxglove, larkspur, lily of the valley, hellebore, false hellebore, daphne, yew seen in copies",
  },
  NZ: {
    what: "New Zealand Ministry of Health list, on the site of the Royal NZ Institute of Horticulture",
    how: 'beginning seen, A to "Inkweed"',
  },
  NZF: { what: "New Zealand government foodsmart, “Specific foods and natural toxins”", how: "beginning seen" },
  KST: { what: "Kidsafe Tasmania, “These Plants Can Kill”", how: "seen" },
  SCHN: {
    what: "Sydney Children's Hospitals Network, “Poisonous or harmful plants and children”",
    how: "beginning seen",
  },
  QLD: {
    what: "Children's Health Queensland, poisonous plants pages",
    how: "list pages seen; the entries themselves not",
  },
  CDC84: { what: "US CDC, MMWR, “Poisoning from Elderberry Juice: California”, 1984", how: "seen" },
  ANS22: {
    what: "ANSES (France), “Confusion between autumn crocus and wild garlic can lead to fatal poisoning” (28 cases 2020 to 2022, two deaths)",
    how: "seen",
  },
  AGES: { what: "AGES (Austria), “Wild garlic”", how: "seen" },
  BFR18: { what: "BfR (Germany), green and sprouting potatoes, 27 April 2018", how: "press text seen" },
  BFR17: { what: "BfR Opinion 003/2017, alkaloids in lupin seeds", how: "beginning seen" },
  EFSA20: {
    what: "EFSA, glycoalkaloids in feed and food, EFSA Journal 2020 (lowest dose with effects 1 mg a kg body weight a day)",
    how: "abstract seen",
  },
  EFSA16: {
    what: "EFSA on raw apricot kernels, 2016 (three small kernels reach the adult limit, half a small one a toddler's)",
    how: "seen in a report",
  },
  FSA16: { what: "UK Food Standards Agency, apricot and bitter almond kernels, 12 May 2016", how: "seen in a copy" },
  FSAI16: { what: "Food Safety Authority of Ireland, 12 May 2016", how: "seen" },
  KSU17: {
    what: "Kansas State University, “Cooking dry beans safely”, 13 Oct 2017, after FDA's Bad Bug Book",
    how: "seen",
  },
  KSB: { what: "Kansas State Extension, Butler County, “Ground Cherry”", how: "seen" },
  KSUP: { what: "Kansas State on pokeweed", how: "seen in a news copy" },
  CCE: { what: "Cornell Cooperative Extension, Oneida County, on poke plants", how: "seen in a news copy" },
  CFS07: {
    what: "Centre for Food Safety, Hong Kong, “Natural Toxins in Food Plants”, Report 27 (March 2007) and Food Safety Focus 13 (August 2007)",
    how: "beginnings seen",
  },
  FSANZ14: {
    what: "Food Standards Australia New Zealand, survey of cyanogenic glycosides 2010-13 (April 2014)",
    how: "summary seen",
  },
  FSANZ17: { what: "Food Standards text on cassava and bamboo shoots, March 2017", how: "seen in a copy" },
  ANS21: { what: "ANSES press release 25 Oct 2021 on bitter squash", how: "seen in a report" },
  ANS19: { what: "ANSES study (353 cases 2012 to 2018), radio report 31 Oct 2019", how: "seen" },
  PHE15: {
    what: "Public Health England letter to shops, February 2015 (27 cases in a year, 63 in six years; 10 in hospital in Bristol 2012)",
    how: "seen in several news reports",
  },
  FDA01: { what: "US FDA letter on comfrey, July 2001", how: "text seen in copies" },
  FDAL: { what: "US FDA on lilies and cats", how: "seen in news copies" },
  KEW14: { what: "Royal Botanic Gardens, Kew, “Guidance on Corn Cockle” with a word of the RHS, 2014", how: "seen" },
  PJ14: { what: "The Pharmaceutical Journal, “Corncockle codswallop”, 2014", how: "beginning seen" },
  RHSA: {
    what: "Royal Horticultural Society, “Potentially harmful garden plants”, general advice",
    how: "beginning seen; the list of plants itself NOT seen. The trade list behind it: HTA Guide to Potentially Harmful Plants, 3rd ed. 2022, described by VPIS, not seen",
  },
  CFIA01: {
    what: "Canadian Food Inspection Agency warning on mislabelled monkshood, April 2001",
    how: "seen in a report",
  },
  OXT: { what: "Oxford Times, 2014: monkshood seedlings resemble winter aconite", how: "seen" },
  AKL: { what: "Auckland Allergy and Eczema Clinic, “Plant Dermatitis”, October 2002", how: "beginning seen" },
  TPC: { what: "Tennessee Poison Center, Vanderbilt, 2 March 2009 (bulbs)", how: "seen" },
  ILL: { what: "University of Illinois Library, “Plants Toxic to Animals” (hyacinth)", how: "beginning seen" },
  HES83: { what: "Heskel and others, phytophotodermatitis due to rue, Contact Dermatitis 1983", how: "abstract seen" },
  MEDS: { what: "Medscape, “Phytophotodermatitis” (parsley, celery, carrot, lime)", how: "beginning seen in a copy" },
  NYD: {
    what: "New York State Department of Environmental Conservation on giant hogweed and wild parsnip",
    how: "seen in news copies",
  },
  MUC: { what: "Mid Ulster Council, “Giant Hogweed”", how: "seen" },
  WNW15: { what: "Washington State Noxious Weed Control Board, poison hemlock, 13 May 2015", how: "seen" },
  EYE17: { what: "McVeigh, Eye 2017, Euphorbia sap, as reported by Reuters Health, October 2017", how: "report seen" },
  COR: { what: "Cornell University, poisonous plants FAQ 311, oleander smoke", how: "seen" },
  RCP: { what: "Royal College of Physicians, London, garden pages, Lathyrus odoratus", how: "seen" },
  SDH: {
    what: "San Diego Horticultural Society, “Brugmansia poisoning, beware”, 2010 (one gardener's report)",
    how: "seen",
  },
  CDVM: { what: "ChickenDVM (veterinary site): tomato, ground cherries, sweet pea", how: "seen" },
  NUT: {
    what: "Am J Emerg Med 10:429, 1992 (less than a tablespoon gives symptoms); toxicology summary: 5 to 30 g used, 7 g a tablespoon",
    how: "abstract and summary seen",
  },
  CSP19: {
    what: "Center for Science in the Public Interest to the US Surgeon General, 3 June 2019: 13 deaths since 2010 with poppy seeds and pods",
    how: "beginning seen",
  },
  BRI: { what: "Britannica, “cherry laurel”", how: "beginning seen" },
  UVM: { what: "University of Vermont, “Poisonous Plants”", how: "seen" },
  ABC: { what: "ABC News, 2009, buckwheat greens and taro", how: "seen" },
  CDC13: { what: "US CDC on home canning, 2013", how: "seen in a trade-press copy" },
  USDAG: {
    what: "USDA, Complete Guide to Home Canning, guide 1",
    how: "parts seen in copies (altitude, methods not recommended, boiling before eating)",
  },
  UME20: {
    what: "University of Maine Cooperative Extension, June 2020 (white peaches, elderberries)",
    how: "seen in a news copy",
  },
  UMN20: { what: "University of Minnesota Extension, October 2020 (elderberries)", how: "seen" },
  CSUE: { what: "Colorado State University, “Why elevation matters”", how: "seen" },
  PSU: { what: "Penn State Extension, “Preserving Foods in Oil”", how: "seen" },
  OKS: { what: "Oklahoma State University Extension, “Safely infusing oils at home”", how: "beginning seen" },
  MUE: { what: "University of Missouri Extension, herbs and garlic in oil, 2013", how: "beginning seen" },
  CLEM: { what: "Clemson Extension, “Want to Ferment Vegetables?”", how: "beginning seen" },
  UCF: { what: "UC Master Food Preservers, “Ferment”", how: "seen" },
  HSEG: { what: "UK Health and Safety Executive, pesticides, “Garden Home”", how: "beginning seen" },
  VPIS22: {
    what: "Veterinary Poisons Information Service, “Ban on the use of metaldehyde”, 8 March 2022",
    how: "seen",
  },
  PLY: { what: "Plymouth City Council, allotments page", how: "seen" },
  UFC: {
    what: "University of Florida Extension column, “Organic does not always mean safe”",
    how: "seen in a news copy",
  },
  NPICN: { what: "National Pesticide Information Center, neem oil general fact sheet", how: "beginning seen" },
  EPAN: { what: "US EPA, azadirachtin and neem fact sheet, October 2001", how: "beginning seen" },
  NPICA: { what: "National Pesticide Information Center, acetic acid, in a UC newsletter", how: "beginning seen" },
  WSU16: {
    what: "Washington State University FS161E, “Pesticide Ingredient: Acetic Acid/Vinegar”, and an older WSU text (over 11 % burns)",
    how: "beginnings seen",
  },
  NPICD: {
    what: "National Pesticide Information Center, diatomaceous earth general fact sheet",
    how: "beginning seen in a copy",
  },
  NPICB: { what: "US EPA/NPIC, “Do not use food or pool-grade diatomaceous earth for bed bugs”", how: "seen" },
  CRD11: {
    what: "UK Chemicals Regulation Directorate, letter printed in a private blog, 1 September 2011",
    how: "seen; the law has changed since, check with HSE",
  },
  LBG18: { what: "Newspaper garden writer, on home-made pesticides, 2018", how: "beginning seen (weak)" },
  NSWH18: { what: "NSW Health, 14 December 2018", how: "seen" },
  NSWH23: { what: "NSW Health, September 2023, by news", how: "seen" },
  NAC: { what: "National Aspergillosis Centre, Manchester, aspergillus.org.uk", how: "beginnings seen" },
  CDCT: {
    what: "US CDC, gardening health page, 22 April 2014, quoted by a community garden; the 5 years from memory",
    how: "seen in a quotation",
  },
  USU06: { what: "Utah State University Extension, 4 Dec 2006", how: "seen" },
  CSUM: { what: "Colorado State University, “90-120 day rule”", how: "seen" },
  UMEM: { what: "University of Maine Extension, Bulletin 2510", how: "beginning seen" },
  UGA: { what: "University of Georgia, fresh manure", how: "beginning seen" },
  DEN00: { what: "The Denver Post after Colorado extension advice, 2000", how: "seen (weak)" },
  FSAM: {
    what: "Defra ADLib summary of UK Food Standards Agency manure guidelines; FSA page of 31 Dec 2020 names no days in the part seen",
    how: "seen",
  },
  ROSPA: {
    what: "Royal Society for the Prevention of Accidents, pond and garden water safety",
    how: "beginnings seen",
  },
  NSCB: { what: "Northamptonshire Safeguarding Children Board, drowning and ponds", how: "seen" },
  SLP: {
    what: "Two timber dealers' and one official-forum text of Directive 2001/90/EC and its UK form",
    how: "seen; the directive itself not",
  },
  NFU: { what: "National Farmers' Union, creosote update, 2021-23", how: "seen" },
  BALI26: {
    what: "British Association of Landscape Industries, 9 April 2026, on HSE's creosote decision",
    how: "seen",
  },
  EPA03: { what: "US EPA statement on CCA, in an FAQ copy", how: "seen" },
  ANR8128: { what: "University of California ANR Publication 8128, CCA lumber in gardens", how: "beginning seen" },
  AUEX: { what: "Alabama extension column, 2014 (leaching within centimetres)", how: "beginning seen" },
  HSEL: {
    what: "HSE, “Safe use of ladders and stepladders: a brief guide” (INDG455, January 2014)",
    how: "summary seen",
  },
  HSE402: { what: "HSE INDG402, older edition", how: "beginning seen" },
  AAP10: { what: "American Academy of Pediatrics and others, mower tips, 12 June 2010", how: "seen in news" },
  AAP16: { what: "the same, March 2016 and 2018 (under 6 indoors; 9,000 children)", how: "seen in news" },
  HSE13: { what: "HSE safety alert on chain flails for brush cutters, reported November 2013", how: "report seen" },
  OSHA: {
    what: "US OSHA trench rules, as given by a contractor and trade press",
    how: "seen; the rule itself (29 CFR 1926.650-652) from memory",
  },
  UDEL: { what: "University of Delaware, 2 May 2024", how: "beginning seen" },
  UKH24: { what: "NHS hospital and surgery pages with UKHSA heat advice, 2022 to 2024", how: "seen" },
  STF: { what: "Staffordshire Fire and Rescue, bonfires", how: "seen" },
  NID: { what: "nidirect (Northern Ireland government), bonfire safety", how: "seen" },
  MED: { what: "Medway Council, bonfire advice (hedgehogs)", how: "seen" },
} as const satisfies Readonly<Record<string, Read>>;

export type HazardSource = keyof typeof hazardSources;
