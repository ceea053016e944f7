/**
 * Viewers' comments under the demo's June film, invented before the answers' code was looked at and kept as they were typed. What
 * each is about: one record, several that are to be asked about ("+"), or nothing ("-"). None may be answered wrong.
 */
import { expect, it } from "vitest";
import { demoGarden } from "../../scripts/mis-hearing/labelled-films.ts";
import type { Episode } from "../../src/model.ts";
import { answersOf, questionsFor } from "../../src/wrap/answers.ts";
import { filmingDay } from "../../src/wrap/filming-day.ts";

const comments: readonly (readonly [comment: string, about: string])[] = [
  ["Hi from Ohio! what kind of squash is the blue one", "crown-prince"],
  ["where did u get the net over the cabbages", "butterfly-net"],
  ["love the arch, did you build that yourself or is it a kit", "hazel-arch"],
  ["Name of the dark leafy kale please!!", "nero-di-toscana"],
  ["What are those glass bell things and can you still get them", "bell-cloches"],
  ["Where did the rhubarb come from", "victoria+timperley-early"],
  ["that kneeling board looks comfy, do you sell them?", "kneeling-board"],
  ["Which pots are the tomatoes in", "thirty-litre-pots"],
  ["how many litres are those pots your toms are in", "thirty-litre-pots"],
  ["Great video as always, greetings from Bremen 🌻", "-"],
  ["I grew Uchiki Kuri last year and lost the lot to slugs.", "-"],
  ["Is the Uchiki Kuri seed still true to type if you grow Crown Prince next to it", "uchiki-kuri+crown-prince"],
  ["when did you sow the leeks", "musselburgh+bleu-de-solaise"],
  ["When did you sow the Musselburgh?", "musselburgh"],
  ["what mesh size do you use against leek moth, mine always gets in", "fine-mesh"],
  ["wheres the garlic from", "germidour+rose-de-lautrec"],
  ["Could you tell us the variety of strawberry in the pots on the steps", "royal-sovereign+cambridge-favourite"],
  ["Do you have the drip line on a timer", "drip-line"],
  ["The propagator you had in the spring film, worth the money?", "warm-mat"],
  ["what potato is the knobbly one", "pink-fir-apple"],
  ["is that black krim??", "noire-de-crimee"],
  ["First time here, subscribed", "-"],
  ["Hope the leg is better", "-"],
  ["Can I ask what that purple bean is on the canes", "blauhilde"],
  ["those obelisks - link please", "sweet-pea-obelisks"],
  ["What's the round yellow cucumber, is it a lemon", "crystal-lemon"],
  ["my nan grew victoria rhubarb for fifty years", "-"],
  ["what's your soil like", "-"],
  ["Where did you get your hat", "-"],
  ["Any chance of seeds from the tall peas", "alderman"],
  ["pls what r the red flowers w black leaves", "bishop-of-llandaff"],
  ["Did you pay for the heated mat or was it sent", "warm-mat"],
];

/** Right, asked about, a guess that says so, left open, or wrong. */
function judged(comment: string, about: string, day: ReturnType<typeof filmingDay>): string {
  const asked = questionsFor(day, { file: "comments.txt", text: comment }).filter(
    ({ place }) => place.file === "comments.txt",
  );
  const [found] = answersOf(day, asked);
  if (about === "-") return found?.answer === undefined ? "right" : "wrong";
  if (found === undefined || (found.answer === undefined && found.asks === undefined)) return "left open";
  const files = found.sources.map(({ file }) => file.replace(/^.*\/|\.md$/g, ""));
  const isAbout = about.split("+").some((id) => files.includes(id) || found.asks !== undefined);
  if (found.guess !== undefined) return "guess";
  if (!isAbout && !files.some((file) => /^\d/.test(file))) return "wrong";
  return found.asks === undefined ? "right" : "asked";
}

it("are answered, asked about, or said to be guessed, and never answered wrong", async () => {
  const garden = await demoGarden();
  const day = filmingDay(garden, garden.episodes.get("2026-06-tour") as Episode);
  const counts = Map.groupBy(comments, ([comment, about]) => judged(comment, about, day));
  expect(counts.get("wrong") ?? []).toEqual([]);
  expect(comments).toHaveLength(32);
  expect((counts.get("right") ?? []).length).toBeGreaterThanOrEqual(19);
  expect((counts.get("left open") ?? []).map(([comment]) => comment).length).toBeLessThanOrEqual(2);
});
