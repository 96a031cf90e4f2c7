import { faultById } from '@ballfirst/library/faults';
import type { TriageReason } from './triage-key.ts';

const hours = (n: number) => {
  const whole = Math.round(n);
  if (whole < 1) return 'less than an hour';
  return whole === 1 ? '1 working hour' : `${whole} working hours`;
};

/**
 * A reason in words.
 *
 * @param when - puts an instant (RFC 3339) into words in the reader's zone
 * @example reasonWords({ kind: 'first-swing' }, String) // 'First swing of this student'
 */
export function reasonWords(reason: TriageReason, when: (instant: string) => string): string {
  switch (reason.kind) {
    case 'pain':
      return reason.pain === 'new' ? 'New pain reported' : 'Pain worse than usual';
    case 'fault': {
      const sure = Math.round(reason.probability * 100);
      return `${faultById(reason.fault).name} costs most (${sure} % sure): ${hours(reason.headStartHours)} ahead`;
    }
    case 'trial-ending':
      return `Trial ends ${when(reason.endsAt)}`;
    case 'promise':
      return `Answer promised by ${when(reason.answerBy)}`;
    case 'old-fault':
      return 'A fault that was mended is back';
    case 'stuck':
      return 'Practice does not move on';
    case 'progress':
      return 'The opposite miss: the drill works';
    case 'promise-at-risk':
      return 'The promise can hardly be kept: more waits than can be answered';
    case 'first-swing':
      return 'First swing of this student';
    case 'check-in':
      return 'Answers a check-in';
  }
}
