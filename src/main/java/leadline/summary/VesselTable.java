package leadline.summary;

import java.util.List;

/** A published table whose rows are each about one vessel and need no other. */
interface VesselTable {

  TableSpec spec();

  /** The vessel's rows, in the order of publication. */
  List<TableRow> rows(VesselAccount vessel, Edition edition);
}
