import { writeCountersignatures } from '@loopwright/records/log';
import { useCallback, useRef, useState } from 'react';
import type { CheckpointMet, WitnessDesk, WitnessesTaken } from '../../store/witness/witness-desk.ts';
import { judgeWitnessCode } from './judge-witness-code.ts';

/** What came of the last code or file. */
export type Met =
  | { readonly from: 'checkpoint'; readonly device: string; readonly size: number; readonly met: CheckpointMet }
  | { readonly from: 'countersignatures'; readonly taken: WitnessesTaken }
  | { readonly from: 'unreadable'; readonly why: 'damaged' | 'other' }
  | { readonly from: 'refused'; readonly cause: unknown };

interface Meeting {
  readonly met: Met | undefined;
  readonly onCodes: (texts: readonly string[]) => void;
  readonly onFile: (file: Blob) => void;
}

/** Takes codes and files of other devices, one after the other. A code that stays before the lens counts once. */
export function useMeeting(desk: WitnessDesk): Meeting {
  const [met, setMet] = useState<Met>();
  const last = useRef('');
  const show = useCallback((work: Promise<Met>) => {
    work.then(setMet, (cause: unknown) => setMet({ from: 'refused', cause }));
  }, []);
  const onCodes = useCallback(
    ([text = '']: readonly string[]) => {
      if (text === last.current) return;
      last.current = text;
      show(meetCode(desk, text));
    },
    [desk, show],
  );
  const onFile = (file: Blob) => {
    last.current = '';
    show(file.arrayBuffer().then((bytes) => takeFile(desk, new Uint8Array(bytes))));
  };
  return { met, onCodes, onFile };
}

async function meetCode(desk: WitnessDesk, text: string): Promise<Met> {
  const code = judgeWitnessCode(text);
  switch (code.is) {
    case 'checkpoint': {
      const { key, checkpoint } = code.given;
      const met = await desk.meet(key, checkpoint);
      return { from: 'checkpoint', device: checkpoint.device, size: checkpoint.size, met };
    }
    case 'countersignature':
      return takeFile(desk, new TextEncoder().encode(writeCountersignatures([code.given])));
    default:
      return { from: 'unreadable', why: code.is };
  }
}

async function takeFile(desk: WitnessDesk, file: Uint8Array): Promise<Met> {
  return { from: 'countersignatures', taken: await desk.take(file) };
}
