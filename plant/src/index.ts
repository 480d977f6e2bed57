export { byLine } from './by-line.ts';
export { type CheckCode, checkCodes } from './check/check-codes.ts';
export { checkPlant, type PlantProblem, plantChecks } from './check/check-plant.ts';
export { byId, emptyPlant, kinds } from './empty-plant.ts';
export { beltSection, leadingPulleys, linePathInput, minCounterBend } from './engine-input.ts';
export { dieFitsBelt, diesFor, pocketTakesThickness, pocketTakesWidth } from './fits.ts';
export { type CellForm, type Field, fieldsOf } from './folder/fields.ts';
export { type FolderAccess, readPlantFolderFrom } from './folder/folder-access.ts';
export { folderLimits } from './folder/limits.ts';
export { nearest } from './folder/nearest.ts';
export { type NumberCell, readNumber } from './folder/number-cell.ts';
export {
  type FolderNote,
  type FolderNoteCode,
  type FolderProblem,
  type FolderProblemCode,
  folderNoteCodes,
  folderProblemCodes,
} from './folder/problem.ts';
export { type PlantFolderReading, plantFiles, readPlantFolder } from './folder/read-plant-folder.ts';
export { type PlantTableReading, readPlantTable, type TableSource } from './folder/read-plant-table.ts';
export { fromInside, toInside, type Unit, type UnitKind, units } from './folder/units.ts';
export {
  type CellValue,
  plantTableCells,
  type WritingStyle,
  writePlantFolder,
  writePlantTable,
} from './folder/write-plant-folder.ts';
export { type BeltThickness, pathInput } from './path-input.ts';
export { type Kind, type Plant, plantSchema, type ThingOf, thingSchemas } from './plant.ts';
export { definitionsOf, type PlantDefinition } from './plant-definition.ts';
export { type DanglingReference, danglingReferences, type Reference, references } from './references.ts';
export { type LinePulleys, linePulleys } from './survey/line-pulleys.ts';
export { measurementUncertainty_m, type PulleyOrigin, surveyOrigins, surveyPulleys } from './survey/survey-pulleys.ts';
export { type SurveyQuestion, surveyQuestions } from './survey/survey-questions.ts';
export { type SurveyShare, type SurveyUncertainty, surveyUncertainty } from './survey/survey-uncertainty.ts';
export { type Belt, beltSchema, meltPrior } from './things/belt.ts';
export type { FieldKind, Prior } from './things/field.ts';
export { type Line, lineAir, lineSchema, type Pulley, pulleyRoles, pulleySchema, takeUpKinds } from './things/line.ts';
export {
  type Badge,
  badgeSchema,
  badgeShapes,
  type Position,
  positionSchema,
  positionStatuses,
  type Roll,
  rollSchema,
} from './things/position.ts';
export { lightPress } from './things/press-heat.ts';
export { type Source, sourceOf, sources } from './things/source.ts';
export {
  type Measurement,
  type Survey,
  type SurveyLayout,
  surveyEnds,
  surveyLayouts,
  surveySchema,
} from './things/survey.ts';
export {
  type Die,
  dieSchema,
  type Press,
  pressSchema,
  type Recipe,
  recipeSchema,
  siliconeMat,
  type Template,
  templateSchema,
} from './things/tooling.ts';
