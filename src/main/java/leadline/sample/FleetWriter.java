package leadline.sample;

import java.io.IOException;

/** Writes a fleet vessel by vessel, keeping none. */
public interface FleetWriter extends AutoCloseable {

  void write(SampleVessel vessel) throws IOException;

  @Override
  void close() throws IOException;
}
