import { DrillCard } from '@ballfirst/contracts/http/practice';
import { everyDrill } from '@ballfirst/library/cautions';
import { type EquipmentId, equipment } from '@ballfirst/library/constants';
import { drillById } from '@ballfirst/library/drills';
import type { Drill, Place, Rung, Station } from '@ballfirst/library/types';
import { type PlayingHand, wordsForHand } from '@ballfirst/library/words-for-hand';
import { stationFor } from '@ballfirst/practice/drill-fit';
import { ladderAt } from '@ballfirst/practice/programme';
import type { z } from 'zod';

const isEquipment = (id: string): id is EquipmentId => Object.hasOwn(equipment, id);

const stationOf = (station: Station, say: (sentence: string) => string) => ({
  place: station.place,
  needs: station.needs.map((need) => (isEquipment(need) ? equipment[need] : need)),
  steps: station.steps.map(say),
  objects: station.objects.map((object) => ({ ...object, label: say(object.label) })),
});

/** Those of every drill (pain, keeping clear, juniors), then the drill's own. @throws RangeError where it has none */
const cautionsOf = (drill: Drill): readonly string[] => {
  if (drill.cautions.length === 0) throw new RangeError(`The drill "${drill.id}" has no cautions.`);
  return [...new Set([...everyDrill, ...drill.cautions])];
};

/**
 * A drill as this student reads it: left and right put in, the rungs that are sound at the place, the place's own station
 * first. Its cautions always come with it.
 * @throws RangeError for an unknown drill, or one without cautions
 */
export const drillCardOf = (
  given: {
    readonly drillId: string;
    readonly place: Place;
    readonly exaggeration: string;
    /** Absent: all that is sound at the place. */
    readonly ladder?: readonly Rung[];
  },
  hand: PlayingHand,
): z.output<typeof DrillCard> => {
  const drill = drillById(given.drillId);
  const say = (sentence: string): string => wordsForHand(sentence, hand);
  const here = (station: Station): boolean => station.place === given.place;
  const stations = [...drill.stations.filter(here), ...drill.stations.filter((one) => !here(one))];
  const level = drill.exaggerations.find((one) => one.level === given.exaggeration);
  return DrillCard.parse({
    id: drill.id,
    name: drill.name,
    purpose: say(drill.purpose),
    feel: say(drill.feel),
    steps: drill.steps.map(say),
    stations: stations.map((station) => stationOf(station, say)),
    ladder: (given.ladder ?? ladderAt(drill, given.place)).map((rung) => ({
      ...rung,
      clean: say(rung.clean),
    })),
    overCorrection: say(drill.overCorrection),
    exaggeration: given.exaggeration,
    exaggerationHow: say(level?.how ?? ''),
    minutes: drill.minutes,
    ballsAtMost: stationFor(drill, given.place)?.ballsAtMost ?? drill.ballsAtMost,
    cautions: cautionsOf(drill).map(say),
  });
};
