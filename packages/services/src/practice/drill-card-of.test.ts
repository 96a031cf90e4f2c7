import { everyDrill, juniorsSentence, painSentence } from '@ballfirst/library/cautions';
import { drills } from '@ballfirst/library/drills';
import { describe, expect, it } from 'vitest';
import { drillCardOf } from './drill-card-of.ts';

const cards = drills.flatMap((drill) =>
  drill.stations.flatMap(({ place }) =>
    (['right', 'left'] as const).map((hand) =>
      drillCardOf({ drillId: drill.id, place, exaggeration: 'mild' }, hand),
    ),
  ),
);

describe('a drill card', () => {
  it('carries the cautions of every drill, whatever the drill, place and hand', () => {
    for (const card of cards) {
      expect(card.cautions).toEqual(expect.arrayContaining([...everyDrill]));
      expect(card.cautions).toContain(painSentence);
      expect(card.cautions).toContain(juniorsSentence);
      expect(new Set(card.cautions).size).toBe(card.cautions.length);
    }
  });

  it('says left and right, and has no more rungs than are sound at the place', () => {
    for (const card of cards) {
      expect(JSON.stringify(card)).not.toMatch(/[{](lead|trail)[}]/);
      expect(card.ladder.length).toBeGreaterThan(0);
    }
    const onMat = drillCardOf({ drillId: 'line-brush', place: 'mat', exaggeration: 'mild' }, 'left');
    expect(onMat.ladder.at(-1)?.id).toBe('hip-high');
    expect(onMat.ballsAtMost).toBe(30);
    expect(onMat.stations[0]?.place).toBe('mat');
  });

  it('is not made of a drill that is not there', () => {
    expect(() => drillCardOf({ drillId: 'nothing', place: 'mat', exaggeration: 'mild' }, 'right')).toThrow(
      RangeError,
    );
  });
});
