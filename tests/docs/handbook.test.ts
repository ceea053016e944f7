/**
 * The handbook as somebody reads it who has nothing yet: its pages one after the other, its examples run in an empty folder or in
 * a garden just begun, and every command it names one that there is.
 */
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { handbookFiles, withWays } from "../../scripts/docs/handbook.ts";
import { emptyFolder, run } from "../cli/run.ts";
import { recordsOf } from "../records/records-of.ts";

const read = (file: string) => readFileSync(path.resolve("docs", file), "utf8");

const BEGIN = ["start", "--name", "Plot Nine", "--place", "skip", "--units", "metric", "--photos", "none", "--no-open"];
const MONTHS = "January February March April May June July August September October November December".split(" ");

/** What a page shows, from top to bottom: a day as a heading, a file with its name above it, commands, and what they say. */
type Shown =
  | { readonly is: "day"; readonly day: string }
  | { readonly is: "block"; readonly kind: string; readonly file?: string | undefined; readonly text: string };

function shownOn(page: string): readonly Shown[] {
  const parts = /^## (\d+) (\w+) (\d{4})|(?:`([\w./-]+)`:\n\n)?^```(\w*)\n([\s\S]*?)^```$/gmu;
  return [...page.matchAll(parts)].map(([, date, month = "", year, file, kind = "", text = ""]): Shown => {
    if (date === undefined) return { is: "block", kind, file, text };
    const number = String(MONTHS.indexOf(month) + 1).padStart(2, "0");
    return { is: "day", day: `${year}-${number}-${date.padStart(2, "0")}` };
  });
}

function argumentsOf(command: string): readonly string[] {
  const words = command.replace(/^(?:npx )?plotreel /u, "").match(/"[^"]*"|\S+/gu) ?? [];
  return words.map((word) => word.replaceAll('"', ""));
}

/** Runs all that a page shows; gives how many commands ran, and how many answers were held against what it says. */
async function followed(page: string, dir: string): Promise<readonly [commands: number, answers: number]> {
  let today = "2026-11-30";
  let said = "";
  let commands = 0;
  let answers = 0;
  for (const shown of shownOn(page)) {
    if (shown.is === "day") today = shown.day;
    else if (shown.file !== undefined) {
      const file = path.join(dir, shown.file);
      mkdirSync(path.dirname(file), { recursive: true });
      writeFileSync(file, shown.text);
    } else if (shown.kind === "sh") {
      for (const command of shown.text.trim().split("\n")) {
        const { exitCode, out, err } = await run(argumentsOf(command), { cwd: dir, today });
        expect([command, exitCode, err], out).toEqual([command, 0, expect.anything()]);
        said = `${out}\n${err}`;
        commands += 1;
      }
    } else if (shown.kind === "text") {
      let from = 0;
      for (const line of shown.text.trim().split("\n")) {
        const at = said.indexOf(line, from);
        expect(at, `“${line}” is not said, or not there:\n${said}`).toBeGreaterThanOrEqual(0);
        from = at + line.length;
      }
      answers += 1;
    } else expect.fail(`A block that nobody runs: ${shown.text}`);
  }
  return [commands, answers];
}

describe("a first season", () => {
  it("goes from an empty folder to the film of the year, as it stands", async () => {
    const dir = emptyFolder();
    expect(await followed(read("first-season.md"), dir)).toEqual([9, 8]);
    expect(readdirSync(path.join(dir, "out")).sort()).toEqual(["briefs", "private", "public", "recaps", "wraps"]);
  }, 120_000);
});

describe("a page of the year", () => {
  it.each([
    ["sowing.md", 2, 1],
    ["picking.md", 2, 2],
    ["losses.md", 2, 2],
    ["seed-order.md", 1, 1],
    ["keeping-it-safe.md", 1, 0],
  ])(
    "%s says what happens",
    async (file, commands, answers) => {
      const dir = emptyFolder();
      await run(BEGIN, { cwd: dir, today: "2026-03-01" });
      rmSync(path.join(dir, "notes"), { recursive: true });
      expect(await followed(read(file), dir)).toEqual([commands, answers]);
    },
    60_000,
  );
});

it("the seed order has the house, and what was saved", async () => {
  const dir = emptyFolder();
  await run(BEGIN, { cwd: dir, today: "2026-03-01" });
  rmSync(path.join(dir, "notes"), { recursive: true });
  await followed(read("seed-order.md"), dir);
  const list = readFileSync(path.join(dir, "out/recaps/2026-seed-order.csv"), "utf8");
  expect(list).toMatch(/^Penrow Seeds,"?Sungold/mu);
  expect(list).toContain("Boltardy");
}, 60_000);

describe("the handbook", () => {
  it("has every page of docs/ in its order, once", () => {
    const pages = readdirSync(path.resolve("docs")).filter((file) => file.endsWith(".md") && file !== "README.md");
    expect(handbookFiles.toSorted()).toEqual(pages.toSorted());
    for (const file of handbookFiles) expect(read("README.md")).toContain(`](${file})`);
  });

  it.each(handbookFiles)("%s leads on, and everywhere it leads there is a page", (file) => {
    const page = read(file);
    expect(withWays(file, page)).toBe(page);
    for (const [, to = "", anchor] of page.matchAll(/\]\((?!https?:)([\w./-]*)(#[\w-]+)?\)/gu)) {
      const target = path.resolve("docs", to === "" ? file : to);
      const text = readFileSync(target, "utf8");
      if (anchor === undefined) continue;
      const anchors = [...text.matchAll(/^#+ (.*)$/gmu)].map(([, heading = ""]) => anchorOf(heading));
      expect(anchors, `${file} leads to ${to}${anchor}`).toContain(anchor);
    }
  });

  it("shows in its other pages only what a record may say, and data that can be read", async () => {
    const kinds = ["garden.md", "beds/long-bed.md", "varieties/crown-prince.md", "photos/long-bed/shot.md"];
    let blocks = 0;
    for (const file of ["photos.md", "publishing.md", "records.md", "filming-day.md", "workbench.md", "planning.md"])
      for (const shown of shownOn(read(file))) {
        if (shown.is !== "block") continue;
        const { kind, text } = shown;
        if (kind === "json") expect(() => JSON.parse(text), file).not.toThrow();
        else if (kind === "yaml" || kind === "markdown") {
          const front = text.startsWith("---") ? text : `---\n${text}---\n`;
          // Varieties that an example names have no file here, which is a warning.
          const told = await Promise.all(
            kinds.map(async (at) => {
              const { problems } = await recordsOf({ [at]: front, "photos/long-bed/shot.jpg": "" }, "2026-07-18");
              return problems.filter((problem) => problem.file === at && problem.severity === "error");
            }),
          );
          expect(Math.min(...told.map(({ length }) => length)), `${file}: ${text}${JSON.stringify(told)}`).toBe(0);
        } else if (kind !== "sh" && kind !== "") expect.fail(`${file} has a block of ${kind}, which nobody reads.`);
        blocks += 1;
      }
    expect(blocks).toBeGreaterThan(10);
  });

  it("names no command and no flag that there is not", () => {
    const commands = new Map(
      read("commands.md")
        .split(/^## plotreel /mu)
        .slice(1)
        .map((part) => [part.slice(0, part.indexOf("\n")), part] as const),
    );
    let named = 0;
    for (const file of [...handbookFiles, "../README.md"]) {
      for (const [, command = "", rest = ""] of read(file).matchAll(/`?(?:npx )?plotreel ([a-z]+)\b([^`\n|]*)/gu)) {
        // "plotreel check" in a sentence goes on in words; only a command's own flags begin with two hyphens.
        const help = commands.get(command);
        if (help === undefined && rest.startsWith(".")) continue;
        const flags = rest.match(/(?<=\s)--[a-z-]+/gu) ?? [];
        if (help === undefined) expect(flags, `${file}: plotreel ${command}${rest}`).toEqual([]);
        else for (const flag of flags) expect(help, `${file}: plotreel ${command} ${flag}`).toContain(flag);
        named += 1;
      }
    }
    expect(named).toBeGreaterThan(80);
  });
});

/** As the places that show Markdown make it of a heading. */
function anchorOf(heading: string): string {
  return `#${heading
    .toLowerCase()
    .replace(/[^\p{L}\p{N} -]/gu, "")
    .replaceAll(" ", "-")}`;
}
