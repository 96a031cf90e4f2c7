'use client';
import type { Reply } from '@ballfirst/contracts/client';
import { evidenceOf } from '@ballfirst/diagnosis/evidence-of';
import type { FaultId } from '@ballfirst/library/types';
import type { View } from '@ballfirst/swing/marks';
import type { Place } from '@ballfirst/swing/place';
import { useEffect, useMemo } from 'react';
import type { ComparableHere } from '../_compare/use-comparable.ts';
import type { Marking } from '../_marking/marking.ts';
import { observationsOf } from '../_marking/observations-of.ts';
import { passOf } from '../_marking/pass-of.ts';
import { cameraMoves } from '../_marking/still-points.ts';
import { useMarking } from '../_marking/use-marking.ts';
import { useStage } from '../_stage/use-stage.ts';
import styles from './desk.module.css';
import type { DeskView } from './desk-view.ts';
import { MarkList } from './mark-list.tsx';
import { ObservationRow } from './observation-row.tsx';
import { PassNote } from './pass-note.tsx';
import { Readings } from './readings.tsx';
import { SaveLine } from './save-line.tsx';
import { StageSide } from './stage-side.tsx';
import { StillNote } from './still-note.tsx';
import { useAsking } from './use-asking.ts';
import type { FilmAgainReason } from './use-claim.ts';

type Clip = Reply<'readClip'>;
type Props = {
  submissionId: string;
  membershipId: string;
  clip: Clip & { media: NonNullable<Clip['media']>; picture: NonNullable<Clip['picture']> };
  swing: Pick<Reply<'readSubmission'>, 'club'> & { hand: 'right' | 'left' };
  stored: Marking;
  fault: FaultId;
  canWork: boolean;
  active: boolean;
  /** Goes to a clip of another view; null when there is none. */
  onOther: ((view: View) => void) | null;
  onView: (view: DeskView) => void;
  onFilmAgain: (reason: FilmAgainReason) => void;
  onPutRight: () => void;
  comparable: ComparableHere;
  causes: (view: DeskView, onPlace: (place: Place) => void) => React.ReactNode;
};

/** Stage left with the film strip under it, marks and evidence right: all of it computed here as marks go down. */
export function Desk(props: Props) {
  const { submissionId, membershipId, clip, swing, stored, fault, canWork, active, onView } = props;
  const { picture, view, swingLength } = clip;
  const marking = useMarking({ submissionId, membershipId, stored, canWork });
  const stage = useStage(picture, picture.frames);
  const pass = useMemo(() => passOf(fault, view, swingLength), [fault, view, swingLength]);
  const { content, clipId } = marking;
  const { marks, observations } = content;
  const asking = useAsking({ pass: pass.places, marking, size: picture, stage, canWork });
  const evidence = useMemo(() => {
    const { widthPx, heightPx, frames, fps } = picture;
    // As the server counts them: the marks decide, not the odd late frame.
    const frameTimesS = Array.from({ length: frames }, (_, frame) => frame / fps);
    const setting = { view, swingLength, hand: swing.hand, club: swing.club };
    return evidenceOf(fault, { marks, observations, picture: { widthPx, heightPx, frameTimesS }, setting });
  }, [fault, marks, observations, picture, view, swingLength, swing.hand, swing.club]);
  const asked = useMemo(() => observationsOf(fault, view), [fault, view]);
  const now: DeskView = useMemo(
    () => ({ clipId, marks, evidence, frame: stage.frame, begun: marks.length + observations.length > 0 }),
    [clipId, marks, evidence, stage.frame, observations],
  );
  useEffect(() => {
    if (active) onView(now);
  }, [active, now, onView]);

  // Another clip is looked at: what was changed here is kept and still saved.
  if (!active) return null;
  return (
    <div className={styles.desk}>
      <div className={styles.left}>
        <StageSide
          clip={clip}
          marking={marking}
          stage={stage}
          asking={asking}
          pass={pass.places}
          comparable={props.comparable}
          swing={swing}
          canWork={canWork}
          onPutRight={props.onPutRight}
        />
      </div>
      <div className={styles.right}>
        <div className={styles.column}>
          <div className="stack">
            <PassNote
              pass={pass}
              canWork={canWork}
              onOther={
                pass.betterFrom === null || props.onOther === null
                  ? null
                  : () => pass.betterFrom !== null && props.onOther?.(pass.betterFrom)
              }
              onFilmAgain={() => props.onFilmAgain('wrong-angle')}
            />
            <MarkList
              pass={pass.places}
              marking={marking}
              asking={asking}
              size={picture}
              frames={picture.frames}
              canWork={canWork}
            />
            <StillNote
              moves={cameraMoves(marks, picture)}
              carried={asking.carried.length}
              canWork={canWork && asking.moment !== null}
              onConfirm={asking.confirmCarried}
              onFilmAgain={() => props.onFilmAgain('camera-moves')}
            />
            <SaveLine marking={marking} />
          </div>
          <ObservationRow asked={asked} answers={observations} canWork={canWork} onAnswer={marking.observe} />
        </div>
        <div className={styles.column}>
          {props.causes(now, asking.choose)}
          <Readings evidence={evidence} />
        </div>
      </div>
    </div>
  );
}
