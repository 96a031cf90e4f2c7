import { expect, it } from 'vitest';
import { faultOf } from './fault-of.ts';

const swing = { leadFault: null, startLine: 'straight', curve: 'none', hand: 'right' };

it('takes the word of the coach, then the strikes, then the flight', () => {
  const told = { ...swing, leadFault: 'thin', curve: 'right' };
  expect(faultOf('shank', told)).toBe('shank');
  expect(faultOf(null, told)).toBe('thin');
  expect(faultOf(null, { ...told, leadFault: null })).toBe('slice');
  expect(faultOf(null, swing)).toBe('fat');
});

it('reads the flight for the hand of the player', () => {
  const curve = (hand: string, side: string) => faultOf(null, { ...swing, hand, curve: side });
  expect([curve('right', 'left'), curve('left', 'left'), curve('left', 'right')]).toEqual([
    'hook',
    'slice',
    'hook',
  ]);
  const start = (hand: string, side: string) => faultOf(null, { ...swing, hand, startLine: side });
  expect([start('right', 'right'), start('right', 'left'), start('left', 'right')]).toEqual([
    'push',
    'pull',
    'pull',
  ]);
});
