/** The commands of docs/publishing.md, run one after the other as they stand, by a person with a garden and a host. */
import { spawnSync } from "node:child_process";
import { cp, mkdir, mkdtemp, readdir, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { afterAll, beforeAll, expect, it } from "vitest";
import { headersFile } from "../../src/site/host-files.ts";

let cwd: string;
let document: string;

beforeAll(async () => {
  document = await readFile(path.resolve("docs/publishing.md"), "utf8");
  cwd = await mkdtemp(path.join(tmpdir(), "plotreel-hosts-"));
  await cp(path.resolve("tests/gardens/smallest"), path.join(cwd, "content"), { recursive: true });
  await mkdir(path.join(cwd, "bin"));
  await writeFile(
    path.join(cwd, "bin/npx"),
    `#!/bin/sh\nshift\nexec "${process.execPath}" "${path.resolve("bin/plotreel.js")}" "$@"\n`,
    { mode: 0o755 },
  );
  // The host: a repository with a branch that holds an older site.
  run(`git init --quiet --bare host/you/garden.git
    git init --quiet before && cd before && git checkout --quiet -b pages
    mkdir varieties && echo old > varieties/gone.html && git add . && git commit --quiet -m old
    git push --quiet ../host/you/garden.git pages`);
});
afterAll(() => rm(cwd, { recursive: true, force: true }));

function run(commands: string): void {
  const git = {
    "user.name": "A gardener",
    "user.email": "gardener@garden.example",
    [`url.${cwd}/host/.insteadOf`]: "https://git.example/",
  };
  const settings = Object.entries(git).flatMap(([key, value], index) => [
    [`GIT_CONFIG_KEY_${index}`, key],
    [`GIT_CONFIG_VALUE_${index}`, value],
  ]);
  const { status, stderr } = spawnSync("bash", ["-euo", "pipefail", "-c", commands], {
    cwd,
    encoding: "utf8",
    env: {
      ...process.env,
      ...Object.fromEntries(settings),
      GIT_CONFIG_COUNT: String(Object.keys(git).length),
      PATH: `${cwd}/bin:${process.env.PATH}`,
      PLOTREEL_CACHE: path.join(cwd, "cache"),
    },
  });
  expect(status, `${commands}\n${stderr}`).toBe(0);
}

it("work as they stand, and bring the whole site to the host, and nothing of the old one", async () => {
  const blocks = [...document.matchAll(/^```sh\n([\s\S]*?)^```$/gmu)].map(([, commands = ""]) => commands);
  expect(blocks.length).toBeGreaterThanOrEqual(5);
  for (const commands of blocks) run(commands);
  const published = (await readdir(path.join(cwd, "out/public"), { recursive: true })).sort();
  expect(published).toContain("index.html");
  // The last command published below a path; the web space was filled before that, with the same pages.
  expect(
    (await readdir(path.join(cwd, "web-space/garden"), { recursive: true })).filter((file) => file.endsWith(".html")),
  ).toEqual(expect.arrayContaining(published.filter((file) => file.endsWith(".html"))));
  run("git clone --quiet --branch pages host/you/garden.git seen");
  const seen = (await readdir(path.join(cwd, "seen"), { recursive: true })).filter(
    (file) => !/^\.git(?:\/|$)/u.test(file),
  );
  expect(seen.sort()).toEqual(published);
});

it("explain every header that is sent", () => {
  const sent = headersFile("/").match(/^ {2}[\w-]+/gmu) ?? [];
  for (const name of new Set(sent.map((line) => line.trim()))) expect(document, name).toContain(`\`${name}`);
});
