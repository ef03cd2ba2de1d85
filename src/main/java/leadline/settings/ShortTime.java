package leadline.settings;

import java.time.Duration;

/** A time in whole days, hours or minutes, as people write it: 7d, 12h or 30m. */
public final class ShortTime {

  private ShortTime() {}

  public static boolean isOne(String text) {
    return text.matches("[0-9]{1,4}[dhm]");
  }

  /**
   * The time that the text says.
   *
   * @throws java.time.format.DateTimeParseException where the text is none
   */
  public static Duration read(String text) {
    return Duration.parse(text.endsWith("d") ? "P" + text : "PT" + text);
  }
}
