'use client';
import { SelectField } from '../../../../../shell/select-field.tsx';
import { exaggerationNames, placeNames } from '../../../../../words/names.ts';
import { reviewWords } from '../../../../../words/review.ts';
import styles from './reply-editor.module.css';
import { type Drill, type Plan, planFor } from './reply-form.ts';

type Props = {
  plan: Plan | null;
  drills: readonly Drill[];
  canWork: boolean;
  onPlan: (plan: Plan | null) => void;
};
const noDrill = 'none';

type NumberProps = {
  label: string;
  value: number;
  min: number;
  max: number;
  disabled: boolean;
  onValue: (value: number) => void;
};

function NumberField({ label, value, min, max, disabled, onValue }: NumberProps) {
  return (
    <label className="field">
      <span>{label}</span>
      <input
        type="number"
        inputMode="numeric"
        min={min}
        max={max}
        value={value}
        disabled={disabled}
        onChange={(event) => {
          const next = Math.round(Number(event.target.value));
          if (Number.isFinite(next)) onValue(Math.min(max, Math.max(min, next)));
        }}
      />
    </label>
  );
}

/** The drill and how it is to be practised. */
export function PlanFields({ plan, drills, canWork, onPlan }: Props) {
  const names: Record<string, string> = { [noDrill]: reviewWords.noDrill };
  for (const { id, name } of drills) names[id] = name;
  const drill = drills.find(({ id }) => id === plan?.drillId);
  const choose = (id: string) => {
    const chosen = drills.find((one) => one.id === id);
    onPlan(chosen === undefined ? null : planFor(chosen));
  };
  return (
    <div className={styles.plan}>
      <SelectField
        label={reviewWords.drill}
        names={names}
        order={Object.keys(names)}
        value={plan?.drillId ?? noDrill}
        disabled={!canWork}
        onChange={choose}
      />
      {plan !== null && (
        <>
          <SelectField
            label={reviewWords.place}
            names={placeNames}
            order={(['mat', 'grass', 'home'] as const).filter((one) => drill?.places.includes(one) ?? true)}
            value={plan.place}
            disabled={!canWork}
            onChange={(place) => onPlan({ ...plan, place })}
          />
          <SelectField
            label={reviewWords.exaggeration}
            names={exaggerationNames}
            order={['mild', 'firm', 'strong'] as const}
            value={plan.exaggeration}
            disabled={!canWork}
            onChange={(exaggeration) => onPlan({ ...plan, exaggeration })}
          />
          <NumberField
            label={reviewWords.minutes}
            value={plan.weeklyMinutes}
            min={10}
            max={600}
            disabled={!canWork}
            onValue={(weeklyMinutes) => onPlan({ ...plan, weeklyMinutes })}
          />
          <NumberField
            label={reviewWords.checkIn}
            value={plan.firstCheckInDays}
            min={1}
            max={21}
            disabled={!canWork}
            onValue={(firstCheckInDays) => onPlan({ ...plan, firstCheckInDays })}
          />
        </>
      )}
      {drill !== undefined && (
        <div className={styles.cautions}>
          <h3>{reviewWords.cautions}</h3>
          <ul>
            {drill.cautions.map((caution) => (
              <li key={caution}>{caution}</li>
            ))}
          </ul>
        </div>
      )}
    </div>
  );
}
