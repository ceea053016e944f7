/** What pages say around their data: names, headings, empty places, heads of tables. */
import { capital, sayList, sayNumber, sayPlural } from "../../language/index.ts";
import type { SitePart } from "../page-data/plan.ts";

export const pageWords = {
  frame: {
    skip: "Skip to the page",
    pages: "Pages",
    varieties: "Varieties",
    beds: "Beds",
    episodes: "Episodes",
    seasons: "Seasons",
    search: "Search",
    filmsFrom: (garden: string) => `Films from ${garden}`,
    asOf: (garden: string, day: string) => `${garden}, as of ${day}.`,
    private: "Private",
    privateMark: "Field pages. Not for viewers, not for the web.",
    privateFooter: "Private field pages.",
  },

  common: {
    new: "new",
    newThisYear: "new this year",
    say: "say",
    caution: "Caution:",
    photoBy: (who: string) => `Photo: ${who}`,
    sameMoment: "Of the same moment:",
    numbers: "The numbers",
    watch: "Watch the film",
    notRecorded: "not recorded",
    atInFilm: (time: string, film: string | undefined) => `${time} in ${film ?? "the film"}`,
    firstNamed: "first named",
    seenIn: "Seen in",
    growingNow: "Growing now",
    bedEmpty: "The bed is empty. What is sown or planted next will stand here.",
    photos: "Photos",
    notebook: "From the notebook",
    onThisPage: "On this page",
  },

  home: {
    description: (garden: string) => `What grows in ${garden}, where it came from and how it did.`,
    latest: "In the latest film",
    growing: "Growing now",
    morePlates: (n: number, film: string | undefined) =>
      film === undefined ? `All ${sayNumber(n)}` : `All ${sayNumber(n)} in ${film}`,
    flowering: "In flower now",
    picking: "Being picked now",
    pair: "The same spot, then and now",
    all: "All varieties and their sources",
    andMore: (n: number) => `and ${sayNumber(n)} more`,
    changed: "What changed this week",
    about: "The garden",
  },

  varieties: {
    description: (garden: string) => `Every variety grown in ${garden}, with its source.`,
    none: "Varieties will stand here as soon as a note names one.",
    count: (varieties: number, crops: number, nameless: number) => {
      const named = `${sayPlural(varieties, "variety", "varieties")} of ${sayPlural(crops, "crop", "crops")}`;
      const others = sayPlural(nameless, "crop", "crops");
      if (nameless === 0) return `${capital(named)}.`;
      return varieties === 0
        ? `${capital(others)}, no variety named yet.`
        : `${capital(named)}, and ${others} without a variety’s name.`;
    },
    name: "Name",
    csv: "Download the list (CSV)",
    json: "as data (JSON)",
    jump: "Jump to a crop",
    byFamily: "By plant family",
    otherCrops: "Other",
    noneLeft: "No variety fits all of that. Take one of the choices back.",
    showOnly: "Show only",
    crop: "Crop",
    bed: "Bed",
    source: "Source",
    allCrops: "all crops",
    allBeds: "all beds",
    allSources: "all sources",
    newIn: (season: string) => `New in ${season}`,
    mine: "What I grow",
    isMine: "you grow this",
    variety: "variety",
    varieties: "varieties",
  },

  variety: {
    /** Stands on the card where the page is passed on. */
    description: (name: string, crop: string, result: string, from: string | undefined) =>
      [`${name}${crop === "" ? "" : `, ${crop}`}: ${result}`, ...(from === undefined ? [] : [`From ${from}.`])].join(
        " ",
      ),
    years: "Year by year",
    key: "Hollow: raised. Grey: in its bed. Black: picked.",
    inWords: "In words",
    onFilm: "On film:",
    where: "Where and when",
    picked: "Picked so far",
    year: "Year",
    amount: "Amount",
    pickings: "Pickings",
    notMeasured: "Not measured",
    thenAndNow: (bed: string) => `Then and now in ${bed}`,
    growth: "How it grew",
    grow: "I grow this",
    kept: "Kept in this browser and sent nowhere.",
    lost: "This browser does not keep it.",
  },

  beds: {
    description: (garden: string) => `The beds of ${garden} and what grows in them.`,
    none: "Beds will stand here as soon as a note names one.",
    plan: (site: string, beds: readonly { readonly bed: string; readonly part: SitePart }[]) =>
      `Plan of ${site}: ${sayList(beds.map(({ bed, part }) => `${bed} in the ${part}`))}.`,
    planOf: (site: string, bed: string, part: SitePart, neighbours: readonly string[]) =>
      `${bed} lies in the ${part} of ${site}${neighbours.length === 0 ? "" : `, next to ${sayList(neighbours)}`}.`,
  },

  bed: {
    description: (bed: string) => `What grows in ${bed} and what changed there.`,
    soFar: (season: string) => `${season} so far`,
    earlier: "Earlier seasons",
    place: "Where it lies and how it is made",
    thenAndNow: "Then and now",
    thenAndNowOf: (bed: string) => `${bed}, then and now`,
    thenAndNowMore: ": since the last tour, and the same week of other years.",
    thenAndNowDescription: (bed: string) =>
      `${bed} from the same spot: since the last tour, and in the same week of other years.`,
    weeks: "Week by week",
    growth: "How it grew",
    made: "How the bed is made",
    noPhoto: "no photo",
    weekOf: (day: string) => `week of ${day}`,
  },

  compare: {
    group: (spot: string) => `${spot}, two days compared`,
    slider: "Move between the two photos",
    earlier: "Earlier",
    later: "Later",
    /** For the slider, which fills in days and numbers itself. */
    live: {
      all: "All {day}",
      share: "{share} % {left}, the rest {right}",
      same: "The same photo twice.",
      oneDay: "One day apart.",
      days: "{days} days apart.",
    },
  },

  lapse: {
    title: "The season in a few seconds",
    play: "Play",
    stop: "Stop",
    file: "As a file",
    film: "As a film to cut with",
  },

  episodes: {
    description: (garden: string) => `The films made in ${garden}.`,
    none: "The first episode will stand here when it is out.",
    inReader: "New films in a reader:",
    or: "or",
    rss: "RSS",
    jsonFeed: "JSON Feed",
  },

  episode: {
    description: (title: string, day: string) => `${title}, filmed on ${day}.`,
    filmedOn: (day: string) => `Filmed on ${day}`,
    chapters: "Chapters",
    timeOpens: "A time opens the film there.",
    nameLeads: "A name leads to what is said.",
    named: "Varieties, as they are named",
    at: "At",
    variety: "Variety",
    source: "Source",
    noneGrown: "Nothing was growing here that day.",
    photos: "Photos of that day",
    transcript: "What is said",
    find: "Find a word in it",
    saidNever: "Nobody says that in this film.",
    saidOnce: "Said once.",
    saidOften: "Said {count} times.",
  },

  recap: {
    of: (name: string) => `The season of ${name}`,
    whole: (garden: string, name: string) => `${garden}: the season of ${name}`,
    description: (garden: string, span: string) => `What ${garden} gave and what it taught, ${span}.`,
    listDescription: (garden: string) => `What ${garden} gave, year by year.`,
    none: "The first season will stand here when something has been sown.",
    soFar: (season: string) => `${season} so far`,
    opening: "The film may open with",
    threads: "The year, told",
    report: "The whole report: results, charts and tables",
    methods: "How the figures were worked out",
    parts: {
      season: "The season",
      weather: "The weather",
      best: "What did best",
      worst: "What went wrong",
      results: "What it came to",
      growth: "The same spot through the season",
      trials: "Trials",
      promises: "Promises",
      "to come": "Still to come",
      "next year": "Next year",
      questions: "Questions and thanks",
    },
    thanks: "Thanks",
    calendar: "From sowing to clearing",
    tables: { variety: "By variety", crop: "By crop", bed: "By bed", site: "By site" },
    heads: { variety: "Variety", crop: "Crop", bed: "Bed", site: "Site" },
    picked: "Picked",
    pickings: "Pickings",
    first: "First",
    last: "Last",
    perPlant: "A plant",
    lastYearByThen: "Last year by then",
    worth: "Worth",
    each: (weight: string) => `${weight} each`,
    week: {
      title: "Picked by week",
      label: (span: string, summary: string) => `Picked by week, ${span}. ${summary}`,
      axis: (unit: string) => `${unit} a week`,
      summary: (most: string, amount: string) => `Picked each week; most in the week of ${most}, ${amount}.`,
      heads: (before: boolean) => ["Week of", "Picked", "Pickings", ...(before ? ["Last year"] : [])],
      before: " The short lines are the same weeks of last year.",
      method:
        "Weights of the note lines, added up in weeks that begin with the season. What was only counted has no part in it.",
      noneWeighed: "none weighed",
      none: "none",
    },
    heat: {
      title: "Heat",
      axis: "degree days",
      summary: (sum: number, day: string, before: boolean) =>
        `Heat since the season began: ${sayPlural(sum, "degree day", "degree days")} by ${day}${before ? "; earlier years are the dashed lines" : ""}.`,
      method: (base: string) =>
        `Degree days above ${base} by the simple average: the middle of the day’s highest and lowest temperature less the base, never below nothing. Where a week of temperatures is missing the line ends.`,
      table: "Heat by week",
      by: "By",
    },
    lives: {
      summary: (plantings: number, bed: string) =>
        `${capital(sayPlural(plantings, "planting", "plantings"))} in ${bed} from sowing to clearing: light where raised, dark where it grew, heavy where it was picked.`,
      method: "From the note lines that sowed, planted, picked and cleared.",
      heads: ["Planting", "Sown", "Planted", "First picked", "Last picked", "Over"] as readonly string[],
    },
    trial: {
      noFigure: (arm: string) => `${arm}: no figure yet`,
      mean: (arm: string, mean: string, figures: number) =>
        `${arm}: ${mean} in the mean of ${sayPlural(figures, "figure", "figures")}`,
      method:
        "Each point is one figure from a note line, or what one row gave in all; the upright stroke is the mean that is compared: over the pieces of a row or bed, then over rows or beds, of days that all arms have.",
      eachPlant: ", by the plant",
      heads: ["Arm", "Figures", "Mean", "Spread of rows or beds"] as readonly string[],
      days: (n: number) => sayPlural(n, "day", "days"),
      daysAxis: "days",
      inches: "inches",
      piecesAxis: "pieces",
    },
  },

  search: {
    description: (garden: string) => `Search ${garden} for a variety, a bed or a word.`,
    needsScripts: "Searching needs scripts in your browser. Every name stands in the",
    list: "variety list",
    question: "Which variety was that?",
    asked: "A variety, a bed or any word",
    find: "Find",
    none: "Nothing was found.",
    noName: "No name like it. “Find” looks through all pages.",
    one: "1 found",
    many: "{count} found",
    failed: "The pages cannot be searched just now; names still can.",
    names: "What it may be",
    pages: "Pages that say it",
  },

  missing: {
    title: "No such page",
    plate: "Nothing grows here",
    text: "There is no page at this address. A bed or a variety may have been given another name.",
  },
};

/** The fixed words of pages. */
export type PageWords = typeof pageWords;
