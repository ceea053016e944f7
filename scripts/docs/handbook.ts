/** The handbook: which pages there are, in the order in which they are read, and the ways from each to the next. */

interface HandbookPage {
  readonly file: string;
  /** What it is called where somebody looks for it. */
  readonly name: string;
  /** When it is wanted, or what stands there. */
  readonly when: string;
}

export interface HandbookPart {
  readonly title: string;
  readonly pages: readonly HandbookPage[];
}

export const handbook: readonly HandbookPart[] = [
  {
    title: "Begin",
    pages: [
      { file: "getting-it.md", name: "Getting it", when: "on Windows, a Mac or Linux: once, in ten minutes" },
      { file: "first-season.md", name: "A first season", when: "from an empty folder to the film of the year" },
      { file: "workbench.md", name: "The workbench", when: "the page you work at: write, answer, name photos" },
      { file: "notes.md", name: "Notes", when: "how your lines are read, and every word that is known" },
      { file: "photos.md", name: "Photos", when: "where they go, and what is made of them" },
      { file: "bringing-in.md", name: "Bringing in the past", when: "you have lists, diaries or old films" },
    ],
  },
  {
    title: "Through the year",
    pages: [
      { file: "sowing.md", name: "Sowing and planting", when: "from the packet to the bed" },
      { file: "picking.md", name: "Picking", when: "something is ready" },
      { file: "losses.md", name: "Losses and troubles", when: "something is eaten, ill or dead" },
      { file: "planning.md", name: "Before a tour", when: "you choose what to show, and what falls out" },
      { file: "filming-day.md", name: "While filming", when: "the evening before, the day itself, and the way home" },
      { file: "outdoors.md", name: "Writing outdoors", when: "a line or a photo among the beds, without a network" },
      { file: "wrap.md", name: "After filming", when: "the captions are there" },
      { file: "publishing.md", name: "The site for viewers", when: "you want it on the web" },
      { file: "seasons.md", name: "End of the year", when: "you look back: figures, weather, trials" },
      { file: "seed-order.md", name: "Seed order", when: "the catalogues come" },
      { file: "keeping-it-safe.md", name: "Keeping it safe", when: "now and then, and before a new computer" },
    ],
  },
  {
    title: "To look up",
    pages: [
      { file: "records.md", name: "What a record may say", when: "every kind, every key, and who sees it" },
      { file: "commands.md", name: "The commands", when: "every command with its flags" },
      { file: "messages.md", name: "Messages", when: "what `check` says, and what it means" },
      { file: "crops.md", name: "Crops", when: "the crop words that are known" },
      { file: "cautions.md", name: "Cautions", when: "plants and work that can hurt, with sources" },
      { file: "variety-list.md", name: "The variety list as data", when: "your own programs read it" },
      { file: "look.md", name: "How the pages look", when: "you change them, or wonder why" },
    ],
  },
];

const inOrder = handbook.flatMap(({ pages }) => pages);

export const handbookFiles: readonly string[] = inOrder.map(({ file }) => file);

/** The first page, which lists all others. */
export function handbookPage(): string {
  const parts = handbook.map(({ title, pages }) => {
    const rows = pages.map(({ file, name, when }) => `| [${name}](${file}) | ${when} |`);
    return `## ${title}\n\n| page | when |\n|---|---|\n${rows.join("\n")}\n`;
  });
  return `# The handbook of Plotreel

Plotreel keeps the records of a garden that is filmed: you write down what you did and saw, and it makes the brief before a
film, the description after it, the site for viewers, and the film that looks back on the year. Everything is plain files in a
folder of yours.

New here? [Get it](getting-it.md), then spend an hour with [a first season](first-season.md). After that there is a page for each job
of the year, and each leads to the next. Pages of the last part are printed from the program itself. What an example shows is what the
program does: tests run them.

${parts.join("\n")}`;
}

const BEGINS = "\n---\n\n[";

/** A page with the ways to the one before it and the one after it, as its last line. */
export function withWays(file: string, page: string): string {
  const at = handbookFiles.indexOf(file);
  if (at < 0) return page;
  const way = (to: number, word: string) => {
    const found = to < 0 ? undefined : inOrder[to];
    return found === undefined ? [] : [`[${word}: ${found.name}](${found.file})`];
  };
  const ways = [...way(at - 1, "Before"), "[All pages](README.md)", ...way(at + 1, "Next")];
  return `${withoutWays(page)}\n---\n\n${ways.join(" · ")}\n`;
}

function withoutWays(page: string): string {
  const last = page.lastIndexOf(BEGINS);
  return last >= 0 && page.slice(last).includes("[All pages](README.md)") ? page.slice(0, last) : page;
}
