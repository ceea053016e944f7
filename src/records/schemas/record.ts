/** The keys that every record has. */
import { text, truth } from "./fields.ts";
import { forViewers, forYou } from "./meaning.ts";

export const recordKeys = {
  title: forViewers("what it is called; where this is left out, the file's name is it", "Long Bed", text.optional()),
  private: forYou(
    "true keeps it, and all that lies in it, grows in it or shows it, from viewers",
    "true",
    truth.optional(),
  ),
};
