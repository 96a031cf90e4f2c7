import type { Locator, Page } from 'playwright-core';

/** A hand that counts: a click, a tap, a key or one typed field is one action; looking and waiting are none. */
export const countingHand = (page: Page) => {
  let actions = 0;
  return {
    actions: () => actions,
    click: async (what: Locator) => {
      actions += 1;
      await what.click();
    },
    clickAt: async (x: number, y: number) => {
      actions += 1;
      await page.mouse.click(x, y);
    },
    press: async (key: string) => {
      actions += 1;
      await page.keyboard.press(key);
    },
    type: async (field: Locator, text: string) => {
      actions += 1;
      await field.fill(text);
    },
  };
};
export type Hand = ReturnType<typeof countingHand>;
