import { drills } from '@ballfirst/library/drills';
import { requireStaff } from '../authorise.ts';
import type { Call, Reply } from '../operation-types.ts';

/** Coaches read lead and trail. */
const forCoach = (sentence: string): string =>
  sentence.replaceAll('{lead}', 'lead').replaceAll('{trail}', 'trail');

/** The drills that can be given; one without cautions is not among them. */
export const listDrills = async ({ ctx }: Pick<Call<'listDrills'>, 'ctx'>): Promise<Reply<'listDrills'>> => {
  requireStaff(ctx);
  return {
    items: drills
      .filter(({ cautions }) => cautions.length > 0)
      .map((drill) => ({
        id: drill.id,
        name: drill.name,
        purpose: forCoach(drill.purpose),
        causes: [...drill.causes],
        places: drill.stations.map(({ place }) => place),
        minutes: drill.minutes,
        cautions: drill.cautions.map(forCoach),
      })),
  };
};
