/** One line put into a record's front matter: all else stays, and what it would not read as is refused. */
import { expect, test } from "vitest";
import { withFrontLine } from "../../src/records/index.ts";

const put = (text: string, key: string, value: string, inList?: true) => {
  const written = withFrontLine(new TextEncoder().encode(text), { key, value, inList });
  return "refused" in written ? written : written.text;
};

test("stands before the closing hyphens", () => {
  expect(put("---\ntitle: Rondo # mine\n---\nStory.\n", "source", "Drift Lane Seeds")).toBe(
    "---\ntitle: Rondo # mine\nsource: Drift Lane Seeds\n---\nStory.\n",
  );
  expect(put("---\r\ntitle: Rondo\r\n---\r\n", "obtained", "saved")).toBe(
    "---\r\ntitle: Rondo\r\nobtained: saved\r\n---\r\n",
  );
});

test("what YAML would take for something else stands in quotes", () => {
  expect(put("---\ntitle: Rondo\n---\n", "source", "Ann: the neighbour #2")).toBe(
    '---\ntitle: Rondo\nsource: "Ann: the neighbour #2"\n---\n',
  );
});

test("one more of a list stands below the last, or begins the list", () => {
  const one = put("---\ntitle: Plot\n---\n", "do not ask", "Where from?", true);
  expect(one).toBe("---\ntitle: Plot\ndo not ask:\n  - Where from?\n---\n");
  expect(put(`${one}`.replace("---\n", "---\nunits: us\n"), "do not ask", "Which: one?", true)).toBe(
    '---\nunits: us\ntitle: Plot\ndo not ask:\n  - Where from?\n  - "Which: one?"\n---\n',
  );
});

test.each([
  ["a key that stands there", "---\nsource: a swap\n---\n"],
  ["no front matter", "Story.\n"],
  ["front matter that does not end", "---\ntitle: Rondo\n"],
  ["front matter in braces", "---\n{ title: Rondo }\n---\n"],
])("%s is left as it is", (_, text) => {
  expect(put(text, "source", "a shop")).toMatchObject({ refused: expect.any(String) });
});

test("a list on one line is left as it is", () => {
  expect(put("---\ndo not ask: [One?]\n---\n", "do not ask", "Two?", true)).toMatchObject({
    refused: expect.any(String),
  });
});
