/** Puts the page to write outdoors to work: the line, the photo, and the way home of what was kept. */
import { keepForGood, keepOffline } from "../../field-list/phone/garden-mode.ts";
import { at } from "../../field-list/phone/page.ts";
import { showHome } from "./home.ts";
import { showPhotos } from "./photos.ts";
import { openQueue } from "./queue-store.ts";
import type { OutdoorsData } from "./shapes.ts";
import { showWriting } from "./writing.ts";

void start(JSON.parse(at("outdoors").textContent ?? "") as OutdoorsData);

async function start(data: OutdoorsData): Promise<void> {
  const store = await openQueue();
  document.documentElement.dataset.live = "";
  const writing = showWriting(data, store, () => home.changed());
  const home = showHome(data, store, writing.edit);
  showPhotos(data, store, { bed: writing.bed, kept: home.changed });
  keepForGood();
  at("keeps-nothing").hidden = store.lasts;
  if (!store.lasts) at("offline").textContent = "Not kept: see Home";
  else if (data.worker !== undefined) void keepOffline(data.worker);
  // Without a worker the page is there without a network only as a file.
  const file = document.getElementById("save-page");
  if (data.worker === undefined && file !== null) file.hidden = false;
  home.changed();
  document.documentElement.dataset.ready = "";
}
