package leadline.sample;

/**
 * What ships do, beside their habits of opening.
 *
 * @param workmanship share of overhauls after which a part soon fails because of the work
 * @param unopenedRenewal share of parts left shut that are renewed all the same, whatever their
 *     condition
 * @param newInService share of vessels that were new within the time of the records
 * @param statedAges share of vessels that write the age of the parts they open
 */
public record Practice(
    double workmanship, double unopenedRenewal, double newInService, double statedAges) {

  public static final Practice USUAL = new Practice(.01, .02, .08, .30);

  public Practice {
    Shares.check(workmanship);
    Shares.check(unopenedRenewal);
    Shares.check(newInService);
    Shares.check(statedAges);
  }

  public Practice withWorkmanship(double share) {
    return new Practice(share, unopenedRenewal, newInService, statedAges);
  }

  public Practice withUnopenedRenewal(double share) {
    return new Practice(workmanship, share, newInService, statedAges);
  }

  public Practice withNewInService(double share) {
    return new Practice(workmanship, unopenedRenewal, share, statedAges);
  }

  public Practice withStatedAges(double share) {
    return new Practice(workmanship, unopenedRenewal, newInService, share);
  }
}
