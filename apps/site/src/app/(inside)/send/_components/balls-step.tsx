'use client';
import { RadioRow } from '../../../../shell/radio-row.tsx';
import { SelectField } from '../../../../shell/select-field.tsx';
import { clubNames, lieNames } from '../../../../words/names.ts';
import { sendWords } from '../../../../words/send.ts';
import type { BallsDraft } from './draft.ts';
import { TallyTaps } from './tally-taps.tsx';

type Props<D extends BallsDraft> = { draft: D; change: (next: (draft: D) => D) => void };
const clubOrder = [
  'driver',
  'fairway',
  'hybrid',
  '5-iron',
  '6-iron',
  '7-iron',
  '8-iron',
  '9-iron',
  'wedge',
] as const;

/** What the balls did. */
export function BallsStep<D extends BallsDraft>({ draft, change }: Props<D>) {
  const set = (next: Partial<BallsDraft>) => change((now) => ({ ...now, ...next }));
  return (
    <div className="stack">
      <SelectField
        label={sendWords.club}
        names={clubNames}
        order={clubOrder}
        value={draft.club}
        onChange={(club) => set({ club })}
      />
      <TallyTaps draft={draft} change={change} />
      <RadioRow
        legend={sendWords.how}
        names={{ counted: sendWords.counted, memory: sendWords.memory }}
        order={['counted', 'memory']}
        value={draft.counted ? 'counted' : 'memory'}
        onChange={(how) => set({ counted: how === 'counted' })}
      />
      <RadioRow
        legend={sendWords.start}
        names={sendWords.startNames}
        order={['left', 'straight', 'right', 'cannot-see']}
        value={draft.startLine}
        onChange={(startLine) => set({ startLine })}
      />
      <RadioRow
        legend={sendWords.curve}
        names={sendWords.curveNames}
        order={['left', 'none', 'right', 'cannot-see']}
        value={draft.curve}
        onChange={(curve) => set({ curve })}
      />
      <SelectField
        label={sendWords.lie}
        names={lieNames}
        order={['mat', 'fairway', 'tee', 'rough', 'sand', 'slope', 'net']}
        value={draft.lie}
        onChange={(lie) => set({ lie })}
      />
      <RadioRow
        legend={sendWords.typical}
        names={sendWords.typicalNames}
        order={['usual', 'best', 'unsure']}
        value={draft.typical}
        onChange={(typical) => set({ typical })}
      />
    </div>
  );
}
