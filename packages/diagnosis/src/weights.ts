import { libraryVersion } from '@ballfirst/library/version';
import { measureVersion } from '@ballfirst/swing/version';

/** Chance that a present cause brings its fault about, by the library's weight. Common practice, no source. */
export const weightOf: Readonly<Record<1 | 2 | 3, number>> = { 3: 0.6, 2: 0.4, 1: 0.2 };

/** Chance of a fault without any listed cause. Common practice, no source. */
export const leak = 0.05;

/** No single sign counts more than twenty to one, either way; natural logarithm. Common practice, no source. */
export const ratioLimit = Math.log(20);

/** What a diagnosis was computed by: stored with it, so that it can be recomputed. Changes with measuring, method or library. */
export const methodVersion = `${measureVersion}, noisy-or-3, ${libraryVersion}`;
