/** Pages on which questions are answered and photos dropped, and that have no box to write in. */
import { answerByTap } from "./answering.ts";
import { takeDrops } from "./dropping.ts";
import { undoBar } from "./undo-bar.ts";

const bar = document.getElementById("undo-bar");
if (bar !== null) {
  const show = undoBar(bar);
  const notReached = bar.dataset.notReached ?? "";
  answerByTap(show, notReached);
  takeDrops(show, notReached);
}
