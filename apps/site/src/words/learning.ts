export const learningWords = {
  title: 'What this academy has learned',
  lead: 'How often each cause came first when a coach named it freely: before the order of causes was shown, or against it. The order starts from these rates and not from the library’s alone.',

  turnTitle: 'Which cause comes first?',
  turnWhy:
    'On one swing in five you name the cause before the order is shown, so that the academy learns from your eye and not from its own order.',
  turnList: 'Causes by name',
  turnHint: 'The order comes right after. You can still choose another cause then.',
  cannotTell: 'I cannot tell: show the order',
  namedBefore: (place: number, of: number) =>
    place === 1
      ? 'Named before the order was shown, and first in it.'
      : `Named before the order was shown. It stands at place ${place} of ${of}.`,

  switchName: 'Learn from what coaches choose',
  switchHint: (oneIn: number) =>
    `The order is held back on one swing in ${oneIn === 5 ? 'five' : oneIn} until the coach has named a cause; never where pain was told. Off: nothing is held back or counted, and the library’s rates hold. What was counted is kept.`,
  isOn: 'On since',
  isOff: 'Off: the order of causes starts from the library’s rates.',
  onlyManager: 'A manager switches this.',

  counted: (swings: number, blind: number, overruled: number) =>
    `${swings} ${swings === 1 ? 'swing counts' : 'swings count'}: ${blind} named before the order was shown, ${overruled} chosen against it.`,
  countedSince: 'Begun anew:',
  emptyTitle: 'Nothing learned yet',
  empty:
    'No cause has been named before its order was shown, nor chosen against it. Until then the library’s rates hold.',
  emptyOff: 'Switch it on, and swings sent from then on take their turn.',
  swings: (count: number) => `${count} ${count === 1 ? 'swing' : 'swings'}`,
  columns: {
    cause: 'Cause',
    chosen: 'Named first',
    expected: 'Expected',
    library: 'Library’s rate',
    rate: 'Rate now',
  },
  of: (chosen: number, seen: number) => `${chosen} of ${seen}`,
  expected: (swings: number) => swings.toFixed(1),
  percent: (rate: number) => `${Math.round(rate * 100)} %`,
  others: (count: number) => `Never named: ${count}`,
  hint: 'Named first: of the times the cause could have been seen from where the camera stood. Expected: how often by the library’s rates alone. A rate is how often a cause is there before anything is marked; it counts all misses together, and moves where a cause is named more or less often than expected.',

  resetTitle: 'Begin anew',
  resetLead:
    'Nothing chosen up to now counts any more, and the library’s rates hold again. Replies and diagnoses stay as they are.',
  reset: 'Begin anew …',
  resetSure: (swings: number) =>
    `${swings} ${swings === 1 ? 'swing' : 'swings'} will no longer count. This cannot be taken back.`,
  resetYes: 'Yes, begin anew',
  resetNo: 'Keep them',
  resetDone: 'Begun anew. The library’s rates hold.',
} as const;
