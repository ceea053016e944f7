/** Printing by a Chromium, or a browser of its family, where one is installed. */
import { execFile } from "node:child_process";
import { mkdtemp, readFile, rm, stat, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { pathToFileURL } from "node:url";

/** Milliseconds a page may take to print. */
const PATIENCE = 60_000;

export type Printing =
  | { readonly pdf: Uint8Array }
  | { readonly pdf?: undefined; readonly why: "no program" | "failed" };

/**
 * Prints a page on the paper its own style asks for. The page and the PDF lie in `folder` for as long as it takes: some
 * installations let the browser see a person's own folders only, neither hidden ones nor the system's.
 */
export async function printPage(html: string, folder: string): Promise<Printing> {
  const program = await findChromium();
  if (program === undefined) return { why: "no program" };
  // A profile of its own, or a browser that is open already would take the page over.
  const profile = await mkdtemp(path.join(tmpdir(), "plotreel-print-"));
  const work = await mkdtemp(path.join(folder, "printing-"));
  const [page, pdf] = [path.join(work, "page.html"), path.join(work, "page.pdf")];
  try {
    await writeFile(page, html);
    await run(program, [
      "--headless",
      "--disable-gpu",
      "--disable-extensions",
      "--disable-background-networking",
      "--no-first-run",
      "--no-pdf-header-footer",
      `--user-data-dir=${profile}`,
      // As root it refuses to start inside its sandbox; the page is ours and runs no script.
      ...(process.getuid?.() === 0 ? ["--no-sandbox"] : []),
      `--print-to-pdf=${pdf}`,
      pathToFileURL(page).href,
    ]);
    return (await isFile(pdf)) ? { pdf: await readFile(pdf) } : { why: "failed" };
  } finally {
    for (const each of [work, profile]) await rm(each, { recursive: true, force: true, maxRetries: 3 });
  }
}

async function findChromium(): Promise<string | undefined> {
  const named = process.env.CHROMIUM;
  for (const program of named === undefined || named === "" ? commonPlaces() : [named]) {
    if (await isFile(program)) return program;
  }
  return undefined;
}

function commonPlaces(): readonly string[] {
  if (process.platform === "darwin") {
    return ["Chromium", "Google Chrome", "Microsoft Edge"].map(
      (name) => `/Applications/${name}.app/Contents/MacOS/${name}`,
    );
  }
  if (process.platform === "win32") {
    const roots = [process.env.ProgramFiles, process.env["ProgramFiles(x86)"], process.env.LOCALAPPDATA];
    const programs = [
      "Chromium/Application/chrome.exe",
      "Google/Chrome/Application/chrome.exe",
      "Microsoft/Edge/Application/msedge.exe",
    ];
    return roots.flatMap((root) => (root === undefined ? [] : programs.map((program) => path.join(root, program))));
  }
  const names = ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable", "microsoft-edge"];
  return ["/usr/bin", "/usr/local/bin", "/snap/bin"].flatMap((folder) => names.map((name) => path.join(folder, name)));
}

/** Ends when the program does, well or badly: whether it printed is seen by what it left. */
function run(program: string, args: readonly string[]): Promise<void> {
  return new Promise((resolve) => {
    execFile(program, [...args], { timeout: PATIENCE, killSignal: "SIGKILL", windowsHide: true }, () => resolve());
  });
}

function isFile(file: string): Promise<boolean> {
  return stat(file).then(
    (found) => found.isFile(),
    () => false,
  );
}
