import type { Doubt } from '../../../../clip-check/judge-clip.ts';
import { filmWords } from '../../../../words/film.ts';

type Props = { fileName: string; doubts: readonly Doubt[]; onAnyway: (() => void) | null };

/** What the device found in a video, and the way to send it all the same. */
export function DoubtsNote({ fileName, doubts, onAnyway }: Props) {
  if (doubts.length === 0) return null;
  return (
    <div className="notice look stack tight" role={onAnyway === null ? 'status' : 'alert'}>
      {onAnyway !== null && <h3>{filmWords.doubtTitle}</h3>}
      <p>
        <strong>{fileName}</strong>
      </p>
      <ul className="stack tight">
        {doubts.map((doubt) => (
          <li key={doubt}>{filmWords.doubts[doubt]}</li>
        ))}
      </ul>
      {onAnyway !== null && (
        <button type="button" onClick={onAnyway}>
          {filmWords.anyway}
        </button>
      )}
    </div>
  );
}
