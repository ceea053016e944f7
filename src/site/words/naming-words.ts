/** What the private page of photos without a name says. */
import { capital, sayPlural } from "../../language/index.ts";

export const namingWords = {
  title: "Photos without a name",
  summary: (n: number) =>
    n === 0
      ? "Every photo says what it is of: by its folder, its name, its spot, or words beside it."
      : `${capital(sayPlural(n, "photo says", "photos say"))} neither a variety nor a spot, and ${n === 1 ? "has" : "have"} no caption.`,
  byTap: "A tap writes the name into a file beside the photo, as you would. The photo stays where it is.",
  byHand:
    "While “plotreel watch” runs, this page names them by tap. Or write it yourself, into the file named below each photo:",
  example: "varieties: Crown Prince",
  photoOf: (day: string, bed: string | undefined) => (bed === undefined ? day : `${bed}, ${day}`),
  grewThen: "What grew there that day",
  other: "Another variety, a bed, or a caption",
  asName: "It is this",
  asCaption: "Write it as caption",
  later: "Later",
  more: (n: number) => `${capital(sayPlural(n, "more comes", "more come"))} here when these are named.`,
  undo: "Undo",
  askedAgain: "It now says:",
  nothingThere: "(nothing)",
  writeAllTheSame: "Write the name there all the same",
  leaveIt: "Leave it",
  notReached: "“plotreel watch” does not answer, so nothing was written. Start it again.",
};
