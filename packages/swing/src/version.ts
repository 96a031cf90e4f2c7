/** Name of the way measurements and their doubts are made; it changes when a value or a doubt does. */
export const measureVersion = 'pinhole-2';
