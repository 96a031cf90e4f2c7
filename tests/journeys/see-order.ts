import type { Page } from 'playwright-core';

/**
 * Goes on to the order of causes on a claimed swing. One swing in five, by its id, is a blind turn: then the journey asks for
 * the order, as a coach may who cannot tell, and is the same journey as on any other swing.
 */
export const seeOrder = async (page: Page): Promise<void> => {
  const order = page.getByRole('region', { name: 'Causes, the likeliest first' });
  const turn = page.getByRole('region', { name: 'Which cause comes first?' });
  await order.or(turn).waitFor();
  if (!(await turn.isVisible())) return;
  await turn.getByRole('button', { name: 'I cannot tell: show the order' }).click();
  await order.waitFor();
};
