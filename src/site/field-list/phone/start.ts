/** Puts the list to work. Without this script the page is still a list to read, stop below stop. */
import { keepForGood, keepOffline, stayAwake } from "./garden-mode.ts";
import { openKeeping } from "./keeping.ts";
import { showNotes } from "./notes.ts";
import { showOverview } from "./overview.ts";
import { at, sheet } from "./page.ts";
import type { ListData } from "./shapes.ts";
import { showShots } from "./shots.ts";
import { showStops } from "./stops.ts";
import { showTalking } from "./talking.ts";

const list = JSON.parse(at("list").textContent ?? "") as ListData;
const keeping = openKeeping(list);

document.documentElement.dataset.live = "";
const { go } = showStops(keeping);
showShots(keeping);
showNotes(keeping);
showOverview(keeping, go);
showTalking(keeping);
showPictures();
stayAwake(keeping);
keepForGood();
if (!keeping.lasts()) at("offline").textContent = "Not kept: see Stops";
else if (list.worker !== undefined) void keepOffline(list.worker);

/** A picture to match, as large as the screen lets it be. */
function showPictures(): void {
  const dialog = sheet("picture-sheet");
  const large = at<HTMLImageElement>("large");
  for (const button of document.querySelectorAll<HTMLButtonElement>(".picture")) {
    button.addEventListener("click", () => {
      const small = button.querySelector("img") as HTMLImageElement;
      large.src = small.src;
      large.alt = small.alt;
      dialog.showModal();
    });
  }
}
