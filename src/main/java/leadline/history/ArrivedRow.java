package leadline.history;

import java.io.Serializable;
import leadline.fleet.SourcedRow;
import leadline.origin.Arrival;

/**
 * A stored row, and the batch that brought it.
 *
 * @param batch the batch's place in the order of arrival
 */
public record ArrivedRow(long batch, SourcedRow row) implements Serializable {

  public String vessel() {
    return (String) row.cells().key().get(0);
  }

  public Arrival arrival() {
    return new Arrival(batch, row.origin());
  }
}
