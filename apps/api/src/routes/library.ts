import { listDrills } from '@ballfirst/services/library/list-drills';
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
};
