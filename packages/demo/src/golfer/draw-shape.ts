import { drawNormal } from '@ballfirst/numbers/draw-normal';
import { causeKnobs, type Departure, type GolferCause, opposed, type PlantedCause } from './golfer-causes.ts';
import { type SwingShape, type Trait, traitNames, traits } from './traits.ts';

type Open = Record<Trait, number>;

/** No trait lies further from the middle than this; the tails of a normal distribution are not golfers. */
const cutSd = 2.2;

/**
 * One golfer by chance. Each cause is really there: at least its first sign lies past its edge, the others at their
 * own rates; traits without a cause are those of a sound player.
 *
 * @param random uniform numbers, 0 <= x < 1
 * @throws RangeError when one body cannot do two of the causes
 */
export function drawShape(random: () => number, causes: readonly GolferCause[]): SwingShape {
  const shape = meanShape();
  for (const name of traitNames) {
    const { mean, sd } = traits[name];
    shape[name] = mean + sd * Math.max(-cutSd, Math.min(cutSd, drawNormal(random)));
  }
  const within = ([least, most]: readonly [number, number]) => least + (most - least) * random();
  for (const cause of plantable(causes)) {
    const { departures, carries } = causeKnobs[cause];
    addAll(shape, carries, within);
    const there = departures.map(({ sensitivity }) => random() < sensitivity);
    if (!there.includes(true)) there[0] = true;
    departures.forEach((departure, i) => {
      if (there[i]) leave(shape, departure, within(departure.past));
      else stayInside(shape, departure, random());
    });
  }
  return shape;
}

/** The golfer in the middle of the distributions, with every sign of the causes half-way past its edge. */
export function typicalShape(causes: readonly GolferCause[], changes: Partial<SwingShape> = {}): SwingShape {
  const shape = meanShape();
  const middle = ([least, most]: readonly [number, number]) => (least + most) / 2;
  for (const cause of plantable(causes)) {
    const { departures, carries } = causeKnobs[cause];
    addAll(shape, carries, middle);
    for (const departure of departures) leave(shape, departure, middle(departure.past));
  }
  return { ...shape, ...changes };
}

const meanShape = (): Open => Object.fromEntries(traitNames.map((name) => [name, traits[name].mean])) as Open;

function plantable(causes: readonly GolferCause[]): PlantedCause[] {
  const planted = causes.filter((cause): cause is PlantedCause => cause !== 'none');
  for (const one of planted) {
    const against = planted.find((other) => opposed(one, other));
    if (against !== undefined) throw new RangeError(`One body cannot do ${one} and ${against}.`);
  }
  return planted;
}

function addAll(
  shape: Open,
  carries: Readonly<Partial<Record<Trait, readonly [number, number]>>>,
  within: (range: readonly [number, number]) => number,
): void {
  for (const name of traitNames) {
    const range = carries[name];
    if (range !== undefined) shape[name] += within(range);
  }
}

/** Past the edge; a trait that another cause has already carried further stays there. */
function leave(shape: Open, { trait, edge, side }: Departure, past: number): void {
  const wanted = side === 'above' ? edge + past : edge - past;
  shape[trait] = side === 'above' ? Math.max(wanted, shape[trait]) : Math.min(wanted, shape[trait]);
}

/** A sign that does not show: the trait keeps to its side of the edge. */
function stayInside(shape: Open, { trait, edge, side }: Departure, share: number): void {
  const inside = share * traits[trait].sd;
  if (side === 'above') shape[trait] = Math.min(shape[trait], edge - inside);
  else shape[trait] = Math.max(shape[trait], edge + inside);
}
