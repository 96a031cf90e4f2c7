import { sendWords } from '../words/send.ts';
import { KeepClear } from './keep-clear.tsx';
import styles from './phone-place.module.css';

type Props = { view: 'face-on' | 'down-the-line'; hand: 'right' | 'left' };

/** Feet of a player seen from above, standing below the ball and facing up the drawing. */
function Player() {
  return (
    <g>
      <rect x="-27" y="26" width="12" height="30" rx="6" />
      <rect x="15" y="26" width="12" height="30" rx="6" />
      <text x="0" y="74" textAnchor="middle">
        {sendWords.you}
      </text>
    </g>
  );
}

/** Our drawing of where the phone stands, from above; a left-hander's target lies on the other side. */
export function PhonePlace({ view, hand }: Props) {
  const towards = hand === 'right' ? -1 : 1;
  const faceOn = view === 'face-on';
  const phone = faceOn ? { x: 0, y: -104 } : { x: -towards * 128, y: 18 };
  return (
    <svg
      role="img"
      aria-label={faceOn ? sendWords.drawingFaceOn : sendWords.drawingBehind}
      viewBox={faceOn ? '-170 -136 340 226' : '-170 -68 340 154'}
      className={styles.plan}
    >
      <path d={`M${-towards * 150} 0H${towards * 150}`} className={styles.line} />
      <path d={`M${towards * 142} -6L${towards * 152} 0L${towards * 142} 6`} className={styles.ink} />
      <text x={towards * 138} y="-12" textAnchor={towards < 0 ? 'start' : 'end'}>
        {sendWords.target}
      </text>
      <circle r="4.5" className={styles.ball} />
      <g className={styles.ink}>
        <Player />
      </g>
      <path
        d={faceOn ? 'M-46 34L0 -96L46 34' : `M${towards * 30} -22L${phone.x} ${phone.y}L${towards * 30} 58`}
        className={styles.sight}
      />
      <g transform={`translate(${phone.x} ${phone.y}) rotate(${faceOn ? 0 : 90})`} className={styles.phone}>
        <rect x="-11" y="-4" width="22" height="8" rx="2" />
        <path
          d={
            faceOn
              ? 'M0 -4L-9 -16M0 -4L9 -16M0 -4V-18'
              : `M0 ${towards < 0 ? -4 : 4}L-9 ${towards * 16}M0 ${towards * 4}L9 ${towards * 16}`
          }
        />
      </g>
      <text x={faceOn ? 22 : phone.x} y={faceOn ? -104 : 46} textAnchor={faceOn ? 'start' : 'middle'}>
        {sendWords.phoneLabel}
      </text>
      <text
        x={faceOn ? towards * 34 : -towards * 76}
        y={faceOn ? -58 : 62}
        textAnchor={faceOn ? (towards < 0 ? 'end' : 'start') : 'middle'}
        className={styles.soft}
      >
        {sendWords.fourSteps}
      </text>
      {faceOn ? (
        <KeepClear x={towards < 0 ? 60 : -150} y={-56} width={90} height={36} labelled />
      ) : (
        <KeepClear x={-60} y={-44} width={120} height={18} labelled />
      )}
    </svg>
  );
}
