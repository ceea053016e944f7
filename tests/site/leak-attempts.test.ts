/** More than two hundred ways in which something private could get out. None may. */
import { describe, expect, test } from "vitest";
import { publicCaptions } from "../../src/site/index.ts";
import type { Files } from "../records/records-of.ts";
import { type Attempt, attempt, attempts } from "./leak-attempts.ts";

type Change = { readonly [file: string]: Files[string] | undefined };
type Row = readonly [name: string, change: Change];

const day = "notes/2026-05-18.md";
const note = (text: string): Change => ({ [day]: text });
const said = (words: string): Change =>
  note(`---\nbed: Long Bed\n---\nWords: ${words}.\n\n- lost 2 Musselburgh leek to ${words}\n- weeded, ${words}\n`);

function neverTold(rows: readonly Row[], secret: RegExp, more: (found: Attempt) => void = () => undefined) {
  test.each(rows)("%s", async (_, change) => {
    const found = await attempt(change);
    expect(secret.exec(found.told)?.[0]).toBeUndefined();
    more(found);
  });
}

test("what is public is told, or none of this shows anything", async () => {
  const { told, stops } = await attempt({
    ...note("---\nbed: Long Bed\n---\nTOLDSTORY is here.\n\n- lost 2 Musselburgh leek to TOLDCAUSE\n"),
    "photos/long-bed/2026-06-13.jpg": "",
  });
  for (const word of ["TOLDSTORY", "TOLDCAUSE", "Long and wide", "Old kind", "May tour", "2026-06-13.jpg", "A garden."])
    expect(told).toContain(word);
  expect(stops).toBe(false);
});

describe("baseline", () => {
  neverTold(
    [["as it stands", {}]],
    /doctor|Secret Nursery|Black Velvet|SECRETSITE|YARDBED|Hidden Yard|"Shed"|54\.3|7\.77|77 kg/,
  );
});

const marked =
  "\n- lost 2 Musselburgh leek in Long Bed to BURIEDBOX\n- weeded Long Bed round the BURIEDBOX\n\nA long story of the BURIEDBOX under the stone.\n";

describe("1. a private mark that is not where it is read", () => {
  const heads = [
    "\n---\nprivate: true\nbed: Long Bed\n---\n",
    "\n\n\n---\nprivate: true\n---\n",
    " ---\nprivate: true\n---\n",
    "\t---\nprivate: true\n---\n",
    "----\nprivate: true\n----\n",
    "-----\nprivate: true\n-----\n",
    "--\nprivate: true\n--\n",
    "—-\nprivate: true\n—-\n",
    "—\nprivate: true\n—\n",
    "–––\nprivate: true\n–––\n",
    "−−−\nprivate: true\n−−−\n",
    "+++\nprivate = true\n+++\n",
    ";;;\nprivate: true\n;;;\n",
    "```yaml\nprivate: true\n```\n",
    "# 18 May\n---\nprivate: true\n---\n",
    "# 18 May\n\n---\nprivate: true\n---\n",
    "\uFEFF\uFEFF---\nprivate: true\n---\n",
    "\u200b---\nprivate: true\n---\n",
    "\u00a0---\nprivate: true\n---\n",
    "private: true\n",
    "Private: yes\n",
    "PRIVATE\n",
    "# Private\n",
    "#private\n",
    "[private]\n",
    "**private**\n",
    "> private: true\n",
    "- private: true\n",
    "| private: true |\n",
    '{"private": true}\n',
    "<!-- -->\nprivate: true\n",
    "private = true\n",
    "private:true\n",
    "not public\n",
    "public: false\n",
    "publish: no\n",
    "visibility: private\n",
    "tags: garden, private\n",
    "---\nprivate: true\n\n",
    "---\nprivate: true\n----\n",
    "--- yaml\nprivate: true\n---\n",
    "---\ntitle: Peas: early\nprivate: true\n---\n",
    "---\n\tprivate: true\n---\n",
    "---\n- private: true\n---\n",
    "---\nprivate true\n---\n",
    "---\nmeta: {private: true}\n---\n",
  ];
  neverTold(
    heads.map((head): Row => [JSON.stringify(head), note(head + marked)]),
    /BURIEDBOX/,
    ({ stops }) => expect(stops).toBe(true),
  );
  neverTold(
    [
      ["line ends of an old machine", note(`---\nprivate: true\n---\n${marked}`.replaceAll("\n", "\r"))],
      ["closed with dots", note(`---\nprivate: true\n...\n${marked}`)],
      ["not UTF-8", { [day]: Buffer.from(`---\nprivate: true\n---\nCaf\xe9\n${marked}`, "latin1") }],
      ["UTF-16", { [day]: Buffer.from(`\ufeff---\nprivate: true\n---\n${marked}`, "utf16le") }],
      ["UTF-16 without a mark", { [day]: Buffer.from(`---\nprivate: true\n---\n${marked}`, "utf16le") }],
    ],
    /BURIEDBOX/,
  );
});

describe("4. other words for private", () => {
  const keys =
    "visibility: private|secret: true|hidden: true|public: false|draft: true|Private: true|PRIVATE: yes|private: ja|private: on|private: 1|private: ture|privat: ja|privte: true|status: private|publish: no|tags: [private]|not public: true|geheim: true|prviate: true|confidential: yes|private note: true|privacy: true|is private: true|keep private: true|published: false|access: me|unlisted: true|audience: family|privée: oui|private:|privado: sí";
  neverTold(
    keys.split("|").map((key): Row => [key, note(`---\n${key}\n---\n${marked}`)]),
    /BURIEDBOX/,
    ({ stops }) => expect(stops).toBe(true),
  );
  neverTold(
    ["private: true", "secret: yes", "private: ture", "hidden: true", "public: no"].map(
      (key): Row => [
        `garden.md: ${key}`,
        {
          "garden.md": `---\nname: Testgarten\n${key}\n---\nBURIEDBOX in the garden.\n`,
          ...note(`---\nbed: Long Bed\n---\n${marked}`),
        },
      ],
    ),
    /BURIEDBOX|Testgarten/,
  );
  neverTold(
    ["beds", "varieties", "gear"].map(
      (kind): Row => [
        `a record of ${kind}`,
        { [`${kind}/one-thing.md`]: "---\ntitle: One Buriedthing\nsecret: true\n---\nBURIEDBOX\n" },
      ],
    ),
    /BURIEDBOX|Buriedthing/,
  );
});

describe("2. a bed, variety or site of which the file is not read for sure", () => {
  const events = {
    "notes/2026-05-19.md":
      "- planted 7 Musselburgh leek in Secret Nursery\n- lost 2 Musselburgh leek in Secret Nursery to BURIEDBOX\n",
  };
  const gone = { ...events, "beds/secret-nursery.md": undefined };
  const mark = "---\ntitle: Secret Nursery\nprivate: true\n---\n";
  neverTold(
    [
      ["as it should be", events],
      ["not text", { ...events, "beds/secret-nursery.md": new Uint8Array([0, 1, 2, 0, 255, 0, 254]) }],
      ["empty", { ...events, "beds/secret-nursery.md": "" }],
      ["blank", { ...events, "beds/secret-nursery.md": "\n \n" }],
      ["zero bytes after a crash", { ...events, "beds/secret-nursery.md": new Uint8Array(90) }],
      ["refused", { ...events, "beds/secret-nursery.md": Object.assign(new Error("x"), { code: "EACCES" }) }],
      [".markdown", { ...gone, "beds/secret-nursery.markdown": mark }],
      [".md.txt", { ...gone, "beds/secret-nursery.md.txt": mark }],
      [".mdx", { ...gone, "beds/secret-nursery.mdx": mark }],
      [".md~", { ...gone, "beds/secret-nursery.md~": mark }],
      ["no ending", { ...gone, "beds/secret-nursery": mark }],
      ["Beds/", { ...gone, "Beds/secret-nursery.md": mark }],
      ["bed/", { ...gone, "bed/secret-nursery.md": mark }],
      ["beeds/", { ...gone, "beeds/secret-nursery.md": mark }],
      ["under another name", { ...gone, "beds/b7.md.txt": mark }],
      ["a blank line before its mark", { ...events, "beds/secret-nursery.md": `\n${mark}` }],
      ["another file of its id", { ...events, "beds/Secret-Nursery.md": "---\ntitle: Secret Nursery\n---\n" }],
    ],
    /Secret Nursery|secret-nursery|BURIEDBOX/,
  );
  neverTold(
    [
      ["its site misspelt", { "beds/yard-bed.md": "---\ntitle: Yard Bed Zed\nsite: hidden yrd\n---\nYARDBEDBODY\n" }],
      ["its site gone", { "sites/back-yard.md": undefined }],
      [
        "its site renamed",
        { "sites/back-yard.md": undefined, "sites/courtyard.md": "---\ntitle: Courtyard\nprivate: true\n---\n" },
      ],
      ["its site empty", { "sites/back-yard.md": "" }],
      ["its site of another ending", { "sites/back-yard.md": undefined, "sites/back-yard.md.txt": mark }],
    ],
    /Yard Bed Zed|YARDBEDBODY/,
  );
  neverTold(
    ["Secret Nurserry", "Secret Nursry", "Secret Nurserey", "Secretnursery", "secret-nursery", "Sercet Nursery"].map(
      (name): Row => [
        `named ${name}`,
        note(
          `---\nbed: ${name}\n---\nAbout ${name}: BURIEDBOX.\n\n- planted 4 Musselburgh leek in ${name}\n- lost 1 Musselburgh leek in ${name} to BURIEDBOX\n`,
        ),
      ],
    ),
    /Secret ?Nurs|Sercet|BURIEDBOX/i,
  );
  neverTold(
    ["Black Velvt", "Black Velvets", "Blackvelvet", "Black  velvet F1", "Blck Velvet"].map(
      (name): Row => [
        `named ${name}`,
        note(`- planted 4 ${name} tomato in Long Bed\n- picked 2 kg ${name} from Long Bed\n`),
      ],
    ),
    /Bl?a?ck\s*Velve?t/i,
  );
  neverTold(
    [
      [
        "named in private lines alone",
        { "notes/2026-05-17-y.md": "---\nprivate: true\n---\n- planted 3 Ghostly tomato in Far Corner\n" },
      ],
    ],
    /Ghostly|Far Corner/,
  );
});

describe("3. photos", () => {
  const mark = "---\nprivate: true\n---\n";
  const at = "photos/long-bed/";
  const none = ({ photos }: Attempt) => expect(photos).toEqual([]);
  neverTold(
    [
      ["marked", { [`${at}2026-06-13.jpg`]: "", [`${at}2026-06-13.md`]: mark }],
      ["two endings", { [`${at}2026-06-13.jpg`]: "", [`${at}2026-06-13.jpeg`]: "", [`${at}2026-06-13.md`]: mark }],
      [
        "its own file says otherwise",
        {
          [`${at}2026-06-13.jpg`]: "",
          [`${at}2026-06-13.md`]: mark,
          [`${at}2026-06-13.jpg.md`]: "---\ncaption: x\n---\n",
        },
      ],
      [
        "the other file says otherwise",
        {
          [`${at}2026-06-13.jpg`]: "",
          [`${at}2026-06-13.jpg.md`]: mark,
          [`${at}2026-06-13.md`]: "---\ncaption: x\n---\n",
        },
      ],
      ["capital letters", { [`${at}2026-06-13 A.JPG`]: "", [`${at}2026-06-13 a.md`]: mark }],
      [
        "an edited copy",
        { [`${at}2026-06-13.jpg`]: "", [`${at}2026-06-13-edited.jpg`]: "", [`${at}2026-06-13.md`]: mark },
      ],
      [
        "a copy of the same bytes",
        { [`${at}2026-06-13.jpg`]: "", "photos/2026-06-14/other.jpg": "", [`${at}2026-06-13.md`]: mark },
      ],
      ["a blank line first", { [`${at}2026-06-13.jpg`]: "", [`${at}2026-06-13.md`]: `\n${mark}` }],
      ["not text", { [`${at}2026-06-13.jpg`]: "", [`${at}2026-06-13.md`]: new Uint8Array([0, 1, 2]) }],
      ["a text file", { [`${at}2026-06-13.jpg`]: "", [`${at}2026-06-13.txt`]: "private: true" }],
      ["another key", { [`${at}2026-06-13.jpg`]: "", [`${at}2026-06-13.md`]: "---\nhidden: true\n---\n" }],
      ["of a private bed", { "photos/secret-nursery/2026-06-13.jpg": "" }],
      ["of a folder like a private bed's", { "photos/secret-nurserry/2026-06-13.jpg": "" }],
      ["of a folder of a private bed in capitals", { "photos/Secret Nursery/2026-06-13.jpg": "" }],
      [
        "shown in a private note alone",
        { [`${at}2026-06-13.jpg`]: "", "notes/2026-05-17-x.md": `${mark}![x](../${at}2026-06-13.jpg)\n` },
      ],
      [
        "shown in a note in doubt",
        { [`${at}2026-06-13.jpg`]: "", "notes/2026-05-17-x.md": `\n${mark}![x](../${at}2026-06-13.jpg)\n` },
      ],
      [
        "shown in a note without a day",
        { [`${at}2026-06-13.jpg`]: "", "notes/may.md": `${mark}![x](../${at}2026-06-13.jpg)\n` },
      ],
      [
        "of a bed that is misspelt",
        { "photos/2026-06-13.jpg": "", "photos/2026-06-13.md": "---\nbed: Secret Nurserry\n---\n" },
      ],
    ],
    /2026-06-1[34]/,
    none,
  );
});

describe("5. positions", () => {
  const spellings = [
    "54.31234, -1.57321",
    "54.31, -1.57",
    "51.48123, -0.17654",
    "54.31234 -1.57321",
    "54,31234; -1,57321",
    "54·31234 N 1·57321 W",
    "54. 312 34 and 1. 573 21",
    "N54.31234 W1.57321",
    "54.31234° N, 1.57321° W",
    "latitude 54.31",
    "lat: 54.312 lon: -1.573",
    "54°18'44\"N 1°34'24\"W",
    "54° 18.741' N",
    "54 deg 18 min 44 sec north",
    "54d18m44s N, 1d34m24s W",
    "54-18-44 N 1-34-24 W",
    "54 18 44 N 1 34 24 W",
    "N 54 18.741 W 001 34.392",
    "54:18:44N 1:34:24W",
    "54'31234 1'57321",
    "0.947928 rad, -0.027457 rad",
    "54.3123 deg, 358.42679 E",
    "30U 592760 6019210",
    "30U 592760mE 6019210mN",
    "30U XF 92760 19210",
    "30UXF9276019210",
    "NZ 27758 91234",
    "NZ2775891234",
    "NZ 277 912",
    "O 15904 34671",
    "427758 491234",
    "2600000, 1200000",
    "IO94fh14dx",
    "IO94fh",
    "9C6W8C6G+W5",
    "8C6G+W5 Gullstone",
    "٥٤٫٣١٢٣٤ ١٫٥٧٣٢١",
    "５４．３１２３４, -１．５７３２１",
    "fifty-four point three one two three four north",
    "geo:54.31234,-1.57321",
    "@54.31234,-1.57321,17z",
  ];
  const digits = (text: string) =>
    text
      .slice(0, 5)
      .trim()
      .replace(/[.*+?^${}()|[\]\\]/g, "\\$&");
  test.each(spellings.map((spelled) => [spelled]))("%s", async (spelled) => {
    for (const change of [
      said(`thieves at ${spelled}`),
      { ...said(`thieves at ${spelled}`), "garden.md": "---\nname: T\n---\n" },
    ]) {
      expect((await attempt(change)).told).not.toMatch(new RegExp(digits(spelled)));
    }
  });
  neverTold(
    [
      [
        "a comma slip in the place",
        {
          "garden.md":
            "---\nname: T\nplace: {latitude: 54,31234, longitude: -1,57321}\n---\nAt 54.31234, -1.57321 by the lane.\n",
        },
      ],
    ],
    /54[.,]31/,
  );
  test.each([
    ["54.3 kg of squash and 5.6 kg of beans"],
    ["12.50, 13.75 and 14.20 kg"],
    ["0.25 l, 0.50 l"],
    ["on 16.05. and 18.05."],
    ["from 18:45 to 19:30 N side"],
    ["packet AB12"],
    ["lot 27758"],
    ["54.312 kg"],
    ["2026-05-16"],
    ["pH 6.25, 6.75"],
    ["row 12 5 E"],
    ["10,000 bees and 12,000 more"],
    ["EC 1.85, pH 6.10"],
    ["1.25 m, 1.75 m"],
    ["N 12 P 5 K 14"],
  ])("%s is none", async (words) => {
    expect((await attempt(said(words))).told).toContain(words);
  });
});

describe("6. private names in public words", () => {
  neverTold(
    [
      ["a bed's title", { "beds/behind.md": "---\ntitle: Behind Shed\n---\n" }],
      [
        "a source",
        { "varieties/musselburgh.md": "---\ntitle: Musselburgh\ncrop: leek\nsource: seed box in the Shed\n---\n" },
      ],
      ["a saying", { "varieties/musselburgh.md": "---\ntitle: Musselburgh\ncrop: leek\nsay it as: like Shed\n---\n" }],
      [
        "a caution",
        { "varieties/musselburgh.md": "---\ntitle: Musselburgh\ncrop: leek\ncaution: sprays are in the Shed\n---\n" },
      ],
      [
        "another spelling",
        { "varieties/musselburgh.md": "---\ntitle: Musselburgh\ncrop: leek\nalso spelled: [Shed leek]\n---\n" },
      ],
      [
        "another name of a bed",
        { "beds/long-bed.md": "---\ntitle: Long Bed\nsite: hill\nalso called: [by the Shed]\n---\n" },
      ],
      [
        "an episode's title",
        {
          "episodes/2026-05-tour/index.md":
            "---\ntitle: May tour of the Shed\ndate: 2026-05-20\nstatus: published\n---\n",
        },
      ],
      [
        "a credit",
        {
          "photos/long-bed/2026-06-13.jpg": "",
          "photos/long-bed/2026-06-13.md": "---\ncredit: Ann in the Shed\n---\n",
        },
      ],
      [
        "a caption",
        { "photos/long-bed/2026-06-13.jpg": "", "photos/long-bed/2026-06-13.md": "---\ncaption: the Shed\n---\n" },
      ],
      ["a viewpoint", { "beds/long-bed.md": "---\ntitle: Long Bed\nsite: hill\nviewpoints: [{name: Shed}]\n---\n" }],
      ["a soil", { "beds/long-bed.md": "---\ntitle: Long Bed\nsite: hill\nsoil: from the Shed\n---\n" }],
      [
        "what a bed is built of",
        { "beds/long-bed.md": "---\ntitle: Long Bed\nsite: hill\nbuilt: boards of the Shed\n---\n" },
      ],
      ["a place name", { "sites/hill.md": "---\ntitle: Hill\nplace name: by the Shed\n---\n" }],
      ["gear", { "gear/net.md": "---\ntitle: Net\nfrom: the Shed\n---\n" }],
      [
        "a trial",
        {
          "trials/t.md":
            "---\nquestion: Better than in the Shed?\nmeasure: weight\narms: [{name: a, bed: long-bed}]\n---\n",
        },
      ],
      [
        "a promise",
        {
          "episodes/2026-05-tour/index.md":
            "---\ntitle: May tour\ndate: 2026-05-20\nstatus: published\npromised: [the Shed]\n---\n",
        },
      ],
      ["a cause", said("mice of the Shed")],
      ["in quotation marks", said("mice of the 'Shed'")],
      ["in curled ones", said("mice of the \u2018Shed\u2019")],
      ["after letters left out", said("mice of th'Shed")],
      ["a reason", note("---\nbed: Long Bed\n---\n- planted 3 Musselburgh leek because the Shed was full\n")],
      ["a giver", note("- given 3 Musselburgh leek by the people of the Shed\n")],
      ["the garden's words", { "garden.md": "---\nname: T\n---\nBehind the Shed.\n" }],
      ["a note's title", note("---\ntitle: In the Shed\nbed: Long Bed\n---\nx\n")],
    ],
    /Shed\b/,
  );
  neverTold(
    [
      [
        "a private episode's",
        {
          "episodes/wedding/index.md": "---\ntitle: Wedding Surprise\ndate: 2026-06-01\nprivate: true\n---\n",
          ...said("shade of the Wedding Surprise"),
        },
      ],
      [
        "a private note's",
        {
          "notes/2026-05-17-x.md": "---\nprivate: true\ntitle: Wedding Surprise\n---\nx\n",
          ...said("the Wedding Surprise"),
        },
      ],
      [
        "with a slip",
        {
          "episodes/wedding/index.md": "---\ntitle: Wedding Surprise\ndate: 2026-06-01\nprivate: true\n---\n",
          ...said("the Weding Surprise"),
        },
      ],
    ],
    /Wedd?ing/,
  );
  neverTold(
    [
      [
        "a planned film in which a promise is kept",
        {
          "episodes/2026-07-secret-collab/index.md": "---\ntitle: Collab with Bob\ndate: 2026-07-01\n---\n",
          "episodes/2026-05-tour/index.md":
            "---\ntitle: May tour\ndate: 2026-05-20\nstatus: published\npromised:\n  - {what: show the leeks, kept: 2026-07-secret-collab}\n---\n",
        },
      ],
    ],
    /secret-collab|Collab/,
  );
  const mark = "---\nprivate: true\n---\n";
  const photo = { "photos/long-bed/2026-06-13.jpg": "", "photos/long-bed/2026-06-13.md": mark };
  neverTold(
    [
      [
        "in a line",
        { ...photo, ...note("---\nbed: Long Bed\n---\n- weeded ![ANNASFACE](../photos/long-bed/2026-06-13.jpg)\n") },
      ],
      [
        "in a story",
        {
          ...photo,
          ...note(
            "---\nbed: Long Bed\n---\nLook: ![ANNASFACE at the gate](../photos/long-bed/2026-06-13.jpg) there.\n",
          ),
        },
      ],
      [
        "by reference",
        {
          ...photo,
          ...note("---\nbed: Long Bed\n---\nLook: ![ANNASFACE][g] there.\n\n[g]: ../photos/long-bed/2026-06-13.jpg\n"),
        },
      ],
      [
        "below a line",
        {
          ...photo,
          ...note("---\nbed: Long Bed\n---\n- weeded\n  - ![ANNASFACE](../photos/long-bed/2026-06-13.jpg)\n"),
        },
      ],
    ],
    /ANNASFACE/,
  );
});

describe("6. remarks to oneself", () => {
  const key = (text: string): Change => ({ "beds/long-bed.md": `---\ntitle: Long Bed\nsite: hill\n---\n${text}` });
  neverTold(
    [
      [
        "torn open by a private name",
        key("Wide.\n\n<!-- Behind the Secret Nursery\n\nlies the KEYUNDERPOT\n\n-->\n\nMore.\n"),
      ],
      [
        "torn open in a note",
        note("---\nbed: Long Bed\n---\nFine.\n\n<!-- about the Secret Nursery:\n\nKEYUNDERPOT\n\n-->\n"),
      ],
      ["over a list", note("---\nbed: Long Bed\n---\nFine.\n\n<!-- mine\n\n- KEYUNDERPOT\n\n-->\n")],
      [
        "opened in one item, closed in another",
        note("---\nbed: Long Bed\n---\n- the robin <!-- KEYUNDERPOT\n- weeded, KEYUNDERPOT\n- and KEYUNDERPOT -->\n"),
      ],
      [
        "in a line",
        note(
          "---\nbed: Long Bed\n---\n- planted 3 Musselburgh leek <!-- KEYUNDERPOT --> row 2\n  - from <!-- KEYUNDERPOT --> me\n",
        ),
      ],
      [
        "never closed",
        note("---\nbed: Long Bed\n---\nFine. <!-- KEYUNDERPOT\n\nKEYUNDERPOT\n\n- weeded, KEYUNDERPOT\n"),
      ],
      [
        "in a caption",
        {
          "photos/long-bed/2026-06-13.jpg": "",
          "photos/long-bed/2026-06-13.md": "---\n---\nNice <!-- KEYUNDERPOT --> leaves\n",
        },
      ],
      [
        "in a caption's key",
        {
          "photos/long-bed/2026-06-13.jpg": "",
          "photos/long-bed/2026-06-13.md": '---\ncaption: "fine <!-- KEYUNDERPOT -->"\n---\n',
        },
      ],
      [
        "in a source",
        {
          "varieties/musselburgh.md":
            '---\ntitle: Musselburgh\ncrop: leek\nsource: "a swap <!-- KEYUNDERPOT -->"\n---\n',
        },
      ],
      ["of another editor", key("Long. %% KEYUNDERPOT %% wide\n")],
      ["of another editor, over lines", key("Long.\n\n%%\nKEYUNDERPOT\n%%\n\nwide\n")],
      ["in the garden's words", { "garden.md": "---\nname: T\n---\nHello <!-- KEYUNDERPOT --> all.\n" }],
    ],
    /KEYUNDERPOT/,
  );
});

describe("what films say", () => {
  const spoken = async (...lines: readonly string[]) => {
    const { garden, open } = await attempt({});
    const cues = lines.map((line, at) => `00:0${at}.000 --> 00:0${at + 1}.000\n${line}\n`).join("\n");
    const bytes = new TextEncoder().encode(`WEBVTT\n\n${cues}`);
    const captions = new Map([["2026-05-tour", { file: "episodes/2026-05-tour/c.vtt", bytes }]]);
    const film = publicCaptions(garden, open, { captions }).captions.get("2026-05-tour");
    return new TextDecoder().decode(film?.bytes);
  };
  test.each([
    ["a position", ["we are at 54.31234 north", "and the leeks are up"]],
    ["a position in words", ["we are at 54 point 31234 north", "and the leeks are up"]],
    ["a position over two captions", ["we are at 54.31234,", "-1.57321 as you know", "and the leeks are up"]],
    ["a private name with a slip", ["behind it is the Secret Nurserry", "and the leeks are up"]],
    ["one over two captions", ["behind it is the Secret", "Nursery of ours", "and the leeks are up"]],
  ])("%s", async (_, lines) => {
    const text = await spoken(...lines);
    expect(text).not.toMatch(/54|1\.57|Secret|Nurser/);
    expect(text).toContain("and the leeks are up");
  });
});

describe("every new field", () => {
  const inLongBed = (lines: string): Change => note(`---\nbed: Long Bed\n---\n${lines}\n`);
  neverTold(
    [
      ["a price of garden.md", { "garden.md": "---\nname: T\nprices: {leek: 914.37 a kg}\n---\nHello.\n" }],
      ["bought", inLongBed("- bought 3 Musselburgh leek for £914.37")],
      ["bought, each", inLongBed("- bought 3 Musselburgh leek from the market, 914.37 euros each")],
      ["planted, each", inLongBed("- planted 3 Musselburgh leek, £914.37 each")],
      ["sold", inLongBed("- sold 3 kg Musselburgh leek for $914.37")],
      ["sold, a bunch", inLongBed("- sold: 3 bunches of leeks, 914.37 € a bunch")],
      ["below a line", inLongBed("- bought 3 Musselburgh leek\n  - paid £914.37 for them")],
      ["in a settled line", inLongBed("- got the leeks\n  - = acquired: 3 Musselburgh leek for £914.37")],
    ],
    /914[.,]37/,
  );
  neverTold(
    [
      ["sold in a private bed", note("- sold 3 kg leeks from Secret Nursery to BURIEDBOX\n")],
      ["sold to people at it", inLongBed("- sold 3 kg leeks to the people of the Secret Nursery")],
      ["sold of a private variety", inLongBed("- sold 3 kg Black Velvet")],
      ["preserved of a private variety", inLongBed("- preserved: 3 jars of Black Velvet")],
      ["preserved from a private bed", inLongBed("- bottled 3 jars of tomatoes from Secret Nursery")],
      ["put in a private place", inLongBed("- froze 2 kg of peas for the Secret Nursery")],
      ["a plan for a private bed", note("- plan: 40 leeks in Secret Nursery, BURIEDBOX\n")],
      ["a plan with a private variety", inLongBed("- next year: 4 Black Velvet, BURIEDBOX")],
      ["a plan of one's own", inLongBed("- plan: sell the BURIEDBOX\n- planned: open the BURIEDBOX")],
      ["a task", inLongBed("- to do by Friday: move the BURIEDBOX")],
      ["what viewers asked", inLongBed("- asked: what is in the BURIEDBOX?")],
      ["a line that is a question", inLongBed("- lifted the onions by the Secret Nursery")],
      ["pins of next year", { "garden.md": "---\nname: T\nnext year: {long-bed: Black Velvet}\n---\nHello.\n" }],
      ["goals", { "garden.md": "---\nname: T\ngoals: [3 kg of Black Velvet]\n---\nHello.\n" }],
      ["given to", inLongBed("- gave away 3 Musselburgh leek to the keeper of the Secret Nursery")],
      ["acquired from", inLongBed("- acquired: 3 Musselburgh leek from the Secret Nursery")],
      ["seed saved of a private variety", inLongBed("- saved seed: Black Velvet, 30 g")],
      ["volunteers in a private bed", note("- volunteer: 3 tomatoes in Secret Nursery\n")],
      ["came back in a private bed", note("- came back: rhubarb in Secret Nursery\n")],
      ["how it is doing", inLongBed("- doing: leeks, better than in the Secret Nursery")],
      ["who helped", inLongBed("- weeded with the neighbour from the Secret Nursery")],
      ["who helped, below a line", inLongBed("- weeded\n  - with the neighbour from the Secret Nursery")],
      ["a move from a private bed", note("- moved 3 Musselburgh leek from Secret Nursery to Long Bed\n")],
      ["a table", inLongBed("| what | where |\n|---|---|\n| planted 3 Musselburgh leek | Secret Nursery |")],
      ["a box to tick", inLongBed("- [x] planted 3 Musselburgh leek in Secret Nursery")],
    ],
    /Secret Nursery|secret-nursery|BURIEDBOX|Black Velvet/i,
  );
  const words = (list: string): Change => ({ "words.md": list });
  neverTold(
    [
      ["a word for a private bed", { ...words("- the hole: Secret Nursery\n"), ...said("mice of the Hole") }],
      [
        "in a line",
        { ...words("- the hole: Secret Nursery\n"), ...note("- planted 3 Musselburgh leek in the hole\n") },
      ],
      ["for a private variety", { ...words("- BV: Black Velvet\n"), ...note("- planted 3 BV in Long Bed\n") }],
      ["the list itself", words("- the hole: Secret Nursery\n- BV: Black Velvet\n")],
      [
        "for a private bed of which the file is gone",
        {
          ...words("- the hole: Secret Nursery\n"),
          "beds/secret-nursery.md.txt": "---\nprivate: true\n---\n",
          "beds/secret-nursery.md": undefined,
          ...note("- planted 3 Musselburgh leek in Secret Nursery\n"),
        },
      ],
    ],
    /Secret Nursery|Black Velvet|\bBV\b|\bHole\b/,
  );
});

describe("public: only described", () => {
  const settings = { "garden.md": "---\nname: T\npublic: only described\n---\n" };
  neverTold(
    [
      ["a bed that only notes name", { ...settings, ...note("- planted 3 Musselburgh leek in Lilac Border\n") }],
      ["a variety that only notes name", { ...settings, ...note("- planted 3 Lilac Dream tomato in Long Bed\n") }],
      ["a photo of which nothing says anything", { ...settings, "photos/2026-06-13 Lilac.jpg": "" }],
      [
        "a private bed whose file is gone",
        {
          ...settings,
          "beds/secret-nursery.md": undefined,
          ...note("- planted 3 Musselburgh leek in Secret Nursery\n"),
        },
      ],
    ],
    /Lilac|Secret Nursery/,
  );
  test("lets out what a file describes", async () => {
    expect((await attempt({ ...settings, "photos/long-bed/2026-06-13.jpg": "" })).told).toMatch(
      /Long Bed.*2026-06-13/s,
    );
  });
});

describe("parts of a note that say so themselves", () => {
  const below = "- lost 2 Musselburgh leek in Long Bed to BURIEDBOX\n\nThe BURIEDBOX again.\n";
  const heads = [
    ...[
      "## Not for the film",
      "## Private",
      "## private",
      "### Off camera",
      "## Just for me",
      "## For my eyes (private)",
    ],
    ...[
      "## Private: the neighbours",
      "## CONFIDENTIAL",
      "## Long Bed (not for the film)",
      "## Long Bed, off the record",
    ],
    ...[
      "Not for viewers\n---------------",
      "Not for the film:",
      "**Off camera:**",
      "_not for the site:_",
      "(not for the film)",
    ],
    ...["## Don't mention this", "## Between you and me", "## Keep this to myself", "## Never on camera"],
    ...["- not for the film:", "- [ ] off camera:", "* private:"],
  ];
  neverTold(
    heads.map((head): Row => [head, note(`---\nbed: Long Bed\n---\n- weeded\n\n${head}\n\n${below}`)]),
    /BURIEDBOX/,
  );
  neverTold(
    heads.map(
      (head): Row => [
        `${head}, and a photo`,
        {
          ...note(`---\nbed: Long Bed\n---\n- weeded\n\n${head}\n\n![x](../photos/long-bed/2026-06-13.jpg)\n`),
          "photos/long-bed/2026-06-13.jpg": "",
        },
      ],
    ),
    /2026-06-13/,
  );
});

describe("people who gave and were given", () => {
  const variety = (obtained: string, more = "") => ({
    "varieties/musselburgh.md": `---\ntitle: Musselburgh\ncrop: leek\nsource: {name: Buriedname, obtained: ${obtained}}\n${more}---\n`,
  });
  neverTold(
    [
      ["a variety given by a person", variety("given by a person")],
      ["lent by a person", variety("lent by a person")],
      ["a gift of which nobody said whose", variety("gifted", "thank by name: true\n")],
      ["gear", { "gear/net.md": "---\ntitle: Net\nobtained: lent by a person\nfrom: Buriedname\n---\n" }],
      ...[
        "gave away 3 Musselburgh leek to Buriedname",
        "gave away 3 Musselburgh leek to buriedname",
        "sold 3 Musselburgh leek to Mrs Buriedname",
      ].map((line): Row => [line, note(`---\nbed: Long Bed\n---\n- planted 9 Musselburgh leek\n- ${line}\n`)]),
      ...[
        "acquired 3 Musselburgh leek from Buriedname",
        "planted 3 Musselburgh leek, from Buriedname",
        "planted 3 Musselburgh leek, a gift from Buriedname",
        "given 3 Musselburgh leek by Buriedname",
      ].map((line): Row => [line, note(`---\nbed: Long Bed\n---\n- ${line}\n`)]),
    ],
    /buriedname/i,
  );
  test("are named where the records allow it, and sellers always", async () => {
    expect((await attempt(variety("given by a person", "thank by name: true\n"))).told).toContain("Buriedname");
    expect((await attempt(variety("given by a seller"))).told).toContain("Buriedname");
    expect((await attempt(variety("bought"))).told).toContain("Buriedname");
    const school = note(
      "---\nbed: Long Bed\n---\n- planted 9 Musselburgh leek\n- gave away 3 Musselburgh leek to the school\n",
    );
    expect((await attempt(school)).told).toContain("to the school");
  });
});

test("two hundred attempts at least, none through", () => {
  console.info(`${attempts()} attempts to let something private out`);
  expect(attempts()).toBeGreaterThanOrEqual(200);
});
