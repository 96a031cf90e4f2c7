/** Name of the built-in causes, signs and bands as they are now; it changes when a figure of theirs does. */
export const libraryVersion = 'library-2';
