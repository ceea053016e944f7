/** The commands end to end on a small garden: the brief brings the list as a file, publishing brings it as a page. */
import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { describe, expect, test } from "vitest";
import { folderWith, run } from "../cli/run.ts";
import { recordsOf } from "../records/records-of.ts";

test("plotreel brief writes the list beside the brief, and says where", async () => {
  const { exitCode, err, cwd } = await run(["brief", "july-tour"], { cwd: folderWith("two-walls") });
  expect(exitCode).toBe(0);
  const file = path.join(cwd, "out/briefs/july-tour-field-list.html");
  expect(err).toContain(`Field list for the phone: ${file}`);
  const page = readFileSync(file, "utf8");
  expect(page).toContain("<title>Private · Field list · ");
  expect(page).not.toContain("worker-src");
});

describe("the plan beside the episode", () => {
  const planFile = "content/episodes/july-tour/plan.json";
  const keys = (cwd: string): readonly string[] =>
    JSON.parse(readFileSync(path.join(cwd, planFile), "utf8")).stops.flatMap((stop: { shots: { key: string }[] }) =>
      stop.shots.map(({ key }) => key),
    );
  const write = (cwd: string, file: string, text: string) => {
    mkdirSync(path.dirname(path.join(cwd, file)), { recursive: true });
    writeFileSync(path.join(cwd, file), text);
  };

  test("is kept with the brief, read back without a problem, and what the wrap goes by after later notes", async () => {
    const cwd = folderWith("two-walls");
    const { err } = await run(["brief", "july-tour"], { cwd });
    expect(err).toContain(`Kept for the wrap: ${path.join(cwd, planFile)}`);
    const planned = keys(cwd);
    expect(planned.length).toBeGreaterThan(3);
    const check = await run(["check"], { cwd });
    expect(check.out).not.toContain("plan.json");

    const [bed] = (planned[0] ?? "").split("/");
    const home = {
      plotreel: "field list",
      version: 2,
      episode: "july-tour",
      day: "2026-07-18",
      exported: "2026-07-18T12:00:00+01:00",
      stops: [
        {
          bed,
          ticks: planned
            .filter((key) => key.startsWith(`${bed}/`))
            .map((key, at) => ({
              shot: `S1.${at + 1}`,
              key,
              words: key,
              state: "filmed",
              takes: [{ at: "09:24:31", mark: "good" }],
              at: "09:24:31",
            })),
        },
      ],
    };
    write(cwd, "content/episodes/july-tour/field-list.json", JSON.stringify(home));
    write(cwd, "content/notes/2026-07-17-late.md", `---\ndate: 2026-07-17\nbed: ${bed}\n---\n\n- sowed 30 radish\n`);
    const wrapped = await run(["wrap", "july-tour", "--json"], { cwd });
    const { coverage } = JSON.parse(wrapped.out);
    expect(coverage.shots.map(({ key }: { key: string }) => key)).toEqual(planned);
    expect(readFileSync(path.join(cwd, "out/wraps/july-tour/takes.csv"), "utf8")).toContain(",1,09:24:31,good,");
    // It was filmed: a brief made again is for reading only.
    const again = await run(["brief", "july-tour"], { cwd });
    expect(again.err).not.toContain("Kept for the wrap");
    expect(keys(cwd)).toEqual(planned);
  });

  test("is replaced up to the filming day, and not after it", async () => {
    const cwd = folderWith("two-walls");
    await run(["brief", "july-tour"], { cwd, today: "2026-07-01" });
    const first = keys(cwd);
    const [bed] = (first[0] ?? "").split("/");
    write(cwd, "content/notes/2026-07-02-new.md", `---\ndate: 2026-07-02\nbed: ${bed}\n---\n\n- sowed 30 radish\n`);
    await run(["brief", "july-tour"], { cwd, today: "2026-07-03" });
    const second = keys(cwd);
    expect(second).not.toEqual(first);
    write(cwd, "content/notes/2026-07-04-newer.md", `---\ndate: 2026-07-04\nbed: ${bed}\n---\n\n- sowed 9 chard\n`);
    expect((await run(["brief", "july-tour"], { cwd, today: "2026-12-01" })).exitCode).toBe(0);
    expect(keys(cwd)).toEqual(second);
  });

  test("of a day that no episode records is kept nowhere", async () => {
    const { err } = await run(["brief", "2026-07-03"], { cwd: folderWith("two-walls") });
    expect(err).not.toContain("Kept for the wrap");
  });
});

test("plotreel publish puts the lists of planned episodes among the private pages, and nowhere else", async () => {
  const { exitCode, cwd } = await run(["publish"], { cwd: folderWith("two-walls") });
  expect(exitCode).toBe(0);
  const out = (file: string) => path.join(cwd, "out", file);
  expect(existsSync(out("private/field-lists/july-tour.html"))).toBe(true);
  expect(existsSync(out("private/field-lists/july-tour-file.html"))).toBe(true);
  expect(existsSync(out("private/service-worker.js"))).toBe(true);
  expect(existsSync(out("public/field-lists"))).toBe(false);
  expect(existsSync(out("public/service-worker.js"))).toBe(false);
});

const manual = readFileSync("docs/filming-day.md", "utf8");

test("the commands on the page about filming day are ones there are", async () => {
  const commands = Array.from(manual.matchAll(/npx plotreel ([^\n`]+)/g), ([, words]) => words ?? "");
  expect(commands).toContain("brief 2026-07-tour --pdf");
  for (const words of commands) {
    const argv = Array.from(words.matchAll(/"([^"]*)"|(\S+)/g), ([, quoted, plain]) => quoted ?? plain ?? "");
    expect(await run([...argv, "--help"]), words).toMatchObject({ exitCode: 0 });
  }
});

test("the file of ticks on that page is read as it stands", async () => {
  const { problems, episodes } = await recordsOf({
    "beds/long-bed.md": "---\ntitle: Long Bed\n---\n",
    "episodes/2026-07-tour/index.md": "---\ntitle: July tour\ndate: 2026-07-18\n---\n",
    "episodes/2026-07-tour/field-list.json": /```json\n([\s\S]*?)```/.exec(manual)?.[1] ?? "",
  });
  expect(problems).toEqual([]);
  expect(episodes.get("2026-07-tour")?.filming?.stops[0]?.ticks).toHaveLength(2);
});
