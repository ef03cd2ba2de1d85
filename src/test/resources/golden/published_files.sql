-- The files of a published month, as they lie there and as the data package and the run's
-- manifest tell of them. Needs the variable month: the published folder.
CREATE TABLE files_there AS
SELECT 'tables/' || parse_filename(filename) AS path, size AS bytes, 'sha256:' || sha256(content) AS hash
FROM read_blob(getvariable('month') || '/tables/*');

CREATE TABLE resources AS
SELECT unnest(resources, recursive := false) AS resource
FROM read_json(getvariable('month') || '/datapackage.json');

CREATE VIEW files_in_package AS
SELECT resource.path AS path, resource.bytes AS bytes, resource.hash AS hash FROM resources
UNION ALL
SELECT resource.parquet.path, resource.parquet.bytes, resource.parquet.hash FROM resources;

CREATE TABLE manifest_tables AS
SELECT unnest(tables) AS published FROM read_json(getvariable('month') || '/run.json');

CREATE VIEW files_in_manifest AS
SELECT published.csv.path AS path, published.csv.bytes AS bytes, published.csv.hash AS hash FROM manifest_tables
UNION ALL
SELECT published.parquet.path, published.parquet.bytes, published.parquet.hash FROM manifest_tables;

CREATE TABLE manifest_inputs AS
SELECT batch, committed_at::TIMESTAMPTZ AS committed_at, unnest(files, recursive := true)
FROM (SELECT unnest(inputs, recursive := true) FROM read_json(getvariable('month') || '/run.json'));

CREATE TABLE manifest_records AS
SELECT unnest(map_values(records), recursive := true)
FROM read_json(getvariable('month') || '/run.json', columns = {records:
  'MAP(VARCHAR, STRUCT("current" BIGINT, duplicate BIGINT, superseded BIGINT, withdrawn BIGINT))'});

-- The types of the standard as an SQL reader has them.
CREATE TABLE fields AS
SELECT "table", name, required, position, position_in_key,
  CASE type WHEN 'string' THEN 'VARCHAR' WHEN 'integer' THEN 'BIGINT' WHEN 'number' THEN 'DOUBLE'
    WHEN 'datetime' THEN 'TIMESTAMP WITH TIME ZONE' END AS type
FROM (
  SELECT "table", field.name AS name, field.type AS type, field.constraints.required AS required, position,
    list_position(key, field.name) AS position_in_key
  FROM (
    SELECT resource.name AS "table", resource.schema.primaryKey AS key,
      unnest(resource.schema.fields) AS field, generate_subscripts(resource.schema.fields, 1) AS position
    FROM resources
  )
);
