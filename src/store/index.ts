// Takes: files to be written, numbers of processes.
// Gives: one way to write a file whole, whether a process still runs, the version of the tool, and what was made ready for it.
// Never does: know what stands in a file.
export { preparedFolder, preparedText } from "./prepared.ts";
export { isRunning } from "./running.ts";
export { sourcesDigest, toolVersion } from "./tool-version.ts";
export { createText, makeWhole, throughPartFile, writeWhole } from "./write-whole.ts";
