/** What goes to platforms beside the film: the description's opening, a comment to pin, short clips, a post and a newsletter. */
import { readFileSync } from "node:fs";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { demoGarden } from "../../scripts/mis-hearing/labelled-films.ts";
import type { Episode } from "../../src/model.ts";
import { wrapEpisode } from "../../src/wrap/index.ts";
import { wrapOf } from "./small-film.ts";

const walk = [
  "The long bed. Leeks, Musselburgh, nine of them.",
  "I said I'd show you the leeks under the net.",
  "Here they are, under the net.",
  "The slugs had three of those.",
  "The straw row stands taller.",
  "The bare row is hungry.",
  "It was wet, and they like it.",
  "Now the squash bed. Uchiki Kuri, doing nicely.",
  "I picked two of them on Wednesday.",
  "They are small yet.",
  "There's more to come.",
  "Nothing else to say of it.",
  "Last, the tomato pots. Four Harbinger tomatoes.",
  "They are in flower.",
  "Tall enough for June.",
  "And that's it.",
  "Thanks for walking round. See you.",
];

const more = {
  "notes/2026/2026-06-10.md":
    "- picked 2 fruits Uchiki Kuri from Squash Bed\n- lost 3 Musselburgh to slugs, from Long Bed\n",
  "episodes/may/index.md":
    "---\ntitle: May walk\ndate: 2026-05-28\npublished: 2026-06-01\nstops: [long-bed]\npromised:\n  - {what: show the leeks under the net, bed: long-bed, kept: june}\n---\n",
  "trials/straw.md":
    "---\ntitle: Straw or bare\nquestion: Do leeks under straw grow faster?\narms:\n  - {name: straw row, variety: musselburgh, bed: long-bed}\n  - {name: bare row, variety: musselburgh, bed: long-bed}\nmeasure: width of the stems in October\nstatus: running\nstarted: 2026-05-24\n---\n",
};

describe("a small garden's film", () => {
  it("opens its description with what happened, after the notices", async () => {
    const { wrap } = await wrapOf(walk, {}, more);
    expect(wrap.description.text.split("\n\n").slice(0, 3)).toEqual([
      "Ad. If you buy the Harbinger seed through the link, I earn a commission.\nCame to me free: Butterfly net.",
      "I said I would show the leeks under the net, and in this film I do. The season's first Uchiki Kuri squash have been picked.",
      "June walk\nFilmed on 14 June 2026 in Lower Croft. It stops at Long Bed, Squash Bed and Tomato Pots.",
    ]);
  });

  it("is told with names and where they came from, only of what was named where it grows", async () => {
    const { wrap } = await wrapOf([...walk, "You could grow Crown Prince."], {}, more);
    expect(wrap.pinnedComment).toBe(
      [
        "Ad. If you buy the Harbinger seed through the link, I earn a commission.",
        "What you saw, and where it came from:",
        "Musselburgh leeks (0:01): Drift Lane Seeds, bought",
        "Uchiki Kuri squash (0:22): Saltmarsh Hall seed swap",
        "Harbinger tomatoes (0:37): Pebble & Pod; I earn a commission if you buy through this link https://pod.example/h",
        "Is there one you would like to know more about? Ask below: I read every question.",
        "",
      ].join("\n"),
    );
  });

  it("gives clips of whole sentences at one stop", async () => {
    const { wrap } = await wrapOf(walk, {}, more);
    // From the sentence in which the leeks are first named; until the one that makes fifteen seconds full.
    expect(wrap.shorts.map(({ kind, at, until, title }) => [kind, Math.round(at), until, title])).toEqual([
      ["kept promise", 1, 18, "Promised: show the leeks under the net"],
      // The stop ends at 21, so it begins earlier.
      ["side by side", 6, 21, "Side by side: straw row and bare row"],
      ["first picking", 21, 36, "The first Uchiki Kuri squash"],
    ]);
  });

  it("fits a post, and a newsletter of the same facts", async () => {
    const { wrap } = await wrapOf(walk, {}, more);
    expect(wrap.post).toBe(
      [
        "Came to me free: Butterfly net.",
        "I said I would show the leeks under the net, and in this film I do. The season's first Uchiki Kuri squash have been picked. Three Musselburgh leeks were lost to slugs.",
        "June walk: https://films.example/june",
        "",
      ].join("\n"),
    );
    expect(wrap.newsletter).toBe(
      [
        "June walk",
        "Came to me free: Butterfly net.",
        "I said I would show the leeks under the net, and in this film I do. The season's first Uchiki Kuri squash have been picked. Three Musselburgh leeks were lost to slugs.",
        "Filmed on 14 June 2026 in Lower Croft. The walk goes by the long bed, the squash bed and the tomato pots.",
        // Harbinger's link earns a commission, and there is no link here.
        "On screen, with where they came from: Musselburgh leeks (Drift Lane Seeds, bought); Uchiki Kuri squash (Saltmarsh Hall seed swap). All stand under the film, with their times.",
        "The film: https://films.example/june\nAsk under the film which variety is which, or where one came from: I read every question.\n",
      ].join("\n\n"),
    );
  });
});

/** All that leaves the house. */
async function textsOf(lines: readonly string[], files: Readonly<Record<string, string>>) {
  const { wrap } = await wrapOf(lines, {}, files);
  const { description, pinnedComment, post, newsletter, shorts } = wrap;
  // The notices stand first in all of them.
  const [, second] = description.text.split("\n\n");
  const opening = second?.startsWith("June walk\n") === true ? undefined : second;
  return {
    opening,
    shorts,
    all: [description.text, pinnedComment, post, newsletter, JSON.stringify(shorts)].join("\n"),
  };
}

describe("what is told", () => {
  it.each([
    [
      "nothing that was not said",
      walk.map((line) => (/picked|slugs|[Ll]eeks|straw|bare/.test(line) ? "Here it is." : line)),
      more,
    ],
    ["nothing that no record tells", walk, {}],
    [
      "nothing that was told in the film before",
      walk,
      {
        "notes/2026/2026-05-27.md":
          "- picked 2 fruits Uchiki Kuri from Squash Bed\n- lost 3 Musselburgh to slugs, from Long Bed\n",
        "episodes/may/index.md": more["episodes/may/index.md"].replace(/promised:\n.*\n/, ""),
      },
    ],
    [
      "nothing out of a private note",
      walk,
      {
        "notes/2026/2026-06-10.md":
          "---\nprivate: true\n---\n\n- picked 2 fruits Uchiki Kuri from Squash Bed\n- lost 3 Musselburgh to slugs, from Long Bed\n",
      },
    ],
    [
      "no first picking where an earlier one is private",
      walk,
      {
        "notes/2026/2026-06-05.md": "---\nprivate: true\n---\n\n- picked 1 fruit Uchiki Kuri from Squash Bed\n",
        "notes/2026/2026-06-10.md": "- picked 2 fruits Uchiki Kuri from Squash Bed\n",
      },
    ],
    [
      "no private trial",
      walk,
      { "trials/straw.md": more["trials/straw.md"].replace("status:", "private: true\nstatus:") },
    ],
    [
      "no promise that names what is private",
      [...walk.slice(0, 1), "I said I'd show you the Velvet Queen behind the leeks.", ...walk.slice(2)],
      {
        "episodes/may/index.md": more["episodes/may/index.md"].replace(
          "show the leeks under the net",
          "show the Velvet Queen behind the leeks",
        ),
      },
    ],
    [
      "nothing of a garden that is private as a whole",
      walk,
      { ...more, "garden.md": "---\nname: Lower Croft\nprivate: true\n---\n" },
    ],
  ] as const)("holds %s", async (_, lines, files) => {
    const { opening, shorts } = await textsOf(lines, files);
    expect(opening).toBeUndefined();
    expect(shorts).toEqual([]);
  });

  it("names no private plant, bed or person, even where the film does", async () => {
    const secret = {
      ...more,
      "varieties/little-gem.md":
        "---\ntitle: Little Gem\ncrop: lettuce\nsource: {name: Wilma two plots up, obtained: given by a person}\n---\n",
      "gear/cages.md": "---\ntitle: Tomato cages\nobtained: lent by a person\nfrom: Old Barnaby\n---\n",
      "notes/2026/2026-05-26.md":
        "- planted 3 Velvet Queen sunflower in Long Bed\n- planted 6 Little Gem lettuce in Long Bed\n- planted 4 Crown Prince in Secret Patch\n- put up Tomato cages in Tomato Pots\n",
      "notes/2026/2026-06-11.md":
        "- picked 4 stems Velvet Queen from Long Bed\n- picked 1 Little Gem from Long Bed\n- lost 2 Crown Prince to slugs, from Secret Patch\n",
      "episodes/june/index.md":
        "---\ntitle: June walk\ndate: 2026-06-14\nlink: https://films.example/june\nstops: [long-bed, squash-bed, tomato-pots]\npromised:\n  - {what: bring Wilma her lettuces, bed: long-bed}\n  - {what: weigh the first squash, bed: squash-bed}\n---\n",
    };
    const lines = [
      ...walk.slice(0, 7),
      "Velvet Queen, the sunflowers, I cut four stems.",
      "Little Gem, the lettuces, I picked one for Wilma.",
      "The secret patch. Crown Prince, and the slugs had two.",
      "They are squash like the others.",
      ...walk.slice(7),
    ];
    const { all, shorts } = await textsOf(lines, secret);
    expect(all).not.toMatch(/Velvet|Secret|Wilma|Barnaby/);
    expect(all).toContain("Little Gem lettuces (0:24): given free");
    expect(all).toContain("What I promised for later: weigh the first squash.");
    // Wilma's name is heard from 0:24 to 0:27.
    expect(shorts.filter(({ at, until }) => at < 27 && until > 24)).toEqual([]);
    expect(shorts.map(({ title }) => title)).toContain("Promised: show the leeks under the net");
  });

  it("keeps a post within 280 letters, and makes none that has no room for its notices", async () => {
    const long = (words: number) => ({
      ...more,
      "gear/butterfly-net.md": `---\ntitle: Butterfly net\nobtained: given by a seller\nfrom: ${"Skerry Netting ".repeat(words).trim()}\n---\n`,
    });
    const short = (await wrapOf(walk, {}, long(6))).wrap.post ?? "";
    expect(short.trimEnd().length).toBeLessThanOrEqual(280);
    expect(short).toMatch(/^Ad\. Skerry Netting .* sent me the butterfly net free\.\n/);
    expect((await wrapOf(walk, {}, long(20))).wrap.post).toBeUndefined();
  });
});

describe("the demo's film of June 2026", () => {
  it("is told by what was promised, picked, lost and tried in it", async () => {
    const garden = await demoGarden();
    const file = "episodes/2026-06-tour/captions.vtt";
    const bytes = readFileSync(path.resolve("demo-content", file));
    const { wrap } = wrapEpisode({
      garden,
      episode: garden.episodes.get("2026-06-tour") as Episode,
      captions: { file, bytes },
    });
    expect(wrap.description.text.split("\n\n")[1]).toBe(
      "I said I would come back to the arch when something is growing on it, and in this film I do. The season's first Aquadulce Claudia broad beans, Matucana sweet peas and Royal Sovereign strawberries have been picked.",
    );
    // Begin and end are those of sentences in the captions.
    expect(wrap.shorts.map(({ kind, at, until, title }) => [kind, Math.round(at), Math.round(until), title])).toEqual([
      ["kept promise", 10, 26, "Promised: come back to the arch when something is growing on it"],
      ["side by side", 65, 80, "Side by side: netted row and bare row"],
      ["side by side", 91, 109, "Side by side: early row and late row"],
      ["first picking", 146, 162, "The first Aquadulce Claudia broad beans"],
      ["first picking", 177, 194, "The first Matucana sweet peas"],
      ["first picking", 210, 226, "The first Royal Sovereign strawberries"],
    ]);
    for (const { at, until } of wrap.shorts) {
      expect(until - at).toBeGreaterThanOrEqual(15);
      expect(until - at).toBeLessThanOrEqual(60);
    }
    expect(wrap.pinnedComment?.split("\n")).toHaveLength(22);
    expect(wrap.pinnedComment).toContain("\nMatucana sweet peas (2:56): own saved seed, 2025\n");
    expect(wrap.post).toBe(
      [
        "Ad. Skerry Netting sent me the butterfly net free.",
        "I said I would come back to the arch when something is growing on it, and in this film I do. Four Velvet Queen sunflowers were lost to slugs.",
        "June tour, flat calm: https://films.example/gullstone/june-2026",
        "",
      ].join("\n"),
    );
    const words = wrap.newsletter?.split(/\s+/).length ?? 0;
    expect(words).toBeGreaterThan(120);
    expect(words).toBeLessThan(185);
  });
});
