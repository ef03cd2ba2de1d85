package leadline.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** A folder of exports: one main engine of the vessel plover, and its readings of three months. */
record SmallInbox(Path folder) {

  static final String HOURS_HEADER = "vessel,machine,read_at,hours,kind,remark\n";
  static final int ROWS = 4;

  static SmallInbox in(Path folder) {
    return new SmallInbox(folder)
        .with(
            "machines.csv",
            """
            vessel,machine,kind,model,cylinders,places_per_cylinder
            plover,ME,main-engine,6X50,6,2
            """)
        .with(
            "hours.csv",
            HOURS_HEADER
                + "plover,ME,2024-01-31,1000,counter,\n"
                + "plover,ME,2024-02-29,1500,counter,\n"
                + "plover,ME,2024-03-31,2000,counter,\n");
  }

  SmallInbox with(String file, String text) {
    return with(file, text.getBytes(StandardCharsets.UTF_8));
  }

  SmallInbox with(String file, byte[] bytes) {
    try {
      Files.createDirectories(folder);
      Files.write(folder.resolve(file), bytes);
      return this;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public String toString() {
    return folder.toString();
  }
}
