// Takes: files to be written, numbers of processes.
// Gives: one way to write a file whole, whether a process still runs, and what stands for the tool as it is.
// Never does: know what stands in a file.
export { isRunning } from "./running.ts";
export { sourcesVersion } from "./sources-version.ts";
export { createText, makeWhole, throughPartFile, writeWhole } from "./write-whole.ts";
