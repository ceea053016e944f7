/** A person's own files under hard conditions: another encoding, rights, links, two writers at once, a run that was killed. */
import { execFileSync } from "node:child_process";
import {
  chmodSync,
  existsSync,
  linkSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { beforeEach, describe, expect, test } from "vitest";
import { editText } from "../../src/cli/write-files.ts";
import { createText, writeWhole } from "../../src/store/index.ts";
import { acceptPromises } from "../../src/wrap/index.ts";

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(path.join(tmpdir(), "plotreel-write-"));
});

const at = (name: string) => path.join(folder, name);
const record = "---\r\ntitle: Café à 20 °C\r\ndate: 2026-05-20\r\n---\r\nDéjà vu.\r\n";
const longer = (text: string) => ({ text: text.replace("date:", "kept: naïve\r\ndate:") });

describe("changing a file", () => {
  test.each([
    ["UTF-8", Buffer.from(record)],
    ["UTF-8 with a mark", Buffer.from(`\ufeff${record}`)],
    ["Windows-1252", Buffer.from(record, "latin1")],
    ["UTF-16", Buffer.from(`\ufeff${record}`, "utf16le")],
    ["UTF-16, the other way round", Buffer.from(`\ufeff${record}`, "utf16le").swap16()],
  ])("keeps %s as it is, and every other byte", async (_, bytes) => {
    writeFileSync(at("a.md"), bytes);
    expect(await editText(at("a.md"), longer)).toEqual({});
    const after = readFileSync(at("a.md"));
    const added = after.length - bytes.length;
    const from = after.findIndex((byte, index) => byte !== bytes[index]);
    expect(Buffer.concat([after.subarray(0, from), after.subarray(from + added)]).equals(bytes)).toBe(true);
    expect(await editText(at("a.md"), (text) => ({ text: text.replace("kept: naïve\r\n", "") }))).toEqual({});
    expect(readFileSync(at("a.md")).equals(bytes)).toBe(true);
  });

  test("leaves a file alone whose encoding has not the letters", async () => {
    writeFileSync(at("a.md"), Buffer.from(record, "latin1"));
    const { refused } = await editText(at("a.md"), (text) => ({ text: `${text}ł` }));
    expect(refused).toContain("Windows-1252");
    expect(readFileSync(at("a.md")).equals(Buffer.from(record, "latin1"))).toBe(true);
  });

  test("keeps rights, a second name, and a link", async () => {
    writeFileSync(at("a.md"), record);
    chmodSync(at("a.md"), 0o600);
    symlinkSync(at("a.md"), at("link.md"));
    await editText(at("link.md"), longer);
    expect(statSync(at("a.md")).mode & 0o777).toBe(0o600);
    expect(readFileSync(at("a.md"), "utf8")).toContain("naïve");
    linkSync(at("a.md"), at("b.md"));
    await editText(at("a.md"), (text) => ({ text: text.replace("naïve", "twice") }));
    expect(readFileSync(at("b.md"), "utf8")).toContain("twice");
    expect(statSync(at("b.md")).nlink).toBe(2);
    expect(readdirSync(folder).sort()).toEqual(["a.md", "b.md", "link.md"]);
  });

  test("stops when another program changes it meanwhile", async () => {
    writeFileSync(at("a.md"), record);
    const { refused } = await editText(at("a.md"), (text) => {
      writeFileSync(at("a.md"), "saved by hand\n");
      return longer(text);
    });
    expect(refused).toContain("Another program");
    expect(readFileSync(at("a.md"), "utf8")).toBe("saved by hand\n");
  });

  test.runIf(process.platform === "linux")("a full disk leaves a file of two names as it was", () => {
    const long = `---\n${"A dry wind from the east.\n".repeat(300)}`;
    writeFileSync(at("a.md"), long);
    linkSync(at("a.md"), at("b.md"));
    // The system lets no file grow past 16 blocks of 512 bytes; the change would need more, from its first letter on.
    const code = `import { editText } from ${JSON.stringify(path.resolve("src/cli/write-files.ts"))};
      await editText("a.md", (text) => ({ text: "z".repeat(2000) + text })).catch(({ code }) => console.log(code));`;
    const said = execFileSync(
      "/bin/sh",
      ["-c", 'ulimit -f 16; exec "$@"', "sh", process.execPath, "--input-type=module", "-e", code],
      { cwd: folder, encoding: "utf8", env: { ...process.env, NODE_DISABLE_COMPILE_CACHE: "1" } },
    );
    expect(said).toBe("EFBIG\n");
    expect(readFileSync(at("a.md"), "utf8")).toBe(long);
    expect(statSync(at("b.md")).nlink).toBe(2);
  });

  test("takes a promise in once, though two runs that read the record before take it in", async () => {
    writeFileSync(at("a.md"), record);
    const promise = { what: "show the leeks again", bed: "long-bed", at: 65 };
    const take = () => editText(at("a.md"), (text) => acceptPromises(text, [promise]));
    await take();
    const once = readFileSync(at("a.md"));
    expect(once.includes("show the leeks again")).toBe(true);
    expect(await take()).toEqual({});
    expect(readFileSync(at("a.md")).equals(once)).toBe(true);
  });

  test("a group as a key, which grows with each level, is refused at once", () => {
    const text = `---\n${"? ".repeat(30)}\n---\n`;
    expect(acceptPromises(text, [{ what: "x", at: 1 }])).toHaveProperty("refused");
  });
});

test("of twenty that write one new file at once, one does", async () => {
  const done = await Promise.all(Array.from({ length: 20 }, (_, index) => createText(at("new.md"), `${index}`)));
  expect(done.filter(Boolean)).toHaveLength(1);
  expect(readFileSync(at("new.md"), "utf8")).toBe(String(done.indexOf(true)));
  expect(readdirSync(folder)).toEqual(["new.md"]);
});

test("a link that leads nowhere is something of that name", async () => {
  symlinkSync(at("nowhere"), at("new.md"));
  expect(await createText(at("new.md"), "x")).toBe(false);
  expect(existsSync(at("nowhere"))).toBe(false);
});

test("what a killed run left is cleared by the next, and that of one at work is not", async () => {
  // No process has this number: it is above the greatest that Linux gives.
  writeFileSync(at(".plotreel-99999999-0123abcd.part"), "half");
  writeFileSync(at(`.plotreel-${process.pid}-0123abcd.part`), "half");
  await writeWhole(at("a.md"), "whole");
  expect(readdirSync(folder).sort()).toEqual([`.plotreel-${process.pid}-0123abcd.part`, "a.md"]);
});
