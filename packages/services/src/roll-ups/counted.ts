/**
 * What stands in the effects for a row that its week has counted. The key is the row's own id: counting from scratch
 * marks the rows it took in, so that their events, when they come, add nothing a second time.
 */
export const countedEntry = 'roll-up-entry';
export const countedSwing = 'roll-up-swing';
