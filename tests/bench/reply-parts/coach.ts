// A scripted coach at the review: what a person does with mouse and keys, each counted.
import type { Page } from 'playwright-core';
import { firstPassFor } from '../../../packages/swing/src/marks/first-pass.ts';
import type { Hand } from './hand.ts';
import type { Truth, Waiting } from './swings.ts';

const stageOf = (page: Page) => page.getByRole('button', { name: /^Stage/ });

/** From the list to the swing, and takes it. */
export const openAndClaim = async (page: Page, hand: Hand, url: string, swing: Waiting): Promise<void> => {
  await page.goto(`${url}/inbox`);
  const row = page.locator(`a[href^="/review/${swing.id}"]`).first();
  await row.waitFor();
  await hand.click(row);
  await page.waitForURL(`${url}/review/${swing.id}**`);
  await hand.click(page.getByRole('button', { name: 'Claim this swing' }));
  await page.getByText('You have this swing.').waitFor();
};

/** A click on the slider where the moment lies, then single steps for what is left of the way. */
const goTo = async (page: Page, hand: Hand, frame: number, frames: number): Promise<void> => {
  const slider = page.getByRole('slider', { name: 'Frame' });
  // Scrolling is looking.
  await slider.scrollIntoViewIfNeeded();
  const box = await slider.boundingBox();
  if (box === null) throw new Error('The slider is not to be seen.');
  // The middle of the knob runs from half its width to half its width.
  const knob = 16;
  await hand.clickAt(box.x + knob / 2 + ((box.width - knob) * frame) / (frames - 1), box.y + box.height / 2);
  for (let tries = 0; tries < 24; tries += 1) {
    const left = frame - Number(await slider.inputValue());
    if (left === 0) break;
    const key = left < 0 ? 'ArrowLeft' : 'ArrowRight';
    await hand.press(key);
  }
  await page.getByText(`Frame ${frame + 1} of ${frames}`).waitFor();
  await stageOf(page).locator(`canvas[data-drawn="${frame}"]`).waitFor();
};

/** Places the marks of the first pass where the points truly lie. */
export const markFirstPass = async (page: Page, hand: Hand, truth: Truth): Promise<number> => {
  const { places } = firstPassFor('fat', 'full');
  let at = -1;
  for (const [index, { position, point }] of places.entries()) {
    const frame = truth.positions[position] ?? 0;
    if (frame !== at) await goTo(page, hand, frame, truth.frames);
    at = frame;
    const [x, y] = truth.points[position]?.[point] ?? [0, 0];
    const seen = await stageOf(page)
      .locator('svg')
      .first()
      .evaluate(
        (svg, place) => {
          svg.scrollIntoView({ block: 'center' });
          const matrix = (svg as SVGSVGElement).getScreenCTM();
          const spot = new DOMPoint(place.x, place.y).matrixTransform(matrix ?? undefined);
          return { x: spot.x, y: spot.y };
        },
        { x, y },
      );
    await hand.clickAt(seen.x, seen.y);
    await page.getByText(`${index + 1} of ${places.length} marks`).waitFor();
  }
  return places.length;
};

/** Two taps on what is seen. */
export const tapObservations = async (page: Page, hand: Hand): Promise<void> => {
  const seen = page.getByRole('region', { name: 'What you see' });
  const answers = seen.getByText('No', { exact: true });
  const count = Math.min(2, await answers.count());
  for (let index = 0; index < count; index += 1) await hand.click(answers.nth(index));
};

/** Chooses the first cause: words, pictures and drill come by themselves; looks at the preview and sends. */
export const chooseAndSend = async (page: Page, hand: Hand): Promise<void> => {
  const causes = page.getByRole('region', { name: 'Causes, the likeliest first' });
  // On a blind turn the cause is named before its order is there: which one costs the same.
  const turn = page.getByRole('region', { name: 'Which cause comes first?' });
  await causes.or(turn).waitFor();
  if (await turn.isVisible()) await hand.click(turn.getByRole('button', { name: /^Sway away/ }));
  else await hand.click(causes.getByRole('button', { name: /^Choose as the first cause/ }).first());
  await causes.getByText('Chosen as the first cause').waitFor();
  const words = page.getByLabel('Words to the student');
  await page.waitForFunction(
    () => (document.querySelector<HTMLTextAreaElement>('#reply-words')?.value.length ?? 0) > 40,
  );
  await hand.type(words, `${await words.inputValue()} Send me three balls on Friday.`);
  await hand.click(page.getByRole('button', { name: 'Preview' }));
  const preview = page.getByRole('region', { name: 'As the student reads it' });
  const cautions = await preview.getByRole('region', { name: 'Cautions for this drill' }).textContent();
  if (!/hurt|pain/i.test(cautions ?? '')) throw new Error('The reply goes out without its cautions.');
  await hand.click(page.getByRole('button', { name: 'Send the reply' }));
  await page.getByRole('button', { name: 'Take it back' }).waitFor();
};

/** The third way out: a drawn reason and the asking. */
export const filmAgain = async (page: Page, hand: Hand): Promise<void> => {
  await hand.click(page.getByText('Too dark', { exact: true }));
  await hand.click(page.getByRole('button', { name: 'Ask to film again' }));
  await page.getByText('This swing does not wait for an answer now.').waitFor();
};
