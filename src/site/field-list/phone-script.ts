/** The worker that runs on the phone, made from phone/ when the tool is built (scripts/build/phone-scripts.ts). */
import { preparedText } from "../../store/index.ts";

/** The worker that keeps `pages`: path in the site to SHA-256 in base64. */
export function offlineWorker(pages: Readonly<Record<string, string>>, version: string): string {
  return `const pages = ${JSON.stringify(pages)};\nconst version = ${JSON.stringify(version)};\n${preparedText("phone/worker.js")}`;
}
