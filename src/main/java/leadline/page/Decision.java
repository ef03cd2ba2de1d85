package leadline.page;

import java.util.List;
import leadline.fleet.Catalogue;

/** A rule that finds in the tables what somebody has to decide this month. */
interface Decision {

  /** Of what it speaks. */
  String heading();

  /** What it asks and on what grounds; none where there is nothing to decide. */
  List<Block.Point> points(Tables tables, Catalogue catalogue);
}
