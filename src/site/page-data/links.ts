/** Addresses of pages, complete with the path below which the site is served. Ids may hold any letter a file name may. */

export interface Links {
  readonly home: string;
  readonly varieties: string;
  readonly varietyFilters: string;
  readonly csv: string;
  readonly json: string;
  readonly search: string;
  readonly searchIndex: string;
  readonly names: string;
  readonly rss: string;
  readonly jsonFeed: string;
  readonly beds: string;
  readonly episodes: string;
  variety(id: string): string;
  crop(id: string): string;
  bed(id: string): string;
  /** The box to write in, with the bed chosen. */
  writeAbout(bed: string): string;
  thenAndNow(bed: string): string;
  readonly viewpoints: string;
  /** The page to write on outdoors. */
  readonly outdoors: string;
  /** Of photos without a name. */
  readonly naming: string;
  viewpoint(bed: string, name: string): string;
  viewpointPhoto(bed: string, name: string): string;
  episode(id: string): string;
  readonly recaps: string;
  recap(id: string): string;
  /** Of all notes as they are read. */
  readonly notes: string;
  /** By the part of its address. */
  note(id: string): string;
  brief(name: string): string;
  fieldList(name: string): string;
  photo(name: string): string;
  /** Of any file by its path. */
  below(file: string): string;
}

export function linksBelow(base: string): Links {
  const below = (...parts: string[]) => base + parts.map(encodeURIComponent).join("/");
  return {
    home: base,
    varieties: `${base}varieties/`,
    varietyFilters: `${base}varieties/filters.css`,
    csv: `${base}varieties.csv`,
    json: `${base}varieties.json`,
    search: `${base}search/`,
    searchIndex: `${base}pagefind/pagefind.js`,
    names: `${base}names.json`,
    rss: `${base}feed.xml`,
    jsonFeed: `${base}feed.json`,
    beds: `${base}beds/`,
    episodes: `${base}episodes/`,
    recaps: `${base}recaps/`,
    variety: (id) => `${below("varieties", id)}/`,
    crop: (id) => `${base}varieties/#${encodeURIComponent(cropAnchor(id))}`,
    bed: (id) => `${below("beds", id)}/`,
    writeAbout: (bed) => `${base}?bed=${encodeURIComponent(bed)}#write`,
    thenAndNow: (bed) => `${below("beds", bed, "then-and-now")}/`,
    viewpoints: `${base}viewpoints/`,
    outdoors: `${base}outdoors/write.html`,
    naming: `${base}naming/`,
    viewpointPhoto: (bed, name) => below("viewpoints", bed, name, "last.webp"),
    viewpoint: (bed, name) => `${below("viewpoints", bed, name)}/`,
    episode: (id) => `${below("episodes", id)}/`,
    recap: (id) => `${below("recaps", id)}/`,
    notes: `${base}notes/`,
    note: (id) => `${below("notes", id)}/`,
    brief: (name) => below("briefs", `${name}.html`),
    fieldList: (name) => below("field-lists", `${name}.html`),
    photo: (name) => below("photos", name),
    below: (file) => below(...file.split("/")),
  };
}

/** Anchor of a crop's group in the variety list. */
export function cropAnchor(crop: string): string {
  return `crop-${crop.replace(/\s+/gu, "-")}`;
}
