'use client';
import { useInstantWords } from '../../../../../times/use-instant-words.ts';
import { compareWords } from '../../../../../words/compare.ts';
import { clubNames } from '../../../../../words/names.ts';
import type { ChoiceGroup, Comparable } from './choices-of.ts';
import styles from './compare.module.css';

type Props = {
  groups: readonly ChoiceGroup[];
  chosen: Comparable;
  onChoose: (clipId: string) => void;
};

/** Which swing stands beside this one. */
export function CompareChoice({ groups, chosen, onChoose }: Props) {
  const words = useInstantWords();
  const nameOf = (one: Comparable): string => {
    if (one.name !== null) return compareWords.model(one.name, clubNames[one.club]);
    const kind = one.last ? compareWords.last : one.best ? compareWords.best : compareWords.earlier;
    return compareWords.own(kind, words(one.sentAt), clubNames[one.club], one.solid, one.balls);
  };
  return (
    <label className={styles.choice}>
      <span>{compareWords.beside}</span>
      <select value={chosen.clip.id} onChange={(event) => onChoose(event.target.value)}>
        {groups.map(({ name, of }) => (
          <optgroup key={name} label={name}>
            {of.map((one) => (
              <option key={one.clip.id} value={one.clip.id}>
                {nameOf(one)}
              </option>
            ))}
          </optgroup>
        ))}
      </select>
    </label>
  );
}
