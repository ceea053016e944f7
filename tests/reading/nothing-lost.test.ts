/** Every line of a note ends as facts, as a question or as story, and none is left out. */
import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { recordsOf } from "../records/records-of.ts";

describe.each(["garden-1", "garden-2"])("%s, written by somebody who had read README alone", (folder) => {
  it("has a reading for every line that says something", async () => {
    const base = `tests/corpus/gardens/${folder}`;
    const files = Object.fromEntries(
      ["notes", "beds", "varieties"]
        .flatMap((part) => readdirSync(`${base}/${part}`).map((file) => `${part}/${file}`))
        .concat("garden.md")
        .map((file) => [file, readFileSync(`${base}/${file}`, "utf8")]),
    );
    const { readings } = await recordsOf(files);
    const { lines } = JSON.parse(readFileSync(`${base}/labels.json`, "utf8")) as {
      lines: readonly { file: string; line: number; text: string }[];
    };
    const dated = new Set(readings.map(({ place }) => place.file));
    const lost = lines.filter(
      ({ file, line, text }) =>
        dated.has(file) &&
        !/^[|\s:-]+$|:\s*$/.test(text) &&
        !text.startsWith("|") &&
        !readings.some(
          ({ place, lastLine }) =>
            place.file === file &&
            place.line <= line &&
            line <= Math.max(lastLine, place.line + text.split("\n").length - 1),
        ),
    );
    expect(lost.map(({ file, line, text }) => `${file}:${line} ${text}`)).toEqual([]);
    expect(
      readings.every(
        ({ as, events, readings: offered }) =>
          // A question may be one that no reading explains: "the other two as well".
          (as === "facts" ? events.length > 0 : events.length === 0) && (as === "question" || offered.length === 0),
      ),
    ).toBe(true);
  });
});
