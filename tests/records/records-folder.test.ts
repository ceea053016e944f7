/** The folder on disk: links of every kind, folders and files in one another's place, nothing at all. */
import { mkdir, mkdtemp, realpath, rm, symlink, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { openRecordsFolder, problemText, readRecords } from "../../src/records/index.ts";
import { filmingDay } from "./records-of.ts";

let work: string;
let records: string;

beforeEach(async () => {
  work = await realpath(await mkdtemp(path.join(tmpdir(), "plotreel-records-")));
  records = path.join(work, "records");
  await mkdir(path.join(records, "notes", "2026"), { recursive: true });
  await writeFile(path.join(records, "notes", "2026", "2026-05-16-a.md"), "- watered everything\n");
});
afterEach(() => rm(work, { recursive: true, force: true }));

async function read() {
  const folder = await openRecordsFolder(records);
  const { problems, events } = await readRecords(folder, { today: filmingDay });
  // Only one of these folders has a garden.md, which is not what is tested here.
  const told = problems.filter(({ rule }) => rule !== "folder/no-settings");
  return { files: await folder.list(), problems: told.map(problemText), events: events.length };
}

test("files are listed sorted, with forward slashes, hidden ones left aside", async () => {
  await mkdir(path.join(records, ".obsidian"));
  await writeFile(path.join(records, ".obsidian", "app.md"), "");
  await writeFile(path.join(records, "notes", ".2026-05-17.md.swp"), "");
  await writeFile(path.join(records, "garden.md"), "---\nname: G\n---\n");
  expect(await read()).toEqual({ files: ["garden.md", "notes/2026/2026-05-16-a.md"], problems: [], events: 1 });
});

test("a record that a cloud folder took off this disk is missed, and what it is called stays private", async () => {
  await mkdir(path.join(records, "beds"));
  await writeFile(path.join(records, "beds", ".secret-nursery.md.icloud"), "");
  await writeFile(path.join(records, "notes", "2026-05-17.md"), "- planted 3 leeks in Secret Nursery\n");
  const { beds, problems } = await readRecords(await openRecordsFolder(records), { today: filmingDay });
  expect(beds.get("secret-nursery")?.private).toBe(true);
  expect(problems.map(problemText)).toContain(
    `beds/secret-nursery.md:1:1 error folder/unreadable
  This cannot be read: it is not on this disk now.
  Wait until it is back, give yourself the right to read it, or check the disk; everything else was read.`,
  );
});

describe("links", () => {
  test("a link to a folder that holds it is not followed", async () => {
    await symlink("..", path.join(records, "notes", "2026", "again"));
    expect(await read()).toEqual({
      files: ["notes/2026/2026-05-16-a.md"],
      problems: [
        `notes/2026/again:1:1 warning folder/link-loop
  This link leads to notes, which is read already, so it was not followed.
  Remove the link.`,
      ],
      events: 1,
    });
  });

  test("a link to the records folder itself", async () => {
    await symlink(records, path.join(records, "notes", "all"));
    expect((await read()).problems).toEqual([
      `notes/all:1:1 warning folder/link-loop
  This link leads to the records folder itself, which is read already, so it was not followed.
  Remove the link.`,
    ]);
  });

  test("links that lead to one another", async () => {
    await symlink("b.md", path.join(records, "notes", "a.md"));
    await symlink("a.md", path.join(records, "notes", "b.md"));
    expect((await read()).problems).toEqual(
      ["a", "b"].map(
        (name) => `notes/${name}.md:1:1 warning folder/link-loop
  This link leads in a circle and never to a file.
  Remove the link.`,
      ),
    );
  });

  test("a second way to the same note does not count it twice", async () => {
    await symlink("2026/2026-05-16-a.md", path.join(records, "notes", "2026-05-16-copy.md"));
    expect(await read()).toMatchObject({
      problems: [
        `notes/2026-05-16-copy.md:1:1 warning folder/link-loop
  This link leads to notes/2026/2026-05-16-a.md, which is read already, so it was not followed.
  Remove the link.`,
      ],
      events: 1,
    });
  });

  test("a link out of the records folder is not followed", async () => {
    await writeFile(path.join(work, "secret.md"), "- watered everything\n");
    await symlink("../../secret.md", path.join(records, "notes", "2026-05-17.md"));
    await symlink(work, path.join(records, "photos"));
    expect(await read()).toEqual({
      files: ["notes/2026/2026-05-16-a.md"],
      problems: ["notes/2026-05-17.md", "photos"].map(
        (name) => `${name}:1:1 warning folder/link-outside
  This link leads out of the records folder, so it was not followed.
  Copy what it leads to into the records folder.`,
      ),
      events: 1,
    });
  });

  test("a link to nothing", async () => {
    await symlink("gone.md", path.join(records, "notes", "2026-05-17.md"));
    expect((await read()).problems).toEqual([
      `notes/2026-05-17.md:1:1 warning folder/link-broken
  This link leads to nothing.
  Remove the link, or make it again.`,
    ]);
  });

  test("the records folder may itself be reached by a link", async () => {
    await symlink(records, path.join(work, "linked"));
    expect(await (await openRecordsFolder(path.join(work, "linked"))).list()).toEqual(["notes/2026/2026-05-16-a.md"]);
  });

  test("a link to a file elsewhere in the folder that is read nowhere else is followed", async () => {
    await mkdir(path.join(records, ".attic"));
    await writeFile(path.join(records, ".attic", "old.md"), "- watered everything\n");
    await symlink("../.attic/old.md", path.join(records, "notes", "2026-05-17.md"));
    expect(await read()).toMatchObject({ problems: [], events: 2 });
  });
});

describe("places", () => {
  test("a folder where a file should be", async () => {
    await mkdir(path.join(records, "beds", "long-bed.md"), { recursive: true });
    await mkdir(path.join(records, "garden.md"));
    expect((await read()).problems).toEqual(
      ["beds/long-bed.md", "garden.md"].map(
        (name) => `${name}:1:1 error folder/folder-not-file
  "${name}" is a folder, and a file is expected where a name ends in .md.
  Take the ending off the folder's name, or put a file in its place.`,
      ),
    );
  });

  test("no records folder says how to start", async () => {
    const folder = await openRecordsFolder(path.join(work, "nowhere"));
    const { problems } = await readRecords(folder, { today: filmingDay });
    expect(problems.map(problemText)).toEqual([
      `error folder/missing
  There is no records folder at ${path.join(work, "nowhere")}.
  Make it, or give another with --records. "plotreel start" in an empty folder begins a garden. One dated note is enough, too: notes/2026-05-16-first.md with a line such as "- sowed Boltardy beetroot in Long Bed".`,
    ]);
  });

  test("a file given as the records folder", async () => {
    const folder = await openRecordsFolder(path.join(records, "notes", "2026", "2026-05-16-a.md"));
    const { problems } = await readRecords(folder, { today: filmingDay });
    expect(problems.map(problemText)).toEqual([
      `error folder/file-not-folder
  ${path.join(records, "notes", "2026", "2026-05-16-a.md")} is a file, not a records folder.
  Give the folder that holds your notes with --records.`,
    ]);
  });
});
