/** The files and commands of docs/bringing-in.md, as somebody would try them one after the other. */
import { readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { expect, it } from "vitest";
import { columnMeanings } from "../../src/records/index.ts";
import { run } from "../cli/run.ts";
import { gardenWith, today } from "../past/bringing.ts";

const page = readFileSync(path.resolve("docs/bringing-in.md"), "utf8");

/** "npx plotreel names --join "Top Border" "Top Bed"" as its arguments. */
function argumentsOf(command: string): readonly string[] {
  const words = command.replace(/^npx plotreel /, "").match(/"[^"]*"|\S+/g) ?? [];
  return words.map((word) => word.replaceAll('"', ""));
}

it("give what the page says they give", async () => {
  const dir = gardenWith({ "beds/top-border.md": "---\ntitle: Top Border\n---\n" });
  let out = "";
  let commands = 0;
  let shown = 0;
  for (const [, name, kind, text = ""] of page.matchAll(/(?:`([\w.-]+)`:\n\n)?```(\w+)\n([\s\S]*?)```\n/g)) {
    if (name !== undefined) writeFileSync(path.join(dir, name), text);
    else if (kind === "sh") {
      const ran = await run(argumentsOf(text.trim()), { cwd: dir, today });
      commands += 1;
      out = ran.out;
      // The bed of the last one has a file, as the page goes on to say.
      if (text.includes("--join")) expect(ran.err).toContain('beds/top-border.md describes "Top Border"');
      else expect([text, ran.err]).toEqual([text, ""]);
    } else if (kind === "text") {
      shown += 1;
      expect(out).toContain(text.trimEnd());
    }
  }
  expect([commands, shown]).toEqual([5, 3]);
});

it("name every meaning that a column can have", () => {
  const table = page.slice(page.indexOf("| a column may hold"), page.indexOf("Each line is read back"));
  const named = table.split("\n").flatMap((row) => (row.split("|")[1] ?? "").split(",").map((word) => word.trim()));
  expect(named).toEqual(expect.arrayContaining(Object.keys(columnMeanings)));
});
