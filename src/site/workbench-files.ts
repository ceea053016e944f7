/** Files that only the workbench has, below the field pages: the script of the box to write in, and the names it goes by. No record makes a page of such a name. */
export const WRITE_SCRIPT = "@write.js";
export const NAMES = "@names.json";
