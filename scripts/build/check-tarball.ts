/**
 * What is shipped, as somebody gets it: packed, and unpacked into an empty folder with the packages it asks for and no others.
 * They are taken from where they are installed for the clone, so nothing is fetched.
 */
import { execFileSync } from "node:child_process";
import { existsSync } from "node:fs";
import { cp, mkdir, readFile, stat } from "node:fs/promises";
import path from "node:path";
import { buildInto } from "./build.ts";
import { CLONE, filesIn } from "./sources.ts";

export interface Tarball {
  /** Absolute. */
  readonly file: string;
  readonly bytes: number;
  readonly files: readonly string[];
}

/** Packs the clone, after building it anew. */
export async function packInto(folder: string): Promise<Tarball> {
  await buildInto(path.join(CLONE, "dist"));
  const told = execFileSync("npm", ["pack", "--json", "--ignore-scripts", "--pack-destination", folder], {
    cwd: CLONE,
    encoding: "utf8",
    stdio: ["ignore", "pipe", "ignore"],
    shell: process.platform === "win32",
  });
  const [packed] = Object.values(JSON.parse(told) as Record<string, { filename: string; files: { path: string }[] }>);
  if (packed === undefined) throw new Error("npm packed nothing.");
  const file = path.join(folder, packed.filename);
  return { file, bytes: (await stat(file)).size, files: packed.files.map((one) => one.path) };
}

export interface Installed {
  /** The program, to be run by Node. */
  readonly program: string;
  /** Names of all packages, the tool's own among them. */
  readonly packages: readonly string[];
  readonly bytes: number;
}

/** As `npm install` would, into a folder that holds nothing. */
export async function installInto(folder: string, tarball: Tarball): Promise<Installed> {
  const modules = path.join(folder, "node_modules");
  await mkdir(path.join(modules, "plotreel"), { recursive: true });
  execFileSync("tar", ["-xzf", tarball.file, "-C", path.join(modules, "plotreel"), "--strip-components", "1"]);
  const wanted = ["plotreel"];
  for (const name of wanted) {
    const manifest = JSON.parse(await readFile(path.join(modules, name, "package.json"), "utf8")) as Manifest;
    for (const [next, optional] of packagesOf(manifest)) {
      if (wanted.includes(next)) continue;
      const from = path.join(CLONE, "node_modules", next);
      if (!existsSync(from)) {
        // Those for other kinds of machines are not there.
        if (optional) continue;
        throw new Error(`${name} asks for ${next}, which is not installed.`);
      }
      await cp(from, path.join(modules, next), { recursive: true, dereference: true });
      wanted.push(next);
    }
  }
  const sizes = (await filesIn(folder)).map(async (file) => (await stat(path.join(folder, file))).size);
  return {
    program: path.join(modules, "plotreel", "bin", "plotreel.js"),
    packages: wanted.sort(),
    bytes: (await Promise.all(sizes)).reduce((sum, size) => sum + size, 0),
  };
}

interface Manifest {
  readonly dependencies?: Readonly<Record<string, string>>;
  readonly optionalDependencies?: Readonly<Record<string, string>>;
}

function packagesOf({
  dependencies = {},
  optionalDependencies = {},
}: Manifest): readonly (readonly [string, boolean])[] {
  const optional = Object.keys(optionalDependencies);
  return [
    ...Object.keys(dependencies).map((name) => [name, optional.includes(name)] as const),
    ...optional.map((name) => [name, true] as const),
  ];
}
