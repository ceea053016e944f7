import { readFileSync, rmSync, writeFileSync } from "node:fs";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { brought, filesIn, gardenWith, ingest, recordsIn } from "./bringing.ts";

const plain = (events: Awaited<ReturnType<typeof recordsIn>>["events"]) =>
  events.map(({ day, kind, variety, crop, count, bed, nursery, from, price, spot }) =>
    [day, kind, variety ?? crop, count?.value, nursery === true ? "indoors" : bed, from, price, spot].filter(
      (part) => part !== undefined,
    ),
  );

describe("a list of 46 varieties", () => {
  it("is shown with its columns and three rows, and nothing is written", async () => {
    const dir = gardenWith();
    const before = filesIn(dir);
    const { exitCode, out } = await ingest(dir, brought("seed-tin.csv"));
    expect(exitCode).toBe(0);
    expect(out).toContain("a table of 46 rows, its cells set off by commas.");
    expect(out).toMatch(/^ {2}Seed house +=\ssource +Penrow Seeds \| Penrow Seeds \| own saved$/m);
    expect(out).toContain("46 varieties to be written.");
    expect(out).toContain("Nothing was written yet. The same command with --write writes it.");
    expect(filesIn(dir)).toEqual(before);
  });

  it("becomes a file each, private, in which nothing is to be mended", async () => {
    const dir = gardenWith();
    expect((await ingest(dir, brought("seed-tin.csv"), "--write")).exitCode).toBe(0);
    const { varieties, problems } = await recordsIn(dir);
    expect(problems.filter(({ severity }) => severity !== "hint")).toEqual([]);
    expect(varieties.size).toBe(46);
    expect([...varieties.values()].every((variety) => variety.private && variety.described)).toBe(true);
    expect(varieties.get("crown-prince")).toMatchObject({
      crop: "squash",
      source: { name: "own saved seed", obtained: "saved", year: 2024 },
      maturity: { days: 110, from: "sowing" },
    });
    // Two plants of one name are two varieties.
    expect(varieties.get("black-beauty")?.crop).toBe("aubergine");
    expect(varieties.get("black-beauty-courgette")).toMatchObject({ title: "Black Beauty", crop: "courgette" });
    // What was noted of it was never meant for viewers.
    expect(varieties.get("uchiki-kuri")?.body).toBe("<!-- From seed-tin.csv:\nstores till February, if dry\n-->");
  });

  it("may be for viewers when the person says so, its notes never", async () => {
    const dir = gardenWith();
    await ingest(dir, brought("seed-tin.csv"), "--write", "--public");
    const { varieties } = await recordsIn(dir);
    expect([...varieties.values()].some((variety) => variety.private)).toBe(false);
    expect([...varieties.values()].every(({ body }) => body === "" || body.startsWith("<!--"))).toBe(true);
  });

  it("says before anything is written what viewers would lose", async () => {
    const dir = gardenWith({ "notes/2026/2026-05-16.md": "- planted 2 Sungold tomatoes in Long Bed\n" });
    const { out } = await ingest(dir, brought("seed-tin.csv"));
    expect(out).toContain("Viewers see Sungold now, and would not any more, nor your lines about it:");
    expect((await ingest(dir, brought("seed-tin.csv"), "--public")).out).not.toContain("Viewers see");
  });

  it("leaves the files that are there, and says so", async () => {
    const own = "---\ntitle: Sungold\ncrop: tomato\nsource: Nan\n---\n";
    const dir = gardenWith({ "varieties/sungold.md": own });
    const { out } = await ingest(dir, brought("seed-tin.csv"), "--write");
    expect(out).toContain("1 variety described already: Sungold");
    expect(filesIn(dir)["varieties/sungold.md"]).toBe(own);
    expect((await recordsIn(dir)).varieties.size).toBe(46);
  });

  it("asks about a name spelled otherwise, and makes no second file of it", async () => {
    const dir = gardenWith({
      "varieties/sun-gold.md": "---\ntitle: Sun Gold\ncrop: tomato\n---\n",
      "varieties/datil.md": "---\ntitle: Datil\ncrop: pepper\n---\n",
      "varieties/black-beauty.md": "---\ntitle: Black Beauty\ncrop: courgette\n---\n",
      "tin.csv":
        "Name,Type,Bed,Planted\nSungold,tomato,Long Bed,2026-05-16\nDatil,hot pepper,Long Bed,2026-05-16\nBlack Beauty,aubergine,,\n",
    });
    const { out, exitCode } = await ingest(dir, "tin.csv", "--write");
    const told = out.replace(/\s+/g, " ");
    expect(told).toContain(
      'line 2: "Sungold" is "Sun Gold" of varieties/sun-gold.md but for its spelling, so no second file is made. If they are one, write "also spelled: [Sungold]" there and bring this in again; if they are two, write varieties/sungold.md first',
    );
    expect(told).toContain(
      'line 3: "Datil" is a pepper in varieties/datil.md and a chilli here, so no second file is made.',
    );
    expect(exitCode).toBe(1);
    expect(Object.keys(filesIn(dir)).filter((file) => /^(?:varieties|notes)/.test(file))).toEqual([
      "varieties/black-beauty-aubergine.md",
      "varieties/black-beauty.md",
      "varieties/datil.md",
      "varieties/sun-gold.md",
    ]);
    // Answered, the row is brought in with the garden's own spelling.
    const answered = "---\ntitle: Sun Gold\ncrop: tomato\nalso spelled: [Sungold]\n---\n";
    writeFileSync(path.join(dir, "varieties/sun-gold.md"), answered);
    await ingest(dir, "tin.csv", "--write");
    expect(plain((await recordsIn(dir)).events)).toEqual([["2026-05-16", "planted", "sun-gold", "long-bed"]]);
  });

  it("says what a file that is there does not say, and no more once it does", async () => {
    const own = "---\ntitle: Sungold\ncrop: tomato\nsource: Nan\n---\n";
    const table = "Name,Type,Source,Year,Days,Notes\nSungold,tomato,Penrow Seeds,2024,57,best off the vine\n";
    const dir = gardenWith({ "varieties/sungold.md": own, "tin.csv": table });
    const { out, exitCode } = await ingest(dir, "tin.csv", "--write");
    expect(out.replace(/\s+/g, " ")).toContain(
      "line 2: varieties/sungold.md is there and stays as it is; it does not say source: Penrow Seeds · year: 2024 · days to maturity: 57 · notes: best off the vine",
    );
    expect(exitCode).toBe(1);
    const told =
      "---\ntitle: Sungold\ncrop: tomato\nsource: { name: Penrow Seeds, year: 2024 }\ndays to maturity: 57\n---\n\nBest off the vine.\n";
    writeFileSync(path.join(dir, "varieties/sungold.md"), told.replace("Best", "Said to be best off the vine; best"));
    const again = await ingest(dir, "tin.csv", "--write");
    expect(again.out).not.toContain("does not say");
    expect(again.exitCode).toBe(0);
  });

  it("takes a planting for told where a note says that it was sown there on that day", async () => {
    const dir = gardenWith({
      "varieties/burgundy.md": "---\ntitle: Burgundy\ncrop: okra\n---\n",
      "notes/2026-04-25.md": "- sowed Burgundy in Back Bed, 1 row\n",
      "tin.csv": "Name,Type,Date planted,Bed\nBurgundy,okra,2026-04-25,Back Bed\n",
    });
    expect((await ingest(dir, "tin.csv", "--write")).out).toContain("Nothing is to be written.");
  });

  it("brings nothing twice, nor what was thrown away or rewritten since", async () => {
    const dir = gardenWith();
    await ingest(dir, brought("seed-tin.csv"), "--write");
    rmSync(path.join(dir, "varieties/marmande.md"));
    writeFileSync(path.join(dir, "varieties/sungold.md"), "---\ntitle: Sun Gold\ncrop: tomato\n---\n");
    const before = filesIn(dir);
    const { out, exitCode } = await ingest(dir, brought("seed-tin.csv"), "--write");
    expect(out).toContain("46 rows brought in before");
    expect(out).toContain("Nothing is to be written.");
    expect(exitCode).toBe(0);
    expect(filesIn(dir)).toEqual(before);
  });
});

describe("a list in Windows-1252 with semicolons", () => {
  it("keeps its letters, and what it marks as private or leaves in doubt", async () => {
    const dir = gardenWith();
    const { out } = await ingest(dir, brought("graines.csv"), "--write", "--public");
    expect(out).toContain("set off by semicolons, read as Windows-1252.");
    expect(out).toContain("(5 cells left out)");
    const { varieties, events, problems } = await recordsIn(dir);
    expect(problems.filter(({ severity }) => severity !== "hint")).toEqual([]);
    expect([...varieties.values()].map(({ title, private: kept }) => [title, kept])).toEqual([
      ["Café au Lait", true],
      ["Jaune du Doubs", false],
      ["Noire de Crimée", false],
      ["Reine des Glaces", false],
      ["Rouge vif d’Étampes", true],
    ]);
    // 14/02 proves that the day comes first, so 03/03 and 21/03 are no doubt.
    expect(plain(events)).toEqual([
      ["2024-02-14", "acquired", "rouge-vif-detampes", "Graines Valmer", "3,50 €"],
      ["2024-02-14", "acquired", "noire-de-crimee", "Graines Valmer", "3,20 €"],
      ["2024-02-14", "acquired", "reine-des-glaces", "Graines Valmer", "2,90 €"],
      ["2024-03-03", "acquired", "jaune-du-doubs", "Échange de Pré-Clos"],
      ["2024-03-21", "acquired", "cafe-au-lait", "Pépinière Aubry", "9,00 €"],
    ]);
    expect(events.map((event) => event.private)).toEqual([true, false, false, false, true]);
  });
});

describe("an untidy list of orders", () => {
  it("says what it could not read, line by line, and brings the rest", async () => {
    const dir = gardenWith();
    const { out, exitCode } = await ingest(dir, brought("orders-2025.csv"), "--write");
    expect(exitCode).toBe(1);
    const told = out.slice(out.indexOf("Worth a look:")).replace(/\n {6,}/g, " ");
    expect(told).toContain("line 1: above the headings: SEED ORDERS 2025");
    expect(told).toContain("line 9: the headings again");
    expect(told).toContain('line 10: Ordered: "Feb 2025" says no day, and a note is of a day');
    expect(told).toContain("line 11: names neither a variety nor a crop: TOTAL, 18.30");
    expect(told).toContain("line 14: names neither a variety nor a crop: ??");
    expect(told).toContain('line 15: Ordered: "30/02/2025" is no day when it is read day-first');
    expect(told).toContain("it may count packets or plants, so it was left out in 5 rows");
    const { varieties, events } = await recordsIn(dir);
    expect([...varieties.keys()]).toEqual([
      "ailsa-craig",
      "boltardy",
      "crown-prince",
      "lollo-rossa",
      "musselburgh-leek",
      "pink-fir-apple",
      "sungold-f1",
    ]);
    expect(varieties.get("ailsa-craig")).toMatchObject({ title: "Ailsa Craig", crop: "tomato" });
    // Its second row fills what the first left out.
    expect(varieties.get("crown-prince")?.source).toMatchObject({ obtained: "saved" });
    expect(varieties.get("sungold-f1")?.body).toContain("for the tunnel,\nand two for Mum");
    expect(plain(events)).toEqual([
      ["2025-01-12", "acquired", "sungold-f1", "Penrow Seeds", "£6.40"],
      ["2025-01-12", "acquired", "musselburgh-leek", "Penrow Seeds", "£2.10"],
      ["2025-01-12", "acquired", "ailsa-craig", "penrow seeds", "£2.30"],
      ["2025-02-03", "acquired", "boltardy", "Fallow & Daughter"],
      ["2025-02-25", "acquired", "crown-prince"],
    ]);
  });

  it("asks which is the day and which the month where nothing proves it", async () => {
    const dir = gardenWith({ "list.csv": "Variety,Crop,Bed,Planted\nSungold,tomato,Top Border,03/05/2025\n" });
    const doubt = await ingest(dir, "list.csv");
    expect(doubt.exitCode).toBe(1);
    expect(doubt.out).toContain('line 2: Planted: "03/05/2025" can be 2025-05-03 or 2025-03-05');
    await ingest(dir, "list.csv", "--write");
    // The row was short of its day, so the answer is not too late.
    await ingest(dir, "list.csv", "--write", "--dates", "month-first");
    expect(plain((await recordsIn(dir)).events)).toEqual([["2025-03-05", "planted", "sungold", "top-border"]]);
  });
});

describe("a table of plantings", () => {
  it("becomes lines of the days that say just what the table says", async () => {
    const dir = gardenWith();
    const { out } = await ingest(dir, brought("plantings-2025.tsv"), "--write");
    expect(out).toContain("set off by tabs.");
    const { events, readings } = await recordsIn(dir);
    expect(readings.every(({ as }) => as === "facts")).toBe(true);
    expect(plain(events)).toEqual([
      ["2025-03-01", "sowed", "sungold", 8, "indoors"],
      ["2025-03-08", "sowed", "musselburgh", 60, "indoors"],
      ["2025-03-29", "planted", "sturon", 100, "top-border", "row 4-6"],
      ["2025-04-12", "sowed", "boltardy", 40, "top-border"],
      ["2025-04-26", "sowed", "nero-di-toscana", "indoors"],
      ["2025-05-01", "sowed", "courgette", 3, "indoors"],
      ["2025-05-04", "sowed", "painted-lady", 16, "indoors"],
      ["2025-05-24", "planted", "sungold", 6, "polytunnel"],
      ["2025-06-01", "planted", "painted-lady", 12, "bean-row"],
      ["2025-06-07", "planted", "musselburgh", 36, "top-border", "row 2"],
      ["2025-06-08", "planted", "courgette", 2, "long-bed"],
      ["2025-06-21", "planted", "nero-di-toscana", "brassica-bed"],
    ]);
    expect(out).toContain("was sown on 2025-04-19, and nothing says in which bed");
    expect(out).toContain('line 9: No. of plants: "2 x 6" is no number of plants or seeds');
  });

  it("adds only what is new when the table has grown", async () => {
    const dir = gardenWith();
    const grown = path.join(dir, "plantings-2026.tsv");
    await ingest(dir, brought("plantings-2025.tsv"), "--write");
    const before = (await recordsIn(dir)).events.length;
    writeFileSync(
      grown,
      `${readFileSync(brought("plantings-2025.tsv"), "utf8")}Leek\tBleu de Solaise\t\t\t2025-06-07\t18\tTop Border\t\t\n`,
    );
    const { out } = await ingest(dir, grown, "--write");
    expect(out).toContain("planted 18 Bleu de Solaise in Top Border");
    expect((await recordsIn(dir)).events.length).toBe(before + 1);
  });

  it("writes no line of what a note tells already", async () => {
    const dir = gardenWith({ "notes/2025-05-24.md": "- planted 7 Sungold tomatoes in Polytunnel\n" });
    const { out } = await ingest(dir, brought("plantings-2025.tsv"), "--write");
    expect(out).toContain("1 fact on record already");
    const { events } = await recordsIn(dir);
    expect(events.filter(({ day }) => day === "2025-05-24").map(({ count }) => count?.value)).toEqual([7]);
  });
});

describe("headings", () => {
  it("that are unknown are matched by the person, and a slip there is told", async () => {
    const dir = gardenWith({ "list.csv": "Label,Came by\nSungold,Penrow Seeds\n" });
    const unknown = await ingest(dir, "list.csv");
    expect(unknown.exitCode).toBe(2);
    expect(unknown.err).toContain('Say what they hold, such as --columns "Label=variety".');
    const slip = await ingest(dir, "list.csv", "--columns", "Lable=variety");
    expect(slip.err).toContain('No heading of list.csv is "Lable". Did you mean "Label"?');
    const wrong = await ingest(dir, "list.csv", "--columns", "Label=cultivator");
    expect(wrong.exitCode).toBe(2);
    await ingest(dir, "list.csv", "--columns", "Label=variety,Came by=source", "--write");
    expect((await recordsIn(dir)).varieties.get("sungold")?.source?.name).toBe("Penrow Seeds");
  });
});

describe("what is no table, text or captions", () => {
  it("is refused with what to do", async () => {
    const dir = gardenWith({ "list.ods": "PK", "photo.jpg": "x" });
    const sheet = await ingest(dir, "list.ods");
    expect([sheet.exitCode, sheet.err]).toEqual([2, expect.stringContaining("or each sheet as CSV")]);
    expect((await ingest(dir, "photo.jpg")).err).toContain("Photos are brought in by their folder.");
    expect((await ingest(dir, "list.csv")).err).toContain("There is no folder at");
  });
});

describe("a hostile table", () => {
  it("writes nothing outside the records, opens no remark and gives no orders to YAML", async () => {
    const dir = gardenWith({
      "list.csv":
        'Variety,Crop,Notes,Source\n../../evil,tomato,"--> shown <!-- %% x %%","a: {b"\n"---\nprivate: false",leek,,"#x"\n',
    });
    await ingest(dir, "list.csv", "--write");
    const files = filesIn(dir);
    expect(Object.keys(files).filter((file) => file.startsWith("varieties/"))).toEqual([
      "varieties/evil.md",
      "varieties/private-false.md",
    ]);
    const { varieties } = await recordsIn(dir);
    expect([...varieties.values()].map((variety) => variety.private)).toEqual([true, true]);
    expect(varieties.get("evil")?.source?.name).toBe("a: {b");
    expect(files["varieties/evil.md"]?.match(/-->/g)).toHaveLength(1);
    expect(files["varieties/evil.md"]).not.toContain("%%");
  });
});
