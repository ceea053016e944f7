/**
 * The name of a photo that the viewpoint page takes: bed, viewpoint and local time, so that ingest puts it where it
 * belongs. No room of Node is used here, since the page itself runs it.
 */

export interface ViewpointName {
  readonly bed: string;
  readonly viewpoint: string;
}

/** "long-bed__gate__2026-07-18T09-15-00.jpg"; `time` is the local wall clock "09:15:00". */
export function viewpointFileName(bed: string, viewpoint: string, day: string, time: string): string {
  const safe = (name: string) => name.replace(/[\s/\\:*?"<>|]+/g, "-").replace(/_{2,}/g, "_");
  return `${safe(bed)}__${safe(viewpoint)}__${day}T${time.replaceAll(":", "-")}.jpg`;
}

/** Bed and viewpoint in such a name; undefined in any other. */
export function viewpointInName(name: string): ViewpointName | undefined {
  const [bed, viewpoint, when, ...more] = name.split("__");
  if (!bed || !viewpoint || !when || more.length > 0 || !/^\d{4}-\d\d-\d\dT/.test(when)) return undefined;
  return { bed, viewpoint };
}
