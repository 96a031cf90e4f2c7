import type { WorkingHours } from '@ballfirst/calendar/working-hours';
import { z } from 'zod';

const hours = z.array(z.tuple([z.string(), z.string()]));
const Stored = z.object({
  week: z.object({
    mon: hours.optional(),
    tue: hours.optional(),
    wed: hours.optional(),
    thu: hours.optional(),
    fri: hours.optional(),
    sat: hours.optional(),
    sun: hours.optional(),
  }),
  holidays: z.array(z.string()).default([]),
});

/** When an academy works, from its row. */
export const workingHoursOf = (academy: {
  readonly zone: string;
  readonly workingHours: unknown;
}): WorkingHours => {
  const { week, holidays } = Stored.parse(academy.workingHours);
  const set = Object.entries(week).filter(([, open]) => open !== undefined);
  return { zone: academy.zone, week: Object.fromEntries(set), holidays };
};

const minutesOf = (time: string): number => Number(time.slice(0, 2)) * 60 + Number(time.slice(3, 5));

/** Hours of a usual working day: the mean over the days of the week that are open. */
export const workingDayHours = (working: WorkingHours): number => {
  const days = Object.values(working.week).filter((open) => open !== undefined && open.length > 0);
  const minutes = days
    .flat()
    .reduce((sum, open) => sum + (open === undefined ? 0 : minutesOf(open[1]) - minutesOf(open[0])), 0);
  return days.length === 0 ? 8 : minutes / 60 / days.length;
};
