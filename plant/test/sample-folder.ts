import { type PlantFolderReading, readPlantFolder } from '../src/folder/read-plant-folder.ts';

/** A small plant without any mistake: the eight-pulley line G of the path cases, with room for its parts. */
export const sampleFiles: Readonly<Record<string, string>> = {
  'plant.csv': 'id,name,note\nsample,Sample Works,invented\n',
  'belts.csv': [
    'id,source,dataSheet,thickness_mm,neutralLine_mm,k1_N_mm_pct,minPulley_mm,areaMass_kg_m2,fingerPitch_mm,fingerLength_mm',
    'Reed-20,example,sheet A,2.0,0.8,8,60,2.4,10,80',
  ].join('\n'),
  'dies.csv': 'id,source,pitch_mm,fingerLength_mm,maxWidth_mm\ndie-10x80,person,10,80,60',
  'templates.csv': 'id,source,die,pocketWidth_mm,pocketDepth_mm,mat_mm\ntemplate-30,person,die-10x80,30,2.0,1.5',
  'presses.csv':
    'id,source,name,platenLength_mm,platenWidth_mm,bagWidth_mm,maxPressure_bar\nP1,person,North,300,150,110,4',
  'recipes.csv':
    'id,source,belt,press,top_degC,bottom_degC,dwell_s,beltPressure_bar\nreed-north,example,Reed-20,P1,180,185,170,2',
  'lines.csv': [
    'id,source,name,belt,width_mm,setElongation_pct,speed_m_s,hoursPerDay,load_kg_m,bed_m,takeUpStroke_mm,takeUpReference_mm',
    'L1,person,Infeed,Reed-20,30,0.8,0.75,16,25,6,300,120',
  ].join('\n'),
  'pulleys.csv': [
    'source,line,order,role,x_mm,y_mm,diameter_mm,turn,face,faceWidth_mm',
    'measured,L1,1,end,0,0,100,left,running,50',
    'measured,L1,2,snub,2890,-90,80,right,back,50',
    'measured,L1,3,drive,3000,-330,160,left,running,50',
    'measured,L1,4,snub,3110,-90,80,right,back,50',
    'measured,L1,5,snub,3690,-90,80,right,back,50',
    'measured,L1,6,take-up,3800,-330,120,left,running,50',
    'measured,L1,7,snub,3910,-90,80,right,back,50',
    'measured,L1,8,end,6000,0,100,left,running,50',
  ].join('\n'),
  'positions.csv': 'id,source,line,number,status,fittedOn,takeUp_mm\nL1-1,person,L1,1,running,2026-03-02,130',
  'rolls.csv': 'id,source,belt,width_mm,left_m,sealed\nroll-1,measured,Reed-20,30,40,yes',
  'badges.csv': 'id,source,shape,word\nb1,person,circle,Otter',
};

type Content = string | Uint8Array;

/** The sample plant with some files replaced, added, or (undefined) left out. */
export function folderWith(changes: Readonly<Record<string, Content | undefined>> = {}): Map<string, Uint8Array> {
  const files = Object.entries({ ...sampleFiles, ...changes });
  const encoder = new TextEncoder();
  return new Map(
    files.flatMap(([name, content]) =>
      content === undefined ? [] : [[name, typeof content === 'string' ? encoder.encode(content) : content] as const],
    ),
  );
}

export function readWith(changes?: Readonly<Record<string, Content | undefined>>): PlantFolderReading {
  return readPlantFolder(folderWith(changes));
}

/** A file of the sample with one text replaced; fails when the text is not there. */
export function edited(file: string, from: string, to: string): Record<string, string> {
  const content = sampleFiles[file] ?? '';
  if (!content.includes(from)) throw new Error(`${file} does not hold ${from}`);
  return { [file]: content.replace(from, to) };
}
