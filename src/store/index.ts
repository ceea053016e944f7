// Takes  nothing.
// Gives  the version of the tool, and what was made ready for it when it was built.
// Never  holds anything of a person's.
export { preparedFolder, preparedText } from "./prepared.ts";
export { sourcesDigest, toolVersion } from "./tool-version.ts";
