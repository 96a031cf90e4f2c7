'use client';
import { compareWords } from '../../../../../words/compare.ts';
import { positionNames } from '../../../../../words/marks.ts';
import styles from './compare.module.css';
import { CompareChoice } from './compare-choice.tsx';
import type { CompareHere } from './use-compare.ts';

/** What the swing beside is, by what the two are tied, and the way to move the tie by hand. */
export function CompareBar({ compare }: { compare: CompareHere }) {
  const { comparable, groups, chosen, ties, byHand, mirror, turns } = compare;
  if (comparable.trouble !== null) return <p role="alert">{comparable.trouble.words}</p>;
  if (comparable.items === null) return <p role="status">{compareWords.looking}</p>;
  if (chosen === null) return <p role="status">{compareWords.nothing}</p>;
  const by = ties.map(({ moment }) => positionNames[moment].toLowerCase());
  return (
    <div className={styles.bar}>
      <CompareChoice groups={groups} chosen={chosen} onChoose={compare.choose} />
      <p className="small">{by.length === 0 ? compareWords.untied : compareWords.tied(by)}</p>
      <div className={styles.moves}>
        <button type="button" className="small-button" onClick={() => compare.move(-1)}>
          {compareWords.otherBack}
        </button>
        <button type="button" className="small-button" onClick={() => compare.move(1)}>
          {compareWords.otherOn}
        </button>
        {byHand !== 0 && (
          <button type="button" className="small-button" onClick={() => compare.move(-byHand)}>
            {compareWords.byHand(byHand)}
          </button>
        )}
        <label className={styles.turn}>
          <input type="checkbox" checked={mirror} onChange={(event) => compare.turn(event.target.checked)} />
          {turns ? compareWords.mirroredHands : compareWords.mirror}
        </label>
      </div>
    </div>
  );
}
