/** A garden of one note: its pages show what was written, and nothing that is not there. */
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { parseHTML } from "linkedom";
import { beforeAll, describe, expect, it } from "vitest";
import { emptyFolder, run } from "../cli/run.ts";
import { brokenLinks, filesOf } from "./built-site.ts";

let out: string;

beforeAll(async () => {
  const cwd = emptyFolder();
  mkdirSync(path.join(cwd, "content/notes"), { recursive: true });
  writeFileSync(path.join(cwd, "content/garden.md"), "---\nname: A tiny garden\nlanguage: en-GB\n---\n");
  writeFileSync(
    path.join(cwd, "content/notes/2026-07-16-long-bed.md"),
    "---\nbed: Long Bed\n---\n\n- planted 12 Musselburgh leek, 20 cm apart, row 2\n- sowed 20 radish between the leeks\n",
  );
  const { exitCode, err } = await run(["publish", "--hold-back"], { cwd });
  expect(exitCode, err).toBe(0);
  out = path.join(cwd, "out");
}, 120_000);

function pageOf(file: string): Document {
  return parseHTML(readFileSync(path.join(out, file), "utf8")).document as unknown as Document;
}

const texts = (page: Document, selector: string) =>
  [...page.querySelectorAll(selector)].map(({ textContent }) => (textContent ?? "").replace(/\s+/gu, " ").trim());

describe("a garden of one note", () => {
  it("shows on its first page what grows, the crop without a variety too", () => {
    const home = pageOf("public/index.html");
    expect(texts(home, "main h2")).toEqual(["Growing now", "What changed this week"]);
    expect(texts(home, ".newest .name")).toEqual(["Musselburgh leek", "Radishes"]);
    expect(texts(home, ".newest .how")).toEqual([
      "Growing in Long Bed since 16 July.",
      "In Long Bed: Sown on 16 July between the leeks.",
    ]);
    expect(home.querySelector(".newest a[href='/beds/long-bed/']")).not.toBeNull();
  });

  it("lists the crop without a variety, and counts it as one", () => {
    const list = pageOf("public/varieties/index.html");
    expect(texts(list, ".crop-group h2")).toEqual(["Leeks", "Radishes"]);
    expect(texts(list, ".plate p")).toEqual(["One variety of one crop, and one crop without a variety’s name."]);
    expect(list.querySelectorAll(".view"), "no room for photos that nobody took").toHaveLength(2);
    expect(list.querySelector(".unpictured")).not.toBeNull();
  });

  it("never shows viewers an empty place, nor a way to one", async () => {
    for (const file of (await filesOf(path.join(out, "public"))).filter((one) => one.endsWith(".html"))) {
      if (/^(?:404|episodes\/index|recaps\/index)/u.test(file)) continue;
      const page = pageOf(`public/${file}`);
      expect(texts(page, ".empty:not([hidden])"), file).toEqual([]);
      for (const section of page.querySelectorAll("main section:not([hidden])"))
        expect(section.querySelector("p, li, dd, td, svg, img"), `${file}: ${section.id}`).not.toBeNull();
      expect(texts(page, "nav a"), file).not.toContain("Episodes");
    }
    expect(await brokenLinks(path.join(out, "public"), "/")).toEqual([]);
  });

  it("tells its person on the private side what could stand there", () => {
    const hints = texts(pageOf("private/index.html"), "[aria-labelledby=not-yet-shown] li");
    expect(hints).toEqual([
      "The first page leads with the varieties of the newest film. None is published yet.",
      "No variety has a photo of its own yet. One in photos/varieties/NAME/ shows viewers which it was.",
      "Two photos from the same spot, ten days apart or more, stand side by side on the first page.",
    ]);
  });
});
