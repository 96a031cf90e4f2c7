'use client';
import type { Reply } from '@ballfirst/contracts/client';
import { useEffect, useMemo } from 'react';
import { useClip } from '../../../../../frames/use-clip.ts';
import { useKeys } from '../../../../../shell/use-keys.ts';
import { pointNames, positionNames } from '../../../../../words/marks.ts';
import { reviewWords } from '../../../../../words/review.ts';
import { firstPassOf } from '../_marking/first-pass-of.ts';
import { type Evidence, keyOf, type Marking } from '../_marking/marking.ts';
import { observationsOf } from '../_marking/observations-of.ts';
import { type ClipMarking, useMarking } from '../_marking/use-marking.ts';
import styles from './desk.module.css';
import { FilmStrip } from './film-strip.tsx';
import { MarkList } from './mark-list.tsx';
import { ObservationRow } from './observation-row.tsx';
import { Readings } from './readings.tsx';
import { SaveLine } from './save-line.tsx';
import stageStyles from './stage.module.css';
import { Stage } from './stage.tsx';
import { stageKey } from './stage-keys.ts';
import { StageMoves } from './stage-moves.tsx';
import { usePass } from './use-pass.ts';
import { useStage } from './use-stage.ts';
import { partOf } from './view-part.ts';

type Clip = Reply<'readClip'>;
/** What the rest of the screen needs to know of the desk: its marks, evidence and the frame on the stage. */
export type DeskView = { clipId: string; marks: Marking['marks']; evidence: Evidence | null; frame: number };

type Props = {
  submissionId: string;
  clip: Clip & { media: NonNullable<Clip['media']>; picture: NonNullable<Clip['picture']> };
  first: { marking: Marking; evidence: Evidence | null };
  fault: Evidence['fault'];
  canWork: boolean;
  active: boolean;
  onView: (view: DeskView) => void;
  causes: (marking: ClipMarking) => React.ReactNode;
};

/** Stage left with the film strip under it, marks and evidence right. */
export function Desk({ submissionId, clip, first, fault, canWork, active, onView, causes }: Props) {
  const opening = useClip(active ? clip.media.rendition : null);
  const open = opening.kind === 'open' ? opening.clip : null;
  const marking = useMarking(submissionId, first);
  const stage = useStage(clip.picture, clip.picture.frames);
  const pass = useMemo(() => firstPassOf(fault, clip.view), [fault, clip.view]);
  const asking = usePass(pass, marking, clip.picture, stage);
  const { content, evidence, clipId } = marking;
  const { frame, drawn, zoom } = stage;
  const part = useMemo(() => partOf(clip.picture, zoom), [clip.picture, zoom]);
  const observations = useMemo(() => observationsOf(fault, clip.view), [fault, clip.view]);
  const { marks } = content;

  useEffect(() => {
    if (active) onView({ clipId, marks: content.marks, evidence, frame });
  }, [active, clipId, content.marks, evidence, frame, onView]);

  useKeys(
    (event) =>
      stageKey(event, {
        step: stage.step,
        closer: stage.closer,
        nudge: (dx, dy) => canWork && asking.nudge(dx, dy),
      }),
    active,
  );

  const asked = canWork && open !== null ? asking.asked : undefined;
  const asks =
    asked === undefined
      ? null
      : `${reviewWords.placeNext} ${pointNames[asked.point]}, ${positionNames[asked.position]}`;
  const place = (x: number, y: number) => {
    if (drawn === frame) asking.place(frame, x, y);
  };
  // Another clip is looked at: what was changed here is kept and still saved.
  if (!active) return null;
  return (
    <div className={styles.desk}>
      <div className={styles.left}>
        <Stage
          pictures={open?.pictures ?? null}
          size={clip.picture}
          frame={frame}
          part={part}
          marks={marks}
          selected={asking.selected === null ? null : keyOf(asking.selected)}
          asks={asks}
          onPlace={place}
          onDrawn={stage.setDrawn}
        />
        <div className={stageStyles.bench}>
          {opening.kind === 'opening' && <p role="status">{reviewWords.opening}</p>}
          {opening.kind === 'failed' && <p role="alert">{reviewWords.failed}</p>}
          {open !== null && (
            <>
              <StageMoves
                frame={frame}
                timesS={open.timesS}
                zoom={zoom}
                onStep={stage.step}
                onFrame={stage.goTo}
                onZoom={stage.closer}
              />
              <FilmStrip
                pictures={open.pictures}
                timesS={open.timesS}
                size={clip.picture}
                frame={frame}
                marks={marks}
                positions={[...new Set(pass.map(({ position }) => position))]}
                onFrame={stage.goTo}
              />
              {!open.pictures.exact && <p className="small">{reviewWords.inexact}</p>}
            </>
          )}
          <p id="stage-help" className="small">
            {reviewWords.stageHelp}
          </p>
        </div>
      </div>
      <div className={styles.right}>
        <div className={styles.column}>
          <MarkList
            pass={pass}
            marks={marks}
            target={asking.target}
            canWork={canWork}
            onTarget={asking.choose}
            onRemove={asking.remove}
          />
          <SaveLine marking={marking} />
          <ObservationRow
            asked={observations}
            answers={content.observations}
            canWork={canWork}
            onAnswer={marking.observe}
          />
        </div>
        <div className={styles.column}>
          {causes(marking)}
          <Readings evidence={evidence} />
        </div>
      </div>
    </div>
  );
}
