'use client';
import { causes } from '@ballfirst/library/causes';
import type { FaultId } from '@ballfirst/library/types';
import { useState } from 'react';
import { SelectField } from '../../../../../shell/select-field.tsx';
import { tickNames } from '../../../../../words/names.ts';
import { replyDeskWords } from '../../../../../words/reply-desk.ts';
import { reviewWords } from '../../../../../words/review.ts';
import type { ReplyForm } from './reply-form.ts';

type Part = Pick<ReplyForm, 'setUpTicks' | 'moreCauses'>;
type Props = {
  form: Pick<ReplyForm, 'cause' | 'setUpTicks' | 'moreCauses' | 'moreAgreed'>;
  /** The miss the swing is read for: only what may bring it about is named as another movement. */
  fault: FaultId;
  canWork: boolean;
  onChange: (next: Partial<ReplyForm>) => void;
};
const ticksAtMost = 3;
const moreAtMost = 2;
const none = 'none';

const causeName = (id: string): string => causes.find((cause) => cause.id === id)?.name ?? id;

/** Up to three ticks beside the one movement; whoever wants more is asked once whether they are sure. */
export function SetUpAndMore({ form, fault, canWork, onChange }: Props) {
  const { cause, setUpTicks, moreCauses, moreAgreed } = form;
  const [asked, setAsked] = useState<Part | null>(null);
  const give = (next: Part) => {
    const isMore = next.setUpTicks.length > ticksAtMost || next.moreCauses.length > 0;
    if (isMore && !moreAgreed) return setAsked(next);
    setAsked(null);
    onChange({ ...next, moreAgreed: isMore });
  };
  const toggle = (tick: keyof typeof tickNames, on: boolean) =>
    give({ moreCauses, setUpTicks: [...setUpTicks.filter((one) => one !== tick), ...(on ? [tick] : [])] });
  const others = causes.filter(
    ({ id, brings, tick }) =>
      id !== cause && brings[fault] !== undefined && tick === undefined && !moreCauses.includes(id),
  );
  const names: Record<string, string> = { [none]: replyDeskWords.oneIsEnough };
  for (const { id, name } of others) names[id] = name;
  return (
    <div className="stack tight">
      <fieldset disabled={!canWork}>
        <legend>{reviewWords.ticks}</legend>
        <div className="choices">
          {(['grip', 'handle', 'hips', 'ball'] as const).map((tick) => (
            <label key={tick} className="choice">
              <input
                type="checkbox"
                checked={(asked ?? form).setUpTicks.includes(tick)}
                onChange={(event) => toggle(tick, event.target.checked)}
              />
              {tickNames[tick]}
            </label>
          ))}
        </div>
      </fieldset>
      {moreCauses.map((id) => (
        <p key={id} className="row small">
          {replyDeskWords.also(causeName(id))}
          <button
            type="button"
            className="plain small-button"
            disabled={!canWork}
            onClick={() => give({ setUpTicks, moreCauses: moreCauses.filter((one) => one !== id) })}
          >
            {replyDeskWords.dropMore}
          </button>
        </p>
      ))}
      {cause !== null && moreCauses.length < moreAtMost && (
        <SelectField
          label={replyDeskWords.anotherMovement}
          names={names}
          order={Object.keys(names)}
          value={none}
          disabled={!canWork}
          onChange={(id) => id !== none && give({ setUpTicks, moreCauses: [...moreCauses, id] })}
        />
      )}
      {asked !== null && (
        <div className="notice look stack tight" role="alert">
          <p>{replyDeskWords.sureTitle}</p>
          <div className="row">
            <button type="button" onClick={() => setAsked(null)}>
              {replyDeskWords.sureNo}
            </button>
            <button
              type="button"
              onClick={() => {
                setAsked(null);
                onChange({ ...asked, moreAgreed: true });
              }}
            >
              {replyDeskWords.sureYes}
            </button>
          </div>
        </div>
      )}
    </div>
  );
}
