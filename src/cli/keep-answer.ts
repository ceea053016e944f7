/** An answer to a question worth asking, written into the records: one line, in the file where a person would have put it. */
import type { Day, Event, Garden } from "../model.ts";
import {
  answeredNote,
  blockAt,
  type FrontLine,
  namesOfGarden,
  readOneNote,
  withAddedLines,
  withFrontLine,
} from "../records/index.ts";
import type { TapAnswer } from "../site/index.ts";
import { type AnswerKept, answerKept, type WorthAsking } from "../tour/index.ts";
import type { Effects } from "./effects.ts";
import { recordText } from "./record-templates.ts";
import { linesOf, plainLine, tried } from "./settle-lines.ts";
import { fileOfWords } from "./settle-words.ts";
import { notesOfDay } from "./write-notes.ts";
import type { WrittenFiles } from "./written-files.ts";

export interface Keeping {
  readonly garden: Garden;
  readonly today: Day;
  readonly recordsDir: string;
  readonly files: WrittenFiles;
  readonly effects: Pick<Effects, "openRecords" | "readText" | "err">;
}

export async function keepAnswer(asking: WorthAsking, answer: string, keeping: Keeping): Promise<TapAnswer> {
  const kept = answerKept(asking, answer, keeping.garden, keeping.today);
  switch (kept.is) {
    case "refused":
      return { told: kept.told };
    case "of the variety":
      return ofVariety(kept, keeping);
    case "in the note":
      return inTheNote(asking, kept, keeping);
    case "below its line":
      return belowItsLine(asking, kept, keeping);
  }
}

/** Kept in garden.md, where the person can take it away again. */
export function keepNotAsked({ text }: Pick<WorthAsking, "text">, keeping: Keeping): Promise<TapAnswer> {
  const bytes = keeping.files.bytes("garden.md");
  if (bytes === undefined) return Promise.resolve({ told: "There is no garden.md to keep that in." });
  return front("garden.md", bytes, bytes, { key: "do not ask", value: text, inList: true }, keeping);
}

async function ofVariety(
  { variety: id, key, value }: Extract<AnswerKept, { is: "of the variety" }>,
  keeping: Keeping,
): Promise<TapAnswer> {
  const { garden, today, files } = keeping;
  const variety = garden.varieties.get(id);
  if (variety === undefined) return { told: "That variety is not in the records any more." };
  const crop = garden.crops.get(variety.crop ?? "")?.name;
  const file = variety.described ? (variety.place?.file ?? "") : `varieties/${id}.md`;
  if (!file.endsWith(".md")) return { told: `A table describes it: add “${key}: ${value}” to its row there.` };
  const bytes = files.bytes(file);
  if (!variety.described && bytes !== undefined) return { told: `${file} is there already, and was left as it is.` };
  const begun = recordText("variety", { title: variety.title, today, ...(crop !== undefined && { crop }) });
  return front(file, bytes, bytes ?? new TextEncoder().encode(begun), { key, value }, keeping);
}

async function front(
  file: string,
  before: Uint8Array | undefined,
  from: Uint8Array,
  line: FrontLine,
  { files, effects }: Keeping,
): Promise<TapAnswer> {
  const written = withFrontLine(from, line);
  if ("refused" in written) return { told: `${file} was left as it is. ${written.refused}` };
  const undo = await files.write(file, before, written.bytes);
  if (undo === undefined) return { told: `${file} was changed in this moment, so nothing was written into it.` };
  const said = `${line.key}: ${line.value}`;
  effects.err(`Answered: ${file}, ${said}`);
  return { told: `In ${file} now stands: ${said}`, undo };
}

async function inTheNote(
  { kind }: WorthAsking,
  { line, bed: id }: Extract<AnswerKept, { is: "in the note" }>,
  { garden, today, recordsDir, files, effects }: Keeping,
): Promise<TapAnswer> {
  const [file = ""] = notesOfDay(today, garden);
  const bed = id === undefined ? undefined : garden.beds.get(id);
  const before = files.bytes(file);
  const { settings } = garden;
  const names = namesOfGarden(garden);
  const added = withAddedLines(before, { lines: [line], bed }, { names, day: today, settings });
  if ("refused" in added) return { told: `${file} was left as it is. ${added.refused}` };
  const words = await effects.readText(await fileOfWords(recordsDir, effects));
  const { readings } = readOneNote(file, added.text, { records: garden, words, today });
  const wanted: Event["kind"] | undefined = kind === "picked" ? "picked" : kind === "sown" ? "sowed" : undefined;
  const read = readings.find(({ place }) => added.at.includes(place.line));
  if (wanted !== undefined && !(read?.as === "facts" && read.events.some((event) => event.kind === wanted)))
    return { told: `Written as “${line}”, that would not be read. Write it into the note in your own words.` };
  const undo = await files.write(file, before, added.bytes);
  if (undo === undefined) return { told: `${file} was changed in this moment, so nothing was written into it.` };
  effects.err(`Answered: ${file}, ${line}`);
  return { told: `In ${file} now stands: ${line}`, undo };
}

/** The plain line of what was planted, with what the answer adds to it: "= planted 12 Musselburgh leeks in Long Bed". */
async function belowItsLine(
  { planting }: WorthAsking,
  { title, bought }: Extract<AnswerKept, { is: "below its line" }>,
  { garden, today, recordsDir, files, effects }: Keeping,
): Promise<TapAnswer> {
  const event = garden.events.find(({ id }) => id === planting?.firstEvent);
  const reading = garden.readings.find(
    ({ place }) => place.file === event?.place.file && place.line === event.place.line,
  );
  const { file, line } = event?.place ?? { file: "", line: 0 };
  const bytes = event === undefined ? undefined : files.bytes(file);
  const block = bytes === undefined ? undefined : blockAt(bytes, line);
  if (
    event === undefined ||
    reading === undefined ||
    bytes === undefined ||
    block?.text.includes(reading.text) !== true
  )
    return { told: "The line that planted it was changed since: nothing was written." };
  const words = await effects.readText(await fileOfWords(recordsDir, effects));
  const names = namesOfGarden(garden);
  const context = { records: garden, words, today };
  const noteDay = garden.notes.find(({ place }) => place.file === file)?.day;
  const together = linesOf(block, reading, context);
  if (together.some(({ as }) => as === "question"))
    return { told: "Its paragraph asks something as well: “plotreel settle” asks that first." };
  const crop = names.crop(event.crop);
  const plain = together.flatMap(({ events }) =>
    events.map((one) => {
      if (one.id !== event.id) return plainLine(one, { names, context }, noteDay);
      const said = plainLine(bought === true ? { ...one, plantsFrom: "bought" } : one, { names, context }, noteDay);
      if (title === undefined || crop === undefined) return said;
      return said.replace(said.includes(crop.plural) ? crop.plural : crop.name, () => `"${title}" ${crop.name}`);
    }),
  );
  const read = tried(plain, { bytes, file, line, context, names });
  const isSaid = read.events.some((one) =>
    bought === true ? one.plantsFrom === "bought" : one.variety !== undefined && one.variety !== event.variety,
  );
  if (!read.isRead || !isSaid)
    return { told: "Written below its line, that would not be read. Write it there yourself." };
  const written = answeredNote(bytes, line, plain);
  if ("refused" in written) return { told: written.refused };
  const undo = await files.write(file, bytes, written.bytes);
  if (undo === undefined) return { told: `${file} was changed in this moment, so nothing was written into it.` };
  effects.err(`Answered: ${file}:${line} = ${plain.join("; ")}`);
  return { told: `Below that line of ${file} now stands: = ${plain.join("; ")}`, undo };
}
