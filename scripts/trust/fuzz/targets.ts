/** What is fuzzed: for each, how a case is made, and what is done with it. A case is plain data, so that it can be kept. */
import fc from "fast-check";
import { gardenWeather } from "../../../src/almanac/index.ts";
import { bringDiary, bringTable, bringVoice } from "../../../src/past/index.ts";
import { photoHead } from "../../../src/photos/exif-tags.ts";
import { imageKind, imageMetadataBlocks } from "../../../src/photos/index.ts";
import { photoMoment } from "../../../src/photos/photo-date.ts";
import { problemText, readTextTable } from "../../../src/records/index.ts";
import { openCaptions, readGlossary, wrapEpisode, wrapReport } from "../../../src/wrap/index.ts";
import { clipBoxes, otherCaptions } from "./film-files.ts";
import { type Files, folderOf, ground, grown, type Target, TODAY } from "./ground.ts";
import { day, line, number, value } from "./hostile-text.ts";
import { runInMemory } from "./in-memory.ts";
import { holds } from "./oracle.ts";
import { pageAsks } from "./page-asks.ts";
import { privateLines, settledLines } from "./written-lines.ts";

const lines = fc
  .array(fc.tuple(fc.constantFrom("- ", "- ", "- ", "", "1. ", "- [ ] ", "  - ", "## ", "> ", "| "), line), {
    minLength: 1,
    maxLength: 5,
  })
  .map((all) => all.map(([mark, text]) => mark + text).join("\n"));

const noteLines: Target<string> = {
  name: "note lines",
  cases: lines,
  share: 400,
  hold: (text) =>
    holds(
      text,
      async () => (await grown({ ...ground, "notes/2026-05-16.md": `---\nbed: Long Bed\n---\n\n${text}\n` })).told,
    ),
};

const KEYS = [
  "title",
  "crop",
  "size",
  "plan",
  "facing",
  "source",
  "private",
  "date",
  "bed",
  "beds",
  "status",
  "stops",
  "target",
  "position",
  "viewpoints",
  "days to maturity",
  "arms",
  "measure",
  "verdict",
  "last frost",
  "units",
  "language",
  "time zone",
  "goals",
  "prices",
  "pins",
  "place",
  "obtained",
  "from",
  "link",
  "say it as",
  "also spelled",
  "shade",
  "soil",
  "in use",
  "__proto__",
  "narration rate",
  "wrap without",
  "published",
  "question",
  "start",
  "end",
];

const front = fc
  .array(
    fc.tuple(fc.oneof({ weight: 12, arbitrary: fc.constantFrom(...KEYS) }, { weight: 1, arbitrary: line }), value),
    { maxLength: 7 },
  )
  .map((pairs) => pairs.map(([key, text]) => `${key}: ${text}`).join("\n"));

const frontMatter: Target<{ readonly file: string; readonly front: string }> = {
  name: "front matter",
  cases: fc.record({
    file: fc.constantFrom(
      "garden.md",
      "beds/a.md",
      "varieties/a.md",
      "notes/2026-05-16-a.md",
      "episodes/a/index.md",
      "trials/a.md",
      "gear/a.md",
      "sites/a.md",
      "words.md",
    ),
    front,
  }),
  share: 250,
  hold: ({ file, front: text }) =>
    holds(
      text,
      async () =>
        (await grown({ ...ground, [file]: `---\n${text}\n---\n\n- planted 3 Crown Prince in Long Bed\n` })).told,
    ),
};

const stamp = fc.oneof(
  fc
    .tuple(fc.nat(200), fc.nat(70), fc.nat(70), fc.nat(1200))
    .map(([h, m, s, ms]) => `${h}:${String(m).padStart(2, "0")}:${String(s).padStart(2, "0")}.${ms}`),
  fc.constantFrom("00:00:01.000", "00:00:00,500", "99999999:00:00.000", "-1:00", "0:0", "00:61:00.000", "1:2:3:4"),
);

const captionText = fc
  .tuple(
    fc.constantFrom("WEBVTT\n\n", "1\n", "", "\ufeffWEBVTT - x\n", "WEBVTT\nX-TIMESTAMP-MAP=LOCAL:0\n\n"),
    fc.array(fc.tuple(stamp, fc.constantFrom(" --> ", "-->", "\n", " "), stamp, line), { maxLength: 12 }),
  )
  .map(([head, cues]) => head + cues.map(([from, arrow, to, text]) => `${from}${arrow}${to}\n${text}\n`).join("\n"));

const captions: Target<{ readonly file: string; readonly text: string }> = {
  name: "captions",
  cases: fc.record({ file: fc.constantFrom("a.vtt", "a.srt", "a.txt"), text: captionText }),
  share: 100,
  hold: ({ file, text }) =>
    holds(text, async () => {
      const bytes = new TextEncoder().encode(text);
      const { garden } = await film();
      const episode = garden.episodes.get("june");
      if (episode === undefined) throw new Error("the film is not read");
      const made = wrapEpisode({
        garden,
        episode,
        captions: { file, bytes },
        glossary: readGlossary(text),
        comments: { file: "c.txt", text },
      });
      return [openCaptions(file, bytes), made, wrapReport(made.wrap, garden)];
    }),
};

let filmed: ReturnType<typeof grown> | undefined;
function film(): ReturnType<typeof grown> {
  filmed ??= grown({
    ...ground,
    "episodes/june/index.md": "---\ntitle: June\ndate: 2026-06-14\nstatus: filmed\nstops: [long-bed, round-bed]\n---\n",
  });
  return filmed;
}

const csv = fc
  .tuple(
    fc.constantFrom(
      "date,max,min,rain\n",
      '"STATION","DATE","TMAX","TMIN","PRCP"\n',
      "date;max;min\n",
      "",
      "Date,Max,Max,Min\n",
    ),
    fc.array(fc.tuple(day, fc.array(fc.oneof(number, line), { maxLength: 5 })), { maxLength: 12 }),
    fc.constantFrom(",", ";", "\t", ',"'),
  )
  .map(([head, rows, between]) => head + rows.map(([on, cells]) => [on, ...cells].join(between)).join("\n"));

const weather: Target<string> = {
  name: "weather",
  cases: csv,
  share: 100,
  hold: (text) =>
    holds(text, () => gardenWeather([{ file: "weather/2026.csv", text }], { latitude: 54.2, longitude: -1.5 }, TODAY)),
};

/** A JPEG's head with an EXIF block whose fields, counts and offsets are anything. */
const exif = fc
  .record({
    order: fc.constantFrom("II", "MM"),
    entries: fc.array(
      fc.tuple(
        fc.constantFrom(0x0112, 0x0132, 0x8769, 0x8825, 0x9003, 0x9004, 0x9010, 0x9011, 0x9291, 1, 2, 3, 4, 0x1d),
        fc.nat(14),
        fc.oneof(fc.nat(40), fc.nat(0xffffffff)),
        fc.oneof(fc.nat(300), fc.nat(0xffffffff)),
      ),
      { maxLength: 14 },
    ),
    next: fc.nat(400),
    after: fc.oneof(
      fc
        .constantFrom(
          "2026:05:16 10:11:12\0",
          "0000:00:00 00:00:00\0",
          "2026:13:40 99:99:99\0",
          "    :  :     :  :  \0",
        )
        .map((text) => [...Buffer.from(text)]),
      fc.array(fc.nat(255), { maxLength: 200 }),
    ),
    cut: fc.nat(400),
  })
  .map(({ order, entries, next, after, cut }) => {
    const le = order === "II";
    const word = (n: number) => (le ? [n & 255, (n >> 8) & 255] : [(n >> 8) & 255, n & 255]);
    const long = (n: number) =>
      le ? [...word(n & 0xffff), ...word(n >>> 16)] : [...word(n >>> 16), ...word(n & 0xffff)];
    const tiff = [
      ...Buffer.from(order),
      ...word(42),
      ...long(8),
      ...word(entries.length),
      ...entries.flatMap(([tag, type, count, at]) => [...word(tag), ...word(type), ...long(count), ...long(at)]),
      ...long(next),
      ...after,
    ];
    const block = [...Buffer.from("Exif\0\0"), ...tiff];
    const length = block.length + 2;
    const all = [0xff, 0xd8, 0xff, 0xe1, length >> 8, length & 255, ...block, 0xff, 0xd9];
    return all.slice(0, cut < 20 ? 6 + cut : all.length);
  });

const photos: Target<{ readonly bytes: readonly number[]; readonly name: string }> = {
  name: "photo heads",
  cases: fc.record({
    bytes: exif,
    name: fc.oneof(
      day.map((on) => `photos/IMG_${on.replaceAll("-", "")}_999999.jpg`),
      line,
    ),
  }),
  share: 100,
  hold: ({ bytes, name }) =>
    holds(name, async () => {
      const content = Uint8Array.from(bytes);
      const head = await photoHead(content);
      // Tags are as the camera wrote them, floats that are no number too; what is made of them is looked at.
      const { tags, ...read } = head;
      return [
        read,
        imageKind(content),
        blocksOf(content),
        photoMoment({ tags, path: name, modified: 0, timeZone: "Europe/London" }),
      ];
    }),
};

/** Refusing a file as no picture is an answer. */
function blocksOf(content: Uint8Array): unknown {
  try {
    return imageMetadataBlocks(content);
  } catch {
    return [];
  }
}

const take = fc.record(
  { at: fc.constantFrom("09:24:31", "9", ""), mark: fc.constantFrom("good", "hold", "no good", "best"), why: line },
  { requiredKeys: [] },
);

/** What a brief keeps beside its episode, and the phone carries. */
const plan = fc.record({
  plotreel: fc.constantFrom("plan", "field list"),
  version: fc.constantFrom(1, 2),
  episode: fc.constantFrom("june", "nowhere"),
  stops: fc.oneof(
    fc.array(
      fc.record({
        bed: line,
        show: fc.constant([]),
        shots: fc.array(fc.record({ id: line, key: line, text: line }), { maxLength: 3 }),
        cautions: fc.array(line, { maxLength: 2 }),
      }),
      { maxLength: 3 },
    ),
    line,
  ),
});

const list = fc
  .record({
    version: fc.constantFrom("1", "2"),
    plan: fc.oneof(plan, fc.constant(undefined)),
    episode: fc.constantFrom("june", "nowhere", "../june", ""),
    day: fc.oneof(day, number),
    stops: fc.oneof(
      fc.array(
        fc.record({
          bed: fc.oneof(fc.constantFrom("long-bed", "__proto__"), line),
          ticks: fc.array(
            fc.record({
              shot: line,
              key: line,
              words: line,
              state: fc.constantFrom("filmed", "retake", "gone"),
              takes: fc.oneof(
                fc.array(take, { maxLength: 3 }),
                fc.integer(),
                fc.constant(null),
                fc.double().map(String),
              ),
              at: fc.constantFrom("09:24:31", "25:00:00", ""),
            }),
            { maxLength: 3 },
          ),
          note: line,
        }),
        { maxLength: 3 },
      ),
      line,
      fc.constant(null),
    ),
  })
  .map((made) => JSON.stringify({ plotreel: "field list", exported: "x", ...made }));

const fieldLists: Target<string> = {
  name: "field lists",
  cases: fc.oneof(
    list,
    plan.map((made) => JSON.stringify(made)),
    fc.tuple(list, fc.nat(400)).map(([text, at]) => text.slice(0, at)),
    fc.json(),
  ),
  share: 45,
  hold: (text) =>
    holds(
      text,
      async () =>
        (
          await grown({
            ...ground,
            "episodes/june/index.md": "---\ndate: 2026-06-14\nstops: [long-bed]\n---\n",
            "episodes/june/field-list.json": text,
            "episodes/june/plan.json": text,
          })
        ).told,
    ),
};

const COMMANDS = [
  ["check", "--reading"],
  ["timeline"],
  ["timeline", "--since", "2026-01-01", "--json"],
  ["brief", TODAY],
  ["ahead"],
  ["recap", "2026"],
  ["wrap", "june"],
] as const;

/** Whole commands over a small garden of which some parts are anything. */
const commands: Target<{ readonly argv: readonly string[]; readonly files: Files }> = {
  name: "whole commands",
  cases: fc.record({
    argv: fc.constantFrom(...COMMANDS),
    files: fc.record(
      {
        "notes/2026-05-16.md": lines,
        "notes/2026-07-02.md": lines,
        "weather/2026.csv": csv,
        "episodes/june/june.vtt": captionText,
        "varieties/a.md": front.map((text) => `---\n${text}\n---\n`),
        "beds/b.md": front.map((text) => `---\n${text}\n---\n`),
        "words.md": lines,
        "glossary.txt": lines,
      },
      { requiredKeys: ["notes/2026-05-16.md"] },
    ),
  }),
  share: 5,
  hold: ({ argv, files }) =>
    holds(JSON.stringify(files), () =>
      runInMemory([...argv, "--today", TODAY], {
        ...ground,
        "episodes/june/index.md": "---\ndate: 2026-06-14\nstatus: filmed\nstops: [long-bed]\n---\n",
        ...(files as Files),
      }),
    ),
};

const plainFolder = folderOf(ground);

const tableText = fc
  .tuple(
    fc.constantFrom(
      "Variety,Crop,Sown,Bed,Price",
      "Name;Supplier;Ordered;Cost (£);Private",
      "Cultivar\tPlanted\tBed\tQty\tNotes",
      "x,y",
    ),
    fc.array(
      fc.array(fc.oneof(day, number, line, fc.constantFrom("Sungold", "leek", '"', "a,b", "3/4/25", "yes")), {
        maxLength: 6,
      }),
      { maxLength: 8 },
    ),
    fc.constantFrom(",", ";", "\t"),
  )
  .map(([head, rows, between]) => [head, ...rows.map((cells) => cells.join(between))].join("\n"));

const tables: Target<string> = {
  name: "tables",
  cases: tableText,
  share: 60,
  hold: (text) =>
    holds(text, async () => {
      const { garden } = await film();
      const known = new Set<string>();
      const table = readTextTable(text) ?? { separator: ",", rows: [] };
      const shared = { folder: plainFolder, today: TODAY, order: undefined, year: undefined, isPublic: true, known };
      const made = await bringTable({ ...shared, table, name: "a.csv", records: garden, said: new Map() });
      return [made.told, made.varieties, made.notes, (await grown({ ...ground, "varieties.csv": text })).told];
    }),
};

const diaries: Target<string> = {
  name: "diaries",
  cases: fc
    .array(
      fc.tuple(
        fc.oneof(day, fc.constantFrom("12 March", "3/4", "Tues", "MAY 2019", "1st", "## 2019-05-03", "w/e 4 June", "")),
        fc.constantFrom(": ", " ", "\n", " - ", ""),
        line,
      ),
      { maxLength: 10 },
    )
    .map((entries) => entries.map((parts) => parts.join("")).join("\n")),
  share: 60,
  hold: (text) =>
    holds(text, async () => {
      const { garden } = await film();
      const shared = { folder: plainFolder, today: TODAY, order: undefined, isPublic: false, known: new Set<string>() };
      const made = await bringDiary({ ...shared, text, name: "a.txt", before: garden, year: 2019 });
      return [made.told, made.notes];
    }),
};

const voiceNotes: Target<string> = {
  name: "words of voice notes",
  cases: fc
    .array(
      fc.tuple(line, fc.constantFrom("\n", ". ", "! ", "\n\n1\n00:00:01,000 --> 00:00:02,000\n", "\r\n- ", "\n# ")),
      {
        maxLength: 8,
      },
    )
    .map((parts) => parts.flat().join("")),
  share: 60,
  hold: (text) =>
    holds(text, async () => {
      const made = await Promise.all(
        ["photos/a.txt", "photos/a.srt"].map((words) =>
          bringVoice({
            ...{ bytes: Buffer.from(text, "utf8"), text, words, sound: "photos/a.m4a", day: TODAY, bed: "Long Bed" },
            ...{ folder: plainFolder, today: TODAY, isPublic: false },
          }),
        ),
      );
      // Nothing that was said opens its note to viewers.
      for (const { records, notes } of made)
        for (const { file } of notes)
          if (records.notes.some((note) => note.place.file === file && !note.private))
            throw new Error(`${file} is open`);
      return made.map(({ notes, records }) => [notes, records.problems.map(problemText)]);
    }),
};

export const targets = [
  noteLines,
  frontMatter,
  captions,
  weather,
  photos,
  fieldLists,
  tables,
  diaries,
  voiceNotes,
  commands,
  privateLines,
  settledLines,
  pageAsks,
  otherCaptions,
  clipBoxes,
] as readonly Target<unknown>[];
