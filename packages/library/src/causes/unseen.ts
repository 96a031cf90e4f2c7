/** Sentences for a coach, where a view cannot show a cause. */
export const filmFaceOn = 'Not to be seen from behind: ask for a swing filmed face-on.';
export const filmBehind = 'Not to be seen face-on: ask for a swing filmed from behind.';
export const feltOnly = 'No camera shows it: ask how tight the hands are, from nought to ten.';
