/** A photo of a bed or from one of its spots: over the last one where the browser may show the camera, else by the phone's own camera. */
import { at, onTap, sheet } from "../../field-list/phone/page.ts";
import { clockOf, dayOf } from "../../field-list/phone/plan-clock.ts";
import { freshId } from "../../writing/draft.ts";
import type { QueueStore } from "./queue.ts";
import { LARGEST, type OutdoorsData, type QueuedPhoto, type Spot } from "./shapes.ts";

const JPEG_QUALITY = 0.92;

export interface PhotosGiven {
  bed(): string;
  kept(): void;
}

export function showPhotos(data: OutdoorsData, store: QueueStore, { bed, kept }: PhotosGiven): void {
  const dialog = sheet("photo-sheet");
  const [spots, strength] = [at<HTMLSelectElement>("spot"), at<HTMLInputElement>("strength")];
  const [last, video, picker] = [
    at<HTMLImageElement>("last"),
    at<HTMLVideoElement>("camera"),
    at<HTMLInputElement>("pick"),
  ];
  const canShow = isSecureContext && typeof navigator.mediaDevices?.getUserMedia === "function";

  /** Of the bed that is chosen first. */
  function offer(): void {
    const first = bed();
    const order = [...data.beds].sort((a, b) => Number(b.id === first) - Number(a.id === first));
    spots.replaceChildren(
      ...order.map(({ id, title }) => {
        const group = document.createElement("optgroup");
        group.label = title;
        const own = data.spots.filter((spot) => spot.bed === id);
        group.append(
          ...own.map((spot) => new Option(`${title}, ${spot.title}`, String(data.spots.indexOf(spot)))),
          new Option(`${title}, anywhere`, `bed ${id}`),
        );
        return group;
      }),
    );
  }

  const spotNow = (): Spot | undefined =>
    spots.value.startsWith("bed ") ? undefined : data.spots[Number(spots.value)];

  function showSpot(): void {
    const spot = spotNow();
    last.hidden = spot?.last === undefined;
    if (spot?.last !== undefined) {
      [last.src, last.width, last.height] = [spot.last.src, spot.last.width, spot.last.height];
      last.alt = `The last photo of ${spot.title}: match this view`;
    }
    at("stage").hidden = last.hidden && video.hidden;
    at("strength-row").hidden = last.hidden || video.hidden;
    at("no-last").hidden = !(spot !== undefined && spot.last === undefined);
  }

  async function showCamera(): Promise<void> {
    try {
      video.srcObject = await navigator.mediaDevices.getUserMedia({
        audio: false,
        video: { facingMode: { ideal: "environment" }, width: { ideal: 4032 }, height: { ideal: 3024 } },
      });
      video.hidden = false;
      await video.play();
    } catch {
      stopCamera();
      at("photo-told").textContent = "The browser may not use the camera. The phone’s own camera takes the photo.";
    }
    drawButtons();
  }

  function stopCamera(): void {
    if (video.srcObject instanceof MediaStream) for (const track of video.srcObject.getTracks()) track.stop();
    video.srcObject = null;
    video.hidden = true;
  }

  function drawButtons(): void {
    at("shoot").hidden = video.hidden;
    at("show-camera").hidden = !canShow || !video.hidden;
    showSpot();
  }

  /** The middle of the picture in the proportions of the last photo: what is seen is what is kept. */
  function seen(): Promise<Blob | null> {
    const shape = spotNow()?.last;
    const { videoWidth: width, videoHeight: height } = video;
    const wanted = shape === undefined ? width / height : shape.width / shape.height;
    const [cutWidth, cutHeight] = width / height > wanted ? [height * wanted, height] : [width, width / wanted];
    const canvas = document.createElement("canvas");
    canvas.width = Math.round(cutWidth);
    canvas.height = Math.round(cutHeight);
    canvas
      .getContext("2d")
      ?.drawImage(
        video,
        (width - cutWidth) / 2,
        (height - cutHeight) / 2,
        cutWidth,
        cutHeight,
        0,
        0,
        canvas.width,
        canvas.height,
      );
    return new Promise((done) => canvas.toBlob(done, "image/jpeg", JPEG_QUALITY));
  }

  async function keep(photo: Blob, taken: Date, ending: string): Promise<void> {
    const tell = (words: string) => {
      at("photo-told").textContent = words;
    };
    if (photo.size > LARGEST) return tell("It is larger than 40 MB. Bring it in from the phone’s photos at home.");
    const spot = spotNow();
    const of = spot?.bed ?? spots.value.replace(/^bed /u, "");
    const [day, time] = [dayOf(taken), clockOf(taken).replaceAll(":", "-")];
    const name = (spot?.fileName ?? "{day}T{time}.jpg").replace("{day}", day).replace("{time}", time);
    const entry: QueuedPhoto = {
      ...{ kind: "photo", id: freshId(), time: Date.now(), day, garden: data.garden, bed: of },
      ...(spot !== undefined && { viewpoint: spot.viewpoint }),
      ...{ name: name.replace(/\.jpg$/u, ending), modified: taken.getTime(), size: photo.size },
    };
    try {
      await store.put(entry, await photo.arrayBuffer());
    } catch {
      return tell("The phone could not keep it: its room may be full. Take home what waits, and try again.");
    }
    tell(`Kept on this phone: ${spots.selectedOptions[0]?.text ?? "the photo"}.`);
    kept();
  }

  async function shoot(): Promise<void> {
    const photo = await seen();
    if (photo === null) at("photo-told").textContent = "The camera gave no picture. Try again.";
    else await keep(photo, new Date(), ".jpg");
  }

  onTap("photo", () => {
    at("photo-told").textContent = "";
    offer();
    dialog.showModal();
    drawButtons();
    if (canShow) void showCamera();
  });
  onTap("show-camera", () => void showCamera());
  onTap("shoot", () => void shoot());
  spots.addEventListener("change", showSpot);
  const overlay = () => at("stage").style.setProperty("--strength", String(Number(strength.value) / 100));
  strength.addEventListener("input", overlay);
  picker.addEventListener("change", () => {
    const [file] = picker.files ?? [];
    picker.value = "";
    if (file !== undefined)
      void keep(file, new Date(file.lastModified), /\.\w+$/u.exec(file.name)?.[0].toLowerCase() ?? ".jpg");
  });
  dialog.addEventListener("close", stopCamera);
  addEventListener("pagehide", stopCamera);
  overlay();
}
