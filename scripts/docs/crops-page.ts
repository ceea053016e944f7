/** docs/crops.md, printed from the table of crops. */
import type { Crop } from "../../src/model.ts";
import { crops } from "../../src/records/index.ts";

export function cropsPage(): string {
  const uses: readonly (readonly [Crop["use"], string])[] = [
    ["vegetable", "Vegetables"],
    ["fruit", "Fruit"],
    ["herb", "Herbs"],
    ["flower", "Flowers"],
    ["cover", "Cover crops"],
  ];
  const tables = uses.map(([use, heading]) => {
    const rows = crops.filter((crop) => crop.use === use).toSorted((a, b) => (a.id < b.id ? -1 : 1));
    return [
      `## ${heading}`,
      "",
      "| crop | also called | family | stands for years |",
      "|---|---|---|---|",
      ...rows.map(
        (crop) => `| ${crop.name} | ${crop.alsoCalled.join(", ")} | ${crop.family} | ${crop.perennial ? "yes" : ""} |`,
      ),
      "",
    ].join("\n");
  });
  return [
    "# Crops",
    "",
    "These crop words are known, in the singular and the plural. A variety's `crop:` may be any other word as well.",
    "What you call a crop yourself can be said in words.md: [notes.md](notes.md#the-words-of-your-garden).",
    "This page is printed from the tables in `src/records/crop-rows` by `npm run docs`.",
    "",
    ...tables,
  ].join("\n");
}
