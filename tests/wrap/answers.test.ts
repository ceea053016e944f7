/** Viewers' questions: gear before plants, several candidates asked about, questions without a mark, guesses that say so. */
import { describe, expect, it } from "vitest";
import { asksSomething } from "../../src/wrap/comments.ts";
import { wrapReport } from "../../src/wrap/index.ts";
import { smallGarden, wrapOf } from "./small-film.ts";

const walk = ["The long bed. Leeks.", "Now the squash bed.", "Last, the tomato pots. Tomatoes."];
const more = {
  "gear/tomato-cages.md":
    "---\ntitle: Tomato cages\nobtained: given by a seller\nfrom: Ember & Tray\nlink: https://ember.example/cages\n---\n",
  "gear/fine-net.md": "---\ntitle: Fine net\nobtained: bought\nfrom: Drift Lane Seeds\n---\n",
  "notes/2026/2026-06-14.md": "- put up Tomato cages in Tomato Pots\n- put up Fine net in Long Bed\n",
};

async function answer(question: string, files: Readonly<Record<string, string>> = {}) {
  const comments = { file: "episodes/june/comments.txt", text: `${question}\n` };
  const { wrap } = await wrapOf(walk, { comments }, { ...more, ...files });
  const found = wrap.answers.find(({ place }) => place.file.endsWith("comments.txt"));
  return { ...found, wrap };
}

describe("gear", () => {
  it.each([
    ["where are the cages from?"],
    ["Where did you get the tomato cages?"],
    ["what make are those cages"],
    ["where did you buy the cages for your tomatoes?"],
  ])("is looked at before plants, and its notice comes along: %s", async (question) => {
    const found = await answer(question);
    expect(found.answer).toBe("Ad. Ember & Tray sent me the tomato cages free. https://ember.example/cages");
    expect(found.sources).toMatchObject([{ file: "gear/tomato-cages.md" }]);
  });

  it.each([["where are the tomatoes in the cages from?"], ["where did you get the tomato plants?"]])(
    "is not answered where a plant is asked about: %s",
    async (question) => {
      expect((await answer(question)).answer).toMatch(/^Harbinger: /);
    },
  );

  it("of several that are meant is asked about", async () => {
    const found = await answer("where is the net from?");
    expect(found.asks).toBe("Which is meant: Butterfly net or Fine net?");
    expect(found.answer).toBe("Butterfly net: given free. Fine net: Drift Lane Seeds, bought.");
    expect((await answer("where is the fine net from?")).asks).toBeUndefined();
  });

  it("that is private, or came from a private person, gives no name", async () => {
    const hidden = { "gear/tomato-cages.md": "---\ntitle: Tomato cages\nprivate: true\nfrom: Wilma\n---\n" };
    expect((await answer("where are the cages from?", hidden)).answer ?? "").not.toMatch(/Wilma|cages/);
    const lent = { "gear/tomato-cages.md": "---\ntitle: Tomato cages\nobtained: lent by a person\nfrom: Wilma\n---\n" };
    expect((await answer("where are the cages from?", lent)).answer).toBe("Tomato cages: on loan.");
  });
});

describe("plants", () => {
  it("of a crop with several varieties are asked about", async () => {
    const found = await answer("where did you get the squash from?");
    expect(found.answer).toBe("Uchiki Kuri: Saltmarsh Hall seed swap.");
    expect(found.asks).toBe("Which is meant: Uchiki Kuri or Crown Prince?");
    expect((await answer("where did you get the Uchiki Kuri from?")).asks).toBeUndefined();
    const { garden } = await smallGarden(more);
    expect(wrapReport(found.wrap, garden)).toContain("Which is meant: Uchiki Kuri or Crown Prince?");
  });

  it("given by a private person are told without the name", async () => {
    const files = {
      "varieties/musselburgh.md":
        "---\ntitle: Musselburgh\ncrop: leek\nsource: {name: Wilma two plots up, obtained: given by a person}\n---\n",
    };
    expect((await answer("where are the leeks from?", files)).answer).toBe("Musselburgh: given free.");
  });
});

describe("a question as viewers type it", () => {
  it.each([
    ["wheres the cages from", "Ad. Ember & Tray sent me the tomato cages free. https://ember.example/cages"],
    [
      "love the cages, did you build those yourself",
      "Ad. Ember & Tray sent me the tomato cages free. https://ember.example/cages",
    ],
    ["those cages - link please", "Ad. Ember & Tray sent me the tomato cages free. https://ember.example/cages"],
    ["you got that fine net where", "Fine net: Drift Lane Seeds, bought."],
    ["pls what variety r the leeks", "Musselburgh."],
    ["Name of the leeks please!", "Musselburgh."],
    ["how do you say that leek", "Musselburgh: MUSSEL-bruh."],
    ["which tomato is that", "Harbinger."],
  ])("is answered: %s", async (question, told) => {
    const found = await answer(question);
    expect(found.answer).toBe(told);
    expect(found.guess).toBeUndefined();
  });

  it("finds plants and things by what their files say of them, and says that it is a guess", async () => {
    const told = {
      "varieties/musselburgh.md":
        "---\ntitle: Musselburgh\ncrop: leek\nsource: {name: Drift Lane Seeds, obtained: bought}\n---\n\nBroad violet leaves.\n",
      "gear/bell-cloches.md": "---\ntitle: Bell cloches\nobtained: bought\nfrom: the market\n---\n\nOld glass.\n",
    };
    const plant = await answer("what is the violet one with broad leaves called?", told);
    expect(plant.answer).toBe("Musselburgh.");
    expect(plant.guess).toMatch(/^The question names no plant/);
    expect((await answer("what are those glass bell things", told)).answer).toBe("Bell cloches: the market, bought.");
  });

  it("of which only the thing is known is a guess, with its notice", async () => {
    const found = await answer("The tomato cages, worth the money?");
    expect(found.answer).toMatch(/^Ad\. Ember & Tray/);
    expect(found.guess).toMatch(/^This is how it came to you/);
  });

  it("takes no verb for a thing", async () => {
    const canes = { "gear/canes.md": "---\ntitle: Bean canes\nobtained: bought\nfrom: the market\n---\n" };
    expect((await answer("what can you do about slugs?", canes)).answer ?? "").not.toContain("canes");
  });

  it("means the net over the plants it names", async () => {
    const two = { "notes/2026/2026-06-14.md": "- put up Fine net in Squash Bed\n" };
    expect((await answer("where is the net over the squash from?", two)).answer).toBe(
      "Fine net: Drift Lane Seeds, bought.",
    );
  });

  it.each([
    ["what do you feed the leeks with"],
    ["what is the best month to plant leeks"],
    ["how much water do the tomatoes need"],
  ])("that no record answers is left open: %s", async (question) => {
    expect((await answer(question)).answer).toBeUndefined();
  });

  it("names nobody of whom it is not known whether they sell", async () => {
    const from = {
      "varieties/musselburgh.md": "---\ntitle: Musselburgh\ncrop: leek\nsource: Dorrit by the gate\n---\n",
    };
    const found = await answer("where are the leeks from?", from);
    expect(found.answer).toBeUndefined();
    expect(found.wrap.description.text).not.toContain("Dorrit");
    expect(found.wrap.newsletter).not.toContain("Dorrit");
  });
});

describe("an answer that is a guess", () => {
  it("says so where a sentence of the notes only has the question's words", async () => {
    const files = {
      "notes/2026/2026-06-20.md": "The slugs went for the beer traps by the water butt, nothing else helped.\n",
    };
    const found = await answer("do beer traps help with slugs?", files);
    expect(found.answer).toContain("beer traps");
    expect(found.guess).toMatch(/^This sentence of your notes has the question's words/);
    const { garden } = await smallGarden({ ...more, ...files });
    expect(wrapReport(found.wrap, garden)).toContain("A guess: This sentence");
  });

  it("and one from a record does not", async () => {
    expect((await answer("When did you plant the Musselburgh leeks?")).guess).toBeUndefined();
  });
});

describe("comments", () => {
  it.each([
    "which variety is the pumpkin by the shed",
    "Lovely film! What do you feed the leeks with",
    "hi, where do you get your nets",
    "whats the red one called",
    "I was wondering how deep you plant them",
    "would love to know the name of that rose",
    "how long till you can eat them",
    "is that mint in the pot",
    "Any idea what ate my beans",
    "Really?",
    "love the arch, did you build that yourself",
    "Can I ask what that purple bean is",
    "Any chance of seeds",
  ])("that ask: %s", (comment) => {
    expect(asksSomething(comment)).toBe(true);
  });

  it.each([
    "lovely film",
    "What a lovely bed.",
    "when I was a boy we grew leeks like that",
    "How nice to see the squash again!",
    "Where I live it is far too cold.",
    "That is mint, not balm.",
    "Thanks for the tip about the net.",
    "You have a good eye.",
  ])("that don't: %s", (comment) => {
    expect(asksSomething(comment)).toBe(false);
  });
});
