import { keepStartingPoint } from '@ballfirst/services/library/keep-starting-point';
import { listDrills } from '@ballfirst/services/library/list-drills';
import { listPhrases } from '@ballfirst/services/library/list-phrases';
import { listStartingPoints } from '@ballfirst/services/library/list-starting-points';
import { removePhrase } from '@ballfirst/services/library/remove-phrase';
import { removeStartingPoint } from '@ballfirst/services/library/remove-starting-point';
import { savePhrase } from '@ballfirst/services/library/save-phrase';
import { keepTeachingClip } from '@ballfirst/services/teaching/keep-teaching-clip';
import { listTeachingClips } from '@ballfirst/services/teaching/list-teaching-clips';
import { readFaultsLately } from '@ballfirst/services/teaching/read-faults-lately';
import { removeTeachingClip } from '@ballfirst/services/teaching/remove-teaching-clip';
import { type Mounting, mount } from '../door/mount.ts';

export const libraryRoutes = (at: Mounting): void => {
  mount(at, 'listDrills', listDrills);
  mount(at, 'readFaultsLately', readFaultsLately);
  mount(at, 'listTeachingClips', listTeachingClips);
  mount(at, 'keepTeachingClip', keepTeachingClip);
  mount(at, 'removeTeachingClip', removeTeachingClip);
  mount(at, 'listPhrases', listPhrases);
  mount(at, 'savePhrase', savePhrase);
  mount(at, 'removePhrase', removePhrase);
  mount(at, 'keepStartingPoint', keepStartingPoint);
  mount(at, 'listStartingPoints', listStartingPoints);
  mount(at, 'removeStartingPoint', removeStartingPoint);
};
