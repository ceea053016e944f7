/** `plotreel settle`: one key a question, the answer in the note, and nothing else of it touched. */
import {
  chmodSync,
  linkSync,
  lstatSync,
  mkdirSync,
  readFileSync,
  renameSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { type Effects, realEffects } from "../../src/cli/effects.ts";
import { settle } from "../../src/cli/settle-command.ts";
import type { LineReading, OfferedReading, Records } from "../../src/model.ts";
import { openRecordsFolder, readRecords } from "../../src/records/index.ts";
import { emptyFolder, run } from "../cli/run.ts";
import { event, offered, question } from "./asked.ts";

const today = "2026-07-18";
const note = "notes/2026-07-18.md";
const garden = {
  "beds/long-bed.md": "---\ntitle: Long Bed\n---\n",
  "varieties/french-breakfast.md": "---\ntitle: French Breakfast\ncrop: radish\n---\n",
};

interface Played {
  readonly out: string;
  readonly err: string;
  readonly exitCode: number;
  /** What was asked, with the keys that were offered. */
  readonly asked: readonly { readonly question: string; readonly keys: string }[];
  readonly read: (file: string) => string;
}

/** Plays the keys and lines; `asks` makes questions of unsettled lines, whatever the reader makes of them. */
async function play(
  text: string | Buffer,
  asks: Readonly<Record<string, readonly OfferedReading[]>>,
  keys: readonly (string | undefined)[],
  more: { files?: Record<string, string>; between?: (dir: string) => void; readings?: readonly LineReading[] } = {},
): Promise<Played> {
  const recordsDir = path.join(emptyFolder(), "content");
  for (const [file, content] of Object.entries({ ...garden, ...more.files, [note]: text })) {
    mkdirSync(path.dirname(path.join(recordsDir, file)), { recursive: true });
    writeFileSync(path.join(recordsDir, file), content);
  }
  const out: string[] = [];
  const err: string[] = [];
  const asked: { question: string; keys: string }[] = [];
  const left = [...keys];
  const answer = async (question: string, offers: string) => {
    asked.push({ question, keys: offers });
    if (left.length === 0) throw new Error(`nobody expected: ${question}`);
    more.between?.(recordsDir);
    return left.shift();
  };
  const effects: Effects = {
    ...realEffects(),
    canAsk: true,
    out: (line) => void out.push(line),
    err: (line) => void err.push(line),
    askKey: (question, all) => answer(question, all.map(({ key, means }) => `${key} ${means}`).join("\n")),
    askLine: (question) => answer(question, ""),
  };
  const read = (file: string) => readFileSync(path.join(recordsDir, file), "utf8");
  const records = async (): Promise<Records> => {
    const all = await readRecords(await openRecordsFolder(recordsDir), { today });
    const lines = read(note).split("\n");
    const isSettled = ({ lastLine }: LineReading) => /^\s*- =/.test((lines[lastLine] || lines[lastLine + 1]) ?? "");
    const found = more.readings ?? all.readings;
    const readings = found.map((reading): LineReading => {
      const readings = isSettled(reading) ? undefined : asks[reading.text];
      return readings === undefined ? reading : { ...reading, as: "question", events: [], readings };
    });
    return { ...all, readings };
  };
  const exitCode = await settle({ records, recordsDir, today }, effects);
  expect(left).toEqual([]);
  return { out: out.join("\n"), err: err.join("\n"), exitCode, asked, read };
}

/** The first paragraph sentence by sentence, one of them known. */
function sentencesOf(text: string): readonly LineReading[] {
  const place = { file: note, line: 1, column: 1 };
  return (text.split("\n")[0] ?? "").split(/(?<=\.) /).map((text) => ({
    place,
    lastLine: 1,
    text,
    as: text.startsWith("Cleared") ? "facts" : "story",
    events: text.startsWith("Cleared") ? [event("cleared", { crop: "pea", bed: "long-bed", day: "2026-07-16" })] : [],
    readings: [],
    private: false,
  }));
}

const open = {
  "whipped out the onions": [
    offered("picked onions from Long Bed", event("picked", { verb: "whipped out", crop: "onion", bed: "long-bed" })),
    offered("cleared onions from Long Bed", event("cleared", { verb: "whipped out", crop: "onion", bed: "long-bed" })),
    offered(""),
  ],
};

describe("an answer", () => {
  it("keeps the rights, the other name and the link of a note and of the word list", async () => {
    let dir = "";
    const own = (name: string) => path.join(dir, name);
    await play("- whipped out the onions\n", open, ["a", "y"], {
      files: { "words.md": "- rasps: raspberries\n" },
      between: (recordsDir) => {
        if (dir !== "") return;
        dir = recordsDir;
        chmodSync(own(note), 0o640);
        linkSync(own(note), own("../same-note.md"));
        mkdirSync(own("../elsewhere"));
        renameSync(own("words.md"), own("../elsewhere/words.md"));
        symlinkSync("../elsewhere/words.md", own("words.md"));
        chmodSync(own("words.md"), 0o600);
      },
    });
    expect(readFileSync(own("../same-note.md"), "utf8")).toContain("= picked onions from Long Bed");
    expect([statSync(own(note)).mode & 0o777, statSync(own(note)).nlink]).toEqual([0o640, 2]);
    expect(readFileSync(own("../elsewhere/words.md"), "utf8")).toContain("- whipped out onions: picked");
    expect(lstatSync(own("words.md")).isSymbolicLink()).toBe(true);
    expect(statSync(own("words.md")).mode & 0o777).toBe(0o600);
  });

  it("goes below the line by one key, every other byte as it was", async () => {
    const before = "\ufeff---\r\nbed: long-bed\r\n---\r\n\r\n# Bed\r\n- whipped out the onions\r\n-   wet  \r\n";
    const { read, out, asked, exitCode } = await play(before, open, ["b", "n"]);
    expect(read(note)).toBe(before.replace("onions\r\n", "onions\r\n  - = cleared onions from Long Bed\r\n"));
    expect(exitCode).toBe(0);
    expect(asked[0]).toEqual({
      question: "What does it say?",
      keys:
        "a picked onions from Long Bed\nb cleared onions from Long Bed\nn none of these: it holds no fact\n" +
        "t type it in plain words\ns skip this one\nq stop for now",
    });
    expect(out).toBe(
      [
        "",
        "Question 1 of 1",
        `${note}:6`,
        "  whipped out the onions",
        `Written below line 6 of ${note}:`,
        "  = cleared onions from Long Bed",
        "",
        "One settled.",
      ].join("\n"),
    );
  });

  it("counts from then on, and is not asked again", async () => {
    const { read } = await play("- whipped out the onions\n", open, ["a", "n"]);
    const cwd = emptyFolder();
    mkdirSync(path.join(cwd, "content/notes"), { recursive: true });
    writeFileSync(path.join(cwd, "content", note), read(note));
    const { out } = await run(["check", "--reading", "--json"], { cwd });
    expect(JSON.parse(out)).toMatchObject([
      { text: "whipped out the onions", as: "facts", events: [{ kind: "picked" }] },
    ]);
  });

  it("may be that it holds no fact", async () => {
    expect((await play("- whipped out the onions\n", open, ["n"])).read(note)).toBe(
      "- whipped out the onions\n  - = story\n",
    );
  });

  it("may be typed: read, shown back, and refused when it gives no fact", async () => {
    const { read, err, out } = await play("- whipped out the onions\n", open, [
      ...["t", "what a day"],
      ...["t", "picked 3 Red Baron onions"],
      "n",
      ...["t", "= picked 3 kg onions yesterday"],
      "y",
    ]);
    expect(err).toContain("That gives no fact.");
    expect(out).toContain('  = picked 3 bulbs "Red Baron" onion');
    expect(out).toContain("  = picked 3000 g onions, on 17 July");
    expect(read(note)).toBe("- whipped out the onions\n  - = picked 3 kg onions yesterday\n");
  });

  it("is not written when its plain line would not be read again", async () => {
    const strange = { "whipped out the onions": [offered("onions, hm", event("picked", { crop: "onion" }))] };
    const { read, err } = await play("- whipped out the onions\n", strange, ["a", "s"]);
    expect(err).toContain("would not be read again");
    expect(read(note)).toBe("- whipped out the onions\n");
  });

  it("is not written when the note changed in the meantime, and the line is asked again", async () => {
    let times = 0;
    const { read, err } = await play("- whipped out the onions\n", open, ["a", "n", "a", "n"], {
      between: (dir) => {
        times += 1;
        if (times === 1) writeFileSync(path.join(dir, note), "- rain\n- whipped out the onions\n");
      },
    });
    expect(err).toBe(`${note} was changed in the meantime, so nothing was written into it. It is read again.`);
    expect(read(note)).toBe("- rain\n- whipped out the onions\n  - = picked onions from Long Bed\n");
  });

  it("settles a paragraph with all that its other sentences say", async () => {
    const paragraph = "Cleared the peas Thursday. Whipped out the onions.\n\nRain.\n";
    const { read } = await play(paragraph, { "Whipped out the onions.": open["whipped out the onions"] }, ["a", "n"], {
      readings: sentencesOf(paragraph),
    });
    expect(read(note)).toBe(
      "Cleared the peas Thursday. Whipped out the onions.\n\n" +
        "- = cleared peas from Long Bed on 2026-07-16\n- = picked onions from Long Bed\n\nRain.\n",
    );
  });
});

describe("going through", () => {
  const two = { ...open, "on FB": [] };

  it("skips, stops, and says what is left", async () => {
    const skipped = await play("- whipped out the onions\n- on FB\n", two, ["s", "q"]);
    expect(skipped.out).toContain("Question 2 of 2");
    expect(skipped.out).toMatch(/\nTwo still open\.$/);
    const ended = await play("- whipped out the onions\n- on FB\n", two, [undefined]);
    expect(ended.out).toMatch(/\nTwo still open\.$/);
    for (const { read } of [skipped, ended]) expect(read(note)).toBe("- whipped out the onions\n- on FB\n");
  });

  it("passes over what no answer can be written below, and says so", async () => {
    const { read, err, out } = await play("> whipped out the onions\n", {}, [], {
      readings: [{ ...question("whipped out the onions", []), place: { file: note, line: 1, column: 3 }, lastLine: 1 }],
    });
    expect(err).toContain("Below this line no answer can be written so that it belongs to it.");
    expect(out).toMatch(/\nOne still open\.$/);
    expect(read(note)).toBe("> whipped out the onions\n");
  });

  it("says so when there is nothing to settle", async () => {
    expect((await play("- rain\n", {}, [])).out).toBe("No line is a question. Nothing to settle.");
  });

  it("needs somebody to ask", async () => {
    const { exitCode, err } = await run(["settle"], { cwd: emptyFolder() });
    expect(exitCode).toBe(2);
    expect(err).toContain("nobody is at this terminal to answer");
  });
});

describe("what an answer teaches", () => {
  const fb = {
    "30 FB in": [
      offered(
        "sowed 30 French Breakfast in Long Bed",
        event("sowed", { variety: "french-breakfast", bed: "long-bed" }),
      ),
    ],
  };

  it("is kept in the garden's words, and used from then on", async () => {
    const { read, asked, out } = await play("---\nbed: long-bed\n---\n- 30 FB in\n- sowed 10 FB\n", fb, ["a", "y"]);
    expect(asked[1]).toEqual({
      question: 'Does "FB" always mean French Breakfast?',
      keys: "y yes, keep it in words.md\nn no",
    });
    expect(out).toContain("Kept in words.md: FB: French Breakfast");
    expect(read("words.md")).toBe(
      "What words mean in this garden: a word, a colon, its meaning.\n\n- FB: French Breakfast\n",
    );
  });

  it("goes below the words there are, and is not asked where it is known", async () => {
    const known = "- rasps: raspberries\n- FB: French Breakfast\n";
    const { read } = await play("---\nbed: long-bed\n---\n- 30 FB in\n", fb, ["a"], { files: { "words.md": known } });
    expect(read("words.md")).toBe(known);
    const added = await play("- whipped out the onions\n", open, ["a", "y"], { files: { "words.md": known } });
    expect(added.read("words.md")).toBe(`${known}- whipped out onions: picked\n`);
  });

  it("is kept before the note is written, or a run that ends between the two would never ask for it again", async () => {
    const text = "---\nbed: long-bed\n---\n- 30 FB in\n";
    const seen: string[] = [];
    await play(text, fb, ["a", "y"], { between: (dir) => seen.push(readFileSync(path.join(dir, note), "utf8")) });
    expect(seen).toEqual([text, text]);
  });

  it("is kept once when another run keeps it in this very moment", async () => {
    const words = "- rasps: raspberries\n";
    let asked = 0;
    const { read } = await play("---\nbed: long-bed\n---\n- 30 FB in\n", fb, ["a", "y"], {
      files: { "words.md": words },
      between: (dir) => {
        asked += 1;
        if (asked === 2) writeFileSync(path.join(dir, "words.md"), `${words}- FB: French Breakfast\n`);
      },
    });
    expect(read("words.md")).toBe(`${words}- FB: French Breakfast\n`);
  });

  it("is not kept unless the person says so", async () => {
    const { read } = await play("---\nbed: long-bed\n---\n- 30 FB in\n", fb, ["a", "n"]);
    expect(() => read("words.md")).toThrow("ENOENT");
  });
});
