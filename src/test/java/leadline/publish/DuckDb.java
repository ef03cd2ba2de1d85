package leadline.publish;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** An independent reader of CSV and Parquet. */
final class DuckDb {

  private DuckDb() {}

  /** The rows of a query, null where a value is absent. */
  static List<List<@Nullable Object>> rows(String sql) throws SQLException {
    try (Connection duck = DriverManager.getConnection("jdbc:duckdb:");
        Statement statement = duck.createStatement();
        ResultSet result = statement.executeQuery(sql)) {
      int width = result.getMetaData().getColumnCount();
      List<List<@Nullable Object>> rows = new ArrayList<>();
      while (result.next()) {
        List<@Nullable Object> row = new ArrayList<>();
        for (int column = 1; column <= width; column++) {
          row.add(result.getObject(column));
        }
        rows.add(row);
      }
      return rows;
    }
  }
}
