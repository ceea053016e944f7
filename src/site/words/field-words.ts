/** What the private field pages say around their data. */
import { capital, sayAge, sayList, sayPlural } from "../../language/index.ts";

const SEVERITIES = {
  error: ["error", "errors"],
  warning: ["warning", "warnings"],
  hint: ["hint", "hints"],
} as const;

type Severity = keyof typeof SEVERITIES;

export const fieldWords = {
  fieldList: "Field list, to tick off while filming",
  owed: "Owed to viewers",
  noneOwed: "Every promise is kept.",
  toDo: "To do",
  beds: "Beds",
  sameSpots: "Photos from the same spots",
  recapOf: (name: string) => `Recap of ${name}`,
  notYet: {
    title: "What viewers could be shown",
    film: "The first page leads with the varieties of the newest film. None is published yet.",
    variety: "Varieties get pages of their own as soon as a note names one: “sowed 20 French Breakfast radish”.",
    photos: (without: number, all: number) =>
      without === all
        ? "No variety has a photo of its own yet. One in photos/varieties/NAME/ shows viewers which it was."
        : `${capital(sayPlural(without, "variety has", "varieties have"))} no photo of ${without === 1 ? "its" : "their"} own, of ${all}: one in photos/varieties/NAME/ shows viewers which it was.`,
    pair: "Two photos from the same spot, ten days apart or more, stand side by side on the first page.",
  },
  private: "private",
  privateBed: "private: viewers never see this bed",
  troubles: "Troubles",
  camera: "Where the camera stands",
  noneNoted: "Nothing was noted here.",
  notes: "From the notes",
  viewpoints: "Viewpoints",
  noViewpoint: "Name a viewpoint in a bed’s file, and its camera page will stand here.",
  readNotes: "Notes, line by line",
  noNotes: "A page for each note will stand here.",
  lineByLine: "Line by line",
  noLines: "Nothing is written in this note yet.",
  story: "Story",
  noFact: "It holds no fact.",
  openQuestion: "Question",
  settleIt: "“plotreel settle” asks, and writes the answer below the line.",
  howRead: (facts: number, questions: number, stories: number) => {
    const said = [
      { n: facts, one: "is facts", many: "are facts" },
      { n: questions, one: "is a question", many: "are questions" },
      { n: stories, one: "is story", many: "are story" },
    ].filter(({ n }) => n > 0);
    const parts = said.map(({ n, one, many }, at) =>
      at === 0 ? sayPlural(n, `line ${one}`, `lines ${many}`) : sayPlural(n, one, many),
    );
    return parts.length === 0 ? "Nothing to read." : `${capital(sayList(parts))}.`;
  },

  due: {
    today: "Due today.",
    past: (day: string) => `Was due on ${day}.`,
    coming: (day: string) => `Due on ${day}.`,
  },
  promised: (day: string, film: string | undefined) =>
    `Promised on ${day}${film === undefined ? "" : ` in “${film}”`}.`,
  shade: (shade: string) => `Shade: ${shade}`,
  seenOn: (day: string) => `Seen on ${day}.`,
  noPhotoYet: "No photo yet.",
  photoToday: "Photographed today.",
  lastPhotoAgo: (days: number) => `Last photo ${sayAge(days)} ago.`,

  nothingToMend: "Nothing to mend.",
  severity: (severity: Severity) => capital(SEVERITIES[severity][0]),
  inAll: (counts: readonly (readonly [Severity, number])[]) =>
    `${capital(sayList(counts.map(([severity, n]) => sayPlural(n, SEVERITIES[severity][0], SEVERITIES[severity][1]))))} in the records.`,
  andMore: (n: number) => `And ${sayPlural(n, "more", "more")}: “plotreel check” lists them all.`,

  shot: {
    video: "The camera's picture",
    taken: "The photo just taken",
    last: (day: string) => `The last photo is of ${day}.`,
    byHand: "Take the photo with the phone’s own camera and put it into the folder",
    strength: "How strongly the last photo shows",
    start: "Start the camera",
    take: "Take the photo",
    pick: "Use the phone’s own camera",
    keep: "Keep",
    again: "Again",
    /** For the camera's script, which fills in names itself. */
    live: {
      blink: "Blink",
      stopBlinking: "Stop blinking",
      saved: "Saved as {name}. “plotreel ingest” puts it in its place.",
      noCamera: "The camera could not be started. Allow it for this page, or use the phone’s own camera.",
      turnUpright: "Turn the phone: the last photo was taken upright.",
      turnLying: "Turn the phone: the last photo was taken lying.",
      move: "Move until the last photo lies over the picture.",
      notSaved: "The photo could not be saved. Use the phone’s own camera.",
      notShown: "This browser cannot show that photo. You can keep it all the same.",
      turns: "The new photo and the last one take turns. What jumps has moved.",
      needsHttps:
        "The live picture needs an https address or this machine itself. Here the phone’s own camera takes the photo, and this page holds it against the last one.",
      onPhone: "This page is on the phone now and works without a signal.",
      notOnPhone: "This page could not be kept on the phone: open it here while there is a signal.",
    },
  },

  /** Sections of the private recap. */
  own: {
    levels: { must: "Must", should: "Should", could: "Could" },
    leftOut: "Not in this length",
    readBy: "To read the tables by",
    losses: "Losses and troubles",
    forecasts: "Forecasts",
    windows: "Windows of what is still to come",
    windowHeads: ["Planting", "From", "Likely", "To"] as readonly string[],
    wanted: "Wanted next year",
    draft: (year: number) => `A draft for ${year}`,
    whoGoesWhere: "Who goes where",
    draftHeads: ["Bed", "Crops", "Not yet"] as readonly string[],
    pinned: (crop: string) => `${crop} (pinned)`,
    notBefore: (crop: string, year: number) => `${crop} before ${year}`,
    seeds: "Seed order",
    bySource: "By source",
    seedHeads: ["Variety", "From", "How", "Own seed", "To think of"] as readonly string[],
    sayIt: "Say it",
    care: "Care",
    moreLines: (n: number) => `and ${sayPlural(n, "more line", "more lines")}`,
  },
};

export type FieldWords = typeof fieldWords;
