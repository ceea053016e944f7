/** A line by dictation, where the browser has it. It begins by a tap and never by itself: what is said may leave the phone. */
import { at, onTap } from "../../field-list/phone/page.ts";
import { putAtCaret } from "./caret.ts";

/** What of the Web Speech API is used; browsers have it under one of two names. */
interface Recognition {
  lang: string;
  interimResults: boolean;
  onresult: ((event: { readonly results: ArrayLike<ArrayLike<{ readonly transcript: string }>> }) => void) | null;
  onerror: ((event: { readonly error: string }) => void) | null;
  onend: (() => void) | null;
  start(): void;
  stop(): void;
}
type MakeRecognition = new () => Recognition;

export function showSpeaking(language: string, line: HTMLInputElement, changed: () => void): void {
  const has = globalThis as { SpeechRecognition?: MakeRecognition; webkitSpeechRecognition?: MakeRecognition };
  const Making = has.SpeechRecognition ?? has.webkitSpeechRecognition;
  if (Making === undefined) return;
  const button = at("speak");
  let listening: Recognition | undefined;

  function begin(Make: MakeRecognition): void {
    const [before, caret] = [line.value, line.selectionStart ?? line.value.length];
    listening = new Make();
    listening.lang = language;
    listening.interimResults = true;
    listening.onresult = ({ results }) => {
      line.value = before;
      line.setSelectionRange(caret, caret);
      const words = Array.from(results, (result) => result[0]?.transcript ?? "").join(" ");
      putAtCaret(line, words.replace(/\s+/gu, " ").trim());
      changed();
    };
    listening.onerror = ({ error }) => {
      const isBarred = error === "not-allowed" || error === "service-not-allowed";
      at("told").textContent = isBarred
        ? "The browser may not listen. Allow it the microphone, or type."
        : "Nothing was understood. Dictation often needs a signal; typing does not.";
    };
    listening.onend = () => {
      listening = undefined;
      say();
    };
    listening.start();
    say();
  }

  function say(): void {
    button.textContent = listening === undefined ? "Speak" : "Stop";
    button.setAttribute("aria-pressed", String(listening !== undefined));
  }

  onTap("speak", () => {
    at("told").textContent = "";
    if (listening === undefined) begin(Making);
    else listening.stop();
  });
  document.addEventListener("visibilitychange", () => listening?.stop());
  button.hidden = false;
  at("speech").hidden = false;
}
