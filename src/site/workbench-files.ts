/**
 * Files that only the workbench has, below the field pages: the script of the box to write in, the names it goes by, and the
 * script of what is tapped and dropped on other pages; and for phones which garden takes what they kept. No record makes a page of such a name.
 */
export const WRITE_SCRIPT = "@write.js";
export const TAP_SCRIPT = "@taps.js";
export const NAMES = "@names.json";
export const TAKES = "@outdoors.json";
