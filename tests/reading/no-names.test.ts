/** Words that begin a sentence, people, and what plants stand in: none of them is offered as a variety. */
import { expect, it } from "vitest";
import { names, reading } from "./a-reader.ts";

it.each([
  ["First ripe peaches! Picked 2 kg of Sungold, Marnie ate four.", /Picked|Marnie/],
  ["Snails had a go at three of them and Marnie picked 22 snails off by torchlight", /Picked|Marnie/],
  ["3.5 kg peaches picked by the Year 5s", /Picked|Year/],
  ["picked 300 g of Sungold, green ones because Beau threw them at Jarrah", /Picked|Beau|Jarrah/],
  ["Beau's beans gave 600 g", /Beau/],
  ["sowed Nantes carrots with the Year 2s, 3 rows", /^s$/],
  ["built a little trellis over the path for the Crown Prince, planted 2 hills under it", /hills/],
  ["planted 6 Sungold, a gift from next door", /"gift"/],
  ["acquired: Received with thanks from the school 2 pear trees", /"Received/],
  ["Collected free manure from the donkey people. 10 bags", /"Collected/],
])("%s", (line, never) => {
  const mark = names.mark();
  const { events, readings } = reading(line);
  const taken = [...events, ...readings.flatMap((one) => one.events)].flatMap(({ variety }) => variety ?? []);
  const quoted = readings.flatMap((one) => [...one.line.matchAll(/"([^"]+)"/g)].map(([, name]) => name));
  expect([...taken, ...quoted].join("\n")).not.toMatch(new RegExp(never.source.replaceAll('"', ""), "im"));
  names.backTo(mark);
});

it.each([
  ["picked a mess of okra", "okra"],
  ["picked a bowl of kale", "kale"],
])("%s counts none", (line, crop) => {
  const { events, readings } = reading(line);
  const [event] = [...events, ...readings.flatMap((one) => one.events)];
  expect(event).toMatchObject({ kind: "picked", crop });
  expect(event?.count).toBeUndefined();
});
