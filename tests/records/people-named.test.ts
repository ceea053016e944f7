/** Whom a text names. The lines are such as strangers wrote in a school's garden and on an island; invented, not theirs. */
import { describe, expect, it } from "vitest";
import { peopleNamed } from "../../src/records/people-named.ts";

const known = new Set(["bishop", "miss", "llandaff", "long", "whitsun", "drift", "lane"]);
const named = (text: string) => peopleNamed(text, (word) => known.has(word));

describe("somebody is named", () => {
  it.each([
    ["Tilly and Kofi planted the first tomatoes.", ["Kofi"]],
    ["Ask Mr Doolan for the gate key.", ["Doolan"]],
    ["Ask Mr. Doolan for the gate key.", ["Doolan"]],
    ["a gift from Isa at the kirk", ["Isa"]],
    ["6 leeks from my sister Catriona", ["Catriona"]],
    ["tied up with Ama, who is eight", ["Ama"]],
    ["Nasrin raised them on her windowsill.", ["Nasrin"]],
    ["Beau's beans came up.", ["Beau"]],
    ["Auntie Pearl says they need lime", ["Pearl"]],
    ["The sweet peas were sown by Will in March", ["Will"]],
    ["gave three to Whitsun, and one to Dot", ["Dot"]],
  ])("%s", (text, people) => expect(named(text)).toEqual(people));
});

describe("nobody is named", () => {
  it.each([
    "Sowed the Long Bed on Tuesday, and again in May.",
    "Will it rain? Mark the rows.",
    "Bishop of Llandaff came up late.",
    "The Kerr's Pink went in beside the Sharpe's Express.",
    "Aphids came with the warm days. Galahs ate the plums.",
    "Seed from Drift Lane, sown on Good Friday and at Easter.",
    "My neighbour gave me a spade; the children picked peas.",
    "I’ll sow the rest, and I’d net them. Miss Llandaff is one of ours.",
    "Rain. Wind. Mulched with straw, netted against pigeons.",
  ])("%s", (text) => expect(named(text)).toEqual([]));
});
