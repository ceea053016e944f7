/** Records that name other records: what leads nowhere is told, with the nearest name that leads somewhere. */
import { expect, test } from "vitest";
import { problemsOf, recordsOf } from "./records-of.ts";

const file = (frontMatter: string) => `---\n${frontMatter}\n---\n`;
const garden = {
  "sites/hill.md": file("title: The hill"),
  "beds/long-bed.md": file("title: Long Bed\nsite: hill"),
  "beds/arch-bed.md": file("title: The Arch\nalso called: [rose arch]"),
  "varieties/musselburgh.md": file("title: Musselburgh\ncrop: leek"),
  "episodes/may/index.md": file("date: 2026-05-16\nstatus: published"),
};

test("everything that leads somewhere is in order", async () => {
  expect(await problemsOf(garden)).toEqual([]);
});

test.each([
  [
    "beds/x.md",
    "site: the hlil",
    "beds/x.md:2:7 warning link/unknown-site",
    'No site is called "the hlil", so this bed stands on none and is kept private.',
    'Did you mean "The hill"?',
  ],
  [
    "beds/x.md",
    "site: yard",
    "beds/x.md:2:7 warning link/unknown-site",
    'No site is called "yard", so this bed stands on none and is kept private.',
    "Write sites/yard.md to describe it.",
  ],
  [
    "trials/x.md",
    "question: Q\nmeasure: M\narms: [{name: a, variety: Muselburgh}]",
    "trials/x.md:4:27 warning link/unknown-variety",
    'No variety is called "Muselburgh", so it was left out here.',
    'Did you mean "Musselburgh"?',
  ],
  [
    "trials/x.md",
    "question: Q\nmeasure: M\narms:\n  - {name: a, bed: Rose arhc}",
    "trials/x.md:5:20 warning link/unknown-bed",
    'No bed is called "Rose arhc", so it was left out here.',
    'Did you mean "rose arch"?',
  ],
  [
    "episodes/x/index.md",
    "date: 2026-06-13\nstops: [long-bed, {bed: pond, at: '1:00'}]\nstatus: planned",
    "episodes/x/index.md:3:19 warning link/unknown-bed",
    'No bed is called "pond", so it was left out here.',
    "Write beds/pond.md to describe it.",
  ],
  [
    "episodes/x/index.md",
    "date: 2026-06-13\npromised: [{what: w, bed: Lnog Bed}]\nstatus: planned",
    "episodes/x/index.md:3:27 warning link/unknown-bed",
    'No bed is called "Lnog Bed", so it was left out here.',
    'Did you mean "Long Bed"?',
  ],
  [
    "episodes/x/index.md",
    "date: 2026-06-13\npromised: [{what: w, kept: mya}]\nstatus: planned",
    "episodes/x/index.md:3:28 warning link/unknown-episode",
    '"mya" is neither a day nor an episode, so the promise counts as open.',
    "Write the day it was kept, or the folder name of the episode that kept it.",
  ],
  [
    "varieties/x.md",
    "crop: tomatto",
    "varieties/x.md:2:7 warning link/unknown-crop",
    'No crop is called "tomatto"; it was taken as a crop of its own.',
    'Did you mean "tomato"?',
  ],
  [
    "notes/2026-05-16-a.md",
    "bed: Long Bad",
    "notes/2026-05-16-a.md:2:6 warning link/unknown-bed",
    'No bed is called "Long Bad", so this note was read without it.',
    'Did you mean "Long Bed"?',
  ],
])("%s with %j", async (path, front, head, what, fix) => {
  expect(await problemsOf({ ...garden, [path]: file(front) })).toEqual([`${head}\n  ${what}\n  ${fix}`]);
});

test("a variety may be named with its crop, a bed with its article", async () => {
  const { trials, problems } = await recordsOf({
    ...garden,
    "trials/x.md": file("question: Q\nmeasure: M\narms: [{name: a, variety: Musselburgh leek, bed: the long bed}]"),
  });
  expect(trials.get("x")?.arms).toEqual([{ name: "a", variety: "musselburgh", bed: "long-bed" }]);
  expect(problems).toEqual([]);
});

test("what only notes name can be linked too", async () => {
  const { episodes, trials, problems } = await recordsOf({
    "notes/2026-05-16-a.md": "- planted 6 Greyhound cabbages in Herb Trough\n",
    "episodes/x/index.md": file("date: 2026-05-16\nstatus: published\nstops: [herb trough]"),
    "trials/x.md": file("question: Q\nmeasure: M\narms: [{name: a, variety: greyhound}]"),
  });
  expect(episodes.get("x")?.stops).toEqual([{ bed: "herb-trough" }]);
  expect(trials.get("x")?.arms).toEqual([{ name: "a", variety: "greyhound" }]);
  expect(problems.map(({ rule }) => rule)).toEqual(["name/bed-taken", "name/variety-taken"]);
});
