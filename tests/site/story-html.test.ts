import { describe, expect, it } from "vitest";
import { storyHtml } from "../../src/site/story-html.ts";

describe("a person's Markdown as HTML", () => {
  it("keeps the marks a story needs", () => {
    expect(storyHtml("The **warm** bed, *so far*.\n\n- one\n- two")).toBe(
      "<p>The <strong>warm</strong> bed, <em>so far</em>.</p>\n<ul>\n<li>one</li>\n<li>two</li>\n</ul>",
    );
  });

  it("shows HTML as the text it is and runs none of it", () => {
    const html = storyHtml(
      "<script>alert(1)</script>\n\nText <b onclick=alert(2)>bold</b> <img src=x onerror=alert(3)>",
    );
    expect(html).not.toMatch(/<(?:script|b|img)\b/iu);
    expect(html).toContain("&#x3C;script>alert(1)&#x3C;/script>");
    expect(html).toContain("bold");
  });

  it("drops remarks to oneself, also one that is never closed", () => {
    expect(storyHtml("Before <!-- not for viewers --> after")).toBe("<p>Before  after</p>");
    expect(storyHtml("<!-- the rest is\nmine")).toBe("");
  });

  it("keeps only links to the web and to mail", () => {
    expect(storyHtml("[a](javascript:alert(1)) [b](data:text/html,x) [c](../notes/x.md) [d](vbscript:x)")).toBe(
      "<p>a b c d</p>",
    );
    expect(storyHtml("[a](https://films.example/1) [b](mailto:me@garden.example)")).toBe(
      '<p><a href="https://films.example/1">a</a> <a href="mailto:me@garden.example">b</a></p>',
    );
  });

  it("asks no other server for a picture", () => {
    expect(storyHtml("![pixel](https://evil.example/p.png)")).toBe("<p></p>");
  });

  it("steps headings so that none is skipped, whatever the Markdown used", () => {
    const levels = [...storyHtml("# A\n\n#### B\n\n## C\n\n###### D").matchAll(/<h(\d)>/gu)].map(([, level]) =>
      Number(level),
    );
    expect(levels).toHaveLength(4);
    expect(levels[0]).toBe(3);
    for (const [index, level] of levels.entries()) expect(level - (levels[index - 1] ?? 2)).toBeLessThanOrEqual(1);
  });

  it("takes out characters that turn the reading direction", () => {
    expect(storyHtml("safe \u202egnp.exe")).toBe("<p>safe gnp.exe</p>");
  });

  it.each([
    ["quotes", `${"> ".repeat(10_000)}deep`],
    ["lists", `${"- ".repeat(10_000)}deep`],
    ["brackets", `${"[".repeat(10_000)}deep`],
    ["emphasis", `${"*a ".repeat(10_000)}deep`],
    ["links", `${"[a](".repeat(10_000)}deep`],
    ["elements", `${"<b>".repeat(10_000)}deep`],
    ["ticks", `${Array.from({ length: 1000 }, (_, length) => "`".repeat(length)).join(" ")}deep`],
    ["nothing, only words,", `${"word ".repeat(400_000)}deep`],
  ])("does not go down ten thousand levels of %s, and loses no word", (_, markdown) => {
    expect(storyHtml(markdown)).toContain("deep");
  });

  it("escapes text without any Markdown in it", () => {
    expect(storyHtml('a < b & c > "d"')).toBe('<p>a &#x3C; b &#x26; c > "d"</p>');
  });
});
