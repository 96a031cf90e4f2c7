'use client';
import { answerOf, type Body, type Reply } from '@ballfirst/contracts/client';
import { type EquipmentId, equipment } from '@ballfirst/library/constants';
import { pains } from '@ballfirst/library/types';
import { api } from '../http/browser-api.ts';
import { useSending } from '../http/use-sending.ts';
import { useKeptDraft } from '../kept/use-kept-draft.ts';
import { RadioRow } from '../shell/radio-row.tsx';
import { SelectField } from '../shell/select-field.tsx';
import { TroubleNote } from '../shell/trouble-note.tsx';
import { meansWords } from '../words/means.ts';
import { outcomeForStudent } from '../words/names.ts';

type Means = Body<'saveMeans'>;

const days = ['unsaid', '1', '2', '3', '4', '5', '6', '7'] as const;
const minutes = ['unsaid', '10', '15', '20', '30', '45', '60', '90'] as const;
const ballCounts = ['unsaid', '0', '20', '40', '60', '90'] as const;
const numberOf = (said: string): number | null => (said === 'unsaid' ? null : Number(said));

const askedFor = Object.keys(equipment).filter((id): id is EquipmentId => id !== 'balls');
const toggled = <T extends string>(all: readonly T[] | undefined, one: T, on: boolean): T[] => [
  ...(all ?? []).filter((it) => it !== one),
  ...(on ? [one] : []),
];

type Props = { studentId: string; first: Reply<'readMeans'>; onSaved: (means: Reply<'readMeans'>) => void };

/** Time, place, goal and body, each of which may be left out; kept on the device until it is saved. */
export function MeansForm({ studentId, first, onSaved }: Props) {
  const { draft, change, forget } = useKeptDraft<Means>(`ballfirst.means.${studentId}`, first);
  const sending = useSending();
  const means = draft ?? first;
  const set = (next: Partial<Means>) => change((now) => ({ ...now, ...next }));
  const save = async () => {
    const done = await sending.run(() => answerOf(api.PUT('/api/me/practice-means', { body: means })));
    if (done === null) return;
    forget();
    onSaved(done.answer);
  };
  return (
    <div className="stack">
      <RadioRow
        legend={meansWords.usualMiss}
        names={outcomeForStudent}
        order={['fat', 'thin', 'topped', 'heel', 'toe', 'shank', 'sky']}
        value={means.usualMiss}
        onChange={(usualMiss) => set({ usualMiss })}
      />
      <SelectField
        label={meansWords.days}
        names={meansWords.daysNames}
        order={days}
        value={days.find((one) => one === String(means.daysPerWeek)) ?? 'unsaid'}
        onChange={(said) => set({ daysPerWeek: numberOf(said) })}
      />
      <SelectField
        label={meansWords.minutes}
        names={meansWords.minutesNames}
        order={minutes}
        value={minutes.find((one) => one === String(means.minutesPerDay)) ?? 'unsaid'}
        onChange={(said) => set({ minutesPerDay: numberOf(said) })}
      />
      <RadioRow
        legend={meansWords.place}
        names={meansWords.placeNames}
        order={['mat', 'grass', 'home']}
        value={means.place}
        onChange={(place) => set({ place })}
      />
      <SelectField
        label={meansWords.balls}
        names={meansWords.ballsNames}
        order={ballCounts}
        value={ballCounts.find((one) => one === String(means.balls ?? null)) ?? 'unsaid'}
        onChange={(said) => set({ balls: numberOf(said) })}
      />
      <fieldset>
        <legend>{meansWords.equipment}</legend>
        <div className="choices wide">
          {askedFor.map((id) => (
            <label key={id} className="choice">
              <input
                type="checkbox"
                checked={(means.equipment ?? []).includes(id)}
                onChange={(event) => set({ equipment: toggled(means.equipment, id, event.target.checked) })}
              />
              {meansWords.thing(equipment[id])}
            </label>
          ))}
        </div>
      </fieldset>
      <label className="field">
        <span>{meansWords.goal}</span>
        <input
          maxLength={300}
          value={means.goal ?? ''}
          onChange={(event) => set({ goal: event.target.value })}
        />
      </label>
      <label className="field">
        <span>{meansWords.body}</span>
        <textarea
          maxLength={500}
          value={means.body ?? ''}
          onChange={(event) => set({ body: event.target.value })}
        />
      </label>
      <fieldset>
        <legend>{meansWords.pains}</legend>
        <div className="choices">
          {pains.map((id) => (
            <label key={id} className="choice">
              <input
                type="checkbox"
                checked={(means.pains ?? []).includes(id)}
                onChange={(event) => set({ pains: toggled(means.pains, id, event.target.checked) })}
              />
              {meansWords.painNames[id]}
            </label>
          ))}
        </div>
      </fieldset>
      <label className="choice">
        <input
          type="checkbox"
          checked={means.bodyAgreed}
          onChange={(event) => set({ bodyAgreed: event.target.checked })}
        />
        {meansWords.bodyAgreed}
      </label>
      <TroubleNote trouble={sending.trouble} />
      <button type="button" className="main" disabled={sending.busy} onClick={save}>
        {sending.busy ? meansWords.busy : meansWords.save}
      </button>
    </div>
  );
}
