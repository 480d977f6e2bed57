export { type Appended, appendEvent, type Happening } from './append-event.ts';
export { type BlobKind, blobKinds, blobReference } from './blob.ts';
export { canonicalText, canonicalValue, type DataFault, dataFault, deepest, type FaultPlace } from './canonical.ts';
export { cardCode, readCardCode } from './card-code.ts';
export { causalOrder, type MetLog, metType } from './causal-order.ts';
export { type Checkpoint, type CheckpointOwner, signCheckpoint, soundCheckpoint } from './checkpoint.ts';
export { type Comparison, compareLogs, type TwoLogs } from './compare-logs.ts';
export {
  type Countersignature,
  checkCountersignatures,
  countersignature,
  countersignatureFault,
  sizesWitnessed,
  type WitnessesChecked,
  type WitnessFailure,
  writeCountersignatures,
} from './countersignatures.ts';
export {
  type DeviceKey,
  type KeyHalves,
  nobleSigner,
  nobleVerifier,
  type Subtle,
  webCryptoSigner,
  webCryptoVerifier,
} from './ed25519.ts';
export type { ExportHeader, ExportTrailer } from './export-form.ts';
export { type Extended, type Extending, extendLog } from './extend-log.ts';
export { isHash, sha256Hex } from './hash.ts';
export { type KeptCheckpoints, type LogMet, type Witnessed, witnessLog } from './keep-witness.ts';
export {
  type BlobReference,
  type LogEvent,
  largestEvent_bytes,
  noEvent,
  type OpenedEvent,
  openEvent,
} from './log-event.ts';
export { deviceOf, emptyLog, type LogState, logRoot, withEvent } from './log-state.ts';
export { type ExportMet, meetExport } from './meet-export.ts';
export { emptyFrontier, emptyRoot, type Frontier, grown, leafHash, nodeHash, rootOf, rootOfLeaves } from './merkle.ts';
export {
  type ConsistencyClaim,
  consistencyHolds,
  consistencyProof,
  type InclusionClaim,
  inclusionHolds,
  inclusionProof,
} from './merkle-proof.ts';
export { beginExport, type ExportCheck, type ExportReading } from './read-export.ts';
export { type Seen, type Sighting, seenOf } from './seen.ts';
export type { Sign, Signed, Verify } from './signing.ts';
export {
  type CanonicalAnswer,
  type CanonicalQuestion,
  type ConsistencyQuestion,
  type InclusionQuestion,
  type LogAnswer,
  type LogQuestion,
  type ProofAnswer,
  solveCanonical,
  solveConsistency,
  solveInclusion,
  solveLog,
  solveTwoLogs,
  type TwoLogsAnswer,
  type TwoLogsQuestion,
} from './solve-forms.ts';
export { readStrictly, readTextStrictly, type StrictFault, type StrictReading, strictFaults } from './strict-json.ts';
export { signatureIsStrict } from './strict-signature.ts';
export { type Failure, type LogWarning, type Verdict, verdicts } from './verdict.ts';
export { continueExport, type ExportedLog, type ExportVerdict, verifyExport } from './verify-export.ts';
export { type LogToVerify, type LogVerdict, verifyLog } from './verify-log.ts';
export { type Meeting, meetCheckpoint, signWitness, soundWitness, type WitnessStatement } from './witness.ts';
export { type LogToExport, writeExport } from './write-export.ts';
