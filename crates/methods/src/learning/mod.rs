//! How learning goes: curves, latency, readiness, change across phases.
