export type { AuditCycle, AuditMark, AuditReading } from './audit-cycle.ts';
export { type AuditOptions, type AuditReport, auditReport, type EventRef } from './audit-report.ts';
export { type KnownLog, logsOfRun, type PlacedEvent } from './logs-of-run.ts';
export type { AuditLog, EventPlace, LogOfRun } from './run-logs.ts';
