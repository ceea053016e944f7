/** The keys that every record has. */
import { text, truth } from "./fields.ts";

export const recordKeys = {
  title: text.optional(),
  private: truth.optional(),
};
