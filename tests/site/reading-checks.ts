/** What a reader may do to a page: a narrow window, larger letters, wider spaces, colours of their own, the keyboard. */
import type { Page } from "playwright-core";

/** WCAG 2.2, 1.4.12: each of these at once, and nothing may be lost. */
export const WIDE_SPACES = `* { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important; }
p { margin-bottom: 2em !important; }`;

/** How far the page can be pushed sideways, in CSS pixels; parts that scroll by themselves do not count. */
export function sideways(page: Page): Promise<number> {
  return page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
}

/** Texts that are cut off by their box, as "selector: text". */
export function cutTexts(page: Page): Promise<readonly string[]> {
  return page.evaluate(() => {
    const cut: string[] = [];
    for (const element of document.querySelectorAll<HTMLElement>("body *")) {
      const { overflowX, overflowY, clipPath, position } = getComputedStyle(element);
      const hides = (overflow: string) => overflow === "hidden" || overflow === "clip";
      const isOnlyHeard = position === "absolute" && clipPath !== "none";
      if (isOnlyHeard || (element.textContent ?? "").trim() === "") continue;
      const isCut =
        (hides(overflowX) && element.scrollWidth > element.clientWidth + 1) ||
        (hides(overflowY) && element.scrollHeight > element.clientHeight + 1);
      if (isCut) cut.push(`${element.tagName}.${element.className}: ${(element.textContent ?? "").slice(0, 60)}`);
    }
    return cut;
  });
}

/**
 * Things that can be reached by keyboard but do not show it, or whose sign of it cannot be seen, or that lie under something
 * that stays on the screen (WCAG 2.2, 2.4.7 and 2.4.11). Goes through them as Tab does, and back as Shift and Tab do.
 */
export async function unseenFocus(page: Page): Promise<readonly string[]> {
  await page.keyboard.press("Tab");
  return page.evaluate(() => {
    const reached =
      "a[href], button, input, select, textarea, summary, [tabindex='0'], audio[controls], video[controls]";
    const unseen: string[] = [];
    const all = [...document.querySelectorAll<HTMLElement>(reached)];
    for (const element of [...all, ...all.toReversed()]) {
      if (!element.checkVisibility({ visibilityProperty: true }) || element.matches(":disabled")) continue;
      element.focus();
      const called = `${element.tagName} ${element.getAttribute("aria-label") ?? element.textContent?.slice(0, 40)}`;
      if (document.activeElement !== element) {
        unseen.push(`${called}: cannot be reached`);
        continue;
      }
      const { outlineStyle, outlineWidth } = getComputedStyle(element);
      if (!element.matches(":focus-visible") || outlineStyle === "none" || Number.parseFloat(outlineWidth) < 2)
        unseen.push(`${called}: no ring`);
      const { top, bottom, left, right, width, height } = element.getBoundingClientRect();
      const isOnScreen = bottom > 0 && top < innerHeight && right > 0 && left < innerWidth;
      if (width === 0 || height === 0 || !isOnScreen) unseen.push(`${called}: off the screen when reached`);
      const upper = document.elementFromPoint(left + width / 2, Math.max(top, 0) + Math.min(height, innerHeight) / 2);
      const isCovered = upper !== null && !element.contains(upper) && !upper.contains(element);
      if (isOnScreen && isCovered) unseen.push(`${called}: under ${upper.tagName}.${upper.className}`);
    }
    return unseen;
  });
}

/** Pictures and drawings that can be seen and have no words for those who do not see them. */
export function untoldPictures(page: Page): Promise<readonly string[]> {
  return page.evaluate(() => {
    const untold: string[] = [];
    for (const picture of document.querySelectorAll("img"))
      if (picture.checkVisibility() && picture.alt.trim() === "") untold.push(`img ${picture.src.slice(0, 80)}`);
    for (const drawing of document.querySelectorAll("svg")) {
      if (drawing.closest("[aria-hidden=true]") !== null) continue;
      const name = drawing.getAttribute("aria-label") ?? drawing.querySelector("title")?.textContent ?? "";
      // A drawing whose parts lead somewhere is no single picture: it is a named group, and each link says where it leads.
      const links = [...drawing.querySelectorAll("a")].map((link) => link.getAttribute("aria-label")?.trim() ?? "");
      const role = links.length === 0 ? "img" : "group";
      const isTold = drawing.getAttribute("role") === role && name.trim().length > 10 && !links.includes("");
      if (!isTold) untold.push(`svg ${drawing.outerHTML.slice(0, 80)}`);
    }
    for (const chart of document.querySelectorAll("figure:has(svg .line, svg .bar)"))
      if (chart.querySelector("figcaption p") === null || chart.querySelector("figcaption table") === null)
        untold.push(`chart without its numbers ${chart.id}`);
    return untold;
  });
}

/** Letters in drawings that have the colour of the page behind them; those of the page itself are the browser's to see to. */
export function lostLetters(page: Page): Promise<readonly string[]> {
  return page.evaluate(() => {
    const ground = getComputedStyle(document.documentElement).backgroundColor;
    return [...document.querySelectorAll("svg text")].flatMap((letters) => {
      const isLost = getComputedStyle(letters).fill === ground && letters.closest("[aria-hidden=true]") === null;
      return isLost ? [letters.textContent ?? ""] : [];
    });
  });
}

/** Whatever moves by itself. */
export function movements(page: Page): Promise<readonly string[]> {
  return page.evaluate(() => {
    const moving: string[] = [];
    for (const element of document.querySelectorAll("*")) {
      for (const part of ["", "::before", "::after"]) {
        const { animationName, transitionDuration, scrollBehavior } = getComputedStyle(element, part);
        const isMoving =
          animationName !== "none" ||
          scrollBehavior === "smooth" ||
          /[1-9]/u.test(transitionDuration.replaceAll("s", ""));
        if (isMoving) moving.push(`${element.tagName}${part} ${animationName} ${transitionDuration} ${scrollBehavior}`);
      }
    }
    return moving;
  });
}
