'use client';
import { PhonePlace } from '../../../../drawings/phone-place.tsx';
import { RadioRow } from '../../../../shell/radio-row.tsx';
import { UploadLine } from '../../../../uploads/upload-line.tsx';
import type { ClipFacts } from '../../../../uploads/upload-state.ts';
import type { Uploading } from '../../../../uploads/use-upload.ts';
import { VideoInput } from '../../../../uploads/video-input.tsx';
import { swingLengthNames, viewNames } from '../../../../words/names.ts';
import { sendWords } from '../../../../words/send.ts';
import type { Draft } from './draft.ts';

type Props = {
  draft: Draft;
  change: (next: (draft: Draft) => Draft) => void;
  uploading: Uploading;
  hand: 'right' | 'left';
};

/** Step one: where the phone stands, and the video, which goes up at once. */
export function FilmStep({ draft, change, uploading, hand }: Props) {
  const facts: ClipFacts = { view: draft.view, swingLength: draft.swingLength };
  const { state } = uploading;
  const set = (next: Partial<ClipFacts>) => {
    change((now) => ({ ...now, ...next }));
    if (state.kind !== 'none') uploading.restart(state.fileName, { ...facts, ...next });
  };
  return (
    <div className="stack">
      <p>
        <strong>{sendWords.usual}</strong>{' '}
        {draft.view === 'face-on' ? sendWords.phone : sendWords.phoneBehind}
      </p>
      <PhonePlace view={draft.view} hand={hand} />
      <RadioRow
        legend={sendWords.view}
        hint={sendWords.viewHint}
        names={viewNames}
        order={['face-on', 'down-the-line']}
        value={draft.view}
        onChange={(view) => set({ view })}
      />
      <RadioRow
        legend={sendWords.length}
        names={swingLengthNames}
        order={['full', 'three-quarter', 'hip-high']}
        value={draft.swingLength}
        onChange={(swingLength) => set({ swingLength })}
      />
      <div className="stack ruled">
        <UploadLine
          state={state}
          onAgain={() => state.kind !== 'none' && uploading.restart(state.fileName, facts)}
        />
        <VideoInput
          label={state.kind === 'none' ? sendWords.choose : sendWords.chooseOther}
          onFile={(file) => {
            change((now) => ({ ...now, clip: { fileName: file.name, clipId: null, done: false } }));
            uploading.choose(file, facts);
          }}
        />
      </div>
    </div>
  );
}
