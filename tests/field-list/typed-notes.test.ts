/** A note on the phone is read while it is typed: by the reader of note lines itself, carried in the list's own script. */

import { setTimeout as after } from "node:timers/promises";
import { runInNewContext } from "node:vm";
import { gzipSync } from "node:zlib";
import { parseHTML } from "linkedom";
import { expect, test, vi } from "vitest";
import { phoneScriptOf } from "../../scripts/build/phone-scripts.ts";
import { readTyped, type TypedLine, typedGarden, typedNames } from "../../src/records/index.ts";
import { fieldListPage } from "../../src/site/field-list/field-list-page.ts";
import { typedInto } from "../../src/site/field-list/phone/typed.ts";
import { readerScript } from "../../src/site/phone-page.ts";
import { preparedText } from "../../src/store/index.ts";
import { recordsOf } from "../records/records-of.ts";
import { smallList } from "./tour-list.ts";

const files = {
  "garden.md": "---\nname: Test Garden\nunits: metric\nlanguage: en-GB\n---\n",
  "beds/long-bed.md": "---\ntitle: Long Bed\nalso called: [the long one]\n---\n",
  "varieties/musselburgh.md": "---\ntitle: Musselburgh\ncrop: leek\n---\n",
  "notes/2026-05-20.md": "- planted 6 Crown Prince squash in Top Bed\n",
};
const garden = typedGarden(await recordsOf(files));
const context = { garden, names: typedNames(garden), day: "2026-07-18", beds: ["long-bed"] };
const note = [
  "- planted 12 Musselburgh, 15 cm apart",
  "picked 1.4 kg Crown Prince from Top Bed yesterday",
  "",
  "plantd 3 Musselburgh",
  "what a day",
  "trouble: slugs on the leeks",
  "the leeks are up and doing well, might sow a few more next week",
].join("\n");

test("line by line, with the likeliest ways to take what is not sure", () => {
  const lines = readTyped(note, context);
  expect(lines.map(({ as, says }) => [as, says[0]])).toEqual([
    ["facts", "planted 12 Musselburgh in Long Bed, 15 cm apart"],
    ["facts", 'picked 1400 g "Crown Prince" squash from Top Bed'],
    ["question", "planted 3 Musselburgh in Long Bed"],
    ["story", undefined],
    ["facts", "trouble: slugs on leeks in Long Bed"],
    [
      "question",
      "emerged: leeks in Long Bed; plan by 2026-07-26: might sow a few more next week, only leeks, in Long Bed",
    ],
  ]);
  expect(lines.at(-1)?.says).toContain("emerged: leeks in Long Bed; doing: leeks in Long Bed, doing well");
});

test("as the note is read at home", async () => {
  const items = note.split("\n").filter((line) => line !== "");
  const text = `## Long Bed\n\n${items.map((line) => `- ${line.replace(/^- /, "")}`).join("\n")}\n`;
  const { readings } = await recordsOf({ ...files, "notes/2026-07-18.md": text });
  const atHome = readings.filter(({ place }) => place.file === "notes/2026-07-18.md");
  expect(readTyped(note, context).map(({ text, as }) => [text, as])).toEqual(atHome.map(({ text, as }) => [text, as]));
});

test("and what a line half typed calls a plant is forgotten", () => {
  expect(readTyped('planted 3 "Wonderfu" tomatoes', context)[0]?.says[0]).toContain("Wonderfu");
  expect(context.names.asBuilt).toBe(true);
});

test("the same on the phone, from a script that stays small and needs nothing of Node", async () => {
  const script = await phoneScriptOf("records/typed-reading.ts", { globalName: "reader" });
  const read = `const garden = ${JSON.stringify(garden)}; JSON.stringify(reader.readTyped(${JSON.stringify(note)}, { garden, names: reader.typedNames(garden), day: "2026-07-18", beds: ["long-bed"] }))`;
  const lines = JSON.parse(runInNewContext(`${script}${read}`, {}) as string) as readonly TypedLine[];
  expect(lines).toEqual(readTyped(note, context));
  const [list, outdoors] = [preparedText("phone/list.js"), preparedText("phone/outdoors.js")];
  const size = gzipSync(list + readerScript()).length;
  console.info(`Script of the field list with its reader, compressed: ${size} bytes; alone ${gzipSync(list).length}`);
  // The reader is one file for all pages of a site.
  expect(gzipSync(list + outdoors).length).toBeLessThan(20_000);
  // 80,000 are wanted; tables and weights alone are more. Feasts of more countries and offers that read back took 3,000 of the
  // last growth, regions' words and rules of other files went; a site's pages share it now. It must not grow further.
  expect(size).toBeLessThan(186_500);
  for (const one of [list, outdoors, readerScript()]) expect(one).not.toMatch(/<\/script|<!--/i);
});

test("the page carries the names, and has a place for what is understood", async () => {
  const page = fieldListPage({ ...(await smallList()), reads: garden });
  const { document } = parseHTML(page);
  const data = JSON.parse(document.getElementById("list")?.textContent ?? "") as { reads: unknown };
  expect(data.reads).toEqual(JSON.parse(JSON.stringify(garden)));
  expect(document.querySelector("#note-sheet #note-reading")).not.toBeNull();
});

test("once nothing more is typed for a moment", async () => {
  const { document } = parseHTML("<ul></ul>");
  vi.stubGlobal("document", document);
  try {
    const list = document.querySelector("ul") as unknown as HTMLElement;
    const show = typedInto(list, garden);
    show("planted 1 Mussel", "long-bed", "2026-07-18");
    show("planted 12 Musselburgh\nwhat a day", "long-bed", "2026-07-18");
    expect(list.textContent).toBe("");
    await after(250);
    expect([...list.children].map((row) => [row.getAttribute("data-as"), row.textContent])).toEqual([
      ["facts", "= planted 12 Musselburgh in Long Bed"],
      ["story", "– story"],
    ]);
  } finally {
    vi.unstubAllGlobals();
  }
});
