import { describe, expect, it } from "vitest";
import { withoutControls } from "../../src/cli/effects.ts";

describe("text from records on a terminal", () => {
  it("gives no orders to it and turns no line around", () => {
    expect(withoutControls("\u001b[2J\u001b]0;title\u0007 \u009b31m a\rb \u202egpj.exe \u2066x\u2069\0")).toBe(
      "\ufffd[2J\ufffd]0;title\ufffd \ufffd31m a\ufffdb \ufffdgpj.exe \ufffdx\ufffd\ufffd",
    );
  });

  it("stays as it is where it is only text", () => {
    const text = "photos/Käfer.jpg:1:1\n\tÉtampes – 日本かぼちゃ, עברית \u200f";
    expect(withoutControls(text)).toBe(text);
  });
});
