package leadline.stats;

/**
 * Those watched at a time.
 *
 * @param atRisk entered before the time, and neither ended nor last seen before it
 * @param events how many of them ended at the time
 */
record RiskSet(double time, long atRisk, long events) {}
