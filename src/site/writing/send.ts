/** Asks the program that serves the page. */

/** Undefined when it does not answer. */
export async function send<Answer>(at: string, what: object): Promise<Answer | undefined> {
  try {
    const answer = await fetch(at, {
      method: "POST",
      headers: { "content-type": "application/json" },
      body: JSON.stringify(what),
    });
    if (answer.ok) return (await answer.json()) as Answer;
  } catch {}
  return undefined;
}
