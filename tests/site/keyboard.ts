/** Going about a page by the keyboard alone. */
import type { Page } from "playwright-core";
import { expect } from "vitest";

/** Presses Tab until what is meant has the focus; each step must show where it is. Gives the number of presses. */
export async function tabTo(page: Page, meant: string, most = 120): Promise<number> {
  for (let pressed = 1; pressed <= most; pressed += 1) {
    await page.keyboard.press("Tab");
    const seen = await page.evaluate((selector) => {
      const element = document.activeElement;
      if (element === null || element === document.body) return { called: "nothing", isMeant: false, isSeen: true };
      const { outlineStyle, outlineWidth } = getComputedStyle(element);
      const { top, bottom, height } = element.getBoundingClientRect();
      return {
        called: element.outerHTML.slice(0, 80),
        isMeant: element.matches(selector),
        isSeen:
          outlineStyle !== "none" &&
          Number.parseFloat(outlineWidth) >= 2 &&
          height > 0 &&
          bottom > 0 &&
          top < innerHeight,
      };
    }, meant);
    expect(seen.isSeen, `the focus is seen on ${seen.called}`).toBe(true);
    if (seen.isMeant) return pressed;
  }
  throw new Error(`${meant} was not reached on ${page.url()} by ${most} presses of Tab.`);
}

/** Enter on what has the focus, and the page it leads to. */
export async function enter(page: Page): Promise<void> {
  await Promise.all([page.waitForEvent("framenavigated"), page.keyboard.press("Enter")]);
  await page.waitForLoadState();
}

/** Day, month, year and the calendar of one field. */
const DATE_PARTS = 4;

/** Whether Tab leads out of the page again, and Shift and Tab back, however many things there are. */
export async function isTrap(page: Page): Promise<boolean> {
  const reached = await page.locator("a[href], button, input, select, summary, [tabindex='0']").count();
  let before = "";
  let parts = 0;
  for (let pressed = 0; pressed <= reached + DATE_PARTS; pressed += 1) {
    await page.keyboard.press("Tab");
    const { now, isDate } = await page.evaluate(() => {
      const element = document.activeElement;
      if (element === null || element === document.body) return { now: "", isDate: false };
      return { now: `${[...document.querySelectorAll("*")].indexOf(element)}`, isDate: element.matches("[type=date]") };
    });
    if (now === "") return false;
    parts = now === before ? parts + 1 : 0;
    if (parts > (isDate ? DATE_PARTS : 0)) return true;
    before = now;
  }
  // The end of the page leads to its beginning where the browser has no window of its own.
  return false;
}
