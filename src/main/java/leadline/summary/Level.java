package leadline.summary;

import leadline.fleet.Written;

/** How far apart the machines are kept that a row puts together. */
public enum Level implements Written {
  FLEET {
    @Override
    String stratumOf(VesselModel member) {
      return "all";
    }
  },
  MODEL {
    @Override
    String stratumOf(VesselModel member) {
      return member.model();
    }
  },
  VESSEL {
    @Override
    String stratumOf(VesselModel member) {
      return member.vessel();
    }
  };

  /** The stratum of this level to which the machines belong. */
  abstract String stratumOf(VesselModel member);
}
