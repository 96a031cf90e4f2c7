import { drillById, drills } from '@ballfirst/library/drills';
import { expect, it } from 'vitest';
import { centimetres, stationDistances } from './station-distances.ts';
import { placeLabels } from './station-labels.ts';
import { overlap, placeObject, type StationObject, unitsPerMm } from './station-plan.ts';

const objectsOf = (drillId: string, place: string): readonly StationObject[] => {
  const station = drillById(drillId).stations.find((one) => one.place === place);
  if (station === undefined) throw new RangeError(`${drillId} has no station ${place}`);
  return station.objects;
};
const sheet = { left: -300, right: 300, top: -300, bottom: 500 };
const [towel] = objectsOf('flat-towel', 'mat').filter(({ what }) => what === 'towel');

it('puts the towel to scale behind the ball, away from the target, for either hand', () => {
  if (towel === undefined) throw new RangeError('no towel');
  const right = placeObject(towel, 'right');
  const left = placeObject(towel, 'left');
  expect(right.box.left).toBeCloseTo(150 * unitsPerMm);
  expect(right.box.right - right.box.left).toBeCloseTo(300 * unitsPerMm);
  expect(left.box.right).toBeCloseTo(-150 * unitsPerMm);
  expect(left.box.bottom).toBe(right.box.bottom);
});

it('turns from the target line towards the far side, mirrored for a left-handed player', () => {
  const stick = {
    what: 'stick',
    xMm: 0,
    yMm: 0,
    lengthMm: 1000,
    widthMm: 10,
    rotationDeg: 30,
    label: 'stick',
  };
  expect(placeObject(stick, 'left').turnDeg).toBeCloseTo(-30);
  expect(placeObject(stick, 'right').turnDeg).toBeCloseTo(-150);
});

it.each([
  ['flat-towel', 'mat', ['u 15']],
  ['ball-fence', 'grass', ['u 34.5']],
  ['past-the-stick', 'mat', ['v 44']],
  ['line-brush', 'grass', []],
])('measures %s on %s from the middle of the ball', (drillId, place, expected) => {
  const placed = objectsOf(drillId, place).map((object) => placeObject(object, 'right'));
  expect(stationDistances(placed).map(({ along, mm }) => `${along} ${centimetres(mm)}`)).toEqual(expected);
});

it.each(drills.map(({ id }) => id))('sets the words of %s clear of one another', (drillId) => {
  for (const station of drillById(drillId).stations) {
    const placed = station.objects.map((object) => placeObject(object, 'right'));
    const labels = placeLabels(placed, [], sheet);
    expect(new Set(placed.map(({ object }) => object.label)).size).toBe(labels.length);
    for (const [index, label] of labels.entries()) {
      expect(labels.slice(index + 1).some(({ box }) => overlap(box, label.box))).toBe(false);
    }
  }
});
