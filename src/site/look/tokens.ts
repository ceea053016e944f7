/** What stands in styles/tokens.css, read as data: for pages that carry their style in themselves, the style page, and tests. */

/** Names without the two hyphens, values as written. */
export type Tokens = Readonly<Record<string, string>>;

export interface Schemes {
  readonly light: Tokens;
  readonly dark: Tokens;
  readonly paper: Tokens;
}

interface Rule {
  /** The condition, such as "print"; empty without one. */
  readonly media: string;
  readonly selectors: readonly string[];
  readonly tokens: Tokens;
}

export function readTokens(css: string): Schemes {
  const rules = rulesOf(css);
  const under = (media: string, selector: string): Tokens =>
    Object.assign(
      {},
      ...rules.filter((rule) => rule.media === media && rule.selectors.includes(selector)).map((rule) => rule.tokens),
    );
  const night = "(prefers-color-scheme: dark)";
  const light = under("", ":root");
  const dark = { ...light, ...under(night, ":root") };
  return {
    light,
    dark,
    paper: { ...light, ...under("print", ":root") },
  };
}

export function isColour(value: string): boolean {
  return /^#[0-9a-f]{6}$/u.test(value);
}

/** The colours of a scheme as declarations of a rule. */
export function colourDeclarations(tokens: Tokens): string {
  return Object.entries(tokens)
    .filter(([, value]) => isColour(value))
    .map(([name, value]) => `--${name}: ${value};`)
    .join(" ");
}

/** Rules that stand alone, and those inside one `@media`: the sheet of tokens has no others. */
function rulesOf(css: string): readonly Rule[] {
  const bare = css.replace(/\/\*.*?\*\//gsu, "");
  const found: Rule[] = [];
  for (const [, condition, inside, selectors, body] of bare.matchAll(
    /@media ([^{]+)\{((?:[^{}]*\{[^{}]*\})*)\s*\}|([^{}@]+)\{([^{}]*)\}/gu,
  )) {
    if (condition === undefined) found.push(rule("", selectors ?? "", body ?? ""));
    else
      for (const [, inner, declarations] of (inside ?? "").matchAll(/([^{}]+)\{([^{}]*)\}/gu))
        found.push(rule(condition.trim(), inner ?? "", declarations ?? ""));
  }
  return found;
}

function rule(media: string, selectors: string, body: string): Rule {
  return {
    media,
    selectors: selectors.split(",").map((selector) => selector.trim()),
    tokens: Object.fromEntries(
      [...body.matchAll(/--([\w-]+):\s*([^;]+);/gu)].map(([, name, value]) => [name, value?.trim()]),
    ),
  };
}
