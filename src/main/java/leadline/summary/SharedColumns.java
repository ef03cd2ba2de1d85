package leadline.summary;

import java.time.Instant;
import java.util.List;
import leadline.fleet.Written;

/** The columns by which every table says what a row is about. */
public final class SharedColumns {

  public static final TableColumn<String> MONTH =
      TableColumn.key("month", "the month reported, such as 2026-10, ending at 24:00 UTC");
  public static final TableColumn<String> WINDOW =
      TableColumn.key(
          "window", "the stretch of time, ending with the month: " + words(Window.class));
  public static final TableColumn<Instant> KNOWN_AT =
      TableColumn.keyMoment("known_at", "when the last batch was committed that the row rests on");
  public static final TableColumn<String> LEVEL =
      TableColumn.key("level", "how far apart machines are kept: " + words(Level.class));
  public static final TableColumn<String> STRATUM =
      TableColumn.key("stratum", "all for the fleet, else the machine model or the vessel");
  public static final TableColumn<String> COMPONENT =
      TableColumn.key("component", "the component, by the catalogue");
  public static final TableColumn<String> PART =
      TableColumn.key("part", "the part of the component, by the catalogue");
  public static final TableColumn<String> HOURS_BAND =
      TableColumn.key(
          "hours_band",
          "hours since new of the part at its removal: all, a band such as 4000-8000 (its lower end"
              + " included, its upper not), or unknown");

  /** The keys of a table about whole components. */
  static final List<TableColumn<?>> OF_COMPONENT =
      List.of(MONTH, WINDOW, KNOWN_AT, LEVEL, STRATUM, COMPONENT);

  /** The keys of a table about parts. */
  static final List<TableColumn<?>> OF_PART =
      List.of(MONTH, WINDOW, KNOWN_AT, LEVEL, STRATUM, COMPONENT, PART);

  private SharedColumns() {}

  /** A closed set of words, for a column's meaning. */
  static <E extends Enum<E> & Written> String words(Class<E> words) {
    return String.join(", ", Written.words(words));
  }
}
