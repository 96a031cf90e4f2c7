import { drills } from '@ballfirst/library/drills';
import { requireStaff } from '../authorise.ts';
import type { Call, Reply } from '../operation-types.ts';

/** The drills that can be given; one without cautions is not among them. */
export const listDrills = async ({ ctx }: Pick<Call<'listDrills'>, 'ctx'>): Promise<Reply<'listDrills'>> => {
  requireStaff(ctx);
  return {
    items: drills
      .filter(({ cautions }) => cautions.length > 0)
      .map((drill) => ({
        id: drill.id,
        name: drill.name,
        purpose: drill.purpose,
        causes: [...drill.causes],
        places: drill.stations.map(({ place }) => place),
        minutes: drill.minutes,
        cautions: [...drill.cautions],
      })),
  };
};
