/** Pages that ask something, and have no box to write in. */
import { answerByTap } from "./answering.ts";
import { undoBar } from "./undo-bar.ts";

const bar = document.getElementById("undo-bar");
if (bar !== null) answerByTap(undoBar(bar), bar.dataset.notReached ?? "");
