/**
 * What viewers are told of sellers' things. Words that are accepted and those that are judged unclear: 16 CFR 255.5; CAP Code 2.1 and
 * 2.3 with the CMA's guidance for creators; AANA Code of Ethics 2.7; directive 2005/29/EC. Ties are to sellers and makers; a
 * private person's gift is none, and the name is theirs.
 */
import { describe, expect, it } from "vitest";
import { noticeLine, noticesOf } from "../../src/language/index.ts";
import { missingSources } from "../../src/wrap/disclosures.ts";
import { beforeUploadPage } from "../../src/wrap/index.ts";
import { smallGarden, vtt, wrapOf } from "./small-film.ts";

const walk = [
  "The long bed. Leeks, Musselburgh, twelve of them.",
  "And the butterfly net over them.",
  "It keeps the moth away.",
  "They like it here.",
  "Now the squash bed. Five Uchiki Kuri.",
  "They're up to my knee already.",
  "Every one of the squash.",
  "Not one is lost.",
  "Last, the tomato pots. Four Harbinger.",
  "They are green still.",
  "And that's it.",
  "Thanks for walking round. See you.",
];
const net = (how: string, more = "") => ({
  "gear/butterfly-net.md": `---\ntitle: Butterfly net\nobtained: ${how}\nfrom: Skerry Netting\n${more}---\n`,
});
const garden = (more: string) => ({
  "garden.md": `---\nname: Lower Croft\ntime zone: Europe/London\n${more}---\n`,
});

describe("notices", () => {
  it.each([
    ["en-US", "us"],
    ["en-GB", "uk"],
    ["en-AU", "au"],
    ["en-IE", "eu"],
    ["en-NZ", "all"],
    ["en", "all"],
  ])("of a garden in %s follow %s", (language, notices) => {
    expect(noticesOf({ language })).toBe(notices);
    expect(noticesOf({ language, notices: "au" })).toBe("au");
  });

  it.each([
    ["paid promotion", undefined, "uk", "Ad. Skerry paid me to show the net."],
    ["paid promotion", undefined, "us", "Ad. Skerry paid me to show the net."],
    ["gifted", "a seller", "us", "Skerry gave me the net free."],
    ["gifted", "a seller", "uk", "Ad. Skerry sent me the net free."],
    ["gifted", "a seller", "all", "Ad. Skerry sent me the net free."],
    ["lent", "a seller", "au", "Ad. Skerry lent me the net."],
    ["discounted", undefined, "eu", "Ad. Skerry let me have the net for less than its price."],
    ["commission link", undefined, "us", "If you buy the net through the link, I earn a commission."],
    ["own product", undefined, "uk", "Ad. I make and sell the net myself."],
    ["family business", undefined, "uk", "Ad. The net comes from Skerry, a business of my family or friends."],
    ["gifted", "a person", "all", undefined],
    ["gifted", undefined, "all", undefined],
    ["bought", undefined, "all", undefined],
  ] as const)("%s, %s, %s: %s", (obtained, giver, notices, line) => {
    expect(noticeLine(["the net"], { obtained, giver, from: "Skerry" }, notices)).toBe(line);
  });

  it("use no word that is judged unclear, and never say what is no ad", () => {
    for (const notices of ["us", "uk", "au", "eu", "all"] as const)
      for (const obtained of [
        "paid promotion",
        "gifted",
        "lent",
        "discounted",
        "commission link",
        "own product",
      ] as const)
        expect(noticeLine(["the net"], { obtained, giver: "a seller", from: "Skerry" }, notices)).not.toMatch(
          /gifted|collab|affiliate|spon\b|thanks|not an ad/i,
        );
  });

  it("stand first, by the words of the garden's region or of garden.md", async () => {
    const first = async (more: Readonly<Record<string, string>>) =>
      (await wrapOf(walk, {}, { ...net("given by a seller"), ...more })).wrap.description.text
        .split("\n\n")[0]
        ?.split("\n");
    expect(await first({})).toContain("Ad. Skerry Netting sent me the butterfly net free.");
    expect(await first(garden("language: en-US\n"))).toContain("Skerry Netting gave me the butterfly net free.");
    expect(await first(garden("language: en-US\nnotices: all\n"))).toContain(
      "Ad. Skerry Netting sent me the butterfly net free.",
    );
  });

  it("of a private person's gift there is none: thanks further down, and a name only where the record allows it", async () => {
    const text = async (more = "") =>
      (
        await wrapOf(
          walk,
          {},
          {
            "gear/butterfly-net.md": `---\ntitle: Butterfly net\nobtained: given by a person\nfrom: Wilma next door\n${more}---\n`,
          },
        )
      ).wrap.description.text;
    const silent = await text();
    expect(silent).not.toContain("Wilma");
    expect(silent).toContain("Thanks for the butterfly net.");
    expect(silent.split("\n\n")[0]).not.toContain("net");
    expect(await text("thank by name: yes\n")).toContain("Thanks to Wilma next door for the butterfly net.");
  });

  it("is known where only a note line says how plants came; of a gift it is asked whose", async () => {
    const told = async (line: string) => {
      const more = { "notes/2026/2026-05-25.md": `${line}\n` };
      const { wrap } = await wrapOf([...walk, "The Crown Prince in the Squash Bed."], {}, more);
      const missing = missingSources(wrap.disclosures).filter((text) => text.includes("Crown Prince"));
      return {
        crown: wrap.disclosures.find(({ record }) => record === "crown-prince"),
        missing,
        text: wrap.description.text,
      };
    };
    const bought = await told("- planted 2 bought Crown Prince in Squash Bed, from Pelham Seeds");
    expect(bought).toMatchObject({ crown: { obtained: "bought", atTop: false }, missing: [] });
    const given = await told("- planted 2 given Crown Prince in Squash Bed, from Dottie down the lane");
    expect(given.crown).toMatchObject({ obtained: "gifted", atTop: false, named: undefined });
    expect(given.text).not.toMatch(/Dottie|free: Crown Prince/);
    // Asked on its own, and no more among those of which nothing is known.
    expect(given.missing).toEqual([expect.stringMatching(/^Crown Prince: given free, and nothing says whether/)]);
    const unknown = [expect.stringMatching(/Crown Prince: nothing says where (?:it|they) came from, or how\./)];
    expect((await told("- watered Squash Bed")).missing).toEqual(unknown);
    const hidden = "- private: planted 2 given Crown Prince in Squash Bed, from Dottie down the lane";
    expect((await told(hidden)).missing).toEqual(unknown);
  });

  it("of a gift that nobody decided is asked", async () => {
    const { wrap } = await wrapOf(walk);
    expect(wrap.disclosures.find(({ record }) => record === "butterfly-net")?.warning).toBe(
      'Butterfly net: given free ("Skerry Netting"), and nothing says whether by somebody who sells or makes such things. Write "given by a seller" or "given by a person" in its record.',
    );
  });
});

describe("the page before upload", () => {
  const spoken = async (lines: readonly string[], more: Readonly<Record<string, string>> = net("given by a seller")) =>
    (await wrapOf(lines, {}, more)).wrap.noticesSpoken.find(({ record }) => record === "butterfly-net");
  const said = (line: string) => [...walk.slice(0, 2), line, ...walk.slice(3)];

  it.each([
    ["Skerry Netting sent me this free."],
    ["They gave me it to try."],
    ["It came free from Skerry."],
    ["I didn't pay for it."],
  ])("hears that the net came free: %s", async (line) => {
    const found = await spoken(said(line));
    expect(found?.shown?.time).toBe("0:03");
    // Within the third caption, from six seconds to nine.
    expect(found?.spoken?.at).toBeGreaterThanOrEqual(6);
    expect(found?.spoken?.at).toBeLessThan(9);
  });

  it.each([
    ["It keeps the moth away."],
    ["It wasn't free, I can tell you."],
    ["The soil is free draining here."],
    ["From Skerry Netting, lovely people."],
  ])("takes nothing else for it: %s", async (line) => {
    const found = await spoken(said(line));
    expect(found?.spoken).toBeUndefined();
    expect(found?.shown?.time).toBe("0:03");
  });

  it("tells of a word that is judged unclear, in the UK and not in the US", async () => {
    const gifted = said("It is gifted.");
    expect((await spoken(gifted))?.unclear).toBe("gifted");
    const us = await spoken(gifted, { ...net("given by a seller"), ...garden("language: en-US\n") });
    expect(us?.unclear).toBeUndefined();
  });

  it("lists private names with their times", async () => {
    const more = {
      ...net("bought"),
      "varieties/musselburgh.md":
        "---\ntitle: Musselburgh\ncrop: leek\nsource: {name: Wilma two plots up, obtained: given by a person}\n---\n",
    };
    const lines = [
      ...walk.slice(0, 2),
      "Wilma's leeks, these are.",
      ...walk.slice(3, 9),
      "And a Velvet Queen sunflower.",
    ];
    const { wrap } = await wrapOf(lines, {}, more);
    expect(wrap.privateAloud.map(({ time, name, why }) => [time, name, why])).toEqual([
      ["0:06", "Wilma", "a private person"],
      ["0:27", "Velvet Queen", "a private record"],
    ]);
  });

  it("says what is still open, and ticks what is done", async () => {
    const { wrap } = await wrapOf(walk, {}, net("given by a seller"));
    const page = beforeUploadPage(wrap);
    expect(page).toMatch(/^# Before you upload: June walk\n\n- \[ \] Where things came from is said in the film\n/);
    expect(page).toContain(
      "  - Butterfly net: named at 0:03; nothing near it says how it came to you. Say it there, or show it on the picture.",
    );
    expect(page).toContain("- [x] No private name is said aloud");
    expect(page).toContain("- [x] Chapters keep the rules of video sites");
    expect(page).toContain("- [x] Promises stand in the record");
  });

  it("tells where a right name no longer fits its caption, and captions of a shorter cut", async () => {
    const { garden: records, episode } = await smallGarden();
    const long = "the long bed and the twelve muscle bra now";
    const bytes = vtt([long, ...walk.slice(1)]);
    const { wrap } = await import("../../src/wrap/index.ts").then(({ wrapEpisode }) =>
      wrapEpisode({ garden: records, episode, captions: { file: "a.vtt", bytes }, length: 100 }),
    );
    const lines = wrap.beforeUpload.find(({ what }) => what.startsWith("Captions"))?.lines;
    expect(lines?.[0]).toBe("The captions end at 0:36 and the film at 1:40: are they of this cut?");
    expect(long.length).toBe(42);
    expect(lines?.[1]).toBe("0:00 with the right name a line is longer than 42 letters.");
  });

  it("no line of a description begins with a time that is no chapter", async () => {
    const { wrap } = await wrapOf(walk);
    const times = wrap.description.text.split("\n").flatMap((line) => /^\d+:\d\d/.exec(line)?.[0] ?? []);
    expect(times).toEqual(wrap.chapters.map(({ time }) => time));
    expect(times[0]).toBe("0:00");
  });
});
