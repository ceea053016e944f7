/**
 * Files that only the workbench has, below the field pages: the script of the box to write in, the names it goes by, and the
 * script of questions that stand on other pages. No record makes a page of such a name.
 */
export const WRITE_SCRIPT = "@write.js";
export const ANSWER_SCRIPT = "@answer.js";
export const NAMES = "@names.json";
