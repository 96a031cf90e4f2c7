import { describe, expect, it } from 'vitest';
import { programmeVerdict } from './programme-verdict.ts';

const balls = (fault: number, opposite = 0) => ({ balls: 10, fault, opposite });
const ask = (
  before: { mm?: number; fault?: number; opposite?: number },
  after: { mm?: number; fault?: number; opposite?: number },
) => {
  const side = (it: typeof before) => ({
    measured: it.mm === undefined ? null : { value: it.mm, u: 10 },
    tally: balls(it.fault ?? 6, it.opposite ?? 0),
  });
  return programmeVerdict({ before: side(before), after: side(after), low: 30, high: null, withinSd: 10 });
};

describe('the verdict on a programme', () => {
  it('rests on the measurement, and on a change larger than chance', () => {
    // 1.96 sqrt(10^2 (1 + 1) + 2 x 10^2) = 39.2 mm.
    expect(ask({ mm: -10 }, { mm: 28 }).verdict).toBe('no-clear-change');
    const better = ask({ mm: -10 }, { mm: 30 });
    expect(better).toMatchObject({ verdict: 'better', by: 'measurement' });
    expect(better.change?.detectable).toBeCloseTo(39.199, 3);
    expect(ask({ mm: 0 }, { mm: -40 }).verdict).toBe('worse');
  });

  it('calls the opposite miss of a working drill over-correcting, and that of another a plain worse', () => {
    expect(ask({ mm: -10 }, { mm: 40, fault: 0, opposite: 6 }).verdict).toBe('over-correcting');
    expect(ask({ mm: -10 }, { mm: -60, opposite: 6 }).verdict).toBe('worse');
    expect(ask({ fault: 8 }, { fault: 0, opposite: 6 })).toMatchObject({
      ...{ verdict: 'over-correcting', by: 'tally' },
    });
  });

  it('takes clear balls where the measurement shows no change', () => {
    expect(ask({ mm: 0, fault: 8 }, { mm: 5, fault: 1 })).toMatchObject({ verdict: 'better', by: 'tally' });
    expect(ask({ mm: 0, fault: 6 }, { mm: 5, fault: 4 })).toMatchObject({
      ...{ verdict: 'no-clear-change', by: 'measurement' },
    });
  });

  it('without a measurement asks for more than ten balls usually tell', () => {
    expect(ask({ fault: 6 }, { fault: 4 }).verdict).toBe('no-clear-change');
    expect(ask({ fault: 8 }, { fault: 1 })).toMatchObject({ verdict: 'better', by: 'tally' });
    expect(ask({ fault: 1 }, { fault: 8 }).verdict).toBe('worse');
    const nothing = programmeVerdict({
      before: { measured: null, tally: { balls: 0, fault: 0, opposite: 0 } },
      after: { measured: null, tally: balls(1) },
      low: null,
      high: null,
      withinSd: 10,
    });
    expect(nothing).toMatchObject({ verdict: 'no-clear-change', fault: null });
  });
});
