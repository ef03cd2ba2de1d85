-- Overhauls by reason, and what was found of each part at them.

-- An overhaul's moment is that of the removal. A visit that only tests is no overhaul, and one
-- outside the hours observed counts nowhere.
CREATE TABLE observed_overhauls AS
SELECT "window", vessel, machine, overhaul, component, reason
FROM overhauls JOIN observed USING (vessel, machine)
WHERE reason <> 'test-only' AND coalesce(removed_at, done_at) > starts AND coalesce(removed_at, done_at) <= ends;

-- A stratum where nothing happened has a row too, so counting begins at the strata.
CREATE TABLE strata AS
SELECT DISTINCT "window", level, stratum, component FROM windows CROSS JOIN members CROSS JOIN positions;

CREATE TABLE stratum_overhauls AS
FROM observed_overhauls JOIN members USING (vessel, machine);

CREATE VIEW recounted_events AS
SELECT "window", level, stratum, component, endpoint,
  count(overhaul) FILTER (reason = endpoint) AS events, count(overhaul) AS eligible
FROM strata
CROSS JOIN (VALUES ('breakdown'), ('condition')) AS endpoints (endpoint)
LEFT JOIN stratum_overhauls USING ("window", level, stratum, component)
GROUP BY ALL;

-- Several rows for one part at one overhaul are several conditions of it. It was opened if any of
-- them says so; if none says either way, nobody knows. A condition said to be found in a part not
-- said to be opened is hearsay, and an opening without a condition tells nothing.
CREATE TABLE part_conditions AS
SELECT vessel, overhaul, component, part,
  coalesce(bool_or(opened = 'yes'), false) AS said_opened,
  coalesce(bool_or(opened = 'no'), false) AND NOT said_opened AS said_unopened,
  bool_or(found IS NOT NULL) AS condition_stated,
  said_opened AND condition_stated AS inspected,
  NOT said_unopened AND NOT inspected AS unstated,
  inspected AND coalesce(bool_or(means = 'failed' OR (means = 'failed unless a spring' AND shape = 'fit')), false) AS failed,
  coalesce(bool_or(action = 'renewed'), false) AS renewed,
  -- o-rings are thrown away at every overhaul: that says nothing of their condition
  inspected AND NOT failed AND renewed AND NOT any_value(routine)
    AND coalesce(bool_or(means = 'beyond limit'), false) AS rejected
FROM findings
JOIN overhauls USING (vessel, overhaul)
JOIN parts USING (component, part)
LEFT JOIN found_words ON word = found
GROUP BY ALL;

CREATE VIEW recounted_parts AS
SELECT "window", level, stratum, component, part,
  count(overhaul) AS overhauled,
  count(*) FILTER (inspected) AS opened,
  count(*) FILTER (unstated) AS opened_unstated,
  count(*) FILTER (failed) AS failed,
  count(*) FILTER (rejected) AS rejected,
  count(*) FILTER (renewed) AS renewed
FROM strata
JOIN parts USING (component)
LEFT JOIN stratum_overhauls USING ("window", level, stratum, component)
LEFT JOIN part_conditions USING (vessel, overhaul, component, part)
GROUP BY ALL;

-- A spring fails by breaking or cracking only. Those of unknown or any age together.
CREATE VIEW recounted_springs AS
SELECT "window", level, stratum, component, part, 'all' AS hours_band, overhauled, opened, failed AS broken
FROM recounted_parts
SEMI JOIN (SELECT component, part FROM parts WHERE shape = 'spring') USING (component, part);

-- What parts were found like when opened, of any age. A stratum lists the words it found at all, and
-- how many were found failed in any of them.
CREATE TABLE stratum_conditions AS
SELECT DISTINCT o."window", o.level, o.stratum, o.component, p.part, vessel, overhaul, f.found
FROM stratum_overhauls AS o
JOIN part_conditions AS p USING (vessel, overhaul, component)
JOIN findings AS f USING (vessel, overhaul, part)
WHERE p.inspected AND f.found IS NOT NULL;

CREATE VIEW recounted_conditions AS
SELECT "window", level, stratum, component, part, 'all' AS hours_band, found, overhauled, opened, times_found
FROM (
  SELECT "window", level, stratum, component, part, 'failed' AS found, failed AS times_found FROM recounted_parts
  UNION ALL BY NAME
  SELECT "window", level, stratum, component, part, found, count(*) AS times_found FROM stratum_conditions GROUP BY ALL
)
JOIN recounted_parts USING ("window", level, stratum, component, part)
WHERE "window" = 'since-start' AND level <> 'vessel';
