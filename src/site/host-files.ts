/** What a host and search programs want to find beside the pages: the map of the site, and headers to send. */

/** All pages of a site, as the sitemap protocol 0.9 has it. `files` are relative, with forward slashes. */
export function siteMap(files: readonly string[], home: string): string {
  const pages = files
    .filter((file) => file.endsWith(".html") && file !== "404.html")
    .map(
      (file) =>
        home +
        file
          .replace(/(^|\/)index\.html$/u, "$1")
          .split("/")
          .map(encodeURIComponent)
          .join("/"),
    )
    .sort();
  const entries = pages.map(
    (page) => `  <url><loc>${page.replace(/&/gu, "&amp;").replace(/'/gu, "&apos;")}</loc></url>\n`,
  );
  return `<?xml version="1.0" encoding="UTF-8"?>
<urlset xmlns="http://www.sitemaps.org/schemas/sitemap/0.9">
${entries.join("")}</urlset>
`;
}

/** Says who may read and where the map is; only of use at the root of a host. */
export function robots(home: string): string {
  return `User-agent: *\nAllow: /\n\nSitemap: ${home}sitemap.xml\n`;
}

/**
 * Headers in the form many static hosts read from a file of this name: a path, and below it what to send. The pages carry
 * their own content security policy; only what a page cannot say of itself stands here. Files whose names change with
 * their content may be kept for ever.
 */
export function headersFile(base: string): string {
  const forever = "  Cache-Control: public, max-age=31536000, immutable\n";
  return `${base}*
  Content-Security-Policy: frame-ancestors 'none'
  X-Content-Type-Options: nosniff
  Referrer-Policy: strict-origin-when-cross-origin
  Cross-Origin-Opener-Policy: same-origin
  Permissions-Policy: camera=(), microphone=(), geolocation=(), payment=()

${base}_astro/*
${forever}
${base}photos/*
${forever}
${base}pagefind/fragment/*
${forever}
${base}pagefind/index/*
${forever}`;
}

/**
 * What a file in that form says to send with a path, by header name in small letters. Of the form only what `headersFile`
 * writes is known: whole paths, and paths that end in a star.
 */
export function headersFor(text: string, asked: string): Readonly<Record<string, string>> {
  const sent: Record<string, string> = {};
  let isMeant = false;
  for (const line of text.split("\n")) {
    const [, name, value] = /^\s+([\w-]+):\s*(\S.*)$/u.exec(line) ?? [];
    if (name === undefined) isMeant = line.endsWith("*") ? asked.startsWith(line.slice(0, -1)) : asked === line;
    else if (isMeant && value !== undefined) sent[name.toLowerCase()] = value;
  }
  return sent;
}
