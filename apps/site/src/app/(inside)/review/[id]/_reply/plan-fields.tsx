'use client';
import { SelectField } from '../../../../../shell/select-field.tsx';
import { exaggerationNames, placeNames } from '../../../../../words/names.ts';
import { replyDeskWords } from '../../../../../words/reply-desk.ts';
import { reviewWords } from '../../../../../words/review.ts';
import styles from './reply-editor.module.css';
import { type Drill, type Plan, planFor, redosed } from './reply-form.ts';

type Props = {
  plan: Plan | null;
  drills: readonly Drill[];
  /** All of the library: what supports the first may stand for no cause of its own. */
  every: readonly Drill[];
  canWork: boolean;
  /** What was offered: its days and place are kept when another drill is taken. */
  offered: Plan | null;
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
export function PlanFields({ plan, drills, every, canWork, offered, onPlan }: Props) {
  const names: Record<string, string> = { [noDrill]: reviewWords.noDrill };
  for (const { id, name } of drills) names[id] = name;
  const drill = drills.find(({ id }) => id === plan?.drillId);
  const second = every.find(({ id }) => id === plan?.second?.drillId);
  const cautions = [...new Set([...(drill?.cautions ?? []), ...(second?.cautions ?? [])])];
  const dose = plan === null ? { daysPerWeek: 1, minutesPerDay: 10 } : redosed(plan, {});
  const choose = (id: string) => {
    const chosen = drills.find((one) => one.id === id);
    if (chosen === undefined) return onPlan(null);
    onPlan(chosen.id === offered?.drillId ? offered : planFor(chosen, offered));
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
            label={replyDeskWords.days}
            value={dose.daysPerWeek ?? 1}
            min={1}
            max={7}
            disabled={!canWork}
            onValue={(days) => onPlan(redosed(plan, { days }))}
          />
          <NumberField
            label={replyDeskWords.minutesEach}
            value={dose.minutesPerDay ?? 10}
            min={5}
            max={240}
            disabled={!canWork}
            onValue={(minutes) => onPlan(redosed(plan, { minutes }))}
          />
          <NumberField
            label={reviewWords.checkIn}
            value={plan.firstCheckInDays}
            min={1}
            max={21}
            disabled={!canWork}
            onValue={(firstCheckInDays) => onPlan({ ...plan, firstCheckInDays })}
          />
          <div className={`small ${styles.whole}`}>
            {second !== undefined && plan.second !== null && plan.second !== undefined && (
              <p className="row">
                {replyDeskWords.second(second.name, plan.second.minutes)}
                <button
                  type="button"
                  className="plain small-button"
                  disabled={!canWork}
                  onClick={() => onPlan(redosed(plan, { second: null }))}
                >
                  {replyDeskWords.dropSecond}
                </button>
              </p>
            )}
            <p className="soft">{replyDeskWords.weekly(plan.weeklyMinutes)}</p>
          </div>
        </>
      )}
      {drill !== undefined && (
        <div className={styles.cautions}>
          <h3>{reviewWords.cautions}</h3>
          <ul>
            {cautions.map((caution) => (
              <li key={caution}>{caution}</li>
            ))}
          </ul>
        </div>
      )}
    </div>
  );
}
