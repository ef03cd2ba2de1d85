package leadline.golden;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** A session of DuckDB, a reader of files that shares no code with the project. */
final class DuckSession implements AutoCloseable {

  private static final Path SCRIPTS = GoldenFleet.HOME.resolve("src/test/resources/golden");

  private final Connection connection;

  private DuckSession(Connection connection) {
    this.connection = connection;
  }

  static DuckSession open() throws SQLException {
    return new DuckSession(DriverManager.getConnection("jdbc:duckdb:"));
  }

  /** Tells the scripts of this session where a folder lies. */
  void name(String variable, Path folder) throws SQLException {
    execute("SET VARIABLE " + variable + " = " + quoted(folder));
  }

  /** Runs a file of statements from the folder of the golden tables. */
  void script(String name) throws IOException, SQLException {
    execute(Files.readString(SCRIPTS.resolve(name)));
  }

  /** A view for each published Parquet file, named after it. */
  void viewTables(Path month) throws IOException, SQLException {
    for (Path file : files(month, ".parquet")) {
      String table = file.getFileName().toString().replace(".parquet", "");
      execute("CREATE VIEW " + table + " AS FROM read_parquet(" + quoted(file) + ")");
    }
  }

  static List<Path> files(Path month, String ending) throws IOException {
    try (var files = Files.list(month.resolve("tables"))) {
      return files.filter(file -> file.toString().endsWith(ending)).sorted().toList();
    }
  }

  /** The rows of a query, each as words in a line, an absent value as {@code NULL}. */
  List<String> rows(String sql) throws SQLException {
    List<String> rows = new ArrayList<>();
    try (Statement statement = connection.createStatement();
        ResultSet result = statement.executeQuery(sql)) {
      int width = result.getMetaData().getColumnCount();
      while (result.next()) {
        List<String> row = new ArrayList<>();
        for (int column = 1; column <= width; column++) {
          row.add(String.valueOf(result.getObject(column)));
        }
        rows.add(String.join(" | ", row));
      }
    }
    return rows;
  }

  long number(String sql) throws SQLException {
    return Long.parseLong(rows(sql).get(0));
  }

  /** The columns of a table or view, quoted and in order. */
  String columnsOf(String relation) throws SQLException {
    return rows("SELECT column_name FROM (DESCRIBE " + relation + ")").stream()
        .map(column -> '"' + column + '"')
        .collect(Collectors.joining(", "));
  }

  static String quoted(Path path) {
    return "'" + path.toString().replace("'", "''") + "'";
  }

  private void execute(String sql) throws SQLException {
    try (Statement statement = connection.createStatement()) {
      statement.execute(sql);
    }
  }

  @Override
  public void close() throws SQLException {
    connection.close();
  }
}
