import { chmodSync, readFileSync, statSync, symlinkSync, writeFileSync } from "node:fs";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { run } from "../cli/run.ts";
import { filesIn, gardenWith, recordsIn, today } from "./bringing.ts";

const names = (dir: string, ...args: readonly string[]) => run(["names", ...args], { cwd: dir, today });

const garden = {
  "beds/long-bed.md": "---\ntitle: Long Bed\n---\n",
  "varieties/uchiki-kuri.md": "---\ntitle: Uchiki Kuri\ncrop: squash\nsource: Secret Nursery\n---\n",
  "notes/2025-05-16.md":
    "---\ndate: 2025-05-16\nbed: Sunny Corner\n---\n\n- planted 6 Sungold tomatoes in Sunny Corner\n- acquired: Uchiki Kuri from Secret Nurserry\n",
  "notes/2025-05-20.md": "- planted 2 Oocheeky Curry squash in Sunny Corner\n- planted 3 leeks in the Sunny Coner\n",
  "notes/2025-06-01.md": "The sunny corner was dry.\n\n- picked 2 kg Sungold tomatoes from Sunny Corner\n",
};

describe("names that no file describes", () => {
  it("are told with how often, when, where, and what they may be a slip for", async () => {
    const { out, exitCode } = await names(gardenWith(garden));
    expect(exitCode).toBe(0);
    const said = out.replace(/\n {2,3}(?=\S)/g, " ").replace(/\s+/g, " ");
    expect(said).toContain(
      "Sunny Corner: 5 lines (1 still asked about), 16 May 2025 to 1 June 2025, notes/2025-05-16.md and 2 more",
    );
    expect(said).toContain("Sungold: 2 lines");
    expect(said).toContain(
      'Secret Nurserry: 1 line, 16 May 2025, notes/2025-05-16.md spelled nearly like "Secret Nursery", which a file describes',
    );
    expect(said).toContain('sounds like "Uchiki Kuri", which a file describes');
    expect(said).not.toContain("Long Bed");
  });

  it("count in lines that are still asked about, and where no other line has them", async () => {
    const { out } = await names(
      gardenWith({
        "notes/2025-05-16.md":
          "- planted 3 Sungold tomatoes in Sunny Corner\n- planted twelve leeks there too in Sunny Corner\n- put Sungold and Kelvedon in\n",
      }),
    );
    expect(out).toContain("Sunny Corner: 2 lines (1 still asked about), 16 May 2025");
    expect(out).toContain("Sungold: 2 lines (1 still asked about), 16 May 2025");
    expect(out).toContain("Kelvedon: 1 line (still asked about), 16 May 2025");
  });

  it("are none where every name has its file", async () => {
    const { out } = await names(gardenWith({ "beds/long-bed.md": garden["beds/long-bed.md"] }));
    expect(out).toBe("Every name your notes use has its file.");
  });
});

describe("joining two names", () => {
  it("shows each line before and after, and changes nothing", async () => {
    const dir = gardenWith(garden);
    const before = filesIn(dir);
    const { out, exitCode } = await names(dir, "--join", "Secret Nurserry", "Secret Nursery");
    expect(exitCode).toBe(0);
    expect(out).toContain("notes/2025-05-16.md\n");
    expect(out).toContain("   7 - - acquired: Uchiki Kuri from Secret Nurserry");
    expect(out).toContain("     + - acquired: Uchiki Kuri from Secret Nursery");
    expect(out).toContain("1 line in 1 file.");
    expect(out).toContain("Nothing was written yet.");
    expect(filesIn(dir)).toEqual(before);
  });

  it("changes these lines alone, in their own encoding, ends, rights and links", async () => {
    const dir = gardenWith(garden);
    const target = path.join(dir, ".kept.md");
    const note = path.join(dir, "notes/2025-07-01.md");
    const text = "\ufeff- caf\u00e9 corner weeded\r\n- planted 2 Sungold tomatoes in Sunny Corner\r\nSunny Corner!";
    writeFileSync(note, text);
    chmodSync(note, 0o640);
    const old = Buffer.from("- watered Sunny Corner, 20 \xb0C\n", "latin1");
    writeFileSync(target, old);
    symlinkSync("../.kept.md", path.join(dir, "notes/2025-07-02.md"));
    const { out, exitCode } = await names(dir, "--join", "Sunny Corner", "Long Bed", "--write");
    expect(out).toContain("Changed: 5 files.");
    expect(exitCode).toBe(0);
    expect(readFileSync(note, "utf8")).toBe(text.replaceAll("Sunny Corner", "Long Bed"));
    expect(statSync(note).mode & 0o777).toBe(0o640);
    expect(readFileSync(target)).toEqual(Buffer.from("- watered Long Bed, 20 \xb0C\n", "latin1"));
    const { beds, notes } = await recordsIn(dir);
    expect(beds.has("sunny-corner")).toBe(false);
    expect(notes.find(({ day }) => day === "2025-05-16")?.beds).toEqual(["long-bed"]);
    // A corner that is sunny is no name.
    expect(filesIn(dir)["notes/2025-06-01.md"]).toContain("The sunny corner was dry.");
  });

  it("leaves what was made of the records, and what lies beside them", async () => {
    const made = {
      "out/briefs/may/brief.md": "# Sunny Corner\n",
      "drafts/letter.md": "Sunny Corner is dry.\n",
      "episodes/may/index.md": "---\ndate: 2025-05-16\nstops: [Sunny Corner]\n---\n",
      "episodes/may/wrap.md": "Sunny Corner was shown.\n",
    };
    const dir = gardenWith({ ...garden, ...made });
    await names(dir, "--join", "Sunny Corner", "Long Bed", "--write");
    const after = filesIn(dir);
    for (const file of ["out/briefs/may/brief.md", "drafts/letter.md", "episodes/may/wrap.md"] as const)
      expect(after[file]).toBe(made[file]);
    expect(after["episodes/may/index.md"]).toContain("stops: [Long Bed]");
    expect(after["notes/2025-05-20.md"]).toContain("in Long Bed");
  });

  it("joins a name that only a line still asked about has", async () => {
    const dir = gardenWith({ "notes/2025-05-16.md": "- put Sungold and Kelvedon in\n" });
    await names(dir, "--join", "Kelvedon", "Kelvedon Wonder", "--write");
    expect(filesIn(dir)["notes/2025-05-16.md"]).toBe("- put Sungold and Kelvedon Wonder in\n");
  });

  it("leaves longer names and paths in which the name stands", async () => {
    const dir = gardenWith({
      "notes/2025-05-16.md":
        "- planted 2 Crown squash in Far Bed\n- planted 3 Crown Prince squash in Far Bed\n\n![](../photos/Crown/a.jpg)\n",
    });
    const { out } = await names(dir, "--join", "Crown", "Uchiki Kuri");
    expect(out).toContain("1 line in 1 file.");
    expect(out).toContain("+ - planted 2 Uchiki Kuri squash in Far Bed");
  });

  it("is done on a yes at the terminal, and not on a no", async () => {
    const dir = gardenWith(garden);
    const before = filesIn(dir);
    const asked = (key: string) =>
      run(["names", "--join", "Secret Nurserry", "Secret Nursery"], { cwd: dir, today, keys: [key] });
    expect((await asked("n")).out).toContain("Nothing was written yet.");
    expect(filesIn(dir)).toEqual(before);
    expect((await asked("y")).out).toContain("Changed: 1 file.");
    expect(filesIn(dir)["notes/2025-05-16.md"]).toBe(
      garden["notes/2025-05-16.md"].replace("Secret Nurserry", "Secret Nursery"),
    );
  });

  it("changes the table of varieties too, and tells which lines say the name in other letters", async () => {
    const dir = gardenWith({
      "varieties.csv": "Variety,Source\nUchiki Kuri,Penrow Seed\n",
      "notes/2025-05-16.md": "- planted 2 Sungolds tomatoes in Far Bed\n- planted 3 Sungold tomatoes in Far Bed\n",
    });
    await names(dir, "--join", "Penrow Seed", "Penrow Seeds", "--write");
    expect(filesIn(dir)["varieties.csv"]).toBe("Variety,Source\nUchiki Kuri,Penrow Seeds\n");
    expect((await names(dir, "--join", "Penrow Seeds", "Penrow, Seeds")).err).toContain("would part its cells");
    const { out } = await names(dir, "--join", "Sungold", "Sun Gold");
    expect(out).toContain("Named in other letters, and left as it is: notes/2025-05-16.md:1.");
  });

  it.each([
    ["Long Bed", "Sunny Corner", 'beds/long-bed.md describes "Long Bed"'],
    ["Sunny Cornr", "Long Bed", 'Nothing in the notes is called "Sunny Cornr". Did you mean "Sunny Corner"?'],
    ["Sunny Corner", "Sunny Corner", "These are the same letters"],
  ])("refuses %s to %s", async (from, to, why) => {
    const { exitCode, err } = await names(gardenWith(garden), "--join", from, to);
    expect(exitCode).toBe(2);
    expect(err).toContain(why);
  });

  it("says when this is a new name and not a joining, and which photos keep the old one", async () => {
    const dir = gardenWith({ ...garden, "photos/sunny-corner/gate/a.jpg": "x" });
    const { out } = await names(dir, "--join", "Sunny Corner", "Bottom Bed");
    expect(out).toContain('Nothing is called "Bottom Bed" so far');
    expect(out).toContain("photos/sunny-corner/ keeps its name");
  });
});
