import { byId, kinds, type Plant } from '@loopwright/plant';
import { FileRefused } from './file-fault.ts';
import { readTable } from './read-table.ts';
import { packedReading, type TableAnswer, type TableAsk } from './table-ask.ts';
import { writeTable } from './write-table.ts';

const answer = (message: TableAnswer) =>
  self.postMessage(message, { transfer: message.is === 'read' ? [message.reading.packed] : [] });

self.onmessage = ({ data }: MessageEvent<TableAsk>) => {
  void answerTo(data).then(answer);
};

async function answerTo(ask: TableAsk): Promise<TableAnswer> {
  const plant = ownNames(ask.plant);
  try {
    if (ask.do === 'write') return { is: 'written', blob: await writeTable({ ...ask, plant }) };
    const reading = await readTable({ ...ask, plant }, (stage) => answer({ is: 'stage', stage }));
    return { is: 'read', reading: packedReading(reading) };
  } catch (problem) {
    return {
      is: 'refused',
      fault: problem instanceof FileRefused ? problem.fault : { code: 'failed', data: {} },
    };
  }
}

/** A copy that came by message has every object's names among its things; they are taken off again. */
function ownNames(plant: Plant): Plant {
  const things = kinds.map((kind) => [kind, byId(Object.values<{ readonly id: string }>(plant[kind]))]);
  return { ...plant, ...Object.fromEntries(things) };
}
