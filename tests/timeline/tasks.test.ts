import { describe, expect, test } from "vitest";
import { changes, openTasks, state } from "../../src/timeline/index.ts";
import { grow, type Line } from "./small-garden.ts";

const net: Line = ["2026-06-01", "to do", { bed: "long-bed", what: "net the brassicas", due: "2026-06-20" }];
const tasksOf = (lines: readonly Line[], on: string) => state(grow({ lines }), "long-bed", on).tasks;
const texts = (lines: readonly Line[]) =>
  grow({ lines })
    .changes.get("long-bed")
    ?.map(({ kind, day, text }) => [kind, day, text]);

describe("a task", () => {
  test("is open from its line until a done line in other words closes it", () => {
    const lines: Line[] = [net, ["2026-06-12", "done", { what: "netted the brassicas at last" }]];
    expect(tasksOf(lines, "2026-06-11")).toMatchObject([
      { what: "net the brassicas", due: "2026-06-20", done: undefined },
    ]);
    expect(tasksOf(lines, "2026-06-12")).toMatchObject([{ done: "2026-06-12" }]);
    expect(texts(lines)).toEqual([
      ["to do", "2026-06-01", "To do by 20 June: net the brassicas."],
      ["done", "2026-06-12", "Off the list: net the brassicas."],
    ]);
  });

  test("is overdue from the day after it was due, if it was not done by then", () => {
    expect(texts([net])?.at(-1)).toEqual(["overdue", "2026-06-21", "Due on 20 June: net the brassicas."]);
    const late: Line[] = [net, ["2026-06-25", "done", { what: "net the brassicas" }]];
    expect(texts(late)?.map(([kind, day]) => [kind, day])).toEqual([
      ["to do", "2026-06-01"],
      ["overdue", "2026-06-21"],
      ["done", "2026-06-25"],
    ]);
    const onTheDay: Line[] = [net, ["2026-06-20", "done", { what: "net the brassicas" }]];
    expect(texts(onTheDay)?.some(([kind]) => kind === "overdue")).toBe(false);
  });

  test("comes due among the changes between two days", () => {
    expect(changes(grow({ lines: [net] }), "long-bed", "2026-06-20", "2026-07-01").map(({ kind }) => kind)).toEqual([
      "overdue",
    ]);
  });

  test("is not closed by a line about something else", () => {
    expect(tasksOf([net, ["2026-06-12", "done", { what: "order garlic" }]], "2026-07-01")[0]?.done).toBeUndefined();
  });

  test("of several is the one whose words come nearest", () => {
    const lines: Line[] = [
      net,
      ["2026-06-02", "to do", { bed: "long-bed", what: "net the strawberries" }],
      ["2026-06-12", "done", { what: "netted strawberries" }],
    ];
    expect(tasksOf(lines, "2026-06-12").map(({ done }) => done)).toEqual([undefined, "2026-06-12"]);
  });

  test("written down twice in the same words is done at once", () => {
    const lines: Line[] = [
      net,
      ["2026-06-08", "to do", { bed: "long-bed", what: "net brassicas" }],
      ["2026-06-12", "done", { what: "netted the brassicas" }],
    ];
    expect(tasksOf(lines, "2026-06-12").map(({ done }) => done)).toEqual(["2026-06-12", "2026-06-12"]);
  });

  test("of no bed stands with the garden", () => {
    const garden = grow({
      lines: [
        ["2026-01-03", "to do", { what: "order seed", due: "2026-01-31" }],
        ["2026-01-05", "to do", { what: "new hinges for the tunnel door" }],
        ["2026-01-18", "done", { what: "order seed" }],
      ],
    });
    expect(openTasks(garden, "2026-01-10").map(({ what }) => what)).toEqual([
      "order seed",
      "new hinges for the tunnel door",
    ]);
    expect(openTasks(garden, "2026-01-20").map(({ what }) => what)).toEqual(["new hinges for the tunnel door"]);
    expect(garden.tasks).toMatchObject([{ done: "2026-01-18" }, { done: undefined }]);
  });

  test("about plants is of the bed they live in", () => {
    const garden = grow({
      lines: [
        ["2026-05-20", "planted", { variety: "ailsa-craig", bed: "tunnel", plantsFrom: "bought" }],
        ["2026-06-20", "to do", { crop: "tomato", bed: "long-bed", what: "feed the tomatoes" }],
      ],
    });
    expect(state(garden, "tunnel", "2026-06-20").tasks).toMatchObject([{ what: "feed the tomatoes", bed: "tunnel" }]);
    expect(state(garden, "long-bed", "2026-06-20").tasks).toEqual([]);
  });

  test("done that was never to do is still told", () => {
    expect(texts([["2026-06-12", "done", { bed: "long-bed", what: "mended the gate" }]])).toEqual([
      ["done", "2026-06-12", "Off the list: mended the gate."],
    ]);
  });
});
