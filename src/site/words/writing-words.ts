/** What the box to write in says, while somebody is there to take it. */

export const writingWords = {
  title: "Write",
  day: "Day",
  bed: "Bed",
  noBed: "Said in the line, or none",
  note: "Note",
  line: "What happened, a line for each thing",
  how: "Enter begins the next line. On an empty line it writes them all.",
  names: "Names that may be meant",
  next: "Next line",
  save: "Write into the note",
  photosHere: "Add photos",
  ofVarieties: "Photos of a variety that grows here",
  addPhotos: (of: string) => `Photos of ${of}, chosen or dropped here`,
  tooLarge: "larger than 40 MB, so it was not kept. “plotreel ingest” takes it.",
  writeHere: "Write about this bed",
  /** For the script of the box, which fills in the file itself. */
  live: {
    goesTo: "Goes to the end of {file}.",
    begins: "Begins {file}.",
    story: "story: no fact is taken from it",
    question: "a question to you",
    or: "–",
    kinds: { verb: "verb", bed: "bed", variety: "variety" },
    change: "Change",
    leaveOut: "Leave out",
    nothing: "Nothing is typed yet.",
    nothingThere: "(nothing)",
    notReached: "“plotreel watch” does not answer, so nothing was written. Start it again: what you typed stays here.",
  },
};

export type WritingWords = typeof writingWords;
