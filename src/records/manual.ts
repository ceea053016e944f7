/** Where the manual explains what a rule is about, by the first part of the rule's name. */

interface Chapter {
  readonly title: string;
  /** Page and heading below the project's folder. */
  readonly page: string;
}

export const ruleChapters = {
  folder: { title: "The records folder", page: "docs/records.md#what-has-no-keys" },
  table: { title: "Tables", page: "docs/bringing-in.md#one-table-for-good" },
  text: { title: "Text and encodings", page: "docs/records.md" },
  "front-matter": { title: "Front matter", page: "docs/records.md" },
  record: { title: "Keys and values", page: "docs/records.md" },
  date: { title: "Dates", page: "docs/records.md" },
  link: { title: "Records that name other records", page: "docs/records.md" },
  name: { title: "Names", page: "docs/notes.md#the-words-of-your-garden" },
  episode: { title: "Episodes", page: "docs/records.md#episode-episodesindexmd" },
  note: { title: "Notes and their lines", page: "docs/notes.md#when-it-is-read-otherwise-than-you-meant" },
  words: { title: "The words of your garden", page: "docs/notes.md#the-words-of-your-garden" },
  "field-list": { title: "Field lists brought back", page: "docs/filming-day.md#taking-it-home" },
  plan: { title: "Plans kept", page: "docs/filming-day.md#the-evening-before" },
  photo: { title: "Photos", page: "docs/photos.md" },
  voice: { title: "Voice notes", page: "docs/photos.md#voice-notes" },
  timeline: { title: "What the lines add up to", page: "docs/notes.md#what-becomes-facts" },
  trial: { title: "Trials", page: "docs/seasons.md#trials" },
  goal: { title: "What you want of next year", page: "docs/seasons.md#next-year-in-gardenmd" },
  weather: { title: "Weather", page: "docs/seasons.md#weather" },
  captions: { title: "Captions", page: "docs/wrap.md" },
  bed: { title: "Beds", page: "docs/records.md#bed-bedsmd" },
  variety: { title: "Varieties", page: "docs/records.md#variety-varietiesmd" },
  privacy: { title: "Privacy", page: "docs/records.md#how-to-keep-anything-private" },
} as const satisfies Readonly<Record<string, Chapter>>;

export function chapterOf(rule: string): Chapter | undefined {
  return (ruleChapters as Readonly<Record<string, Chapter>>)[rule.split("/")[0] ?? ""];
}
