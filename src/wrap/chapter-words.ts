/** What chapters are called where no bed names them: they are read by viewers. */
export const chapterWords = {
  first: "Hello",
  between: "On the way",
  last: "Last words",
  /** A bed whose name is kept back. */
  anotherBed: "One more bed",
  again: (name: string) => `${name}, again`,
  gear: (title: string) => `the ${title.toLowerCase()}`,
};
