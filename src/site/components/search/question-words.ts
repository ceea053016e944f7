/** Words of a question that name nothing: of "which variety is that squash" only the squash is looked for. */
const ASKING = new Set(
  `which what whats who where when how is was were are be been that this these those there the a an of in on at from for to it
  its one ones variety varieties cultivar sort sorts kind kinds type types called name named names do does did you your my me
  we i he she they them grow grows growing grew grown please show tell with and or again seed seeds plant plants`.split(
    /\s+/u,
  ),
);

/** All of it where nothing else is left. */
export function withoutAsking(words: readonly string[]): readonly string[] {
  const left = words.filter((word) => !ASKING.has(word));
  return left.length === 0 ? words : left;
}
