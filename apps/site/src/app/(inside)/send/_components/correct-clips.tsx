'use client';
import { RadioRow } from '../../../../shell/radio-row.tsx';
import { SelectField } from '../../../../shell/select-field.tsx';
import { filmWords } from '../../../../words/film.ts';
import { swingLengthNames } from '../../../../words/names.ts';
import { sendWords } from '../../../../words/send.ts';
import type { CorrectDraft } from './correction.ts';
import { views } from './draft.ts';

type Clips = CorrectDraft['clips'];

/** Where the phone stood and how long the swing was, for each video that was sent. */
export function CorrectClips({ clips, onChange }: { clips: Clips; onChange: (clips: Clips) => void }) {
  const put = (id: string, next: Partial<Clips[number]>) =>
    onChange(clips.map((clip) => (clip.id === id ? { ...clip, ...next } : clip)));
  return clips.map((clip) => (
    <div key={clip.id} className="stack">
      <RadioRow
        legend={filmWords.sideOf(clip.fileName)}
        names={filmWords.side}
        order={views}
        value={clip.view}
        onChange={(view) => put(clip.id, { view })}
      />
      <SelectField
        label={sendWords.length}
        names={swingLengthNames}
        order={['full', 'three-quarter', 'hip-high', 'rehearsal']}
        value={clip.swingLength}
        onChange={(swingLength) => put(clip.id, { swingLength })}
      />
    </div>
  ));
}
