/** A garden from note lines made up here, read by the same path as a folder on disk. */
import type { Day, Garden } from "../../src/model.ts";
import { readRecords } from "../../src/records/index.ts";
import { growGarden } from "../../src/timeline/index.ts";

export class MadeNotes {
  readonly files = new Map<string, string>();

  record(file: string, front: Readonly<Record<string, string>>): void {
    const keys = Object.entries(front).map(([key, value]) => `${key}: ${value}\n`);
    this.files.set(file, `---\n${keys.join("")}---\n`);
  }

  /** A line of the note of a day. */
  line(day: Day, text: string): void {
    const file = `notes/${day}.md`;
    this.files.set(file, `${this.files.get(file) ?? ""}- ${text}\n`);
  }

  async garden(today: Day): Promise<Garden> {
    if (!this.files.has("garden.md"))
      this.record("garden.md", { name: "Made", "time zone": "Europe/London", language: "en-GB" });
    const folder = {
      list: async () => [...this.files.keys()].sort(),
      read: async (file: string) => new TextEncoder().encode(this.files.get(file) ?? ""),
    };
    return growGarden(await readRecords(folder, { today }), []);
  }
}
