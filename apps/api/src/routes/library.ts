import { listDrills } from '@ballfirst/services/library/list-drills';
import { type Mounting, mount } from '../door/mount.ts';

export const libraryRoutes = (at: Mounting): void => {
  mount(at, 'listDrills', listDrills);
};
