import { bands } from '@ballfirst/library/bands';
import { causes } from '@ballfirst/library/causes';
import { observationByKey } from '@ballfirst/library/observations';
import { isMeasurementKey } from '@ballfirst/swing/definitions/measurement-names';
import { describe, expect, it } from 'vitest';
import { bandFor } from './band-for.ts';

const signs = causes.flatMap((cause) => cause.signs.map((sign) => ({ cause: cause.id, sign })));

describe('the built-in library and what can be measured', () => {
  it('names only measurements that face-on marks can give, and observations that can be tapped', () => {
    for (const { cause, sign } of signs) {
      const known =
        sign.kind === 'observed'
          ? observationByKey(sign.key) !== undefined
          : sign.view !== 'face-on' || isMeasurementKey(sign.key);
      expect(known, `${cause}: ${sign.key}`).toBe(true);
    }
    for (const { key } of bands) expect(isMeasurementKey(key), key).toBe(true);
  });

  it('gives every measured sign an edge, its own or its band’s, for a full 8-iron swing', () => {
    for (const { cause, sign } of signs) {
      if (sign.kind === 'observed') continue;
      const band = bandFor(sign.key, { club: '8-iron', swingLength: 'full' });
      const edge = sign.edge ?? (sign.direction === 'below' ? band?.low : band?.high) ?? null;
      expect(edge, `${cause}: ${sign.key}`).not.toBeNull();
    }
  });
});
