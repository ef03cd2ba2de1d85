package leadline.golden;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Records of machines that all begin on one day and run evenly, so that hours fall on days: a way
 * to put data from elsewhere through the whole pipeline.
 */
final class Exports {

  private final LocalDate start;
  private final int hoursADay;
  private final Map<String, List<String>> files = new LinkedHashMap<>();
  private int overhauls;

  /**
   * @param start the day at whose end every counter shows 0
   */
  Exports(LocalDate start, int hoursADay) {
    this.start = start;
    this.hoursADay = hoursADay;
    line("machines", "vessel,machine,kind,model,cylinders,places_per_cylinder,in_service_on");
    line("hours", "vessel,machine,read_at,hours,kind");
    line("overhauls", "vessel,overhaul,machine,component,unit,place,done_on,reason");
    line("findings", "vessel,overhaul,part,opened,found,action,revealed,hours_since_new");
  }

  /** A main engine that was new at the start, its hours read at both ends. */
  Exports newEngine(String vessel, int cylinders, int places, int lastHours) {
    return engine(vessel, cylinders, places, lastHours, start.toString());
  }

  /** A main engine of unknown age at the start, its hours read at both ends. */
  Exports oldEngine(String vessel, int cylinders, int places, int lastHours) {
    return engine(vessel, cylinders, places, lastHours, "");
  }

  private Exports engine(
      String vessel, int cylinders, int places, int lastHours, String inServiceOn) {
    line(
        "machines",
        "%s,me,main-engine,any,%d,%d,%s".formatted(vessel, cylinders, places, inServiceOn));
    line("hours", "%s,me,%s,0,counter".formatted(vessel, start));
    line("hours", "%s,me,%s,%d,counter".formatted(vessel, dayOf(lastHours), lastHours));
    return this;
  }

  /**
   * An overhaul of a component at a number of the machine's hours, with what was found of a part.
   */
  Exports overhaul(
      String vessel, String component, String place, int hours, String reason, String finding) {
    overhauls++;
    line(
        "overhauls",
        "%s,%d,me,%s,%s,%s,%s"
            .formatted(vessel, overhauls, component, place, dayOf(hours), reason));
    line("findings", "%s,%d,%s".formatted(vessel, overhauls, finding));
    return this;
  }

  void writeTo(Path inbox) throws IOException {
    Files.createDirectories(inbox);
    for (Map.Entry<String, List<String>> file : files.entrySet()) {
      Files.write(inbox.resolve(file.getKey() + ".csv"), file.getValue(), StandardCharsets.UTF_8);
    }
  }

  private LocalDate dayOf(int hours) {
    if (hours % hoursADay != 0) {
      throw new IllegalArgumentException(hours + " h fall within a day");
    }
    return start.plusDays(hours / hoursADay);
  }

  private void line(String file, String line) {
    files.computeIfAbsent(file, none -> new ArrayList<>()).add(line);
  }
}
